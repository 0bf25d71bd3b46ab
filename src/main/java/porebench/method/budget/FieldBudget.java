package porebench.method.budget;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import porebench.statistics.uncertainty.Correlation;
import porebench.statistics.uncertainty.Uncertain;

/**
 * The uncertainty budget of the air content of a load: the field reading, corrected along the dial of its meter, less G.
 *
 * <p>Air = A + c - G; every sensitivity is 1 or -1. How readings of one load scatter among operators and meters is a figure of
 * the profile: one reading cannot tell. That figure holds part of the division and of the dials too, so that the budget is
 * rather too wide than too narrow.
 *
 * <p>Where load and trials were read on one dial under one calibration, its corrections err together, by as much as they rest on the
 * same check points, and part of that cancels in A + c - G; so does the error of the measure by which the known air was made. G
 * stands in one line; what is drawn are its own parts.
 *
 * <p>Source: JCGM 100:2008, clause 5 (recalled); the model is the method's own formula (ASTM C231, air content, recalled).
 * Differences from the source: none.
 */
public final class FieldBudget {
    private final FieldInputs inputs;
    private final List<BudgetLine> lines = new ArrayList<>();
    private final Set<Omission> omissions = EnumSet.noneOf(Omission.class);

    private FieldBudget(FieldInputs inputs) {
        this.inputs = inputs;
    }

    /** Draws up the budget of a corrected field reading. */
    public static Budget of(FieldInputs inputs) {
        return new FieldBudget(inputs).made();
    }

    private Budget made() {
        lines.add(BudgetLine.known(
                BudgetPart.FIELD_SCATTER, 0, inputs.scatterPercent(), 1, Double.POSITIVE_INFINITY, Origin.PROFILE));
        lines.add(BudgetLine.stepped(
                BudgetPart.READING, inputs.readingPercent(), inputs.divisionPercent(), 1, Origin.DIVISION));
        inputs.dial().ifPresentOrElse(dial -> lines.add(dial.line()), () -> omissions.add(Omission.FIELD_DIAL));
        inputs.dial().flatMap(DialCorrection::measure).ifPresent(measure -> {
            lines.add(measure.line());
            omissions.addAll(measure.wanting());
        });
        Budget factor = inputs.factor();
        int placeOfFactor = lines.size();
        lines.add(BudgetLine.known(
                BudgetPart.FACTOR,
                inputs.factorPercent(),
                factor.combinedPercent(),
                -1,
                factor.effectiveDegreesOfFreedom(),
                Origin.BUDGET));
        inputs.factorStepPercent()
                .ifPresent(step -> lines.add(BudgetLine.stepped(BudgetPart.ROUNDING, 0, step, -1, Origin.DIGITS)));
        double[] sensitivities =
                lines.stream().mapToDouble(BudgetLine::sensitivity).toArray();
        ToDoubleFunction<double[]> model = values -> linear(sensitivities, values);
        List<Correlation> together = together();
        return new Budget(
                lines,
                withFactor(placeOfFactor, together),
                model,
                drawing(placeOfFactor, together, sensitivities),
                omissions);
    }

    /** Returns what errs together: a line here, by its place, and a part of the factor, by its place there. */
    private List<Correlation> together() {
        List<Correlation> together = new ArrayList<>();
        add(together, BudgetPart.DIAL, BudgetPart.DIAL, inputs.dialCoefficient());
        if (inputs.isMeasureShared()) {
            add(together, BudgetPart.DIAL_MEASURE, BudgetPart.DIAL_MEASURE, 1);
            int there = place(inputs.factor().lines(), BudgetPart.DIAL_MEASURE);
            for (Correlation inside : inputs.factor().drawing().correlations()) {
                if (inside.first() == there) {
                    add(
                            together,
                            BudgetPart.DIAL_MEASURE,
                            inputs.factor().lines().get(inside.second()).part(),
                            1);
                }
            }
        }
        return together;
    }

    /** Corrections known by other degrees of freedom do not rest on the same check points. */
    private void add(List<Correlation> together, BudgetPart part, BudgetPart ofFactor, double coefficient) {
        int here = place(lines, part);
        int there = place(inputs.factor().lines(), ofFactor);
        if (coefficient != 0
                && here >= 0
                && there >= 0
                && lines.get(here).degreesOfFreedom()
                        == inputs.factor().lines().get(there).degreesOfFreedom()) {
            together.add(new Correlation(here, offset() + there, coefficient));
        }
    }

    /** Where the parts of the factor begin among what is drawn: beyond any line of the budget. */
    private static int offset() {
        return BudgetPart.values().length;
    }

    private static int place(List<BudgetLine> lines, BudgetPart part) {
        return IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).part() == part)
                .findFirst()
                .orElse(-1);
    }

    /** Returns how far lines err together with the factor as a whole: the covariances with its parts, over its uncertainty. */
    private List<Correlation> withFactor(int placeOfFactor, List<Correlation> together) {
        Budget factor = inputs.factor();
        double[] coefficients = new double[placeOfFactor];
        for (Correlation one : together) {
            BudgetLine part = factor.lines().get(one.second() - offset());
            coefficients[one.first()] += one.coefficient() * part.sensitivity() * part.standardUncertainty();
        }
        return IntStream.range(0, placeOfFactor)
                .filter(i -> coefficients[i] != 0)
                .mapToObj(i -> new Correlation(
                        i, placeOfFactor, Math.max(-1, Math.min(1, coefficients[i] / factor.combinedPercent()))))
                .toList();
    }

    private Budget.Drawing drawing(int placeOfFactor, List<Correlation> together, double[] sensitivities) {
        Budget factor = inputs.factor();
        List<Uncertain> all =
                new ArrayList<>(lines.stream().map(BudgetLine::distribution).toList());
        all.set(placeOfFactor, Uncertain.normal(inputs.factorPercent(), 0));
        int count = all.size();
        all.addAll(factor.drawing().inputs());
        List<Correlation> correlations = new ArrayList<>();
        together.forEach(one ->
                correlations.add(new Correlation(one.first(), one.second() - offset() + count, one.coefficient())));
        factor.drawing()
                .correlations()
                .forEach(one -> correlations.add(
                        new Correlation(one.first() + count, one.second() + count, one.coefficient())));
        double[] parts = new double[all.size() - count];
        return new Budget.Drawing(all, correlations, values -> {
            System.arraycopy(values, count, parts, 0, parts.length);
            double wrong = factor.drawing().model().applyAsDouble(parts) - factor.valuePercent();
            return linear(sensitivities, values) - wrong;
        });
    }

    private static double linear(double[] sensitivities, double[] values) {
        double sum = 0;
        for (int i = 0; i < sensitivities.length; i++) {
            sum += sensitivities[i] * values[i];
        }
        return sum;
    }
}
