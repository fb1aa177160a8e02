package dev.fairlead.audit.run;

import dev.fairlead.audit.outcome.Attained;
import dev.fairlead.audit.outcome.Outcomes;
import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.base.Hash;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.AppliedWaiver;
import dev.fairlead.findings.Reach;
import dev.fairlead.findings.Waived;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.measure.Worked;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.verdict.Judgement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Reads and judges one case of an audit; a case that fails becomes a row with the reason. Safe to share between
 * threads.
 */
public final class RowMaker {
    private static final Waived NO_WAIVERS = new Waived(Map.of(), List.of());

    private final Checker checker;
    private final CheckOptions options;
    private final String[] ids;
    /** What reads the numbers off; null where no table asks for them, for it takes as long as judging. */
    private final @Nullable ClosestNumbers values;

    /** Judges by that checker; {@code options} are without workings. */
    public RowMaker(Checker checker, CheckOptions options) {
        this(checker, options, false);
    }

    /** The same; {@code numbers} keeps the numbers behind the findings as well. */
    public RowMaker(Checker checker, CheckOptions options, boolean numbers) {
        this.values = numbers ? new ClosestNumbers(checker.rulebase().catalogue()) : null;
        this.checker = checker;
        this.options = options.withoutWorkings();
        ids = checker.rulebase().catalogue().criteria().stream()
                .map(Criterion::id)
                .toArray(String[]::new);
    }

    /** The row of a case. */
    public CaseRow row(Item item) {
        String hash = "";
        try {
            // numbers are told with their errors, and so is what came out in the end; without them reading is quicker
            Item.Read read = item.read(values == null);
            hash = Hash.of(read.text());
            CaseReading reading = read.reading();
            return reading.read()
                    ? judged(item, hash, reading, read)
                    : CaseRow.not(CaseRow.Kind.UNREADABLE, item.source(), hash, problems(item, reading));
        } catch (TableException e) {
            return CaseRow.not(CaseRow.Kind.UNREADABLE, item.source(), "", e.getMessage());
        } catch (RuntimeException | StackOverflowError e) {
            return CaseRow.not(CaseRow.Kind.FAILED, item.source(), hash, "an error of the program: " + e);
        }
    }

    private CaseRow judged(Item item, String hash, CaseReading reading, Item.Read read) {
        Case c = reading.value().orElseThrow();
        Reach reach = options.reach(c);
        Reach own = options.date().isEmpty() && options.stage().isEmpty()
                ? reach
                : Reach.of(c, Optional.empty(), Optional.empty());
        Optional<LocalDate> day = reach.day();
        Worked worked = checker.judgeable(c, reach, options);
        Judgement judged = checker.judge(worked, reach.judged());
        List<CaseRow.Value> numbers = values == null ? List.of() : values.of(judged);
        @Nullable Ending[] ends = judged.endings();
        byte[] endings = new byte[ids.length];
        Map<String, List<String>> missing = new LinkedHashMap<>();
        for (int i = 0; i < ids.length; i++) {
            Ending e = ends[i];
            endings[i] = (byte) (e == null ? -1 : e.ordinal());
            if (e == Ending.NOT_ASSESSED) {
                missing.put(ids[i], judged.result(i).missing());
            }
        }
        Waived waived = c.waivers().isEmpty() ? NO_WAIVERS : waived(c, ends, day);
        return new CaseRow(
                item.source(),
                CaseRow.Kind.JUDGED,
                "",
                c.id(),
                hash,
                reach.judged(),
                c.resident().value().orElse(""),
                day.map(Object::toString).orElse(""),
                endings,
                inOrder(waived.criteria()),
                missing,
                each(
                        waived.notes(),
                        n -> new CaseRow.Note(n.criterion(), n.kind().word(), n.text())),
                each(judged.errors(), Object::toString),
                reading.problems().size(),
                read.lost(),
                own.day().map(Object::toString).orElse(""),
                course(c, own),
                details(c, own, worked, waived, numbers),
                false);
    }

    private CaseRow.Details details(Case c, Reach own, Worked worked, Waived waived, List<CaseRow.Value> numbers) {
        List<Attained> attained = own.recorded() == Stage.HOLDING
                ? Outcomes.of(c, worked, checker.parts().clinic())
                : List.of();
        List<CaseRow.Answered> answered = waived.holding().isEmpty()
                ? List.of()
                : Arrays.stream(ids)
                        .filter(waived.holding()::containsKey)
                        .map(id -> answered(
                                id, Objects.requireNonNull(waived.holding().get(id))))
                        .toList();
        String site = c.site().value().orElse("");
        return site.isEmpty() && attained.isEmpty() && answered.isEmpty() && numbers.isEmpty()
                ? CaseRow.Details.NONE
                : new CaseRow.Details(site, answered, attained, numbers);
    }

    private static CaseRow.Answered answered(String criterion, AppliedWaiver w) {
        return new CaseRow.Answered(
                criterion, w.by().word(), w.date().toString(), w.expires().toString(), w.reason());
    }

    /** What is made of each; mostly there is none. */
    private static <T, R> List<R> each(List<T> all, Function<T, R> made) {
        return all.isEmpty() ? List.of() : all.stream().map(made).toList();
    }

    private List<String> inOrder(Set<String> criteria) {
        return criteria.isEmpty()
                ? List.of()
                : Arrays.stream(ids).filter(criteria::contains).toList();
    }

    private Waived waived(Case c, @Nullable Ending[] ends, Optional<LocalDate> day) {
        Map<String, Ending> byId = new HashMap<>();
        for (int i = 0; i < ids.length; i++) {
            if (ends[i] != null) {
                byId.put(ids[i], ends[i]);
            }
        }
        return Waived.of(byId, checker.rulebase().catalogue(), c.waivers(), day);
    }

    /** How far treatment is. */
    private static CaseRow.Course course(Case c, Reach own) {
        if (c.holding().debonded().value().isPresent()) {
            return CaseRow.Course.CLOSED;
        }
        if (c.holding().cemented().value().isPresent()) {
            return CaseRow.Course.HOLDING;
        }
        return own.judged().hasReached(Stage.INSERTION) ? CaseRow.Course.WIRE_IN : CaseRow.Course.BEFORE_WIRE;
    }

    private static String problems(Item item, CaseReading reading) {
        List<String> told = new ArrayList<>();
        for (Problem p : reading.errors()) {
            String text = p.toString();
            told.add(item.hasLines() || p.line() == 0 ? text : text.substring(text.indexOf(' ') + 1));
        }
        return String.join("; ", told);
    }
}
