package dev.fairlead.web;

import dev.fairlead.web.store.CaseFolder;
import dev.fairlead.web.store.Stored;
import java.nio.file.Path;

/** Saves version after version of some cases at once and says so after each, until it is killed. */
final class SavesUntilKilled {
    private SavesUntilKilled() {}

    /** One thread for each folder. */
    public static void main(String[] args) throws Exception {
        for (int lane = 0; lane < args.length; lane++) {
            int me = lane;
            new Thread(() -> save(me, Path.of(args[me]))).start();
        }
    }

    private static void save(int lane, Path where) {
        try {
            CaseFolder folder = CaseFolder.open(where);
            Stored now = folder.read("k.json").orElseThrow();
            for (int i = number(now.text()) + 1; i < 100_000; i++) {
                now = folder.save("k.json", now.version(), text(i));
                System.out.println(lane + " " + i);
            }
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** A text of some size whose parts can be told from those of any other version. */
    static String text(int n) {
        return "{\"n\": " + n + ", \"rest\": [" + (n + ",").repeat(1500) + n + "]}\n";
    }

    static int number(String text) {
        return Integer.parseInt(text.substring(6, text.indexOf(',')));
    }
}
