package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.intake.Incoming;
import porebench.evidence.intake.Intake;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.exchange.CsvSheets;
import porebench.method.Place;
import porebench.method.Role;
import porebench.port.OutputFolder;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Progress.Stage;
import porebench.record.chain.Head;

/** Long work that a person ends: it leaves nothing half done, and can be done again. */
class EndedWorkTest {
    private static final List<Draft> FIFTY = IntStream.range(0, 50)
            .mapToObj(number -> Draft.of(Samples.bareSource("S-" + number, Role.FINE)))
            .toList();

    @TempDir
    Path folder;

    private final List<Stage> heard = new ArrayList<>();
    private Path file;
    private LabBook book;

    @BeforeEach
    void begin() {
        file = folder.resolve("book.porebench");
        book = Books.fresh(file);
    }

    @AfterEach
    void close() {
        book.close();
    }

    /** Ends the work in the middle of a stage. */
    private Progress endingIn(Stage ended) {
        return (stage, done, of) -> {
            heard.add(stage);
            if (stage == ended && 2 * done >= of) {
                throw new CancellationException("ended by the person");
            }
        };
    }

    private void isEnded(ThrowingCallable work) {
        assertThatThrownBy(work).isInstanceOf(CancellationException.class);
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.filter(one -> !one.getFileName().toString().startsWith("book.porebench"))
                    .toList();
        }
    }

    @Test
    void nothingIsKeptWhenKeepingIsEndedAndItCanBeDoneAgain() {
        Books.keep(book, Samples.source("S-first", Role.FINE, "Ledge 1"));
        Head before = book.head();
        isEnded(() -> book.keep(FIFTY, "R. Vale", "entered", endingIn(Stage.KEEPING)));
        assertThat(book.head()).isEqualTo(before);
        assertThat(book.latest(Source.class)).hasSize(1);
        try (LabBook other = Books.SHELF.open(file)) {
            assertThat(other.keep(FIFTY, "M. Ash", "entered")).isEmpty();
        }
        assertThat(book.latest(Source.class)).hasSize(51);
        assertThat(book.verify()).isEmpty();
    }

    @Test
    void eachRecordIsToldAsItIsKept() {
        List<Long> done = new ArrayList<>();
        book.keep(FIFTY, "R. Vale", "entered", (stage, now, of) -> {
            assertThat(stage).isEqualTo(Stage.KEEPING);
            assertThat(of).isEqualTo(50);
            done.add(now);
        });
        assertThat(done).hasSize(50).isSorted().startsWith(1L).endsWith(50L);
    }

    @Test
    void aCheckThatIsEndedSaysNothingAndTheNextOneAll() {
        book.keep(FIFTY, "R. Vale", "entered");
        isEnded(() -> book.check(Optional.empty(), endingIn(Stage.CHECKING)));
        assertThat(heard).containsOnly(Stage.CHECKING).hasSize(25);
        assertThat(book.check(Optional.empty()).isIntact()).isTrue();
    }

    @Test
    void aCheckIsEndedWhileItWorksTheMixesOut() {
        Books.keep(book, Samples.mix("M-1", "S-1", "S-2"), Samples.mix("M-2", "S-1", "S-2"));
        LaboratoryStanding.of(book);
        isEnded(() -> book.check(Optional.empty(), endingIn(Stage.WORKING_OUT)));
        assertThat(heard).contains(Stage.WORKING_OUT);
        assertThat(book.check(Optional.empty()).isIntact()).isTrue();
    }

    @Test
    void noFileIsLeftOfAnExportThatIsEnded() throws IOException {
        book.keep(FIFTY, "R. Vale", "entered");
        OutputFolder out = OutputFolder.fresh(folder.resolve("new/out"));
        isEnded(() -> new CsvSheets().export(book, out, endingIn(Stage.WRITING)));
        isEnded(() -> new CsvSheets().exportWhole(book, out, endingIn(Stage.WRITING)));
        assertThat(files()).isEmpty();
        assertThat(new CsvSheets().export(book, out)).isNotEmpty();
    }

    @Test
    void noBackupIsLeftOfOneThatIsEndedAndNothingIsReplaced() throws IOException {
        book.keep(FIFTY, "R. Vale", "entered");
        Path backups = Files.createDirectory(folder.resolve("backups"));
        isEnded(() -> Books.SHELF.backUp(file, backups, endingIn(Stage.CHECKING)));
        assertThat(backups).isEmptyDirectory();
        Path backup = Books.SHELF.backUp(file, backups).value().orElseThrow().file();
        book.close();
        byte[] before = Files.readAllBytes(file);
        isEnded(() -> Books.SHELF.restore(backup, file, endingIn(Stage.CHECKING)));
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        assertThat(files()).containsExactly(backups);
        book = Books.SHELF.open(file);
        assertThat(book.verify()).isEmpty();
    }

    @Test
    void whatComesInIsToldAsItIsLookedUpComparedAndChecked() {
        List<Incoming> incoming = IntStream.range(0, 5000)
                .mapToObj(number ->
                        new Incoming(Place.of("f.csv", number + 2), FIFTY.get(0).value()))
                .toList();
        List<String> told = new ArrayList<>();
        Intake.check(
                book, incoming, LocalDate.of(2026, 3, 2), (stage, done, of) -> told.add(stage + " " + done + " " + of));
        assertThat(told)
                .containsExactly(
                        "LOOKING_UP 0 1",
                        "COMPARING 0 5000",
                        "COMPARING 2000 5000",
                        "COMPARING 4000 5000",
                        "CHECKING 0 5000",
                        "CHECKING 2000 5000",
                        "CHECKING 4000 5000");
    }

    @Test
    void aFileIsToldByItsBytesAndCanBeLeftUnread() throws IOException {
        Path sheet = folder.resolve("sources.csv");
        Files.writeString(sheet, "source_id,name,role\n" + "S-1,Sand,fine\n".repeat(40));
        isEnded(() -> new CsvSheets().records(sheet, endingIn(Stage.READING)));
        List<Long> of = new ArrayList<>();
        new CsvSheets().records(sheet, (stage, done, all) -> {
            assertThat(stage).isEqualTo(Stage.READING);
            assertThat(done).isLessThan(all);
            of.add(all);
        });
        assertThat(of).hasSize(41).containsOnly(Files.size(sheet));
    }

    @Test
    void mixesAreToldAsTheyAreWorkedOut() {
        Books.keep(book, Samples.mix("M-1", "S-1", "S-2"), Samples.mix("M-2", "S-1", "S-2"));
        isEnded(() -> LaboratoryStanding.of(book, endingIn(Stage.WORKING_OUT)));
        LaboratoryStanding standing = LaboratoryStanding.of(book);
        Books.correct(book, Samples.mix("M-1", "S-1", "S-3"));
        Books.correct(book, Samples.mix("M-2", "S-1", "S-3"));
        isEnded(() -> standing.renewed(endingIn(Stage.WORKING_OUT)));
        assertThat(standing.renewed().rows(Books.NOON.atZone(ZoneOffset.UTC).toLocalDate()))
                .hasSize(2);
    }
}
