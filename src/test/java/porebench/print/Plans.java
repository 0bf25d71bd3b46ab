package porebench.print;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.evidence.FactorState;
import porebench.evidence.paper.PlanSheet;
import porebench.evidence.plan.Need;
import porebench.evidence.plan.PlannedTest;
import porebench.evidence.plan.WeekPlan;
import porebench.method.Role;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.record.Laboratory;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** Plans of a week to be printed. */
public final class Plans {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 28);

    private Plans() {}

    /** Returns the plan of an invented laboratory with a test for each reason, some of them several times. */
    public static PlanSheet usual(int tests) {
        return of(Calibrations.Laboratories.USUAL, tests, "Bridge deck 40, 20 mm granite", MassUnit.KILOGRAM);
    }

    public static PlanSheet everythingLong(int tests) {
        return of(Calibrations.Laboratories.LONG, tests, Cards.LONG_TITLE, MassUnit.POUND);
    }

    public static PlanSheet training() {
        return of(Calibrations.Laboratories.TRAINING, 30, "Kerb 30", MassUnit.KILOGRAM);
    }

    public static PlanSheet empty() {
        return of(Calibrations.Laboratories.USUAL, 0, "", MassUnit.KILOGRAM);
    }

    private static PlanSheet of(Laboratory laboratory, int tests, String title, MassUnit unit) {
        List<PlannedTest> planned = IntStream.range(0, tests)
                .mapToObj(number -> test(number, title))
                .toList();
        List<WeekPlan.Fetch> fetches = IntStream.range(0, Math.min(tests, 12))
                .mapToObj(number -> new WeekPlan.Fetch("S-0" + number, title, Role.COARSE, new Mass(25.0401), 2))
                .toList();
        return new PlanSheet(
                Optional.of(laboratory),
                new WeekPlan(DAY, DAY.plusDays(6), planned, tests / 3, fetches),
                planned.stream()
                        .map(test -> test.meter().isEmpty()
                                ? List.of("No meter can be trusted: " + title)
                                : List.<String>of())
                        .toList(),
                unit);
    }

    private static PlannedTest test(int number, String title) {
        return new PlannedTest(
                new MixId("HG-" + (101 + number)),
                title,
                "North plant",
                Need.values()[number % Need.values().length],
                FactorState.LAPSED,
                Optional.of(DAY.minusDays(number)),
                Optional.empty(),
                number % 2 == 0 ? 3 : 0,
                number % 3 == 0 ? Optional.of(new DeterminationId("HG-101/2")) : Optional.empty(),
                3,
                number % 4 == 0 ? Optional.empty() : Optional.of(new MeterId("B-2")),
                Optional.empty(),
                List.of());
    }
}
