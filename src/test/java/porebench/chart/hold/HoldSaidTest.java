package porebench.chart.hold;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import porebench.method.hold.AirPair;
import porebench.method.hold.HoldPoint;

/** The plots of pairs of air say in words what they draw. */
class HoldSaidTest {
    private static HoldPlot.Point pair(String label, double meter, double density, double high, boolean isSignal) {
        return new HoldPlot.Point(
                label,
                List.of(),
                new HoldPoint(
                        new AirPair(label, meter, density), OptionalDouble.empty(), high, 0, 0.5, isSignal, isSignal));
    }

    @Test
    void pairsOfAirBeforeAndAfterAShift() {
        HoldPlot plot = new HoldPlot(
                List.of(
                        pair("day 1", 6, 5.75, 0, false),
                        pair("day 2", 6, 5.25, 1, false),
                        pair("day 3", 6, 5, 5.5, true)),
                OptionalInt.of(2),
                485.6,
                false);
        // Differences 0.25, 0.75 and 1; the mean of the first two is 0.5.
        assertThat(plot.said(Locale.ENGLISH))
                .contains(
                        "Across: readings with a density, in the order of time. Up: difference (% air).",
                        "reading with a density: 3, from +0.25 to +1.00.",
                        "mean difference, day 1 to day 2: +0.50.",
                        "mean difference, day 3 to day 3: +1.00.",
                        "beyond its limit, sums: 1 (day 3: +1.00).",
                        "beyond its limit, average: 1 (day 3: +1.00).",
                        "sums, day 3: 5.50.",
                        "average, day 3: 0.50.",
                        "limits, sums: -5.00 to 5.00.",
                        "shifted from here on: day 3.")
                .anyMatch(sentence -> sentence.contains("once in 486 pairs"));
        assertThat(new HoldPlot(List.of(), OptionalInt.empty(), 486, true).said(Locale.ENGLISH))
                .anyMatch(sentence -> sentence.startsWith("SIMULATED"));
    }
}
