package porebench.method.budget;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The uncertainty budget of the air content of a load: the field reading, corrected along the dial of its meter, less G.
 *
 * <p>Air = A + c - G; every sensitivity is 1 or -1. How readings of one load scatter among operators and meters is a figure of
 * the profile: one reading cannot tell. That figure holds part of the division and of the dials too, so that the budget is
 * rather too wide than too narrow. Reading and factor count as independent: where both come from the same dial, part of its
 * error cancels.
 *
 * <p>Source: JCGM 100:2008, clause 5 (recalled); the model is the method's own formula (ASTM C231, air content, recalled).
 * Differences from the source: none.
 */
public final class FieldBudget {
    private FieldBudget() {}

    /** Draws up the budget of a corrected field reading. */
    public static Budget of(FieldInputs inputs) {
        List<BudgetLine> lines = new ArrayList<>();
        Set<Omission> omissions = EnumSet.noneOf(Omission.class);
        lines.add(BudgetLine.known(
                Part.FIELD_SCATTER, 0, inputs.scatterPercent(), 1, Double.POSITIVE_INFINITY, Origin.PROFILE));
        lines.add(BudgetLine.stepped(
                Part.READING, inputs.readingPercent(), inputs.divisionPercent(), 1, Origin.DIVISION));
        inputs.dial().ifPresentOrElse(dial -> lines.add(dial.line()), () -> omissions.add(Omission.FIELD_DIAL));
        lines.add(BudgetLine.known(
                Part.FACTOR,
                inputs.factorPercent(),
                inputs.factorUncertaintyPercent(),
                -1,
                inputs.factorDegreesOfFreedom(),
                Origin.BUDGET));
        inputs.factorStepPercent()
                .ifPresent(step -> lines.add(BudgetLine.stepped(Part.ROUNDING, 0, step, -1, Origin.DIGITS)));
        double[] sensitivities =
                lines.stream().mapToDouble(BudgetLine::sensitivity).toArray();
        return new Budget(lines, values -> linear(sensitivities, values), omissions);
    }

    private static double linear(double[] sensitivities, double[] values) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += sensitivities[i] * values[i];
        }
        return sum;
    }
}
