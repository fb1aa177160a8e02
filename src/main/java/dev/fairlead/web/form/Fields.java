package dev.fairlead.web.form;

import dev.fairlead.intake.crosscheck.PersonDoubts;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.web.edit.EditResult.Refused;
import dev.fairlead.web.edit.Opened;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The fields of one case as they stand: what was typed, how it was read, what is wrong with it, which criteria look at
 * it.
 */
public final class Fields {
    private final Opened opened;
    private final Map<String, Refused> refused;
    private final Function<String, List<String>> uses;

    /** {@code uses} gives the criteria that look at the fact at a pointer. */
    public Fields(Opened opened, Map<String, Refused> refused, Function<String, List<String>> uses) {
        this.opened = opened;
        this.refused = refused;
        this.uses = uses;
    }

    /** The field at a pointer; throws when the format has none there. */
    public FieldView at(String pointer) {
        return at(pointer, CasePaths.field(pointer).orElseThrow());
    }

    FieldView at(String pointer, FieldShape shape) {
        Refused no = refused.get(pointer);
        String typed = no != null ? no.typed() : opened.typed(pointer);
        boolean state = shape.kind().fact() && (typed.equals("unknown") || typed.equals("does-not-apply"));
        return new FieldView(
                pointer,
                shape,
                FormWords.label(shape),
                state ? "" : typed,
                state ? typed : "",
                note(pointer, shape, no, typed),
                uses.apply(pointer));
    }

    int size(String pointer) {
        return opened.tree().map(t -> t.size(pointer)).orElse(0);
    }

    List<String> keys(String pointer) {
        return opened.tree().map(t -> t.keys(pointer)).orElse(List.of());
    }

    private FieldView.Note note(String pointer, FieldShape shape, @Nullable Refused no, String typed) {
        if (no != null) {
            return said("error", no.problem(), "Not in the case: ");
        }
        Optional<Problem> problem = opened.problems(pointer).stream().findFirst();
        if (problem.isPresent()) {
            return said(problem.get().error() ? "error" : "doubt", problem.get(), "");
        }
        if (shape.kind() != Kind.QUANTITY || typed.isEmpty()) {
            return FieldView.Note.NONE;
        }
        Optional<Case> read = opened.reading().value();
        if (read.isPresent() && Edit.get(read.get(), pointer) instanceof Measured m && m.known()) {
            String echo = FormWords.quantity(m, shape);
            if (typed.contains(Typed.PLUS_MINUS)) {
                return new FieldView.Note(
                        "echo",
                        echo + " ± "
                                + FormWords.number(m.unit().to(shape.about().unit(), m.sd()))
                                + ": one standard deviation, stated with this value.",
                        "Empty the second box to take the usual one, " + usual(shape) + ".",
                        false);
            }
            // a plain number needs no echo; a comma, an inch, or several readings do
            boolean plain = typed.matches("-?[0-9.]+( ?"
                            + java.util.regex.Pattern.quote(shape.about().unit().symbol()) + ")?")
                    && !echo.contains("=");
            return plain ? FieldView.Note.NONE : new FieldView.Note("echo", echo, "", false);
        }
        return FieldView.Note.NONE;
    }

    /** The error that is assumed where none is stated. */
    private static String usual(FieldShape shape) {
        double sd = shape.about().error().defaultSd();
        return sd == 0
                ? "none"
                : FormWords.number(sd)
                        + (shape.about().unit().symbol().isEmpty()
                                ? ""
                                : " " + shape.about().unit().symbol());
    }

    private static FieldView.Note said(String tone, Problem p, String before) {
        if (PersonDoubts.is(p)) {
            return new FieldView.Note(
                    tone, "This may name somebody.", "Where it does, write a pseudonym or a role instead.", true);
        }
        String text = before + "expected " + p.expected() + ", found " + p.found()
                + p.slip().map(s -> " – likely " + s).orElse("") + ".";
        return new FieldView.Note(
                tone, FormWords.capital(text), p.mend().isEmpty() ? "" : FormWords.capital(p.mend()) + ".", false);
    }
}
