package dev.fairlead.rules.language;

import dev.fairlead.rules.catalogue.RulebaseException;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes the three files of a new criterion, with a question wherever its writer has to decide. */
public final class Scaffold {
    private static final String DRL = """
            package dev.fairlead.rulebase.@STAGE@;

            // Which fact does the criterion look at? One type of dev.fairlead.facts, here and in "about" of criterion.json.
            import dev.fairlead.facts.Bite;

            global dev.fairlead.rules.catalogue.Limits limits;
            global dev.fairlead.rules.language.Verdicts verdicts;

            // When does it pass? Positive conditions alone: known, yes, no, doesNotApply, atMost, above, atLeast, below.
            rule "@ID@: pass"
            when
                $f : Bite( overjet.atMost(limits.of("@ID@.most")) )
            then
                verdicts.pass("@ID@", $f).seen("@ID@.most", $f.overjet());
            end

            // When does it warn, and how heavily: caution or stop? One rule for each reason.
            rule "@ID@: more"
            when
                $f : Bite( overjet.above(limits.of("@ID@.most")) )
            then
                verdicts.caution("@ID@", $f, "more").seen("@ID@.most", $f.overjet());
            end
            """;
    private static final String TEXTS = """
            {
              "title": "What is true on a pass? Say it as a fact",
              "asks": "What does it ask for? {most} stands for the limit with its unit.",
              "why": "Why does it matter, in plain clinical words? What happens to the child where it is not kept?",
              "about": "Bite",
              "needs": ["overjet"],
              "passes": "what is seen on a pass, such as: the overjet is {value}",
              "reasons": {
                "more": {
                  "weight": "caution",
                  "title": "What is the fault, in a few words?",
                  "says": "what is seen on this warning, such as: the overjet is {value}; {limit} or less is asked for",
                  "todo": "What is to be done next about this fault?"
                }
              },
              "exemptions": {},
              "thresholds": {
                "most": { "says": "what does the limit mean?", "unit": "mm", "value": 6, "low": 4, "high": 10, "step": 0.5, "inclusive": true, "bound": "upper", "sources": ["common-practice"] }
              },
              "sources": ["common-practice"],
              "dispute": ""
            }
            """;
    private static final String EXAMPLES = """
            [
              { "name": "pass-usual", "set": { "Bite.overjet": "3 mm" }, "expects": {} },
              { "name": "warn-far-over", "set": { "Bite.overjet": "9 mm" }, "expects": { "@ID@": "caution:more" } },
              { "name": "at-limit-under", "set": { "Bite.overjet": "5.5 mm" }, "expects": {} },
              { "name": "at-limit-at", "set": { "Bite.overjet": "6 mm" }, "expects": {} },
              { "name": "at-limit-over", "set": { "Bite.overjet": "6.5 mm" }, "expects": { "@ID@": "caution:more" } },
              { "name": "missing-overjet", "set": { "Bite.overjet": "unknown" }, "expects": { "@ID@": "not-assessed", "class-iii-caution": "not-assessed" } },
              { "name": "not-applicable-stated", "set": { "Bite.overjet": "does-not-apply" }, "expects": { "@ID@": "does-not-apply", "class-iii-caution": "does-not-apply" } }
            ]
            """;

    private Scaffold() {}

    /**
     * Writes the files of {@code stage/id} below {@code rules}; returns them. Nothing that is there is written over.
     */
    public static List<Path> write(Path rules, String folder) throws IOException {
        if (!folder.matches(
                "(records|indication|readiness|bench|insertion|activation|holding)/[a-z][a-z0-9-]*[a-z0-9]")) {
            throw new RulebaseException(
                    List.of(folder + ": a criterion is called stage/id, such as bench/wire-is-clean:"
                            + " a stage of care, and small letters with hyphens"));
        }
        Map<String, String> files = new LinkedHashMap<>();
        files.put("criterion.drl", DRL);
        files.put("criterion.json", TEXTS);
        files.put("examples.json", EXAMPLES);
        Path home = rules.resolve(folder);
        if (Files.exists(home)) {
            throw new FileAlreadyExistsException(home + " is there already");
        }
        Files.createDirectories(home);
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, String> file : files.entrySet()) {
            String text = file.getValue()
                    .replace("@STAGE@", folder.substring(0, folder.indexOf('/')))
                    .replace("@ID@", folder.substring(folder.indexOf('/') + 1));
            written.add(Files.writeString(home.resolve(file.getKey()), text));
        }
        return written;
    }
}
