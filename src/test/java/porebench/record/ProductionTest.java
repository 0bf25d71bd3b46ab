package porebench.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.record.book.Wording;
import porebench.store.Books;

/** What may be said of a spell of production. */
class ProductionTest {
    private static final LocalDate MAR_2 = LocalDate.of(2026, 3, 2);
    private static final LocalDate MAR_8 = LocalDate.of(2026, 3, 8);

    private static List<String> wrong(Production made) {
        return Books.codes(made.check(MAR_8));
    }

    @Test
    void aSpellMayEndTodayAndBeOfOneDay() {
        assertThat(wrong(SampleProduction.days("p", "M-1", MAR_2, MAR_8, 7))).isEmpty();
        assertThat(wrong(SampleProduction.days("p", "M-1", MAR_8, MAR_8, 1))).isEmpty();
        assertThat(wrong(SampleProduction.days("p", "M-1", MAR_2, MAR_8, 0))).isEmpty();
        assertThat(wrong(SampleProduction.days("p", "M-1", MAR_2, MAR_8.plusDays(1), 7)))
                .containsExactly("production.to-come");
        assertThat(wrong(SampleProduction.days("p", "M-1", MAR_8, MAR_2, 1))).containsExactly("production.ends-before");
    }

    /** From 2 to 8 March, both with it, are seven days. */
    @Test
    void noMoreDaysOfProductionThanTheSpellHas() {
        assertThat(SampleProduction.days("p", "M-1", MAR_2, MAR_8, 7).days()).isEqualTo(7);
        assertThat(wrong(SampleProduction.days("p", "M-1", MAR_2, MAR_8, 8))).containsExactly("production.many-days");
    }

    @Test
    void itStatesDaysOrConcreteAndTheConcreteOnce() {
        Production days = SampleProduction.days("p", "M-1", MAR_2, MAR_8, 5);
        Production bare = SampleProduction.with(
                SampleProduction.volume("p", "M-1", MAR_2, MAR_8, "1"),
                Optional.of(7),
                Optional.empty(),
                Optional.empty());
        assertThat(wrong(bare)).as("loads alone").containsExactly("production.no-amount");
        assertThat(bare.check(MAR_8)).allMatch(problem -> problem.kind() == Problem.Kind.NOT_YET);
        assertThat(wrong(SampleProduction.volume("p", "M-1", MAR_2, MAR_8, "0")))
                .isEmpty();
        assertThat(wrong(SampleProduction.mass("p", "M-1", MAR_2, MAR_8, "3"))).isEmpty();
        assertThat(wrong(SampleProduction.with(days, Optional.empty(), Optional.of("40"), Optional.of("96"))))
                .containsExactly("production.two-amounts");
    }

    /** Both days belong to a spell: the next one begins the day after. */
    @ParameterizedTest
    @CsvSource({
        "2026-03-09, 2026-03-12, false",
        "2026-03-08, 2026-03-12, true",
        "2026-02-20, 2026-03-01, false",
        "2026-02-20, 2026-03-02, true",
        "2026-02-20, 2026-03-12, true",
        "2026-03-04, 2026-03-05, true"
    })
    void spellsOfAMixShareNoDay(LocalDate first, LocalDate last, boolean overlaps) {
        Production one = SampleProduction.days("a", "M-1", MAR_2, MAR_8, 5);
        Production other = SampleProduction.days("b", "M-1", first, last, 1);
        assertThat(one.overlaps(other)).isEqualTo(overlaps);
        assertThat(other.overlaps(one)).isEqualTo(overlaps);
        assertThat(one.overlaps(SampleProduction.days("b", "M-2", first, last, 1)))
                .isFalse();
        assertThat(one.overlaps(SampleProduction.days("a", "M-1", first, last, 1)))
                .as("a correction of itself")
                .isFalse();
    }

    @Test
    void theFirstSpellInTheWayIsNamed() {
        Production made = SampleProduction.days("c", "M-1", MAR_2, MAR_8, 5);
        List<Production> others = List.of(
                SampleProduction.days("b", "M-1", MAR_8, MAR_8, 1), SampleProduction.days("a", "M-1", MAR_2, MAR_2, 1));
        assertThat(made.checkBeside(others).map(ProblemText.in(Locale.ENGLISH)::say))
                .contains("Production a of mix M-1 already holds 2026-03-02 to 2026-03-02: no day may count "
                        + "twice. Correct the days.");
        assertThat(made.checkBeside(others.subList(0, 0))).isEmpty();
    }

    @Test
    void itsWordsAreAsThoseOfOtherRecords() {
        Production made = SampleProduction.days("p".repeat(101), "M-1", MAR_2, MAR_8, 5);
        assertThat(Books.codes(Wording.check(made))).containsExactly("text.too-long");
    }
}
