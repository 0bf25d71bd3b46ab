package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.statistics.Judged;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.variance.OtherSets;

/** What is made of the trials of one determination, ties of a 0.1 % dial among them. */
class VariabilityTest {
    private static final Profile PROFILE = Profiles.standard();

    private static Variability of(double... factors) {
        return of(ScatterElsewhere.NONE, factors);
    }

    private static Variability of(ScatterElsewhere laboratory, double... factors) {
        return Variability.of(factors, MeterType.B, 0.1, PROFILE, laboratory).orElseThrow();
    }

    private static ScatterElsewhere other(PooledDeviation mix) {
        return new ScatterElsewhere(Optional.empty(), OtherSets.of(List.of(mix)));
    }

    @Test
    void saysNothingOfNoTrial() {
        assertThat(Variability.of(new double[0], MeterType.B, 0.1, PROFILE, ScatterElsewhere.NONE))
                .isEmpty();
    }

    /** One trial, two, all equal, two values one division apart: nothing to test, and nothing to be alarmed about. */
    @Test
    void isNotAlarmedByWhatADialMakes() {
        for (double[] tied : new double[][] {
            {0.4},
            {0.4, 0.5},
            {0.4, 0.4, 0.4, 0.4},
            {0.4, 0.4, 0.5},
            {0.4, 0.4, 0.4, 0.5},
            {0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.5}
        }) {
            Variability tiedTrials = of(other(new PooledDeviation(6, 12, 0)), tied);
            assertThat(tiedTrials.alarms()).isEmpty();
            assertThat(tiedTrials.outliers().made()).isZero();
            assertThat(tiedTrials.shape().isTested()).isFalse();
        }
    }

    @Test
    void saysWhyATestIsNotMade() {
        assertThat(of(0.4, 0.4, 0.4, 0.4).outliers().one().whyWithheld()).contains(Judged.Reason.NO_SPREAD);
        assertThat(of(0.4, 0.4, 0.4, 0.5).outliers().one().whyWithheld()).contains(Judged.Reason.WITHIN_ONE_DIVISION);
        assertThat(of(0.4, 0.5, 0.9).outliers().dixon().whyWithheld()).contains(Judged.Reason.TOO_FEW);
        assertThat(of(0.4, 0.5, 0.9).shape().shapiro().whyWithheld()).contains(Judged.Reason.TOO_FEW);
    }

    /**
     * 0.40 0.42 0.47 0.45 0.41 0.75: Grubbs's p is 0.003346569 (R 4.2.2, 2 n P(t > T)); times the three tests made it is
     * still below 5 %. Dixon: (0.75 - 0.47) / (0.75 - 0.40) = 0.8, above 0.56 for six, 5 %, one-sided (recalled).
     */
    @Test
    void namesTheTrialThatStandsOut() {
        Variability variability = of(0.40, 0.42, 0.47, 0.45, 0.41, 0.75);
        Outliers outliers = variability.outliers();
        assertThat(outliers.one().meaningful().orElseThrow().p()).isCloseTo(0.003346569, offset(1e-9));
        assertThat(outliers.dixon().meaningful().orElseThrow().statistic()).isCloseTo(0.8, offset(1e-9));
        Outliers.Farthest suspects = outliers.suspects().orElseThrow();
        assertThat(suspects.indices()).containsExactly(5);
        double smallest = Math.min(
                outliers.one().meaningful().orElseThrow().p(),
                outliers.dixon().meaningful().orElseThrow().p());
        assertThat(outliers.combinedP().orElseThrow()).isLessThanOrEqualTo(outliers.made() * smallest + 1e-15);
        assertThat(variability.alarms()).contains(Variability.Alarm.OUTLIER);
        assertThat(variability.summary().summary().count()).isEqualTo(6);
    }

    /**
     * Three that stand still at 0.4 and one at 0.6: G is as large as it can be and its p would be nothing. By the dial's
     * 0.0289, t = 0.2 / 0.0289 x sqrt(3 / 4) = 6.0 of 2 degrees, and 8 P(t > 6.0) = 0.107 (R 4.2.2).
     */
    @Test
    void doesNotTakeTrialsThatStandStillAsCertain() {
        Outliers outliers = of(0.4, 0.4, 0.4, 0.6).outliers();
        assertThat(outliers.one().meaningful().orElseThrow().p()).isLessThan(1e-12);
        assertThat(outliers.combinedP().orElseThrow()).isCloseTo(0.1067, offset(0.0005));
        assertThat(outliers.suspects()).isEmpty();
        assertThat(outliers.stragglers()).isEmpty();
        assertThat(of(0.4, 0.4, 0.4, 0.4, 0.4, 0.9).outliers().suspects()).isPresent();
    }

    @Test
    void singlesOutNoneWhenAllLieEquallyFar() {
        Outliers outliers = of(0.2, 0.6, 0.2, 0.6).outliers();
        assertThat(outliers.combinedP().orElseThrow()).isEqualTo(1);
        assertThat(outliers.suspects()).isEmpty();
    }

    /** With 0.62 in place of 0.75 Grubbs's p is 0.02403312 (R 4.2.2); twice that, for two tests, is 0.048. */
    @Test
    void namesAStragglerWithoutAlarm() {
        Variability variability = of(0.40, 0.42, 0.47, 0.45, 0.41, 0.62);
        assertThat(variability.outliers().combinedP().orElseThrow()).isCloseTo(0.0481, offset(0.0001));
        assertThat(variability.outliers().stragglers().orElseThrow().indices()).containsExactly(5);
        assertThat(variability.outliers().suspects()).isEmpty();
        assertThat(variability.alarms()).isEmpty();
    }

    /** With 0.60 in place of 0.75 Grubbs's p is 0.0359628976 (R 4.2.2): below 5 % alone, not beside a second test. */
    @Test
    void asksMoreOfSeveralTestsThanOfOne() {
        Outliers outliers = of(0.40, 0.42, 0.47, 0.45, 0.41, 0.60).outliers();
        assertThat(outliers.one().meaningful().orElseThrow().p()).isCloseTo(0.0359628976, offset(1e-9));
        assertThat(outliers.made()).isEqualTo(2);
        assertThat(outliers.combinedP().orElseThrow()).isGreaterThan(0.05);
        assertThat(outliers.suspects()).isEmpty();
    }

    /** Two far out on one side hide each other from the tests of a single one; the test of the pair finds both. */
    @Test
    void namesAPairThatHidesItself() {
        Outliers outliers =
                of(0.40, 0.42, 0.43, 0.41, 0.44, 0.42, 0.40, 0.43, 0.95, 0.97).outliers();
        Outliers.Farthest suspects = outliers.suspects().orElseThrow();
        assertThat(suspects.test()).isEqualTo(Outliers.Test.PAIR);
        assertThat(suspects.indices()).containsExactly(8, 9);
        Outliers.Farthest low = of(0.95, 0.40, 0.92, 0.93, 0.41, 0.94, 0.92, 0.90, 0.93, 0.95)
                .outliers()
                .suspects()
                .orElseThrow();
        assertThat(low.test()).isEqualTo(Outliers.Test.PAIR);
        assertThat(low.indices()).containsExactly(1, 4);
    }

    /** Eighteen at 0.4, one at 0.1, one at 0.7: G = 0.3 / sqrt(0.18 / 19) = 3.08 is above 2.71 for twenty (recalled). */
    @Test
    void namesAllTrialsThatLieEquallyFarOut() {
        double[] factors = new double[20];
        java.util.Arrays.fill(factors, 0.4);
        factors[3] = 0.1;
        factors[11] = 0.7;
        Outliers.Farthest suspects = of(factors).outliers().suspects().orElseThrow();
        assertThat(suspects.test()).isEqualTo(Outliers.Test.ONE);
        assertThat(suspects.indices()).containsExactly(3, 11);
    }

    /** Range 0.5 of three is above 3.3 x 0.1 (C670, recalled) and above 4.64 x 0.06 (studentised range, 1 %, recalled). */
    @Test
    void isAlarmedByARangeTooWideOnBothScores() {
        Variability wide = of(other(new PooledDeviation(8, 20, 0.06)), 0.2, 0.4, 0.7);
        assertThat(wide.alarms()).containsExactly(Variability.Alarm.RANGE, Variability.Alarm.LABORATORY);
        LaboratoryCheck check = wide.laboratory().orElseThrow();
        assertThat(check.range().orElseThrow().limit()).isCloseTo(0.2784, offset(0.0001));
        // s^2 = 0.06333 over 0.0036 is 17.6 on 2 and 20 degrees.
        assertThat(check.spread().meaningful().orElseThrow().statistic()).isCloseTo(17.59, offset(0.01));
    }

    @Test
    void asksNothingOfASingleTrialAgainstTheLaboratory() {
        LaboratoryCheck check =
                of(other(new PooledDeviation(8, 20, 0.06)), 0.4).laboratory().orElseThrow();
        assertThat(check.passes()).isTrue();
        assertThat(check.range()).isEmpty();
    }

    /** Nine of ten within a tenth, one far off, on a fine scale: not what normal values do. */
    @Test
    void saysWhenTheShapeIsOdd() {
        double[] factors = {0.400, 0.401, 0.402, 0.403, 0.404, 0.405, 0.406, 0.407, 0.408, 0.409, 0.480, 0.490};
        Variability odd = Variability.of(factors, MeterType.B, 0.001, PROFILE, ScatterElsewhere.NONE)
                .orElseThrow();
        assertThat(odd.shape().isTested()).isTrue();
        assertThat(odd.alarms()).contains(Variability.Alarm.SHAPE);
    }
}
