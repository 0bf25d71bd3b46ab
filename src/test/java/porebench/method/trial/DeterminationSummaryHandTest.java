package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.Said;
import porebench.method.profile.Profiles;
import porebench.statistics.summary.CriticalRange;

/** Determinations by pencil. */
class DeterminationSummaryHandTest {
    private static final Profile OURS = Profiles.standard().copyAs("ours", "Ours");

    private static Profile with(FigureName name, String value) {
        return OURS.with(name, new Figure(value, "our manual", Mark.LABORATORY));
    }

    private static DeterminationSummary of(double... factors) {
        return of(OURS, factors);
    }

    private static DeterminationSummary of(Profile profile, double... factors) {
        return DeterminationSummary.of(factors, MeterType.B, 0.1, profile).orElseThrow();
    }

    /**
     * 0.3, 0.4, 0.5 on Type B, division 0.1, s of the method 0.1.
     *
     * <pre>
     * mean 0.4, s = sqrt((0.01 + 0 + 0.01) / 2) = 0.1, range 0.2
     * t(0.975, 2) = 4.30265 (t table, recalled): 4.30265 x 0.1 / sqrt(3) = 0.248414, interval 0.151586 to 0.648414
     * C670: three results within 3.3 x 0.1 = 0.33 (recalled): 0.2 passes
     * uncertainty: 0.248414 and what the reading leaves open, 0.95 x 0.1 / 2 = 0.0475: root of squares 0.252914
     * reported 0.4
     * </pre>
     */
    @Test
    void sumsUpThreeTrials() {
        DeterminationSummary summary = of(0.3, 0.4, 0.5);
        assertThat(summary.summary().count()).isEqualTo(3);
        assertThat(summary.summary().mean()).isCloseTo(0.4, offset(1e-12));
        assertThat(summary.summary().standardDeviation().orElseThrow()).isCloseTo(0.1, offset(1e-12));
        assertThat(summary.summary().range()).isCloseTo(0.2, offset(1e-12));
        assertThat(summary.interval().orElseThrow().confidence()).isEqualTo(0.95);
        assertThat(summary.interval().orElseThrow().low()).isCloseTo(0.151586, offset(0.000001));
        assertThat(summary.interval().orElseThrow().high()).isCloseTo(0.648414, offset(0.000001));
        CriticalRange.RangeCheck check = summary.rangeCheck().orElseThrow();
        assertThat(check.limit()).isCloseTo(0.33, offset(1e-12));
        assertThat(check.passes()).isTrue();
        assertThat(summary.reportedPercent()).isEqualTo(new BigDecimal("0.4"));
        double expanded = summary.expandedUncertaintyPercent().orElseThrow();
        assertThat(expanded).isCloseTo(0.252914, offset(0.000001));
        assertThat(summary.doubts()).isEmpty();
    }

    /**
     * Five trials all 0.4: s counts as what the division makes by itself, on Type A, which reads twice, the root of 2 times that;
     * t(0.975, 4) = 2.776445 (t table, recalled).
     *
     * <pre>
     *                       chance: t x q / sqrt(12) / sqrt(5)   rounding                          U, root of squares
     * Type B, q = 0.1       0.0358438                            0.95 q / 2 = 0.0475               0.0595065
     * Type A, q = 0.1       sqrt(2) x that = 0.0506907           q (1 - sqrt(0.05)) = 0.0776393    0.0927222
     * Type B, q = 0.2       0.0716875                            0.095                             0.1190130
     * </pre>
     *
     * <p>The interval is the larger of the two: what rounding leaves open to all five alike.
     */
    @ParameterizedTest
    @CsvSource({"B, 0.1, 0.0595065, 0.0475", "A, 0.1, 0.0927222, 0.0776393", "B, 0.2, 0.1190130, 0.095"})
    void reckonsWithTheReadingOfTheScale(MeterType type, double division, double expanded, double half) {
        DeterminationSummary summary = DeterminationSummary.of(
                        new double[] {0.4, 0.4, 0.4, 0.4, 0.4}, type, division, OURS)
                .orElseThrow();
        assertThat(summary.expandedUncertaintyPercent().orElseThrow()).isCloseTo(expanded, offset(5e-7));
        assertThat(summary.interval().orElseThrow().halfWidth()).isCloseTo(half, offset(5e-7));
    }

    @Test
    void saysNothingOfNoTrialsAndLittleOfOne() {
        assertThat(DeterminationSummary.of(new double[0], MeterType.B, 0.1, OURS))
                .isEmpty();
        DeterminationSummary one = of(0.4);
        assertThat(one.summary().count()).isEqualTo(1);
        assertThat(one.interval()).isEmpty();
        assertThat(one.rangeCheck()).isEmpty();
        assertThat(one.expandedUncertaintyPercent()).isEmpty();
        assertThat(one.reportedPercent()).isEqualTo(new BigDecimal("0.4"));
        assertThat(Said.text(Said.one(one.doubts(), "determination.few-trials")))
                .isEqualTo("1 of at least 3 trials count. Make more trials.");
    }

    /** Rounded once, from the mean: (0.3 + 0.4) / 2 = 0.35 -> 0.4, (0.2 + 0.3) / 2 = 0.25 -> 0.2 to the even tenth. */
    @ParameterizedTest
    @CsvSource({
        "0.3, 0.4, 0.1, even, 0.4",
        "0.2, 0.3, 0.1, even, 0.2",
        "0.2, 0.3, 0.1, away, 0.3",
        "0.3, 0.4, 0.05, even, 0.35",
        "0.31, 0.36, 0.05, even, 0.35",
        "-0.1, 0, 0.1, even, 0.0"
    })
    void reportsTheMeanByTheRuleOfTheProfile(double one, double two, String step, String ties, String reported) {
        Profile profile = with(FigureName.FACTOR_STEP, step)
                .with(FigureName.FACTOR_TIES, new Figure(ties, "our manual", Mark.LABORATORY));
        assertThat(of(profile, one, two).reportedPercent()).isEqualTo(new BigDecimal(reported));
    }

    /** C670: two results within 2.8 x 0.1 = 0.28 (recalled). */
    @ParameterizedTest
    @CsvSource({"0.28, true", "0.281, false"})
    void checksTheRangeAgainstC670(double range, boolean passes) {
        DeterminationSummary summary = of(0.2, 0.2 + range);
        assertThat(summary.rangeCheck().orElseThrow().passes()).isEqualTo(passes);
        assertThat(Said.codes(summary.doubts()).contains("determination.range-too-wide"))
                .isEqualTo(!passes);
    }

    @Test
    void saysHowWideTheRangeIs() {
        assertThat(Said.text(Said.one(of(0.2, 0.2, 0.6).doubts(), "determination.range-too-wide")))
                .isEqualTo("The range of 0.4 % over 3 trials is wider than 0.33 %. Look for a trial that went "
                        + "wrong, or make more trials.");
    }

    @Test
    void doubtsTooFewTrials() {
        assertThat(Said.codes(of(0.4, 0.4).doubts())).containsExactly("determination.few-trials");
        assertThat(of(0.4, 0.4, 0.4).doubts()).isEmpty();
        assertThat(of(with(FigureName.LEAST_TRIALS, "1"), 0.4).doubts()).isEmpty();
    }

    /** Usual below 0.5 (recalled), volumetric test from 0.8 (Kansas KT-18, seen); never two doubts for one height. */
    @ParameterizedTest
    @CsvSource({
        "-0.01, determination.factor-negative",
        "0,",
        "0.49,",
        "0.5, determination.factor-unusual",
        "0.79, determination.factor-unusual",
        "0.8, determination.factor-high",
        "2, determination.factor-high"
    })
    void doubtsAMeanThatIsNegativeUnusualOrHigh(double mean, String code) {
        assertThat(Said.codes(of(mean, mean, mean).doubts()))
                .isEqualTo(code == null ? java.util.List.of() : java.util.List.of(code));
    }

    /** On paper the mean of 0.7, 0.8, 0.9 is 0.8, of 0.4, 0.5, 0.6 it is 0.5, and of -0.1, 0, 0.1 it is 0. */
    @Test
    void readsAMeanAsItStandsOnPaper() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 200; i++) {
            double off = random.nextInt(0, 10) / 100.0;
            assertThat(Said.codes(of(0.8 - off, 0.8, 0.8 + off).doubts())).containsExactly("determination.factor-high");
            assertThat(Said.codes(of(0.5 - off, 0.5, 0.5 + off).doubts()))
                    .containsExactly("determination.factor-unusual");
            assertThat(of(-off, 0, off).doubts()).isEmpty();
        }
    }

    @Test
    void refusesADivisionThatIsNotGreaterThanZeroAndFactorsThatAreNoNumbers() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DeterminationSummary.of(new double[] {0.4}, MeterType.B, 0, OURS))
                .withMessage("divisionPercent must be greater than 0, but is 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> of(0.4, Double.NaN));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 30);
    }

    /** The order of the trials does not matter, and factors k times as large have k times the mean and spread. */
    @ParameterizedTest
    @MethodSource("seeds")
    void doesNotDependOnTheOrderAndScalesWithTheFactors(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int count = random.nextInt(2, 9);
        double[] factors = new double[count];
        double[] backwards = new double[count];
        double[] tripled = new double[count];
        for (int i = 0; i < count; i++) {
            factors[i] = random.nextInt(0, 60) / 100.0;
            backwards[count - 1 - i] = factors[i];
            tripled[i] = 3 * factors[i];
        }
        DeterminationSummary one = of(factors);
        DeterminationSummary other = of(backwards);
        assertThat(other.summary().mean()).isCloseTo(one.summary().mean(), offset(1e-12));
        assertThat(other.reportedPercent()).isEqualTo(one.reportedPercent());
        assertThat(other.expandedUncertaintyPercent().orElseThrow())
                .isCloseTo(one.expandedUncertaintyPercent().orElseThrow(), offset(1e-9));
        DeterminationSummary large = of(tripled);
        assertThat(large.summary().mean()).isCloseTo(3 * one.summary().mean(), offset(1e-12));
        assertThat(large.interval().orElseThrow().halfWidth())
                .isCloseTo(3 * one.interval().orElseThrow().halfWidth(), offset(1e-9));
    }
}
