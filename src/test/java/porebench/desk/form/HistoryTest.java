package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is typed is taken back step by step, a step being all that was typed into one field in a row. */
class HistoryTest {
    private final History<String> history = new History<>("");

    @Test
    void typingIntoOneFieldIsOneStepUntilSomethingWasTakenBack() {
        history.update("title", "a");
        history.update("title", "ab");
        history.update("plant", "ab, c");
        history.undo();
        assertThat(history.draft()).isEqualTo("ab");
        // Typed after taking back: a step of its own, or undo would take more than was typed since.
        history.update("title", "abd");
        history.undo();
        assertThat(history.draft()).isEqualTo("ab");
        history.undo();
        assertThat(history.draft()).isEmpty();
        assertThat(history.undoLabel()).isEmpty();
    }

    @Test
    void ofVeryManyStepsTheFirstOnesAreForgotten() {
        for (int step = 1; step <= 250; step++) {
            history.update("field " + step, Integer.toString(step));
        }
        history.undo();
        assertThat(history.draft()).isEqualTo("249");
        while (history.undoLabel().isPresent()) {
            history.undo();
        }
        // 200 steps are kept.
        assertThat(history.draft()).isEqualTo("50");
    }

    @Test
    void whatWasDoneTogetherIsTakenBackTogetherAndNothingIsNoStep() {
        history.together("paste", () -> {});
        assertThat(history.undoLabel()).isEmpty();
        history.together("paste", () -> {
            history.update("one", "1");
            history.update("two", "1, 2");
        });
        history.update("three", "1, 2, 3");
        history.undo();
        history.undo();
        assertThat(history.draft()).isEmpty();
        history.redo();
        assertThat(history.draft()).isEqualTo("1, 2");
        assertThat(history.redoLabel()).contains("three");
    }

    @Test
    void whoListensHearsOfEveryChangeAndOfNoneThatIsNone() {
        List<String> told = new ArrayList<>();
        history.onChange(() -> told.add(history.draft()));
        history.update("title", "a");
        history.update("title", "a");
        history.undo();
        history.undo();
        assertThat(told).containsExactly("a", "");
        assertThat(history.isChanged()).isFalse();
    }
}
