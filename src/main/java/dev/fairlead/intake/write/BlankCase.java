package dev.fairlead.intake.write;

import dev.fairlead.intake.spelling.CaseWords;
import dev.fairlead.intake.spelling.Slips;
import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.Field;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The text of a case to fill in: YAML in which every field is explained and unknown, made from what the records say of
 * themselves.
 */
public final class BlankCase {
    private static final String HEAD = """
            # yaml-language-server: $schema=%s
            # A case for Fairlead. Lines that start with # are explanations and can be deleted. The first line lets an editor
            # check and explain while you type, where the schema lies beside this file.
            #
            # Every fact is one of three things:
            #   known            a value in the unit named above it. A quantity may also be written with its unit ("0.020 in"),
            #                    as a list of repeated readings ([5.4, 5.5]), or with its own error ({value: 5.4, error: 0.05}).
            #   unknown          nobody has measured or asked. Leaving the line out says the same.
            #   does-not-apply   there cannot be such a fact; only where the explanation allows it.
            # A decimal comma is read as well as a point. Left and right are the patient's own.
            # Teeth have their two-digit numbers of ISO 3950: 31 is the lower left central incisor, 36 the lower left first molar.
            # Dates are year-month-day. Never write a name, a birth date or a record number.
            # Behind a range stands the error (one standard deviation) that is assumed of a single reading, and by a letter
            # where it comes from:
            """;

    /** The schema of a case as a file that lies beside it; hidden, so that nothing takes it for a case. */
    public static final String SCHEMA_FILE = ".fairlead-case.schema.json";

    private static final List<Tooth> FURTHER = Stream.of(33, 34, 35, 36, 37, 43, 44, 45, 46, 47, 73, 74, 75, 83, 84, 85)
            .map(Tooth::of)
            .toList();

    /** Parts of a case that are filled in from a later stage on. */
    private static final Map<String, Stage> LATER = Map.of(
            "hardware", Stage.READINESS,
            "wire", Stage.READINESS,
            "bench", Stage.BENCH,
            "insertion", Stage.INSERTION,
            "visits", Stage.ACTIVATION,
            "holding", Stage.HOLDING);

    private final StringBuilder out = new StringBuilder();
    private final Map<String, Character> letters;

    private BlankCase(Map<String, Character> letters) {
        this.letters = letters;
    }

    /** True when a part of a case, named by its key, is filled in by the time a stage is reached. */
    public static boolean filledBy(String part, Stage stage) {
        return stage.hasReached(LATER.getOrDefault(part, Stage.RECORDS));
    }

    /**
     * The blank case with what is filled in up to a stage; what comes later can be added when it comes. It reads
     * without problems, and nothing is known in it.
     */
    public static String text(Stage upTo) {
        List<FieldShape> wanted = RecordShape.ofCase().fields().stream()
                .filter(f -> filledBy(f.key(), upTo))
                .toList();
        Map<String, Character> letters = new LinkedHashMap<>();
        sources(wanted, letters);
        BlankCase blank = new BlankCase(letters);
        blank.out.append(HEAD.formatted(SCHEMA_FILE));
        letters.forEach((source, letter) -> blank.out
                .append("#   ")
                .append(letter)
                .append("  ")
                .append(source)
                .append('\n'));
        blank.out.append('\n');
        blank.record(blank.out, wanted, true, "");
        return blank.out.toString();
    }

    /** Each source of errors once, by a letter, in the order in which they are met. */
    private static void sources(List<FieldShape> fields, Map<String, Character> letters) {
        for (FieldShape f : fields) {
            if (f.kind() == Kind.QUANTITY && f.about().error() != ErrorKind.NONE) {
                letters.putIfAbsent(f.about().error().source(), (char) ('a' + letters.size()));
            } else if (f.kind() == Kind.RECORD || f.kind() == Kind.LIST || f.kind() == Kind.TOOTH_MAP) {
                sources(f.nested().fields(), letters);
            }
        }
    }

    /**
     * The smallest case that is of use, filled in with invented values: incisor widths, space on both sides, one plan.
     */
    public static String minimal() {
        return """
                # An invented case with the least that lets space be reckoned. Everything that is not here counts as unknown.
                fairlead: 1
                id: demo-minimal
                stage: indication
                date: 2026-03-09
                child: {age: 9.4, sex: female}
                teeth:
                  42: {state: erupted, width: [5.9, 6.0]}
                  41: {state: erupted, width: 5.4}
                  31: {state: erupted, width: 5.4}
                  32: {state: erupted, width: "0.232 in"}
                  36: {state: erupted}
                  46: {state: erupted}
                space: {left: 20.5, right: 21, incisors: 21.8}
                headFilm: {incisorMandibular: 90, mandibularPlane: 25, incisorToAPog: 0.5}
                bite: {overjet: 3.5, overbite: 2.5}
                plan: {advanceLeft: 2, advanceRight: 1.5, standOff: 1.5, intervalWeeks: 4}
                """;
    }

    private void record(StringBuilder out, List<FieldShape> fields, boolean top, String indent) {
        for (FieldShape f : fields) {
            if (top && f.kind() != Kind.ID) {
                out.append('\n');
            }
            out.append(indent)
                    .append("# ")
                    .append(about(f))
                    .append('\n')
                    .append(indent)
                    .append(f.key())
                    .append(':');
            switch (f.kind()) {
                case RECORD -> {
                    out.append('\n');
                    record(out, f.nested().fields(), false, indent + "  ");
                }
                case TOOTH_MAP -> {
                    out.append('\n');
                    teeth(out, f, indent + "  ");
                }
                case LIST -> {
                    out.append(" []\n")
                            .append(indent)
                            .append("# Each entry looks like this; take the place of [] with as many as there are:\n");
                    StringBuilder entry = new StringBuilder();
                    record(entry, f.nested().fields(), false, "    ");
                    String first = entry.toString()
                            .lines()
                            .filter(l -> !l.strip().startsWith("#"))
                            .findFirst()
                            .orElse("");
                    entry.toString()
                            .lines()
                            .forEach(l -> out.append(indent)
                                    .append("# ")
                                    .append(l.equals(first) ? "  - " + l.strip() : l)
                                    .append('\n'));
                }
                default -> out.append(' ').append(value(f)).append('\n');
            }
        }
    }

    private void teeth(StringBuilder out, FieldShape f, String indent) {
        boolean first = true;
        for (Tooth t : Tooth.LOWER_INCISORS) {
            out.append(indent).append(t).append(':');
            if (first) {
                out.append('\n');
                record(out, f.nested().fields(), false, indent + "  ");
            } else {
                flow(out, f.nested().fields());
            }
            first = false;
        }
        if (f.key().equals("teeth")) {
            out.append(indent).append("# Other teeth have the same fields; what is needed of them is here.\n");
            for (Tooth t : FURTHER) {
                out.append(indent).append(t).append(':');
                flow(out, f.nested().fields().subList(0, 2));
            }
        }
    }

    private static void flow(StringBuilder out, List<FieldShape> fields) {
        StringBuilder all = new StringBuilder();
        fields.forEach(x -> all.append(all.length() == 0 ? "" : ", ")
                .append(x.key())
                .append(": ")
                .append(value(x)));
        out.append(" {").append(all).append("}\n");
    }

    private static String value(FieldShape f) {
        return switch (f.kind()) {
            case FORMAT -> Integer.toString(CaseWords.FORMAT);
            case ID -> "my-case-1";
            default -> CaseWords.UNKNOWN;
        };
    }

    private String about(FieldShape f) {
        Field a = f.about();
        StringBuilder s = new StringBuilder(a.value());
        switch (f.kind()) {
            case QUANTITY -> {
                s.append(" [").append(a.unit() == Unit.COUNT ? "a count, " : "").append(Slips.range(a));
                if (a.error() != ErrorKind.NONE) {
                    s.append("; ± ")
                            .append(Slips.number(a.error().defaultSd()))
                            .append(' ')
                            .append(letters.get(a.error().source()));
                }
                s.append(']');
            }
            case ANSWER -> s.append(" [yes or no]");
            case CHOICE -> s.append(" [").append(String.join(", ", f.words())).append(']');
            case DATE -> s.append(" [date]");
            case TOOTH -> s.append(" [tooth number]");
            default -> s.append("");
        }
        return s.append(a.mayNotApply() ? " May be does-not-apply." : "").toString();
    }
}
