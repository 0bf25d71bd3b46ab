package porebench.exchange.whole;

import java.io.BufferedWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import porebench.exchange.photo.PhotoFiles;
import porebench.exchange.text.ExchangeException;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.Headings;
import porebench.exchange.text.WrittenRows;
import porebench.port.OutputFile;
import porebench.port.OutputFolder;
import porebench.record.PhotoFile;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.chain.ChainEntry;
import porebench.record.chain.ChainOutline;
import porebench.record.chain.ChainRow;
import porebench.record.chain.ChainTaker;

/**
 * Writes a whole lab book: {@code book.csv}, which says what the others must come to, one file a table, and one a photo.
 *
 * <p>All but the photos is put together in memory, so that it is the lab book of one moment, and only then written; the bytes of a
 * photo are never changed, and are read one photo at a time.
 */
public final class WholeExport implements ChainTaker {
    /** What the lab book says of itself. */
    static final String OUTLINE = "book.csv";

    /** The form of the files, which is counted on when they are written otherwise. */
    static final String FORM = "1";

    static final List<String> HEADING = WholeColumns.outline();

    private final Map<String, Table> tables = new LinkedHashMap<>();
    private final ByteArrayOutputStream outline = new ByteArrayOutputStream();

    private final boolean isTraining;
    private final Progress progress;
    private final Set<PhotoFile> photos = new LinkedHashSet<>();
    private long entries;

    private WholeExport(boolean isTraining, Progress progress) {
        this.isTraining = isTraining;
        this.progress = progress;
    }

    /** Returns the file of a table. */
    static String fileName(String table) {
        return "book-" + table + ".csv";
    }

    public static List<Path> write(LabBook book, OutputFolder folder, Progress progress) {
        WholeExport export = new WholeExport(book.isTraining(), progress);
        try {
            book.unroll(export);
            Map<String, OutputFile.Content> files = export.files();
            files.putAll(PhotoFiles.contents(book, export.photos));
            return folder.write(files);
        } catch (IOException | UncheckedIOException failure) {
            throw new ExchangeException(
                    ExchangeException.Task.EXPORT, folder.path().toString(), failure);
        }
    }

    private Map<String, OutputFile.Content> files() {
        Map<String, OutputFile.Content> files = new LinkedHashMap<>();
        files.put(OUTLINE, outline::writeTo);
        for (Map.Entry<String, Table> table : tables.entrySet()) {
            files.put(fileName(table.getKey()), table.getValue().bytes::writeTo);
        }
        return files;
    }

    @Override
    public void begins(ChainOutline whole) {
        entries = whole.entries();
        List<List<String>> rows = new ArrayList<>();
        rows.add(HEADING);
        rows.add(List.of("form", FORM));
        rows.add(List.of("schema_step", Integer.toString(whole.step())));
        rows.add(List.of("entries", Long.toString(whole.entries())));
        rows.add(List.of("head", whole.hash()));
        if (isTraining) {
            rows.add(List.of(Headings.SIMULATED, HeadedRow.yesNoWord(true)));
        }
        whole.tables().forEach(table -> rows.add(List.of("table", table.name())));
        Writer writer = writer(outline);
        rows.forEach(row -> write(row, writer));
        whole.tables().forEach(table -> tables.put(table.name(), new Table(table.columns())));
    }

    @Override
    public void takes(ChainEntry entry) {
        progress.at(Progress.Stage.WRITING, entry.number(), entries);
        write(entry.number(), entry.entry());
        entry.rows().forEach(row -> write(entry.number(), row));
        entry.rows().stream().flatMap(row -> PhotoFiles.of(row).stream()).forEach(photos::add);
    }

    private void write(long number, ChainRow row) {
        Table table = tables.get(row.table());
        if (table == null) {
            throw new IllegalArgumentException("table must be one of the outline, but is " + row.table());
        }
        List<String> cells = new ArrayList<>();
        for (String column : table.columns) {
            String text = row.cells().get(column);
            boolean isNumber = column.equals(ChainEntry.NUMBER);
            cells.add(isNumber ? Long.toString(number) : text == null ? "" : WholeCell.written(text));
        }
        write(cells, table.writer);
    }

    private static void write(List<String> row, Writer writer) {
        try {
            WrittenRows one = taker -> taker.accept(row);
            one.write(writer);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Writer writer(ByteArrayOutputStream bytes) {
        return new BufferedWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8.newEncoder()));
    }

    /** The file of a table as far as it is written. */
    private static final class Table {
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private final Writer writer = writer(bytes);
        private final List<String> columns;

        Table(List<String> columns) {
            this.columns = columns;
            write(columns, writer);
        }
    }
}
