package porebench.statistics.comparison;

import java.util.Optional;

/**
 * What both sides of a comparison make uncertain about the difference.
 *
 * @param before the side before
 * @param after the side after
 * @param isOneScatter whether both sides rest on the same standard deviation, which is as uncertain as it is once
 * @param between what determinations differ by where their values do not show it
 */
record SidesOfDifference(
        SideOfDifference before, SideOfDifference after, boolean isOneScatter, Optional<BetweenSets> between) {
    /** Sums up the variances, with Welch's and Satterthwaite's degrees of freedom. */
    Precision precision() {
        double scatter = before.variance() + after.variance();
        double fourths = isOneScatter
                ? scatter * scatter / Math.max(before.degreesOfFreedom(), after.degreesOfFreedom())
                : before.squaredOverDegrees() + after.squaredOverDegrees();
        double unseen = 0;
        if (between.isPresent()) {
            double one = between.get().standardDeviation() * between.get().standardDeviation();
            unseen = one * (before.shareOfSets() + after.shareOfSets());
            fourths += unseen * unseen / between.get().degreesOfFreedom();
        }
        double variance = scatter + unseen + before.rounding() + after.rounding();
        return new Precision(Math.sqrt(variance), variance * variance / fourths);
    }

    SidesOfDifference withMoreValues(int moreBefore, int moreAfter) {
        return new SidesOfDifference(
                before.withMoreValues(moreBefore), after.withMoreValues(moreAfter), isOneScatter, between);
    }

    SidesOfDifference withMoreSets(int moreBefore, int moreAfter) {
        return new SidesOfDifference(
                before.withMoreSets(moreBefore), after.withMoreSets(moreAfter), isOneScatter, between);
    }

    /** Returns these sides as they would be if their values scattered otherwise. */
    SidesOfDifference scattering(double deviation) {
        return new SidesOfDifference(before.scattering(deviation), after.scattering(deviation), isOneScatter, between);
    }
}
