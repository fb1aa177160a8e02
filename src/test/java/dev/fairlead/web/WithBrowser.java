package dev.fairlead.web;

import java.nio.file.Files;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Gives tests the one browser that all of them share. Without a browser they are skipped, unless the environment says
 * {@code FAIRLEAD_BROWSER=required}: then they fail, so that a build that is meant to drive a browser cannot pass
 * without one.
 */
final class WithBrowser implements ExecutionCondition, ParameterResolver {
    private static final String ENVIRONMENT = "FAIRLEAD_BROWSER";

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        return verdict(Files.isExecutable(Browsing.CHROMIUM), System.getenv(ENVIRONMENT));
    }

    static ConditionEvaluationResult verdict(boolean installed, String environment) {
        if (installed) {
            return ConditionEvaluationResult.enabled(Browsing.CHROMIUM + " is there");
        }
        String reason = "there is no " + Browsing.CHROMIUM + " to drive";
        if ("required".equals(environment)) {
            throw new IllegalStateException(reason + ", and " + ENVIRONMENT + " says that it is required");
        }
        return ConditionEvaluationResult.disabled(reason);
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Browsing.class;
    }

    /** Kept with the root of all tests, which closes it at the end. */
    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getRoot()
                .getStore(ExtensionContext.Namespace.create(WithBrowser.class))
                .computeIfAbsent(Browsing.class, c -> new Browsing(), Browsing.class);
    }
}
