package dev.fairlead.web;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.intake.Reading;
import dev.fairlead.model.Case;
import dev.fairlead.rules.Catalogue;
import dev.fairlead.rules.Rulebase;
import java.time.LocalDate;

/**
 * How the pages have a case checked.
 *
 * @param standard the criteria that come with the program, before a site's overlay
 */
public record Checks(Checker checker, Catalogue standard) {
    /** Checks by that checker; the standard is the rulebase that comes with the program. */
    public static Checks by(Checker checker) {
        return new Checks(checker, Rulebase.builtIn().catalogue());
    }

    /** Checks a case that was read, for its own day, or for {@code today} when it names none. */
    public Checked check(Reading reading, String version, LocalDate today) {
        Case c = reading.value().orElseThrow();
        CheckOptions options = c.date().known() ? CheckOptions.USUAL : CheckOptions.USUAL.on(today);
        return checker.check(c, version, reading.doubts(), options);
    }

    /** The criteria in force. */
    public Catalogue catalogue() {
        return checker.rulebase().catalogue();
    }
}
