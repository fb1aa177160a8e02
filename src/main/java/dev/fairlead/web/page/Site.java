package dev.fairlead.web.page;

import dev.fairlead.web.access.Access;
import dev.fairlead.web.edit.CaseEditor;
import dev.fairlead.web.edit.Opened;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;

/** What all pages share. */
public record Site(
        CaseEditor editor,
        Views views,
        Reports reports,
        Optional<Prints> prints,
        Supplier<LocalDate> today,
        Access access) {
    /** The case of that name; a page that says so when there is none. */
    public Opened open(String name) {
        return editor.open(name)
                .orElseThrow(() -> new PageError(
                        404,
                        "There is no case file of that name in the folder",
                        "It may have been moved or renamed. Go to the list of cases."));
    }
}
