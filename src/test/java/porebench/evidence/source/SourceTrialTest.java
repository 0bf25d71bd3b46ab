package porebench.evidence.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Role;
import porebench.record.Samples;
import porebench.record.id.SourceId;
import porebench.store.Books;

/** The trials made with a source, of a mix of which every determination of the test is made. */
class SourceTrialTest {
    @TempDir
    Path folder;

    private static List<String> trials(Bench bench, String source) {
        return SourceTrial.of(bench.book, LaboratoryStanding.of(bench.book)::each, new SourceId(source)).stream()
                .map(trial -> trial.trial().text())
                .toList();
    }

    @Test
    void aSourceKeepsItsTrialsWhenTheMixNoLongerUsesIt() {
        try (Bench bench = new Bench(folder)) {
            assertThat(trials(bench, "S-2")).containsExactly("T-3", "T-2", "T-1");
            Books.keep(bench.book, Samples.source("S-3", Role.COARSE, "Ledge 7"));
            Books.correct(bench.book, Samples.mix("M-1", "S-1", "S-3"));
            assertThat(trials(bench, "S-2")).containsExactly("T-3", "T-2", "T-1");
            assertThat(trials(bench, "S-3")).isEmpty();
        }
    }

    @Test
    void trialsOfTwoMixesStandTogetherAndThoseOfOtherSourcesDoNot() {
        try (Bench bench = new Bench(folder)) {
            Books.keep(
                    bench.book,
                    Samples.source("S-3", Role.COARSE, "Ledge 7"),
                    Samples.mix("M-2", "S-1", "S-2"),
                    Samples.determination("M-2/1", "M-2"),
                    Samples.trial("T-9", "M-2", "M-2/1", "5.6"));
            assertThat(SourceTrial.of(bench.book, LaboratoryStanding.of(bench.book)::each, new SourceId("S-1")))
                    .extracting(trial -> trial.mix().text())
                    .containsExactlyInAnyOrder("M-1", "M-1", "M-1", "M-2");
            assertThat(trials(bench, "S-3")).isEmpty();
        }
    }
}
