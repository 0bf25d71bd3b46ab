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

/**
 * Skips a test that asks the validator of table schemas, which is not ours, where Node or its module is not installed; with
 * {@code CI=true} it runs and fails instead.
 */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsTableValidator.Condition.class)
public @interface NeedsTableValidator {
    /** Looks for {@code node} on the {@code PATH} and for the module where {@code .ci/run} puts it. */
    final class Condition implements ExecutionCondition {
        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            boolean isNodeThere = Arrays.stream(Optional.ofNullable(System.getenv("PATH"))
                            .orElse("")
                            .split(File.pathSeparator, -1))
                    .map(folder -> Path.of(folder, "node"))
                    .anyMatch(Files::isExecutable);
            boolean isThere = isNodeThere && Files.isDirectory(TableValidator.MODULES.resolve("tableschema"));
            if (isThere || "true".equals(System.getenv("CI"))) {
                return ConditionEvaluationResult.enabled("there is a validator of table schemas, or CI must have one");
            }
            return ConditionEvaluationResult.disabled(
                    "there is no validator of table schemas: cp src/test/node/package*.json target/node/ && npm --prefix target/node ci");
        }
    }
}
