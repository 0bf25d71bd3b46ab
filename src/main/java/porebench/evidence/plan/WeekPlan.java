package porebench.evidence.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import porebench.evidence.Moments;
import porebench.evidence.RegisterRow;
import porebench.evidence.hold.LaboratoryHolds;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Role;
import porebench.method.RoundingRule;
import porebench.method.sample.WeighOut;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Require;
import porebench.record.CardPrint;
import porebench.record.TestPlan;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/**
 * The tests of seven days, arranged by day: as a person keeps them and what became pressing since, or as they are proposed.
 *
 * <p>Mixes whose factor may no longer be used while cards of it are out are the most pressing, then those whose factor no longer holds,
 * those that never had one, those to be checked again soon, and
 * those of which field readings and densities ask for a recheck. Within each the mix comes first of which most loads are likely judged
 * wrongly in a week, those of which that is not known after those of which it is; else what waits longest or is due first.
 *
 * <p>A mix whose factor was withdrawn is not on the plan unless a person puts it there: somebody decided that it needs none.
 *
 * @param from the first day
 * @param until the last day
 * @param tests the tests by day, within a day in the order in which they are made
 * @param leftOut what a person left out, and why
 * @param left how many mixes ask for a test and stand nowhere on it
 * @param fetches what to fetch of each source for all tests together, with the spare, in the order of the sources' names
 */
public record WeekPlan(
        LocalDate from,
        LocalDate until,
        List<PlannedTest> tests,
        List<PlannedTest> leftOut,
        int left,
        List<Fetch> fetches) {
    /** Of so many trials a forecast determination would be: it changes nothing of the forecast's middle. */
    static final int FORECAST_TRIALS = 3;

    public WeekPlan {
        tests = List.copyOf(tests);
        leftOut = List.copyOf(leftOut);
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
        /** Returns the mass in tenths of a unit, never less than it is: common practice, no source. */
        public BigDecimal upwards(MassUnit unit) {
            return RoundingRule.withoutNoise(total.in(unit)).setScale(1, RoundingMode.CEILING);
        }

        private Fetch and(Fetch other) {
            return new Fetch(source, name, role, total.plus(other.total), tests + other.tests);
        }
    }

    /**
     * What a person wants of a plan.
     *
     * @param from the first day
     * @param today the day on which it is looked at
     * @param most for how many mixes there is room, at least 1
     * @param sparePercent what is fetched beyond the trials, in %, at least 0
     * @param loadSpreadPercent how the true air differs from load to load, as a standard deviation in % air; empty where nobody said
     * @param added mixes that are to be on it whatever their state, in the order wanted
     * @param without mixes that are not to be on it
     */
    public record Wish(
            LocalDate from,
            LocalDate today,
            int most,
            double sparePercent,
            OptionalDouble loadSpreadPercent,
            List<MixId> added,
            Set<MixId> without) {
        public Wish {
            Require.atLeast("most", most, 1);
            Require.atLeastZero("sparePercent", sparePercent);
            loadSpreadPercent.ifPresent(spread -> Require.atLeastZero("loadSpreadPercent", spread));
            added = List.copyOf(added);
            without = Set.copyOf(without);
        }

        /** Returns the last day. */
        public LocalDate until() {
            return from.plusDays(TestPlan.DAYS - 1);
        }
    }

    /** A mix with what makes it more or less pressing. */
    private record Asking(RegisterRow row, Optional<Need> need, int cardsOut, LoadsAtRisk risk) {
        MixId mixId() {
            return row.mixId();
        }
    }

    /**
     * Plans the tests. Read are only the mixes that stand on the plan, and those that ask for a test and whose loads are known.
     *
     * @param book what the lab book holds
     * @param standing how its mixes stand
     * @param kept the plan as a person arranged it; empty where it is proposed
     * @param loads how many loads are made a week
     */
    public static WeekPlan of(
            Records book, LaboratoryStanding standing, Wish wish, Optional<TestPlan> kept, LoadsAWeek loads) {
        Set<MixId> there = kept.map(TestPlan::mixes).orElse(Set.of());
        Map<MixId, Asking> asking = asking(book, standing, wish, there, loads);
        List<MixId> ranked = asking.values().stream()
                .filter(one -> one.need().isPresent() || wish.added().contains(one.mixId()))
                .filter(one -> !wish.without().contains(one.mixId()))
                .sorted(Comparator.comparing((Asking one) -> !wish.added().contains(one.mixId()))
                        .thenComparing(one -> Math.max(0, wish.added().indexOf(one.mixId())))
                        .thenComparing(one -> one.need().orElse(Need.BY_HAND))
                        .thenComparing(one -> -one.risk().rank().orElse(-1))
                        .thenComparing(one -> waitsSince(one.row()))
                        .thenComparing(Asking::mixId))
                .map(Asking::mixId)
                .toList();
        List<Arranging.Spot> spots = Arranging.of(kept, ranked, wish).stream()
                .filter(spot -> asking.containsKey(spot.mixId()))
                .toList();
        Map<MixId, PlannedTest> planned = planned(standing, wish, spots, asking);
        List<PlannedTest> all = spots.stream()
                .flatMap(spot -> Optional.ofNullable(planned.get(spot.mixId())).stream())
                .toList();
        List<PlannedTest> tests =
                all.stream().filter(test -> test.place().isTested()).toList();
        return new WeekPlan(
                wish.from(),
                wish.until(),
                tests,
                all.stream().filter(test -> !test.place().isTested()).toList(),
                (int) ranked.stream().filter(mix -> !planned.containsKey(mix)).count(),
                fetches(tests));
    }

    private static Map<MixId, Asking> asking(
            Records book, LaboratoryStanding standing, Wish wish, Set<MixId> kept, LoadsAWeek loads) {
        List<RegisterRow> all = standing.rows(wish.until());
        LaboratoryHolds holds = LaboratoryHolds.of(book, standing, all, Moments.endOf(wish.today()));
        List<RegisterRow> rows = all.stream()
                .filter(row -> Need.of(row.state(), 0).isPresent()
                        || holds.of(row.mixId()).isPresent()
                        || kept.contains(row.mixId())
                        || wish.added().contains(row.mixId()))
                .toList();
        Map<MixId, Integer> cards = cards(book, rows);
        Map<MixId, LoadsAtRisk> risks = RiskOfMixes.of(
                book,
                standing,
                wish,
                rows,
                loads.of(
                        rows.stream().map(RegisterRow::mixId).toList(),
                        wish.until().isBefore(wish.today()) ? wish.until() : wish.today()));
        Map<MixId, Asking> asking = new LinkedHashMap<>();
        for (RegisterRow row : rows) {
            int out = cards.getOrDefault(row.mixId(), 0);
            asking.put(
                    row.mixId(),
                    new Asking(row, need(row, out, holds), out, risks.getOrDefault(row.mixId(), LoadsAtRisk.UNKNOWN)));
        }
        return asking;
    }

    private static Optional<Need> need(RegisterRow row, int cardsOut, LaboratoryHolds holds) {
        return Need.of(row.state(), cardsOut).or(() -> holds.of(row.mixId()).map(any -> Need.RECHECK_G));
    }

    private static Map<MixId, PlannedTest> planned(
            LaboratoryStanding standing, Wish wish, List<Arranging.Spot> spots, Map<MixId, Asking> asking) {
        Map<MixId, Arranging.Spot> byMix =
                spots.stream().collect(Collectors.toMap(Arranging.Spot::mixId, spot -> spot));
        Map<MixId, PlannedTest> planned = new HashMap<>();
        standing.each(spots.stream().map(Arranging.Spot::mixId).toList(), evidence -> {
            MixId mix = evidence.mix().value().id();
            Arranging.Spot spot = Objects.requireNonNull(byMix.get(mix));
            Asking one = Objects.requireNonNull(asking.get(mix));
            Need otherwise = spot.place().placing() == PlannedTest.Placing.BY_HAND ? Need.BY_HAND : Need.NO_MORE;
            planned.put(
                    mix,
                    new TestPlanner(evidence, standing.scatter(), wish, spot)
                            .plan(one.row(), one.need().orElse(otherwise), one.cardsOut(), one.risk()));
        });
        return planned;
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
