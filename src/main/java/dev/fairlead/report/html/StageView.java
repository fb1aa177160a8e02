package dev.fairlead.report.html;

import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Status;
import java.util.List;

/**
 * The findings of one stage in the order in which people read them.
 *
 * @param all whether what does not apply is listed
 */
public record StageView(Stage stage, String anchor, List<FindingView> findings, boolean all) {
    public String title() {
        return stage.word().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + stage.word().substring(1);
    }

    public List<FindingView> warnings() {
        return findings.stream()
                .filter(f -> f.finding().warns() || f.finding().onTheLimit())
                .toList();
    }

    public List<FindingView> notAssessed() {
        return with(Status.NOT_ASSESSED);
    }

    public List<FindingView> passes() {
        return with(Status.PASS).stream().filter(f -> !f.finding().onTheLimit()).toList();
    }

    /** What does not apply, where it is wanted. */
    public List<FindingView> idle() {
        return all ? with(Status.DOES_NOT_APPLY) : List.of();
    }

    /** How many do not apply and are not listed. */
    public int hidden() {
        return all ? 0 : with(Status.DOES_NOT_APPLY).size();
    }

    private List<FindingView> with(Status status) {
        return findings.stream().filter(f -> f.finding().outcome() == status).toList();
    }
}
