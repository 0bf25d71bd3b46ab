package porebench.method.meter;

import java.math.BigDecimal;
import java.util.List;
import porebench.method.Problem;
import porebench.method.WaterDensity;
import porebench.quantity.Mass;
import porebench.quantity.Temperature;
import porebench.quantity.Typed;

/** Checks that weighings and thermometer readings of every calibration share. */
final class Weighed {
    private Weighed() {}

    static void positive(List<Problem> problems, String field, String word, Typed<Mass> mass) {
        if (mass.number().signum() <= 0) {
            problems.add(Problem.error(field, "meter.not-positive", new Problem.Word(word), mass));
        }
    }

    static boolean isWater(List<Problem> problems, String field, BigDecimal celsius) {
        if (WaterDensity.covers(new Temperature(celsius.doubleValue()))) {
            return true;
        }
        problems.add(Problem.error(
                field,
                "water.temperature-out-of-range",
                celsius,
                WaterDensity.LOWEST_CELSIUS,
                WaterDensity.HIGHEST_CELSIUS));
        return false;
    }

    /** Returns the step between two neighbouring numbers with as many digits as were typed. */
    static double step(BigDecimal typed) {
        return typed.ulp().doubleValue();
    }
}
