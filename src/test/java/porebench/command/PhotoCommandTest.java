package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;
import porebench.record.PhotoFile;
import porebench.record.SamplePhotos;
import porebench.store.Books;

/** Photos on the command line: added, told, written out, withdrawn, exported, imported and restored; each as a person would. */
class PhotoCommandTest {
    private static final byte[] SHEET = SamplePhotos.jpeg(20_000, 1);
    private static final String HASH = SamplePhotos.file(SHEET).sha256();

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void theDemoBookAndASheet() throws IOException {
        terminal = new Terminal(folder);
        assertThat(terminal.json("demo", "--book", "one.book").status()).isZero();
        Files.write(folder.resolve("sheet.jpg"), SHEET);
    }

    private Said photo(String... more) {
        return terminal.json(
                Stream.concat(Stream.of("photo", "--book", "one.book", "--trial-id", "T-001"), Stream.of(more))
                        .toArray(String[]::new));
    }

    private static String code(Said refused) {
        assertThat(refused.status()).as(refused.out()).isEqualTo(1);
        return String.valueOf(refused.list("problems").get(0).get("code"));
    }

    private void added() {
        assertThat(photo("--file", "sheet.jpg").status()).isZero();
    }

    @Test
    void aPhotoIsAddedAndTold() {
        Said said = photo("--file", "sheet.jpg", "--who", "A. Reed");
        assertThat(said.status()).as(said.out()).isZero();
        assertThat(said.json()).containsEntry("trialId", "T-001").containsEntry("photoId", "T-001/photo-1");
        Said told = photo();
        assertThat(told.json()).containsEntry("photoId", null);
        assertThat(told.list("photos"))
                .singleElement()
                .satisfies(one -> assertThat(one)
                        .containsEntry("photoId", "T-001/photo-1")
                        .containsEntry("fileName", "sheet.jpg")
                        .containsEntry("mediaType", "jpeg")
                        .containsEntry("sha256", HASH)
                        .containsEntry("who", "A. Reed")
                        .containsEntry("withdrawn", false));
        assertThat(String.valueOf(told.list("photos").get(0).get("bytes"))).isEqualTo("20000");
        assertThat(terminal.json("verify", "--book", "one.book").status()).isZero();
    }

    @Test
    void peopleReadItAsATable() {
        added();
        Said said = terminal.run("photo", "--book", "one.book", "--trial-id", "T-001");
        assertThat(said.out()).contains("Photos of the sheet of trial T-001: 1", "T-001/photo-1", "20000", "in use");
    }

    @Test
    void whatIsWrittenOutIsByteForByteWhatWasAdded() throws IOException {
        added();
        Said said = photo("--out", "photos");
        assertThat(said.status()).as(said.out()).isZero();
        Path written = folder.resolve("photos/photo-" + HASH + ".jpg");
        assertThat(said.json()).containsEntry("files", List.of(written.toString()));
        assertThat(Files.readAllBytes(written)).isEqualTo(SHEET);
        assertThat(code(photo("--out", "photos"))).startsWith("output.");
        assertThat(photo("--out", "photos", "--replace").status()).isZero();
    }

    @Test
    void aWithdrawnPhotoStaysInTheBookAndIsNotWrittenOut() {
        added();
        Said said = photo("--withdraw", "T-001/photo-1", "--reason", "the sheet of another trial");
        assertThat(said.status()).as(said.out()).isZero();
        assertThat(photo().list("photos"))
                .singleElement()
                .satisfies(one -> assertThat(one)
                        .containsEntry("withdrawn", true)
                        .containsEntry("why", "the sheet of another trial"));
        assertThat(code(photo("--out", "photos"))).isEqualTo("photo.none");
        assertThat(code(photo("--withdraw", "T-001/photo-1", "--reason", "again")))
                .isEqualTo("photo.withdrawn-already");
        assertThat(code(photo("--withdraw", "T-001/photo-7", "--reason", "none")))
                .isEqualTo("photo.not-of-trial");
    }

    @Test
    void whatCannotBeAPhotoIsRefusedAndNothingIsKept() throws IOException {
        Files.writeString(folder.resolve("words.jpg"), "no picture");
        Files.write(folder.resolve("large.jpg"), SamplePhotos.jpeg(PhotoFile.LARGEST + 1, 1));
        assertThat(code(photo("--file", "words.jpg"))).isEqualTo("photo.not-a-picture");
        assertThat(code(photo("--file", "large.jpg"))).isEqualTo("photo.too-large");
        assertThat(code(photo("--file", "absent.jpg"))).isEqualTo("csv.file-missing");
        assertThat(code(photo("--file", "one.book"))).isNotEmpty();
        assertThat(code(terminal.json("photo", "--book", "one.book", "--trial-id", "none", "--file", "sheet.jpg")))
                .isEqualTo("photo.unknown-trial");
        added();
        assertThat(code(photo("--file", "sheet.jpg"))).isEqualTo("photo.twice");
        assertThat(photo().list("photos")).hasSize(1);
    }

    @Test
    void twoWishesAtOnceAndAWithdrawalWithoutAReasonAreWrongUsage() {
        assertThat(photo("--file", "sheet.jpg", "--out", "photos").status()).isEqualTo(2);
        assertThat(photo("--withdraw", "T-001/photo-1").status()).isEqualTo(2);
        assertThat(photo("--reason", "x").status()).isEqualTo(2);
    }

    @Test
    void anExportHoldsThePhotoBesideTheRowAndAnImportTakesIt() throws IOException {
        added();
        assertThat(terminal.json("export", "--book", "one.book", "out").status())
                .isZero();
        assertThat(Files.readAllBytes(folder.resolve("out/photo-" + HASH + ".jpg")))
                .isEqualTo(SHEET);
        assertThat(terminal.json("demo", "--book", "two.book").status()).isZero();
        Said imported = terminal.json("import", "--book", "two.book", "out/sheet-photos.csv");
        assertThat(imported.status()).as(imported.out()).isZero();
        assertThat(terminal.json("photo", "--book", "two.book", "--trial-id", "T-001")
                        .list("photos"))
                .singleElement()
                .satisfies(one -> assertThat(one).containsEntry("sha256", HASH));
        assertThat(terminal.json("verify", "--book", "two.book").status()).isZero();
        Said again = terminal.json("import", "--book", "two.book", "out/sheet-photos.csv");
        assertThat(again.status()).isZero();
        assertThat(String.valueOf(again.json().get("alreadyThere"))).isEqualTo("1");
    }

    @Test
    void anImportRefusesAPhotoThatIsAnotherOneOrMissingWithItsLine() throws IOException {
        added();
        assertThat(terminal.json("export", "--book", "one.book", "out").status())
                .isZero();
        assertThat(terminal.json("demo", "--book", "two.book").status()).isZero();
        Path file = folder.resolve("out/photo-" + HASH + ".jpg");
        byte[] other = SHEET.clone();
        other[15_000] ^= 1;
        Files.write(file, other);
        Said refused = terminal.json("import", "--book", "two.book", "out/sheet-photos.csv");
        assertThat(code(refused)).isEqualTo("photo.file-changed");
        Map<String, Object> problem = refused.list("problems").get(0);
        assertThat(problem.get("file") + ":" + problem.get("line")).isEqualTo("sheet-photos.csv:2");
        Files.delete(file);
        assertThat(code(terminal.json("import", "--book", "two.book", "out/sheet-photos.csv")))
                .isEqualTo("csv.file-missing");
    }

    @Test
    void anImportNamesThePhotoOfATrialThatIsNotThere() throws IOException {
        added();
        assertThat(terminal.json("export", "--book", "one.book", "out").status())
                .isZero();
        Path rows = folder.resolve("out/sheet-photos.csv");
        Files.writeString(rows, Files.readString(rows).replace(",T-001,", ",T-999,"));
        Said refused = terminal.json("import", "--book", "one.book", "out/sheet-photos.csv");
        assertThat(code(refused)).isEqualTo("photo.unknown-trial");
        assertThat(refused.list("problems").get(0).get("line").toString()).isEqualTo("2");
    }

    @Test
    void aPhotoWhoseBytesWereChangedIsNotHandedOutAndVerifyNamesItsEntry() throws SQLException {
        added();
        Books.sql(
                folder.resolve("one.book"),
                "DROP TRIGGER photo_content_is_not_changed",
                "UPDATE photo_content SET content = x'ffd8ff'",
                "CREATE TRIGGER photo_content_is_not_changed BEFORE UPDATE ON photo_content\nBEGIN\n"
                        + "    SELECT RAISE(ABORT, 'What a lab book holds is never changed');\nEND");
        assertThat(code(photo("--out", "photos"))).isEqualTo("photo.damaged");
        assertThat(code(terminal.json("export", "--book", "one.book", "out"))).isEqualTo("photo.damaged");
        assertThat(code(terminal.json("export", "--whole", "--book", "one.book", "out")))
                .isEqualTo("photo.damaged");
        assertThat(folder.resolve("out")).doesNotExist();
        assertThat(folder.resolve("photos")).doesNotExist();
        Said verified = terminal.json("verify", "--book", "one.book");
        assertThat(verified.status()).isEqualTo(1);
        assertThat(verified.list("faults"))
                .singleElement()
                .satisfies(fault -> assertThat(fault).containsEntry("code", "book.photo-changed"));
    }

    @Test
    void aWholeExportMakesTheSameBookAgainAndAChangedPhotoIsRefused() throws IOException {
        added();
        assertThat(photo("--withdraw", "T-001/photo-1", "--reason", "blurred").status())
                .isZero();
        Object head = terminal.json("verify", "--book", "one.book").json().get("head");
        assertThat(terminal.json("export", "--whole", "--book", "one.book", "out")
                        .status())
                .isZero();
        Path file = folder.resolve("out/photo-" + HASH + ".jpg");
        assertThat(Files.readAllBytes(file)).isEqualTo(SHEET);
        Said restored = terminal.json("restore", "--from", "out", "--book", "two.book");
        assertThat(restored.status()).as(restored.out()).isZero();
        assertThat(restored.json()).containsEntry("head", head);
        assertThat(terminal.json("verify", "--book", "two.book").status()).isZero();
        byte[] other = SHEET.clone();
        other[15_000] ^= 1;
        Files.write(file, other);
        Said refused = terminal.json("restore", "--from", "out", "--book", "three.book");
        assertThat(code(refused)).isEqualTo("photo.file-changed");
        assertThat(refused.list("problems").get(0)).containsEntry("file", "book-sheet_photo.csv");
        assertThat(folder.resolve("three.book")).doesNotExist();
        Files.delete(file);
        assertThat(code(terminal.json("restore", "--from", "out", "--book", "three.book")))
                .isEqualTo("csv.file-missing");
    }
}
