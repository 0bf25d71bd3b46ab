package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import porebench.desk.HeldTasks;

class WorkedOutTest {
    private final HeldTasks held = new HeldTasks();
    private final List<Integer> worked = new ArrayList<>();
    private final List<String> told = new ArrayList<>();
    private final WorkedOut<Integer, String> answers = new WorkedOut<>(
            () -> held,
            question -> {
                worked.add(question);
                return "answer to " + question;
            },
            () -> told.add("changed"));

    @Test
    void anAnswerIsThereOnceItIsWorkedOutAndIsKept() {
        assertThat(answers.to(1)).isEmpty();
        assertThat(answers.to(1)).isEmpty();
        assertThat(held.count()).isEqualTo(1);
        held.end();
        assertThat(told).containsExactly("changed");
        assertThat(answers.to(1)).contains("answer to 1");
        assertThat(worked).containsExactly(1);
    }

    @Test
    void anotherQuestionHasNoAnswerYetAndAnOvertakenOneIsForgotten() {
        answers.to(1);
        answers.to(2);
        answers.to(3);
        assertThat(held.count()).isEqualTo(1);
        held.end();
        assertThat(told).isEmpty();
        assertThat(answers.to(3)).isEmpty();
        held.end();
        assertThat(answers.to(3)).contains("answer to 3");
        assertThat(worked).containsExactly(1, 3);
        assertThat(answers.to(1)).isEmpty();
    }

    @Test
    void aFailureIsNotSwallowedAndNotTriedAgainAndAgain() {
        WorkedOut<Integer, String> failing = new WorkedOut<>(
                () -> held,
                question -> {
                    throw new IllegalArgumentException("planted");
                },
                () -> told.add("changed"));
        failing.to(1);
        assertThatThrownBy(held::end).hasRootCauseMessage("planted");
        assertThat(failing.to(1)).isEmpty();
        assertThat(failing.isFailed()).isTrue();
        assertThat(held.count()).isZero();
        assertThat(told).containsExactly("changed");
        failing.to(2);
        assertThat(failing.isFailed()).isFalse();
        failing.to(3);
        assertThatThrownBy(held::end).hasRootCauseMessage("planted");
        assertThat(failing.isFailed()).isFalse();
        assertThat(held.count()).isEqualTo(1);
    }

    /** A lab book that is closed gives up what is still read of it. */
    @Test
    void whatWasGivenUpIsNoFailureToTell() {
        WorkedOut<Integer, String> givenUp = new WorkedOut<>(
                () -> held,
                question -> {
                    throw new CancellationException("closed");
                },
                () -> told.add("changed"));
        givenUp.to(1);
        held.end();
        assertThat(givenUp.to(1)).isEmpty();
        assertThat(givenUp.isFailed()).isTrue();
    }

    @Test
    void whereWorkIsDoneAtOnceSoIsTheAnswer() {
        WorkedOut<Integer, String> direct = new WorkedOut<>(Tasks::direct, question -> "answer", () -> {});
        assertThat(direct.to(1)).contains("answer");
    }
}
