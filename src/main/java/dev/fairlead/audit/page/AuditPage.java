package dev.fairlead.audit.page;

import dev.fairlead.audit.agree.Agreement;
import dev.fairlead.audit.agree.Detection;
import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Signal;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Asks;
import dev.fairlead.rules.catalogue.Catalogue;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Writes the report of an audit as one page of HTML. */
public final class AuditPage {
    static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "dev.fairlead.templates");
    /** Charts of a criterion are drawn from so many warnings on. */
    private static final int FEWEST_WARNINGS = 5;

    private AuditPage() {}

    /**
     * The page; the cases that need a look first are checked once more for their words. {@code pages} is the link to a
     * folder of their full reports, or empty.
     */
    public static String of(
            Checker checker,
            CheckOptions options,
            Heading heading,
            Summary s,
            Optional<Agreement.Result> agreement,
            Optional<Detection.Result> detection,
            String pages) {
        List<CaseCard> cases = s.looks().parallelStream()
                .map(l -> CaseCard.of(l, checker, options.withoutWorkings()))
                .toList();
        List<AuditView.CriterionView> criteria = new ArrayList<>();
        Catalogue catalogue = checker.rulebase().catalogue();
        for (int i = 0; i < s.criteria().size(); i++) {
            CriterionCount c = s.criteria().get(i);
            boolean enough = c.warn() >= FEWEST_WARNINGS && c.pass() > 0;
            criteria.add(new AuditView.CriterionView(
                    c,
                    Asks.of(Objects.requireNonNull(catalogue.criterion(c.id())), catalogue),
                    enough && s.named().size() > 1 ? Optional.of(ResidentChart.shares(s, c, i)) : Optional.empty(),
                    enough && s.periods().size() > 1 ? Optional.of(PeriodChart.of(s, c, i)) : Optional.empty()));
        }
        boolean warned = s.criteria().stream().anyMatch(c -> c.warn() > 0);
        String script = resource("/look/audit.js");
        AuditView view = new AuditView(
                heading,
                s,
                criteria,
                cases,
                warned && s.named().size() > 1
                        ? Optional.of(ResidentChart.ratios(
                                s,
                                Signal.Family.BURDEN,
                                "residents-burden",
                                "Warnings of each resident against the others"))
                        : Optional.empty(),
                !s.missing().isEmpty() && s.named().size() > 1
                        ? Optional.of(ResidentChart.ratios(
                                s,
                                Signal.Family.MISSING,
                                "residents-missing",
                                "Missing facts of each resident against the others"))
                        : Optional.empty(),
                warned && s.periods().size() > 1 ? Optional.of(PeriodChart.overall(s)) : Optional.empty(),
                s.outturn().lines().stream()
                        .map(l -> new AuditView.Outcome(l, OutcomeChart.of(l)))
                        .toList(),
                agreement,
                detection,
                style(),
                script,
                hash(script),
                pages);
        StringOutput out = new StringOutput(1 << 20);
        ENGINE.render("audit/page.jte", Map.of("v", view), out);
        return out.toString();
    }

    static String style() {
        return resource("/look/base.css") + resource("/look/picture.css") + resource("/look/audit.css");
    }

    private static String resource(String name) {
        try (InputStream in = AuditPage.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }

    /** By which the page's policy knows its own script. */
    private static String hash(String script) {
        try {
            return Base64.getEncoder()
                    .encodeToString(
                            MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
