package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.method.Place;
import porebench.record.Production;
import porebench.record.SampleCalibrations;
import porebench.record.SampleProduction;
import porebench.record.Samples;
import porebench.record.book.Belonging;
import porebench.store.Books;

/** Production from files: no day counts twice, whatever the order of the rows. */
class ProductionIntakeTest {
    private static final LocalDate DAY = SampleCalibrations.TODAY.minusDays(60);

    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private Intake.Result check(Production... spells) {
        List<Incoming> incoming = new ArrayList<>();
        for (Production spell : spells) {
            incoming.add(new Incoming(Place.of("production.csv", incoming.size() + 2), spell));
        }
        return Intake.check(bench.book, incoming, SampleCalibrations.TODAY);
    }

    private void keep(Intake.Result result) {
        assertThat(bench.book.keep(result.drafts(), "R. Vale", "imported")).isEmpty();
    }

    private static Production week(String id, int week) {
        return SampleProduction.days(id, "M-1", DAY.plusDays(7L * week), DAY.plusDays(7L * week + 6), 5);
    }

    private List<String> kept() {
        return bench.book.latestOf(Belonging.PRODUCTION_OF_MIX, "M-1").stream()
                .map(version -> version.value().recordId() + " " + version.number())
                .toList();
    }

    @Test
    void spellsSideBySideAreKeptAndOneOfAnUnknownMixIsRefused() {
        keep(check(week("p1", 0), week("p2", 1)));
        assertThat(kept()).containsExactly("p1 1", "p2 1");
        Intake.Result again = check(week("p1", 0));
        assertThat(again.alreadyThere()).isEqualTo(1);
        assertThat(again.problems()).isEmpty();
        assertThat(Books.codes(
                        check(SampleProduction.days("p3", "M-9", DAY, DAY, 1)).problems()))
                .containsExactly("import.unknown-mix");
        assertThat(Books.codes(check(SampleProduction.days("p3", "M-1", DAY, SampleCalibrations.TODAY.plusDays(1), 1))
                        .problems()))
                .containsExactly("production.to-come");
        assertThat(bench.book.verify()).isEmpty();
    }

    @Test
    void aSpellThatOverlapsOneOfTheLabBookIsRefusedWithItsName() {
        keep(check(week("p1", 0)));
        Intake.Result late = check(SampleProduction.days("p2", "M-1", DAY.plusDays(6), DAY.plusDays(9), 2));
        assertThat(late.drafts()).isEmpty();
        assertThat(late.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("production.overlaps");
            assertThat(problem.values().get(1)).isEqualTo("p1");
            assertThat(problem.place()).contains(Place.of("production.csv", 2));
        });
        assertThat(check(SampleProduction.days("p2", "M-1", DAY.plusDays(7), DAY.plusDays(9), 2))
                        .problems())
                .isEmpty();
    }

    /** Of two rows the later one is refused, whichever spell comes first. */
    @Test
    void ofTwoRowsThatOverlapTheLaterIsRefused() {
        Production late = SampleProduction.days("late", "M-1", DAY.plusDays(5), DAY.plusDays(9), 2);
        Intake.Result one = check(late, week("p1", 0), week("p3", 2));
        assertThat(one.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.place()).contains(Place.of("production.csv", 3));
            assertThat(problem.values().get(1)).isEqualTo("late");
        });
        keep(one);
        assertThat(kept()).containsExactly("late 1", "p3 1");
    }

    /** A row that makes room for another is taken with it, in either order. */
    @Test
    void aCorrectionMakesRoomForTheNextRow() {
        keep(check(week("p1", 0)));
        Production shorter = SampleProduction.days("p1", "M-1", DAY, DAY.plusDays(3), 3);
        Production next = SampleProduction.days("p0", "M-1", DAY.plusDays(4), DAY.plusDays(6), 2);
        Intake.Result both = check(next, shorter);
        assertThat(Books.codes(both.problems())).containsExactly("import.new-version");
        keep(both);
        assertThat(kept()).containsExactly("p0 1", "p1 2");
        assertThat(bench.book.history(Production.class, "p1"))
                .extracting(version -> version.value().lastDay())
                .containsExactly(DAY.plusDays(6), DAY.plusDays(3));
    }

    /** Where a correction is refused the spell from before stands again, and what needed its room is refused, too. */
    @Test
    void aRefusedCorrectionMakesNoRoom() {
        keep(check(week("p1", 0), week("p2", 1)));
        Production moved = SampleProduction.days("p1", "M-1", DAY.plusDays(8), DAY.plusDays(9), 1);
        Production next = SampleProduction.days("p0", "M-1", DAY.plusDays(4), DAY.plusDays(6), 2);
        Intake.Result both = check(next, moved);
        assertThat(both.drafts()).isEmpty();
        assertThat(Books.codes(both.problems()))
                .containsExactly("import.new-version", "production.overlaps", "production.overlaps");
    }

    /** The move to the other mix is refused there: the spell stands where it stood, and its days are not free. */
    @Test
    void aRefusedMoveToAnotherMixLeavesNoDaysFree() {
        Books.keep(bench.book, Samples.mix("M-2", "S-1", "S-2"));
        keep(check(week("p1", 0), SampleProduction.days("q1", "M-2", DAY, DAY.plusDays(6), 5)));
        Production moved = SampleProduction.days("p1", "M-2", DAY, DAY.plusDays(6), 5);
        Intake.Result both = check(week("p2", 0), moved);
        assertThat(both.drafts()).isEmpty();
        assertThat(Books.codes(both.problems()))
                .containsExactly("import.new-version", "production.overlaps", "production.overlaps");
    }

    @Test
    void aSpellMovedToAnotherMixLeavesItsDaysFree() {
        Books.keep(bench.book, Samples.mix("M-2", "S-1", "S-2"));
        keep(check(week("p1", 0)));
        Production moved = SampleProduction.days("p1", "M-2", DAY, DAY.plusDays(6), 5);
        keep(check(moved, week("p2", 0)));
        assertThat(kept()).containsExactly("p2 1");
    }
}
