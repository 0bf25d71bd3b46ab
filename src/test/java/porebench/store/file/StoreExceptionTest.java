package porebench.store.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words of a file that failed: what was being done and why, in both languages. */
class StoreExceptionTest {
    @Test
    void everyTaskHasItsWordsAndEveryWordItsTask() {
        ResourceBundle words = ResourceBundle.getBundle("porebench.store.file.failures", Locale.ROOT);
        List<String> keys = Stream.concat(
                        Arrays.stream(StoreException.Task.values()).map(StoreException.Task::key),
                        Arrays.stream(Reason.values()).map(Reason::key).filter(key -> !key.isEmpty()))
                .toList();
        assertThat(words.keySet()).containsExactlyInAnyOrderElementsOf(keys);
        for (StoreException.Task task : StoreException.Task.values()) {
            StoreException failure = new StoreException(task, "a'b", "c'd", new IllegalStateException("why"));
            assertThat(failure.getMessage()).contains("a'b").doesNotContain("{", "''");
            assertThat(failure.say(Locale.forLanguageTag("es")))
                    .contains("a'b")
                    .doesNotContain("{", "''")
                    .isNotEqualTo(failure.getMessage());
            // Of a language that Porebench does not speak, English.
            assertThat(failure.say(Locale.JAPAN)).isEqualTo(failure.getMessage());
        }
    }
}
