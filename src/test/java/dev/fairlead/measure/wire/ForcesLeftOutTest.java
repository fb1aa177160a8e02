package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where the beam model is left out that stands beside whatever waits for it, and only there. */
class ForcesLeftOutTest {
    private static final String LEFT_OUT = "/visits/1/beamModelOfTheWireOmitted";

    private static Forces at1(CaseBuilder b) {
        return new NoForceModel().at(b.build(), 1, Workbook.none());
    }

    @Test
    void aGaugeWouldTellTheForceAndNothingTheStress() {
        Forces f = at1(BaseCase.of());
        assertThat(f.low().missing()).containsExactly("/visits/1/gauge", LEFT_OUT);
        assertThat(f.high()).isEqualTo(f.low());
        assertThat(f.peakStress().missing()).containsExactly(LEFT_OUT);
        assertThat(f.intrusivePerIncisor().missing()).containsExactly(LEFT_OUT);
    }

    @Test
    void theVerticalForceWaitsForHeightsToo() {
        assertThat(at1(BaseCase.of().without("/hardware/left/aboveBrackets"))
                        .intrusivePerIncisor()
                        .missing())
                .containsExactly("/hardware/left/aboveBrackets", LEFT_OUT);
        for (String side : new String[] {"left", "right"}) {
            CaseBuilder b = BaseCase.of().set("/hardware/" + side + "/aboveBrackets", CaseBuilder.NOT_APPLICABLE);
            assertThat(at1(b).intrusivePerIncisor().applies())
                    .as("heights that nobody measures, " + side)
                    .isFalse();
        }
    }

    @Test
    void ofAPlanItTellsTheSame() {
        Forces f = new NoForceModel().planned(BaseCase.of().drop("/visits").build());
        assertThat(f.low().missing()).containsExactly("/visits/0/gauge", "/visits/0/beamModelOfTheWireOmitted");
    }

    @Test
    void itIsKnownByItsName() {
        assertThat(ForceModel.leftOut(List.of("/visits/1/gauge", ForceModel.leftOut(1))))
                .isTrue();
        assertThat(ForceModel.leftOut(List.of("/visits/1/gauge"))).isFalse();
        assertThat(ForceModel.leftOut(List.of())).isFalse();
    }

    @Test
    void thePlanIsAFirstVisitWithItsStandOffs() {
        Case c = BaseCase.of()
                .drop("/visits")
                .without("/plan/standOff")
                .set("/plan/standOffLeft", 1.0)
                .set("/plan/standOffRight", 2.0)
                .build();
        Case planned = ForceModel.withPlannedVisit(c);
        assertThat(planned.visits()).hasSize(1);
        assertThat(planned.visits().get(0).left().standOff().value()).isEqualTo(1);
        assertThat(planned.visits().get(0).right().standOff().value()).isEqualTo(2);
        ForceModel asked = (of, visit, book) -> {
            assertThat(of).isEqualTo(planned);
            assertThat(visit).isZero();
            return new NoForceModel().at(of, visit, book);
        };
        assertThat(asked.planned(c).peakStress().missing()).containsExactly("/visits/0/beamModelOfTheWireOmitted");
    }
}
