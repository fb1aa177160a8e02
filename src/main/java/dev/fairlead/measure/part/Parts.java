package dev.fairlead.measure.part;

/** The parts that a case is measured with. */
public record Parts(PositionPart position, WirePart wire, ForcePart force) {
    private static final Parts PLAIN = new Parts(new TippingRule(), new PlainWire(), new NoForceModel());

    /** Published rules of thumb and plane geometry; no beam model. */
    public static Parts plain() {
        return PLAIN;
    }
}
