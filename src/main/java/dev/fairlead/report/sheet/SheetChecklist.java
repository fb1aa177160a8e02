package dev.fairlead.report.sheet;

import dev.fairlead.facts.EndSide;
import dev.fairlead.facts.FoldMade;
import dev.fairlead.facts.InsertedEnd;
import dev.fairlead.findings.Asks;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import java.util.Set;

/** The criteria of one stage as a list with boxes, and lines for values and initials. */
final class SheetChecklist {
    /** Facts that there are two of, one on each side. */
    private static final Set<Class<?>> SIDED = Set.of(FoldMade.class, InsertedEnd.class, EndSide.class);

    private final Catalogue catalogue;
    private final Markup out;

    private final ChecklistNumbers numbers;

    SheetChecklist(Catalogue catalogue, Markup out, ChecklistNumbers numbers) {
        this.catalogue = catalogue;
        this.out = out;
        this.numbers = numbers;
    }

    void write(Stage stage, String title, String when, boolean newPage) {
        out.open("div", "class", newPage ? "list newpage" : "list")
                .element("h2", title)
                .element("p", when, "class", "hint");
        out.open("table", "class", "check")
                .open("thead")
                .open("tr")
                .element("th", "done", "scope", "col")
                .element("th", "what is asked", "scope", "col")
                .element("th", "right", "scope", "col")
                .element("th", "left", "scope", "col")
                .element("th", "initials", "scope", "col")
                .close()
                .close()
                .open("tbody");
        for (Criterion c : catalogue.criteria(stage)) {
            out.open("tr")
                    .open("td", "class", "tick")
                    .element("span", " ", "class", "box")
                    .close();
            out.open("td").element("b", c.title() + ". ").text(Asks.of(c, catalogue));
            numbers.of(c.id()).ifPresent(here -> out.text(" ").element("b", "Here: " + here + "."));
            out.close();
            if (SIDED.contains(c.about())) {
                line().line();
            } else {
                out.open("td", "colspan", "2", "class", "fill")
                        .element("span", " ", "class", "rule")
                        .close();
            }
            line();
            out.close();
        }
        out.close().close().close();
    }

    private SheetChecklist line() {
        out.open("td", "class", "fill").element("span", " ", "class", "rule").close();
        return this;
    }
}
