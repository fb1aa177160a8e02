package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which calls go without the command line: those alone that it would read in the same way. */
class PlainCallTest {
    private static boolean plain(String call) {
        return PlainCall.of(Console.ofProcess(), call.split(" ")).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check a.yaml",
                "check a.yaml -",
                "serve",
                "serve cases",
                "serve --port 0",
                "serve --port 8080 cases",
                "serve cases --port 8080"
            })
    void commonCallsArePlain(String call) {
        assertThat(plain(call)).isTrue();
    }

    @Test
    void whatIsNoNameOfAFolderIsLeftToTheCommandLine() {
        assertThat(PlainCall.of(Console.ofProcess(), new String[] {"serve", "a\0b"}))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check",
                "check --all a.yaml",
                "check @args",
                "serve a b",
                "serve -",
                "serve --once",
                "serve --port",
                "serve --port x",
                "serve --port -1",
                "serve --port 010",
                "serve --port 100000",
                "serve --port 1 --port 2",
                "serve --port=0",
                "serve --rules r",
                "serve --help",
                "serve @args",
                "audit",
                "--version"
            })
    void allElseIsLeftToTheCommandLine(String call) {
        assertThat(plain(call)).isFalse();
    }
}
