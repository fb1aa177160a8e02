package dev.fairlead.measure.wire;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;

/**
 * The sample case with the wire of the worked reference cases: 44 by 24 mm arch, 0.508 mm wire, bends of 1 mm at the
 * middle, legs 3 mm, tip 20°. The reference draws the arch through the slots, so they lie on it.
 */
final class BaseCase {
    private BaseCase() {}

    static CaseBuilder of() {
        CaseBuilder b = SampleCase.full()
                .without("/arch/canineWidth")
                .without("/arch/canineDepth")
                .without("/wire/modulus");
        b.set("/wire/beakRadius", 0.746).set("/wire/blankLength", 120);
        for (String side : new String[] {"left", "right"}) {
            b.set("/bench/" + side + "/bendRadius", 0.746)
                    .set("/bench/" + side + "/length", 3)
                    .set("/bench/" + side + "/buccalTip", 20)
                    .set("/bench/" + side + "/height", 4)
                    .set("/hardware/" + side + "/slotOffset", 0)
                    .set("/hardware/" + side + "/length", 3);
            for (int i = 0; i < 3; i++) {
                b.set("/visits/" + i + "/" + side + "/standOff", 1.5);
            }
        }
        for (int i = 0; i < 3; i++) {
            b.set("/visits/" + i + "/gauge", CaseBuilder.NOT_APPLICABLE);
        }
        for (int tooth : new int[] {42, 41, 31, 32}) {
            b.set("/hardware/brackets/" + tooth + "/fromMidline", tooth % 10 == 1 ? 2.7 : 8.3)
                    .set("/hardware/brackets/" + tooth + "/slotOffset", 0);
        }
        return b;
    }
}
