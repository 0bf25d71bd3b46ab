package porebench.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import porebench.method.Problem;
import porebench.quantity.Symbolic;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/**
 * The tests of seven days as a person arranged them. Its first day, any day of the week, is its name.
 *
 * @param from the first day
 * @param rows the tests in their order, those that were left out among them
 */
public record TestPlan(LocalDate from, List<Row> rows) implements Kept {
    /** The first day counts. */
    public static final int DAYS = 7;

    /** More trials of one mix are no week's work. */
    public static final int MOST_TRIALS = 100;

    /** How a mix came on the plan, or why it is not tested. */
    public enum Mark implements Symbolic {
        /** Something asked for its test when the plan was kept. */
        ASKED,
        /** A person put it on the plan. */
        BY_HAND,
        /** It is not tested in these days; the remark says why. */
        LEFT_OUT
    }

    /**
     * The test of one mix.
     *
     * @param mixId the mix
     * @param day the day of the test
     * @param who who makes it, may be blank
     * @param trials how many trials; empty for as many as are worked out
     * @param meter the meter; empty for the one that is proposed
     * @param mark how it came on the plan
     * @param remark anything else; of one that is left out the reason
     */
    public record Row(
            MixId mixId,
            LocalDate day,
            String who,
            Optional<Integer> trials,
            Optional<MeterId> meter,
            Mark mark,
            String remark) {
        /** Returns whether it is tested. */
        public boolean isTested() {
            return mark != Mark.LEFT_OUT;
        }
    }

    public TestPlan {
        rows = List.copyOf(rows);
    }

    /** Returns the last day. */
    public LocalDate until() {
        return from.plusDays(DAYS - 1);
    }

    /** Returns the mixes that stand on it, those left out too. */
    public Set<MixId> mixes() {
        return rows.stream().map(Row::mixId).collect(Collectors.toSet());
    }

    /** Returns the days of a plan. */
    public static List<LocalDate> days(LocalDate from) {
        return IntStream.range(0, DAYS).mapToObj(from::plusDays).toList();
    }

    /**
     * Returns what is wrong with it, under the fields of its rows ({@code rows.0.day}): no test at all, a mix twice, a day of another
     * week, too many trials, left out without a reason.
     */
    public List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        if (rows.isEmpty()) {
            problems.add(Problem.error("rows", "plan.empty", from.toString()).of(Problem.Kind.NOT_YET));
        }
        Set<MixId> seen = new HashSet<>();
        for (int at = 0; at < rows.size(); at++) {
            Row row = rows.get(at);
            String mix = row.mixId().text();
            if (!seen.add(row.mixId())) {
                problems.add(Problem.error(field(at, "mixId"), "plan.mix-twice", mix, from.toString()));
            }
            if (row.day().isBefore(from) || row.day().isAfter(until())) {
                problems.add(Problem.error(
                        field(at, "day"),
                        "plan.day-outside",
                        mix,
                        row.day().toString(),
                        from.toString(),
                        until().toString()));
            }
            if (row.trials().filter(count -> count > MOST_TRIALS).isPresent()) {
                problems.add(Problem.error(
                        field(at, "trials"),
                        "plan.trials-many",
                        mix,
                        row.trials().get(),
                        MOST_TRIALS));
            }
            if (!row.isTested() && row.remark().isBlank()) {
                problems.add(Problem.error(field(at, "remark"), "plan.no-reason", mix)
                        .of(Problem.Kind.NOT_YET));
            }
        }
        return problems;
    }

    /**
     * Returns what it names that nobody knows.
     *
     * @param mixes whether a mix is known
     * @param meters whether a meter is known
     */
    public List<Problem> unknown(Predicate<MixId> mixes, Predicate<MeterId> meters) {
        List<Problem> problems = new ArrayList<>();
        for (int at = 0; at < rows.size(); at++) {
            Row row = rows.get(at);
            if (!mixes.test(row.mixId())) {
                problems.add(Problem.error(
                        field(at, "mixId"),
                        "plan.unknown-mix",
                        from.toString(),
                        row.mixId().text()));
            }
            if (row.meter().filter(meter -> !meters.test(meter)).isPresent()) {
                problems.add(Problem.error(
                        field(at, "meter"),
                        "plan.unknown-meter",
                        from.toString(),
                        row.meter().get().text()));
            }
        }
        return problems;
    }

    private static String field(int at, String name) {
        return "rows." + at + "." + name;
    }

    @Override
    public RecordKind kind() {
        return RecordKind.TEST_PLAN;
    }

    @Override
    public String recordId() {
        return from.toString();
    }
}
