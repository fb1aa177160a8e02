package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ColourTest {
    @Test
    void outcomesAndHeadingsAreColouredAndWordsKept() {
        String text = "WHAT DECIDES\nSTOP     Pain (activation)\n  pass           a: STOP here\n";
        String painted = Colour.painted(text);
        assertThat(painted)
                .startsWith("\u001b[1mWHAT DECIDES\u001b[0m\n\u001b[1;31mSTOP\u001b[0m     Pain")
                .contains("\u001b[32m  pass\u001b[0m           a: STOP here");
        assertThat(painted.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(text);
    }
}
