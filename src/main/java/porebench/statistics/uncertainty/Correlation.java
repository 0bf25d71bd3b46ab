package porebench.statistics.uncertainty;

import java.util.Arrays;
import java.util.List;
import porebench.quantity.Require;

/**
 * That two quantities err together: their errors have something in common, as when one instrument measured both.
 *
 * <p>Source: JCGM 100:2008, 5.2.2 and C.3.6; recalled. Differences from the source: none.
 *
 * @param first the place of one quantity in a list, from 0
 * @param second the place of the other, another one
 * @param coefficient from -1, one as much too high as the other too low, to 1
 */
public record Correlation(int first, int second, double coefficient) {
    public Correlation {
        Require.atLeast("first", first, 0);
        Require.atLeast("second", second, 0);
        Require.within("coefficient", coefficient, -1, 1);
        if (first == second) {
            throw new IllegalArgumentException("second must be another place than first, but is " + second);
        }
    }

    /** Returns for each of some quantities the first one that it hangs together with, directly or by others. */
    static int[] groups(int count, List<Correlation> correlations) {
        int[] group = new int[count];
        Arrays.setAll(group, i -> i);
        for (Correlation one : correlations) {
            Require.within("place of a correlation", Math.max(one.first(), one.second()), 0, count - 1.0);
            int low = Math.min(group[one.first()], group[one.second()]);
            int high = Math.max(group[one.first()], group[one.second()]);
            for (int i = 0; i < count; i++) {
                group[i] = group[i] == high ? low : group[i];
            }
        }
        return group;
    }

    /** Returns the coefficients among some places: 1 with itself, 0 where nothing is said. */
    static double[][] matrix(int[] places, List<Correlation> correlations) {
        double[][] matrix = new double[places.length][places.length];
        for (int i = 0; i < places.length; i++) {
            for (int j = 0; j < places.length; j++) {
                matrix[i][j] = i == j ? 1 : between(places[i], places[j], correlations);
            }
        }
        return matrix;
    }

    private static double between(int one, int other, List<Correlation> correlations) {
        for (Correlation correlation : correlations) {
            if ((correlation.first == one && correlation.second == other)
                    || (correlation.first == other && correlation.second == one)) {
                return correlation.coefficient;
            }
        }
        return 0;
    }
}
