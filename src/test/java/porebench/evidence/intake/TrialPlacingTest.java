package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import porebench.method.Problem;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/** Which determination a trial that names none is put into. */
class TrialPlacingTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final MixId MIX = new MixId("M-1");

    private static DeterminationId id(String text) {
        return new DeterminationId(text);
    }

    private static Trial madeOn(int daysLater) {
        Trial plain = Samples.trial("T-1", "M-1", "M-1", "5.4");
        return new Trial(
                plain.id(),
                plain.mixId(),
                plain.determinationId(),
                LocalDateTime.of(DAY.plusDays(daysLater), LocalTime.NOON),
                plain.operator(),
                plain.meterId(),
                plain.readings(),
                plain.remarks(),
                plain.keptBecause(),
                plain.struckBecause(),
                Optional.empty(),
                false);
    }

    private static TrialPlacing placing(int known, String... taken) {
        return new TrialPlacing(MIX, one -> Set.of(taken).contains(one.text()), known);
    }

    @Test
    void theFirstDeterminationOfAMixIsNumberOneAndBegunWithoutADoubt() {
        TrialPlacing placing = placing(0);
        assertThat(placing.place(madeOn(0))).isEqualTo(id("M-1/1"));
        assertThat(placing.takeProblems()).isEmpty();
    }

    @Test
    void aNumberThatIsTakenIsPassedOver() {
        assertThat(placing(0, "M-1/1", "M-1/2").place(madeOn(0))).isEqualTo(id("M-1/3"));
        assertThat(placing(2).place(madeOn(0))).isEqualTo(id("M-1/3"));
        TrialPlacing joined = placing(0);
        joined.add(id("M-1/1"), List.of(DAY.minusYears(1)));
        assertThat(joined.place(madeOn(0))).isEqualTo(id("M-1/2"));
    }

    @Test
    void onlyWhatWasAddedCanBeJoined() {
        TrialPlacing placing = placing(1, "M-1/1");
        placing.add(id("M-1/2"), List.of(DAY));
        assertThat(placing.hasJoinable(id("M-1/2"))).isTrue();
        assertThat(placing.hasJoinable(id("M-1/1"))).isFalse();
    }

    @Test
    void theNearestIsJoinedAndOfTwoAsNearTheOneAddedFirst() {
        TrialPlacing placing = placing(3);
        placing.add(id("M-1/1"), List.of(DAY.minusDays(4)));
        placing.add(id("M-1/2"), List.of(DAY.plusDays(40), DAY.plusDays(3)));
        placing.add(id("M-1/3"), List.of(DAY.minusDays(3)));
        assertThat(placing.place(madeOn(0))).isEqualTo(id("M-1/2"));
        assertThat(placing.takeProblems()).isEmpty();
    }

    @Test
    void aDeterminationWithoutTrialsIsAsNearAsCanBe() {
        TrialPlacing placing = placing(2);
        placing.add(id("M-1/1"), List.of(DAY.minusDays(1)));
        placing.add(id("M-1/2"), List.of());
        assertThat(placing.place(madeOn(0))).isEqualTo(id("M-1/2"));
    }

    /** Trials 14 days apart, one after the other, are one determination although the first and the last are 28 apart. */
    @Test
    void aTrialThatJoinedIsCompanyForTheNext() {
        TrialPlacing placing = placing(0);
        assertThat(placing.place(madeOn(0))).isEqualTo(id("M-1/1"));
        assertThat(placing.place(madeOn(14))).isEqualTo(id("M-1/1"));
        assertThat(placing.place(madeOn(28))).isEqualTo(id("M-1/1"));
        assertThat(placing.place(madeOn(43))).isEqualTo(id("M-1/2"));
        assertThat(placing.place(madeOn(44))).isEqualTo(id("M-1/2"));
    }

    @Test
    void aDoubtIsTakenOffOnce() {
        TrialPlacing placing = placing(0);
        placing.add(id("M-1/1"), List.of(DAY.minusDays(15)));
        assertThat(placing.place(madeOn(0))).isEqualTo(id("M-1/2"));
        assertThat(placing.takeProblems())
                .containsExactly(Problem.warning(
                        "determination_id", "import.begun-apart", "T-1", "2026-03-02", 15L, "M-1/1", "M-1/2", 14));
        assertThat(placing.takeProblems()).isEmpty();
    }
}
