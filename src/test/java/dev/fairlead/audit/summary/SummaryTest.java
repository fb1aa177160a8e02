package dev.fairlead.audit.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.source.Item;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.verdict.Rulebase;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SummaryTest {
    private static final Catalogue CATALOGUE = Rulebase.builtIn().catalogue();
    private static final int N = CATALOGUE.criteria().size();

    private final Tally tally = new Tally(new dev.fairlead.check.Checker(Rulebase.builtIn()), 3);
    private int number;

    private void add(String resident, String day, Ending first, List<String> waived) {
        byte[] endings = new byte[N];
        Arrays.fill(endings, (byte) Ending.PASS.ordinal());
        endings[0] = (byte) first.ordinal();
        String id = "c" + number++;
        tally.add(new Audit.Done(
                new CaseRow(
                        id,
                        CaseRow.Kind.JUDGED,
                        "",
                        id,
                        "",
                        Stage.HOLDING,
                        resident,
                        day,
                        endings,
                        waived,
                        Map.of(),
                        List.of(),
                        List.of(),
                        0,
                        List.of(),
                        day,
                        CaseRow.Course.HOLDING,
                        CaseRow.Details.NONE,
                        false),
                new Item(id, new Item.Trouble(""), 0)));
    }

    @Test
    void aResidentFarOutOfChanceIsNamedAndNobodyElse() {
        for (int r = 0; r < 10; r++) {
            for (int i = 0; i < 50; i++) {
                add(
                        "r" + r,
                        "2026-01-0" + (1 + i % 9),
                        i < (r == 4 ? 25 : 3) ? Ending.CAUTION : Ending.PASS,
                        List.of());
            }
        }
        Summary s = tally.summary();
        assertThat(s.comparisons().out()).extracting(Signal::resident).containsOnly("r4");
        assertThat(s.comparisons().out())
                .extracting(Signal::item)
                .contains("", CATALOGUE.criteria().get(0).id());
        assertThat(s.criteria().get(0).warnRate().share()).isCloseTo((9 * 3 + 25) / 500.0, within(1e-12));
        assertThat(s.residents().get(0).expected(s.rates())).isCloseTo(5.2, within(1e-9));
    }

    @Test
    void differencesThatChanceExplainsAreNotNamed() {
        for (int r = 0; r < 10; r++) {
            for (int i = 0; i < 50; i++) {
                add("r" + r, "2026-01-01", i < 2 + r % 4 ? Ending.CAUTION : Ending.PASS, List.of());
            }
        }
        assertThat(tally.summary().comparisons().out()).isEmpty();
    }

    @Test
    void waivedWarningsCountAsWarningsButLeaveTheCaseClear() {
        add("r1", "2026-01-01", Ending.STOP, List.of(CATALOGUE.criteria().get(0).id()));
        add("r1", "2026-01-01", Ending.STOP, List.of());
        Summary s = tally.summary();
        assertThat(s.criteria().get(0)).satisfies(c -> {
            assertThat(c.warn()).isEqualTo(2);
            assertThat(c.waived()).isEqualTo(1);
        });
        assertThat(s.stages().get(Stage.HOLDING.ordinal())).isEqualTo(new StageCount(Stage.HOLDING, 2, 1, 0, 0, 1));
    }

    @Test
    void shortSpansAreToldByMonthLongOnesByQuarter() {
        add("r1", "2026-01-31", Ending.PASS, List.of());
        add("r1", "2026-03-01", Ending.PASS, List.of());
        add("r1", "", Ending.PASS, List.of());
        assertThat(tally.summary().periods()).extracting(Group::name).containsExactly("2026-01", "2026-02", "2026-03");
        add("r1", "2028-12-01", Ending.PASS, List.of());
        assertThat(tally.summary().periods())
                .extracting(Group::name)
                .hasSize(12)
                .startsWith("2026 Q1", "2026 Q2")
                .endsWith("2028 Q4");
        assertThat(tally.summary().periods()).extracting(Group::note).startsWith("partial", "empty");
        assertThat(tally.summary().periods().get(0).cases()).isEqualTo(2);
    }

    @Test
    void entriesOfListsAreTakenTogether() {
        assertThat(AskedFacts.general("/visits/3/left/standOff")).isEqualTo("/visits/*/left/standOff");
        assertThat(AskedFacts.general("/teeth/41/width")).isEqualTo("/teeth/41/width");
        assertThat(dev.fairlead.audit.write.SummaryText.words("/visits/*/left/standOff"))
                .contains("stand-off")
                .doesNotContain("1");
    }
}
