package dev.fairlead.bench;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.rules.Catalogue;
import dev.fairlead.rules.Criterion;
import dev.fairlead.rules.Limits;
import dev.fairlead.rules.PlainRule;
import dev.fairlead.rules.RuleFiles;
import dev.fairlead.rules.Rulebase;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import javax.tools.ToolProvider;

/**
 * Writes the criteria as plain Java from the rules themselves and compiles that, so that the yardstick never falls
 * behind them.
 */
final class TwinWriter {
    private static final String NAME = "GeneratedTwin";

    private TwinWriter() {}

    static PlainTwin of(Rulebase rulebase, Path rules) {
        try {
            Path folder = Files.createTempDirectory("twin");
            Path source = folder.resolve(NAME + ".java");
            Files.writeString(source, source(rulebase.catalogue(), RuleFiles.of(rules)));
            int failed = ToolProvider.getSystemJavaCompiler()
                    .run(
                            null,
                            null,
                            null,
                            "-cp",
                            System.getProperty("java.class.path"),
                            "-d",
                            folder.toString(),
                            source.toString());
            if (failed != 0) {
                throw new IllegalStateException("the plain Java of the criteria does not compile: " + source);
            }
            Class<?> made = new URLClassLoader(new URL[] {folder.toUri().toURL()}, TwinWriter.class.getClassLoader())
                    .loadClass(NAME);
            return (PlainTwin) made.getConstructor(Limits.class).newInstance(rulebase.limits());
        } catch (IOException | ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String source(Catalogue catalogue, RuleFiles files) {
        StringBuilder fields = new StringBuilder();
        StringBuilder set = new StringBuilder();
        catalogue.thresholds().keySet().forEach(name -> {
            fields.append("private final dev.fairlead.model.Limit ")
                    .append(field(name))
                    .append(";\n");
            set.append(field(name)).append(" = limit(limits, \"").append(name).append("\");\n");
        });
        Map<Class<? extends CaseFact>, StringBuilder> byType = new LinkedHashMap<>();
        List<Criterion> criteria = catalogue.criteria();
        for (int i = 0; i < criteria.size(); i++) {
            Criterion c = criteria.get(i);
            byType.computeIfAbsent(c.about(), t -> new StringBuilder())
                    .append(criterion(i, c, PlainRule.in(files.text(c.folder() + "/" + RuleFiles.DRL), c.about())));
        }
        StringBuilder methods = new StringBuilder();
        StringBuilder dispatch = new StringBuilder();
        byType.forEach((type, body) -> {
            methods.append("private void of(")
                    .append(type.getName())
                    .append(" f, java.util.List<At>[] results) {\n")
                    .append(body)
                    .append("}\n");
            dispatch.append(dispatch.isEmpty() ? "" : "else ")
                    .append("if (fact instanceof ")
                    .append(type.getName())
                    .append(" f) of(f, results);\n");
        });
        return "import dev.fairlead.rules.Outcome;\npublic final class " + NAME
                + " extends dev.fairlead.bench.PlainTwin {\n" + fields
                + "public " + NAME + "(dev.fairlead.rules.Limits limits) {\n" + set
                + "}\nprotected int criteria() { return " + criteria.size() + "; }\n"
                + "protected void judge(dev.fairlead.facts.CaseFact fact, java.util.List<At>[] results) {\n" + dispatch
                + "}\n" + methods + "}\n";
    }

    private static String criterion(int number, Criterion c, List<PlainRule> rules) {
        String s = "s" + number;
        StringBuilder body = new StringBuilder("java.util.List<Said> " + s + " = null;\n");
        for (PlainRule r : rules) {
            String when = r.when().stream()
                    .map(w -> "f." + w.component() + "()." + method(w.kind().name()) + "("
                            + (w.limit().isEmpty() ? "" : field(w.limit())) + ")")
                    .collect(Collectors.joining(" && "));
            String seen =
                    r.seen().stream().map(v -> "f." + v.component() + "()").collect(Collectors.joining(", "));
            String limits = r.seen().stream().map(v -> field(v.limit())).collect(Collectors.joining(", "));
            body.append("if (")
                    .append(when)
                    .append(") ")
                    .append(s)
                    .append(" = add(")
                    .append(s)
                    .append(", new Said(Outcome.")
                    .append(r.outcome())
                    .append(", \"")
                    .append(r.reason())
                    .append("\", java.util.List.of(")
                    .append(seen)
                    .append("), java.util.List.of(")
                    .append(limits)
                    .append(")));\n");
        }
        String needs =
                c.needs().stream().map(n -> ", f." + n.component() + "()").collect(Collectors.joining());
        return body.append("end(results, ")
                .append(number)
                .append(", f, ")
                .append(s)
                .append(needs)
                .append(");\n")
                .toString();
    }

    private static String field(String threshold) {
        return "l_" + threshold.replace('-', '_').replace('.', '_');
    }

    private static String method(String kind) {
        String[] words = kind.toLowerCase(Locale.ROOT).split("_");
        StringBuilder name = new StringBuilder(words[0]);
        for (int i = 1; i < words.length; i++) {
            name.append(Character.toUpperCase(words[i].charAt(0))).append(words[i].substring(1));
        }
        return name.toString();
    }
}
