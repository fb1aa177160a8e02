package dev.fairlead.web;

import dev.fairlead.findings.Report;
import dev.fairlead.intake.Reading;
import dev.fairlead.rules.Catalogue;
import java.time.LocalDate;

/** How the pages have a case checked. */
public interface Checks {
    /** Checks a case that was read, for its own day, or for {@code today} when it names none. */
    Report check(Reading reading, LocalDate today);

    /** The criteria by which it is checked. */
    Catalogue catalogue();

    /** The criteria that come with the program, before a site's overlay. */
    Catalogue standard();
}
