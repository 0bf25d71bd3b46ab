package porebench.evidence.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.CardState;
import porebench.method.Role;
import porebench.record.FactorIssue;
import porebench.record.Grounds;
import porebench.record.Laboratory;
import porebench.record.Samples;
import porebench.store.Books;

/** What stands on the card of a revision: until when it holds, whose stone it is for, and whether anything was measured. */
class CardContentTest {
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

    private FactorIssue kept(int revision, LocalDate from) {
        FactorIssue issue = Samples.issue("M-1", revision, "M-1/1", from);
        Books.keep(bench.book, issue);
        return issue;
    }

    private FactorCard card(FactorIssue issue) {
        return card(issue, Optional.empty());
    }

    private FactorCard card(FactorIssue issue, Optional<Laboratory> laboratory) {
        return FactorCard.of(bench.evidence(), issue, laboratory, bench.book.head(), Bench.START.atTime(12, 0));
    }

    /** The second revision was brought forward: it begins before the first and takes its place for good. */
    @Test
    void anEarlierRevisionNeverEndsALaterOne() {
        kept(1, Bench.START.plusDays(20));
        FactorIssue second = kept(2, Bench.START);
        assertThat(card(second).lastDay()).isEqualTo(second.recheckBy());
    }

    /** There is no day on which it holds; a card that says so in its state needs no day before its first. */
    @Test
    void aRevisionReplacedBeforeItBeganHasNoLastDayBeforeItsFirst() {
        FactorIssue first = kept(1, Bench.START);
        kept(2, Bench.START);
        assertThat(card(first).state()).isEqualTo(CardState.REPLACED);
        assertThat(card(first).lastDay()).isEqualTo(first.recheckBy());
    }

    @Test
    void aRevisionThatFollowsLongAfterTheRecheckProlongsNothing() {
        FactorIssue first = kept(1, Bench.START);
        kept(2, first.recheckBy().plusMonths(2));
        assertThat(card(first).lastDay()).isEqualTo(first.recheckBy());
    }

    @Test
    void namesTheSourcesAsTheRegisterDoesInTheOrderOfTheMix() {
        FactorIssue issue = kept(1, Bench.START);
        assertThat(card(issue).sources()).containsExactly("Pit of S-1", "Pit of S-2");
        Books.correct(
                bench.book,
                Samples.mix(
                        "M-1",
                        Samples.constituent("Stone", Role.COARSE, "S-2", "1050"),
                        Samples.constituent("Sand", Role.FINE, "S-9", "700"),
                        Samples.constituent("Filler", Role.FINE, "", "20")));
        assertThat(card(issue).sources()).containsExactly("Pit of S-2", "S-9", "Filler");
    }

    @Test
    void aCardIsForTrainingWhenItsBookIsOrItsTrialsWereSimulated() {
        FactorIssue real = kept(1, Bench.START);
        FactorIssue simulated = real.on(Grounds.NONE.simulated(true));
        assertThat(card(real).isTraining()).isFalse();
        assertThat(card(real, Optional.of(Samples.laboratory())).isTraining()).isFalse();
        assertThat(card(simulated).isTraining()).isTrue();
        assertThat(card(real, Optional.of(new Laboratory("Practice bench", "", true)))
                        .isTraining())
                .isTrue();
    }
}
