package porebench.method.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import porebench.method.MeterType;
import porebench.statistics.uncertainty.Correlation;

/**
 * The uncertainty budget of a factor G, the mean of the trials of a determination.
 *
 * <p>Type B: G = (A1 + c) - 100 V / S - P, with A1 the reading, c the correction of the dial, V the water by volume and P that
 * by shares of the bowl, S the bowl. Type A: G = h1 - h2. Either is proportional to the mass m of the sample, to first order.
 * The sensitivities are: of reading, correction and scatter 1; of h2 and P -1; of V -100 / S; of S 100 V / S^2, less (A1 +
 * c) / S where the dial was checked in the same bowl, whose error then hardly matters; of m -G / m.
 *
 * <p>Scatter is s / sqrt(n), with s by {@link TrialScatter}. Steps of scales and digits and the limits of cylinder, balance and
 * calibrations are shared by all trials and not divided by n: trials that land on the same division share its error. Part of it
 * is in the scatter too, so that the budget is rather too wide than too narrow. A cylinder, balance or vessel that also measured
 * the known air of the dial's check has the same error in both, and it cancels. The temperature of the water moves G by less than
 * 0.001 % air and is left out.
 *
 * <p>With two or three trials Welch and Satterthwaite give the sum more degrees of freedom than its scatter has alone. Drawing,
 * which knows no such rule, shows that, and is then the result ({@link BudgetResult}).
 *
 * <p>Source: JCGM 100:2008, 4.2, 4.3.7 and clause 5 (recalled); the model is the method's own formula (ASTM C231, clause 6,
 * recalled). Differences from the source: none.
 */
public final class FactorBudget {
    private static final double LITRES_PERCENT_PER_MILLILITRE = 100 / 1000.0;

    private final FactorInputs inputs;
    private final List<BudgetLine> lines = new ArrayList<>();
    private final Set<Omission> omissions = EnumSet.noneOf(Omission.class);

    private FactorBudget(FactorInputs inputs) {
        this.inputs = inputs;
    }

    /** Draws up the budget of a factor. */
    public static Budget of(FactorInputs inputs) {
        return new FactorBudget(inputs).made();
    }

    private Budget made() {
        omissions.addAll(inputs.noted());
        scatter();
        inputs.between()
                .filter(between -> between.standardUncertaintyPercent() > 0)
                .ifPresent(between -> lines.add(between.line()));
        reading();
        if (inputs.meterType() == MeterType.B) {
            dial();
            bowl();
            inputs.water().ifPresent(this::water);
        } else {
            omissions.add(Omission.COLUMN);
        }
        sample();
        int[] places = places();
        return new Budget(lines, correlations(places), values -> factor(new Given(places, values)), omissions);
    }

    /** Returns where each part stands among the lines, below 0 where it has none. */
    private int[] places() {
        int[] places = new int[BudgetPart.values().length];
        Arrays.fill(places, -1);
        for (int i = 0; i < lines.size(); i++) {
            places[lines.get(i).part().ordinal()] = i;
        }
        return places;
    }

    /** A cylinder, balance or vessel that measured the known air of the dial as well has one error in both. */
    private List<Correlation> correlations(int[] places) {
        int ofDial = places[BudgetPart.DIAL_MEASURE.ordinal()];
        boolean isOne = inputs.dial()
                .flatMap(DialCorrection::measure)
                .filter(DialCorrection.Measure::isOfTheTrials)
                .isPresent();
        int ofWater = Math.max(places[BudgetPart.WATER_MEASURE.ordinal()], places[BudgetPart.SHARE_MEASURE.ordinal()]);
        return isOne && ofDial >= 0 && ofWater >= 0 ? List.of(new Correlation(ofDial, ofWater, 1)) : List.of();
    }

    /** Values of the parts that have a line; the others are as they were taken to be. */
    private static final class Given {
        private final int[] places;
        private final double[] values;

        Given(int[] places, double[] values) {
            this.places = places;
            this.values = values;
        }

        double of(BudgetPart part, double otherwise) {
            int place = places[part.ordinal()];
            return place < 0 ? otherwise : values[place];
        }
    }

    private double factor(Given given) {
        double scatter = given.of(BudgetPart.REPEATABILITY, 0) + given.of(BudgetPart.OCCASIONS, 0);
        double mass = inputs.sample().map(Sample::kilograms).orElse(1.0);
        double sample = mass / given.of(BudgetPart.SAMPLE, mass);
        double reading = given.of(BudgetPart.READING, inputs.readingPercent());
        if (inputs.meterType() == MeterType.A) {
            return (reading - given.of(BudgetPart.RELEASED, inputs.releasedPercent())) * sample + scatter;
        }
        double litres = given.of(BudgetPart.BOWL, inputs.bowl().litres());
        double truth = (reading + given.of(BudgetPart.DIAL, 0) + given.of(BudgetPart.DIAL_MEASURE, 0))
                * (restsOnBowl() ? inputs.bowl().litres() / litres : 1);
        double volume = given.of(BudgetPart.WATER, 0) + given.of(BudgetPart.WATER_MEASURE, 0);
        double share = given.of(BudgetPart.SHARE, 0) + given.of(BudgetPart.SHARE_MEASURE, 0);
        return (truth - LITRES_PERCENT_PER_MILLILITRE * volume / litres - share) * sample + scatter;
    }

    private boolean restsOnBowl() {
        return inputs.dial().filter(DialCorrection::restsOnBowl).isPresent();
    }

    private double correction() {
        return inputs.dial().map(DialCorrection::correctionPercent).orElse(0.0);
    }

    private void scatter() {
        int count = inputs.factors().count();
        TrialScatter scatter = inputs.scatter();
        if (scatter.origin() == Origin.PROFILE) {
            omissions.add(Omission.ONE_TRIAL);
        } else if (count > 1 && inputs.factors().range() == 0) {
            omissions.add(Omission.NO_SCATTER);
        }
        lines.add(BudgetLine.known(
                BudgetPart.REPEATABILITY,
                0,
                scatter.standardDeviationPercent() / Math.sqrt(count),
                1,
                scatter.degreesOfFreedom(),
                scatter.origin()));
    }

    private void reading() {
        lines.add(BudgetLine.stepped(
                BudgetPart.READING, inputs.readingPercent(), inputs.divisionPercent(), 1, Origin.DIVISION));
        if (inputs.meterType() == MeterType.A) {
            lines.add(BudgetLine.stepped(
                    BudgetPart.RELEASED, inputs.releasedPercent(), inputs.divisionPercent(), -1, Origin.DIVISION));
        }
    }

    private void dial() {
        if (inputs.dial().isEmpty()) {
            omissions.add(Omission.DIAL_NEVER_CHECKED);
        }
        inputs.dial().ifPresent(dial -> lines.add(dial.line()));
        inputs.dial().flatMap(DialCorrection::measure).ifPresent(measure -> {
            lines.add(measure.line());
            omissions.addAll(measure.wanting());
        });
    }

    private void bowl() {
        Bowl bowl = inputs.bowl();
        double millilitres = inputs.water().map(Water::millilitres).orElse(0.0);
        double litres = bowl.litres();
        double ofWater = LITRES_PERCENT_PER_MILLILITRE * millilitres / (litres * litres);
        double ofDial = restsOnBowl() ? (inputs.readingPercent() + correction()) / litres : 0;
        if (ofWater == 0 && ofDial == 0) {
            return;
        }
        if (!bowl.isWeighed()) {
            omissions.add(Omission.BOWL_NEVER_WEIGHED);
        }
        lines.add(BudgetLine.known(
                BudgetPart.BOWL,
                litres,
                bowl.standardUncertaintyLitres(),
                ofWater - ofDial,
                bowl.degreesOfFreedom(),
                bowl.isWeighed() ? Origin.CALIBRATION : Origin.DIGITS));
    }

    private void water(Water water) {
        double perMillilitre = -LITRES_PERCENT_PER_MILLILITRE / inputs.bowl().litres();
        if (water.hasVolume()) {
            lines.add(BudgetLine.stepped(
                    BudgetPart.WATER, water.millilitres(), water.stepMillilitres(), perMillilitre, Origin.DIGITS));
            lines.add(BudgetLine.limited(
                    BudgetPart.WATER_MEASURE, 0, water.limitMillilitres(), perMillilitre, water.limitOrigin()));
        }
        if (water.hasShare()) {
            lines.add(
                    BudgetLine.stepped(BudgetPart.SHARE, water.sharePercent(), water.stepPercent(), -1, Origin.DIGITS));
            lines.add(BudgetLine.limited(BudgetPart.SHARE_MEASURE, 0, water.limitPercent(), -1, water.limitOrigin()));
        }
    }

    private void sample() {
        if (inputs.sample().isEmpty()) {
            omissions.add(Omission.SAMPLE_NOT_STATED);
        }
        inputs.sample()
                .ifPresent(sample -> lines.add(BudgetLine.known(
                        BudgetPart.SAMPLE,
                        sample.kilograms(),
                        sample.standardUncertaintyKilograms(),
                        -inputs.factors().mean() / sample.kilograms(),
                        Double.POSITIVE_INFINITY,
                        sample.origin())));
    }
}
