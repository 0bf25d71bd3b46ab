package porebench.exchange.text;

import com.opencsv.CSVWriterBuilder;
import com.opencsv.ICSVWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.stream.Stream;

/** Rows on their way into a CSV file. */
public final class WrittenRows {
    private WrittenRows() {}

    /** Writes rows, each cell harmless to a spreadsheet. */
    public static void write(Stream<List<String>> rows, Writer writer) throws IOException {
        ICSVWriter csv = new CSVWriterBuilder(writer).withLineEnd("\r\n").build();
        rows.forEach(
                row -> csv.writeNext(row.stream().map(HarmlessCell::written).toArray(String[]::new), false));
        // The library keeps a failure to itself until it is asked; it flushes then.
        if (csv.checkError()) {
            throw csv.getException();
        }
    }
}
