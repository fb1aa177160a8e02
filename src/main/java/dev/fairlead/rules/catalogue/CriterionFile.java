package dev.fairlead.rules.catalogue;

import java.util.List;
import java.util.Map;

/** What stands in a {@code criterion.json}, field by field; checked and resolved by {@link CatalogueReader}. */
record CriterionFile(
        String title,
        String asks,
        String why,
        String about,
        List<String> needs,
        String passes,
        Map<String, ReasonFile> reasons,
        Map<String, String> exemptions,
        Map<String, ThresholdFile> thresholds,
        List<String> sources,
        String dispute) {
    /** One way to warn as it stands in the file. */
    record ReasonFile(String weight, String title, String says, String todo) {}

    /** One threshold as it stands in the file. */
    record ThresholdFile(
            String says,
            String unit,
            double value,
            double low,
            double high,
            double step,
            boolean inclusive,
            String bound,
            List<String> sources) {}

    /** What stands in a {@code rulebase.json}: version, criteria that share a cause, and their order by stage. */
    record Head(String version, Map<String, List<String>> causes, Map<String, List<String>> order) {}

    /** One entry of {@code sources.json}. */
    record SourceFile(String citation, String kind, String named) {}
}
