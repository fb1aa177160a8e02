package dev.fairlead.web.page;

import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.web.form.FormWords;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The criteria book: what is judged, by which thresholds, on what grounds, and where the site differs from the program.
 */
public final class BookController {
    private final Site site;

    BookController(Site site) {
        this.site = site;
    }

    /** Criteria of one stage of care. */
    public record Chapter(String title, List<BookEntry> entries) {}

    void install(RoutesConfig routes) {
        routes.get("/book", this::book);
        routes.get("/book/{id}", this::entry);
    }

    private void book(Context ctx) {
        Catalogue catalogue = site.reports().checks().catalogue();
        List<Chapter> chapters = new ArrayList<>();
        for (Stage s : Stage.values()) {
            chapters.add(new Chapter(
                    FormWords.of(s.word()),
                    catalogue.criteria(s).stream().map(this::entry).toList()));
        }
        List<BookEntry> changed = chapters.stream()
                .flatMap(c -> c.entries().stream())
                .filter(BookEntry::differs)
                .toList();
        site.views()
                .page(
                        ctx,
                        "web/book.jte",
                        "Criteria book",
                        "book",
                        Map.of("chapters", chapters, "changed", changed, "version", catalogue.version()));
    }

    private void entry(Context ctx) {
        Criterion c = site.reports().checks().catalogue().criterion(ctx.pathParam("id"));
        if (c == null) {
            throw new PageError(404, "The book has no criterion of that name", "Look it up in the criteria book.");
        }
        site.views().page(ctx, "web/bookentry.jte", c.title(), "book", Map.of("entry", entry(c)));
    }

    private BookEntry entry(Criterion c) {
        return new BookEntry(
                c,
                site.reports().checks().catalogue(),
                site.reports().checks().standard().criterion(c.id()));
    }
}
