package porebench;

import java.io.File;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Skips a test that runs Python where it is not installed; with {@code CI=true} it runs and fails instead. */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsPython.Condition.class)
public @interface NeedsPython {
    /** Looks for {@code python3} on the {@code PATH}. */
    final class Condition implements ExecutionCondition {
        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            boolean isThere = Arrays.stream(Optional.ofNullable(System.getenv("PATH"))
                            .orElse("")
                            .split(File.pathSeparator, -1))
                    .map(folder -> Path.of(folder, "python3"))
                    .anyMatch(Files::isExecutable);
            if (isThere || "true".equals(System.getenv("CI"))) {
                return ConditionEvaluationResult.enabled("there is a python3, or CI must have one");
            }
            return ConditionEvaluationResult.disabled("there is no python3 on the PATH");
        }
    }
}
