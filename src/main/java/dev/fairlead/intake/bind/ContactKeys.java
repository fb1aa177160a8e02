package dev.fairlead.intake.bind;

import dev.fairlead.model.Contacts;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.RecordShape;
import java.io.IOException;
import java.util.Optional;

/** Recognises a contact point that is named the other way round or with another separator. */
final class ContactKeys {
    private ContactKeys() {}

    /** True when the field was such a one and was refused; its value is then stepped over. */
    static boolean refuse(Input in, RecordShape shape, String pointer, String key) throws IOException {
        if (shape.type() != Contacts.class) {
            return false;
        }
        String digits = key.replaceAll("[^0-9]", "");
        if (digits.length() != 4) {
            return false;
        }
        String turned = digits.substring(2) + digits.substring(0, 2);
        Optional<String> meant = shape.fields().stream()
                .map(FieldShape::key)
                .filter(k ->
                        k.replace("-", "").equals(digits) || k.replace("-", "").equals(turned))
                .findFirst();
        if (meant.isEmpty()) {
            return false;
        }
        boolean reversed = meant.get().replace("-", "").equals(turned);
        in.error(
                pointer,
                "a contact point, named from the patient's right to left",
                Input.quoted(key),
                reversed ? "left and right the other way round" : "another separator",
                "write \"" + meant.get() + "\"");
        in.parser.nextToken();
        in.parser.skipChildren();
        return true;
    }
}
