package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;
import porebench.quantity.Pressure;
import porebench.quantity.PressureUnit;
import porebench.quantity.Temperature;

/** The law of Boyle and Mariotte in a Type A meter, by pencil, and the parts of it against printed figures. */
class BoyleTypeAHandTest {
    private static final Pressure WORKING = Pressure.of(100, PressureUnit.KILOPASCAL);
    private static final Surroundings SEA = Surroundings.at(0);

    /**
     * Without a column at 20 C and sea level, P = 100 kPa.
     *
     * <pre>
     * pv = 611.2 exp(17.62 x 20 / 263.12) = 611.2 exp(1.339313) = 2332.6 Pa
     * Pd = 101.3250 - 2.3326 = 98.9924 kPa
     * loss = 100 / (98.9924 + 100) = 0.502532
     * P1 = 100 x 98.9924 / (100 + 2 x 98.9924) = 33.2206 kPa; its loss 33.2206 / 132.2130 = 0.251266, half of the above
     * </pre>
     */
    @Test
    void losesAboutHalfOfTheAirUnderOneAtmosphere() {
        BoyleTypeA meter = new BoyleTypeA(WORKING, 0);
        assertThat(meter.lossRatio(SEA)).isCloseTo(0.502532, offset(2e-6));
        Pressure half = meter.halfRange(SEA);
        assertThat(half.in(PressureUnit.KILOPASCAL)).isCloseTo(33.2206, offset(2e-4));
        assertThat(new BoyleTypeA(half, 0).lossRatio(SEA)).isCloseTo(meter.lossRatio(SEA) / 2, offset(1e-12));
    }

    /**
     * Calibrated at sea level, used 183 m up, with the usual column of 0.4 m at 20 C (3.9157 kPa).
     *
     * <pre>
     * air at 183 m, between the rows 150 and 200 m of ISO 2533:1975, table 6 (seen as transcribed):
     *     0.982343 - 33/50 x (0.982343 - 0.976515) = 0.978497, 99.1462 kPa
     * Pd: 101.3250 + 3.9157 - 2.3326 = 102.9081 and 99.1462 + 3.9157 - 2.3326 = 100.7293 kPa
     * ratio (102.9081 + 100) / (100.7293 + 100) = 1.010854
     * </pre>
     */
    @Test
    void readsHighUphillAndLowDownhill() {
        BoyleTypeA meter = BoyleTypeA.of(WORKING);
        Surroundings hill = Surroundings.at(183);
        assertThat(meter.readingRatio(SEA, hill)).isCloseTo(1.010854, offset(1e-5));
        assertThat(meter.readingRatio(hill, SEA)).isCloseTo(1 / 1.010854, offset(1e-5));
        assertThat(meter.readingRatio(hill, hill)).isCloseTo(1, offset(1e-12));
    }

    /** Warmer water holds more vapour, which is not compressed: the same air reads higher. */
    @Test
    void readsHighInWarmWater() {
        Surroundings warm = Surroundings.at(0, new Temperature(30));
        assertThat(BoyleTypeA.of(WORKING).readingRatio(SEA, warm)).isGreaterThan(1.005);
    }

    /** Steam tables (recalled). */
    @Test
    void takesTheVapourPressureOfTheSteamTables() {
        for (ReferenceFile.Row row : ReferenceFile.read("vapour-pressure.csv").rows()) {
            assertThat(BoyleTypeA.vapourPascals(new Temperature(row.number("celsius"))) / 1000)
                    .as("at %s C", row.text("celsius"))
                    .isCloseTo(row.number("kilopascals"), withinPercentage(0.4));
        }
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BoyleTypeA.of(new Pressure(0)))
                .withMessage("working must be greater than 0, but is 0.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new BoyleTypeA(WORKING, -1));
    }
}
