package porebench.evidence.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.record.SamplePlans;
import porebench.record.TestPlan;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** How a plan that a person arranged and what asks for a test today are put together, by pencil. */
class ArrangingHandTest {
    /** The days are Sa 28, Su 29, Mo 30 November, Tu 1 to Fr 4 December 2026. */
    private static final LocalDate SATURDAY = LocalDate.of(2026, 11, 28);

    private static final LocalDate MONDAY = LocalDate.of(2026, 11, 30);
    private static final LocalDate TUESDAY = LocalDate.of(2026, 12, 1);

    private static WeekPlan.Wish wish(LocalDate today, int most) {
        return new WeekPlan.Wish(SATURDAY, today, most, 10, OptionalDouble.empty(), List.of(), Set.of());
    }

    private static List<MixId> mixes(String... names) {
        return Arrays.stream(names).map(MixId::new).toList();
    }

    private static List<String> said(List<Arranging.Spot> spots) {
        return spots.stream()
                .map(spot -> spot.mixId().text() + " " + spot.place().day().getDayOfMonth() + " "
                        + spot.place().placing().symbol())
                .toList();
    }

    /** Seven tests over five days: places 0 to 6 times 5 / 7 are days 0, 0, 1, 2, 2, 3, 4. */
    @Test
    void aProposalIsSpreadOverMondayToFriday() {
        assertThat(said(Arranging.of(
                        Optional.empty(), mixes("A", "B", "C", "D", "E", "F", "G", "H"), wish(SATURDAY, 7))))
                .containsExactly(
                        "A 30 proposed",
                        "B 30 proposed",
                        "C 1 proposed",
                        "D 2 proposed",
                        "E 2 proposed",
                        "F 3 proposed",
                        "G 4 proposed");
    }

    @Test
    void aKeptRowKeepsDayPersonTrialsMeterAndOrder() {
        TestPlan kept = SamplePlans.plan(
                SATURDAY,
                SamplePlans.row("C", TUESDAY, "R. Vale", 5, "B-2", TestPlan.Mark.ASKED, "after noon"),
                SamplePlans.row("A", TUESDAY),
                SamplePlans.row("B", SATURDAY));
        List<Arranging.Spot> spots = Arranging.of(Optional.of(kept), mixes("A", "B", "C"), wish(SATURDAY, 10));
        assertThat(said(spots)).containsExactly("B 28 kept", "C 1 kept", "A 1 kept");
        Arranging.Spot first = spots.get(1);
        assertThat(first.place().who()).isEqualTo("R. Vale");
        assertThat(first.place().remark()).isEqualTo("after noon");
        assertThat(first.trials()).contains(5);
        assertThat(first.meter()).contains(new MeterId("B-2"));
        assertThat(spots.get(2).trials()).isEmpty();
    }

    /** N is among the two most pressing now and stands on no plan: first on the first workday left. */
    @Test
    void whatBecamePressingIsNewAndNothingIsDropped() {
        TestPlan kept = SamplePlans.plan(SATURDAY, SamplePlans.row("A", MONDAY), SamplePlans.row("B", TUESDAY));
        assertThat(said(Arranging.of(Optional.of(kept), mixes("N", "A", "B"), wish(SATURDAY, 2))))
                .containsExactly("N 30 new", "A 30 kept", "B 1 kept");
        assertThat(said(Arranging.of(Optional.of(kept), mixes("N", "A", "B"), wish(TUESDAY, 2))))
                .containsExactly("A 30 kept", "N 1 new", "B 1 kept");
    }

    /** Two places, both taken by A and B: what found no room before is not new. */
    @Test
    void whatFoundNoRoomIsNotNew() {
        TestPlan kept = SamplePlans.plan(SATURDAY, SamplePlans.row("A", MONDAY), SamplePlans.row("B", TUESDAY));
        assertThat(said(Arranging.of(Optional.of(kept), mixes("A", "B", "C"), wish(SATURDAY, 2))))
                .containsExactly("A 30 kept", "B 1 kept");
    }

    @Test
    void whatAsksNoMoreAndWhatWasPutByHandStay() {
        TestPlan kept = SamplePlans.plan(
                SATURDAY,
                SamplePlans.row("A", MONDAY),
                SamplePlans.row("W", MONDAY, "", 3, "B-1", TestPlan.Mark.BY_HAND, ""));
        assertThat(said(Arranging.of(Optional.of(kept), mixes(), wish(SATURDAY, 2))))
                .containsExactly("A 30 kept", "W 30 by-hand");
    }

    @Test
    void whatAPersonLeftOutIsNotAskedForAgainAndStandsLast() {
        TestPlan kept = SamplePlans.plan(
                SATURDAY,
                SamplePlans.row("A", SATURDAY, "", 3, "B-1", TestPlan.Mark.LEFT_OUT, "no stone"),
                SamplePlans.row("B", TUESDAY));
        assertThat(said(Arranging.of(Optional.of(kept), mixes("A", "B"), wish(SATURDAY, 2))))
                .containsExactly("B 1 kept", "A 28 left-out");
    }

    @Test
    void whatIsAskedForBesideAKeptPlanIsByHand() {
        TestPlan kept = SamplePlans.plan(SATURDAY, SamplePlans.row("A", MONDAY));
        WeekPlan.Wish wish = new WeekPlan.Wish(
                SATURDAY, SATURDAY, 1, 10, OptionalDouble.empty(), mixes("X"), Set.copyOf(mixes("A")));
        assertThat(said(Arranging.of(Optional.of(kept), mixes("X"), wish))).containsExactly("X 30 by-hand");
    }

    /** Of a plan that is over all workdays count; on its last days, a weekend, its last one. */
    @ParameterizedTest
    @CsvSource({"2026-11-20, 30 1 2 3 4", "2026-12-02, 2 3 4", "2026-12-04, 4", "2026-12-05, 30 1 2 3 4"})
    void daysThatAreOverTakeNoMore(LocalDate today, String days) {
        assertThat(Arranging.daysLeft(wish(today, 1)))
                .extracting(day -> Integer.toString(day.getDayOfMonth()))
                .containsExactly(days.split(" "));
    }

    /** From Monday to Sunday: on Saturday no workday is left. */
    @Test
    void withoutAWorkdayLeftTheLastDayTakesIt() {
        WeekPlan.Wish wish =
                new WeekPlan.Wish(MONDAY, MONDAY.plusDays(5), 1, 10, OptionalDouble.empty(), List.of(), Set.of());
        assertThat(Arranging.daysLeft(wish)).containsExactly(MONDAY.plusDays(6));
    }
}
