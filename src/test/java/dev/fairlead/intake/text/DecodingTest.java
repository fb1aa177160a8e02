package dev.fairlead.intake.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bytes that are text and bytes that are none; marks and encodings by the Unicode Standard, 2.6 and 23.8. */
class DecodingTest {
    private static byte[] bytes(String hex) {
        byte[] all = new byte[hex.length() / 2];
        for (int i = 0; i < all.length; i++) {
            all[i] = (byte) Integer.parseInt(hex.substring(2 * i, 2 * i + 2), 16);
        }
        return all;
    }

    @ParameterizedTest
    @CsvSource({
        "61, a",
        "6162, ab",
        "EFBBBF61, a",
        "EFBFBD, \uFFFD", // the replacement character itself
        "EFBFBD61, \uFFFDa",
        "C3A4, ä"
    })
    void utf8IsReadWithOrWithoutAMark(String hex, String text) {
        Problems problems = new Problems();
        assertThat(Decoding.text(bytes(hex), problems)).isEqualTo(text);
        assertThat(problems.any()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "'', a case, 1, 1",
        "20, a case, 1, 1",
        "EFBBBF, a case, 1, 1",
        "FEFF0061, text in UTF-8, 1, 1",
        "FFFE6100, text in UTF-8, 1, 1",
        "0061, text in UTF-8, 1, 1",
        "6100, text in UTF-8, 1, 1",
        "FEFF, text in UTF-8, 1, 1",
        "FE, text in UTF-8, 1, 1",
        "EFBB, text in UTF-8, 1, 1",
        "61620AE4, text in UTF-8, 2, 1",
        "610A6263E464, text in UTF-8, 2, 3",
        "EFBBBF61E4, text in UTF-8, 1, 2",
        "61C3, text in UTF-8, 1, 2" // the first half of ä
    })
    void whatIsNoneIsRefusedWhereItStands(String hex, String expected, int line, int column) {
        Problems problems = new Problems();
        assertThat(Decoding.text(bytes(hex), problems)).isNull();
        assertThat(problems.located("", CaseFormat.JSON)).singleElement().satisfies(p -> {
            assertThat(p.expected()).isEqualTo(expected);
            assertThat(p.line()).isEqualTo(line);
            assertThat(p.column()).isEqualTo(column);
        });
    }

    @Test
    void aFileIsReadUpToItsLimit() {
        byte[] most = new byte[CaseParsers.MOST_BYTES];
        Arrays.fill(most, (byte) 'a');
        assertThat(Decoding.text(most, new Problems())).hasSize(CaseParsers.MOST_BYTES);
        Problems problems = new Problems();
        assertThat(Decoding.text(Arrays.copyOf(most, most.length + 1), problems))
                .isNull();
        assertThat(problems.errors()).isTrue();
    }

    @Test
    void problemsStandInTheOrderOfTheFileEachOnce() {
        Problems problems = new Problems();
        assertThat(problems.kept()).isTrue();
        assertThat(Problems.none().kept()).isFalse();
        for (int i = 0; i < Problems.MOST - 1; i++) {
            problems.add(problem("/p" + i, Problems.MOST - i, 2, "this"));
            problems.add(problem("/p" + i, Problems.MOST - i, 2, "that"));
        }
        assertThat(problems.full()).isFalse();
        problems.add(problem("/a", 2, 1, "this"));
        assertThat(problems.full()).isTrue();
        assertThat(problems.located("", CaseFormat.JSON))
                .hasSize(Problems.MOST)
                .startsWith(problem("/a", 2, 1, "this"), problem("/p98", 2, 2, "this"), problem("/p97", 3, 2, "this"))
                .endsWith(problem("/p0", Problems.MOST, 2, "this"));
    }

    /** The place that a problem brings along holds, whatever stands at its pointer. */
    @Test
    void onlyWhatHasNoPlaceIsLookedUp() {
        Problems problems = new Problems();
        problems.add(problem("/b", 0, 0, "this"));
        problems.add(problem("/b", 0, 0, "that"));
        problems.add(problem("/a", 7, 3, "this"));
        problems.add(problem("/none/at/all", 0, 0, "this"));
        byte[] json = "{\"a\": 1,\n \"b\": 2}".getBytes(StandardCharsets.UTF_8);
        assertThat(problems.located(new String(json, StandardCharsets.UTF_8), CaseFormat.JSON))
                .extracting(p -> p.pointer() + " " + p.line() + ":" + p.column())
                .containsExactly("/none/at/all 1:1", "/b 2:7", "/b 2:7", "/a 7:3");
    }

    private static Problem problem(String pointer, int line, int column, String expected) {
        return new Problem(Severity.ERROR, pointer, line, column, expected, "x", Optional.empty(), "");
    }
}
