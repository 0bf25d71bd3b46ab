package porebench.record.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Role;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.SourceStep;
import porebench.record.book.Draft;
import porebench.record.book.Stamp;
import porebench.record.book.Version;

/** The stones of a source, told by hand: day by day, version by version. */
class SourceStoryHandTest {
    private static final LocalDate NOV_9 = LocalDate.of(2026, 11, 9);
    private static final Stamp STAMP = new Stamp("M. Ash", Instant.parse("2026-11-20T08:00:00Z"), "the stamp's reason");

    private static Source ledge(String ledge) {
        return Samples.source("S-9", Role.COARSE, ledge);
    }

    private static SourceStory story(Source... versions) {
        List<Version<Source>> all = new ArrayList<>();
        for (Source version : versions) {
            all.add(new Version<>(version, all.size() + 1, STAMP));
        }
        return SourceStory.of(all);
    }

    private static List<Integer> stonesOfVersions(SourceStory story) {
        return story.versions().stream()
                .map(version -> story.of(version.number()).orElseThrow().stone())
                .toList();
    }

    /** A change of 9 November: the 8th is still the old stone, the 9th is the new one. */
    @ParameterizedTest
    @CsvSource({"2026-11-08, 1", "2026-11-09, 2", "2026-11-10, 2", "1999-01-01, 1", "2199-12-31, 2"})
    void aChangeBeginsOnItsDay(LocalDate day, int period) {
        SourceStory story = story(ledge("4"), SampleSources.changed(ledge("5"), NOV_9));
        assertThat(story.on(day).number()).isEqualTo(period);
        assertThat(story.on(day).newest().value().ledge()).isEqualTo(period == 1 ? "4" : "5");
    }

    /** Of a trial that names the version from before, its day says which stone it was made of. */
    @ParameterizedTest
    @CsvSource({"2026-11-08, 1", "2026-11-09, 2", "2026-11-12, 2"})
    void aTrialMadeAfterTheChangeButBeforeItWasWrittenDownIsOfTheNewStone(LocalDate day, int stone) {
        SourceStory story = story(ledge("4"), SampleSources.changed(ledge("5"), NOV_9));
        assertThat(story.stones(1, Set.of(day))).containsExactly(stone);
        assertThat(story.stones(2, Set.of(day))).as("named as new").containsExactly(2);
    }

    @Test
    void trialsBeforeAndAfterAChangeAreOfTwoStonesAndWithoutDaysTheVersionSays() {
        SourceStory story = story(ledge("4"), SampleSources.changed(ledge("5"), NOV_9));
        assertThat(story.stones(1, Set.of(NOV_9.minusDays(1), NOV_9))).containsExactlyInAnyOrder(1, 2);
        assertThat(story.stones(1, Set.of())).containsExactly(1);
        assertThat(story.stones(3, Set.of())).isEmpty();
        assertThat(story.stones(3, Set.of(NOV_9))).isEmpty();
    }

    @Test
    void aChangeOfTheSameFiguresIsAnotherStoneAndACorrectionOfAllIsTheSame() {
        assertThat(stonesOfVersions(story(ledge("4"), SampleSources.changed(ledge("4"), NOV_9))))
                .containsExactly(1, 2);
        SourceStory corrected = story(ledge("4"), SampleSources.corrected(Samples.bareSource("S-9", Role.FINE)));
        assertThat(stonesOfVersions(corrected)).containsExactly(1, 1);
        assertThat(corrected.last().newest().number()).isEqualTo(2);
        assertThat(corrected.last().begun().number()).isEqualTo(1);
        assertThat(corrected.saidFor(2)).isEqualTo(1);
    }

    /** Versions 1 and 4 are the stone of ledge 4; versions 2 and 3 said another one by mistake. */
    @Test
    void aWithdrawnChangeNeverWas() {
        SourceStory story = story(
                ledge("4"),
                SampleSources.changed(ledge("5"), NOV_9),
                SampleSources.corrected(ledge("5a")),
                SampleSources.withdrawn(ledge("4")));
        assertThat(story.periods()).hasSize(1);
        assertThat(stonesOfVersions(story)).containsExactly(1, 1, 1, 1);
        assertThat(story.on(NOV_9).newest().value().ledge()).isEqualTo("4");
        assertThat(story.withdrawals()).singleElement().satisfies(one -> {
            assertThat(one.by().number()).isEqualTo(4);
            assertThat(one.period().from()).contains(NOV_9);
            assertThat(one.period().newest().value().ledge()).isEqualTo("5a");
        });
        assertThat(List.of(story.saidFor(2), story.saidFor(3), story.saidFor(4)))
                .containsExactly(1, 1, 1);
    }

    @Test
    void onlyTheLastChangeIsWithdrawnAndTheNextCountsOn() {
        LocalDate dec = LocalDate.of(2026, 12, 1);
        SourceStory story = story(
                ledge("3"),
                SampleSources.changed(ledge("4"), NOV_9),
                SampleSources.changed(ledge("5"), dec),
                SampleSources.withdrawn(ledge("4")),
                SampleSources.changed(ledge("6"), dec.plusDays(1)));
        assertThat(stonesOfVersions(story)).containsExactly(1, 2, 2, 2, 3);
        assertThat(story.on(dec).newest().value().ledge()).isEqualTo("4");
        assertThat(story.on(dec.plusDays(1)).newest().value().ledge()).isEqualTo("6");
        assertThat(story.saidFor(4)).isEqualTo(2);
        assertThat(story.withdrawals()).hasSize(1);
    }

    @Test
    void aWithdrawalWithNothingToWithdrawIsNoMoreThanACorrection() {
        SourceStory story = story(ledge("4"), SampleSources.withdrawn(ledge("5")));
        assertThat(stonesOfVersions(story)).containsExactly(1, 1);
        assertThat(story.withdrawals()).isEmpty();
    }

    @Test
    void aCorrectionMovesTheDayOfTheChangeItFollows() {
        Source moved = SampleSources.corrected(ledge("5"))
                .as(Optional.of(SourceStep.CORRECTED), Optional.of(NOV_9.plusDays(3)), Optional.of("12, not 9"));
        SourceStory story = story(
                ledge("4"), SampleSources.changed(ledge("5"), NOV_9), moved, SampleSources.corrected(ledge("5 b")));
        assertThat(story.on(NOV_9.plusDays(2)).number()).isEqualTo(1);
        assertThat(story.on(NOV_9.plusDays(3)).number()).isEqualTo(2);
        assertThat(story.last().from()).contains(NOV_9.plusDays(3));
        assertThat(story.last().why()).isEqualTo("the old one is worked out");
    }

    /** As before versions said what they are: another figure is another stone, whatever the day, and the old figures are the old one. */
    @Test
    void versionsThatSayNothingAreToldByWhatTheyRead() {
        SourceStory story = story(ledge("4"), ledge("5"), ledge("5"), ledge("4"));
        assertThat(stonesOfVersions(story)).containsExactly(1, 2, 2, 1);
        assertThat(story.on(LocalDate.of(1990, 1, 1)).stone()).isEqualTo(1);
        assertThat(story.stones(2, Set.of(NOV_9))).containsExactly(2);
        assertThat(story.saidFor(3)).as("no correction, as ever").isEqualTo(3);
        assertThat(story.periods().get(1).why()).isEqualTo("the stamp's reason");
        assertThat(story.toComeOn(LocalDate.MIN)).isEmpty();
    }

    /** Nobody knows the day of the change from 4 to 5: a trial of version 1 is not taken past it. */
    @Test
    void aDayIsNotReadAcrossAChangeWithoutOne() {
        SourceStory story = story(ledge("4"), ledge("5"), SampleSources.changed(ledge("6"), NOV_9));
        assertThat(story.stones(1, Set.of(NOV_9))).containsExactly(1);
        assertThat(story.stones(2, Set.of(NOV_9))).containsExactly(3);
    }

    @Test
    void theFirstStoneMayStateItsDayAndHoldsBeforeItToo() {
        Source first = ledge("4").as(Optional.empty(), Optional.of(NOV_9), Optional.empty());
        SourceStory story = story(first);
        assertThat(story.last().from()).contains(NOV_9);
        assertThat(story.on(NOV_9.minusYears(1)).number()).isEqualTo(1);
        assertThat(story.toComeOn(NOV_9.minusYears(1))).isEmpty();
    }

    @Test
    void changesToComeAreThoseAfterTheDay() {
        SourceStory story = story(ledge("4"), SampleSources.changed(ledge("5"), NOV_9));
        assertThat(story.toComeOn(NOV_9.minusDays(1))).hasSize(1);
        assertThat(story.toComeOn(NOV_9)).isEmpty();
    }

    @Test
    void aDraftIsToldAsIfItWereKept() {
        SourceStory before = story(ledge("4"));
        Source next = SampleSources.changed(ledge("5"), NOV_9);
        SourceStory after = before.with(new Draft(next, 1), STAMP);
        assertThat(after).isEqualTo(story(ledge("4"), next)).hasSameHashCodeAs(story(ledge("4"), next));
        assertThat(after).isNotEqualTo(before);
        assertThat(after.toString()).contains("ledge=5");
        assertThat(before.periods()).hasSize(1);
    }

    @Test
    void aStoryHasAFirstVersion() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SourceStory.of(List.of()))
                .withMessage("versions must hold the first one, but is empty");
    }
}
