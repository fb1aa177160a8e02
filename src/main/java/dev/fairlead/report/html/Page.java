package dev.fairlead.report.html;

import dev.fairlead.check.Checked;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A file of reports as the templates see it. */
public final class Page {
    private final List<CaseView> cases = new ArrayList<>();
    private final List<UnreadCase> refused;
    private final boolean paper;
    private final boolean one;

    /** {@code paper} is true for the pages that become a PDF; {@code one} for a single page of each case. */
    Page(
            List<Checked> checked,
            List<UnreadCase> refused,
            boolean all,
            boolean paper,
            boolean one,
            Function<Checked, List<LoggedChange>> changes) {
        this.one = one;
        boolean several = checked.size() + refused.size() > 1;
        for (int i = 0; i < checked.size(); i++) {
            cases.add(new CaseView(
                    checked.get(i), several ? "c" + (i + 1) + "-" : "", all, paper, changes.apply(checked.get(i))));
        }
        this.refused = List.copyOf(refused);
        this.paper = paper;
    }

    public List<CaseView> cases() {
        return cases;
    }

    public List<UnreadCase> refused() {
        return refused;
    }

    /** Only what a case is presented with, on one page. */
    public boolean one() {
        return one;
    }

    /** More than one case was asked for, so there is a list of contents. */
    public boolean several() {
        return cases.size() + refused.size() > 1;
    }

    public String title() {
        return several()
                ? "Fairlead: report on " + cases.size() + (cases.size() == 1 ? " case" : " cases")
                : "Fairlead: report on case " + cases.get(0).id();
    }

    /** What stands in the foot of printed pages. */
    public String foot() {
        return several()
                ? cases.size() + (cases.size() == 1 ? " case" : " cases")
                : "case " + cases.get(0).id();
    }

    /** All styles of the file. */
    public String style() {
        return paper
                ? Templates.look("paper.css")
                : Templates.look("base.css") + Templates.look("picture.css") + Templates.look("report.css");
    }

    /** The symbols of the outcomes, to be drawn from. */
    public String symbols() {
        return Templates.look("marks.svg");
    }
}
