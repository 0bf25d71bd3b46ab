package porebench.method.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Answer;
import porebench.method.BoyleTypeA;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Said;
import porebench.method.Surroundings;
import porebench.method.profile.Profiles;
import porebench.quantity.MassUnit;
import porebench.quantity.PressureUnit;
import porebench.quantity.Typed;

/** The calibration of a Type A meter, by pencil. */
class ColumnCalibrationHandTest {
    private static final Profile PROFILE = Profiles.standard();

    private static ColumnCheck check(String vessel, String bowl, String expansion, String pressure, String metres) {
        return new ColumnCheck(
                Typed.of(vessel, MassUnit.GRAM),
                Typed.of(bowl, MassUnit.GRAM),
                new BigDecimal(expansion),
                Typed.of(pressure, PressureUnit.KILOPASCAL),
                new BigDecimal(metres));
    }

    private static ColumnCalibration calibration(String expansion, String metres) {
        return ColumnCalibration.of(check("352", "6982", expansion, "100", metres), PROFILE)
                .value()
                .orElseThrow();
    }

    /** R = 98 x 352 / 6982 = 4.940705 %; K = 4.940705 + 0.05 = 4.990705 % (equations of ASTM C231, recalled). */
    @Test
    void addsTheExpansionToTheVessel() {
        ColumnCalibration calibration = calibration("0.05", "240");
        assertThat(calibration.vesselPercent()).isCloseTo(4.940705, offset(1e-6));
        assertThat(calibration.readingPercent()).isCloseTo(4.990705, offset(1e-6));
        assertThat(calibration.expansionPercent()).isEqualTo(0.05);
        assertThat(calibration.working().in(PressureUnit.KILOPASCAL)).isEqualTo(100);
        assertThat(calibration.elevationMetres()).isEqualTo(240);
        assertThat(calibration.passes()).isTrue();
    }

    /**
     * At sea level and 20 C under 0.4 m of water: Pd = 101.3250 + 3.9157 - 2.3326 = 102.9081 kPa.
     *
     * <pre>
     * P1 = 100 x 102.9081 / (100 + 205.8162) = 33.6503 kPa
     * </pre>
     */
    @Test
    void predictsTheHalfRangePressure() {
        ColumnCalibration calibration = calibration("0.05", "0");
        assertThat(calibration.halfRange().in(PressureUnit.KILOPASCAL)).isCloseTo(33.6503, offset(2e-4));
        double full = BoyleTypeA.of(calibration.working()).lossRatio(Surroundings.at(0));
        assertThat(BoyleTypeA.of(calibration.halfRange()).lossRatio(Surroundings.at(0)))
                .isCloseTo(full / 2, offset(1e-12));
    }

    /** ASTM C231 (recalled): D at most 0.1 %. */
    @ParameterizedTest
    @CsvSource({"0.1, true", "0.11, false", "0, true"})
    void holdsTheExpansionAgainstItsLimit(String expansion, boolean passes) {
        Answer<ColumnCalibration> answer = ColumnCalibration.of(check("352", "6982", expansion, "100", "240"), PROFILE);
        assertThat(answer.value().orElseThrow().passes()).isEqualTo(passes);
        assertThat(Said.codes(answer.problems()).contains("meter.expansion-too-large"))
                .isEqualTo(!passes);
    }

    /** ASTM C231 (recalled): calibrated anew after a change of more than 183 m, up or down. */
    @ParameterizedTest
    @CsvSource({"423, true", "423.1, false", "57, true", "56.9, false", "240, true"})
    void holdsTheElevationAgainst183Metres(double metres, boolean passes) {
        ElevationUse use = calibration("0.05", "240").elevationUse(metres, PROFILE);
        assertThat(use.passes()).isEqualTo(passes);
        assertThat(Said.codes(use.doubts()))
                .isEqualTo(passes ? java.util.List.of() : java.util.List.of("meter.moved-too-far"));
        assertThat(use.calibratedMetres()).isEqualTo(240);
        assertThat(use.usedMetres()).isEqualTo(metres);
    }

    /** From sea level to 183 m readings rise by 1.0854 % of themselves (see the test of the model): 5 % reads 5.054 %. */
    @Test
    void predictsHowAReadingMovesWithElevation() {
        ColumnCalibration calibration = calibration("0.05", "0");
        ElevationUse hill = calibration.elevationUse(183, PROFILE);
        assertThat(hill.readingRatio()).isCloseTo(1.010854, offset(1e-5));
        assertThat(hill.readingOf(5)).isCloseTo(5.0543, offset(1e-4));
        double before = 0;
        for (int metres = -500; metres <= 5000; metres += 100) {
            double ratio = calibration.elevationUse(metres, PROFILE).readingRatio();
            assertThat(ratio).isGreaterThan(before);
            before = ratio;
        }
        assertThat(calibration.elevationUse(0, PROFILE).readingRatio()).isEqualTo(1);
    }

    @Test
    void refusesABowlAndAnExpansionThatNobodyHas() {
        assertThat(Said.codes(ColumnCalibration.of(check("352", "499", "0.05", "100", "0"), PROFILE)
                        .problems()))
                .containsExactly("meter.bowl-water-impossible");
        assertThat(Said.codes(ColumnCalibration.of(check("352", "50001", "100.1", "100", "0"), PROFILE)
                        .problems()))
                .containsExactly("meter.bowl-water-impossible", "meter.expansion-impossible");
    }

    @Test
    void namesEverythingThatIsWrongAtOnce() {
        Answer<ColumnCalibration> wrong = ColumnCalibration.of(check("6982", "352", "-0.05", "0", "5001"), PROFILE);
        assertThat(wrong.value()).isEmpty();
        assertThat(wrong.problems().stream().map(Problem::field))
                .containsExactly("vesselWater", "expansion", "workingPressure", "elevation");
        assertThat(Said.codes(wrong.problems()))
                .containsExactly(
                        "meter.vessel-water-exceeds-bowl",
                        "meter.expansion-negative",
                        "meter.pressure-out-of-range",
                        "meter.elevation-out-of-range");
        assertThat(Said.text(wrong.problems().get(0)))
                .isEqualTo("The water of the calibration vessel, 6982 g, must be less than that of the bowl, 352 "
                        + "g. Check the masses and their units.");
        assertThat(Said.text(wrong.problems().get(3)))
                .isEqualTo("Elevation 5001 m must be from -500 to 5000 m. " + "Correct the elevation or its unit.");
    }

    @Test
    void asksForWaterInBothAndAPressureThatAMeterCanStand() {
        Answer<ColumnCalibration> none = ColumnCalibration.of(check("0", "-1", "0", "700", "0"), PROFILE);
        assertThat(none.problems().stream().map(Problem::field)).containsExactly("vesselWater", "bowlWater");
        assertThat(Said.codes(none.problems())).containsOnly("meter.not-positive");
        Answer<ColumnCalibration> high = ColumnCalibration.of(check("352", "6982", "0.05", "700.1", "0"), PROFILE);
        assertThat(Said.text(high.problems().get(0)))
                .isEqualTo("The working pressure of 700.1 kPa must be greater than 0 and at most 700 kPa. "
                        + "Correct the pressure or its unit.");
    }
}
