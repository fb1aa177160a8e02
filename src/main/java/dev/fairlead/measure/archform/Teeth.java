package dev.fairlead.measure.archform;

/** Lower teeth by their ISO 3950 number: side, position and words. */
public final class Teeth {
    private static final String[] PERMANENT = {
        "central incisor",
        "lateral incisor",
        "canine",
        "first premolar",
        "second premolar",
        "first molar",
        "second molar",
        "third molar"
    };
    private static final String[] PRIMARY = {
        "primary central incisor",
        "primary lateral incisor",
        "primary canine",
        "primary first molar",
        "primary second molar"
    };

    private Teeth() {}

    /** True for 31-38, 41-48, 71-75 and 81-85. */
    public static boolean lower(int tooth) {
        int position = tooth % 10;
        return switch (tooth / 10) {
            case 3, 4 -> position >= 1 && position <= PERMANENT.length;
            case 7, 8 -> position >= 1 && position <= PRIMARY.length;
            default -> false;
        };
    }

    /** Position counted from the midline, 1 to 8. */
    public static int position(int tooth) {
        return required(tooth) % 10;
    }

    /** True on the patient's left. */
    public static boolean left(int tooth) {
        int quadrant = required(tooth) / 10;
        return quadrant == 3 || quadrant == 7;
    }

    public static boolean primary(int tooth) {
        return required(tooth) / 10 >= 7;
    }

    /** The same tooth of the other side. */
    public static int antimere(int tooth) {
        return left(tooth) ? tooth + 10 : tooth - 10;
    }

    /** For example "lower left canine (33)". */
    public static String words(int tooth) {
        String[] names = primary(tooth) ? PRIMARY : PERMANENT;
        return "lower " + (left(tooth) ? "left " : "right ") + names[position(tooth) - 1] + " (" + tooth + ")";
    }

    private static int required(int tooth) {
        if (!lower(tooth)) {
            throw new IllegalArgumentException("not a lower tooth in ISO 3950 numbers: " + tooth);
        }
        return tooth;
    }
}
