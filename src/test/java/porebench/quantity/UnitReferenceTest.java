package porebench.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.ReferenceFile;

/** Against the factors of NIST Special Publication 811 (2008), appendix B.8; recalled. */
class UnitReferenceTest {
    @Test
    void convertsByThePublishedFactors() {
        for (ReferenceFile.Row row : ReferenceFile.read("si-factors.csv").rows()) {
            double factor = factor(row.text("quantity"), row.text("unit"));
            BigDecimal printed = new BigDecimal(row.text("factor"));
            if (row.text("exact").equals("yes")) {
                assertThat(factor).as(row.text("unit")).isEqualTo(printed.doubleValue());
            } else {
                double half = printed.ulp().doubleValue() / 2;
                assertThat(factor).as(row.text("unit")).isCloseTo(printed.doubleValue(), offset(half));
            }
        }
    }

    private static double factor(String quantity, String unit) {
        return switch (quantity) {
            case "mass" -> one(unit, List.of(MassUnit.values()), Mass::kilograms);
            case "bulk mass" -> one(unit, List.of(BulkMassUnit.values()), Mass::kilograms);
            case "volume" -> one(unit, List.of(VolumeUnit.values()), Volume::cubicMetres);
            case "density" -> one(unit, List.of(DensityUnit.values()), Density::kilogramsPerCubicMetre);
            case "pressure" -> one(unit, List.of(PressureUnit.values()), Pressure::pascals);
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    private static <Q> double one(String symbol, List<? extends Unit<Q>> units, ToDoubleFunction<Q> value) {
        Unit<Q> unit = Typed.parseUnit(symbol, units).orElseThrow();
        return value.applyAsDouble(unit.of(1));
    }

    @Test
    void namesEveryUnitWithAFactorInTheReferenceFile() {
        List<String> named = ReferenceFile.read("si-factors.csv").rows().stream()
                .map(row -> row.text("unit"))
                .toList();
        assertThat(named)
                .contains(symbols(MassUnit.values()))
                .contains(symbols(BulkMassUnit.values()))
                .contains(symbols(VolumeUnit.values()))
                .contains(symbols(DensityUnit.values()))
                .contains(symbols(PressureUnit.values()));
    }

    private static String[] symbols(Unit<?>... units) {
        return Typed.symbols(units).split(", ");
    }

    /**
     * Fixed points of the two scales: ice 32 F = 0 C, steam 212 F = 100 C, and where they meet, -40; exact by
     * definition.
     */
    @ParameterizedTest
    @CsvSource({"32, 0", "212, 100", "-40, -40", "73.4, 23"})
    void convertsFahrenheit(double fahrenheit, double celsius) {
        assertThat(TemperatureUnit.FAHRENHEIT.of(fahrenheit).celsius()).isCloseTo(celsius, offset(1e-12));
        assertThat(TemperatureUnit.FAHRENHEIT.in(TemperatureUnit.CELSIUS.of(celsius)))
                .isCloseTo(fahrenheit, offset(1e-12));
    }

    /** Iowa DOT Instructional Memorandum 318 (seen): a vessel of 0.0125 cubic foot is 354 mL. */
    @Test
    void convertsTheVesselOfAFieldManual() {
        assertThat(Volume.of(0.0125, VolumeUnit.CUBIC_FOOT).in(VolumeUnit.MILLILITRE))
                .isCloseTo(354, offset(0.5));
    }
}
