package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.exchange.CsvText.TRIAL;
import static porebench.exchange.CsvText.TRIAL_HEADING;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.intake.Sheet;
import porebench.evidence.intake.SheetLook;
import porebench.evidence.intake.SheetStyle;
import porebench.evidence.intake.SheetStyle.Apart;
import porebench.evidence.intake.SheetStyle.Decimal;
import porebench.record.Kept;
import porebench.record.book.Progress;

class SheetStyleTest {
    private static final byte[] PLAIN = bytes(TRIAL_HEADING, TRIAL);
    private static final byte[] SEMICOLONS =
            bytes(TRIAL_HEADING.replace(',', ';'), TRIAL.replace(',', ';').replace('.', ','));

    @TempDir
    Path folder;

    private static Sheet<Kept> read(byte[] bytes, Apart apart, Decimal decimal) {
        return CsvSheets.records("t.csv", bytes, new SheetStyle(apart, decimal), Progress.UNHEARD);
    }

    private SheetLook look(byte[] bytes) throws IOException {
        Path file = folder.resolve("t.csv");
        Files.write(file, bytes);
        return new CsvSheets().look(file);
    }

    @Test
    void aFileOfSemicolonsAndDecimalCommasIsReadLikeThePlainOneWhenAPersonSaysSo() {
        Sheet<Kept> told = read(SEMICOLONS, Apart.SEMICOLON, Decimal.COMMA);
        assertThat(found(told)).isEmpty();
        // R. Vane is a name; its point became a comma with the others.
        assertThat(told.values().toString().replace("R, Vane", "R. Vane"))
                .isEqualTo(read(PLAIN, Apart.COMMA, Decimal.POINT).values().toString());
    }

    @Test
    void everyWayOfWritingMakesTheRoundTrip() {
        for (Apart apart : Apart.values()) {
            byte[] file = bytes(TRIAL_HEADING.replace(',', apart.sign()), TRIAL.replace(',', apart.sign()));
            assertThat(read(file, apart, Decimal.POINT).values())
                    .as(apart.symbol())
                    .isEqualTo(read(PLAIN, Apart.COMMA, Decimal.POINT).values());
        }
    }

    @Test
    void decimalCommasBetweenCommasStandInQuotes() {
        byte[] file = bytes(
                TRIAL_HEADING,
                TRIAL.replace("5.4", "\"5,4\"").replace("7.05", "\"7,05\"").replace("21.0", "\"21,0\""));
        assertThat(found(read(file, Apart.COMMA, Decimal.COMMA))).isEmpty();
    }

    @Test
    void aPointAmongDecimalCommasIsRefusedAndNotGuessed() {
        byte[] file =
                bytes(TRIAL_HEADING.replace(',', ';'), TRIAL.replace(',', ';').replace("5.4", "5,4"));
        assertThat(found(read(file, Apart.SEMICOLON, Decimal.COMMA)))
                .containsExactly("2:7 bowl_volume csv.decimal-point", "2:13 water_temp_c csv.decimal-point");
        byte[] thousands = bytes(
                TRIAL_HEADING.replace(',', ';'),
                TRIAL.replace(',', ';').replace('.', ',').replace("4500", "4.500"));
        assertThat(found(read(thousands, Apart.SEMICOLON, Decimal.COMMA)))
                .containsExactly("2:9 fine_mass csv.decimal-point");
    }

    @Test
    void whatAFileSeemsToBeIsSaidAndChangesNothing() throws Exception {
        assertThat(look(PLAIN).isOtherwise()).isFalse();
        SheetLook look = look(SEMICOLONS);
        assertThat(look.isOtherwise()).isTrue();
        assertThat(look.seems()).isEqualTo(new SheetStyle(Apart.SEMICOLON, Decimal.COMMA));
        assertThat(found(new CsvSheets().records(folder.resolve("t.csv")))).containsExactly("1:0  csv.separator");
        assertThat(look(bytes(TRIAL_HEADING.replace(',', '\t'), TRIAL.replace(',', '\t')))
                        .seems())
                .isEqualTo(new SheetStyle(Apart.TAB, Decimal.POINT));
        assertThat(look(bytes(TRIAL_HEADING, TRIAL.replace("5.4", "\"5,4\""))).seems())
                .isEqualTo(new SheetStyle(Apart.COMMA, Decimal.COMMA));
    }

    @Test
    void theFirstRowsStandAsTheyWouldBeRead() throws Exception {
        SheetLook look = look(SEMICOLONS);
        List<List<String>> told = look.firstRows().get(look.seems());
        assertThat(told).hasSize(2);
        assertThat(told.get(0)).startsWith("trial_id", "mix_id");
        assertThat(told.get(1)).contains("7.05", "21.0", "5.4");
        List<List<String>> untold = look.firstRows().get(SheetStyle.DOCUMENTED);
        assertThat(untold.get(0)).hasSize(1);
        assertThat(look.firstRows()).hasSize(6);
    }

    @Test
    void whatCannotBeReadSeemsToBeAsDocumented() throws Exception {
        assertThat(new CsvSheets().look(folder.resolve("none.csv")).isOtherwise())
                .isFalse();
        assertThat(new CsvSheets().look(folder).isOtherwise()).isFalse();
        assertThat(look(new byte[] {(byte) 0xFF, (byte) 0xFE, 'a', 0}).isOtherwise())
                .isFalse();
        assertThat(look(new byte[0]).isOtherwise()).isFalse();
    }
}
