package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Manual pages by the macros of man(7): a title, what it is, and its help word for word. */
class ManPagesTest {
    @TempDir
    Path folder;

    @Test
    void everyCommandHasAPageWithItsHelp() throws IOException {
        ManPages.main(new String[] {folder.toString()});

        List<String> names;
        try (var files = Files.list(folder)) {
            names = files.map(f -> f.getFileName().toString()).sorted().toList();
        }
        assertThat(names).contains("fairlead.1", "fairlead-check.1", "fairlead-self-check.1");
        String page = Files.readString(folder.resolve("fairlead-check.1"));
        assertThat(page.lines().toList())
                .startsWith(".TH FAIRLEAD-CHECK 1 \"\" \"" + Main.version() + "\"", ".SH NAME")
                .contains("fairlead\\-check \\- Check cases: warnings first, then what is missing, then what passes.");
        // a hyphen that is typed stays one, and no line of the help is taken for a request
        assertThat(page).contains("\\-\\-fail\\-on");
        assertThat(page.lines().filter(l -> l.startsWith(".")).toList())
                .allMatch(l -> l.matches("\\.(TH|SH|nf|fi)\\b.*"));
    }
}
