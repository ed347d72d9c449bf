package plantair.testing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Finds Chromium, skips or fails without it, and hands one running browser to all tests. */
final class BrowserExtension implements ExecutionCondition, ParameterResolver {

    private static final Logger LOG = LoggerFactory.getLogger(BrowserExtension.class);
    private static final Namespace NAMESPACE = Namespace.create(BrowserExtension.class);

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        var result = evaluate(System.getenv(), chromium(System.getenv()), context.getDisplayName());
        if (result.isDisabled()) {
            LOG.warn(
                    "SKIPPED {}: {}",
                    context.getDisplayName(),
                    result.getReason().orElse(""));
        }
        return result;
    }

    static ConditionEvaluationResult evaluate(Map<String, String> environment, Optional<Path> chromium, String test) {
        if (chromium.isPresent()) {
            return ConditionEvaluationResult.enabled("Chromium is " + chromium.get());
        }
        String reason = "no Chromium found; install one or name it in the environment variable CHROMIUM";
        if (environment.containsKey("CI")) {
            throw new IllegalStateException(test + " must run where CI is set, but " + reason);
        }
        return ConditionEvaluationResult.disabled(reason);
    }

    static Optional<Path> chromium(Map<String, String> environment) {
        return Stream.of(
                        environment.get("CHROMIUM"),
                        "/usr/bin/chromium-headless-shell", // the same engine without a window takes a third less
                        "/usr/bin/chromium",
                        "/usr/bin/chromium-browser",
                        "/usr/bin/google-chrome")
                .filter(Objects::nonNull)
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Browser.class;
    }

    @Override
    public Browser resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getRoot()
                .getStore(NAMESPACE)
                .computeIfAbsent(
                        Browser.class,
                        key -> Browser.launch(chromium(System.getenv()).orElseThrow()),
                        Browser.class);
    }
}
