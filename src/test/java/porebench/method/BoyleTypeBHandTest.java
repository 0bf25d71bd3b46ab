package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.quantity.Pressure;
import porebench.quantity.PressureUnit;
import porebench.quantity.Temperature;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** The law of Boyle and Mariotte in a Type B meter, by pencil. */
class BoyleTypeBHandTest {
    private static final DialScale SCALE = DialScale.usual(Volume.of(7, VolumeUnit.LITRE));
    private static final BoyleTypeB METER = BoyleTypeB.of(SCALE, Surroundings.at(0));

    private static double kilopascals(Pressure pressure) {
        return pressure.in(PressureUnit.KILOPASCAL);
    }

    /** The usual chamber is 5 % of 7 L, 0.35 L, at 100 kPa. */
    @Test
    void takesTheUsualScaleForABowl() {
        assertThat(SCALE.chamber().in(VolumeUnit.LITRE)).isCloseTo(0.35, offset(1e-12));
        assertThat(kilopascals(SCALE.initialGauge())).isEqualTo(100);
        assertThat(SCALE.chamberPercent()).isCloseTo(5, offset(1e-12));
    }

    /**
     * 5 % air: Vk = Va = 0.35 L, P1 = 101.325 + 100 = 201.325 kPa.
     *
     * <pre>
     * P2 = (201.325 x 0.35 + 101.325 x 0.35) / 0.70 = 151.325 kPa, 50 kPa above the air
     * dial: 5 x (100 / 50 - 1) = 5 %
     * </pre>
     */
    @Test
    void halvesTheGaugePressureWhenBowlAirAndChamberAreEqual() {
        assertThat(kilopascals(METER.finalGauge(5))).isCloseTo(50, offset(1e-9));
        assertThat(METER.reading(5, SCALE)).isCloseTo(5, offset(1e-9));
    }

    private static BoyleTypeB with(Temperature chamberAir, double columnMetres) {
        return new BoyleTypeB(
                METER.chamber(), METER.initialGauge(), METER.bowl(), METER.surroundings(), chamberAir, columnMetres);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.4, 5, 9.9, 30, 100})
    void readsTheTrueAirWhereTheDialWasGraduated(double air) {
        assertThat(METER.reading(air, SCALE)).isCloseTo(air, offset(1e-9));
    }

    /** In gauge pressures the surrounding pressure cancels: the meter reads the same on a mountain. */
    @Test
    void readsTheSameAtAnyElevation() {
        BoyleTypeB high = BoyleTypeB.of(SCALE, Surroundings.at(3000));
        assertThat(high.reading(5, SCALE)).isCloseTo(5, offset(1e-9));
    }

    /** A chamber 2 % small, 0.343 L: p2 = 100 x 0.343 / 0.693 = 49.49495 kPa; 5 x (100 / 49.49495 - 1) = 5.10204 %. */
    @Test
    void readsHighWithASmallChamber() {
        assertThat(METER.withChamber(Volume.of(0.343, VolumeUnit.LITRE)).reading(5, SCALE))
                .isCloseTo(5.10204, offset(5e-6));
    }

    /** Pumped to 104 kPa: p2 = 52 kPa; 5 x (100 / 52 - 1) = 4.615385 %. At no air it stands at 5 x (100 / 104 - 1) = -0.19231. */
    @Test
    void readsLowWhenPumpedTooHigh() {
        BoyleTypeB high = METER.withInitialGauge(Pressure.of(104, PressureUnit.KILOPASCAL));
        assertThat(high.reading(5, SCALE)).isCloseTo(4.615385, offset(5e-7));
        assertThat(high.reading(0, SCALE)).isCloseTo(-0.192308, offset(5e-7));
    }

    /** Chamber at 30 C, bowl at 20 C: Va counts as 0.35 x 303.15 / 293.15 = 0.361939 L; the dial shows 5 x 1.034112 = 5.17056. */
    @Test
    void readsHighWithAWarmChamber() {
        assertThat(with(new Temperature(30), 0).reading(5, SCALE)).isCloseTo(5.17056, offset(5e-6));
    }

    /**
     * The bowl's air under 0.2 m of water at 20 C: pw = 998.20675 x 9.80665 x 0.2 = 1957.81 Pa.
     *
     * <pre>
     * 0.7 P2^2 - (70.46375 + 35.46375 - 0.68523) P2 - 70.46375 x 1.95781 = 0, in kPa and L
     * P2 = (52.62113 + sqrt(52.62113^2 + 0.7 x 137.9546)) / 0.7 = (52.62113 + 53.53085) / 0.7 = 151.6457
     * gauge 50.3207; dial 5 x (100 / 50.3207 - 1) = 4.9363
     * back: 151.6457 x 0.35 + 0.35 x 151.6457 x 50.3207 / 153.6035 = 53.0760 + 17.3878 = 70.4638 = P1 Vk
     * </pre>
     */
    @Test
    void readsLowWithAirUnderAColumn() {
        BoyleTypeB deep = with(METER.chamberAir(), 0.2);
        assertThat(kilopascals(deep.finalGauge(5))).isCloseTo(50.3207, offset(5e-4));
        assertThat(deep.reading(5, SCALE)).isCloseTo(4.9363, offset(1e-4));
    }

    @Test
    void readsMoreTheMoreAirThereIs() {
        for (BoyleTypeB meter : new BoyleTypeB[] {
            METER,
            with(METER.chamberAir(), 0.3),
            with(new Temperature(5), 0),
            METER.withChamber(Volume.of(0.2, VolumeUnit.LITRE))
        }) {
            for (int tenth = 0; tenth < 1000; tenth++) {
                assertThat(meter.reading((tenth + 1) / 10.0, SCALE)).isGreaterThan(meter.reading(tenth / 10.0, SCALE));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 100.1, Double.NaN})
    void refusesAirThatNoBowlHolds(double air) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> METER.finalGauge(air))
                .withMessage("airPercent must be from 0.0 to 100.0, but is " + air);
    }

    @Test
    void refusesPartsThatAreNotThere() {
        Volume none = new Volume(0);
        assertThatIllegalArgumentException().isThrownBy(() -> METER.withChamber(none));
        assertThatIllegalArgumentException().isThrownBy(() -> METER.withInitialGauge(new Pressure(0)));
        assertThatIllegalArgumentException().isThrownBy(() -> with(METER.chamberAir(), -0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> with(new Temperature(-300), 0));
        assertThatIllegalArgumentException().isThrownBy(() -> DialScale.usual(none));
        assertThatIllegalArgumentException().isThrownBy(() -> SCALE.readingAt(new Pressure(0)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Surroundings(new Pressure(0), new Temperature(20)))
                .withMessage("barometric must be greater than 0, but is 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Surroundings.at(0, new Temperature(41)))
                .withMessage("water must be from 0.0 to 40.0, but is 41.0");
    }
}
