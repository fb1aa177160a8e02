package dev.fairlead.web.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Which names a case file may have, and where it then is; nothing outside the folder can be named. */
final class CaseFileNames {
    private static final Pattern NEW = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,79}");

    private CaseFileNames() {}

    static boolean isCase(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return !name.startsWith(".") && (lower.endsWith(".json") || lower.endsWith(".yaml") || lower.endsWith(".yml"));
    }

    /** The file of that name in the folder; empty when there is none, or when it leads out of the folder. */
    static Optional<Path> existing(Path folder, String name) throws IOException {
        if (name.isEmpty()
                || name.indexOf('/') >= 0
                || name.indexOf('\\') >= 0
                || name.indexOf('\0') >= 0
                || !isCase(name)) {
            return Optional.empty();
        }
        Path file = folder.resolve(name);
        // a link within the folder could lead anywhere on the machine
        boolean plain = folder.equals(file.getParent()) && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
        return plain ? Optional.of(file) : Optional.empty();
    }

    /** Where a new file of that name goes; throws when it is not a plain short name. */
    static Path fresh(Path folder, String name) {
        if (!NEW.matcher(name).matches() || name.contains("..") || !isCase(name)) {
            throw new StoreException(
                    "“" + name + "” cannot be the name of a case file",
                    "Use up to 80 letters, digits and dashes, ending in .json, .yaml or .yml.");
        }
        return folder.resolve(name);
    }
}
