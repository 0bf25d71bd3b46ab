package porebench.statistics.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.statistics.Judged;
import porebench.statistics.distribution.Normal;

class NormalityTest {
    private static final double[] SCORES =
            IntStream.range(1, 40).mapToDouble(i -> Normal.quantile(i / 40.0)).toArray();

    private static double[] rounded(Random random, int count, double spread) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = Math.rint(10 * spread * random.nextGaussian()) / 10;
        }
        return values;
    }

    /** Three values: 0 1 4, mean 5/3, squares 26/3, W = (4 / sqrt 2)^2 / (26/3) = 12/13. */
    @Test
    void agreesWithThePencilForThreeValues() {
        ShapiroWilkTest test = ShapiroWilkTest.of(4, 0, 1).orElseThrow();
        assertThat(test.statistic()).isCloseTo(12.0 / 13, offset(1e-14));
        assertThat(test.p()).isCloseTo(6 / Math.PI * (Math.asin(Math.sqrt(12.0 / 13)) - Math.PI / 3), offset(1e-13));
    }

    /** Equal steps are the straightest three values can lie, two equal the least straight: W is 1 and 3/4, p 1 and 0. */
    @Test
    void reachesTheEndsOfThreeValues() {
        assertThat(ShapiroWilkTest.of(1, 2, 3).orElseThrow().p()).isCloseTo(1, offset(1e-6));
        assertThat(ShapiroWilkTest.of(1, 1, 2).orElseThrow().statistic()).isCloseTo(0.75, offset(1e-14));
        assertThat(ShapiroWilkTest.of(1, 1, 2).orElseThrow().p()).isCloseTo(0, offset(1e-6));
    }

    @Test
    void takesNormalScoresForNormalAndAFarValueNot() {
        assertThat(ShapiroWilkTest.of(SCORES).orElseThrow().p()).isGreaterThan(0.9);
        assertThat(AndersonDarlingTest.of(SCORES).orElseThrow().p()).isGreaterThan(0.9);
        double[] spoilt = SCORES.clone();
        spoilt[38] = 1000;
        assertThat(ShapiroWilkTest.of(spoilt).orElseThrow().p()).isLessThan(1e-10);
        assertThat(AndersonDarlingTest.of(spoilt).orElseThrow().p()).isEqualTo(3.7e-24);
    }

    /** One value of 5000 apart: z is 70 there, where the normal tail is no double any more. */
    @Test
    void staysANumberFarOut() {
        double[] values = new double[5000];
        values[7] = 1;
        assertThat(AndersonDarlingTest.of(values).orElseThrow().statistic()).isGreaterThan(1000);
        assertThat(ShapiroWilkTest.of(values).orElseThrow().p()).isBetween(0.0, 1e-20);
        assertThat(Normal.logCumulative(-30.000001)).isCloseTo(Normal.logCumulative(-29.999999), offset(1e-4));
    }

    /** W cannot be smaller than for one value apart; the transformation for small counts ends above that. */
    @ParameterizedTest
    @ValueSource(ints = {4, 5, 6, 11, 12})
    void givesAProbabilityForTheLeastW(int count) {
        double[] values = new double[count];
        values[0] = 1;
        assertThat(ShapiroWilkTest.of(values).orElseThrow().p()).isBetween(0.0, 0.01);
    }

    @Test
    void areNotDefinedOutsideTheirCountsOrForEqualValues() {
        assertThat(ShapiroWilkTest.of(1, 2)).isEmpty();
        assertThat(ShapiroWilkTest.of(new double[5001])).isEmpty();
        assertThat(ShapiroWilkTest.of(1, 1, 1, 1)).isEmpty();
        assertThat(AndersonDarlingTest.of(1, 2, 3, 4, 5, 6, 7)).isEmpty();
        assertThat(AndersonDarlingTest.of(new double[20])).isEmpty();
    }

    @Test
    void sayWhyTheyJudgeNothing() {
        double[] equal = new double[20];
        assertThat(ShapiroWilkTest.judge(0.1, equal)).isEqualTo(Judged.withheld(Judged.Reason.NO_SPREAD));
        assertThat(AndersonDarlingTest.judge(0.1, equal)).isEqualTo(Judged.withheld(Judged.Reason.NO_SPREAD));
        assertThat(ShapiroWilkTest.judge(0, 5)).isEqualTo(Judged.withheld(Judged.Reason.TOO_FEW));
        assertThat(AndersonDarlingTest.judge(0, 5)).isEqualTo(Judged.withheld(Judged.Reason.TOO_FEW));
        assertThat(ShapiroWilkTest.judge(0, 1, 2, 4).whyWithheld()).contains(Judged.Reason.TOO_FEW);
        assertThat(AndersonDarlingTest.judge(0, 1, 2, 4).whyWithheld()).contains(Judged.Reason.TOO_FEW);
        assertThat(ShapiroWilkTest.judge(0, new Random(1).doubles(5001).toArray()))
                .isEqualTo(Judged.withheld(Judged.Reason.TOO_MANY));
    }

    /** Two values, and a spread of one division: what the tests would find is the dial. */
    @Test
    void doNotTakeTheDivisionOfTheScaleForADistribution() {
        double[] twoValues = {0.4, 0.5, 0.4, 0.4, 0.5, 0.4, 0.5, 0.4, 0.4, 0.5, 0.4, 0.5};
        assertThat(ShapiroWilkTest.of(twoValues).orElseThrow().p()).isLessThan(0.01);
        assertThat(ShapiroWilkTest.judge(0.1, twoValues).whyWithheld()).contains(Judged.Reason.SCALE_TOO_COARSE);
        assertThat(AndersonDarlingTest.judge(0.1, twoValues).whyWithheld()).contains(Judged.Reason.SCALE_TOO_COARSE);
        assertThat(ShapiroWilkTest.judge(0.0001, SCORES).meaningful()).isPresent();
        assertThat(AndersonDarlingTest.judge(0.0001, SCORES).meaningful()).isPresent();
    }

    /** Simulated with a fixed seed: normal values on a scale of 0.1 are rejected at 5 % in less than 8 % of cases. */
    @ParameterizedTest
    @ValueSource(ints = {10, 30, 100})
    void doNotCryWolfOnTheDial(int count) {
        Random random = new Random(20260701 + count);
        for (double spread : new double[] {0.05, 0.1, 0.3, 0.45, 0.6, 1.2}) {
            int shapiro = 0;
            int anderson = 0;
            for (int i = 0; i < 2000; i++) {
                double[] values = rounded(random, count, spread);
                shapiro += ShapiroWilkTest.judge(0.1, values)
                                .meaningful()
                                .filter(test -> test.p() < 0.05)
                                .isPresent()
                        ? 1
                        : 0;
                anderson += AndersonDarlingTest.judge(0.1, values)
                                .meaningful()
                                .filter(test -> test.p() < 0.05)
                                .isPresent()
                        ? 1
                        : 0;
            }
            assertThat(shapiro).as("spread %s", spread).isLessThan(160);
            assertThat(anderson).as("spread %s", spread).isLessThan(160);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void followTranslationScaleAndOrder(long seed) {
        Random random = new Random(seed);
        double[] values = random.doubles(8 + random.nextInt(40)).toArray();
        double[] changed = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            changed[values.length - 1 - i] = 64 - 8 * values[i];
        }
        assertThat(ShapiroWilkTest.of(changed).orElseThrow().p())
                .isCloseTo(ShapiroWilkTest.of(values).orElseThrow().p(), offset(1e-8));
        assertThat(AndersonDarlingTest.of(changed).orElseThrow().statistic())
                .isCloseTo(AndersonDarlingTest.of(values).orElseThrow().statistic(), offset(1e-9));
    }

    /** The formula of p has four pieces, which meet to about two digits, and falls. */
    @Test
    void hasAProbabilityThatFallsWithA() {
        double previous = 1;
        for (double far = 3; far < 9; far += 0.25) {
            double[] values = SCORES.clone();
            values[38] = far;
            double p = AndersonDarlingTest.of(values).orElseThrow().p();
            assertThat(p).isLessThan(previous);
            previous = p;
        }
    }

    @Test
    void refuseWhatCannotBeTested() {
        assertThatIllegalArgumentException().isThrownBy(() -> ShapiroWilkTest.of());
        assertThatIllegalArgumentException().isThrownBy(() -> AndersonDarlingTest.of(1, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> AndersonDarlingTest.judge(-1, 1, 2));
    }
}
