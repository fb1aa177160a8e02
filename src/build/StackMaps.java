import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Brings the class files of a jar to the version of Java 17: {@code StackMaps JAR}. A library that is built for Java 5
 * holds class files without stack maps; Java checks them by a slow way of its own at every start, and takes none of
 * them into a class archive. The code of the methods stays what it is.
 */
final class StackMaps {
    private static final String NOTICE = "META-INF/CHANGES-BY-FAIRLEAD";
    private static final String WORDS =
            "The class files of this jar were brought to version 61 with stack maps in the build of Fairlead; nothing else was changed.\n";

    private StackMaps() {}

    public static void main(String[] args) throws IOException {
        Path jar = Path.of(args[0]);
        Map<String, byte[]> files = read(jar);
        if (files.containsKey(NOTICE)) {
            return;
        }
        Path made = jar.resolveSibling(jar.getFileName() + ".part");
        try (URLClassLoader library =
                new URLClassLoader(new URL[] {jar.toUri().toURL()}, ClassLoader.getPlatformClassLoader())) {
            files.replaceAll((name, bytes) -> ofClass(name) ? modern(bytes, library) : bytes);
        }
        files.put(NOTICE, WORDS.getBytes(StandardCharsets.UTF_8));
        write(made, files);
        check(made, files);
        Files.move(made, jar, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    }

    private static boolean ofClass(String name) {
        return name.endsWith(".class") && !name.endsWith("module-info.class");
    }

    private static byte[] modern(byte[] old, ClassLoader library) {
        ClassReader reader = new ClassReader(old);
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
            @Override
            protected ClassLoader getClassLoader() {
                return library;
            }

            @Override
            protected String getCommonSuperClass(String a, String b) {
                try {
                    return super.getCommonSuperClass(a, b);
                } catch (TypeNotPresentException e) {
                    // one of them belongs to a library that is not here
                    return "java/lang/Object";
                }
            }
        };
        reader.accept(
                new org.objectweb.asm.ClassVisitor(Opcodes.ASM9, writer) {
                    @Override
                    public void visit(
                            int version,
                            int access,
                            String name,
                            String signature,
                            String superName,
                            String[] interfaces) {
                        super.visit(Opcodes.V17, access, name, signature, superName, interfaces);
                    }
                },
                ClassReader.SKIP_FRAMES);
        return writer.toByteArray();
    }

    /**
     * Every class must pass the checks of this Java; those that want a library that is not here cannot be used anyway.
     */
    private static void check(Path jar, Map<String, byte[]> files) throws IOException {
        List<String> wrong = new ArrayList<>();
        try (URLClassLoader library =
                new URLClassLoader(new URL[] {jar.toUri().toURL()}, ClassLoader.getPlatformClassLoader())) {
            for (String file : files.keySet()) {
                if (!ofClass(file)) {
                    continue;
                }
                try {
                    Class.forName(
                            file.substring(0, file.length() - ".class".length()).replace('/', '.'), true, library);
                } catch (VerifyError | ClassFormatError e) {
                    wrong.add(file + ": " + e.getMessage());
                } catch (ReflectiveOperationException | NoClassDefFoundError e) {
                    // beyond what can be checked here
                }
            }
        }
        if (!wrong.isEmpty()) {
            throw new IllegalStateException(String.join("\n", wrong));
        }
    }

    private static Map<String, byte[]> read(Path jar) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(jar))) {
            for (ZipEntry e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
                if (!e.isDirectory()) {
                    files.put(e.getName(), in.readAllBytes());
                }
            }
        }
        return files;
    }

    private static void write(Path jar, Map<String, byte[]> files) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                // the same bytes from every build
                entry.setTimeLocal(java.time.LocalDateTime.of(1980, 1, 1, 0, 0));
                out.putNextEntry(entry);
                out.write(file.getValue());
                out.closeEntry();
            }
        }
        Files.write(jar, bytes.toByteArray());
    }
}
