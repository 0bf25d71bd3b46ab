package porebench.method.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;

/**
 * A load that is measured at some air with some standard uncertainty: how likely it keeps to its limits. By symmetry that is how likely a
 * load of that air is seen within them, so that {@link LoadRisk} has it as what is not wrongly failed.
 */
class GuardBandReferenceTest {
    private static double conforming(double low, double high, double measured, double uncertainty) {
        AirLimits limits = new AirLimits((low + high) / 2, (high - low) / 2);
        return 1 - LoadRisk.of(limits, new Loads(measured, 0, uncertainty), 0).wronglyFailed();
    }

    @Test
    void conformanceProbabilitiesAndGuardBands() {
        ReferenceFile file = ReferenceFile.read("guard-bands.csv");
        assertThat(file.rows()).hasSize(9);
        for (ReferenceFile.Row row : file.rows()) {
            double seen = conforming(
                    row.number("low"), row.number("high"), row.number("measured"), row.number("uncertainty"));
            assertThat(seen).as(row.text("case")).isCloseTo(row.number("conforming"), within(1e-9));
        }
        assertThat(conforming(-1000, -5.40, -5.47, 0.05)).isCloseTo(0.92, within(0.005));
        assertThat(conforming(12.5, 16.3, 13.6, 1.8)).isCloseTo(0.66, within(0.005));
    }
}
