package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
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
import porebench.statistics.PooledDeviation;

/**
 * Enough or not, by pencil, with t points of a printed table (recalled): t(0.975) of 2, 3, 12, 20 degrees 4.3027, 3.1824,
 * 2.1788, 2.0860. Probabilities of t and chi-square from R 4.2.2, pt and pchisq.
 */
class StopRuleHandTest {
    private static final Profile OURS = Profiles.standard().copyAs("ours", "Ours");

    private static Profile with(FigureName name, String value) {
        return OURS.with(name, new Figure(value, "our manual", Mark.LABORATORY));
    }

    private static StopRule of(Profile profile, Optional<PooledDeviation> laboratory, double... factors) {
        return Variability.of(factors, MeterType.B, 0.1, profile, laboratory)
                .orElseThrow()
                .stop();
    }

    private static Optional<PooledDeviation> laboratory(double s) {
        return Optional.of(new PooledDeviation(8, 20, s));
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
        StopRule stop = of(OURS, Optional.empty(), 0.3, 0.4, 0.4, 0.5);
        assertThat(stop.verdict()).isEqualTo(StopRule.Verdict.MORE);
        assertThat(stop.moreTrials()).isEqualTo(9);
        assertThat(stop.trialsInAll()).isEqualTo(13);
        assertThat(stop.forTheCountOnly()).isFalse();
        assertThat(stop.wantedPercent()).isEqualTo(0.05);
        assertThat(stop.halfWidthPercent().orElseThrow()).isCloseTo(0.12992, offset(0.00001));
        Scatter scatter = stop.scatter().orElseThrow();
        assertThat(scatter.basis()).isEqualTo(Scatter.Basis.OWN);
        assertThat(scatter.degreesOfFreedom()).isEqualTo(3);
        assertThat(scatter.isOfTheDial()).isFalse();
        // t of 3 degrees at 0.05 sqrt(13) / 0.08165; chi-square of 3 degrees at 3 (1.96 x 0.08165 / 0.05)^2 / 13 and /
        // 12.
        StopRule.Risks risks = stop.risks().orElseThrow();
        assertThat(risks.within()).isCloseTo(0.8856789, offset(1e-6));
        assertThat(risks.tooFew()).isCloseTo(0.499624, offset(1e-6));
        assertThat(risks.oneLessWouldDo().orElseThrow()).isCloseTo(0.4643727, offset(1e-6));
    }

    /**
     * The same trials in a laboratory whose others scatter by 0.06, 20 degrees.
     *
     * <pre>
     * range 0.2 is not above 3.96 x 0.06 = 0.238 (studentised range, recalled): the laboratory's scatter counts
     * now:       2.0860 x 0.06 / sqrt(4) = 0.06258
     * n >= (2.0860 x 0.06 / 0.05)^2 = 6.27: 7 trials, 3 more
     * </pre>
     */
    @Test
    void plansWithTheLaboratorysScatterOnceItIsKnown() {
        StopRule stop = of(OURS, laboratory(0.06), 0.3, 0.4, 0.4, 0.5);
        assertThat(stop.verdict()).isEqualTo(StopRule.Verdict.MORE);
        assertThat(stop.moreTrials()).isEqualTo(3);
        assertThat(stop.halfWidthPercent().orElseThrow()).isCloseTo(0.06258, offset(0.00001));
        assertThat(stop.scatter().orElseThrow().basis()).isEqualTo(Scatter.Basis.LABORATORY);
        StopRule.Risks risks = stop.risks().orElseThrow();
        assertThat(risks.within()).isCloseTo(0.9606577, offset(1e-6));
        assertThat(risks.tooFew()).isCloseTo(0.2713457, offset(1e-6));
        assertThat(risks.oneLessWouldDo().orElseThrow()).isCloseTo(0.5585132, offset(1e-6));
    }

    /** The number does not depend on what the trials were, as long as they agree with the laboratory's scatter. */
    @Test
    void keepsThePlanOfTheLaboratorysScatterWhateverTheTrialsAre() {
        for (double[] factors : new double[][] {{0.4}, {0.4, 0.5}, {0.4, 0.4, 0.4}, {0.35, 0.5, 0.4, 0.31, 0.42}}) {
            assertThat(of(OURS, laboratory(0.06), factors).trialsInAll()).isEqualTo(7);
        }
    }

    /** (2.0860 x 0.04 / 0.05)^2 = 2.785: three are enough, as many as the laboratory asks for. */
    @Test
    void saysEnough() {
        StopRule stop = of(OURS, laboratory(0.04), 0.3, 0.4, 0.4);
        assertThat(stop.verdict()).isEqualTo(StopRule.Verdict.ENOUGH);
        assertThat(stop.moreTrials()).isZero();
        assertThat(stop.trialsInAll()).isEqualTo(3);
        assertThat(stop.halfWidthPercent().orElseThrow()).isCloseTo(2.0860 * 0.04 / Math.sqrt(3), offset(0.0001));
        assertThat(stop.risks().orElseThrow().oneLessWouldDo()).isEmpty();
    }

    /** (2.0860 x 0.04 / 0.05)^2 = 2.785, but the profile asks for five. */
    @Test
    void asksForAsManyAsTheProfileDoes() {
        StopRule stop = of(with(FigureName.LEAST_TRIALS, "5"), laboratory(0.04), 0.3, 0.4, 0.4);
        assertThat(stop.verdict()).isEqualTo(StopRule.Verdict.MORE);
        assertThat(stop.moreTrials()).isEqualTo(2);
        assertThat(stop.forTheCountOnly()).isTrue();
    }

    /** A half-width of 0.1: (2.0860 x 0.06 / 0.1)^2 = 1.57, so that the three of the profile decide. */
    @Test
    void takesTheHalfWidthOfTheProfile() {
        StopRule stop = of(with(FigureName.HALF_WIDTH, "0.1"), laboratory(0.06), 0.3, 0.4, 0.4);
        assertThat(stop.verdict()).isEqualTo(StopRule.Verdict.ENOUGH);
        assertThat(stop.wantedPercent()).isEqualTo(0.1);
    }

    /**
     * Equal readings: the scatter counts as the dial's, 0.1 / sqrt(12) = 0.028868, or 0.040825 read twice (Type A).
     *
     * <pre>
     * Type B, own: 3 trials 4.3027 x 0.028868 / sqrt(3) = 0.0717; 4 trials 3.1824 x 0.028868 / 2 = 0.0459: one more
     * Type A, own: 5 trials 2.7764 x 0.040825 / sqrt(5) = 0.0507; 6 trials 2.5706 x 0.040825 / sqrt(6) = 0.0428: three more
     * </pre>
     */
    @ParameterizedTest
    @CsvSource({"B, 0.028868, 1", "A, 0.040825, 3"})
    void reckonsWithTheDialWhereTheScatterCannotBeSeen(MeterType type, double s, int more) {
        StopRule stop = Variability.of(new double[] {0.4, 0.4, 0.4}, type, 0.1, OURS, Optional.empty())
                .orElseThrow()
                .stop();
        Scatter scatter = stop.scatter().orElseThrow();
        assertThat(scatter.isOfTheDial()).isTrue();
        assertThat(scatter.standardDeviationPercent()).isCloseTo(s, offset(0.000001));
        assertThat(stop.moreTrials()).isEqualTo(more);
        assertThat(stop.risks()).isEmpty();
    }

    /** Two values one division apart: s = 0.1 / sqrt(2) = 0.0707 is more than the dial's share and counts. */
    @Test
    void reckonsWithTwoValuesOneDivisionApart() {
        StopRule stop = of(OURS, Optional.empty(), 0.4, 0.5);
        assertThat(stop.scatter().orElseThrow().isOfTheDial()).isFalse();
        assertThat(stop.halfWidthPercent().orElseThrow()).isCloseTo(12.7062 * 0.0707107 / Math.sqrt(2), offset(0.0001));
        assertThat(stop.verdict()).isEqualTo(StopRule.Verdict.MORE);
    }

    @Test
    void cannotPlanFromASingleTrialAlone() {
        StopRule one = of(OURS, Optional.empty(), 0.4);
        assertThat(one.verdict()).isEqualTo(StopRule.Verdict.NOT_YET_KNOWN);
        assertThat(one.moreTrials()).isEqualTo(2);
        assertThat(one.halfWidthPercent()).isEqualTo(OptionalDouble.empty());
        assertThat(one.next()).isEmpty();
        assertThat(of(with(FigureName.LEAST_TRIALS, "1"), Optional.empty(), 0.4).moreTrials())
                .isEqualTo(1);
    }

    /** 0.1, 0.4, 0.7: s = 0.3; even 30 trials would have 2.0452 x 0.3 / sqrt(30) = 0.112. */
    @Test
    void saysWhenMoreTrialsWouldNotGetThere() {
        StopRule stop = of(OURS, Optional.empty(), 0.1, 0.4, 0.7);
        assertThat(stop.verdict()).isEqualTo(StopRule.Verdict.OUT_OF_REACH);
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
        assertThat(of(OURS, Optional.empty(), many).verdict()).isEqualTo(StopRule.Verdict.ENOUGH);
    }

    /** 0.2 and 0.5: range 0.3 is above 2.95 x 0.05 = 0.1475 (studentised range, recalled). */
    @Test
    void goesByTheTrialsWhenTheyScatterMoreThanTheLaboratorysOthers() {
        Scatter scatter = of(OURS, laboratory(0.05), 0.2, 0.5).scatter().orElseThrow();
        assertThat(scatter.basis()).isEqualTo(Scatter.Basis.OWN_WIDER);
        assertThat(scatter.standardDeviationPercent()).isCloseTo(0.212132, offset(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"9, OWN", "10, LABORATORY"})
    void asksForTenDegreesOfFreedomOfTheLaboratory(int degrees, Scatter.Basis basis) {
        StopRule stop = of(OURS, Optional.of(new PooledDeviation(4, degrees, 0.06)), 0.4, 0.5);
        assertThat(stop.scatter().orElseThrow().basis()).isEqualTo(basis);
    }

    /**
     * Mean 0.4 of four, s 0.06 of 20 degrees: the next lies within 2.0860 x 0.06 x sqrt(1.25) = 0.1399; a fifth of that moves
     * the mean to 0.372 or 0.428, both 0.4 on the card. To 0.45 it would take 0.25 more: t = 0.25 / 0.067082 = 3.727.
     */
    @Test
    void saysThatOneMoreTrialWouldNotChangeTheCard() {
        NextTrial next = of(OURS, laboratory(0.06), 0.3, 0.4, 0.4, 0.5).next().orElseThrow();
        assertThat(next.lowPercent()).isCloseTo(0.2601, offset(0.0001));
        assertThat(next.highPercent()).isCloseTo(0.5399, offset(0.0001));
        assertThat(next.leavesTheCard()).isTrue();
        assertThat(next.probabilityOfChange()).isCloseTo(0.001331509, offset(1e-8));
    }

    /** By their own scatter: 3.1824 x 0.08165 x 1.11803 = 0.2905; a fifth moves the mean to 0.342 or 0.458. */
    @Test
    void saysWhatOneMoreTrialCouldChangeTheCardTo() {
        NextTrial next = of(OURS, Optional.empty(), 0.3, 0.4, 0.4, 0.5).next().orElseThrow();
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
        assertThat(next.probabilityOfChange()).isCloseTo(0.5, offset(0.001));
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
                .isThrownBy(() -> new Scatter(Scatter.Basis.OWN, 0, 2, false))
                .withMessage("standardDeviationPercent must be greater than 0, but is 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> Scatter.ofTheDial(MeterType.B, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StopRule.Risks(1.1, 0, OptionalDouble.empty()))
                .withMessage("within must be from 0.0 to 1.0, but is 1.1");
    }
}
