import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Components;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;

/**
 * Writes the code that reads the components of each kind of fact, and compiles it: {@code CompileFacts SOURCES
 * CLASSES}. To call each component by reflection would take a twentieth of an audit.
 */
final class CompileFacts {
    private CompileFacts() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(Components.class.getPackageName().replace('.', '/'));
        Path source = Path.of(args[0]).resolve(folder).resolve(Components.COMPILED + ".java");
        // what an earlier build made may not fit the facts of today
        Files.deleteIfExists(Path.of(args[1]).resolve(folder).resolve(Components.COMPILED + ".class"));
        Files.createDirectories(source.getParent());
        Files.writeString(source, text());
        int failed = ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        null,
                        null,
                        "--release",
                        "17",
                        "-Xlint:all,-classfile",
                        "-proc:none",
                        "-classpath",
                        args[1],
                        "-d",
                        args[1],
                        source.toString());
        if (failed != 0) {
            throw new IllegalStateException(source + " does not compile");
        }
    }

    private static String text() {
        String kinds = Stream.of(CaseFact.class.getPermittedSubclasses())
                .map(type -> "if (fact instanceof " + type.getCanonicalName() + " f) { return new CaseValue[] {"
                        + Stream.of(Components.accessors(type.asSubclass(CaseFact.class)))
                                .map(Method::getName)
                                .collect(Collectors.joining("(), f.", "f.", "()"))
                        + "}; }\n")
                .collect(Collectors.joining());
        return """
                package dev.fairlead.facts;
                import dev.fairlead.model.CaseValue;
                /** Made in the build by CompileFacts. */
                public final class CompiledComponents implements Components.Reader {
                @Override public CaseValue[] of(CaseFact fact) {
                %sthrow new IllegalStateException(fact + " is of no kind that this was made for"); }
                }
                """.formatted(kinds);
    }
}
