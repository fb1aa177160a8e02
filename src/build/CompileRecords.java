import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Components;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.RecordShape;
import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;

/**
 * Writes down as code what the case records say of themselves, and compiles it: {@code CompileRecords SOURCES CLASSES}.
 * To ask the records themselves means reflection, proxies and method handles, which would take a good part of every
 * start.
 */
final class CompileRecords {
    private static final String PACKAGE = "dev.fairlead.model.shape";
    private static final String NAME = "CompiledRecords";

    private final StringBuilder out = new StringBuilder();

    private CompileRecords() {}

    public static void main(String[] args) throws Exception {
        // what an earlier build made may not fit the records of today, and would be asked in their place
        Path classes = Path.of(args[1]);
        Files.deleteIfExists(classes.resolve(path(PACKAGE, NAME + ".class")));
        Files.deleteIfExists(classes.resolve(path(Components.class.getPackageName(), Components.COMPILED + ".class")));
        compile(args, PACKAGE, NAME, new CompileRecords().text(all()));
        compile(args, Components.class.getPackageName(), Components.COMPILED, components());
    }

    private static void compile(String[] args, String inPackage, String name, String text) throws IOException {
        Path source = Path.of(args[0]).resolve(path(inPackage, name + ".java"));
        Files.createDirectories(source.getParent());
        Files.writeString(source, text);
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

    private static Path path(String inPackage, String file) {
        return Path.of(inPackage.replace('.', '/')).resolve(file);
    }

    /** What reads all components of each kind of fact. */
    private static String components() {
        String kinds = Stream.of(CaseFact.class.getPermittedSubclasses())
                .map(type -> "if (fact instanceof " + name(type) + " f) { return new CaseValue[] {"
                        + Stream.of(Components.accessors(type.asSubclass(CaseFact.class)))
                                .map(Method::getName)
                                .collect(Collectors.joining("(), f.", "f.", "()"))
                        + "}; }\n")
                .collect(Collectors.joining());
        return """
                package dev.fairlead.facts;
                import dev.fairlead.model.CaseValue;
                /** Made in the build by CompileRecords of the facts. */
                public final class CompiledComponents implements Components.Reader {
                @Override public CaseValue[] of(CaseFact fact) {
                %sthrow new IllegalStateException(fact + " is of no kind that this was made for"); }
                }
                """.formatted(kinds);
    }

    /** The record of a whole case, and all records in it. */
    private static List<RecordShape> all() {
        Set<RecordShape> met = new LinkedHashSet<>();
        collect(RecordShape.ofCase(), met);
        return List.copyOf(met);
    }

    private static void collect(RecordShape shape, Set<RecordShape> met) {
        if (met.add(shape)) {
            for (FieldShape f : shape.fields()) {
                if (f.element() != null && f.element().isRecord()) {
                    collect(f.nested(), met);
                }
            }
        }
    }

    private String text(List<RecordShape> shapes) throws ReflectiveOperationException {
        line("package " + PACKAGE + ";");
        line("/** Made in the build by CompileRecords of what the case records say of themselves. */");
        line("@SuppressWarnings(\"unchecked\")");
        line("final class " + NAME + " implements RecordCode {");
        line("private static final Class<?>[] TYPES = {"
                + String.join(
                        ", ",
                        shapes.stream().map(s -> name(s.type()) + ".class").toList()) + "};");
        line("private final int number;");
        line("private " + NAME + "(int number) { this.number = number; }");
        line("public " + NAME + "() { this(-1); }");
        line("@Override public RecordCode of(Class<? extends Record> type) {");
        line("for (int i = 0; i < TYPES.length; i++) { if (TYPES[i] == type) { return new " + NAME + "(i); } }");
        line("return null; }");
        choose("FieldShape[] fields()", shapes, "fields%d()");
        choose("Record make(Object[] v)", shapes, "make%d(v)");
        choose("Object get(Record r, int field)", shapes, "get%d(r, field)");
        for (int i = 0; i < shapes.size(); i++) {
            record(shapes.get(i), i);
        }
        line("}");
        return out.toString();
    }

    private void choose(String method, List<RecordShape> shapes, String call) {
        line("@Override public " + method + " { switch (number) {");
        for (int i = 0; i < shapes.size(); i++) {
            line("case " + i + ": return " + String.format(call, i) + ";");
        }
        line("default: throw new IllegalStateException(\"no record\"); } }");
    }

    private void record(RecordShape shape, int number) throws ReflectiveOperationException {
        RecordComponent[] components = shape.type().getRecordComponents();
        String type = name(shape.type());
        line("private static FieldShape[] fields" + number + "() { return new FieldShape[] {");
        for (FieldShape f : shape.fields()) {
            List<String> about = new ArrayList<>();
            for (RecordComponent c : f.about().getClass().getRecordComponents()) {
                c.getAccessor().setAccessible(true);
                about.add(literal(c.getAccessor().invoke(f.about())));
            }
            line("new FieldShape(" + literal(f.key()) + ", Kind." + f.kind() + ", new PlainField("
                    + String.join(", ", about) + "), " + (f.element() == null ? "null" : name(f.element()) + ".class")
                    + ", " + f.index() + "),");
        }
        line("}; }");
        List<String> values = new ArrayList<>();
        for (int i = 0; i < components.length; i++) {
            values.add("(" + components[i].getGenericType().getTypeName().replace('$', '.') + ") v[" + i + "]");
        }
        line("private static Record make" + number + "(Object[] v) { return new " + type + "("
                + String.join(", ", values) + "); }");
        line("private static Object get" + number + "(Record r, int field) { " + type + " of = (" + type
                + ") r; switch (field) {");
        for (int i = 0; i < components.length; i++) {
            line("case " + i + ": return of." + components[i].getName() + "();");
        }
        line("default: throw new IndexOutOfBoundsException(field); } }");
    }

    private void line(String text) {
        out.append(text).append('\n');
    }

    private static String name(Class<?> type) {
        return type.getCanonicalName();
    }

    private static String literal(Object value) {
        if (value instanceof Enum<?> e) {
            return name(e.getDeclaringClass()) + "." + e.name();
        }
        if (!(value instanceof String text)) {
            return value.toString();
        }
        StringBuilder quoted = new StringBuilder("\"");
        for (char c : text.toCharArray()) {
            quoted.append(
                    c == '"' || c == '\\'
                            ? "\\" + c
                            : c < ' ' || c > '~' ? String.format("\\u%04x", (int) c) : String.valueOf(c));
        }
        return quoted.append('"').toString();
    }
}
