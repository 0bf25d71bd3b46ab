package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.desk.Settings;
import porebench.desk.bench.BalanceReading.Kind;
import porebench.quantity.MassUnit;

class BalancePatternTest {
    private static BalanceReading read(String pattern, String line) {
        return BalancePattern.parse(pattern).orElseThrow().read(line);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4902.5 g|4902.5|g",
                "ST,GS,+  4902.0 g|4902.0|g",
                "N     +  4,9020 kg|4.9020|kg",
                "-0.3 g|-0.3|g",
                "10.81 lb|10.81|lb"
            })
    void theUsualPatternReadsUsualLines(String line, String number, String unit) {
        BalanceReading reading = read(BalancePattern.USUAL, line);
        assertThat(reading.kind()).isEqualTo(Kind.MASS);
        assertThat(reading.number()).isEqualTo(number);
        assertThat(reading.unit()).isEqualTo(unit);
    }

    @ParameterizedTest
    @ValueSource(strings = {"US,GS,+  4902.0 g", "? 4902.0 g"})
    void aBalanceNotAtRestIsRefused(String line) {
        assertThat(read(BalancePattern.USUAL, line).kind()).isEqualTo(Kind.NOT_AT_REST);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "ERROR 3", "tare", "4902.0", "4902 gallons"})
    void whatIsNoMassGivesNone(String line) {
        assertThat(read(BalancePattern.USUAL, line).kind()).isEqualTo(Kind.NO_MASS);
    }

    @Test
    void aPatternOfTheLaboratoryNeedsTheNumberAlone() {
        BalanceReading reading = read("^W:(?<number>\\d+)$", "W:4902");
        assertThat(reading.kind()).isEqualTo(Kind.MASS);
        assertThat(reading.unit()).isEmpty();
        assertThat(reading.in(MassUnit.POUND)).contains(new BigDecimal("4902"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "(\\d+)", "(?<number>\\d+", "(?<mass>\\d+)"})
    void whatIsNoPatternWithANumberIsRefused(String text) {
        assertThat(BalancePattern.parse(text)).isEmpty();
    }

    /** The example of docs/bench.md, taken from there. */
    @Test
    void thePatternThatTheDocumentGivesReadsTheLinesItGives() throws IOException {
        String pattern = Files.readAllLines(Path.of("docs/bench.md"), StandardCharsets.UTF_8).stream()
                .map(String::strip)
                .filter(line -> line.startsWith("N(?<number>"))
                .findFirst()
                .orElseThrow();
        assertThat(read(pattern, "N0004902g*").kind()).isEqualTo(Kind.MASS);
        assertThat(read(pattern, "N0004902g*").in(MassUnit.GRAM).orElseThrow()).isEqualByComparingTo("4902");
        assertThat(read(pattern, "N0004902g ").kind()).isEqualTo(Kind.NOT_AT_REST);
    }

    /** 4.9020 kg are 4902.0 g: the decimal sign moves, the digits stay; a pound is no number of grams that was shown. */
    @Test
    void digitsStayThoseThatTheBalanceShowed() {
        assertThat(read(BalancePattern.USUAL, "4.9020 kg").in(MassUnit.GRAM)).contains(new BigDecimal("4902.0"));
        assertThat(read(BalancePattern.USUAL, "4.9 kg").in(MassUnit.GRAM)).contains(new BigDecimal("4900"));
        assertThat(read(BalancePattern.USUAL, "4902.0 g").in(MassUnit.KILOGRAM)).contains(new BigDecimal("4.9020"));
        assertThat(read(BalancePattern.USUAL, "10.81 lb").in(MassUnit.GRAM)).isEmpty();
    }

    @Test
    void whatIsSetIsFoundAgain() {
        Settings settings = Settings.inMemory();
        assertThat(BalanceSetting.of(settings)).isEqualTo(new BalanceSetting("", 9600, BalancePattern.USUAL));
        BalanceSetting set = new BalanceSetting("/dev/ttyUSB0", 2400, "(?<number>\\d+)");
        set.keep(settings);
        assertThat(BalanceSetting.of(settings)).isEqualTo(set);
        settings.put("balance.baud", "17");
        assertThat(BalanceSetting.of(settings).baud()).isEqualTo(9600);
    }
}
