package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.ReferenceFile;
import porebench.quantity.DensityUnit;
import porebench.quantity.Temperature;
import porebench.quantity.TemperatureUnit;

/** Against printed tables of the density of water, and the equation worked by pencil. */
class WaterDensityReferenceTest {
    private static double at(double celsius) {
        return WaterDensity.at(new Temperature(celsius)).kilogramsPerCubicMetre();
    }

    /** ASTM C29 and C138, table (recalled); Tanaka et al. 2001, table (recalled). */
    @Test
    void agreesWithThePrintedTablesInKilograms() {
        check("water-density-table.csv", 0.016);
        check("water-density-tanaka.csv", 0.0005);
    }

    private static void check(String file, double within) {
        for (ReferenceFile.Row row : ReferenceFile.read(file).rows()) {
            assertThat(at(row.number("celsius")))
                    .as("%s at %s C", file, row.text("celsius"))
                    .isCloseTo(row.number("kilograms_per_cubic_metre"), offset(within));
        }
    }

    /** Kell's equation of 1975, another one than the program's (computed). */
    @Test
    void agreesWithAnotherEquationInPounds() {
        for (ReferenceFile.Row row :
                ReferenceFile.read("water-density-kell.csv").rows()) {
            Temperature water = TemperatureUnit.FAHRENHEIT.of(row.number("fahrenheit"));
            assertThat(DensityUnit.POUND_PER_CUBIC_FOOT.in(WaterDensity.at(water)))
                    .as("at %s F", row.text("fahrenheit"))
                    .isCloseTo(row.number("pounds_per_cubic_foot"), offset(0.0005));
        }
    }

    /**
     * Tanaka's equation by pencil.
     *
     * <pre>
     * t = 3.983035: (t + a1) is 0, so rho is a5 = 999.974950.
     * t = 20: (20 - 3.983035)^2 = 16.016965^2 = 256.543168
     *         256.543168 x (20 + 301.797) = 82554.82
     *         522528.9 x (20 + 69.34881) = 46687335
     *         82554.82 / 46687335 = 0.001768248
     *         999.974950 x (1 - 0.001768248) = 998.20675
     * </pre>
     */
    @Test
    void followsTheEquationByPencil() {
        assertThat(at(3.983035)).isEqualTo(999.974950);
        assertThat(at(20)).isCloseTo(998.20675, offset(0.00002));
    }

    /** Water is densest near 4 C: it only gets lighter above and below. */
    @Test
    void fallsOnBothSidesOfFourDegrees() {
        for (int tenth = 0; tenth < 400; tenth++) {
            double low = tenth / 10.0;
            double high = (tenth + 1) / 10.0;
            if (high <= 3.9) {
                assertThat(at(high)).isGreaterThan(at(low));
            } else if (low >= 4) {
                assertThat(at(high)).isLessThan(at(low));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 40, 20})
    void coversItsRangeWithBothEnds(double celsius) {
        assertThat(WaterDensity.covers(new Temperature(celsius))).isTrue();
        assertThat(at(celsius)).isBetween(992.0, 1000.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 40.01, 100})
    void refusesATemperatureOutsideItsRange(double celsius) {
        assertThat(WaterDensity.covers(new Temperature(celsius))).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> at(celsius))
                .withMessage("temperature must be from 0.0 to 40.0, but is " + celsius);
    }
}
