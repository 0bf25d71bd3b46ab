package porebench.method.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.ReferenceFile;
import porebench.method.profile.Profiles;

/** The table of the factor card. */
class PassWindowTest {
    private static BigDecimal number(String text) {
        return new BigDecimal(text);
    }

    private static PassWindow window(String factor, String target, String tolerance, String division, String top) {
        return PassWindow.of(
                number(factor), number(target), number(tolerance), number(division), number(top), Profiles.standard());
    }

    private static PassWindow.Row row(PassWindow window, String reading) {
        return window.rows().stream()
                .filter(row -> row.reading().compareTo(number(reading)) == 0)
                .findFirst()
                .orElseThrow();
    }

    /** AASHTO re:source newsletter, April 2015 (seen): reading 4.0, G 0.3, limits 4.0 to 6.0: 3.7, fails. */
    @Test
    void failsTheLoadOfAPublishedExample() {
        ReferenceFile.Row printed =
                ReferenceFile.read("reading-and-limits.csv").rows().get(0);
        BigDecimal low = number(printed.text("low_limit"));
        BigDecimal high = number(printed.text("high_limit"));
        BigDecimal two = BigDecimal.valueOf(2);
        PassWindow window = PassWindow.of(
                number(printed.text("factor")),
                low.add(high).divide(two),
                high.subtract(low).divide(two),
                number("0.1"),
                number("10"),
                Profiles.standard());
        PassWindow.Row row = row(window, printed.text("reading"));
        assertThat(row.air()).isEqualTo(number(printed.text("air")));
        assertThat(row.passes()).isEqualTo(printed.text("passes").equals("yes"));
        // By pencil: 4.0 + 0.3 = 4.3 is the first reading that passes, 6.0 + 0.3 = 6.3 the last.
        assertThat(window.lowestPassing()).contains(number("4.3"));
        assertThat(window.highestPassing()).contains(number("6.3"));
    }

    /** Target 6 +- 1.5, G 0.4: air 4.5 to 7.5, readings 4.9 to 7.9; one division further fails. */
    @ParameterizedTest
    @CsvSource({"4.8, 4.4, false", "4.9, 4.5, true", "7.9, 7.5, true", "8.0, 7.6, false"})
    void passesBothLimitsAndNothingBeyond(String reading, String air, boolean passes) {
        PassWindow.Row row = row(window("0.4", "6", "1.5", "0.1", "10"), reading);
        assertThat(row.air()).isEqualTo(number(air));
        assertThat(row.passes()).isEqualTo(passes);
    }

    /** The reported value is compared: 4.85 - 0.4 = 4.45 is reported as 4.4 (44 tenths are even) and fails below 4.5. */
    @Test
    void comparesTheReportedValue() {
        PassWindow window = window("0.4", "6", "1.5", "0.05", "10");
        assertThat(row(window, "4.85").air()).isEqualTo(number("4.4"));
        assertThat(row(window, "4.85").passes()).isFalse();
        assertThat(row(window, "4.90").passes()).isTrue();
    }

    /** From 0 to 10 in steps of 0.1 are 101 readings; in steps of 0.2 up to 9.9 the last is 9.8, the 50th. */
    @Test
    void goesFromZeroToTheTopOfTheScale() {
        PassWindow fine = window("0.4", "6", "1.5", "0.1", "10");
        assertThat(fine.rows()).hasSize(101);
        assertThat(fine.rows().get(0).reading()).isEqualTo(number("0.0"));
        assertThat(fine.rows().get(100).reading()).isEqualTo(number("10.0"));
        PassWindow coarse = window("0.4", "6", "1.5", "0.2", "9.9");
        assertThat(coarse.rows()).hasSize(50);
        assertThat(coarse.rows().get(49).reading()).isEqualTo(number("9.8"));
        assertThat(window("0.4", "6", "1.5", "0.1", "0").rows()).hasSize(1);
    }

    @Test
    void hasNoPassingReadingWhereTheScaleEndsBelowTheTarget() {
        PassWindow window = window("0.4", "6", "0.5", "0.1", "5");
        assertThat(window.lowestPassing()).isEmpty();
        assertThat(window.highestPassing()).isEmpty();
        assertThat(window.rows()).hasSize(51).noneMatch(PassWindow.Row::passes);
    }

    /** A tolerance of 0 leaves the readings that are reported as the target: 6.4 alone. */
    @Test
    void takesAToleranceOfZero() {
        PassWindow window = window("0.4", "6", "0", "0.1", "10");
        assertThat(window.lowestPassing()).contains(number("6.4"));
        assertThat(window.highestPassing()).contains(number("6.4"));
    }

    @ParameterizedTest
    @CsvSource({
        "101, 1.5, 0.1, 10, 'factor must be from -100.0 to 100.0, but is 101.0'",
        "0.4, -0.1, 0.1, 10, 'tolerance must be at least 0, but is -0.1'",
        "0.4, 1.5, 0, 10, 'division must be greater than 0, but is 0.0'",
        "0.4, 1.5, -0.1, 10, 'division must be greater than 0, but is -0.1'",
        "0.4, 1.5, 11, 10, 'division must be from 0.0 to 10.0, but is 11.0'",
        "0.4, 1.5, 0.1, 100.1, 'scaleTop must be from 0.0 to 100.0, but is 100.1'",
        "0.4, 1.5, 0.1, -1, 'scaleTop must be from 0.0 to 100.0, but is -1.0'"
    })
    void refusesWhatMakesNoTable(String factor, String tolerance, String division, String top, String words) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> window(factor, "6", tolerance, division, top))
                .withMessage(words);
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    /** More on the gauge is never less air; so the passing readings lie together. */
    @ParameterizedTest
    @MethodSource("seeds")
    void risesWithTheReading(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        String division = seed % 2 == 0 ? "0.1" : "0.2";
        PassWindow window = PassWindow.of(
                BigDecimal.valueOf(random.nextInt(0, 120), 2),
                BigDecimal.valueOf(random.nextInt(30, 90), 1),
                BigDecimal.valueOf(random.nextInt(1, 20), 1),
                number(division),
                number("12"),
                Profiles.named().get((int) (seed % 4)));
        for (int i = 1; i < window.rows().size(); i++) {
            PassWindow.Row before = window.rows().get(i - 1);
            PassWindow.Row row = window.rows().get(i);
            assertThat(row.air()).isGreaterThanOrEqualTo(before.air());
            assertThat(row.reading().subtract(before.reading())).isEqualByComparingTo(division);
            boolean within = window.lowestPassing().isPresent()
                    && row.reading().compareTo(window.lowestPassing().get()) >= 0
                    && row.reading().compareTo(window.highestPassing().orElseThrow()) <= 0;
            assertThat(row.passes()).isEqualTo(within);
        }
    }
}
