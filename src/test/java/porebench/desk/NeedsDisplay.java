package porebench.desk;

import java.io.IOException;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Skips a window test where there is no display; with {@code CI=true} it runs and fails instead. Tests run in two processes at a
 * time; of those with a window only one runs at a time on one display, because a display has one focus.
 */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith({NeedsDisplay.Condition.class, NeedsDisplay.OneAtATime.class})
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

    /** Waits for the display until no other process has it. */
    final class OneAtATime implements BeforeAllCallback, AfterAllCallback {
        /** One for each display. */
        private static final Path LOCK = Path.of(
                "target",
                "display" + System.getenv().getOrDefault("DISPLAY", "").replaceAll("\\W", "_") + ".lock");

        private @Nullable FileChannel display;

        @Override
        public void beforeAll(ExtensionContext context) throws IOException {
            Files.createDirectories(LOCK.getParent());
            display = FileChannel.open(LOCK, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            display.lock();
        }

        @Override
        public void afterAll(ExtensionContext context) throws IOException {
            if (display != null) {
                display.close();
            }
        }
    }
}
