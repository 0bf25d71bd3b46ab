package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.statistics.comparison.ReadingSets;

/**
 * Trials of one side of a change: determinations that differ by themselves, read on a divided scale.
 *
 * @param dial how they are read
 * @param scatter the standard deviation of trials, in % air
 * @param between the standard deviation between determinations, in % air
 */
record ChangeBench(Dial dial, double scatter, double between) {
    /** Draws some determinations of as many trials each. */
    ReadingSets draw(double factor, int determinations, int trials, SplittableRandom random) {
        List<double[]> sets = new ArrayList<>();
        for (int i = 0; i < determinations; i++) {
            sets.add(dial.read(factor + between * random.nextGaussian(), scatter, trials, random));
        }
        return ReadingSets.of(sets);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "Type %s, division %s, scatter %s, determinations differ by %s",
                dial.type(),
                dial.division(),
                scatter,
                between);
    }
}
