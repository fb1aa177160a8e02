package dev.fairlead.audit.summary;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.RowMaker;
import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.write.SummaryJson;
import dev.fairlead.audit.write.SummaryText;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.RulebaseUsed;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.rules.verdict.Rulebase;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What an audit says does not depend on the order in which its cases come. */
class OrderOfCasesTest {
    private static final int CASES = 60;
    private static final int ORDERS = 5;
    private static final Pattern LONG = Pattern.compile("\\d+\\.\\d{5,}(E-?\\d+)?");
    private static final Checker CHECKER = new Checker(Rulebase.builtIn());

    @Test
    void casesInAnyOrderEndInTheSameSummary() {
        List<Audit.Done> rows = rows();
        String before = told(rows);
        assertThat(before).contains("factsAsked", "\"missing\"");
        for (int order = 0; order < ORDERS; order++) {
            Collections.shuffle(rows, new Random(order));
            List<String> differ = new ArrayList<>(told(rows).lines().toList());
            before.lines().forEach(differ::remove);
            assertThat(differ).isEmpty();
        }
    }

    private static List<Audit.Done> rows() {
        RowMaker maker = new RowMaker(CHECKER, CheckOptions.USUAL.withoutForces());
        List<Audit.Done> rows = new ArrayList<>();
        Cohort.generate(CASES, 11).forEach(planted -> {
            byte[] text = CaseWriter.json(planted.made()).getBytes(StandardCharsets.UTF_8);
            Item item = new Item("cohort:" + (rows.size() + 1), new Item.Text(text, CaseFormat.JSON), 0);
            rows.add(new Audit.Done(maker.row(item), item));
        });
        return rows;
    }

    private static String told(List<Audit.Done> rows) {
        Tally tally = new Tally(CHECKER, CASES);
        rows.forEach(tally::add);
        Heading heading = new Heading(
                "Fairlead", RulebaseUsed.of(CHECKER.rulebase()), "", "", false, List.of("cohort"), List.of());
        Summary summary = tally.summary();
        String told = SummaryText.of(heading, summary) + SummaryJson.text(SummaryJson.of(heading, summary));
        // sums of the same numbers in another order differ in their last digits
        return LONG.matcher(told).replaceAll(m -> String.format(Locale.ROOT, "%.5e", Double.valueOf(m.group())));
    }
}
