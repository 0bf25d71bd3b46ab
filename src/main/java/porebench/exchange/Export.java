package porebench.exchange;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import porebench.evidence.EvidenceReader;
import porebench.exchange.photo.PhotoFiles;
import porebench.exchange.schema.DataPackage;
import porebench.exchange.sheet.FactorIssueFormat;
import porebench.exchange.sheet.Format;
import porebench.exchange.text.ExchangeException;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.Headings;
import porebench.exchange.text.WrittenRows;
import porebench.port.DataTable;
import porebench.port.OutputFile;
import porebench.port.OutputFolder;
import porebench.record.FactorIssue;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.PhotoFile;
import porebench.record.SheetPhoto;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** Writes CSV: every kind of record of a lab book into a folder, the newest version of each; or one file. */
final class Export {
    private Export() {}

    static List<Path> write(LabBook book, OutputFolder folder, Progress progress) {
        Map<String, OutputFile.Content> files = new LinkedHashMap<>();
        // There are no more newest records than entries.
        long most = book.changeNumber();
        AtomicLong written = new AtomicLong();
        Runnable told = () -> progress.at(Progress.Stage.WRITING, written.incrementAndGet(), most);
        CsvSheets.FORMATS.forEach(format -> files.put(format.fileName(), newest(book, ofBook(format, book), told)));
        files.put(DataPackage.FILE, text(DataPackage.of(CsvSheets.FORMATS, book.isTraining())));
        Set<PhotoFile> photos = new LinkedHashSet<>();
        book.each(SheetPhoto.class, version -> photos.add(version.value().file()));
        files.putAll(PhotoFiles.contents(book, photos));
        try {
            return folder.write(files);
        } catch (IOException failure) {
            throw new ExchangeException(
                    ExchangeException.Task.EXPORT, folder.path().toString(), failure);
        }
    }

    /** Writes the files of some photos, all of them or none. */
    static List<Path> writePhotos(LabBook book, List<PhotoFile> photos, OutputFolder folder) {
        try {
            return folder.write(PhotoFiles.contents(book, photos));
        } catch (IOException failure) {
            throw new ExchangeException(
                    ExchangeException.Task.WRITE, folder.path().toString(), failure);
        }
    }

    /**
     * Returns the format of a file, which says of a factor whether its ground has changed in this book since its issue; a change
     * that is still to come is one.
     */
    private static Format<? extends Kept> ofBook(Format<? extends Kept> format, LabBook book) {
        if (!(format instanceof FactorIssueFormat)) {
            return format;
        }
        Set<MixId> issued = new TreeSet<>();
        book.each(FactorIssue.class, version -> issued.add(version.value().mixId()));
        Set<String> untrue = new HashSet<>();
        EvidenceReader.asking(book)
                .readEach(
                        issued,
                        evidence -> evidence.issues().stream()
                                .map(Version::value)
                                .filter(issue -> !evidence.whyUntrue(issue, LocalDate.MAX)
                                        .isEmpty())
                                .forEach(issue -> untrue.add(issue.recordId())));
        return new FactorIssueFormat(issue -> untrue.contains(issue.recordId()));
    }

    private static <T extends Kept> OutputFile.Content newest(LabBook book, Format<T> format, Runnable told) {
        boolean isMarked = book.isTraining()
                && format.type() != Laboratory.class
                && !format.columns().equals(format.columns().marked());
        Headings columns = isMarked ? format.columns().marked() : format.columns();
        return content(taker -> {
            taker.accept(columns.all());
            book.each(format.type(), version -> {
                told.run();
                format.write(version.value()).stream()
                        .map(row -> isMarked ? marked(row) : row)
                        .forEach(taker);
            });
        });
    }

    /** Returns a row of a training book, which says that it is simulated. */
    private static List<String> marked(List<String> row) {
        return Stream.concat(row.stream(), Stream.of(HeadedRow.yesNoWord(true))).toList();
    }

    /** Writes one file of some records, whole or not at all. */
    static <T extends Kept> void write(Format<T> format, List<T> records, OutputFile file) {
        write(rows(format, records), file);
    }

    /** Writes figures under their heading, whole or not at all. */
    static void write(DataTable table, OutputFile file) {
        write(
                taker -> {
                    taker.accept(table.heading());
                    table.rows().forEach(taker);
                },
                file);
    }

    private static void write(WrittenRows rows, OutputFile file) {
        try {
            file.write(content(rows));
        } catch (IOException failure) {
            throw new ExchangeException(
                    ExchangeException.Task.WRITE, file.path().toString(), failure);
        }
    }

    private static <T extends Kept> WrittenRows rows(Format<T> format, List<T> records) {
        return taker -> {
            taker.accept(format.columns().all());
            records.forEach(record -> format.write(record).forEach(taker));
        };
    }

    private static OutputFile.Content text(String text) {
        return file -> file.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private static OutputFile.Content content(WrittenRows rows) {
        return file -> {
            // An encoder that refuses what it cannot encode: half a letter is not quietly written as a question mark.
            Writer writer = new BufferedWriter(new OutputStreamWriter(file, StandardCharsets.UTF_8.newEncoder()));
            rows.write(writer);
        };
    }

    /** Writes the heading and the rows of some records. */
    static <T extends Kept> void write(Format<T> format, List<T> records, Writer writer) throws IOException {
        rows(format, records).write(writer);
    }
}
