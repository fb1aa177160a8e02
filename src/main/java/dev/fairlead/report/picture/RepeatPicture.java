package dev.fairlead.report.picture;

import dev.fairlead.drawing.Ink;
import dev.fairlead.drawing.Picture;
import dev.fairlead.drawing.Svg;
import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.RepeatAdvice;
import java.util.ArrayList;
import java.util.List;

/**
 * Which measurements to repeat first: bars of how much each would lower the number of outcomes that measurement error
 * may have turned.
 */
public final class RepeatPicture {
    private static final String TITLE = "What to measure again first";
    private static final double WIDTH = 420;
    private static final double LEFT = 8;
    private static final double ROW = 52;
    /** More than these would not be repeated in one sitting. */
    private static final int SHOWN = 8;
    /** Bars whose share of the longest is smaller than this say nothing. */
    private static final double LEAST = 0.02;

    private RepeatPicture() {}

    /** The picture of a ranking, the first in front; empty where no measurement would make an outcome surer. */
    public static Drawing of(List<RepeatAdvice> ranking) {
        List<RepeatAdvice> shown = ranking.stream()
                .limit(SHOWN)
                .filter(r -> r.fewerFlips() >= LEAST * ranking.get(0).fewerFlips())
                .toList();
        return shown.isEmpty() ? Drawing.without(TITLE) : Drawing.of(picture(shown));
    }

    private static Picture picture(List<RepeatAdvice> shown) {
        String words =
                "The longer the bar, the more a second reading does for the results that errors of measurement could change. First: "
                        + shown.get(0).words() + ".";
        Svg svg = new Svg("repeat", TITLE, words, WIDTH, ROW * shown.size() + 4);
        double longest = shown.get(0).fewerFlips();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            RepeatAdvice r = shown.get(i);
            double y = ROW * i;
            String name = r.words();
            svg.text(Ink.INK, 13, Svg.Anchor.start, LEFT, y + 15, (i + 1) + "  " + name);
            svg.rectangle(
                    i == 0 ? Ink.ACCENT : Ink.WASH,
                    Ink.ACCENT,
                    1,
                    LEFT,
                    y + 21,
                    Math.max(2, (WIDTH - 2 * LEFT - 50) * r.fewerFlips() / longest),
                    10);
            svg.text(
                    Ink.SOFT,
                    12,
                    Svg.Anchor.start,
                    LEFT + Math.max(2, (WIDTH - 2 * LEFT - 50) * r.fewerFlips() / longest) + 6,
                    y + 30,
                    Numbers.plain(r.fewerFlips(), 2));
            svg.text(Ink.SOFT, 12, Svg.Anchor.start, LEFT, y + 45, criteria(r, 58));
            rows.add(List.of(
                    String.valueOf(i + 1), name, Numbers.plain(r.fewerFlips(), 3), String.join(", ", r.criteria())));
        }
        return new Picture(
                "repeat",
                TITLE,
                words,
                svg.done(),
                List.of("Rank", "Measurement", "Fewer results that could change", "Criteria"),
                rows);
    }

    private static String criteria(RepeatAdvice r, int most) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < r.criteria().size(); i++) {
            String next = (i == 0 ? "" : ", ") + r.criteria().get(i);
            if (i > 0 && all.length() + next.length() > most - 8) {
                return all + " and " + (r.criteria().size() - i) + " more";
            }
            all.append(next);
        }
        return all.toString();
    }
}
