package dev.fairlead.web;

import dev.fairlead.web.store.CaseFolder;
import dev.fairlead.web.store.Stored;
import java.nio.file.Path;

/** Saves version after version and says so, until it is killed. */
final class SavesUntilKilled {
    private SavesUntilKilled() {}

    public static void main(String[] args) throws Exception {
        CaseFolder folder = CaseFolder.open(Path.of(args[0]));
        Stored now = folder.read("k.json").orElseThrow();
        for (int i = number(now.text()) + 1; i < 100_000; i++) {
            now = folder.save("k.json", now.version(), text(i));
            System.out.println(i);
            System.out.flush();
        }
    }

    /** A text of some size whose parts can be told from those of any other version. */
    static String text(int n) {
        return "{\"n\": " + n + ", \"rest\": [" + (n + ",").repeat(3000) + n + "]}\n";
    }

    static int number(String text) {
        return Integer.parseInt(text.substring(6, text.indexOf(',')));
    }
}
