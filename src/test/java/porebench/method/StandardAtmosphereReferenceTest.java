package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.ReferenceFile;
import porebench.quantity.PressureUnit;

/** Against the printed tables of the standard atmosphere. */
class StandardAtmosphereReferenceTest {
    /** ISO 2533:1975, table 6 (seen as transcribed). */
    @Test
    void agreesWithTheTableByElevation() {
        for (ReferenceFile.Row row :
                ReferenceFile.read("standard-atmosphere-elevation.csv").rows()) {
            double pascals =
                    StandardAtmosphere.pressureAt(row.number("elevation_m")).pascals();
            assertThat(pascals / 101_325)
                    .as("at %s m", row.text("elevation_m"))
                    .isCloseTo(row.number("pressure_ratio"), offset(row.number("last_digit")));
        }
    }

    /** ISO 2533:1975, table 5 (seen as transcribed). */
    @Test
    void agreesWithTheTableByGeopotentialAltitude() {
        for (ReferenceFile.Row row :
                ReferenceFile.read("standard-atmosphere-geopotential.csv").rows()) {
            assertThat(StandardAtmosphere.atGeopotential(row.number("geopotential_m"))
                            .in(PressureUnit.MILLIBAR))
                    .as("at %s m", row.text("geopotential_m"))
                    .isCloseTo(row.number("millibars"), offset(row.number("last_digit")));
        }
    }

    /** U.S. Standard Atmosphere 1976 (recalled). */
    @Test
    void agreesWithTheTableOfHighPlaces() {
        for (ReferenceFile.Row row :
                ReferenceFile.read("standard-atmosphere-high.csv").rows()) {
            assertThat(StandardAtmosphere.pressureAt(row.number("elevation_m")).in(PressureUnit.MILLIBAR))
                    .as("at %s m", row.text("elevation_m"))
                    .isCloseTo(row.number("millibars"), offset(0.006));
        }
    }

    @Test
    void fallsAllTheWayUp() {
        for (int metres = -500; metres < 5000; metres += 50) {
            assertThat(StandardAtmosphere.pressureAt(metres + 50)).isLessThan(StandardAtmosphere.pressureAt(metres));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-500, 5000})
    void coversItsRangeWithBothEnds(double metres) {
        assertThat(StandardAtmosphere.covers(metres)).isTrue();
        assertThat(StandardAtmosphere.pressureAt(metres).pascals()).isBetween(54_000.0, 107_500.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-500.01, 5000.01, Double.NaN})
    void refusesAnElevationOutsideItsRange(double metres) {
        assertThat(StandardAtmosphere.covers(metres)).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.pressureAt(metres))
                .withMessage("elevationMetres must be from -500.0 to 5000.0, but is " + metres);
    }
}
