package dev.fairlead.web.access;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fairlead.base.PrivateFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.LocalDate;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The browsers that may ask for pages. Each has a cookie of 256 random bits, of which only a hash is kept, in a file
 * that belongs to the user alone: so a page that was open when the program stopped works on when it is started again.
 */
public final class Sessions {
    private static final int RANDOM_BYTES = 32;
    /** A browser of this machine opens the printed link anew after so many days. */
    private static final int LOCAL_DAYS = 30;
    /** Browsers of this machine that are remembered at most. */
    private static final int LOCAL_KEPT = 50;

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final SecureRandom RANDOM = new SecureRandom();

    private record Kept(String id, String name, String role, boolean paired, String since, String who) {
        Session session() {
            return new Session(id, name, DeviceRole.of(role), paired, LocalDate.parse(since), who);
        }
    }

    private final Path file;
    private final Supplier<LocalDate> today;
    private final String token = random();
    private final Map<String, Kept> byHash = new LinkedHashMap<>();

    /** Sessions kept in that folder, which is made for the user alone. */
    public Sessions(Path folder, Supplier<LocalDate> today) throws IOException {
        PrivateFiles.folder(folder);
        file = folder.resolve("sessions.json");
        this.today = today;
        if (Files.exists(file)) {
            byHash.putAll(JSON.readValue(file.toFile(), new TypeReference<Map<String, Kept>>() {}));
        }
    }

    /** What the printed link carries; another one each time the program starts. */
    public String token() {
        return token;
    }

    /** A cookie for the browser that opened the printed link; empty when it brought another token. */
    public Optional<String> open(String brought) {
        return same(token, brought) ? Optional.of(add("this computer", DeviceRole.DIRECTOR, false)) : Optional.empty();
    }

    /** A cookie for a device that was paired. */
    public String pair(String name, DeviceRole role) {
        return add(name, role, true);
    }

    /** The session of a cookie; empty when there is none, or none any more. */
    public synchronized Optional<Session> of(String cookie) {
        return cookie == null
                ? Optional.empty()
                : Optional.ofNullable(byHash.get(hash(cookie)))
                        .map(Kept::session)
                        .filter(this::lasts);
    }

    /** Devices that were paired. */
    public synchronized List<Session> devices() {
        return byHash.values().stream().filter(Kept::paired).map(Kept::session).toList();
    }

    /** Ends a device's access at once. */
    public synchronized void revoke(String id) {
        byHash.values().removeIf(k -> k.paired() && k.id().equals(id));
        write();
    }

    /** Notes who works on a device, as that person typed it. */
    public synchronized void says(String id, String who) {
        byHash.replaceAll(
                (hash, k) -> k.id().equals(id) ? new Kept(k.id(), k.name(), k.role(), k.paired(), k.since(), who) : k);
        write();
    }

    private synchronized String add(String name, DeviceRole role, boolean paired) {
        String secret = random();
        byHash.values().removeIf(k -> !lasts(k.session()));
        if (!paired) {
            List<String> local = byHash.entrySet().stream()
                    .filter(e -> !e.getValue().paired())
                    .map(Map.Entry::getKey)
                    .toList();
            local.stream().limit(Math.max(0, local.size() - LOCAL_KEPT + 1)).forEach(byHash::remove);
        }
        byHash.put(
                hash(secret),
                new Kept(
                        random().substring(0, 12),
                        name,
                        role.word(),
                        paired,
                        today.get().toString(),
                        ""));
        write();
        return secret;
    }

    private boolean lasts(Session s) {
        return s.paired() || !s.since().plusDays(LOCAL_DAYS).isBefore(today.get());
    }

    private void write() {
        try {
            PrivateFiles.write(file, JSON.writeValueAsBytes(byHash));
        } catch (IOException e) {
            throw new UncheckedIOException("who may ask for pages cannot be kept in " + file.getParent(), e);
        }
    }

    static String random() {
        byte[] bytes = new byte[RANDOM_BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Takes as long for a wrong text as for a right one. */
    static boolean same(String a, String b) {
        return b != null
                && MessageDigest.isEqual(a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
    }

    private static String hash(String secret) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
