package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DigitsTest {
    @ParameterizedTest
    @CsvSource({"0, 0", "0.291985, 29", "0.0049, < 1", "0.005, < 1", "0.0051, 1", "0.9951, 100", "1, 100"})
    void aShareIsSaidInWholePerCentAndNeverAsNothingWhereThereIsSome(double share, String said) {
        assertThat(Digits.share(share)).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({"0, 2, 0", "0.04123, 2, 3", "5.7735, 2, 1", "57.735, 2, 0", "12345, 3, 0", "0.0996, 2, 2", "1e-15, 2, 9"
    })
    void decimalsShowTheDigitsThatCount(double number, int digits, int decimals) {
        assertThat(Digits.decimals(number, digits)).isEqualTo(decimals);
    }
}
