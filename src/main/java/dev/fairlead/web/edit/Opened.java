package dev.fairlead.web.edit;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.UnreadableTextException;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.web.store.Stored;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * A case file as the pages work with it.
 *
 * @param tree its values as they were typed; empty when the text is neither JSON nor YAML
 */
public record Opened(Stored file, Optional<CaseTree> tree, CaseReading reading) {
    static Opened of(Stored file) {
        CaseReading reading =
                CaseReader.read(file.text().getBytes(StandardCharsets.UTF_8), file.name(), CaseFormat.BY_NAME);
        try {
            return new Opened(
                    file,
                    Optional.of(CaseTree.parse(file.text(), CaseFormat.BY_NAME.resolve(file.name(), file.text()))),
                    reading);
        } catch (UnreadableTextException e) {
            return new Opened(file, Optional.empty(), reading);
        }
    }

    /** A file that is not in the folder yet. */
    public static Opened of(String name, byte[] bytes) {
        return of(Stored.of(name, bytes));
    }

    public String name() {
        return file.name();
    }

    /** What stands at a pointer as a person would type it; empty text when nothing does. */
    public String typed(String pointer) {
        return tree.flatMap(t -> t.get(pointer)).orElse("");
    }

    /** Problems of the value at a pointer, or of its single readings. */
    public List<Problem> problems(String pointer) {
        return reading.problems().stream()
                .filter(p -> p.pointer().equals(pointer) || p.pointer().startsWith(pointer + "/"))
                .toList();
    }

    /** The pseudonym, or the file's name when it cannot be read. */
    public String title() {
        String id = typed("/id");
        return id.isEmpty() ? file.name() : id;
    }

    CaseFormat format() {
        return file.yaml() ? CaseFormat.YAML : CaseFormat.BY_NAME.resolve(file.name(), file.text());
    }
}
