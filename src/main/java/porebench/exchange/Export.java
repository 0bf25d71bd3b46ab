package porebench.exchange;

import com.opencsv.CSVWriterBuilder;
import com.opencsv.ICSVWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import porebench.record.Kept;
import porebench.record.LabBook;
import porebench.record.Version;
import porebench.record.port.DataTable;

/**
 * Writes every kind of record of a lab book into a folder, the newest version of each.
 *
 * <p>All files are first written whole under other names; only then do they take their places. Texts are written as they are:
 * nothing is put before a text that a spreadsheet might take for a formula, because that would change the record.
 */
final class Export {
    private Export() {}

    static List<Path> write(LabBook book, Path folder) {
        Map<Path, Path> written = new LinkedHashMap<>();
        try {
            Files.createDirectories(folder);
            for (Format<? extends Kept> format : CsvSheets.FORMATS) {
                Path unfinished = Files.createTempFile(folder, format.fileName(), ".unfinished");
                written.put(unfinished, folder.resolve(format.fileName()));
                write(book, format, unfinished);
            }
            for (Map.Entry<Path, Path> file : written.entrySet()) {
                moveInto(file.getKey(), file.getValue());
            }
            return List.copyOf(written.values());
        } catch (IOException failure) {
            throw new ExchangeException("exporting to " + folder + ": the lab book itself is untouched", failure);
        } finally {
            written.keySet().forEach(Export::discard);
        }
    }

    /** Writes one file of some records, whole or not at all. */
    static <T extends Kept> void write(Format<T> format, List<T> records, Path file) {
        whole(file, unfinished -> writeNew(format, records, unfinished));
    }

    /** Writes figures under their heading, whole or not at all. */
    static void write(DataTable table, Path file) {
        whole(file, unfinished -> {
            try (Writer writer = Files.newBufferedWriter(unfinished, StandardCharsets.UTF_8)) {
                write(Stream.concat(Stream.of(table.heading()), table.rows().stream()), writer);
            }
        });
    }

    /** Writes a file. */
    private interface Writing {
        void into(Path unfinished) throws IOException;
    }

    private static void whole(Path file, Writing writing) {
        Path unfinished = file.resolveSibling(file.getFileName() + "." + UUID.randomUUID() + ".unfinished");
        try {
            writing.into(unfinished);
            moveInto(unfinished, file);
        } catch (IOException failure) {
            throw new ExchangeException("writing " + file + ": a file that was there before is as it was", failure);
        } finally {
            discard(unfinished);
        }
    }

    private static <T extends Kept> void write(LabBook book, Format<T> format, Path file) throws IOException {
        writeNew(format, book.latest(format.type()).stream().map(Version::value).toList(), file);
    }

    private static <T extends Kept> void writeNew(Format<T> format, List<T> records, Path file) throws IOException {
        try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            write(format, records, writer);
        }
    }

    /** Writes the heading and the rows of some records. */
    static <T extends Kept> void write(Format<T> format, List<T> records, Writer writer) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        rows.add(format.columns().all());
        records.forEach(record -> rows.addAll(format.write(record)));
        write(rows.stream(), writer);
    }

    private static void write(Stream<List<String>> rows, Writer writer) throws IOException {
        ICSVWriter csv = new CSVWriterBuilder(writer).withLineEnd("\r\n").build();
        rows.forEach(row -> csv.writeNext(row.toArray(new String[0]), false));
        csv.flush();
        if (csv.checkError()) {
            throw csv.getException();
        }
    }

    private static void moveInto(Path unfinished, Path file) throws IOException {
        try {
            Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException plainOnly) {
            Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void discard(Path unfinished) {
        try {
            Files.deleteIfExists(unfinished);
        } catch (IOException leftBehind) {
            System.getLogger(Export.class.getName())
                    .log(System.Logger.Level.WARNING, "left behind: " + unfinished, leftBehind);
        }
    }
}
