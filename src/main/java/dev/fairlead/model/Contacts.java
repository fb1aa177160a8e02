package dev.fairlead.model;

/** Displacement of the five contact points of the lower front teeth, in the horizontal plane (Little 1975). */
public record Contacts(
        @Field(
                value = "Displacement between the anatomic contact points of 43 and 42.",
                unit = Unit.MM,
                low = 0,
                high = 15,
                error = ErrorKind.CONTACT,
                key = "43-42")
        Measured c4342,

        @Field(
                value = "Displacement between the anatomic contact points of 42 and 41.",
                unit = Unit.MM,
                low = 0,
                high = 15,
                error = ErrorKind.CONTACT,
                key = "42-41")
        Measured c4241,

        @Field(
                value = "Displacement between the anatomic contact points of 41 and 31.",
                unit = Unit.MM,
                low = 0,
                high = 15,
                error = ErrorKind.CONTACT,
                key = "41-31")
        Measured c4131,

        @Field(
                value = "Displacement between the anatomic contact points of 31 and 32.",
                unit = Unit.MM,
                low = 0,
                high = 15,
                error = ErrorKind.CONTACT,
                key = "31-32")
        Measured c3132,

        @Field(
                value = "Displacement between the anatomic contact points of 32 and 33.",
                unit = Unit.MM,
                low = 0,
                high = 15,
                error = ErrorKind.CONTACT,
                key = "32-33")
        Measured c3233) {
    /** The five displacements from the patient's right to left, in mm. */
    public java.util.List<Measured> all() {
        return java.util.List.of(c4342, c4241, c4131, c3132, c3233);
    }
}
