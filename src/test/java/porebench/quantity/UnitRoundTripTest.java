package porebench.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class UnitRoundTripTest {
    private static final double[] NUMBERS = {-17.25, -1e-9, 1e-12, 0.1, 1, 7.05, 352.1, 1e12};

    private static final List<Unit<?>[]> ENUMS = List.of(
            MassUnit.values(),
            BulkMassUnit.values(),
            VolumeUnit.values(),
            DensityUnit.values(),
            PressureUnit.values(),
            TemperatureUnit.values());

    static Stream<Unit<?>> units() {
        return ENUMS.stream().flatMap(Arrays::stream);
    }

    static Stream<List<Unit<?>>> enums() {
        return ENUMS.stream().map(List::of);
    }

    @ParameterizedTest
    @MethodSource("units")
    <Q extends Comparable<Q>> void givesBackTheNumberItWasGiven(Unit<Q> unit) {
        double before = Double.NEGATIVE_INFINITY;
        for (double number : NUMBERS) {
            Q quantity = unit.of(number);
            // A temperature passes through an offset of 32, which costs a tiny number its last digits.
            assertThat(Math.abs(unit.in(quantity) - number)).isLessThanOrEqualTo(1e-14 * (Math.abs(number) + 64));
            assertThat(number).isGreaterThan(before);
            before = number;
        }
        assertThat(unit.of(2)).isGreaterThan(unit.of(1)).isEqualByComparingTo(unit.of(2));
    }

    @ParameterizedTest
    @MethodSource("units")
    <Q> void keepsRelativePrecisionOfOrdinaryNumbers(Unit<Q> unit) {
        for (double number : new double[] {0.1, 1, 7.05, 352.1, 1e12}) {
            assertThat(unit.in(unit.of(number))).isCloseTo(number, withPercentage(1e-11));
        }
    }

    @ParameterizedTest
    @MethodSource("units")
    void refusesWhatIsNotFinite(Unit<?> unit) {
        for (double number : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> unit.of(number))
                    .withMessageContaining(" must be a finite number, but is " + number);
        }
    }

    @ParameterizedTest
    @MethodSource("enums")
    void isKnownByASymbolOfItsOwnWhateverTheCase(List<Unit<?>> units) {
        assertThat(units.stream().map(unit -> unit.symbol().toLowerCase(Locale.ROOT)))
                .doesNotHaveDuplicates();
        for (Unit<?> unit : units) {
            assertThat(Typed.parseUnit(unit.symbol(), units)).contains(unit);
            assertThat(Typed.parseUnit(unit.symbol().toUpperCase(Locale.ROOT), units))
                    .contains(unit);
            assertThat(Typed.parseUnit(" " + unit.symbol().toLowerCase(Locale.ROOT) + " ", units))
                    .contains(unit);
        }
        assertThat(Typed.parseUnit("furlong", units)).isEmpty();
        assertThat(Typed.parseUnit("", units)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("enums")
    <Q> void readsWhatItWrites(List<Unit<Q>> units) {
        for (Unit<Q> unit : units) {
            Typed<Q> typed = Typed.of("7.050", unit);
            assertThat(Typed.parse(typed.toString(), units)).contains(typed);
        }
    }
}
