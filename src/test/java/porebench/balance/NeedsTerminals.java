package porebench.balance;

import java.io.File;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Skips a test that needs a pair of pseudo-terminals where {@code socat} does not make them; with {@code CI=true} it fails instead. */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsTerminals.Condition.class)
public @interface NeedsTerminals {
    /** Looks for the program. */
    final class Condition implements ExecutionCondition {
        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            boolean isThere = Stream.of(System.getenv("PATH").split(File.pathSeparator))
                    .anyMatch(folder -> new File(folder, "socat").canExecute());
            return isThere || "true".equals(System.getenv("CI"))
                    ? ConditionEvaluationResult.enabled("there is socat, or CI must have it")
                    : ConditionEvaluationResult.disabled("there is no socat on the path");
        }
    }
}
