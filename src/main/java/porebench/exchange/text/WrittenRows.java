package porebench.exchange.text;

import com.opencsv.CSVWriterBuilder;
import com.opencsv.ICSVWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.function.Consumer;

/** Rows on their way into a CSV file: they are made as they are written, so that none but one need be held. */
@FunctionalInterface
public interface WrittenRows {
    /** Hands out the cells of each row. */
    void into(Consumer<List<String>> taker);

    /** Writes the rows, each cell harmless to a spreadsheet. */
    default void write(Writer writer) throws IOException {
        ICSVWriter csv = new CSVWriterBuilder(writer).withLineEnd("\r\n").build();
        into(row -> csv.writeNext(row.stream().map(HarmlessCell::written).toArray(String[]::new), false));
        // The library keeps a failure to itself until it is asked; it flushes then.
        if (csv.checkError()) {
            throw csv.getException();
        }
    }
}
