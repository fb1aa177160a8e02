package dev.fairlead.measure.position;

/**
 * Advancement that gives each side its needed room, mm, in three ways of counting; negative where a side has room to
 * spare.
 *
 * @param chord straight from lateral to molar, incisors moved as a block
 * @param alongArch along the deepened arch
 * @param rule 1 mm of advancement for 1 mm on each side
 */
public record AdvancementNeed(Sides chord, Sides alongArch, Sides rule) {

    /**
     * Needed advancement of segments whose sides need this much room, mm. Room is counted one way throughout: the
     * needed sum of tooth widths is compared with the straight distance for the chord, and with the distance along the
     * arch for the other two.
     */
    public static AdvancementNeed of(BuccalSegments segments, Sides needed) {
        return new AdvancementNeed(
                segments.advancementByChord(needed),
                segments.advancementAlongArch(needed),
                segments.advancementByRule(needed));
    }

    /**
     * Advance of an equal plan after which neither side lacks room: the larger side decides; 0 when none is needed, mm.
     */
    public static double equalPlan(Sides advancement) {
        return Math.max(0, advancement.max());
    }

    /** Advance at the midline of a plan that gives each side only what it needs, mm. */
    public static double atMidline(Sides advancement) {
        return advancement.map(a -> Math.max(0, a)).mean();
    }
}
