package porebench.print;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import porebench.evidence.FactorState;
import porebench.evidence.paper.PlanSheet;
import porebench.evidence.plan.LoadsAtRisk;
import porebench.evidence.plan.Need;
import porebench.evidence.plan.PlanText;
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

    private static final PlanText TEXT = PlanText.in(Locale.ENGLISH);

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
                new WeekPlan(
                        DAY,
                        DAY.plusDays(6),
                        planned,
                        tests == 0 ? List.of() : List.of(leftOut(title)),
                        tests / 3,
                        fetches),
                tests % 2 == 0 ? Optional.empty() : Optional.of(new PlanSheet.Arranged("R. Vale", 2)),
                planned.stream()
                        .map(test -> new PlanSheet.Said(
                                TEXT.say(test.need()),
                                TEXT.say(test.risk()),
                                test.meter().isEmpty()
                                        ? List.of("No meter can be trusted: " + title)
                                        : List.<String>of()))
                        .toList(),
                unit);
    }

    private static PlannedTest leftOut(String title) {
        return test(20, title, new PlannedTest.Place(DAY, "", PlannedTest.Placing.LEFT_OUT, "no stone left: " + title));
    }

    private static PlannedTest test(int number, String title) {
        PlannedTest.Placing[] placings = PlannedTest.Placing.values();
        return test(
                number,
                title,
                new PlannedTest.Place(
                        DAY.plusDays(number / 6 % 7),
                        number % 3 == 0 ? "J. Perrin-Vale" : "",
                        placings[number % (placings.length - 1)],
                        number % 5 == 0 ? "after the noon delivery" : ""));
    }

    private static LoadsAtRisk risk(int number) {
        LoadsAtRisk.Cause cause = LoadsAtRisk.Cause.values()[number % LoadsAtRisk.Cause.values().length];
        boolean isKnown = cause == LoadsAtRisk.Cause.FORECAST || cause == LoadsAtRisk.Cause.SPREAD;
        return new LoadsAtRisk(
                OptionalDouble.of(120),
                cause,
                isKnown ? OptionalDouble.of(-0.31) : OptionalDouble.empty(),
                cause == LoadsAtRisk.Cause.FORECAST ? 14 : 0,
                isKnown ? OptionalDouble.of(0.0163) : OptionalDouble.empty());
    }

    private static PlannedTest test(int number, String title, PlannedTest.Place place) {
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
                List.of(),
                List.of(),
                place,
                risk(number));
    }
}
