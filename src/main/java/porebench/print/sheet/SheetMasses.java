package porebench.print.sheet;

import java.math.BigDecimal;
import porebench.method.RoundingRule;
import porebench.method.Ties;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;

/**
 * Masses and their limits as a sheet prints them, in one unit.
 *
 * <p>Masses are rounded to 1 g, 0.001 kg, 0.01 lb or 0.1 oz, ties away from zero; common practice, no source. Limits are
 * rounded inward, so that a mass within the printed limits is within the tolerance.
 *
 * @param unit the unit of the sheet
 */
record SheetMasses(MassUnit unit) {
    /** What a limit's step is divided by until limits close to each other do not cross. */
    private static final int FINER = 10;

    /** Returns the rule by which masses are rounded. */
    RoundingRule rule() {
        return rule(
                switch (unit) {
                    case KILOGRAM -> new BigDecimal("0.001");
                    case GRAM -> BigDecimal.ONE;
                    case POUND -> new BigDecimal("0.01");
                    case OUNCE -> new BigDecimal("0.1");
                });
    }

    private static RoundingRule rule(BigDecimal step) {
        return new RoundingRule(step, Ties.AWAY_FROM_ZERO, "Step of a printed mass: common practice, no source");
    }

    /** Returns a mass rounded by the rule. */
    BigDecimal rounded(Mass mass) {
        return rule().round(mass.in(unit));
    }

    /**
     * Limits of a mass, rounded inward.
     *
     * @param lowest the least mass
     * @param highest the greatest mass
     */
    record Limits(BigDecimal lowest, BigDecimal highest) {}

    /** Returns limits to the step of the rule, or finer where they would cross. */
    Limits limits(Mass lowest, Mass highest) {
        BigDecimal step = rule().step();
        Limits limits = limits(lowest, highest, step);
        for (int finer = 0; finer < 3 && limits.lowest.compareTo(limits.highest) > 0; finer++) {
            step = step.divide(BigDecimal.valueOf(FINER));
            limits = limits(lowest, highest, step);
        }
        return limits;
    }

    private Limits limits(Mass lowest, Mass highest, BigDecimal step) {
        BigDecimal exactLow = RoundingRule.withoutNoise(lowest.in(unit));
        BigDecimal exactHigh = RoundingRule.withoutNoise(highest.in(unit));
        BigDecimal low = rule(step).round(exactLow);
        BigDecimal high = rule(step).round(exactHigh);
        return new Limits(
                low.compareTo(exactLow) < 0 ? low.add(step) : low,
                high.compareTo(exactHigh) > 0 ? high.subtract(step) : high);
    }
}
