package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The launcher of Windows starts Java as that of other systems does. */
class LaunchersTest {
    private static final Path FOLDER = Path.of("src/main/launcher");

    @Test
    void bothGiveTheSameFlagsByKindOfCommand() throws IOException {
        String unix = Files.readString(FOLDER.resolve("fairlead"));
        String windows = Files.readString(FOLDER.resolve("fairlead.cmd"));
        List<String> many = found("(?m)^ +([a-z |]+)\\) flags=\"(-XX:\\+UseParallelGC[^\"]*)\"", unix);
        List<String> manyThere = found("in \\(([a-z ]+)\\) do if \"%~1\"==\"%%c\" set \"flags=([^\"]+)\"", windows);
        assertThat(manyThere.get(0).split(" ")).containsExactly(many.get(0).split(" \\| "));
        assertThat(manyThere.get(1)).isEqualTo(many.get(1));
        assertThat(found("(?m)^set \"flags=([^\"]+)\"", windows)).isEqualTo(found("\\*\\) flags=\"([^\"]+)\"", unix));
        assertThat(found("(serve)\\) flags= ;;", unix)).isEqualTo(found("\"(serve)\" set \"flags=\"", windows));
    }

    private static List<String> found(String pattern, String text) {
        Matcher m = Pattern.compile(pattern).matcher(text);
        assertThat(m.find()).as(pattern).isTrue();
        return m.groupCount() == 1 ? List.of(m.group(1)) : List.of(m.group(1), m.group(2));
    }
}
