package porebench.method.trial;

import java.util.stream.Stream;
import porebench.statistics.Judged;
import porebench.statistics.summary.AndersonDarlingTest;
import porebench.statistics.summary.ShapiroWilkTest;

/**
 * Whether trials scatter as normal values do, on which intervals and tests rest.
 *
 * <p>Two tests look at the same trials; the smaller p, times the number of tests made, must be below 1 % to say that they do
 * not (Bonferroni; 1 % as for trials that stand out, {@link Outliers}). Of few trials, or on a scale too coarse for their scatter, nothing is said.
 *
 * @param anderson the Anderson-Darling test, or why it means nothing
 * @param shapiro the Shapiro-Wilk test, or why it means nothing
 */
public record Shape(Judged<AndersonDarlingTest> anderson, Judged<ShapiroWilkTest> shapiro) {
    static Shape of(double divisionPercent, double... factors) {
        return new Shape(
                AndersonDarlingTest.judge(divisionPercent, factors), ShapiroWilkTest.judge(divisionPercent, factors));
    }

    /** Returns whether a test could be made at all. */
    public boolean isTested() {
        return anderson.meaningful().isPresent() || shapiro.meaningful().isPresent();
    }

    /** Returns whether the trials do not scatter as normal values do. */
    public boolean isOdd() {
        double[] made = Stream.concat(
                        anderson.meaningful().map(AndersonDarlingTest::p).stream(),
                        shapiro.meaningful().map(ShapiroWilkTest::p).stream())
                .mapToDouble(p -> p)
                .toArray();
        for (double p : made) {
            if (p * made.length < Outliers.SUSPECT) {
                return true;
            }
        }
        return false;
    }
}
