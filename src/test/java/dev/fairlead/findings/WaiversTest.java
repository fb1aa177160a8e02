package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.findings.WaiverNote.Kind;
import dev.fairlead.model.Choices.Role;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Waiver;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.verdict.Rulebase;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A waiver answers for a finding and never hides it; one that does not hold is noted. */
class WaiversTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final String REASON = "Caries is treated on Monday by the family dentist, before any band goes on.";
    private static final Map<String, String> GINGIVITIS = Map.of("Mouth.activeGingivitis", "yes");

    private static Waiver waiver(String criterion, String reason, LocalDate date, LocalDate expires) {
        return new Waiver(
                Fact.of(criterion), Fact.of(reason), Fact.of(Role.SUPERVISOR), Fact.of(date), Fact.of(expires));
    }

    private static Findings findings(Map<String, String> patch, Waiver... waivers) {
        Rulebase rulebase = ProjectRules.rulebase();
        return Findings.of(
                rulebase.judge().judge(ProjectRules.base().with(patch).all()),
                rulebase.catalogue(),
                List.of(waivers),
                Optional.of(DAY));
    }

    @Test
    void aWaivedFindingStaysAndSaysWhoAnswersForIt() {
        Findings f = findings(GINGIVITIS, waiver("hygiene-and-caries", REASON, DAY.minusDays(3), DAY));
        Finding waived = f.of("hygiene-and-caries");
        assertThat(waived.warns()).isTrue();
        assertThat(waived.open()).isFalse();
        assertThat(waived.waiver()).hasValueSatisfying(w -> assertThat(w.by()).isEqualTo(Role.SUPERVISOR));
        assertThat(f.counts().waived()).isEqualTo(1);
        assertThat(f.counts().caution()).isEqualTo(1);
        assertThat(f.waiverNotes()).isEmpty();
    }

    @Test
    void whatDoesNotHoldIsNoted() {
        assertThat(note(GINGIVITIS, waiver("hygiene-and-caries", REASON, DAY.minusDays(9), DAY.minusDays(1))))
                .isEqualTo(Kind.EXPIRED);
        assertThat(note(GINGIVITIS, waiver("hygiene-and-caries", REASON, DAY.plusDays(1), DAY.plusDays(9))))
                .isEqualTo(Kind.NOT_YET);
        assertThat(note(GINGIVITIS, waiver("hygiene", REASON, DAY, DAY))).isEqualTo(Kind.UNKNOWN_CRITERION);
        assertThat(note(Map.of(), waiver("hygiene-and-caries", REASON, DAY, DAY)))
                .isEqualTo(Kind.NOTHING_TO_WAIVE);
        assertThat(note(
                        GINGIVITIS,
                        new Waiver(
                                Fact.of("hygiene-and-caries"),
                                Fact.unknown("/waivers/0/reason"),
                                Fact.of(Role.RESIDENT),
                                Fact.of(DAY),
                                Fact.of(DAY))))
                .isEqualTo(Kind.INCOMPLETE);
    }

    @Test
    void whatWasNotJudgedOrHasNoDayIsNotWeighed() {
        Rulebase rulebase = ProjectRules.rulebase();
        Waiver w = waiver("hygiene-and-caries", REASON, DAY, DAY);
        Waived unjudged = Waived.of(Map.of(), rulebase.catalogue(), List.of(w), Optional.of(DAY));
        assertThat(unjudged.notes()).singleElement().satisfies(n -> {
            assertThat(n.kind()).isEqualTo(Kind.NOT_JUDGED);
            assertThat(n.text()).contains("stage indication was not judged");
        });
        Waived undated = Waived.of(
                Map.of("hygiene-and-caries", Ending.CAUTION), rulebase.catalogue(), List.of(w), Optional.empty());
        assertThat(undated.notes()).extracting(WaiverNote::kind).containsExactly(Kind.UNDATED);
        assertThat(undated.criteria()).isEmpty();
        Waived held = Waived.of(
                Map.of("hygiene-and-caries", Ending.CAUTION), rulebase.catalogue(), List.of(w), Optional.of(DAY));
        assertThat(held.criteria()).containsExactly("hygiene-and-caries");
    }

    @Test
    void aReasonHasTwentyToAThousandCharactersOfFiveLettersAtLeast() {
        Map<String, Boolean> reasons = Map.of(
                "Caries treated today",
                true,
                "Caries treated again".substring(1),
                false,
                "   Caries treated today   ",
                true,
                "  Caries treated agai  ",
                false,
                "abcde".repeat(200),
                true,
                "abcde".repeat(200) + "a",
                false,
                "abcd ".repeat(6),
                false,
                "abcde".repeat(6),
                true,
                "hygiene, and, caries.",
                false);
        reasons.forEach((reason, holds) -> assertThat(
                        findings(GINGIVITIS, waiver("hygiene-and-caries", reason, DAY, DAY))
                                .waiverNotes())
                .extracting(WaiverNote::kind)
                .as(reason)
                .isEqualTo(holds ? List.of() : List.of(Kind.NO_SUBSTANCE)));
        String asks = findings(GINGIVITIS).of("hygiene-and-caries").asks();
        assertThat(note(GINGIVITIS, waiver("hygiene-and-caries", asks, DAY, DAY)))
                .isEqualTo(Kind.NO_SUBSTANCE);
    }

    @Test
    void aStopNeedsAReasonOfSubstance() {
        Map<String, String> steep = Map.of("IncisorPosition.inclination", "104 °");
        String title = ProjectRules.rulebase()
                .catalogue()
                .criterion("incisor-inclination-before")
                .title();
        assertThat(note(steep, waiver("incisor-inclination-before", "seen, fine", DAY, DAY)))
                .isEqualTo(Kind.NO_SUBSTANCE);
        assertThat(note(steep, waiver("incisor-inclination-before", title + "!", DAY, DAY)))
                .isEqualTo(Kind.NO_SUBSTANCE);
        assertThat(note(steep, waiver("incisor-inclination-before", "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxx", DAY, DAY)))
                .isEqualTo(Kind.NO_SUBSTANCE);
        assertThat(findings(
                                steep,
                                waiver(
                                        "incisor-inclination-before",
                                        "The film was tilted; a second film of May shows 93 degrees.",
                                        DAY,
                                        DAY))
                        .of("incisor-inclination-before")
                        .waiver())
                .isPresent();
    }

    @Test
    void aStopIsAnsweredForByALicensedClinician() {
        Map<String, String> steep = Map.of("IncisorPosition.inclination", "104 °");
        for (Role role : Role.values()) {
            Waiver w = new Waiver(
                    Fact.of("incisor-inclination-before"),
                    Fact.of("The film was tilted; a second film of May shows 93 degrees."),
                    Fact.of(role),
                    Fact.of(DAY),
                    Fact.of(DAY));
            boolean may = role == Role.CLINICIAN || role == Role.SUPERVISOR || role == Role.DIRECTOR;
            assertThat(findings(steep, w)
                            .of("incisor-inclination-before")
                            .waiver()
                            .isPresent())
                    .as(role.word())
                    .isEqualTo(may);
            assertThat(findings(steep, w).waiverNotes())
                    .extracting(WaiverNote::kind)
                    .isEqualTo(may ? List.of() : List.of(Kind.WRONG_ROLE));
        }
        assertThat(findings(
                                GINGIVITIS,
                                new Waiver(
                                        Fact.of("hygiene-and-caries"),
                                        Fact.of(REASON),
                                        Fact.of(Role.RESIDENT),
                                        Fact.of(DAY),
                                        Fact.of(DAY)))
                        .of("hygiene-and-caries")
                        .waiver())
                .as("a caution may be answered for by the resident")
                .isPresent();
    }

    @Test
    void twoWaiversForOneFindingAreOneTooMany() {
        Waiver w = waiver("hygiene-and-caries", REASON, DAY, DAY);
        assertThat(findings(GINGIVITIS, w, w).waiverNotes()).singleElement().satisfies(n -> {
            assertThat(n.kind()).isEqualTo(Kind.TWICE);
            assertThat(n.pointer()).isEqualTo("/waivers/1");
        });
    }

    private static Kind note(Map<String, String> patch, Waiver waiver) {
        Findings f = findings(patch, waiver);
        assertThat(f.all()).allMatch(x -> x.waiver().isEmpty());
        assertThat(f.waiverNotes()).hasSize(1);
        return f.waiverNotes().get(0).kind();
    }
}
