package dev.fairlead.measure.arch;

/** What the curve of a child's arch was made from. */
public enum Basis {
    LANDMARKS("digitised landmarks"),
    WIDTHS_AND_CANINES("widths and depths at molar tubes and canines"),
    WIDTHS("width and depth at the molar tubes"),
    NONE("nothing: neither landmarks nor width and depth are known");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
