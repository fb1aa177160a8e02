package dev.fairlead.audit.run;

import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Finding;
import dev.fairlead.intake.Problem;
import dev.fairlead.intake.Reading;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.Criterion;
import dev.fairlead.rules.CriterionResult;
import dev.fairlead.rules.Ending;
import dev.fairlead.rules.Hash;
import dev.fairlead.rules.Judgement;
import dev.fairlead.rules.Status;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads and judges one case of an audit; a case that fails becomes a row with the reason. Safe to share between threads. */
public final class RowMaker {
    private final Checker checker;
    private final CheckOptions options;
    private final Map<String, Integer> index = new HashMap<>();

    /** Judges by that checker; {@code options} are without workings. */
    public RowMaker(Checker checker, CheckOptions options) {
        this.checker = checker;
        this.options = options.withoutWorkings();
        for (Criterion c : checker.rulebase().catalogue().criteria()) {
            index.put(c.id(), index.size());
        }
    }

    /** The row of a case. */
    public CaseRow row(Item item) {
        String hash = "";
        try {
            byte[] text = item.text();
            hash = Hash.of(text);
            Reading reading = item.read(text);
            return reading.read() ? judged(item.source(), hash, reading) : CaseRow.not(CaseRow.Kind.UNREADABLE, item.source(), hash, problems(item, reading));
        } catch (TableException e) {
            return CaseRow.not(CaseRow.Kind.UNREADABLE, item.source(), "", e.getMessage());
        } catch (RuntimeException | StackOverflowError e) {
            return CaseRow.not(CaseRow.Kind.FAILED, item.source(), hash, "an error of the program: " + e);
        }
    }

    private CaseRow judged(String source, String hash, Reading reading) {
        Case c = reading.value().orElseThrow();
        List<String> waived = List.of();
        List<CaseRow.Note> notes = List.of();
        Judgement judgement;
        if (c.waivers().isEmpty()) {
            judgement = checker.judge(c, options);
        } else {
            Checked checked = checker.check(c, hash, options);
            judgement = checked.judgement();
            waived = checked.report().findings().all().stream().filter(f -> f.waiver().isPresent()).map(Finding::id).toList();
            notes = checked.report().findings().waiverNotes().stream().map(n -> new CaseRow.Note(n.criterion(), n.kind().word(), n.text())).toList();
        }
        Stage reached = options.stage().orElse(c.stage());
        byte[] endings = new byte[index.size()];
        Arrays.fill(endings, (byte) -1);
        Map<String, List<String>> missing = new LinkedHashMap<>();
        for (CriterionResult r : judgement.results()) {
            endings[index.get(r.criterion().id())] = (byte) Ending.of(r).ordinal();
            if (r.status() == Status.NOT_ASSESSED && !r.failed()) {
                missing.put(r.criterion().id(), r.missing());
            }
        }
        String day = options.date().or(() -> c.date().value()).map(Object::toString).orElse("");
        return new CaseRow(source, CaseRow.Kind.JUDGED, "", c.id(), hash, reached, c.resident().value().orElse(""), day, endings, waived, missing, notes,
                judgement.errors().stream().map(Object::toString).toList(), reading.problems().size(), false);
    }

    private static String problems(Item item, Reading reading) {
        List<String> told = new ArrayList<>();
        for (Problem p : reading.errors()) {
            String text = p.toString();
            told.add(item.hasLines() || p.line() == 0 ? text : text.substring(text.indexOf(' ') + 1));
        }
        return told.get(0) + (told.size() == 1 ? "" : "; and " + (told.size() - 1) + (told.size() == 2 ? " more problem" : " more problems"));
    }
}
