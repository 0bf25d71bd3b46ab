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
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.platform.commons.support.AnnotationSupport;

/** Skips a test that runs another program where that is not installed; with {@code CI=true} it runs and fails instead. */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsProgram.Condition.class)
public @interface NeedsProgram {
    /** What it is called, on the {@code PATH}; on Windows it may end in {@code .exe}. */
    String value();

    /** Looks for the program on the {@code PATH}. */
    final class Condition implements ExecutionCondition {
        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            String program = AnnotationSupport.findAnnotation(context.getElement(), NeedsProgram.class)
                    .map(NeedsProgram::value)
                    .orElse("");
            if (program.isEmpty()) {
                return ConditionEvaluationResult.enabled("the class or the method beside it says what it needs");
            }
            if (isThere(program) || "true".equals(System.getenv("CI"))) {
                return ConditionEvaluationResult.enabled("there is a " + program + ", or CI must have one");
            }
            return ConditionEvaluationResult.disabled("there is no " + program + " on the PATH");
        }

        private static boolean isThere(String program) {
            return Arrays.stream(Optional.ofNullable(System.getenv("PATH"))
                            .orElse("")
                            .split(File.pathSeparator, -1))
                    .flatMap(folder -> Stream.of(program, program + ".exe").map(name -> Path.of(folder, name)))
                    .anyMatch(Files::isExecutable);
        }
    }
}
