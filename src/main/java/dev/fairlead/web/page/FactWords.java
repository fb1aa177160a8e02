package dev.fairlead.web.page;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.web.form.FormWords;
import java.util.ArrayList;
import java.util.List;

/** Places in a case in words, short enough for a link. */
public final class FactWords {
    private FactWords() {}

    /** The fact at a pointer in words: {@code /teeth/31/width} is "tooth 31, width". */
    public static String words(String pointer) {
        List<String> words = new ArrayList<>();
        String at = "";
        boolean element = false;
        for (String part : pointer.substring(1).split("/")) {
            at += "/" + part;
            if (element) {
                boolean tooth = part.length() == 2;
                words.set(
                        words.size() - 1,
                        tooth
                                ? "tooth " + part
                                : words.get(words.size() - 1).replaceAll("s$", "") + " "
                                        + (Integer.parseInt(part) + 1));
                element = false;
                continue;
            }
            FieldShape f = CasePaths.field(at).orElse(null);
            words.add(
                    f == null
                            ? part
                            : f.kind() == Kind.ANSWER
                                    ? f.label()
                                    : FormWords.label(f).toLowerCase(java.util.Locale.ROOT));
            element = f != null && (f.kind() == Kind.LIST || f.kind() == Kind.TOOTH_MAP);
        }
        return String.join(", ", words);
    }
}
