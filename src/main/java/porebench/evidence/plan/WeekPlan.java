package porebench.evidence.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import porebench.evidence.RegisterRow;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Role;
import porebench.method.sample.WeighOut;
import porebench.quantity.Mass;
import porebench.quantity.Require;
import porebench.record.CardPrint;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/**
 * The tests of some days, the most pressing first: mixes whose factor may no longer be used while cards of it are out, then those whose
 * factor no longer holds, those that never had one, and those to be checked again soon; within each, what waits longest or is due first.
 *
 * <p>A mix whose factor was withdrawn is not on the plan unless a person puts it there: somebody decided that it needs none.
 *
 * @param from the first day
 * @param until the last day
 * @param tests the tests, the most pressing first
 * @param left how many mixes ask for a test and found no room
 * @param fetches what to fetch of each source for all tests together, with the spare, in the order of the sources' names
 */
public record WeekPlan(LocalDate from, LocalDate until, List<PlannedTest> tests, int left, List<Fetch> fetches) {
    /** The first day counts. */
    public static final int DAYS = 7;

    public WeekPlan {
        tests = List.copyOf(tests);
        fetches = List.copyOf(fetches);
    }

    /**
     * What to fetch of one source.
     *
     * @param source the source
     * @param name what the first of the mixes calls it
     * @param role fine or coarse
     * @param total the mass in the moisture state of the stockpile, with the spare
     * @param tests for how many tests
     */
    public record Fetch(String source, String name, Role role, Mass total, int tests) {
        private Fetch and(Fetch other) {
            return new Fetch(source, name, role, total.plus(other.total), tests + other.tests);
        }
    }

    /**
     * What a person wants of a plan.
     *
     * @param from the first day
     * @param most how many mixes there is room for, at least 1
     * @param sparePercent what is fetched beyond the trials, in %, at least 0
     * @param added mixes that are to be on it whatever their state, in the order wanted
     * @param without mixes that are not to be on it
     */
    public record Wish(LocalDate from, int most, double sparePercent, List<MixId> added, Set<MixId> without) {
        public Wish {
            Require.atLeast("most", most, 1);
            Require.atLeastZero("sparePercent", sparePercent);
            added = List.copyOf(added);
            without = Set.copyOf(without);
        }

        /** Returns the last day. */
        public LocalDate until() {
            return from.plusDays(DAYS - 1);
        }
    }

    /**
     * Plans the tests. Only mixes that ask for a test, or that a person added, are read.
     *
     * @param book what the lab book holds
     * @param standing how its mixes stand
     */
    public static WeekPlan of(Records book, LaboratoryStanding standing, Wish wish) {
        Set<MixId> byHand = new HashSet<>(wish.added());
        List<RegisterRow> asking = standing.rows(wish.until()).stream()
                .filter(row -> byHand.contains(row.mixId()) || Need.asksFor(row.state()))
                .filter(row -> !wish.without().contains(row.mixId()))
                .toList();
        Map<MixId, Integer> cards = cards(book, asking);
        List<RegisterRow> ranked = asking.stream()
                .sorted(Comparator.comparing((RegisterRow row) -> !byHand.contains(row.mixId()))
                        .thenComparing(row ->
                                byHand.contains(row.mixId()) ? wish.added().indexOf(row.mixId()) : 0)
                        .thenComparing(row -> need(row, cards, byHand))
                        .thenComparing(WeekPlan::waitsSince)
                        .thenComparing(RegisterRow::mixId))
                .toList();
        List<RegisterRow> room = ranked.subList(0, Math.min(ranked.size(), wish.most()));
        Map<MixId, PlannedTest> planned = new HashMap<>();
        Map<MixId, RegisterRow> rows = room.stream().collect(Collectors.toMap(RegisterRow::mixId, row -> row));
        standing.each(room.stream().map(RegisterRow::mixId).toList(), evidence -> {
            MixId mix = evidence.mix().value().id();
            RegisterRow row = Objects.requireNonNull(rows.get(mix));
            planned.put(
                    mix,
                    new TestPlanner(evidence, standing.scatter(), wish)
                            .plan(row, need(row, cards, byHand), cards.getOrDefault(mix, 0)));
        });
        List<PlannedTest> tests = room.stream()
                .flatMap(row -> Optional.ofNullable(planned.get(row.mixId())).stream())
                .toList();
        return new WeekPlan(wish.from(), wish.until(), tests, ranked.size() - room.size(), fetches(tests));
    }

    private static Need need(RegisterRow row, Map<MixId, Integer> cards, Set<MixId> byHand) {
        return Need.of(row.state(), cards.getOrDefault(row.mixId(), 0), byHand.contains(row.mixId()));
    }

    /** Returns since when a mix waits, or until when its factor holds; what never had a factor comes by its name. */
    private static LocalDate waitsSince(RegisterRow row) {
        return row.uncoveredSince().or(row::recheckBy).orElse(LocalDate.MIN);
    }

    /** Returns how many cards of the newest revision that was printed were handed out on paper, by mix. */
    private static Map<MixId, Integer> cards(Records book, List<RegisterRow> rows) {
        Map<MixId, Integer> newest = new HashMap<>();
        Map<MixId, Integer> cards = new HashMap<>();
        List<CardPrint> prints = new ArrayList<>();
        book
                .latestOf(
                        Belonging.PRINTS_OF_MIX,
                        rows.stream().map(row -> row.mixId().text()).toList())
                .stream()
                .map(Version::value)
                .filter(print -> print.way() == CardPrint.Way.HANDED_OUT)
                .forEach(prints::add);
        prints.forEach(print -> newest.merge(print.mixId(), print.revision(), Math::max));
        prints.stream()
                .filter(print -> Integer.valueOf(print.revision()).equals(newest.get(print.mixId())))
                .forEach(print -> cards.merge(print.mixId(), 1, Integer::sum));
        return cards;
    }

    private static List<Fetch> fetches(List<PlannedTest> tests) {
        Map<String, Fetch> fetches = new TreeMap<>();
        for (PlannedTest test : tests) {
            Map<String, Fetch> own = new TreeMap<>();
            test.weighOut()
                    .map(WeighOut::lines)
                    .orElse(List.of())
                    .forEach(line -> own.merge(
                            line.source(),
                            new Fetch(line.source(), line.name(), line.role(), line.total(), 1),
                            (one, other) -> new Fetch(
                                    one.source(),
                                    one.name(),
                                    one.role(),
                                    one.total().plus(other.total()),
                                    1)));
            own.forEach((source, fetch) -> fetches.merge(source, fetch, Fetch::and));
        }
        return List.copyOf(fetches.values());
    }
}
