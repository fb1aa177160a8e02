package dev.fairlead.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Names of files as they were typed, and what to do where the system cannot tell which is meant. */
final class PathNames implements ITypeConverter<Path> {
    @Override
    public Path convert(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new TypeConversionException(
                    "expected the name of a file or folder, found " + found(name) + "; " + mend(name));
        }
    }

    static String found(String name) {
        return foreign(name)
                ? "letters that the locale of this command does not have"
                : "a character that no name of a file has here";
    }

    static String mend(String name) {
        return foreign(name)
                ? "set LC_ALL=C.UTF-8 in front of the command, or start it by the script fairlead, which does so"
                : "look at the name";
    }

    /** Java takes names by the locale: what it has no letter for arrives as question marks or replacements. */
    private static boolean foreign(String name) {
        return name.chars().anyMatch(c -> c > 127);
    }
}
