package porebench.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;

class SheetMassesTest {
    @ParameterizedTest
    @CsvSource({
        "GRAM, 4900.4999, 4900",
        "GRAM, 4900.5, 4901",
        "KILOGRAM, 4.9005, 4.901",
        "KILOGRAM, 4.9, 4.900",
        "POUND, 10.665, 10.67",
        "POUND, 10.6649, 10.66",
        "OUNCE, 170.65, 170.7"
    })
    void roundsToTheStepOfTheUnitTiesAway(MassUnit unit, double number, String printed) {
        assertThat(new SheetMasses(unit).rounded(Mass.of(number, unit))).hasToString(printed);
    }

    @Test
    void limitsAreRoundedInward() {
        SheetMasses.Limits limits =
                new SheetMasses(MassUnit.GRAM).limits(Mass.of(7276.5, MassUnit.GRAM), Mass.of(7423.5, MassUnit.GRAM));
        assertThat(limits.lowest()).hasToString("7277");
        assertThat(limits.highest()).hasToString("7423");
    }

    @Test
    void exactLimitsStay() {
        SheetMasses.Limits limits =
                new SheetMasses(MassUnit.GRAM).limits(new Mass(4.9).times(0.99), new Mass(4.9).times(1.01));
        assertThat(limits.lowest()).hasToString("4851");
        assertThat(limits.highest()).hasToString("4949");
    }

    // 10.4 g within 1 %: no whole gram lies between 10.296 and 10.504.
    @Test
    void limitsCloserThanTheStepAreFiner() {
        SheetMasses.Limits limits =
                new SheetMasses(MassUnit.GRAM).limits(Mass.of(10.296, MassUnit.GRAM), Mass.of(10.504, MassUnit.GRAM));
        assertThat(limits.lowest()).hasToString("10.3");
        assertThat(limits.highest()).hasToString("10.5");
    }

    @ParameterizedTest
    @EnumSource(MassUnit.class)
    void printedLimitsAreWithinTheLimitsInEveryUnit(MassUnit unit) {
        SheetMasses masses = new SheetMasses(unit);
        for (int grams = 20; grams < 20_000; grams += 37) {
            Mass low = new Mass(grams * 0.99e-3);
            Mass high = new Mass(grams * 1.01e-3);
            SheetMasses.Limits limits = masses.limits(low, high);
            assertThat(limits.lowest().doubleValue()).isBetween(low.in(unit) * (1 - 1e-11), high.in(unit));
            assertThat(limits.highest().doubleValue()).isBetween(low.in(unit), high.in(unit) * (1 + 1e-11));
        }
    }
}
