package porebench.method.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;
import porebench.statistics.summary.Summary;
import porebench.statistics.uncertainty.IntervalCheck;
import porebench.statistics.uncertainty.MonteCarlo;

class FactorBudgetHandTest {
    private static final double KNOWN = Double.POSITIVE_INFINITY;
    private static final long SEED = 20_260_701;

    private static final Summary TRIALS = Summary.of(0.36, 0.38, 0.40);
    private static final Summary MANY =
            Summary.of(0.30, 0.35, 0.38, 0.41, 0.46, 0.36, 0.40, 0.38, 0.34, 0.42, 0.38, 0.38);
    private static final Bowl BOWL = new Bowl(7.05, 0.002, KNOWN, true);
    private static final Water WATER = new Water(352.5, 1, 2.5, 0, 0, 0, Origin.ASSUMED);

    private static FactorInputs typeB(Summary factors, Optional<DialCorrection> dial, Bowl bowl, Water water) {
        return new FactorInputs(
                MeterType.B,
                factors,
                0.1,
                5.4,
                0,
                dial,
                bowl,
                Optional.of(water),
                Optional.of(new Sample(12.3, 0.0012, Origin.ASSUMED)),
                scatter(factors, MeterType.B, 0.1),
                Optional.empty(),
                Set.of());
    }

    private static TrialScatter scatter(Summary factors, MeterType type, double division) {
        return TrialScatter.of(factors, type, division, 0.1, List.of());
    }

    private static Optional<DialCorrection> dial(boolean restsOnBowl) {
        return Optional.of(new DialCorrection(-0.02, 0.03, KNOWN, restsOnBowl, Optional.empty()));
    }

    private static FactorInputs typeA(double division) {
        return new FactorInputs(
                MeterType.A,
                Summary.of(0.4, 0.4, 0.5, 0.5),
                division,
                0.75,
                0.30,
                Optional.empty(),
                Bowl.stated(7.98, 0.01),
                Optional.empty(),
                Optional.empty(),
                scatter(Summary.of(0.4, 0.4, 0.5, 0.5), MeterType.A, Math.max(1e-9, division)),
                Optional.empty(),
                Set.of());
    }

    private static BudgetLine line(Budget budget, BudgetPart part) {
        return budget.lines().stream()
                .filter(one -> one.part() == part)
                .findFirst()
                .orElseThrow();
    }

    /**
     * A1 5.4, correction -0.02, 352.5 mL of 7.05 L are 5.0 %: G 0.38. In % air: s 0.02 is less than the division's 0.1 / sqrt(12),
     * scatter 0.028868 / sqrt(3) = 0.0166667; reading 0.1 / sqrt(12) = 0.028868; dial 0.03; bowl 0.002 L x 5.0 / 7.05 = 0.0014184;
     * water 1 mL / sqrt(12) x 100 / 7050 = 0.0040947; cylinder 2.5 mL / sqrt(3) x 100 / 7050 = 0.020473; sample 0.0012 kg x 0.38 /
     * 12.3 = 0.000037. Squares: 2.77778, 8.33333, 9, 0.02012, 0.16767, 4.19160, 0.00001 e-4, together 24.49051e-4: combined
     * 0.0494879. Effective 0.0494879^4 / (0.0166667^4 / 2) = 5.99785e-6 / 3.85802e-8 = 155.46.
     */
    @Test
    void drawsUpTheBudgetOfATypeBFactor() {
        Budget budget = FactorBudget.of(typeB(TRIALS, dial(false), BOWL, WATER));
        assertThat(budget.valuePercent()).isCloseTo(0.38, offset(1e-12));
        assertThat(budget.lines())
                .extracting(BudgetLine::part)
                .containsExactly(
                        BudgetPart.REPEATABILITY,
                        BudgetPart.READING,
                        BudgetPart.DIAL,
                        BudgetPart.BOWL,
                        BudgetPart.WATER,
                        BudgetPart.WATER_MEASURE,
                        BudgetPart.SAMPLE);
        assertThat(line(budget, BudgetPart.REPEATABILITY).sizePercent()).isCloseTo(0.0166667, offset(5e-7));
        assertThat(line(budget, BudgetPart.REPEATABILITY).degreesOfFreedom()).isEqualTo(2);
        assertThat(line(budget, BudgetPart.READING).sizePercent()).isCloseTo(0.028868, offset(5e-7));
        assertThat(line(budget, BudgetPart.DIAL).sizePercent()).isCloseTo(0.03, offset(1e-12));
        assertThat(line(budget, BudgetPart.BOWL).sizePercent()).isCloseTo(0.0014184, offset(5e-8));
        assertThat(line(budget, BudgetPart.WATER).sizePercent()).isCloseTo(0.0040947, offset(5e-8));
        assertThat(line(budget, BudgetPart.WATER_MEASURE).sizePercent()).isCloseTo(0.020473, offset(5e-7));
        assertThat(line(budget, BudgetPart.WATER_MEASURE).origin()).isEqualTo(Origin.ASSUMED);
        assertThat(line(budget, BudgetPart.SAMPLE).sizePercent()).isCloseTo(0.000037, offset(5e-7));
        assertThat(budget.combinedPercent()).isCloseTo(0.0494879, offset(5e-7));
        assertThat(budget.effectiveDegreesOfFreedom()).isCloseTo(155.46, offset(0.05));
        // t of 155.46 degrees of freedom is 1.9754.
        assertThat(budget.expandedPercent()).isCloseTo(0.0494879 * 1.9754, offset(1e-5));
        assertThat(budget.omissions()).isEmpty();
        BudgetLine largest = budget.largestFirst().get(0);
        assertThat(largest.part()).isEqualTo(BudgetPart.DIAL);
        assertThat(budget.shareOf(largest)).isCloseTo(9 / 24.49051, offset(1e-5));
        assertThat(budget.lines().stream().mapToDouble(budget::shareOf).sum()).isCloseTo(1, offset(1e-12));
    }

    /** Checked in the same bowl, reading and water are wrong alike: what is left of the bowl is -G / S = -0.38 / 7.05. */
    @Test
    void hardlyFeelsABowlThatTheDialWasCheckedIn() {
        Budget budget = FactorBudget.of(typeB(TRIALS, dial(true), BOWL, WATER));
        assertThat(line(budget, BudgetPart.BOWL).sensitivity()).isCloseTo(-0.38 / 7.05, offset(1e-12));
        assertThat(budget.valuePercent()).isCloseTo(0.38, offset(1e-12));
    }

    /** The sensitivities against differences of the model itself, both sides of the point. */
    @Test
    void hasTheSensitivitiesOfItsModel() {
        Water both = new Water(200, 1, 2.5, 2.2, 0.1, 0.05, Origin.LABORATORY);
        List<Budget> budgets = List.of(
                FactorBudget.of(typeB(TRIALS, dial(false), BOWL, WATER)),
                FactorBudget.of(typeB(TRIALS, dial(true), BOWL, WATER)),
                FactorBudget.of(
                        typeB(Summary.of(0.3), dial(true), BOWL, new Water(0, 0, 0, 5.08, 0.1, 0.05, Origin.ASSUMED))),
                FactorBudget.of(typeB(Summary.of(0.3432), dial(true), BOWL, both)),
                FactorBudget.of(typeA(0.05)));
        for (Budget budget : budgets) {
            double[] centre =
                    budget.lines().stream().mapToDouble(BudgetLine::value).toArray();
            for (int i = 0; i < centre.length; i++) {
                double step = 1e-5 * Math.max(1, Math.abs(centre[i]));
                double[] low = centre.clone();
                double[] high = centre.clone();
                low[i] -= step;
                high[i] += step;
                double slope = (budget.at(high) - budget.at(low)) / (2 * step);
                // The factors of these examples are the mean of rounded trials and agree with the model to 0.0001.
                assertThat(budget.lines().get(i).sensitivity())
                        .as("%s", budget.lines().get(i))
                        .isCloseTo(slope, offset(1e-4 + 1e-6 * Math.abs(slope)));
            }
        }
    }

    /** h1 0.75, h2 0.30; two readings of 0.05 / sqrt(12) = 0.014434 each; s = 0.057735, of four trials 0.028868. */
    @Test
    void readsATypeAMeterTwice() {
        Budget budget = FactorBudget.of(typeA(0.05));
        assertThat(budget.valuePercent()).isCloseTo(0.45, offset(1e-12));
        assertThat(budget.lines())
                .extracting(BudgetLine::part)
                .containsExactly(BudgetPart.REPEATABILITY, BudgetPart.READING, BudgetPart.RELEASED);
        assertThat(budget.combinedPercent())
                .isCloseTo(Math.sqrt(0.028868 * 0.028868 + 2 * 0.014434 * 0.014434), offset(1e-6));
        assertThat(budget.omissions()).containsExactly(Omission.COLUMN, Omission.SAMPLE_NOT_STATED);
    }

    @Test
    void saysWhatIsNotKnown() {
        Budget stated = FactorBudget.of(new FactorInputs(
                MeterType.B,
                Summary.of(0.4),
                0.1,
                5.4,
                0,
                Optional.empty(),
                Bowl.stated(7.05, 0.01),
                Optional.of(WATER),
                Optional.empty(),
                scatter(Summary.of(0.4), MeterType.B, 0.1),
                Optional.empty(),
                Set.of(Omission.SEVERAL_METERS)));
        assertThat(stated.omissions())
                .containsExactly(
                        Omission.DIAL_NEVER_CHECKED,
                        Omission.BOWL_NEVER_WEIGHED,
                        Omission.SAMPLE_NOT_STATED,
                        Omission.ONE_TRIAL,
                        Omission.SEVERAL_METERS);
        assertThat(line(stated, BudgetPart.REPEATABILITY).origin()).isEqualTo(Origin.PROFILE);
        assertThat(line(stated, BudgetPart.REPEATABILITY).sizePercent()).isEqualTo(0.1);
        assertThat(line(stated, BudgetPart.BOWL).origin()).isEqualTo(Origin.DIGITS);
        Budget still = FactorBudget.of(typeB(Summary.of(0.4, 0.4), dial(false), BOWL, WATER));
        assertThat(still.omissions()).containsExactly(Omission.NO_SCATTER);
        assertThat(still.combinedPercent()).isGreaterThan(0.0288);
    }

    /** Water as a share of the bowl does not need its volume: no line of the bowl, unless the dial was checked in it. */
    @Test
    void leavesTheBowlOutWhereItDoesNotCount() {
        Water share = new Water(0, 0, 0, 5.0, 0.1, 0.05, Origin.ASSUMED);
        assertThat(FactorBudget.of(typeB(TRIALS, dial(false), BOWL, share)).lines())
                .extracting(BudgetLine::part)
                .contains(BudgetPart.SHARE, BudgetPart.SHARE_MEASURE)
                .doesNotContain(BudgetPart.BOWL, BudgetPart.WATER);
        assertThat(line(FactorBudget.of(typeB(TRIALS, dial(true), BOWL, share)), BudgetPart.BOWL)
                        .sensitivity())
                .isCloseTo(-5.38 / 7.05, offset(1e-12));
    }

    /** Days, operators and meters that differ by 0.03 with 6 degrees of freedom: 24.49051e-4 and 9e-4 more, root 0.0578705. */
    @Test
    void holdsHowOccasionsDiffer() {
        FactorInputs plain = typeB(TRIALS, dial(false), BOWL, WATER);
        Budget budget = FactorBudget.of(with(plain, new Between(0.03, 6)));
        assertThat(budget.combinedPercent()).isCloseTo(0.0578705, offset(1e-6));
        assertThat(line(budget, BudgetPart.OCCASIONS).degreesOfFreedom()).isEqualTo(6);
        assertThat(line(budget, BudgetPart.OCCASIONS).origin()).isEqualTo(Origin.OTHER_TRIALS);
        assertThat(budget.valuePercent()).isCloseTo(0.38, offset(1e-12));
        Budget none = FactorBudget.of(with(plain, new Between(0, 6)));
        assertThat(none.lines()).extracting(BudgetLine::part).doesNotContain(BudgetPart.OCCASIONS);
    }

    private static FactorInputs with(FactorInputs plain, Between between) {
        return new FactorInputs(
                plain.meterType(),
                plain.factors(),
                plain.divisionPercent(),
                plain.readingPercent(),
                plain.releasedPercent(),
                plain.dial(),
                plain.bowl(),
                plain.water(),
                plain.sample(),
                plain.scatter(),
                Optional.of(between),
                plain.noted());
    }

    /** Many trials: drawing and propagation agree to half a unit of the last place of 0.05, and the seed decides the drawing. */
    @Test
    void agreesWithDrawing() {
        Budget budget = FactorBudget.of(typeB(MANY, dial(false), BOWL, WATER));
        MonteCarlo drawn = budget.simulate(200_000, SEED);
        assertThat(drawn).isEqualTo(budget.simulate(200_000, SEED));
        assertThat(drawn.standardDeviation().orElseThrow()).isCloseTo(budget.combinedPercent(), withPercentage(2));
        IntervalCheck check =
                IntervalCheck.of(budget.valuePercent(), budget.combinedPercent(), budget.expandedPercent(), drawn);
        assertThat(check.tolerance()).isCloseTo(0.005, offset(1e-12));
        assertThat(check.agrees()).isTrue();
    }

    /** Two trials 0.2 apart: t of one degree of freedom has no mean and no deviation; the rule of G.4 falls short of it. */
    @Test
    void showsWhatTwoTrialsCannotTell() {
        Budget budget = FactorBudget.of(typeB(Summary.of(0.28, 0.48), dial(false), BOWL, WATER));
        MonteCarlo drawn = budget.simulate(200_000, SEED);
        assertThat(drawn.standardDeviation()).isEmpty();
        assertThat(drawn.mean()).isEmpty();
        IntervalCheck check =
                IntervalCheck.of(budget.valuePercent(), budget.combinedPercent(), budget.expandedPercent(), drawn);
        assertThat(check.agrees()).isFalse();
        assertThat(check.isDrawnWider()).isTrue();
    }

    private static FieldInputs field(
            Optional<DialCorrection> dial, Budget factor, double coefficient, boolean isShared) {
        return new FieldInputs(6.2, 0.1, dial, 0.28, 0.4, factor, coefficient, isShared, OptionalDouble.of(0.1));
    }

    /**
     * Reading 6.2, correction 0.05 +- 0.03, G 0.4 +- 0.0494879, handed out to 0.1, field readings with s 0.28: 5.85. Squares:
     * 0.0784, 0.000833, 0.0009, 0.002449, 0.000833 = 0.083416, root 0.288818. Twice that is near 0.6.
     */
    @Test
    void drawsUpTheBudgetOfAFieldReading() {
        Budget factor = FactorBudget.of(typeB(TRIALS, dial(false), BOWL, WATER));
        DialCorrection own = new DialCorrection(0.05, 0.03, KNOWN, false, Optional.empty());
        Budget budget = FieldBudget.of(field(Optional.of(own), factor, 0, false));
        assertThat(budget.valuePercent()).isCloseTo(5.85, offset(1e-12));
        assertThat(budget.combinedPercent()).isCloseTo(0.288818, offset(1e-5));
        // So many degrees of freedom that t is 1.960.
        assertThat(budget.expandedPercent()).isCloseTo(1.96 * 0.288818, offset(1e-4));
        assertThat(budget.omissions()).isEmpty();
        assertThat(budget.lines())
                .extracting(BudgetLine::part)
                .containsExactly(
                        BudgetPart.FIELD_SCATTER,
                        BudgetPart.READING,
                        BudgetPart.DIAL,
                        BudgetPart.FACTOR,
                        BudgetPart.ROUNDING);
        assertThat(line(budget, BudgetPart.FIELD_SCATTER).origin()).isEqualTo(Origin.PROFILE);
        assertThat(budget.at(0.1, 6.2, 0.05, 0.4, 0)).isCloseTo(5.95, offset(1e-12));
        MonteCarlo drawn = budget.simulate(200_000, SEED);
        assertThat(drawn.median()).isCloseTo(5.85, offset(0.003));
        // The three trials of G have the tails of t with two degrees of freedom.
        assertThat((drawn.symmetric().high() - drawn.symmetric().low()) / 2)
                .isBetween(1.96 * 0.288818, 1.96 * 0.288818 + 0.01);
        Budget bare = FieldBudget.of(field(Optional.empty(), factor, 0, false));
        assertThat(bare.omissions()).containsExactly(Omission.FIELD_DIAL);
        assertThat(bare.valuePercent()).isCloseTo(5.8, offset(1e-12));
    }

    /**
     * One dial, read at one point by trials and load: its 0.03 cancels in A + c - G. Of 0.083416 twice 0.0009 go: 0.081616, root
     * 0.285685; with half of it in common 0.0009: 0.082516, root 0.287256.
     */
    @Test
    void letsTheDialCancelThatTrialsAndLoadShare() {
        Budget factor = FactorBudget.of(typeB(TRIALS, dial(false), BOWL, WATER));
        Optional<DialCorrection> own = Optional.of(new DialCorrection(-0.02, 0.03, KNOWN, false, Optional.empty()));
        Budget same = FieldBudget.of(field(own, factor, 1, false));
        assertThat(same.combinedPercent()).isCloseTo(0.285685, offset(1e-5));
        assertThat(same.apartPercent()).isCloseTo(0.288818, offset(1e-5));
        assertDrawsWhatItSums(
                FieldBudget.of(field(own, FactorBudget.of(typeB(MANY, dial(false), BOWL, WATER)), 1, false)));
        Budget half = FieldBudget.of(field(own, factor, 0.5, false));
        assertThat(half.combinedPercent()).isCloseTo(0.287256, offset(1e-5));
    }

    /**
     * A dial checked by a cylinder wrong by up to 2.5 mL, 0.035461 % of 7.05 L, 0.020473 % as a standard uncertainty: another one
     * adds as much again as that of the trials, the same one leaves nothing of either. 24.49051e-4 with 4.19160e-4 more, 28.68211e-4,
     * root 0.0535557; or with as much less, 20.29891e-4, root 0.0450543.
     */
    @Test
    void letsTheCylinderCancelThatMeasuredBoth() {
        Budget apart = FactorBudget.of(typeB(TRIALS, measured(false), BOWL, WATER));
        assertThat(apart.lines()).extracting(BudgetLine::part).contains(BudgetPart.DIAL_MEASURE);
        assertThat(apart.combinedPercent()).isCloseTo(0.0535557, offset(1e-6));
        Budget one = FactorBudget.of(typeB(TRIALS, measured(true), BOWL, WATER));
        assertThat(one.combinedPercent()).isCloseTo(0.0450543, offset(1e-6));
        assertThat(one.apartPercent()).isCloseTo(0.0535557, offset(1e-6));
        // A load on the same dial, whose check errs with it in whole: nothing of the cylinder is left in either.
        Optional<DialCorrection> own = measured(false);
        double with = FieldBudget.of(field(own, one, 1, true)).combinedPercent();
        // 0.0784 + 0.000833 + 0.0009 + 4.19160e-4 + 20.29891e-4 + 0.000833, less 2 x 0.0009; the cylinder of G is gone,
        // that of the
        // load stays.
        assertThat(with).isCloseTo(Math.sqrt(0.0784 + 2 * 0.01 / 12 - 0.0009 + 4.1916e-4 + 20.29891e-4), offset(1e-5));
        assertDrawsWhatItSums(
                FieldBudget.of(field(own, FactorBudget.of(typeB(MANY, measured(true), BOWL, WATER)), 1, true)));
        // With another cylinder at the trials that of the dial's check cancels, and theirs stays.
        double apartShared = FieldBudget.of(field(own, apart, 1, true)).combinedPercent();
        assertThat(apartShared)
                .isCloseTo(Math.sqrt(0.0784 + 2 * 0.01 / 12 - 0.0009 - 4.1916e-4 + 28.68211e-4), offset(1e-5));
    }

    /** Twelve trials: t of eleven degrees of freedom has a deviation, a tenth above that of the sum. */
    private static void assertDrawsWhatItSums(Budget budget) {
        assertThat(budget.apartPercent() - budget.combinedPercent()).isGreaterThan(0.002);
        assertThat(budget.simulate(400_000, SEED).standardDeviation().orElseThrow())
                .isCloseTo(budget.combinedPercent(), offset(0.001));
    }

    private static Optional<DialCorrection> measured(boolean isOne) {
        return Optional.of(new DialCorrection(
                -0.02,
                0.03,
                KNOWN,
                false,
                Optional.of(new DialCorrection.Measure(2.5 / 7050 * 100, Origin.ASSUMED, isOne))));
    }

    @Test
    void judgesIntervalsToOneDigitOfTheUncertainty() {
        MonteCarlo drawn = new MonteCarlo(
                1000,
                1,
                0.95,
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                new MonteCarlo.Interval(-2.3, 2.1),
                new MonteCarlo.Interval(-2, 2),
                Optional.empty());
        IntervalCheck check = IntervalCheck.of(0, 0.96, 2, drawn);
        // 0.96 is 1 to one digit: half of 1. Below it ends 0.3 further out, above 0.1.
        assertThat(check.tolerance()).isCloseTo(0.5, offset(1e-12));
        assertThat(check.lowDifference()).isCloseTo(0.3, offset(1e-12));
        assertThat(check.highDifference()).isCloseTo(0.1, offset(1e-12));
        assertThat(check.agrees()).isTrue();
        assertThat(IntervalCheck.of(0, 0.94, 2, drawn).tolerance()).isCloseTo(0.05, offset(1e-12));
        assertThat(IntervalCheck.of(0, 0.94, 2, drawn).agrees()).isFalse();
        assertThat(IntervalCheck.of(0, 0.94, 3, drawn).isDrawnWider()).isFalse();
        assertThat(IntervalCheck.of(0, 0, 0, drawn).tolerance()).isZero();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Bowl(0, 0, KNOWN, true));
        assertThatIllegalArgumentException().isThrownBy(() -> new Water(-1, 1, 1, 0, 0, 0, Origin.ASSUMED));
        assertThatIllegalArgumentException().isThrownBy(() -> new Sample(0, 0, Origin.ASSUMED));
        Budget factor = FactorBudget.of(typeB(TRIALS, dial(false), BOWL, WATER));
        assertThatIllegalArgumentException().isThrownBy(() -> field(Optional.empty(), factor, 1.1, false));
        assertThatIllegalArgumentException().isThrownBy(() -> new DialCorrection.Measure(0, Origin.ASSUMED, false));
        assertThatIllegalArgumentException().isThrownBy(() -> typeA(0));
    }
}
