package porebench.evidence.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FinestStepTest {
    @Test
    void theNumberWithTheMostDecimalsTellsTheStep() {
        assertThat(FinestStep.of(5.4, 5.45, 5)).isEqualByComparingTo("0.01");
        assertThat(FinestStep.of(5.4, 5.50)).isEqualByComparingTo("0.1");
    }

    @Test
    void wholeNumbersAndNoneAreReadToOne() {
        assertThat(FinestStep.of(1200, 7)).isEqualByComparingTo("1");
        assertThat(FinestStep.of()).isEqualByComparingTo("1");
    }
}
