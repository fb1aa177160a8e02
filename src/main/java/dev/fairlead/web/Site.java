package dev.fairlead.web;

import dev.fairlead.web.edit.Desk;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.page.Reports;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;

/** What all pages share. */
public record Site(Desk desk, Views views, Reports reports, Optional<Prints> prints, Supplier<LocalDate> today) {
    /** The case of that name; a page that says so when there is none. */
    public Opened open(String name) {
        return desk.open(name)
                .orElseThrow(() -> new PageError(
                        404,
                        "There is no case file of that name in the folder",
                        "It may have been moved or renamed. Go to the list of cases."));
    }
}
