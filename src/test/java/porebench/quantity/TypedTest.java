package porebench.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedTest {
    private static final List<VolumeUnit> VOLUMES = List.of(VolumeUnit.values());
    private static final List<DensityUnit> DENSITIES = List.of(DensityUnit.values());

    @ParameterizedTest
    @CsvSource({
        "'7.05 L', 7.05, L",
        "'7.05L', 7.05, L",
        "'  7.05   L  ', 7.05, L",
        "'0.249 ft3', 0.249, ft3",
        "'0.249ft3', 0.249, ft3",
        "'352 ML', 352, mL",
        "'.5 L', 0.5, L",
        "'5. L', 5, L",
        "'+5 L', 5, L",
        "'-5 L', -5, L",
        "'1e3 mL', 1000, mL",
        "'1E-3 m3', 0.001, m3",
        "'1e3mL', 1000, mL",
        "'0.25 ft³', 0.25, ft3",
        "'0.25 ft^3', 0.25, ft3",
        "'350 cm3', 350, mL",
        "'350 cm³', 350, mL",
        "'350 cc', 350, mL",
        "'7.05 dm3', 7.05, L",
        "'7.05 dm³', 7.05, L",
        "'7.05 l', 7.05, L",
        "'7.05\u00a0L', 7.05, L",
        "'7.05\u202fL', 7.05, L",
        "'\u00a07.05\u2009L\u00a0', 7.05, L"
    })
    void readsANumberAndAUnit(String text, double number, String symbol) {
        Typed<Volume> typed = Typed.parse(text, VOLUMES).orElseThrow();
        assertThat(typed.number().doubleValue()).isEqualTo(number);
        assertThat(typed.unit().symbol()).isEqualTo(symbol);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "L",
                "7.05",
                "7.05 kg",
                "7.05 furlong",
                "7,05 L",
                "1,000 mL",
                "1 000 mL",
                "1'000 mL",
                "1_000 mL",
                "1.000.000 mL",
                "\u0667 L",
                "\uff17 L",
                "\u2212 7 L",
                "--7 L",
                "7 L L",
                "7 L 3 mL",
                "7 L;",
                "7e L",
                "NaN L",
                "Infinity L",
                "0x1p3 L",
                "7f L",
                "1e400 L",
                "1e9999 L",
                "1e999999999 L",
                "7\nL\n7"
            })
    void refusesWhatIsNotOneNumberWithOneOfTheUnits(String text) {
        assertThat(Typed.parse(text, VOLUMES)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'22 °C', 22, C",
        "'22°C', 22, C",
        "'22 ° C', 22, C",
        "'22 ºC', 22, C",
        "'22 ℃', 22, C",
        "'-5 C', -5, C",
        "'72 °F', 72, F",
        "'72\u00a0°F', 72, F"
    })
    void readsATemperatureAsPeopleWriteIt(String text, double number, String symbol) {
        Typed<Temperature> typed =
                Typed.parse(text, List.of(TemperatureUnit.values())).orElseThrow();
        assertThat(typed.number().doubleValue()).isEqualTo(number);
        assertThat(typed.unit().symbol()).isEqualTo(symbol);
    }

    @ParameterizedTest
    @CsvSource({"'1013 hPa', mbar", "'29.92 inHg', inHg", "'101.3 KPA', kPa"})
    void readsAPressureAsBarometersSayIt(String text, String symbol) {
        assertThat(Typed.parse(text, List.of(PressureUnit.values()))
                        .orElseThrow()
                        .unit()
                        .symbol())
                .isEqualTo(symbol);
    }

    @ParameterizedTest
    @CsvSource({
        "7.05 L, 7.05, L",
        "7.05, 7.05, ''",
        "L, L, ''",
        "seven L, seven, L",
        "'1,000 mL', '1,000', mL",
        "7 L x, 7 L, x",
        "17x, 17, x",
        "1e3, 1e3, ''",
        "1 735, 1 735, ''",
        "10³ L, 10³, L",
        "12 %, 12, %"
    })
    void tellsNumberAndUnitApart(String text, String number, String unit) {
        assertThat(Spelling.halves(text)).isEqualTo(new Spelling.Halves(number, unit));
    }

    /** Whatever is read can be computed with: a number that only its unit makes infinite is refused here, not there. */
    @ParameterizedTest
    @ValueSource(strings = {"1e308 g/cm3", "-1e308 g/cm3", "1e100 kg/m3", "1e-324 kg/m3", "1e-100 kg/m3"})
    void refusesANumberTooLargeOrTooSmallForAnyMeasurement(String text) {
        assertThat(Typed.parse(text, DENSITIES)).isEmpty();
    }

    @Test
    void readsTheLargestAndTheSmallestNumber() {
        String largest = "9".repeat(37) + "e99";
        assertThat(Typed.parse(largest + " g/cm3", DENSITIES)
                        .orElseThrow()
                        .value()
                        .kilogramsPerCubicMetre())
                .isFinite();
        String smallest = "." + "0".repeat(34) + "1e-99";
        assertThat(Typed.parse(smallest + " kg/m3", DENSITIES)
                        .orElseThrow()
                        .value()
                        .kilogramsPerCubicMetre())
                .isPositive();
    }

    @Test
    void refusesAnEndlessNumber() {
        assertThat(Typed.parseNumber("1".repeat(40))).isPresent();
        assertThat(Typed.parseNumber("1".repeat(41))).isEmpty();
        assertThat(Typed.parseNumber("0." + "3".repeat(100_000))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"5.40", "0", "-0.3", "+7", ".5", "5.", "1e2", " 3.1 "})
    void readsAPlainNumber(String text) {
        assertThat(Typed.parseNumber(text)).contains(new BigDecimal(text.strip()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ".", "-", "e5", "5,4", "5 4", "5.4 %", "\u0665", "1e", "1e1000", "NaN", "0x10", "5d"})
    void refusesWhatIsNotAPlainNumber(String text) {
        assertThat(Typed.parseNumber(text)).isEmpty();
    }

    @Test
    void keepsTheDigitsAsTyped() {
        Typed<Volume> typed = Typed.parse("7.050 L", VOLUMES).orElseThrow();
        assertThat(typed.number()).isEqualTo(new BigDecimal("7.050"));
        assertThat(typed.toString()).isEqualTo("7.050 L");
        assertThat(typed.value().in(VolumeUnit.LITRE)).isCloseTo(7.05, offset(1e-12));
        assertThat(Typed.of("1e3", VolumeUnit.MILLILITRE).toString()).isEqualTo("1000 mL");
    }

    @Test
    void readsTheSameWhateverTheLocaleOfTheMachine() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                Typed<Volume> typed = Typed.parse("7.05 IN3", VOLUMES).orElseThrow();
                assertThat(typed.unit()).isEqualTo(VolumeUnit.CUBIC_INCH);
                assertThat(typed.toString()).isEqualTo("7.05 in3");
                assertThat(Typed.parse("7,05 in3", VOLUMES)).isEmpty();
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void listsSymbolsForAMessage() {
        assertThat(Typed.symbols(MassUnit.values())).isEqualTo("kg, g, lb, oz");
        assertThat(Typed.symbols()).isEmpty();
    }

    @Test
    void takesADigitTextFromAProgrammerOnlyWhenItIsANumber() {
        assertThatIllegalArgumentException().isThrownBy(() -> Typed.of("7,05", VolumeUnit.LITRE));
    }
}
