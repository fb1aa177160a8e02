package dev.fairlead.web.form;

import java.util.List;

/**
 * One section of a case's form, ready to show.
 *
 * @param base address below which all pages of the case stand
 * @param again true when a second reading is asked for beside the first
 * @param live true when each field is saved as it is left; else the whole form is sent at once
 * @param more pointer of the list that is to show one more entry; empty for none
 */
public record FormPage(String base, FormSection section, List<Block> blocks, boolean again, boolean live, String more) {
    /** Where the section's form is sent. */
    public String action() {
        return base + "/form/" + section.key();
    }

    /** True where a quantity of this section can be measured twice. */
    public boolean repeatable() {
        return blocks.stream().anyMatch(FormPage::repeatable);
    }

    private static boolean repeatable(Block block) {
        if (block instanceof Block.Fields b) {
            return b.fields().stream().anyMatch(FieldView::repeatable);
        }
        if (block instanceof Block.Grid g) {
            return g.rows().stream().flatMap(r -> r.cells().stream()).anyMatch(FieldView::repeatable);
        }
        return block instanceof Block.Entries e
                && e.entries().stream().flatMap(x -> x.blocks().stream()).anyMatch(FormPage::repeatable);
    }
}
