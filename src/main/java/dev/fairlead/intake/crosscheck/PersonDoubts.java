package dev.fairlead.intake.crosscheck;

import dev.fairlead.intake.spelling.Privacy;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import dev.fairlead.model.NotPerson;
import java.util.function.Function;

/** Texts and codes that may name somebody: a doubt, until somebody answers for the words with initials. */
public final class PersonDoubts {
    private static final String EXPECTED = "a text that does not tell who the patient is";

    private PersonDoubts() {}

    static void check(Case c, CrossChecks to) {
        look(c, "/id", Fact.of(c.id()), Privacy::code, to);
        look(c, "/resident", c.resident(), Privacy::code, to);
        look(c, "/site", c.site(), Privacy::code, to);
        for (int i = 0; i < c.waivers().size(); i++) {
            look(c, "/waivers/" + i + "/reason", c.waivers().get(i).reason(), Privacy::text, to);
        }
    }

    private static void look(
            Case c, String pointer, Fact<String> text, Function<String, Privacy.Refusal> how, CrossChecks to) {
        Privacy.Refusal doubt = text.known() ? how.apply(text.get()) : null;
        if (doubt != null && how.apply(unanswered(c, text.get())) != null) {
            to.doubt(pointer, EXPECTED, doubt.found(), "", doubt.mend());
        }
    }

    /** True for a doubt whether a text names somebody, which a person may answer. */
    public static boolean is(Problem problem) {
        return !problem.error() && problem.expected().equals(EXPECTED);
    }

    /** A text without the words that somebody answered for. */
    public static String unanswered(Case c, String text) {
        String rest = text;
        for (NotPerson answer : c.notPersons()) {
            if (answer.words().known() && answer.by().known()) {
                rest = rest.replace(answer.words().get(), "·");
            }
        }
        return rest;
    }
}
