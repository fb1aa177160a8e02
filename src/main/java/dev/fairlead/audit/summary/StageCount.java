package dev.fairlead.audit.summary;

import dev.fairlead.model.Stage;

/**
 * How the cases of one stage stand; each case is counted once, by the heaviest that is open.
 *
 * @param stop with a stop that no waiver answers for
 * @param caution without stop, with such a caution
 * @param waiting without warning, with something not assessed
 * @param clear with neither: everything that applies passes or is waived
 */
public record StageCount(Stage stage, long cases, long stop, long caution, long waiting, long clear) {
    static final class Counter {
        private final long[] n = new long[4];

        void add(Look l) {
            n[l.stops() > 0 ? 0 : l.cautions() > 0 ? 1 : l.open() > 0 ? 2 : 3]++;
        }

        StageCount count(Stage s) {
            return new StageCount(s, n[0] + n[1] + n[2] + n[3], n[0], n[1], n[2], n[3]);
        }
    }
}
