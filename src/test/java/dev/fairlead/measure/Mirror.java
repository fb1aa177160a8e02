package dev.fairlead.measure;

import dev.fairlead.model.Tooth;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The same case with the patient's left and right exchanged. */
public final class Mirror {
    private static final Pattern TOOTH = Pattern.compile("(?<=/teeth/|/brackets/|tooth |teeth )\\d\\d");
    private static final Pattern CONTACT = Pattern.compile("\\d\\d-\\d\\d$");

    private Mirror() {}

    public static CaseBuilder of(CaseBuilder b) {
        CaseBuilder mirrored = new CaseBuilder();
        b.values().forEach((pointer, value) -> mirrored.set(pointer(pointer), value(pointer, value)));
        return mirrored;
    }

    private static Object value(String pointer, Object value) {
        if (pointer.matches("/images/\\d+/(tooth|reference)")) {
            return Tooth.of((Integer) value).antimere().number();
        }
        if (pointer.equals("/bite/lowerMidline")) {
            return -((Number) value).doubleValue();
        }
        return value instanceof String s && (pointer.endsWith("/moreOn") || pointer.endsWith("/activated"))
                ? sides(s)
                : value;
    }

    static String pointer(String pointer) {
        Matcher contact = CONTACT.matcher(pointer);
        if (contact.find()) {
            String[] ends = contact.group().split("-");
            return pointer.substring(0, contact.start()) + antimere(ends[1]) + "-" + antimere(ends[0]);
        }
        return sides(TOOTH.matcher(pointer).replaceAll(m -> antimere(m.group())));
    }

    /** The mirrored name of a fact: pairs of antimeres keep theirs. */
    public static String name(String name) {
        return name.startsWith("Antimeres") ? name : pointer(name);
    }

    private static String antimere(String tooth) {
        return Tooth.of(Integer.parseInt(tooth)).antimere().toString();
    }

    private static String sides(String text) {
        return text.replace("left", "#")
                .replace("right", "left")
                .replace("#", "right")
                .replace("Left", "#")
                .replace("Right", "Left")
                .replace("#", "Right");
    }
}
