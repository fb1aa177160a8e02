package dev.fairlead.drawing;

/**
 * What a stroke or a text stands for, with its colour on paper; a style sheet may overrule it by class (dark pages do).
 * The colours are those of the pages, told apart by lightness too, and never the only sign of a difference.
 */
public enum Ink {
    INK("#1b2733"),
    SOFT("#556270"),
    RULE("#d9d5cb"),
    ACCENT("#0b5568"),
    WASH("#d3e4e8"),
    STOP("#a3280f"),
    CAUTION("#7d5000"),
    PASS("#0a6152"),
    PAPER("#ffffff");

    private final String colour;

    Ink(String colour) {
        this.colour = colour;
    }

    /** The colour on paper, as #rrggbb. */
    public String colour() {
        return colour;
    }

    /** The class by which a style sheet overrules a stroke in this ink. */
    String strokeClass() {
        return "s-" + name().toLowerCase(java.util.Locale.ROOT);
    }

    /** The class by which a style sheet overrules a filling in this ink. */
    String fillClass() {
        return "f-" + name().toLowerCase(java.util.Locale.ROOT);
    }
}
