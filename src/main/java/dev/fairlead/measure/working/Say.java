package dev.fairlead.measure.working;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as workings print them: a decimal point, no more than three decimals, no trailing zeros. */
public final class Say {
    private Say() {}

    /** The bare number; a question mark where it is not known. */
    public static String num(Measured m) {
        return m.known() ? num(m.value()) : "?";
    }

    /** The bare number, in brackets when negative, for use behind a sign. */
    public static String signed(Measured m) {
        return m.known() && m.value() < 0 ? "(" + num(m.value()) + ")" : num(m);
    }

    public static String num(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** The terms joined by plus signs. */
    public static String sum(Measured... terms) {
        StringBuilder text = new StringBuilder();
        for (Measured m : terms) {
            text.append(text.isEmpty() ? "" : " + ").append(signed(m));
        }
        return text.toString();
    }

    /** "left" or "right". */
    public static String side(Side side) {
        return side.word();
    }
}
