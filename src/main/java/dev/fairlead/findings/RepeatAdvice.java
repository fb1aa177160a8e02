package dev.fairlead.findings;

import java.util.List;

/**
 * A measurement worth taking again.
 *
 * @param pointer JSON Pointer (RFC 6901) of the measurement in the case
 * @param fewerFlips by how much the expected number of outcomes that would be otherwise falls once the mean of two
 *     readings stands for one
 * @param criteria criteria that it makes surer, the most first
 */
public record RepeatAdvice(String pointer, double fewerFlips, List<String> criteria) {
    public RepeatAdvice {
        criteria = List.copyOf(criteria);
    }

    /** Names the measurement for people. */
    public String words() {
        return Words.of(pointer);
    }
}
