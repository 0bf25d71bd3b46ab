package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Problems and the answers that carry them. */
class AnswerTest {
    private static final Problem ERROR = Problem.error("mass", "mix.mass-negative", "sand", new BigDecimal("-1"));
    private static final Problem WARNING = Problem.warning("mass", "mix.mass-zero", "sand");

    @Test
    void hasAValueExactlyWhenNoProblemIsAnError() {
        assertThat(Answer.of("result", List.of(WARNING)).value()).contains("result");
        assertThat(Answer.of("result", List.of(WARNING)).problems()).containsExactly(WARNING);
        assertThat(Answer.refused(List.of(WARNING, ERROR)).value()).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Answer.of("result", List.of(ERROR)))
                .withMessageStartingWith("value must be present exactly when no problem is an error, but is ");
        assertThatIllegalArgumentException().isThrownBy(() -> Answer.refused(List.of(WARNING)));
        assertThatIllegalArgumentException().isThrownBy(() -> Answer.refused(List.of()));
    }

    @Test
    void keepsItsProblemsWhenTheListItWasGivenChanges() {
        List<Problem> problems = new ArrayList<>(List.of(WARNING));
        Answer<String> answer = Answer.of("result", problems);
        problems.add(ERROR);
        assertThat(answer.problems()).containsExactly(WARNING);
    }

    @Test
    void tellsErrorsFromWarnings() {
        assertThat(ERROR.isError()).isTrue();
        assertThat(WARNING.isError()).isFalse();
        assertThat(Problem.anyError(List.of(WARNING, ERROR))).isTrue();
        assertThat(Problem.anyError(List.of(WARNING))).isFalse();
        assertThat(Problem.anyError(List.of())).isFalse();
    }

    @Test
    void givesAProblemAPlaceOrAnotherFieldAndKeepsTheRest() {
        Place place = Place.of("mix-design.csv", 3, 9);
        assertThat(ERROR.at(place).place()).contains(place);
        assertThat(ERROR.at(place).values()).isEqualTo(ERROR.values());
        Problem moved = ERROR.at(place).under("constituents.0.mass");
        assertThat(moved.field()).isEqualTo("constituents.0.mass");
        assertThat(moved.place()).contains(place);
        assertThat(moved.code()).isEqualTo("mix.mass-negative");
        assertThat(moved.isError()).isTrue();
    }

    @Test
    void refusesAProblemWithoutACodeAWordWithoutAnIdAndAPlaceBeforeTheFile() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Problem.error("mass", " "))
                .withMessage("code must not be blank, but is \" \"");
        assertThatIllegalArgumentException().isThrownBy(() -> new Problem.Word(""));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Place.of("mix-design.csv", -1))
                .withMessage("line must be at least 1, but is -1");
        assertThatIllegalArgumentException().isThrownBy(() -> Place.of("mix-design.csv", 1, -1));
    }

    @Test
    void knowsWhichRolesAreAggregateAndNamesRolesAndStatesAsFilesDo() {
        assertThat(List.of(Role.values()).stream().filter(Role::isAggregate)).containsExactly(Role.FINE, Role.COARSE);
        assertThat(List.of(Role.values()).stream().map(Role::symbol))
                .containsExactly("cement", "scm", "water", "admixture", "fine", "coarse");
        assertThat(List.of(MoistureState.values()).stream().map(MoistureState::symbol))
                .containsExactly("ssd", "oven-dry", "stock");
    }
}
