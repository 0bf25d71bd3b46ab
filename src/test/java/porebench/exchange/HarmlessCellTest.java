package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.evidence.intake.Sheet;
import porebench.exchange.text.HarmlessCell;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Kept;
import porebench.record.Source;
import porebench.record.id.SourceId;

/** What a spreadsheet would take for a formula is harmless in the file, and itself again when it is read. */
class HarmlessCellTest {
    private static final String LETTERS = "''''==++--@@\t\r\n\uFF1D\uFF0B 0159.eEx\u00E4,;\"";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+2", "+x", "-x", "@x", "\tx", "\rx", "\nx", "\uFF20x", "'=x", "''=x", "-", "-5-", "--5", "-5 %"
            })
    void aTextIsNeverBegunByASign(String text) {
        String cell = HarmlessCell.written(text);
        assertThat("=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20").doesNotContain(cell.substring(0, 1));
        assertThat(cell).isEqualTo("'" + text);
        assertThat(HarmlessCell.read(cell)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-0.1", "+5", "-5", "-.5", "-5.", "1.5", "-1E+3", "+1.20e-5", "-7E-12"})
    void aNumberIsNotTouched(String number) {
        assertThat(HarmlessCell.written(number)).isEqualTo(number);
        assertThat(HarmlessCell.read(number)).isEqualTo(number);
    }

    @ParameterizedTest
    @ValueSource(strings = {"'s Pit", "''", "'", "", "plain", "a=b", "x'=y", " =x", "'-5"})
    void anyOtherTextIsNotTouched(String text) {
        assertThat(HarmlessCell.written(text)).isEqualTo(text);
        assertThat(HarmlessCell.read(text)).isEqualTo(text);
    }

    /** Any text of signs, quotes, digits and separators comes back through the file, letter for letter. */
    @Test
    void anyTextSurvivesTheRoundTrip() throws IOException {
        Random random = new Random(20260701);
        for (int i = 0; i < 4000; i++) {
            StringBuilder text = new StringBuilder();
            for (int length = random.nextInt(7); length > 0; length--) {
                text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
            }
            Source source = source(text.toString());
            StringWriter file = new StringWriter();
            Export.write(SheetFormats.SOURCES, List.of(source), file);
            Sheet<Kept> sheet = CsvSheets.records("sources.csv", file.toString().getBytes(StandardCharsets.UTF_8));
            assertThat(sheet.problems()).isEmpty();
            assertThat(sheet.values()).as("text %d: <%s>", i, text).containsExactly(source);
        }
    }

    @Test
    void anApostropheMakesNoNumberOfAText() {
        byte[] file = "mix_id,value\nM-1,'-5\n".getBytes(StandardCharsets.UTF_8);
        assertThat(CsvSheets.table("v.csv", file, List.of("mix_id")).problems())
                .extracting(Problem::code)
                .containsExactly("csv.not-a-number");
    }

    /** The CSV library keeps a failed write to itself, and the disk may have room again before the file is closed. */
    @Test
    void aWriteThatFailedOnceIsNotSwallowed() {
        Writer failsOnce = new Writer() {
            private boolean failed;

            @Override
            public void write(char[] text, int from, int length) throws IOException {
                if (!failed) {
                    failed = true;
                    throw new IOException("No space left on device");
                }
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        assertThatThrownBy(() -> Export.write(SheetFormats.SOURCES, List.of(source("x")), failsOnce))
                .isInstanceOf(IOException.class)
                .hasMessage("No space left on device");
    }

    private static Source source(String text) {
        return new Source(new SourceId("S-1"), text, Role.FINE, text, text, Optional.empty(), Optional.empty(), text);
    }
}
