package dev.fairlead.audit.page;

import dev.fairlead.audit.agree.Agreement;
import dev.fairlead.audit.agree.Detection;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import java.util.Optional;

/** x. */
public final class AuditPage {
    public static String of(Checker checker, CheckOptions options, Heading heading, Summary summary, Optional<Agreement.Result> a, Optional<Detection.Result> d) {
        return "";
    }
}
