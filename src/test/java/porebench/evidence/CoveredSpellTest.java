package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Role;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.id.DeterminationId;
import porebench.store.Books;
import porebench.store.SqliteShelf;

/** When a mix had a factor that might be used: from the first day of each revision to the first day on which it did not hold. */
class CoveredSpellTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(folder);
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private static CoveredSpell spell(LocalDate from, LocalDate until) {
        return new CoveredSpell(from, until);
    }

    @Test
    void aMixWithoutFactorNeverWasCovered() {
        assertThat(CoveredSpell.of(bench.evidence())).isEmpty();
        assertThat(RegisterRow.of(bench.evidence(), Bench.START).uncoveredSince())
                .isEmpty();
    }

    @Test
    void aFactorCoversUpToTheDayToRecheckBy() {
        bench.issue(Bench.START);
        // Twelve months from 9 March 2026: the last day is 9 March 2027.
        LocalDate lapsed = LocalDate.of(2027, 3, 10);
        assertThat(CoveredSpell.of(bench.evidence())).containsExactly(spell(Bench.START, lapsed));
        assertThat(CoveredSpell.of(bench.evidence()).get(0).holds(lapsed.minusDays(1)))
                .isTrue();
        assertThat(CoveredSpell.of(bench.evidence()).get(0).holds(lapsed)).isFalse();
        assertThat(CoveredSpell.of(bench.evidence()).get(0).holds(Bench.START.minusDays(1)))
                .isFalse();
        assertThat(RegisterRow.of(bench.evidence(), lapsed.minusDays(1)).uncoveredSince())
                .isEmpty();
        assertThat(RegisterRow.of(bench.evidence(), lapsed).uncoveredSince()).contains(lapsed);
        assertThat(RegisterRow.of(bench.evidence(), lapsed.plusYears(3)).uncoveredSince())
                .contains(lapsed);
        assertThat(RegisterRow.of(bench.evidence(), Bench.START.minusDays(1)).uncoveredSince())
                .isEmpty();
    }

    @Test
    void theNextRevisionGoesOnWithoutAGapOrAfterOne() {
        bench.issue(Bench.START);
        Books.keep(bench.book, Samples.determination("M-1/2", "M-1"), Samples.trial("T-9", "M-1", "M-1/2", "5.4"));
        bench.keep(bench.issuing(Bench.decision(new DeterminationId("M-1/2"), LocalDate.of(2026, 9, 1))));
        assertThat(CoveredSpell.of(bench.evidence())).containsExactly(spell(Bench.START, LocalDate.of(2027, 9, 2)));
        bench.withdraw(LocalDate.of(2026, 10, 1));
        assertThat(CoveredSpell.of(bench.evidence())).containsExactly(spell(Bench.START, LocalDate.of(2026, 10, 1)));
        bench.keep(bench.issuing(Bench.decision(new DeterminationId("M-1/2"), LocalDate.of(2026, 10, 20))));
        assertThat(CoveredSpell.of(bench.evidence()))
                .containsExactly(
                        spell(Bench.START, LocalDate.of(2026, 10, 1)),
                        spell(LocalDate.of(2026, 10, 20), LocalDate.of(2027, 10, 21)));
        assertThat(RegisterRow.of(bench.evidence(), LocalDate.of(2026, 10, 5)).uncoveredSince())
                .contains(LocalDate.of(2026, 10, 1));
    }

    /** What was kept on 20 April, at one in the morning, and then is asked on the evidence. */
    private void keptOnTwentiethOfApril(Consumer<LabBook> keeping) {
        bench.issue(Bench.START);
        Clock later = Clock.fixed(Instant.parse("2026-04-20T01:00:00Z"), ZoneOffset.UTC);
        try (LabBook book = new SqliteShelf(later).open(folder.resolve("book.porebench"))) {
            keeping.accept(book);
        }
        assertThat(CoveredSpell.of(bench.evidence())).containsExactly(spell(Bench.START, LocalDate.of(2026, 4, 20)));
        assertThat(RegisterRow.of(bench.evidence(), LocalDate.of(2026, 5, 1)).uncoveredSince())
                .contains(LocalDate.of(2026, 4, 20));
    }

    @Test
    void aCorrectedTrialEndsItOnTheDayItWasKept() {
        keptOnTwentiethOfApril(
                book -> Books.correct(book, bench.newest(Trial.class, "T-1").struck("spilled")));
    }

    @Test
    void oneMoreTrialEndsItToo() {
        keptOnTwentiethOfApril(book -> Books.keep(book, Samples.trial("T-4", "M-1", "M-1/1", "5.5")));
    }

    @Test
    void anotherStoneEndsItOnTheDayItWasKept() {
        keptOnTwentiethOfApril(book -> Books.correct(book, Samples.source("S-2", Role.COARSE, "Ledge 2")));
    }

    @Test
    void aDeclaredChangeEndsItOnTheDayItStatesWheneverItWasKept() {
        bench.issue(Bench.START);
        LocalDate since = LocalDate.of(2026, 6, 15);
        Books.correct(bench.book, SampleSources.changed(Samples.source("S-2", Role.COARSE, "Ledge 2"), since));
        assertThat(CoveredSpell.of(bench.evidence())).containsExactly(spell(Bench.START, since));
        assertThat(RegisterRow.of(bench.evidence(), since.minusDays(1)).uncoveredSince())
                .isEmpty();
        assertThat(RegisterRow.of(bench.evidence(), since).uncoveredSince()).contains(since);
        Books.correct(bench.book, SampleSources.withdrawn(Samples.source("S-2", Role.COARSE, "Ledge 1")));
        assertThat(CoveredSpell.of(bench.evidence())).containsExactly(spell(Bench.START, LocalDate.of(2027, 3, 10)));
    }

    @Test
    void aCorrectionEndsNothing() {
        bench.issue(Bench.START);
        Books.correct(bench.book, SampleSources.corrected(Samples.source("S-2", Role.COARSE, "Ledge 2")));
        assertThat(CoveredSpell.of(bench.evidence())).containsExactly(spell(Bench.START, LocalDate.of(2027, 3, 10)));
    }

    @Test
    void anotherMixEndsItToo() {
        keptOnTwentiethOfApril(book -> {
            Books.keep(book, Samples.source("S-3", Role.COARSE, "Ledge 7"));
            Books.correct(book, Samples.mix("M-1", "S-1", "S-3"));
        });
    }

    @Test
    void aSpellHasADayAtLeast() {
        assertThatThrownBy(() -> spell(Bench.START, Bench.START))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("untilExclusive must be after 2026-03-09");
    }
}
