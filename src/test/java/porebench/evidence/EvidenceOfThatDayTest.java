package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.record.Determination;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.id.DeterminationId;
import porebench.store.Books;

/** Trials are judged by the mix as it was when their determination began, whatever the mix became. */
class EvidenceOfThatDayTest {
    private static final DeterminationId SECOND = new DeterminationId("M-1/2");

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

    private List<String> doubts(DeterminationId determination) {
        return Books.codes(bench.evidence()
                .determination(determination)
                .orElseThrow()
                .trials()
                .get(0)
                .doubts());
    }

    @Test
    void aSoakThatTheMixAsksForLaterIsNotMissedInTrialsMadeBefore() {
        List<String> before = doubts(Bench.FIRST);
        MixDesign plain = bench.mix();
        Books.correct(
                bench.book,
                new MixDesign(
                        plain.id(),
                        plain.title(),
                        plain.batch(),
                        Samples.some("30"),
                        Optional.empty(),
                        plain.profileId(),
                        "",
                        Optional.empty()));
        Books.keep(
                bench.book,
                new Determination(SECOND, Bench.MIX, 2, Map.of(), LocalDate.of(2026, 3, 5), "with soaking"),
                Samples.trial("T-9", "M-1", "M-1/2", "5.4"));
        assertThat(doubts(Bench.FIRST)).isEqualTo(before).doesNotContain("trial.soak-missing");
        assertThat(doubts(SECOND)).contains("trial.soak-missing");
    }
}
