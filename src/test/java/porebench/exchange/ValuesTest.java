package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;

import org.junit.jupiter.api.Test;
import porebench.evidence.intake.Sheet;

class ValuesTest {
    private static Sheet<Double> values(String... lines) {
        return CsvSheets.values("v.csv", bytes(lines));
    }

    @Test
    void readsOneNumberALineWithAHeadingOrNone() {
        assertThat(values("value", "1.5", "", " -2e-3 ").values()).containsExactly(1.5, -0.002);
        assertThat(values("1.5", "2").values()).containsExactly(1.5, 2.0);
        assertThat(values("\"G, %\"", "0.3").problems()).isEmpty();
        assertThat(values("value", "1.5", "", "2").rows().get(1).line()).isEqualTo(4);
    }

    @Test
    void namesEveryLineThatIsNoNumber() {
        Sheet<Double> sheet = values("1,5", "2", "two", "\"3,5\"", "1 2", "NaN", "1.0,2.0,3.0", "4;5");
        assertThat(found(sheet))
                .containsExactly(
                        "1:1 value csv.decimal-comma",
                        "3:1 value csv.not-a-number",
                        "4:1 value csv.decimal-comma",
                        "5:1 value csv.not-a-number",
                        "6:1 value csv.not-a-number",
                        "7:0 value csv.one-number-a-line",
                        "8:1 value csv.not-a-number");
        assertThat(sheet.values()).containsExactly(2.0);
    }

    @Test
    void takesNoNumberForAHeading() {
        assertThat(found(values("NaN", "1"))).containsExactly("1:1 value csv.not-a-number");
        assertThat(found(values("1e999", "1"))).containsExactly("1:1 value csv.not-a-number");
        assertThat(found(values("-", "1"))).containsExactly("1:1 value csv.not-a-number");
    }
}
