package porebench.statistics.distribution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.ReferenceFile;
import porebench.ReferenceFile.Row;
import porebench.statistics.outlier.PairDistribution;
import porebench.statistics.summary.StudentisedRange;

/** Points of the distributions far out and near the middle, against R; what lies outside the stated range is refused. */
class ExtremePointsReferenceTest {
    private static final double PROMISED = 1e-7;

    @Test
    void agreesWithRFromOneTailToTheOther() {
        for (Row row : ReferenceFile.read("extreme-points.csv").rows()) {
            double tail = row.number("upperTail");
            double found = switch (row.text("distribution")) {
                case "normal" -> -Normal.quantile(tail);
                case "t" -> new StudentT(row.number("numerator")).upperPoint(tail);
                case "chi-square" -> new ChiSquare(row.number("numerator")).upperPoint(tail);
                default -> new FRatio(row.number("numerator"), row.number("denominator")).upperPoint(tail);
            };
            assertThat(found).as(row.toString()).isCloseTo(row.number("point"), withPercentage(PROMISED));
        }
    }

    @Test
    void findsTheSamePointsFromTheOtherSide() {
        for (Row row : ReferenceFile.read("extreme-points.csv").rows()) {
            double tail = row.number("upperTail");
            switch (row.text("distribution")) {
                case "normal" ->
                    assertThat(Normal.quantile(tail)).isCloseTo(-row.number("point"), withPercentage(PROMISED));
                case "t" ->
                    assertThat(new StudentT(row.number("numerator")).quantile(tail))
                            .isCloseTo(-row.number("point"), withPercentage(PROMISED));
                // 1 - tail is exact above one half, and near it the same number.
                case "chi-square" ->
                    assertThat(new ChiSquare(row.number("numerator")).quantile(tail > 0.5 ? 1 - tail : 0.5))
                            .isCloseTo(
                                    tail > 0.5
                                            ? row.number("point")
                                            : new ChiSquare(row.number("numerator")).upperPoint(0.5),
                                    withPercentage(PROMISED));
                default -> {
                    FRatio mirrored = new FRatio(row.number("denominator"), row.number("numerator"));
                    if (tail > 0.5) {
                        assertThat(1 / mirrored.upperPoint(1 - tail))
                                .isCloseTo(row.number("point"), withPercentage(PROMISED));
                    }
                }
            }
        }
    }

    /** The definition integrated in R: a range of normal values over the root of a chi-square value over its degrees. */
    @Test
    void integratesTheStudentisedRangeToNineDigits() {
        for (Row row : ReferenceFile.read("studentised-range-points.csv").rows()) {
            double probability = row.number("probability");
            double factor = StudentisedRange.factor(row.whole("n"), row.whole("df"), probability);
            assertThat(factor).as(row.toString()).isCloseTo(row.number("factor"), withPercentage(PROMISED));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.49, 0.49", "1000001, 1000001.0", "NaN, NaN", "0, 0.0"})
    void refusesDegreesOfFreedomOutsideItsRange(double degrees, String said) {
        String rule = " must be from 0.5 to 1000000.0, but is " + said;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ChiSquare(degrees))
                .withMessage("degreesOfFreedom" + rule);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FRatio(degrees, 2))
                .withMessage("numerator" + rule);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FRatio(2, degrees))
                .withMessage("denominator" + rule);
    }

    @ParameterizedTest
    @CsvSource({"9e-31, 9.0E-31", "0, 0.0", "1, 1.0", "NaN, NaN"})
    void refusesProbabilitiesOutsideTheirRange(double probability, String said) {
        String rule = "probability must be at least 1e-30 and less than 1, but is " + said;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ChiSquare(3).quantile(probability))
                .withMessage(rule);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ChiSquare(3).upperPoint(probability))
                .withMessage(rule);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FRatio(3, 4).upperPoint(probability))
                .withMessage(rule);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Normal.quantile(probability))
                .withMessage(rule);
    }

    @Test
    void refusesWhatTheRangeAndThePairAreNotMadeFor() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StudentisedRange.factor(1001, 5, 0.95))
                .withMessage("n must be from 2.0 to 1000.0, but is 1001.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StudentisedRange.factor(3, 1_000_001, 0.95))
                .withMessage("degreesOfFreedom must be from 2.0 to 1000000.0, but is 1000001.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StudentisedRange.factor(3, 5, 0.9999))
                .withMessage("probability must be from 0.5 to 0.999, but is 0.9999");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PairDistribution.of(8).lowerPoint(9e-5))
                .withMessage("significance must be from 1.0E-4 to 0.5, but is 9.0E-5");
        assertThat(PairDistribution.of(8).oneSided(PairDistribution.of(8).lowerPoint(1e-4)))
                .isCloseTo(1e-4, withPercentage(1e-6));
    }
}
