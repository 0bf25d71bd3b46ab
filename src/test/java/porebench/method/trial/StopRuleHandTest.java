package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.variance.OtherSets;

/**
 * Enough or not, by pencil, with t points of a printed table (recalled): t(0.975) of 2, 3, 12, 20 degrees 4.3027, 3.1824,
 * 2.1788, 2.0860; 2.2281 of 10, 2.2010 of 11, 2.1448 of 14, 2.1009 of 18, 2.0930 of 19, 2.0796 of 21. Probabilities of t and chi-square from R 4.2.2, pt and pchisq.
 */
class StopRuleHandTest {
    private static final Profile OURS = Profiles.standard().copyAs("ours", "Ours");

    private static Profile with(FigureName name, String value) {
        return OURS.with(name, new Figure(value, "our manual", Mark.LABORATORY));
    }

    private static StopRule of(Profile profile, ScatterElsewhere elsewhere, double... factors) {
        return Variability.of(factors, MeterType.B, 0.1, profile, elsewhere)
                .orElseThrow()
                .stop();
    }

    /** Ten other mixes, two degrees of freedom each, that scatter alike. */
    private static ScatterElsewhere laboratory(double s) {
        return new ScatterElsewhere(
                Optional.empty(), OtherSets.of(Collections.nCopies(10, new PooledDeviation(1, 2, s))));
    }

    /**
     * 0.3, 0.4, 0.4, 0.5: s = sqrt(0.02 / 3) = 0.081650.
     *
     * <pre>
     * now:        3.1824 x 0.08165 / sqrt(4)  = 0.12992
     * 12 trials:  2.2010 x 0.08165 / sqrt(12) = 0.05188, wider than 0.05
     * 13 trials:  2.1788 x 0.08165 / sqrt(13) = 0.04934: 9 more
     * </pre>
     */
    @Test
    void expectsMoreTrialsFromTheirOwnScatterWhenTheLaboratorysIsNotKnown() {
        StopRule stop = of(OURS, ScatterElsewhere.NONE, 0.3, 0.4, 0.4, 0.5);
        assertThat(stop.verdict()).isEqualTo(StopRule.Advice.MORE);
        assertThat(stop.moreTrials()).isEqualTo(9);
        assertThat(stop.trialsInAll()).isEqualTo(13);
        assertThat(stop.forTheCountOnly()).isFalse();
        assertThat(stop.wantedPercent()).isEqualTo(0.05);
        assertThat(stop.halfWidthPercent().orElseThrow()).isCloseTo(0.12992, offset(0.00001));
        Scatter scatter = stop.scatter().orElseThrow();
        assertThat(scatter.basis()).isEqualTo(Scatter.Basis.OWN);
        assertThat(scatter.degreesOfFreedom()).isEqualTo(3);
        assertThat(scatter.isOfTheDial()).isFalse();
        // Chi-square of 3 degrees at 3 (1.96 x 0.08165 / 0.05)^2 / 13 and /
        // 12.
        StopRule.Risks risks = stop.risks().orElseThrow();
        assertThat(risks.within()).isEqualTo(0.9);
        assertThat(risks.tooFew()).isCloseTo(0.499624, offset(1e-6));
        assertThat(risks.oneLessWouldDo().orElseThrow()).isCloseTo(0.4643727, offset(1e-6));
    }

    /**
     * The same trials in a laboratory whose other mixes scatter by 0.09 each: their 20 degrees count for 8.
     *
     * <pre>
     * drawn: s^2 = (8 x 0.0081 + 3 x 0.0066667) / 11 = 0.0077091, s = 0.087801, above the own 0.081650
     * now:        2.2010 x 0.087801 / sqrt(4)  = 0.09662
     * 13 trials:  2.0860 x 0.087801 / sqrt(13) = 0.05080, wider than 0.05
     * 14 trials:  2.0796 x 0.087801 / sqrt(14) = 0.04880: 10 more
     * </pre>
     */
    @Test
    void drawsTheScatterTowardsThatOfTheOtherMixes() {
        StopRule stop = of(OURS, laboratory(0.09), 0.3, 0.4, 0.4, 0.5);
        assertThat(stop.verdict()).isEqualTo(StopRule.Advice.MORE);
        assertThat(stop.moreTrials()).isEqualTo(10);
        assertThat(stop.halfWidthPercent().orElseThrow()).isCloseTo(0.09662, offset(0.00001));
        Scatter scatter = stop.scatter().orElseThrow();
        assertThat(scatter.basis()).isEqualTo(Scatter.Basis.LABORATORY);
        assertThat(scatter.standardDeviationPercent()).isCloseTo(0.0878014, offset(1e-7));
        assertThat(scatter.degreesOfFreedom()).isEqualTo(11);
        StopRule.Risks risks = stop.risks().orElseThrow();
        assertThat(risks.within()).isEqualTo(0.9);
        assertThat(risks.tooFew()).isCloseTo(0.4064504, offset(1e-6));
        assertThat(risks.oneLessWouldDo().orElseThrow()).isCloseTo(0.5282968, offset(1e-6));
    }

    /**
     * In a laboratory whose other mixes scatter by 0.06 the drawn one would be 0.0666; this mix's own 0.08165 is wider and
     * counts: 11 trials 2.1009 x 0.08165 / sqrt(11) = 0.0517, 12 trials 2.0930 x 0.08165 / sqrt(12) = 0.0493.
     */
    @Test
    void goesByTheMixWhereItScattersMoreThanTheOthers() {
        StopRule stop = of(OURS, laboratory(0.06), 0.3, 0.4, 0.4, 0.5);
        assertThat(stop.scatter().orElseThrow().basis()).isEqualTo(Scatter.Basis.OWN_WIDER);
        assertThat(stop.scatter().orElseThrow().standardDeviationPercent()).isCloseTo(0.0816497, offset(1e-7));
        assertThat(stop.trialsInAll()).isEqualTo(12);
    }

    /** A single trial has only the laboratory's: 2.1448 x 0.06 / sqrt(7) = 0.0486, of six trials 0.0529. */
    @Test
    void plansFromASingleTrialWithTheOtherMixes() {
        StopRule stop = of(OURS, laboratory(0.06), 0.4);
        assertThat(stop.scatter().orElseThrow().basis()).isEqualTo(Scatter.Basis.LABORATORY);
        assertThat(stop.scatter().orElseThrow().degreesOfFreedom()).isEqualTo(8);
        assertThat(stop.trialsInAll()).isEqualTo(7);
    }

    /** (8 x 0.0009 + 2 x 0.00083333) / 10: s = 0.029777; 2.2281 x 0.029777 / sqrt(3) = 0.03831. */
    @Test
    void saysEnough() {
        StopRule stop = of(OURS, laboratory(0.03), 0.4, 0.4, 0.4);
        assertThat(stop.verdict()).isEqualTo(StopRule.Advice.ENOUGH);
        assertThat(stop.moreTrials()).isZero();
        assertThat(stop.trialsInAll()).isEqualTo(3);
        assertThat(stop.halfWidthPercent().orElseThrow()).isCloseTo(0.0383056, offset(1e-6));
        assertThat(stop.risks().orElseThrow().oneLessWouldDo()).isEmpty();
    }

    /** The same, but the profile asks for five. */
    @Test
    void asksForAsManyAsTheProfileDoes() {
        StopRule stop = of(with(FigureName.LEAST_TRIALS, "5"), laboratory(0.03), 0.4, 0.4, 0.4);
        assertThat(stop.verdict()).isEqualTo(StopRule.Advice.MORE);
        assertThat(stop.moreTrials()).isEqualTo(2);
        assertThat(stop.forTheCountOnly()).isTrue();
    }

    /** (8 x 0.0036 + 2 x 0.0033333) / 10: s = 0.059554; 2.2281 x 0.059554 / sqrt(3) = 0.0766, within 0.1. */
    @Test
    void takesTheHalfWidthOfTheProfile() {
        StopRule stop = of(with(FigureName.HALF_WIDTH, "0.1"), laboratory(0.06), 0.3, 0.4, 0.4);
        assertThat(stop.verdict()).isEqualTo(StopRule.Advice.ENOUGH);
        assertThat(stop.wantedPercent()).isEqualTo(0.1);
    }

    /** The mix's other determinations count as its own trials do: (1 x 0 + 3 x 0.0075) / 4 = 0.005625, s = 0.075. */
    @Test
    void countsTheMixsOtherDeterminations() {
        ScatterElsewhere earlier = new ScatterElsewhere(
                Optional.of(new PooledDeviation(1, 3, Math.sqrt(0.0075))), OtherSets.of(List.of()));
        Scatter scatter = of(OURS, earlier, 0.4, 0.4).scatter().orElseThrow();
        assertThat(scatter.basis()).isEqualTo(Scatter.Basis.OWN);
        assertThat(scatter.standardDeviationPercent()).isCloseTo(0.075, offset(1e-9));
        assertThat(scatter.degreesOfFreedom()).isEqualTo(4);
        assertThat(of(OURS, earlier, 0.4).scatter().orElseThrow().degreesOfFreedom())
                .isEqualTo(3);
    }

    /** Where all readings of the lab book stand still, the dial decides: nothing is drawn, and no mix is the wider one. */
    @Test
    void knowsThatTheDialDecidesForAllMixes() {
        Scatter scatter = of(OURS, laboratory(0), 0.4, 0.4, 0.4).scatter().orElseThrow();
        assertThat(scatter.isOfTheDial()).isTrue();
        assertThat(scatter.basis()).isEqualTo(Scatter.Basis.LABORATORY);
        assertThat(scatter.standardDeviationPercent()).isCloseTo(0.028868, offset(1e-6));
    }

    /** Other mixes that differ a thousandfold say next to nothing: they count for one degree of freedom, not for none. */
    @Test
    void hardlyTrustsMixesThatScatterEachInItsOwnWay() {
        ScatterElsewhere unlike = new ScatterElsewhere(
                Optional.empty(),
                OtherSets.of(List.of(
                        new PooledDeviation(1, 9, 0.05),
                        new PooledDeviation(1, 9, 1.5),
                        new PooledDeviation(1, 9, 40))));
        assertThat(of(OURS, unlike, 0.4, 0.4).scatter().orElseThrow().degreesOfFreedom())
                .isEqualTo(2);
    }

    /**
     * Equal readings: the scatter counts as the dial's, 0.1 / sqrt(12) = 0.028868, or 0.040825 read twice (Type A).
     *
     * <pre>
     * Type B, own: 3 trials 4.3027 x 0.028868 / sqrt(3) = 0.0717; 4 trials 3.1824 x 0.028868 / 2 = 0.0459, and rounding
     *              alone 0.95 x 0.1 / 2 = 0.0475: one more
     * Type A:      rounding alone 0.1 (1 - sqrt(0.05)) = 0.0776, wider than 0.05 however many trials there are
     * </pre>
     */
    @ParameterizedTest
    @CsvSource({"B, 0.028868, MORE, 1, 0.0717", "A, 0.040825, OUT_OF_REACH, 28, 0.1014"})
    void reckonsWithTheDialWhereTheScatterCannotBeSeen(
            MeterType type, double s, StopRule.Advice verdict, int more, double half) {
        StopRule stop = Variability.of(new double[] {0.4, 0.4, 0.4}, type, 0.1, OURS, ScatterElsewhere.NONE)
                .orElseThrow()
                .stop();
        Scatter scatter = stop.scatter().orElseThrow();
        assertThat(scatter.isOfTheDial()).isTrue();
        assertThat(scatter.standardDeviationPercent()).isCloseTo(s, offset(0.000001));
        assertThat(stop.verdict()).isEqualTo(verdict);
        assertThat(stop.moreTrials()).isEqualTo(more);
        assertThat(stop.halfWidthPercent().orElseThrow()).isCloseTo(half, offset(0.0001));
        assertThat(stop.risks()).isEmpty();
    }

    /** No number of equal trials brings the rounding that they share below 0.95 x 0.1 / 2. */
    @Test
    void doesNotDivideTheSharedRoundingByTheNumberOfTrials() {
        double[] equal = new double[20];
        Arrays.fill(equal, 0.4);
        StopRule stop = of(OURS, ScatterElsewhere.NONE, equal);
        assertThat(stop.halfWidthPercent().orElseThrow()).isCloseTo(0.0475, offset(1e-9));
        assertThat(stop.verdict()).isEqualTo(StopRule.Advice.ENOUGH);
    }

    /** Two values one division apart: s = 0.1 / sqrt(2) = 0.0707 is more than the dial's share and counts. */
    @Test
    void reckonsWithTwoValuesOneDivisionApart() {
        StopRule stop = of(OURS, ScatterElsewhere.NONE, 0.4, 0.5);
        assertThat(stop.scatter().orElseThrow().isOfTheDial()).isFalse();
        assertThat(stop.halfWidthPercent().orElseThrow()).isCloseTo(12.7062 * 0.0707107 / Math.sqrt(2), offset(0.0001));
        assertThat(stop.verdict()).isEqualTo(StopRule.Advice.MORE);
    }

    @Test
    void cannotPlanFromASingleTrialAlone() {
        StopRule one = of(OURS, ScatterElsewhere.NONE, 0.4);
        assertThat(one.verdict()).isEqualTo(StopRule.Advice.NOT_YET_KNOWN);
        assertThat(one.moreTrials()).isEqualTo(2);
        assertThat(one.halfWidthPercent()).isEqualTo(OptionalDouble.empty());
        assertThat(one.next()).isEmpty();
        assertThat(of(with(FigureName.LEAST_TRIALS, "1"), ScatterElsewhere.NONE, 0.4)
                        .moreTrials())
                .isEqualTo(1);
    }

    /** 0.1, 0.4, 0.7: s = 0.3; even 30 trials would have 2.0452 x 0.3 / sqrt(30) = 0.112. */
    @Test
    void saysWhenMoreTrialsWouldNotGetThere() {
        StopRule stop = of(OURS, ScatterElsewhere.NONE, 0.1, 0.4, 0.7);
        assertThat(stop.verdict()).isEqualTo(StopRule.Advice.OUT_OF_REACH);
        assertThat(stop.moreTrials()).isEqualTo(28);
        assertThat(stop.risks()).isEmpty();
    }

    /** Whoever made more than 30 is told of those, not of a limit. */
    @Test
    void knowsThatManyTrialsAreEnough() {
        double[] many = new double[60];
        for (int i = 0; i < many.length; i++) {
            many[i] = i % 2 == 0 ? 0.3 : 0.6;
        }
        // s = 0.1513: 2.001 x 0.1513 / sqrt(60) = 0.0391; (2.02 x 0.1513 / 0.05)^2 is about 37.
        assertThat(of(OURS, ScatterElsewhere.NONE, many).verdict()).isEqualTo(StopRule.Advice.ENOUGH);
    }

    @ParameterizedTest
    @CsvSource({"2, OWN", "3, LABORATORY"})
    void asksForThreeOtherMixes(int mixes, Scatter.Basis basis) {
        ScatterElsewhere others = new ScatterElsewhere(
                Optional.empty(), OtherSets.of(Collections.nCopies(mixes, new PooledDeviation(2, 6, 0.06))));
        StopRule stop = of(OURS, others, 0.4, 0.4);
        assertThat(stop.scatter().orElseThrow().basis()).isEqualTo(basis);
    }

    /**
     * Mean 0.4 of four, s 0.087801 of 11 degrees: the next lies within 2.2010 x 0.087801 x sqrt(1.25) = 0.2161; a fifth of that
     * moves the mean to 0.357 or 0.443, both 0.4 on the card. To 0.45 it would take 0.25 more: t = 0.25 / 0.098165 = 2.547.
     */
    @Test
    void saysThatOneMoreTrialWouldNotChangeTheCard() {
        NextTrial next = of(OURS, laboratory(0.09), 0.3, 0.4, 0.4, 0.5).next().orElseThrow();
        assertThat(next.lowPercent()).isCloseTo(0.1839403, offset(1e-6));
        assertThat(next.highPercent()).isCloseTo(0.6160597, offset(1e-6));
        assertThat(next.leavesTheCard()).isTrue();
        assertThat(next.probabilityOfChange()).isCloseTo(0.0271526, offset(1e-6));
    }

    /** By their own scatter: 3.1824 x 0.08165 x 1.11803 = 0.2905; a fifth moves the mean to 0.342 or 0.458. */
    @Test
    void saysWhatOneMoreTrialCouldChangeTheCardTo() {
        NextTrial next =
                of(OURS, ScatterElsewhere.NONE, 0.3, 0.4, 0.4, 0.5).next().orElseThrow();
        assertThat(next.leavesTheCard()).isFalse();
        assertThat(next.card()).isEqualTo(new BigDecimal("0.4"));
        assertThat(next.cardAtLow()).isEqualTo(new BigDecimal("0.3"));
        assertThat(next.cardAtHigh()).isEqualTo(new BigDecimal("0.5"));
        assertThat(next.probabilityOfChange()).isCloseTo(0.07142154, offset(1e-7));
    }

    /** Mean 0.35 lies on the edge: half of all next trials change the card, whichever way the tie went. */
    @Test
    void knowsThatAMeanOnTheEdgeIsATossUp() {
        NextTrial next = of(OURS, laboratory(0.04), 0.3, 0.4).next().orElseThrow();
        assertThat(next.probabilityOfChange()).isCloseTo(0.5, offset(0.005));
        assertThat(next.leavesTheCard()).isFalse();
    }

    /** The sentence must be true: no next trial within the range changes the card, and some beyond it does. */
    @Test
    void tellsTheTruthAboutEveryNextTrialInItsRange() {
        SplittableRandom random = new SplittableRandom(20_261_125L);
        int left = 0;
        for (int i = 0; i < 300; i++) {
            double[] factors = new double[random.nextInt(2, 9)];
            for (int j = 0; j < factors.length; j++) {
                factors[j] = random.nextInt(30, 50) / 100.0;
            }
            NextTrial next = of(OURS, laboratory(0.05), factors).next().orElseThrow();
            boolean same = true;
            for (int step = 0; step <= 40; step++) {
                double reading = next.lowPercent() + (next.highPercent() - next.lowPercent()) * step / 40;
                double sum = reading;
                for (double factor : factors) {
                    sum += factor;
                }
                BigDecimal card = OURS.factorRounding().round(sum / (factors.length + 1));
                same &= card.compareTo(next.card()) == 0;
                assertThat(card).isBetween(next.cardAtLow(), next.cardAtHigh());
            }
            assertThat(next.leavesTheCard()).isEqualTo(same);
            left += same ? 1 : 0;
            if (same) {
                assertThat(next.probabilityOfChange()).isLessThan(0.05);
            }
        }
        assertThat(left).isBetween(50, 250);
    }

    @Test
    void refusesFiguresThatCannotBe() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Scatter(Scatter.Basis.OWN, 0, 0, 3, 0.05, false))
                .withMessage("standardDeviationPercent must be greater than 0, but is 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> Scatter.ofTheDial(MeterType.B, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StopRule.Risks(1.1, 0, OptionalDouble.empty()))
                .withMessage("within must be from 0.0 to 1.0, but is 1.1");
    }
}
