package dev.fairlead.rules.language;

import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.RulebaseException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Writes the three files of a new criterion, with a question wherever its writer has to decide. */
public final class Scaffold {
    private Scaffold() {}

    /**
     * Writes the files of {@code stage/id} below {@code rules}; returns them. Nothing that is there is written over.
     */
    public static List<Path> write(Path rules, String folder) throws IOException {
        String[] names = folder.split("/", 2);
        if (names.length < 2
                || Arrays.stream(Stage.values()).noneMatch(s -> s.word().equals(names[0]))
                || !names[1].matches("[a-z][a-z0-9-]*[a-z0-9]")) {
            throw new RulebaseException(
                    List.of(folder + ": a criterion is called stage/id, such as bench/wire-is-clean:"
                            + " a stage of care, and small letters with hyphens"));
        }
        Path home = rules.resolve(folder);
        if (Files.exists(home)) {
            throw new FileAlreadyExistsException(home + " is there already");
        }
        Files.createDirectories(home);
        List<Path> written = new ArrayList<>();
        for (String file : List.of("criterion.drl", "criterion.json", "examples.json")) {
            String text = template(file).replace("@STAGE@", names[0]).replace("@ID@", names[1]);
            written.add(Files.writeString(home.resolve(file), text));
        }
        return written;
    }

    private static String template(String file) throws IOException {
        try (InputStream in = Scaffold.class.getResourceAsStream("scaffold/" + file)) {
            return new String(Objects.requireNonNull(in, file).readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
