package dev.fairlead.report.html;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.AssumedError;
import dev.fairlead.findings.Counts;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.RepeatAdvice;
import dev.fairlead.findings.Report;
import dev.fairlead.model.Child;
import dev.fairlead.model.Choices.Sex;
import dev.fairlead.model.Stage;
import dev.fairlead.report.summary.Decides;
import dev.fairlead.report.summary.Headline;
import dev.fairlead.report.summary.MissingFact;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** One case as the templates see it. */
public final class CaseView {
    private final Checked checked;
    private final String prefix;
    private final boolean all;
    private final boolean paper;
    private final List<LoggedChange> changes;
    private final Cited cited;
    private final Figures figures;

    CaseView(Checked checked, String prefix, boolean all, boolean paper, List<LoggedChange> changes) {
        this.checked = checked;
        this.changes = List.copyOf(changes);
        this.prefix = prefix;
        this.all = all;
        this.paper = paper;
        this.cited = new Cited(checked);
        this.figures = new Figures(checked, prefix, paper);
    }

    /** A count with its outcome. */
    public record Tally(String mark, String word, int count) {}

    public Report report() {
        return checked.report();
    }

    /** The last changes, the newest first; empty where no log is kept. */
    public List<LoggedChange> changes() {
        return changes;
    }

    public boolean paper() {
        return paper;
    }

    public String id() {
        return report().subject().id();
    }

    /** The name of a place on the page, unlike that of any other case on it. */
    public String anchor(String name) {
        return prefix + name;
    }

    /** The child in a line, as far as the case tells. */
    public String child() {
        Child child = checked.subject().child();
        String who = child.sex().known() ? child.sex().is(Sex.FEMALE) ? "Girl" : "Boy" : "Child";
        return who
                + (child.age().known() ? " of " + Numbers.plain(child.age().value(), 1) + " years" : ", age not known");
    }

    /** The stage as of which it was judged. */
    public String stage() {
        return report().stages().get(report().stages().size() - 1).word();
    }

    public String day() {
        return report().subject().date().map(d -> "judged for " + d).orElse("no day given");
    }

    /** The rulebase with the first letters of its hash, enough to tell it from others. */
    public String rulebase() {
        return report().rulebase().version() + " " + report().rulebase().hash().substring(0, 8);
    }

    public List<Tally> tallies() {
        Counts n = report().counts();
        int limit = (int)
                report().findings().all().stream().filter(Finding::onTheLimit).count();
        List<Tally> tallies = new ArrayList<>(List.of(
                new Tally("stop", n.stop() == 1 ? "stop" : "stops", n.stop()),
                new Tally("caution", n.caution() == 1 ? "caution" : "cautions", n.caution()),
                new Tally("caution", "on the limit", limit),
                new Tally("not-assessed", "not assessed", n.notAssessed()),
                new Tally("pass", n.pass() - limit == 1 ? "pass" : "passes", n.pass() - limit),
                new Tally(
                        "does-not-apply",
                        n.doesNotApply() == 1 ? "does not apply" : "do not apply",
                        n.doesNotApply())));
        tallies.removeIf(t -> t.word().equals("on the limit") && t.count() == 0);
        return tallies;
    }

    /** What the counts come to, in a sentence or two. */
    public String verdict() {
        return Headline.of(report());
    }

    public List<KeyNumbers.KeyNumber> keyNumbers() {
        return KeyNumbers.of(checked);
    }

    public Decides decides() {
        return Decides.of(report());
    }

    public List<StageView> stages() {
        return report().stages().stream().map(this::stage).toList();
    }

    private StageView stage(Stage stage) {
        List<FindingView> findings = report().findings().forReading().stream()
                .filter(f -> f.stage() == stage)
                .map(this::finding)
                .toList();
        return new StageView(stage, anchor("stage-" + stage.word()), findings, all);
    }

    private FindingView finding(Finding f) {
        return new FindingView(f, anchor("f-" + f.id()), report(), cited);
    }

    public Figures figures() {
        return figures;
    }

    /** The bibliography, by the numbers under which it is cited. */
    public List<Cited.Note> sources() {
        return cited.all();
    }

    public List<WorkGroup> workings() {
        return WorkGroup.of(report(), checked.subject(), cited, prefix, paper);
    }

    public List<MissingFact> missing() {
        return MissingFact.of(report());
    }

    /** Findings that a waiver answers for. */
    public List<FindingView> waived() {
        return report().findings().forReading().stream()
                .filter(f -> f.waiver().isPresent())
                .map(this::finding)
                .toList();
    }

    public Map<String, Double> changed() {
        return report().rulebase().changed();
    }

    /** The value of a threshold in force. */
    public String threshold(String name) {
        return Numbers.text(checked.catalogue().threshold(name));
    }

    /** The outcome of a finding as style sheets and symbols name it. */
    public static String mark(Finding f) {
        return FindingView.mark(f);
    }

    /** The outcome of a finding as it reads. */
    public static String word(Finding f) {
        return FindingView.word(f);
    }

    /** How sure the findings are as a whole; empty when that was not asked. */
    public String certainty() {
        return report().certainty()
                .map(c -> "Within the errors of measurement about " + Numbers.plain(c.expectedFlips(), 1)
                        + (Numbers.plain(c.expectedFlips(), 1).equals("1.0") ? " result" : " results")
                        + " could change"
                        + c.drawn()
                                .map(d -> " (" + d.draws() + " draws, seed " + d.seed() + ")")
                                .orElse("") + ".")
                .orElse("");
    }

    /** The errors that were assumed for what would be worth measuring again. */
    public List<String> assumed() {
        return AssumedError.all(
                report().repeats().stream().map(RepeatAdvice::pointer).toList());
    }
}
