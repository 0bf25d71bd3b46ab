package porebench.exchange.photo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.evidence.intake.Sheet;
import porebench.exchange.text.ExchangeException;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.port.OutputFile;
import porebench.port.OutputRefused;
import porebench.record.Kept;
import porebench.record.PhotoFile;
import porebench.record.PhotoType;
import porebench.record.SheetPhoto;
import porebench.record.book.LabBook;
import porebench.record.chain.ChainRow;
import porebench.record.column.Column;
import porebench.record.column.PhotoColumns;

/** Photos as files: read, found beside the rows that name them, and written under the name that their bytes give them. */
public final class PhotoFiles {
    private PhotoFiles() {}

    /** Reads a photo; a file that is too large is read no further than that shows. */
    public static Answer<PhotoFile> read(Path file) {
        try (InputStream stream = Files.newInputStream(file)) {
            return PhotoFile.of(stream.readNBytes(PhotoFile.LARGEST + 1));
        } catch (NoSuchFileException absent) {
            return Answer.refused(List.of(Problem.error("file", "csv.file-missing", file.toString())));
        } catch (IOException | SecurityException failure) {
            return Answer.refused(List.of(Problem.error(
                    "file", "csv.file-unreadable", file.toString(), String.valueOf(failure.getMessage()))));
        }
    }

    /** Reads a photo of which it is known what it must be, from the folder in which it stands. */
    public static Answer<PhotoFile> read(Path folder, PhotoFile stated) {
        Path file = folder.resolve(stated.name());
        Answer<PhotoFile> read = read(file);
        if (read.value().isEmpty() || read.value().get().equals(stated)) {
            return read;
        }
        return Answer.refused(List.of(Problem.error("file", "photo.file-changed", file.toString())));
    }

    /** Returns a sheet whose photos know their bytes, which stand in files beside it; a row whose file is no good is left out. */
    public static Sheet<Kept> beside(Path folder, Sheet<Kept> sheet) {
        List<Sheet.Row<Kept>> rows = new ArrayList<>();
        List<Problem> problems = new ArrayList<>(sheet.problems());
        for (Sheet.Row<Kept> row : sheet.rows()) {
            if (row.value() instanceof SheetPhoto photo) {
                Answer<PhotoFile> found = read(folder, photo.file());
                found.problems().forEach(problem -> problems.add(problem.at(sheet.place(row))));
                found.value()
                        .ifPresent(any -> rows.add(
                                new Sheet.Row<>(row.line(), photo.with(again(folder, photo.file())), row.simulated())));
            } else {
                rows.add(row);
            }
        }
        return new Sheet<>(sheet.file(), rows, problems);
    }

    /** Returns a file whose bytes are read once more when they are kept: those of a whole folder are not held together. */
    private static PhotoFile again(Path folder, PhotoFile stated) {
        return stated.readBy(() -> {
            Answer<PhotoFile> read = read(folder, stated);
            return read.value()
                    .orElseThrow(() -> new ExchangeException(
                            ExchangeException.Task.READ,
                            folder.resolve(stated.name()).toString(),
                            new IOException("the file was changed meanwhile")))
                    .bytes();
        });
    }

    /** Returns what is to stand in the files of some photos, by their names; the bytes are read as each is written. */
    public static Map<String, OutputFile.Content> contents(LabBook book, Iterable<PhotoFile> photos) {
        Map<String, OutputFile.Content> contents = new LinkedHashMap<>();
        photos.forEach(photo -> contents.put(photo.name(), out -> {
            PhotoFile whole = book.withBytes(photo)
                    .orElseThrow(() -> OutputRefused.of(Problem.error("file", "photo.damaged", photo.name())));
            whole.writeTo(out);
        }));
        return contents;
    }

    /** Returns the file of which a row of a whole lab book tells; empty when it is a row of something else, or damaged. */
    public static Optional<PhotoFile> of(ChainRow row) {
        if (!row.table().equals(PhotoColumns.ALL.table())) {
            return Optional.empty();
        }
        String size = cell(row, PhotoColumns.SIZE);
        String sha256 = cell(row, PhotoColumns.HASH);
        return Arrays.stream(PhotoType.values())
                .filter(type -> type.symbol().equals(cell(row, PhotoColumns.TYPE)))
                .filter(type -> size.matches("[1-9]\\d{0,8}") && PhotoFile.isHash(sha256))
                .map(type -> PhotoFile.stated(type, Integer.parseInt(size), sha256))
                .findFirst();
    }

    private static String cell(ChainRow row, Column<?, ?> column) {
        return row.cells().getOrDefault(column.name(), "");
    }
}
