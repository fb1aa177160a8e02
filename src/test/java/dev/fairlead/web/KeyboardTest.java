package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.Case;
import dev.fairlead.web.form.FormSection;
import dev.fairlead.web.form.FormWords;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole story of one case from a blank to holding, by keyboard only: every key is pressed on what has the focus,
 * and the case that comes out is the invented sample, fact by fact.
 */
@ExtendWith(WithBrowser.class)
class KeyboardTest {
    private static final String FOCUS =
            "() => { const a = document.activeElement; return { name: a.name || '', type: a.type || '', text: (a.textContent || '').trim(), "
                    + "value: a.value || '', index: a.name ? [...document.getElementsByName(a.name)].filter(x => x.type !== 'checkbox').indexOf(a) : 0 }; }";

    @TempDir
    Path folder;

    private final CaseTree wanted = CaseTree.of(SampleCase.full().build());
    private final Set<String> given = new HashSet<>();

    @Test
    void fromBlankToHolding(Browsing browsing) throws Exception {
        try (Pages pages = Pages.over(folder);
                BrowserContext c = browsing.desktop()) {
            Page page = browsing.open(c, pages, "/cases");
            tabTo(page, "id");
            page.keyboard().type("test");
            tabToText(page, "Start");
            page.keyboard().press("Enter");
            page.waitForURL("**/cases/test.json/form/child**");
            assertThat(page.evaluate("() => document.activeElement.id"))
                    .as("focus")
                    .isEqualTo("f_child_age");
            for (FormSection s : FormSection.ALL) {
                arrive(page, s);
                entries(page, s);
                fill(page);
                if (s.next() != null) {
                    tabToText(page, "Save and go on to");
                    page.keyboard().press("Enter");
                }
            }
            tabToText(page, "Save");
            page.keyboard().press("Enter");
            page.waitForLoadState();
            Browsing.settle(page);
            browsing.assertQuiet();
        }
        Case made = CaseReader.read(folder.resolve("test.json")).value().orElseThrow();
        assertThat(CaseWriter.json(made))
                .isEqualTo(CaseWriter.json(SampleCase.full().build()));
    }

    private static void arrive(Page page, FormSection s) {
        try {
            page.waitForURL(
                    java.util.regex.Pattern.compile(".*/form/" + s.key() + "(#.*)?"),
                    new Page.WaitForURLOptions().setTimeout(Browsing.PATIENCE_MS));
        } catch (com.microsoft.playwright.TimeoutError e) {
            throw new AssertionError(
                    "never came to " + s.key() + ", but stands on " + page.url() + ", which says: "
                            + page.innerText("main"),
                    e);
        }
    }

    /**
     * Opens as many entries of the lists of a section as the sample has: each is filled in before the next is opened.
     */
    private void entries(Page page, FormSection s) {
        for (String list : s.roots()) {
            for (int i = 0; i < (list.matches("/(visits|images|landmarks)") ? wanted.size(list) : 0); i++) {
                tabToText(page, "Add an entry");
                page.keyboard().press("Enter");
                page.waitForURL("**more=**");
                page.waitForLoadState();
                fill(page);
                tabToText(page, "Save");
                page.keyboard().press("Enter");
                page.waitForURL(u -> !u.contains("more="));
                page.waitForLoadState();
            }
        }
    }

    /** Goes through the form from its first field to the Save button, and gives every field what the sample says. */
    private void fill(Page page) {
        if (!(Boolean) page.evaluate("() => !!document.querySelector('[data-fresh]')")) {
            page.evaluate("() => document.getElementById('main').focus()");
        }
        for (int stops = 0; stops < 900; stops++) {
            Map<?, ?> at = (Map<?, ?>) page.evaluate(FOCUS);
            String name = (String) at.get("name");
            if (at.get("text").equals("Save")) {
                return;
            }
            if (name.startsWith("/")) {
                give(page, name, (String) at.get("type"), ((Number) at.get("index")).intValue(), (String)
                        at.get("value"));
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("the form never ended");
    }

    private void give(Page page, String pointer, String type, int index, String there) {
        String value = wanted.get(pointer).orElse("");
        if (value.isEmpty() || index > 0 && !type.equals("radio") || !given.add(pointer)) {
            return;
        }
        switch (type) {
            case "radio" -> {
                if (there.equals(value)) {
                    page.keyboard().press("Space");
                }
                for (int i = 0; i < 5 && !value.equals(((Map<?, ?>) page.evaluate(FOCUS)).get("value")); i++) {
                    page.keyboard().press("ArrowRight");
                }
            }
            case "select-one" ->
                page.keyboard()
                        .type(
                                pointer.startsWith("/teeth/")
                                        ? FormWords.of(value).substring(0, 1)
                                        : FormWords.of(value));
            case "date" -> page.keyboard().type(value.substring(5, 7) + value.substring(8, 10) + value.substring(0, 4));
            default -> {
                if (!there.equals(value)) {
                    page.keyboard().type(value);
                }
            }
        }
    }

    private static void tabTo(Page page, String name) {
        tab(page, at -> at.get("name").equals(name), name);
    }

    private static void tabToText(Page page, String text) {
        tab(page, at -> ((String) at.get("text")).startsWith(text), text);
    }

    private static void tab(Page page, java.util.function.Predicate<Map<?, ?>> there, String what) {
        Set<String> seen = new TreeSet<>();
        for (int i = 0; i < 900; i++) {
            Map<?, ?> at = (Map<?, ?>) page.evaluate(FOCUS);
            if (there.test(at)) {
                return;
            }
            seen.add(at.get("name") + " " + at.get("text"));
            page.keyboard().press("Tab");
        }
        throw new AssertionError("no Tab leads to " + what + " on " + page.url() + ", only to " + seen
                + "; the page says: " + page.innerText("main"));
    }
}
