package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Role;
import porebench.record.KeptStudy;
import porebench.record.RecordKind;
import porebench.record.SampleStudies;
import porebench.record.Samples;
import porebench.record.book.BookCheck;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.chain.Head;
import porebench.store.file.Steps;

/** Studies in the lab book: written, closed, opened, read, corrected, and found when they were changed outside. */
class StudyTableTest {
    private static final SqliteShelf BEFORE_STUDIES = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 8));

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("book.porebench");
    }

    private static final List<KeptStudy> STUDIES = List.of(
            SampleStudies.full("F", Samples.AWKWARD, Samples.AWKWARD_NOTE),
            SampleStudies.laboratories("G"),
            SampleStudies.layers("L"),
            SampleStudies.operators("O"));

    @Test
    void studiesComeBackWithEveryDigitNameAndTheirOrder() {
        try (LabBook book = Books.fresh(file())) {
            Books.keep(book, new ArrayList<>(STUDIES));
        }
        try (LabBook book = Books.SHELF.open(file())) {
            assertThat(book.latest(KeptStudy.class)).extracting(Version::value).isEqualTo(STUDIES);
            assertThat(book.ids(RecordKind.STUDY)).containsExactly("F", "G", "L", "O");
            assertThat(book.verify()).isEmpty();
        }
    }

    @Test
    void aCorrectionLeavesTheFirstVersion() {
        KeptStudy first = SampleStudies.layers("L");
        List<KeptStudy.Reading> turned = new ArrayList<>(first.readings());
        Collections.reverse(turned);
        KeptStudy second = new KeptStudy(
                first.id(), first.layout(), "Turned", first.madeOn(), "M. Ash", "", first.layers(), turned, "");
        try (LabBook book = Books.fresh(file())) {
            Books.keep(book, first);
            Books.correct(book, second);
        }
        try (LabBook book = Books.SHELF.open(file())) {
            assertThat(book.latest(KeptStudy.class, "L").orElseThrow().value()).isEqualTo(second);
            assertThat(book.history(KeptStudy.class, "L"))
                    .extracting(Version::value)
                    .containsExactly(first, second);
            assertThat(book.verify()).isEmpty();
        }
    }

    @Test
    void aStudyOfTwoThousandReadingsComesBackWhole() {
        KeptStudy large = SampleStudies.large("L", 2000);
        try (LabBook book = Books.fresh(file())) {
            Books.keep(book, large);
        }
        try (LabBook book = Books.SHELF.open(file())) {
            assertThat(book.latest(KeptStudy.class, "L").orElseThrow().value()).isEqualTo(large);
        }
    }

    @Test
    void anOlderLabBookTakesStudiesAndKeepsItsChain() {
        Head then;
        try (LabBook book = BEFORE_STUDIES.create(file())) {
            Books.keep(book, Samples.source("S-1", Role.FINE, "Ledge"));
            then = book.head();
        }
        try (LabBook book = Books.SHELF.open(file())) {
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.latest(KeptStudy.class)).isEmpty();
            Books.keep(book, SampleStudies.operators("O"));
            BookCheck check = book.check(Optional.of(then));
            assertThat(check.problems()).isEmpty();
            assertThat(check.counts()).containsEntry(RecordKind.STUDY, 1);
        }
    }

    @Test
    void aReadingThatIsChangedTakenOutOrMovedIsFound() throws SQLException {
        for (String change : List.of(
                "UPDATE study_reading SET value = '5.4' WHERE position = 1",
                "UPDATE study_reading SET name_1 = 'Bo' WHERE position = 1",
                "DELETE FROM study_reading WHERE position = 8",
                "UPDATE study SET made_on = '2026-03-03'",
                "UPDATE study_reading SET position = 9 WHERE position = 1")) {
            Path changed = folder.resolve(change.hashCode() + ".porebench");
            try (LabBook book = Books.fresh(changed)) {
                Books.keep(book, SampleStudies.operators("O"));
            }
            Books.sql(
                    changed,
                    "DROP TRIGGER study_is_not_changed",
                    "DROP TRIGGER study_reading_is_not_changed",
                    "DROP TRIGGER study_reading_is_not_removed",
                    change);
            try (LabBook book = Books.SHELF.open(changed)) {
                assertThat(Books.codes(book.verify())).as(change).contains("book.chain-broken");
            }
        }
    }

    @Test
    void whatIsKeptIsNeverChanged() {
        try (LabBook book = Books.fresh(file())) {
            Books.keep(book, SampleStudies.operators("O"));
        }
        for (String change : List.of(
                "UPDATE study SET title = 'x'",
                "DELETE FROM study",
                "REPLACE INTO study SELECT * FROM study",
                "UPDATE study_reading SET value = '1'",
                "DELETE FROM study_reading",
                "REPLACE INTO study_reading SELECT * FROM study_reading")) {
            assertThatExceptionOfType(SQLException.class)
                    .as(change)
                    .isThrownBy(() -> Books.sql(file(), change))
                    .withMessageContaining("What a lab book holds is never");
        }
    }
}
