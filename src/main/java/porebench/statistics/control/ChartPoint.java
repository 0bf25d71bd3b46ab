package porebench.statistics.control;

import java.util.List;
import porebench.quantity.Require;

/**
 * A point of a control chart with its limits.
 *
 * @param index which subgroup it stands for, from 0
 * @param value what is plotted, in the unit of the values
 * @param centre the centre line at this point
 * @param low the lower limit at this point
 * @param high the upper limit at this point
 * @param signals the rules that fire here
 */
public record ChartPoint(int index, double value, double centre, double low, double high, List<RunRule> signals) {
    public ChartPoint {
        Require.atLeast("index", index, 0);
        Require.finite("value", value);
        Require.within("centre", centre, low, high);
        signals = List.copyOf(signals);
    }
}
