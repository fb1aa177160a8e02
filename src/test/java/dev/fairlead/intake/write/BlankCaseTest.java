package dev.fairlead.intake.write;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.UnreadableTextException;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.model.Case;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class BlankCaseTest {
    private static Case read(String text) {
        CaseReading r = CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "x.yaml", CaseFormat.BY_NAME);
        assertThat(r.problems()).isEmpty();
        return r.value().orElseThrow();
    }

    @Test
    void theBlankCaseReadsWithoutProblemsAndNothingIsKnownInIt() throws UnreadableTextException {
        String json = CaseWriter.json(read(BlankCase.text(Stage.HOLDING)));
        assertThat(CaseTree.parse(json, CaseFormat.JSON).keys(""))
                .containsExactly("fairlead", "id", "teeth", "hardware");
        assertThat(json).doesNotContain("width").doesNotContain("slot");
    }

    @Test
    void everyFieldOfEveryRecordIsExplained() {
        explained(RecordShape.ofCase(), BlankCase.text(Stage.HOLDING));
    }

    private static void explained(RecordShape shape, String text) {
        for (FieldShape f : shape.fields()) {
            assertThat(text).contains("# " + f.about().value());
            if (f.kind() == Kind.RECORD || f.kind() == Kind.LIST || f.kind() == Kind.TOOTH_MAP) {
                explained(f.nested(), text);
            }
        }
    }

    @Test
    void theExampleEntriesOfListsCanBeUncommented() {
        String blank = BlankCase.text(Stage.HOLDING);
        String text = blank.substring(blank.indexOf("\n\n"))
                .lines()
                .map(l ->
                        l.matches("[a-zA-Z]+: \\[]") ? l.replace(" []", "") : l.startsWith("#   ") ? l.substring(2) : l)
                .collect(Collectors.joining("\n"));
        Case c = read(text);
        assertThat(c.visits()).hasSize(1);
        assertThat(c.landmarks()).hasSize(1);
        assertThat(c.images()).hasSize(1);
        assertThat(c.waivers()).hasSize(1);
    }

    /** Editors that know YAML take the schema from the first line. */
    @Test
    void theBlankCaseNamesItsSchemaAndTellsEachSourceOfErrorOnce() {
        String blank = BlankCase.text(Stage.HOLDING);
        assertThat(blank).startsWith("# yaml-language-server: $schema=" + BlankCase.SCHEMA_FILE + "\n");
        for (dev.fairlead.model.ErrorKind kind : dev.fairlead.model.ErrorKind.values()) {
            assertThat(blank.split(Pattern.quote("  " + kind.source() + "\n"), -1).length - 1)
                    .as(kind.name())
                    .isLessThanOrEqualTo(1);
        }
        assertThat(blank.length()).isLessThan(33_000);
        // a letter beside a field leads to its source
        Matcher source = Pattern.compile("(\\w)  ruler or caliper on a bent wire; common practice, no source\n")
                .matcher(blank);
        assertThat(source.find()).isTrue();
        assertThat(blank).containsPattern("# Height of the fold\\. \\[[^\\]]*; ± 0\\.2 " + source.group(1) + "]");
    }

    @Test
    void theMinimalCaseHoldsWhatItSays() {
        Case c = read(BlankCase.minimal());
        assertThat(c.tooth(dev.fairlead.model.Tooth.of(32)).width().value()).isEqualTo(5.8928);
        assertThat(c.space().left().known()).isTrue();
    }

    @Test
    void aBlankUpToAStageLeavesOutWhatComesLater() {
        String indication = BlankCase.text(Stage.INDICATION);
        assertThat(indication)
                .contains("\nbite:", "\nplan:", "\nwaivers:")
                .doesNotContain("\nbench:", "\nvisits:", "\nholding:");
        assertThat(BlankCase.text(Stage.HOLDING))
                .isEqualTo(BlankCase.text(Stage.HOLDING))
                .contains("\nbench:", "\nvisits:", "\nholding:");
        assertThat(BlankCase.filledBy("holding", Stage.BENCH)).isFalse();
        assertThat(BlankCase.filledBy("holding", Stage.HOLDING)).isTrue();
        assertThat(BlankCase.filledBy("teeth", Stage.RECORDS)).isTrue();
        assertThat(indication).containsPattern("#   a  \\S.*\n#   b  ");
        assertThat(read(indication).bench().fold(Side.LEFT).height().known()).isFalse();
    }
}
