package dev.fairlead.web;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.util.List;

/** Looks at an open page with axe-core (Deque) at desktop, tablet and telephone widths, in light and dark. */
final class Axe {
    private static final String SHOWN =
            ").violations.map(v => v.id + ': ' + v.nodes.slice(0, 3).map(n => n.html.slice(0, 160) + ' ' + n.failureSummary.replace(/\\s+/g, ' ').slice(0, 220)).join(' | '))";
    private static final String ALL =
            "async () => ((await axe.run({ resultTypes: ['violations'], selectors: false, preload: false, rules: { 'target-size': { enabled: true } } }))"
                    + SHOWN;
    /** Colours are all that differs in the dark. */
    private static final String COLOURS =
            "async () => ((await axe.run({ resultTypes: ['violations'], selectors: false, preload: false, runOnly: ['color-contrast', 'link-in-text-block'] }))"
                    + SHOWN;

    private Axe() {}

    /** Unfolds everything; adds what is wrong to the list, and where the page scrolls sideways. */
    static void look(Page page, String what, List<String> faults) throws IOException {
        page.evaluate("() => document.querySelectorAll('details').forEach(d => { d.open = true; })");
        page.evaluate(Browsing.axe());
        for (int[] size : new int[][] {{1440, 900}, {390, 844}, {320, 640}}) {
            page.setViewportSize(size[0], size[1]);
            for (ColorScheme scheme : new ColorScheme[] {ColorScheme.LIGHT, ColorScheme.DARK}) {
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
                ((List<?>) page.evaluate(scheme == ColorScheme.LIGHT ? ALL : COLOURS))
                        .forEach(v -> faults.add(what + " " + size[0] + " " + scheme + " " + v));
            }
        }
        for (int width : new int[] {1440, 1180, 820, 390, 320}) {
            page.setViewportSize(width, 820);
            if ((Boolean) page.evaluate("() => document.documentElement.scrollWidth > innerWidth + 1")) {
                faults.add(what + " " + width + " scrolls sideways");
            }
        }
    }
}
