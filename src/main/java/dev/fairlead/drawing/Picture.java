package dev.fairlead.drawing;

import java.util.List;

/**
 * A drawing with the words and numbers that say the same.
 *
 * @param id short name, of letters and hyphens; unique on a page
 * @param title what is drawn
 * @param description what is to be seen, in a sentence or two, for those who do not see it
 * @param svg one svg element with title and desc; its colours stand as attributes and can be overruled by class from a
 *     style sheet
 * @param head column headings of the table beside it
 * @param rows the numbers that are drawn, with units
 */
public record Picture(
        String id, String title, String description, String svg, List<String> head, List<List<String>> rows) {
    public Picture {
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != head.size()) {
                throw new IllegalArgumentException(
                        "a row of " + row.size() + " cells under " + head.size() + " headings");
            }
        }
    }
}
