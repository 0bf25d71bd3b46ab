package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.opencsv.CSVReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.ValueRow;
import porebench.port.DataTable;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;

class DataTableTest {
    private static final DataTable TABLE = new DataTable(
            List.of("trial_id", "value", "reason"),
            List.of(
                    List.of("K7-1", "0.412", ""),
                    List.of("K7-2", "-0.05", "spilled, \"half\" the water\nand more"),
                    List.of("=K7-3", "1.4", "\u00B1 \u03C3")));

    @TempDir
    Path folder;

    private Path written() {
        Path file = folder.resolve("plot.csv");
        new CsvSheets().writeTable(OutputFile.replacing(file), TABLE);
        return file;
    }

    @Test
    void everyCellStandsAsItIsButForWhatLooksLikeAFormula() throws Exception {
        try (Reader reader = Files.newBufferedReader(written(), StandardCharsets.UTF_8);
                CSVReader csv = new CSVReader(reader)) {
            List<List<String>> rows = csv.readAll().stream().map(List::of).toList();
            assertThat(rows.get(0)).isEqualTo(TABLE.heading());
            assertThat(rows.subList(1, 3)).isEqualTo(TABLE.rows().subList(0, 2));
            assertThat(rows.get(3)).containsExactly("'=K7-3", "1.4", "\u00B1 \u03C3");
        }
    }

    @Test
    void theProgramReadsItsOwnFiguresAgain() {
        Sheet<ValueRow> sheet = new CsvSheets().table(written(), List.of("trial_id"));
        assertThat(sheet.values()).extracting(ValueRow::value).containsExactly(0.412, -0.05, 1.4);
        assertThat(sheet.values())
                .extracting(row -> row.factors().get("trial_id"))
                .containsExactly("K7-1", "K7-2", "=K7-3");
    }

    @Test
    void linesEndAsTheStandardHasItAndAFileThereIsReplacedWhole() throws Exception {
        Path file = folder.resolve("plot.csv");
        Files.writeString(file, "what was there before, which is much longer than what comes now".repeat(20));
        written();
        assertThat(Files.readString(file)).startsWith("trial_id,value,reason\r\nK7-1,0.412,\r\n");
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void saysWhichFileCouldNotBeWritten() {
        OutputFile nowhere = OutputFile.fresh(folder.resolve("missing").resolve("plot.csv"));
        CsvSheets sheets = new CsvSheets();
        assertThatThrownBy(() -> sheets.writeTable(nowhere, TABLE))
                .isInstanceOf(OutputRefused.class)
                .hasMessageContaining("plot.csv");
    }

    @Test
    void aRowOfAnotherWidthIsNoTable() {
        List<List<String>> rows = List.of(List.of("one"));
        assertThatThrownBy(() -> new DataTable(List.of("a", "b"), rows))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("count of cells must be 2, but is 1");
    }
}
