package porebench.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Problem;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** What a plan of a week may say. */
class TestPlanTest {
    private static final LocalDate SATURDAY = LocalDate.of(2026, 11, 28);

    /** Seven days from the 28th of November, a Saturday: the last one is the 4th of December. */
    @ParameterizedTest
    @CsvSource({"2026-11-27, false", "2026-11-28, true", "2026-12-04, true", "2026-12-05, false"})
    void aDayIsOneOfItsSeven(LocalDate day, boolean isIn) {
        TestPlan plan = SamplePlans.plan(SATURDAY, SamplePlans.row("M-1", day));
        assertThat(plan.until()).isEqualTo(LocalDate.of(2026, 12, 4));
        assertThat(TestPlan.days(SATURDAY).contains(day)).isEqualTo(isIn);
        assertThat(plan.check())
                .extracting(Problem::code, Problem::field)
                .isEqualTo(
                        isIn
                                ? List.of()
                                : List.of(org.assertj.core.groups.Tuple.tuple("plan.day-outside", "rows.0.day")));
    }

    @ParameterizedTest
    @CsvSource({"100, 0", "101, 1"})
    void noMoreTrialsThanAHundred(int trials, int problems) {
        TestPlan plan = SamplePlans.plan(
                SATURDAY, SamplePlans.row("M-1", SATURDAY, "", trials, "B-1", TestPlan.Mark.ASKED, ""));
        assertThat(plan.check()).hasSize(problems).allMatch(one -> one.code().equals("plan.trials-many"));
    }

    @Test
    void aMixStandsOnItOnceAndIsLeftOutForAReason() {
        TestPlan plan = SamplePlans.plan(
                SATURDAY,
                SamplePlans.row("M-1", SATURDAY),
                SamplePlans.row("M-2", SATURDAY, "", 3, "B-1", TestPlan.Mark.LEFT_OUT, " "),
                SamplePlans.row("M-3", SATURDAY, "", 3, "B-1", TestPlan.Mark.LEFT_OUT, "no stone left"),
                SamplePlans.row("M-1", SATURDAY.plusDays(1)));
        assertThat(plan.check())
                .extracting(one -> one.code() + " " + one.field())
                .containsExactly("plan.no-reason rows.1.remark", "plan.mix-twice rows.3.mixId");
    }

    /** Nothing of it could stand in a file. */
    @Test
    void anEmptyPlanIsNotKept() {
        assertThat(SamplePlans.plan(SATURDAY).check()).extracting(Problem::code).containsExactly("plan.empty");
    }

    @Test
    void whatNobodyKnowsIsNamed() {
        TestPlan plan = new TestPlan(
                SATURDAY,
                List.of(
                        SamplePlans.row("M-1", SATURDAY, "", 3, "B-1", TestPlan.Mark.ASKED, ""),
                        SamplePlans.row("M-9", SATURDAY, "", 3, "B-9", TestPlan.Mark.ASKED, ""),
                        new TestPlan.Row(
                                new MixId("M-2"),
                                SATURDAY,
                                "",
                                Optional.empty(),
                                Optional.empty(),
                                TestPlan.Mark.BY_HAND,
                                "")));
        assertThat(plan.unknown(mix -> !mix.text().equals("M-9"), new MeterId("B-1")::equals))
                .extracting(one -> one.code() + " " + one.field())
                .containsExactly("plan.unknown-mix rows.1.mixId", "plan.unknown-meter rows.1.meter");
    }
}
