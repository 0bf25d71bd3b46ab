package porebench.record.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Source;
import porebench.record.SourceStep;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.SourceId;

/** What a new version of a source may be. */
class SourceGateTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);
    private static final Stamp STAMP = new Stamp("M. Ash", Instant.EPOCH, "kept");

    private static Source stone(String ledge, String density, String absorption) {
        return stone(Role.COARSE, ledge, density, absorption);
    }

    private static Source stone(Role role, String ledge, String density, String absorption) {
        return new Source(
                new SourceId("S-9"),
                "Stone",
                role,
                "Quarry",
                ledge,
                Optional.of(new BigDecimal(density)),
                Optional.of(new BigDecimal(absorption)),
                "");
    }

    private static final Source FOUR = stone("ledge 4", "2.74", "1.2");
    private static final Source FIVE = stone("ledge 5", "2.71", "1.6");

    private static SourceStory story(Source... versions) {
        List<Version<Source>> all = new ArrayList<>();
        for (Source version : versions) {
            all.add(new Version<>(version, all.size() + 1, STAMP));
        }
        return SourceStory.of(all);
    }

    /** Returns what is said, an error with an exclamation mark before it. */
    private static List<String> said(Source next, Source... before) {
        return SourceGate.check(story(before), next, TODAY).stream()
                .map(problem -> (problem.isError() ? "!" : "") + problem.field() + " " + problem.code())
                .toList();
    }

    private static Source as(Source source, SourceStep step, String day, String reason) {
        return source.as(
                Optional.of(step),
                Optional.of(day).filter(text -> !text.isEmpty()).map(LocalDate::parse),
                Optional.of(reason).filter(text -> !text.isEmpty()));
    }

    @Test
    void anotherStoneWithoutAStepIsRefusedAndAnotherNameIsNot() {
        assertThat(said(FIVE, FOUR)).containsExactly("!step source.step-wanting");
        Source renamed = new Source(
                FOUR.id(),
                "Other name",
                FOUR.role(),
                FOUR.place(),
                FOUR.ledge(),
                Optional.of(new BigDecimal("2.740")),
                FOUR.absorptionPercent(),
                "washed");
        assertThat(said(renamed, FOUR)).isEmpty();
        assertThat(said(renamed.as(Optional.empty(), Optional.of(TODAY), Optional.empty()), FOUR))
                .containsExactly("!step source.step-wanting");
        assertThat(said(renamed.as(Optional.empty(), Optional.empty(), Optional.of("why")), FOUR))
                .containsExactly("!step source.step-wanting");
    }

    @Test
    void aChangeSaysItsDayAndWhy() {
        assertThat(said(as(FIVE, SourceStep.CHANGED, "2026-11-09", "worked out"), FOUR))
                .isEmpty();
        List<Problem> bare = SourceGate.check(story(FOUR), as(FIVE, SourceStep.CHANGED, "", ""), TODAY);
        assertThat(bare).extracting(Problem::code).containsExactly("source.reason-wanting", "source.date-wanting");
        assertThat(bare).allMatch(Problem::isError).allMatch(one -> one.kind() == Problem.Kind.NOT_YET);
    }

    @Test
    void aChangeThatNamesNothingNewIsDoubted() {
        assertThat(said(as(stone("ledge 4", "2.71", "1.6"), SourceStep.CHANGED, "2026-11-09", "new lot"), FOUR))
                .containsExactly("ledge source.change-unnamed");
    }

    /** Today is 20 November 2026: twelve months ahead is 20 November 2027, twelve back 20 November 2025. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2025-11-19|changedOn source.change-long-ago",
                "2025-11-20|",
                "2026-11-20|",
                "2026-11-21|changedOn source.change-to-come",
                "2027-11-20|changedOn source.change-to-come",
                "2027-11-21|!changedOn source.change-too-far",
            })
    void theDayOfAChangeIsNeitherFarAheadNorLongAgo(String day, String code) {
        assertThat(said(as(FIVE, SourceStep.CHANGED, day, "worked out"), FOUR))
                .isEqualTo(code == null ? List.of() : List.of(code));
    }

    /** The stone of ledge 5 began on 9 November: the next begins on the 10th at the earliest. */
    @ParameterizedTest
    @CsvSource({"2026-11-08, true", "2026-11-09, true", "2026-11-10, false"})
    void aChangeComesAfterTheOneBefore(String day, boolean isRefused) {
        Source five = as(FIVE, SourceStep.CHANGED, "2026-11-09", "worked out");
        Source six = as(stone("ledge 6", "2.70", "1.5"), SourceStep.CHANGED, day, "worked out too");
        assertThat(said(six, FOUR, five))
                .isEqualTo(isRefused ? List.of("!changedOn source.change-not-after") : List.of());
    }

    /** What was exported says the step of the version that is there: with other figures it is no second one. */
    @Test
    void theStepOfTheVersionBeforeIsNotDoneAgain() {
        Source five = as(FIVE, SourceStep.CHANGED, "2026-11-09", "worked out");
        assertThat(said(
                        as(stone("ledge 6", "2.70", "1.5"), SourceStep.CHANGED, "2026-11-09", "worked out"),
                        FOUR,
                        five))
                .containsExactly("!step source.step-of-before");
        Source back = as(FOUR, SourceStep.WITHDRAWN, "", "a mistake");
        assertThat(said(back, FOUR, five, back)).containsExactly("!step source.step-of-before");
        Source corrected = as(FOUR, SourceStep.CORRECTED, "", "mistyped");
        assertThat(said(corrected, FOUR, corrected)).isEmpty();
        assertThat(said(as(stone("ledge 4", "2.75", "1.2"), SourceStep.CORRECTED, "", "mistyped"), FOUR, corrected))
                .containsExactly("!step source.step-of-before");
    }

    @Test
    void aCorrectionSaysWhyAndIsDoubtedWhereItLooksLikeAnotherStone() {
        assertThat(said(as(stone("ledge 4", "2.75", "1.3"), SourceStep.CORRECTED, "", ""), FOUR))
                .containsExactly("!reason source.reason-wanting");
        assertThat(said(as(FIVE, SourceStep.CORRECTED, "", "mistyped"), FOUR))
                .containsExactly("ledge source.correction-of-words");
        assertThat(said(as(stone(Role.FINE, "ledge 4", "2.74", "1.2"), SourceStep.CORRECTED, "", "mistyped"), FOUR))
                .containsExactly("role source.correction-of-role");
        Source unnamed = stone("", "2.74", "1.2");
        assertThat(said(as(FOUR, SourceStep.CORRECTED, "", "was left out"), unnamed))
                .isEmpty();
    }

    /** Coarse: 0.032 and 0.41 %. Fine: 0.056 and 0.66 %. At the limit there is no doubt yet. */
    @ParameterizedTest
    @CsvSource({
        "COARSE, 2.772, 1.61, false, false",
        "COARSE, 2.773, 1.62, true, true",
        "COARSE, 2.707, 0.78, true, true",
        "FINE, 2.796, 1.86, false, false",
        "FINE, 2.797, 1.87, true, true",
    })
    void aCorrectionFarFromWhatStoodThereIsDoubted(
            Role role, String density, String absorption, boolean isDensityFar, boolean isAbsorptionFar) {
        List<String> said = said(
                as(stone(role, "ledge 4", density, absorption), SourceStep.CORRECTED, "", "mistyped"),
                stone(role, "ledge 4", "2.74", "1.2"));
        assertThat(said.contains("relativeDensity source.correction-far")).isEqualTo(isDensityFar);
        assertThat(said.contains("absorption source.correction-far")).isEqualTo(isAbsorptionFar);
        assertThat(said).hasSize((isDensityFar ? 1 : 0) + (isAbsorptionFar ? 1 : 0));
    }

    @Test
    void aCorrectedDayKeepsTheOrderOfDays() {
        Source five = as(FIVE, SourceStep.CHANGED, "2026-11-09", "worked out");
        Source six = as(stone("ledge 6", "2.71", "1.6"), SourceStep.CHANGED, "2026-11-16", "worked out too");
        assertThat(said(as(six, SourceStep.CORRECTED, "2026-11-10", "the 10th"), FOUR, five, six))
                .isEmpty();
        assertThat(said(as(six, SourceStep.CORRECTED, "2026-11-09", "the 9th"), FOUR, five, six))
                .containsExactly("!changedOn source.change-not-after");
        assertThat(said(as(FOUR, SourceStep.CORRECTED, "2026-11-20", "worked since"), FOUR))
                .isEmpty();
        assertThat(said(as(FOUR, SourceStep.CORRECTED, "2026-11-21", "worked since"), FOUR))
                .containsExactly("!changedOn source.first-day-to-come");
    }

    @Test
    void aWithdrawalTakesBackAChangeThatIsThereAndItsFigures() {
        Source five = as(FIVE, SourceStep.CHANGED, "2026-11-09", "worked out");
        assertThat(said(as(FOUR, SourceStep.WITHDRAWN, "", "another quarry"), FOUR, five))
                .isEmpty();
        assertThat(said(as(FIVE, SourceStep.WITHDRAWN, "2026-11-09", "another quarry"), FOUR, five))
                .containsExactly("!changedOn source.withdrawal-with-day", "ledge source.withdrawal-other-figures");
        assertThat(said(as(FOUR, SourceStep.WITHDRAWN, "", "another quarry"), FOUR))
                .containsExactly("!step source.nothing-to-withdraw");
        assertThat(SourceGate.beforeTheLastChange(story(FOUR, five))).contains(FOUR);
        assertThat(SourceGate.beforeTheLastChange(story(FOUR))).isEmpty();
    }
}
