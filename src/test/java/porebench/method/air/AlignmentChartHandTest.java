package porebench.method.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** With a pencil: 60 mm wide, 100 mm high, readings 0 to 10 %, G 0.3 % at half the height, a percent of G four times as long. */
class AlignmentChartHandTest {
    private static final AlignmentChart CHART = new AlignmentChart(60, 100, 0, 10, 0.3, 4);

    // u = 100/10 = 10 mm, v = 4 x 10 = 40 mm; u v/(u+v) = 400/50 = 8 mm at 60 x 10/50 = 12 mm.
    @Test
    void lengthsOfAPercentAndThePlaceOfAir() {
        assertThat(CHART.readingModulus()).isEqualTo(10);
        assertThat(CHART.factorModulus()).isEqualTo(40);
        assertThat(CHART.airModulus()).isEqualTo(8);
        assertThat(CHART.airFromLeft()).isEqualTo(12);
        // 0.4 mm of 8 mm a percent.
        assertThat(CHART.misreading(0.4)).isEqualTo(0.05, within(1e-12));
    }

    // Reading 5 lies at 50, G 0.3 at 50, so the line is level and air 4.7 lies at 50. Reading 8 lies at 80; a fifth of
    // the way to
    // 50 is 74, where air 7.7 is. G 0.8 lies 0.5 x 40 = 20 below the middle, at 30: from 80 a fifth of the way to 30 is
    // 70, air 7.2.
    // Reading 0 and G 0.8: 0 + 30/5 = 6, air -0.8.
    @ParameterizedTest
    @CsvSource({"5,50,0.3,50,4.7,50", "8,80,0.3,50,7.7,74", "8,80,0.8,30,7.2,70", "0,0,0.8,30,-0.8,6"})
    void aLineFromReadingToFactorCrossesAirAtTheirDifference(
            double reading, double left, double factor, double right, double air, double middle) {
        assertThat(CHART.heightOfReading(reading)).isEqualTo(left, within(1e-9));
        assertThat(CHART.heightOfFactor(factor)).isEqualTo(right, within(1e-9));
        assertThat(CHART.heightOfAir(air)).isEqualTo(middle, within(1e-9));
    }

    @Test
    void aChartHasRoomAndRisingReadings() {
        assertThatThrownBy(() -> new AlignmentChart(0, 100, 0, 10, 0.3, 4)).hasMessageContaining("width");
        assertThatThrownBy(() -> new AlignmentChart(60, -1, 0, 10, 0.3, 4)).hasMessageContaining("height");
        assertThatThrownBy(() -> new AlignmentChart(60, 100, Double.NaN, 10, 0.3, 4))
                .hasMessageContaining("lowestReading");
        assertThatThrownBy(() -> new AlignmentChart(60, 100, 5, 5, 0.3, 4)).hasMessageContaining("span");
        assertThatThrownBy(() -> new AlignmentChart(60, 100, 0, 10, Double.NaN, 4))
                .hasMessageContaining("factorPercent");
        assertThatThrownBy(() -> new AlignmentChart(60, 100, 0, 10, 0.3, 0)).hasMessageContaining("stretch");
    }
}
