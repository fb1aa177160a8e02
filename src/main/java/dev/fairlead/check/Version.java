package dev.fairlead.check;

/** The version of the program, from the jar; "development" when it runs from class files. */
public final class Version {
    private Version() {}

    public static String ofProgram() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "development" : version;
    }
}
