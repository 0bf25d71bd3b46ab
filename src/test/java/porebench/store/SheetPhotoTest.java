package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.record.PhotoFile;
import porebench.record.RecordKind;
import porebench.record.SamplePhotos;
import porebench.record.Samples;
import porebench.record.SheetPhoto;
import porebench.record.Trial;
import porebench.record.book.Belonging;
import porebench.record.book.BookCheck;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Version;
import porebench.record.chain.Head;
import porebench.store.file.Steps;

/** Photos in the lab book: written, closed, opened, read, withdrawn, found when damaged, and read by nobody who did not ask. */
class SheetPhotoTest {
    private static final SqliteShelf BEFORE_PHOTOS = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 12));

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("book.porebench");
    }

    private static void twoTrials(LabBook book) {
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "Ledge"),
                Samples.source("S-2", Role.COARSE, "Ledge"),
                Samples.meter("B-1", MeterType.B),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.determination("M-1/1", "M-1"),
                Samples.trial("T-1", "M-1", "M-1/1", "5.4"),
                Samples.trial("T-2", "M-1", "M-1/1", "5.5"));
    }

    private LabBook fresh() {
        LabBook book = Books.fresh(file());
        twoTrials(book);
        return book;
    }

    @Test
    void aPhotoComesBackByteForByteAndItsRecordIsWithoutThem() {
        byte[] jpeg = SamplePhotos.jpeg(300_000, 1);
        SheetPhoto photo = SamplePhotos.photo("T-1/photo-1", "T-1", jpeg);
        SheetPhoto png = SamplePhotos.photo("T-2/photo-1", "T-2", SamplePhotos.png(70, 2));
        try (LabBook book = fresh()) {
            Books.keep(book, photo, png);
        }
        try (LabBook book = Books.SHELF.open(file())) {
            SheetPhoto read =
                    book.latest(SheetPhoto.class, "T-1/photo-1").orElseThrow().value();
            assertThat(read).isEqualTo(photo);
            assertThat(read.file().hasBytes()).isFalse();
            assertThat(book.withBytes(read.file()).orElseThrow().bytes()).isEqualTo(jpeg);
            assertThat(book.latestOf(Belonging.PHOTOS_OF_TRIAL, "T-2"))
                    .extracting(Version::value)
                    .containsExactly(png);
            assertThat(book.withBytes(SamplePhotos.file(SamplePhotos.jpeg(70, 3))))
                    .isEmpty();
            assertThat(book.verify()).isEmpty();
        }
    }

    @Test
    void theLargestPhotoIsKept() {
        byte[] largest = SamplePhotos.jpeg(PhotoFile.LARGEST, 1);
        try (LabBook book = fresh()) {
            Books.keep(book, SamplePhotos.photo("T-1/photo-1", "T-1", largest));
            assertThat(book.withBytes(SamplePhotos.file(largest)).orElseThrow().bytes())
                    .isEqualTo(largest);
        }
    }

    @Test
    void aSheetWithTwoTrialsIsHeldOnce() throws SQLException {
        byte[] sheet = SamplePhotos.jpeg(5000, 1);
        try (LabBook book = fresh()) {
            Books.keep(book, SamplePhotos.photo("T-1/photo-1", "T-1", sheet));
            Books.keep(book, SamplePhotos.photo("T-2/photo-1", "T-2", sheet));
            assertThat(book.ids(RecordKind.SHEET_PHOTO)).hasSize(2);
            assertThat(book.verify()).isEmpty();
        }
        Books.sql(file(), "CREATE TABLE one AS SELECT 1 / (count(*) = 1) AS sound FROM photo_content");
    }

    @Test
    void whatIsWithdrawnStaysWithReasonAndBytes() {
        byte[] bytes = SamplePhotos.jpeg(5000, 1);
        SheetPhoto photo = SamplePhotos.photo("T-1/photo-1", "T-1", bytes);
        try (LabBook book = fresh()) {
            Books.keep(book, photo);
            Version<SheetPhoto> there =
                    book.latest(SheetPhoto.class, photo.recordId()).orElseThrow();
            assertThat(book.keep(
                            List.of(Draft.correcting(there, there.value().takenBack())), "M. Ash", "another sheet"))
                    .isEmpty();
        }
        try (LabBook book = Books.SHELF.open(file())) {
            List<Version<SheetPhoto>> versions = book.history(SheetPhoto.class, photo.recordId());
            assertThat(versions).extracting(Version::value).containsExactly(photo, photo.takenBack());
            assertThat(versions.get(1).stamp().why()).isEqualTo("another sheet");
            assertThat(book.withBytes(photo.file()).orElseThrow().bytes()).isEqualTo(bytes);
            assertThat(book.verify()).isEmpty();
        }
    }

    @Test
    void theGateRefusesAPhotoOfNoTrialAndKeepsNothingOfIt() throws SQLException {
        try (LabBook book = fresh()) {
            assertThat(Books.codes(book.keep(
                            List.of(Draft.of(SamplePhotos.photo("T-9/photo-1", "T-9", SamplePhotos.jpeg(500, 1)))),
                            "R. Vale",
                            "entered")))
                    .containsExactly("photo.unknown-trial");
        }
        Books.sql(file(), "CREATE TABLE one AS SELECT 1 / (count(*) = 0) AS sound FROM photo_content");
    }

    /** The byte lies in a page that SQLite has no sum for: only the SHA-256 shows it. */
    @Test
    void oneChangedByteIsFoundWithItsEntry() throws IOException {
        byte[] bytes = SamplePhotos.jpeg(100_000, 1);
        SheetPhoto photo = SamplePhotos.photo("T-1/photo-1", "T-1", bytes);
        try (LabBook book = fresh()) {
            Books.keep(book, photo, SamplePhotos.photo("T-2/photo-1", "T-2", SamplePhotos.jpeg(9000, 2)));
        }
        int place = placeOf(bytes);
        try (RandomAccessFile raw = new RandomAccessFile(file().toFile(), "rw")) {
            raw.seek(place);
            int was = raw.read();
            raw.seek(place);
            raw.write(was ^ 1);
        }
        try (LabBook book = Books.SHELF.open(file())) {
            assertThat(book.warnings()).isEmpty();
            BookCheck check = book.check(Optional.empty());
            assertThat(check.integrity()).isTrue();
            assertThat(check.faults()).singleElement().satisfies(fault -> {
                assertThat(fault.code()).isEqualTo("book.photo-changed");
                assertThat(fault.place()).isEqualTo("entry 8");
                assertThat(fault.problem().values()).containsExactly(8L, "T-1/photo-1");
            });
            assertThat(book.withBytes(photo.file())).isEmpty();
        }
    }

    /** Returns where in the file a run of bytes from the midst of the photo stands. */
    private int placeOf(byte[] bytes) throws IOException {
        byte[] whole = Files.readAllBytes(file());
        int from = 60_000;
        for (int at = 0; at < whole.length - 16; at++) {
            int same = 0;
            while (same < 16 && whole[at + same] == bytes[from + same]) {
                same++;
            }
            if (same == 16) {
                return at;
            }
        }
        throw new AssertionError("the photo's bytes are not in the file");
    }

    @Test
    void bytesThatAreChangedTakenOutOrPutInAreFound() throws SQLException {
        byte[] other = SamplePhotos.jpeg(5000, 2);
        String hash = SamplePhotos.file(other).sha256();
        for (List<String> change : List.of(
                List.of("UPDATE photo_content SET content = x'ffd8ff'", "book.photo-changed"),
                List.of("DELETE FROM photo_content", "book.photo-changed"),
                List.of("UPDATE sheet_photo SET byte_count = 4999", "book.chain-broken"),
                List.of("UPDATE sheet_photo SET withdrawn = 1", "book.chain-broken"),
                List.of("INSERT INTO photo_content VALUES ('" + hash + "', x'ffd8ff')", "book.photo-foreign"))) {
            Path changed = folder.resolve(change.get(0).hashCode() + ".porebench");
            try (LabBook book = Books.fresh(changed)) {
                twoTrials(book);
                Books.keep(book, SamplePhotos.photo("T-1/photo-1", "T-1", SamplePhotos.jpeg(5000, 1)));
            }
            Books.sql(
                    changed,
                    "PRAGMA foreign_keys = OFF",
                    "DROP TRIGGER photo_content_is_not_changed",
                    "DROP TRIGGER photo_content_is_not_removed",
                    "DROP TRIGGER sheet_photo_is_not_changed",
                    change.get(0));
            try (LabBook book = Books.SHELF.open(changed)) {
                assertThat(Books.codes(book.verify())).as(change.get(0)).contains(change.get(1));
            }
        }
    }

    @Test
    void whatIsKeptIsNeverChanged() {
        try (LabBook book = fresh()) {
            Books.keep(book, SamplePhotos.photo("T-1/photo-1", "T-1", SamplePhotos.jpeg(5000, 1)));
        }
        for (String change : List.of(
                "UPDATE photo_content SET content = x'ffd8ff'",
                "DELETE FROM photo_content",
                "REPLACE INTO photo_content SELECT * FROM photo_content",
                "UPDATE sheet_photo SET file_name = 'x'",
                "DELETE FROM sheet_photo",
                "REPLACE INTO sheet_photo SELECT * FROM sheet_photo")) {
            assertThatExceptionOfType(SQLException.class)
                    .as(change)
                    .isThrownBy(() -> Books.sql(file(), change))
                    .withMessageContaining("What a lab book holds is never");
        }
    }

    @Test
    void anOlderLabBookTakesPhotosAndKeepsItsChain() {
        Head then;
        try (LabBook book = BEFORE_PHOTOS.create(file())) {
            twoTrials(book);
            then = book.head();
        }
        try (LabBook book = Books.SHELF.open(file())) {
            assertThat(book.warnings()).isEmpty();
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
            Books.keep(book, SamplePhotos.photo("T-1/photo-1", "T-1", SamplePhotos.jpeg(5000, 1)));
            BookCheck check = book.check(Optional.of(then));
            assertThat(check.problems()).isEmpty();
            assertThat(check.counts()).containsEntry(RecordKind.SHEET_PHOTO, 1);
        }
    }

    @Test
    void aBackupHoldsThePhotosAndARestoredBookShowsThem() {
        byte[] bytes = SamplePhotos.jpeg(50_000, 1);
        Path backup;
        try (LabBook book = fresh()) {
            Books.keep(book, SamplePhotos.photo("T-1/photo-1", "T-1", bytes));
        }
        backup = Books.SHELF
                .backUp(file(), folder.resolve("backups"), Progress.UNHEARD)
                .value()
                .orElseThrow()
                .file();
        Path restored = folder.resolve("restored.porebench");
        assertThat(Books.SHELF.restore(backup, restored, Progress.UNHEARD).value())
                .isPresent();
        try (LabBook book = Books.SHELF.open(restored)) {
            assertThat(book.withBytes(SamplePhotos.file(bytes)).orElseThrow().bytes())
                    .isEqualTo(bytes);
            assertThat(book.verify()).isEmpty();
        }
    }

    /** Opening, the register and the questions of a mix allocate as much with fifty photos of 3 MB as with fifty of 100 bytes. */
    @Test
    void nobodyReadsTheBytesWhoDidNotAskForThem() {
        Path small = fifty("small.porebench", 100);
        Path large = fifty("large.porebench", 3_000_000);
        read(small);
        read(large);
        long few = read(small);
        assertThat(read(large) - few).isLessThan(100_000);
    }

    private Path fifty(String name, int size) {
        Path photos = folder.resolve(name);
        try (LabBook book = Books.fresh(photos)) {
            twoTrials(book);
            for (int i = 1; i <= 50; i++) {
                Books.keep(book, SamplePhotos.photo("T-1/photo-" + i, "T-1", SamplePhotos.jpeg(size, i)));
            }
        }
        return photos;
    }

    /** Returns how many bytes this thread allocates while it opens a lab book and reads what a window reads. */
    private static long read(Path photos) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(id);
        try (LabBook book = Books.SHELF.open(photos)) {
            LaboratoryStanding.of(book);
            book.latest(Trial.class, "T-1");
            book.latestOf(Belonging.TRIALS_OF_MIX, "M-1");
            assertThat(book.latestOf(Belonging.PHOTOS_OF_TRIAL, "T-1")).hasSize(50);
            book.touchedSince(0);
        }
        return threads.getThreadAllocatedBytes(id) - before;
    }
}
