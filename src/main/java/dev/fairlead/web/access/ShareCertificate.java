package dev.fairlead.web.access;

import dev.fairlead.base.PrivateFiles;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.cert.Certificate;
import java.util.HexFormat;
import java.util.List;

/**
 * The certificate by which a shared server is known: made at first use for its address by Java's own keytool, kept in a
 * PKCS#12 file (RFC 7292) for the user alone, or brought by the user.
 */
public final class ShareCertificate {
    private static final int DAYS = 825;

    private final KeyStore store;
    private final String password;

    private ShareCertificate(KeyStore store, String password) {
        this.store = store;
        this.password = password;
    }

    /** The certificate for that address, made in that folder when there is none yet. */
    public static ShareCertificate own(Path folder, String address) throws IOException, GeneralSecurityException {
        PrivateFiles.folder(folder);
        Path file = folder.resolve("share-" + address.replaceAll("[^A-Za-z0-9.]", "_") + ".p12");
        Path secret = folder.resolve("share.secret");
        if (!Files.exists(secret)) {
            PrivateFiles.write(secret, Sessions.random().getBytes(StandardCharsets.UTF_8));
        }
        String password = Files.readString(secret);
        if (!Files.exists(file)) {
            make(file, secret, address);
        }
        return read(file, password);
    }

    /** A certificate with its key that the user brought. */
    public static ShareCertificate read(Path file, String password) throws IOException, GeneralSecurityException {
        KeyStore store = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(file)) {
            store.load(in, password.toCharArray());
        }
        return new ShareCertificate(store, password);
    }

    private static void make(Path file, Path secret, String address) throws IOException {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        Files.deleteIfExists(part);
        boolean numbers = address.matches("[0-9.]+") || address.indexOf(':') >= 0;
        Process p = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-alias",
                        "fairlead",
                        "-keyalg",
                        "EC",
                        "-groupname",
                        "secp256r1",
                        "-dname",
                        "CN=Fairlead on " + address.replaceAll("[,+=\"\\\\<>;]", " "),
                        "-ext",
                        "san=" + (numbers ? "ip:" : "dns:") + address,
                        "-ext",
                        "eku=serverAuth",
                        "-validity",
                        Integer.toString(DAYS),
                        "-storetype",
                        "PKCS12",
                        "-keystore",
                        part.toString(),
                        "-storepass:file",
                        secret.toString()))
                .redirectErrorStream(true)
                .start();
        try {
            String said = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (p.waitFor() != 0) {
                throw new IOException("keytool could not make a certificate for " + address + ": " + said.strip());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while a certificate was made", e);
        }
        PrivateFiles.write(file, Files.readAllBytes(part));
        Files.delete(part);
    }

    public KeyStore store() {
        return store;
    }

    public String password() {
        return password;
    }

    /** SHA-256 of the certificate in groups of two digits, as browsers show it. */
    public String fingerprint() throws GeneralSecurityException {
        Certificate c = store.getCertificate(store.aliases().nextElement());
        return HexFormat.ofDelimiter(":")
                .withUpperCase()
                .formatHex(MessageDigest.getInstance("SHA-256").digest(c.getEncoded()));
    }
}
