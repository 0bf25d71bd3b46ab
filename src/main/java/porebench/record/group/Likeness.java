package porebench.record.group;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import porebench.method.Problem;
import porebench.method.sample.AggregateShares;
import porebench.quantity.Slack;
import porebench.record.MixDesign;

/**
 * How far a mix is from the one that is tested for it.
 *
 * <p>A factor is what the pores of the aggregate in the bowl give: G = sum of m a, m the mass of a source in the bowl and a its pore
 * air per kilogram. With w the share of a source in the aggregate and M the mass of all aggregate in a cubic metre, m is the bowl
 * times M w: two mixes of the same sources with like w and like M have like factors, whatever the bowl. One tolerance holds for
 * both: percentage points of w, and % of M.
 *
 * @param apartPoints the largest difference between the shares of a source, in percentage points
 * @param apartPercent how much more aggregate stands in a cubic metre of concrete than in that of the tested mix, in %; less than 0
 *     where it is less
 * @param why what makes it unlike, as errors; empty where it is like
 */
public record Likeness(double apartPoints, double apartPercent, List<Problem> why) {
    private static final int DECIMALS = 1;
    private static final int MORE_DECIMALS = 3;

    public Likeness {
        why = List.copyOf(why);
    }

    /** Returns whether the mix is like the tested one. */
    public boolean isLike() {
        return why.isEmpty();
    }

    /** Returns the larger of the two differences, by which mixes can be put in order; infinite where nothing can be compared. */
    public double apart() {
        return Math.max(apartPoints, Math.abs(apartPercent));
    }

    /**
     * Compares a mix with the one that is tested.
     *
     * @param tolerancePercent how far it may be, in percentage points of each share and in % of the aggregate in a cubic metre
     */
    public static Likeness of(MixDesign mix, MixDesign tested, BigDecimal tolerancePercent) {
        if (!areSourcesNamed(mix) || !areSourcesNamed(tested)) {
            return unlike(Problem.error(
                    "members",
                    "group.source-unnamed",
                    (areSourcesNamed(mix) ? tested : mix).id().text()));
        }
        if (!mix.sources().equals(tested.sources())) {
            return unlike(otherSource(mix, tested));
        }
        if (mix.batch().wetSieved() != tested.batch().wetSieved()) {
            return unlike(Problem.error(
                    "members",
                    "group.other-sieving",
                    mix.id().text(),
                    tested.id().text()));
        }
        if (!mix.profileId().equals(tested.profileId())) {
            return unlike(Problem.error(
                    "members",
                    "group.other-profile",
                    mix.id().text(),
                    mix.profileId(),
                    tested.id().text(),
                    tested.profileId()));
        }
        Optional<AggregateShares> one = mix.aggregateShares();
        Optional<AggregateShares> other = tested.aggregateShares();
        if (one.isEmpty() || other.isEmpty()) {
            return unlike(Problem.error(
                    "members",
                    "group.no-shares",
                    (one.isEmpty() ? mix : tested).id().text()));
        }
        return of(mix, tested, one.get(), other.get(), tolerancePercent);
    }

    private static Likeness of(
            MixDesign mix, MixDesign tested, AggregateShares one, AggregateShares other, BigDecimal tolerance) {
        double limit = tolerance.doubleValue();
        List<Problem> why = new ArrayList<>();
        double points = 0;
        for (String source : one.percent().keySet()) {
            double share = one.percent().getOrDefault(source, 0.0);
            double wanted = other.percent().getOrDefault(source, 0.0);
            double apart = Math.abs(share - wanted);
            points = Math.max(points, apart);
            if (Slack.isAbove(apart, limit)) {
                int decimals = decimals(share, wanted, tolerance);
                why.add(Problem.error(
                        "members",
                        "group.share-off",
                        mix.id().text(),
                        source,
                        rounded(share, decimals),
                        tested.id().text(),
                        rounded(wanted, decimals),
                        tolerance));
            }
        }
        double more = 100 * (one.kilogramsPerCubicMetre() / other.kilogramsPerCubicMetre() - 1);
        if (Slack.isAbove(Math.abs(more), limit)) {
            int decimals = decimals(Math.abs(more), 0, tolerance);
            why.add(Problem.error(
                    "members",
                    more > 0 ? "group.amount-more" : "group.amount-less",
                    mix.id().text(),
                    rounded(one.kilogramsPerCubicMetre(), 0),
                    tested.id().text(),
                    rounded(other.kilogramsPerCubicMetre(), 0),
                    rounded(Math.abs(more), decimals),
                    tolerance));
        }
        return new Likeness(points, more, why);
    }

    /** Returns the decimals with which two figures are seen to be further apart than the tolerance. */
    private static int decimals(double one, double other, BigDecimal tolerance) {
        BigDecimal seen =
                rounded(one, DECIMALS).subtract(rounded(other, DECIMALS)).abs();
        return seen.compareTo(tolerance) > 0 ? DECIMALS : MORE_DECIMALS;
    }

    private static BigDecimal rounded(double number, int decimals) {
        return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
    }

    private static Problem otherSource(MixDesign mix, MixDesign tested) {
        Set<String> own = names(mix);
        Set<String> wanted = names(tested);
        Set<String> more = new TreeSet<>(own);
        more.removeAll(wanted);
        Set<String> less = new TreeSet<>(wanted);
        less.removeAll(own);
        return more.isEmpty()
                ? Problem.error(
                        "members",
                        "group.source-missing",
                        mix.id().text(),
                        String.join(", ", less),
                        tested.id().text())
                : Problem.error(
                        "members",
                        "group.source-other",
                        mix.id().text(),
                        String.join(", ", more),
                        tested.id().text());
    }

    private static Set<String> names(MixDesign mix) {
        Set<String> names = new TreeSet<>();
        mix.sources().forEach(source -> names.add(source.text()));
        return names;
    }

    /** Returns whether every aggregate of a mix names its source: else nobody knows that it is the same stone. */
    private static boolean areSourcesNamed(MixDesign mix) {
        return !mix.aggregates().isEmpty()
                && mix.aggregates().stream()
                        .allMatch(aggregate -> aggregate.sourceId().isPresent());
    }

    private static Likeness unlike(Problem why) {
        return new Likeness(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, List.of(why));
    }
}
