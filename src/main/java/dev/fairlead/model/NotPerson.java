package dev.fairlead.model;

/** Words that may look like a name and are none, and who says so. */
public record NotPerson(
        @Field("Words of this case, of a comment in it or of its file's name, that name nobody.")
        Fact<String> words,

        @Field(
                value = "Initials of the person who says that they name nobody, two or three letters.",
                pattern = "[A-Za-z]{2,3}")
        Fact<String> by) {}
