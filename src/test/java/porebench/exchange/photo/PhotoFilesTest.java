package porebench.exchange.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.intake.Sheet;
import porebench.exchange.text.ExchangeException;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.PhotoFile;
import porebench.record.PhotoType;
import porebench.record.SamplePhotos;
import porebench.record.Samples;
import porebench.record.SheetPhoto;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.chain.ChainRow;
import porebench.store.Books;

/** Photos beside their rows: found, held against what the row says, and read once more when they are kept. */
class PhotoFilesTest {
    private static final byte[] BYTES = SamplePhotos.jpeg(3000, 1);
    private static final PhotoFile PHOTO = SamplePhotos.file(BYTES);
    private static final PhotoFile KNOWN = PhotoFile.stated(PhotoType.JPEG, 3000, PHOTO.sha256());

    @TempDir
    Path folder;

    private static Sheet<Kept> sheet() {
        SheetPhoto photo = SamplePhotos.photo("T-1/photo-1", "T-1", BYTES).with(KNOWN);
        return new Sheet<>(
                "sheet-photos.csv",
                List.of(
                        new Sheet.Row<>(2, Samples.trial("T-1", "M-1", "M-1/1", "5.4")),
                        new Sheet.Row<>(3, photo, true)),
                List.of());
    }

    @Test
    void aRowKnowsTheBytesOfTheFileBesideItAndStaysMarked() throws IOException {
        Files.write(folder.resolve(PHOTO.name()), BYTES);
        Sheet<Kept> found = PhotoFiles.beside(folder, sheet());
        assertThat(found.problems()).isEmpty();
        assertThat(found.rows()).hasSize(2);
        assertThat(found.rows().get(1).simulated()).isTrue();
        assertThat(((SheetPhoto) found.rows().get(1).value()).file().bytes()).isEqualTo(BYTES);
    }

    /** Read to its limit only, it would be another picture, cut off, and nobody would be told. */
    @Test
    void aFileOneByteTooLargeIsRefusedAndNotCutOff() throws IOException {
        Path large = Files.write(folder.resolve("large.jpg"), SamplePhotos.jpeg(PhotoFile.LARGEST + 1, 1));
        assertThat(PhotoFiles.read(large).problems()).extracting(Problem::code).containsExactly("photo.too-large");
        Path largest = Files.write(folder.resolve("largest.jpg"), SamplePhotos.jpeg(PhotoFile.LARGEST, 1));
        assertThat(PhotoFiles.read(largest).problems()).isEmpty();
    }

    @Test
    void aRowWithoutItsFileIsLeftOutAndSaid() {
        Sheet<Kept> found = PhotoFiles.beside(folder, sheet());
        assertThat(found.rows()).hasSize(1);
        assertThat(found.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("csv.file-missing");
            assertThat(problem.place()).contains(Place.of("sheet-photos.csv", 3));
        });
    }

    @Test
    void aFolderIsNoPhoto() {
        assertThat(PhotoFiles.read(folder).problems()).extracting(Problem::code).containsExactly("csv.file-unreadable");
    }

    @Test
    void aFileThatIsChangedBetweenReadingAndKeepingIsNotKept() throws IOException {
        Path file = Files.write(folder.resolve(PHOTO.name()), BYTES);
        Kept photo = PhotoFiles.beside(folder, sheet()).values().get(1);
        Files.write(file, SamplePhotos.jpeg(3000, 2));
        try (LabBook book = Books.fresh(folder.resolve("book.porebench"))) {
            Books.keep(
                    book,
                    Samples.mix("M-1", "S-1", "S-2"),
                    Samples.determination("M-1/1", "M-1"),
                    Samples.trial("T-1", "M-1", "M-1/1", "5.4"));
            assertThatExceptionOfType(ExchangeException.class)
                    .isThrownBy(() -> book.keep(List.of(Draft.of(photo)), "R. Vale", "imported"))
                    .withMessageContaining("could not be read again");
            assertThat(book.changeNumber()).isEqualTo(3);
            assertThat(book.verify()).isEmpty();
        }
    }

    @Test
    void aRowOfAWholeLabBookTellsOfAFileUnlessItIsDamaged() {
        Map<String, String> cells =
                Map.of("media_type", "jpeg", "byte_count", "3000", "sha256", PHOTO.sha256(), "file_name", "a.jpg");
        assertThat(of("sheet_photo", cells)).contains(KNOWN);
        assertThat(of("trial", cells)).isEmpty();
        for (String column : List.of("media_type", "byte_count", "sha256")) {
            Map<String, String> damaged = new TreeMap<>(cells);
            damaged.put(column, "x");
            assertThat(of("sheet_photo", damaged)).as(column).isEmpty();
            damaged.remove(column);
            assertThat(of("sheet_photo", damaged)).as(column).isEmpty();
        }
    }

    private static Optional<PhotoFile> of(String table, Map<String, String> cells) {
        return PhotoFiles.of(new ChainRow(table, new TreeMap<>(cells), Place.of(table)));
    }
}
