package porebench.desk;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Skips a window test where there is no display; with {@code CI=true} it runs and fails instead. */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsDisplay.Condition.class)
public @interface NeedsDisplay {
    /** Looks for a display. */
    final class Condition implements ExecutionCondition {
        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            String display = System.getenv("DISPLAY");
            boolean hasDisplay = display != null && !display.isBlank() || !isX11();
            if (hasDisplay || "true".equals(System.getenv("CI"))) {
                return ConditionEvaluationResult.enabled("there is a display, or CI must have one");
            }
            return ConditionEvaluationResult.disabled("there is no DISPLAY");
        }

        private static boolean isX11() {
            String system = System.getProperty("os.name");
            return !system.startsWith("Windows") && !system.startsWith("Mac");
        }
    }
}
