package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.Refused;
import porebench.record.Trial;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;
import porebench.record.id.TrialId;

/**
 * Why a doubtful trial was kept stays with it through every change after it.
 *
 * <p>The doubt: gauge 5.9 less the 6 % withdrawn is a factor of -0.1.
 */
class KeptReasonTest {
    private static final String REASON = "the line was checked twice";
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();
    private TrialsModel model;

    @BeforeEach
    void keepADoubtfulTrial() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.trial("K7-T1", 1, DAY, "5.9").keptFor(Optional.of(REASON)));
        model = new TrialsModel(bench.select().desk);
        model.select(Optional.of(new TrialId("K7-T1")));
    }

    private List<Optional<String>> reasons() {
        return bench.book.history(Trial.class, "K7-T1").stream()
                .map(Version::value)
                .map(Trial::keptBecause)
                .toList();
    }

    private BenchModel correcting(Column<Trial, ?> field, String text) {
        model.correct();
        BenchModel entry = model.entry();
        entry.type(field, text);
        assertThat(entry.attempt()).isEmpty();
        return entry;
    }

    @Test
    void aCorrectionThatLeavesTheDoubtAsksForNoReasonAgainAndKeepsTheOneGiven() {
        BenchModel entry = correcting(TrialColumns.REMARKS, "second reading by M. Sorrel");
        assertThat(entry.read().doubts()).isNotEmpty();
        assertThat(entry.wantsReason()).isFalse();
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "a remark was wanting", out)))
                .isEmpty();
        assertThat(reasons()).containsExactly(Optional.of(REASON), Optional.of(REASON));
        assertThat(model.rows().get(0).judged().counts()).isTrue();
    }

    @Test
    void aReasonGivenWithACorrectionTakesThePlaceOfTheOneBefore() {
        BenchModel entry = correcting(TrialColumns.REMARKS, "second reading by M. Sorrel");
        assertThat(Refused.by(out -> entry.keep(Optional.of("the dial was tapped"), "a remark was wanting", out)))
                .isEmpty();
        assertThat(reasons()).containsExactly(Optional.of(REASON), Optional.of("the dial was tapped"));
    }

    @Test
    void aCorrectionThatTakesTheDoubtAwayTakesTheReasonAway() {
        BenchModel entry = correcting(TrialColumns.GAUGE, "6.4");
        assertThat(entry.read().doubts()).isEmpty();
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "the dial was misread", out)))
                .isEmpty();
        assertThat(reasons()).containsExactly(Optional.of(REASON), Optional.empty());
    }

    @Test
    void strikingATrialAndLettingItStandAgainKeepsTheReason() {
        assertThat(Refused.by(out -> model.strike("spilled water", out))).isEmpty();
        assertThat(Refused.by(out -> model.restore("it was another trial", out)))
                .isEmpty();
        assertThat(reasons()).containsExactly(Optional.of(REASON), Optional.of(REASON), Optional.of(REASON));
        Trial stands =
                bench.book.latest(Trial.class, "K7-T1").map(Version::value).orElseThrow();
        assertThat(stands.struckBecause()).isEmpty();
        assertThat(stands).isEqualTo(BenchBook.trial("K7-T1", 1, DAY, "5.9").keptFor(Optional.of(REASON)));
    }

    @Test
    void aCorrectionOfAStruckTrialLeavesItStruckAndKept() {
        assertThat(Refused.by(out -> model.strike("spilled water", out))).isEmpty();
        BenchModel entry = correcting(TrialColumns.REMARKS, "after the spill");
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "a remark was wanting", out)))
                .isEmpty();
        Trial corrected =
                bench.book.latest(Trial.class, "K7-T1").map(Version::value).orElseThrow();
        assertThat(corrected.struckBecause()).contains("spilled water");
        assertThat(corrected.keptBecause()).contains(REASON);
    }
}
