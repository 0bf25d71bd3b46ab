package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.SheetImport;
import porebench.evidence.intake.Sheet;
import porebench.method.Place;
import porebench.record.Determination;
import porebench.record.Kept;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.id.MixId;

class TrialsTakenTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final Determination BEGUN = BenchBook.determination(2, DAY);

    private static Trial unplaced(String id) {
        Trial trial = BenchBook.trial(id, 1, DAY, "6.4");
        return trial.in(Trial.noDetermination(trial.mixId()));
    }

    private static Sheet<Kept> sheet(Kept... values) {
        List<Sheet.Row<Kept>> rows = new java.util.ArrayList<>();
        for (Kept value : values) {
            rows.add(new Sheet.Row<>(rows.size() + 2, value));
        }
        return new Sheet<>("monday.csv", rows, List.of());
    }

    @Test
    void trialsOfAnotherMixAreLeftOutWithAProblemAtTheirLine() {
        Trial own = BenchBook.trial("K7-T1", 1, DAY, "6.4");
        Sheet<Kept> taken = TrialsTaken.of(new MixId("M-1"), Optional.empty())
                .rows()
                .apply(sheet(Samples.trial("T-1", "M-1", "M-1/1", "5.4"), own, Samples.mix("M-9")));
        assertThat(taken.values()).extracting(Kept::recordId).containsExactly("T-1", "M-9");
        assertThat(taken.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("import.row-of-another-mix");
            assertThat(problem.isError()).isTrue();
            assertThat(problem.place().flatMap(Place::line)).contains(3);
        });
    }

    @Test
    void aTrialThatNamesNoDeterminationJoinsTheOneThatWasBegun() {
        SheetImport.Taking taking = TrialsTaken.of(BenchBook.MIX, Optional.of(BEGUN));
        Sheet<Kept> taken = taking.rows().apply(sheet(unplaced("K7-T1"), BenchBook.trial("K7-T2", 1, DAY, "6.4")));
        assertThat(taken.values())
                .extracting(value -> ((Trial) value).determinationId().text())
                .containsExactly("K7/2", "K7/1");
        assertThat(TrialsTaken.of(BenchBook.MIX, Optional.empty())
                        .rows()
                        .apply(sheet(unplaced("K7-T1")))
                        .values())
                .containsExactly(unplaced("K7-T1"));
    }

    @Test
    void theDeterminationThatWasBegunIsKeptWithItsPurpose() {
        Draft blank = Draft.of(new Determination(
                BEGUN.id(), BEGUN.mixId(), BEGUN.mixVersion(), BEGUN.sourceVersions(), DAY, "", false));
        Draft trial = Draft.of(BenchBook.trial("K7-T1", 2, DAY, "6.4"));
        Determination said = new Determination(
                BEGUN.id(), BEGUN.mixId(), BEGUN.mixVersion(), BEGUN.sourceVersions(), DAY, "new source", false);
        assertThat(TrialsTaken.of(BenchBook.MIX, Optional.of(said)).drafts().apply(List.of(blank, trial)))
                .containsExactly(Draft.of(said), trial);
        assertThat(SheetImport.Taking.ALL.drafts().apply(List.of(blank))).containsExactly(blank);
    }
}
