package porebench.statistics.control;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoublePredicate;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.quantity.Symbolic;

/**
 * A pattern of points on a control chart that chance alone seldom makes.
 *
 * <p>Points are given as z, their distance from the centre in standard deviations. Conventions: beyond means strictly
 * beyond, so that 3.0 does not signal; exactly 0 is on neither side; equal neighbours break a trend; a rule fires at the
 * point that completes the pattern, and of "two of three" and "four of five" that point is itself in the zone. Comparisons
 * have {@link Slack}.
 *
 * <p>Readings come in whole divisions of a scale, and one that lies at a boundary takes either of two. So nothing is a signal
 * that a difference of one division could make: a point on one side signals only if it lies more than a division from the
 * centre, a trend or points that alternate only if they span more, and points are called close to the centre only where that
 * is wider than a division.
 *
 * <p>Source: Western Electric, Statistical Quality Control Handbook (1956); L. S. Nelson, Journal of Quality Technology 16
 * (1984); recalled. Differences from the source: both are said in words there, which leaves the conventions open;
 * neither knows a division.
 */
public enum RunRule implements Symbolic {
    /** One point beyond the limits, 3 standard deviations out. */
    BEYOND_LIMITS(1) {
        @Override
        boolean isMet(double[] z, int last) {
            return isBeyond(z[last], WHOLE);
        }
    },
    /** Two of three points beyond 2 standard deviations on one side. */
    TWO_OF_THREE(2) {
        @Override
        boolean isMet(double[] z, int last) {
            return sameZone(z, last, 3, 2, 2);
        }
    },
    /** Four of five points beyond 1 standard deviation on one side. */
    FOUR_OF_FIVE(4) {
        @Override
        boolean isMet(double[] z, int last) {
            return sameZone(z, last, 5, 4, 1);
        }
    },
    /** Eight points on one side of the centre. */
    EIGHT_ON_ONE_SIDE(8) {
        @Override
        boolean isMet(double[] z, int last) {
            return oneSide(z, last, 8);
        }
    },
    /** Nine points on one side of the centre. */
    NINE_ON_ONE_SIDE(9) {
        @Override
        boolean isMet(double[] z, int last) {
            return oneSide(z, last, 9);
        }
    },
    /** Six points that rise, or six that fall. */
    SIX_IN_A_TREND(6) {
        @Override
        boolean isMet(double[] z, int last) {
            for (int i = last - 4; i < last; i++) {
                if (step(z, i) == 0 || step(z, i) != step(z, i + 1)) {
                    return false;
                }
            }
            return true;
        }

        @Override
        boolean isMoreThanADivision(double[] z, double[] divisions, int last) {
            return spans(z, divisions, last, 6);
        }
    },
    /** Fourteen points that rise and fall in turn. */
    FOURTEEN_ALTERNATING(14) {
        @Override
        boolean isMet(double[] z, int last) {
            for (int i = last - 12; i < last; i++) {
                if (step(z, i) == 0 || step(z, i) != -step(z, i + 1)) {
                    return false;
                }
            }
            return true;
        }

        @Override
        boolean isMoreThanADivision(double[] z, double[] divisions, int last) {
            return spans(z, divisions, last, 14);
        }
    },
    /** Fifteen points within 1 standard deviation. */
    FIFTEEN_WITHIN_ONE(15) {
        @Override
        boolean isMet(double[] z, int last) {
            return all(z, last, 15, value -> Slack.isBelow(Math.abs(value), 1));
        }

        @Override
        boolean isMoreThanADivision(double[] z, double[] divisions, int last) {
            return all(divisions, last, 15, division -> Slack.isBelow(division, 1));
        }
    },
    /** Eight points beyond 1 standard deviation, on both sides together. */
    EIGHT_BEYOND_ONE(8) {
        @Override
        boolean isMet(double[] z, int last) {
            return all(z, last, 8, value -> isBeyond(value, 1)) && !oneSide(z, last, 8);
        }
    };

    private static final double WHOLE = 3;

    private final int fewest;

    RunRule(int fewest) {
        this.fewest = fewest;
    }

    /** Returns the four rules of Western Electric. */
    public static Set<RunRule> westernElectric() {
        return EnumSet.of(BEYOND_LIMITS, TWO_OF_THREE, FOUR_OF_FIVE, EIGHT_ON_ONE_SIDE);
    }

    /**
     * Returns which rules fire at each point of readings that come in divisions.
     *
     * @param z the points in order, in standard deviations from the centre
     * @param divisions one division of the scale, in standard deviations of each point; 0 for none
     * @param rules those asked for
     */
    static List<List<RunRule>> signals(double[] z, double[] divisions, Set<RunRule> rules) {
        List<List<RunRule>> signals = new ArrayList<>();
        for (int i = 0; i < z.length; i++) {
            List<RunRule> here = new ArrayList<>();
            for (RunRule rule : values()) {
                if (rules.contains(rule) && rule.firesAt(z, i) && rule.isMoreThanADivision(z, divisions, i)) {
                    here.add(rule);
                }
            }
            signals.add(List.copyOf(here));
        }
        return List.copyOf(signals);
    }

    /**
     * Returns whether this rule fires at a point, by that point and those before it.
     *
     * @param z the points in order, in standard deviations from the centre
     * @param last the point, from 0
     */
    public boolean firesAt(double[] z, int last) {
        Require.atLeast("last", last, 0);
        return last + 1 >= fewest && isMet(z, last);
    }

    /** Returns whether the pattern is there, as many points as it needs being there. */
    abstract boolean isMet(double[] z, int last);

    /** Returns whether more is there than a difference of one division could make. */
    boolean isMoreThanADivision(double[] z, double[] divisions, int last) {
        return isBeyond(z[last], divisions[last]);
    }

    /** Returns whether points lie more than the largest of their divisions apart. */
    private static boolean spans(double[] z, double[] divisions, int last, int of) {
        double low = z[last];
        double high = z[last];
        double division = 0;
        for (int i = last - of + 1; i <= last; i++) {
            low = Math.min(low, z[i]);
            high = Math.max(high, z[i]);
            division = Math.max(division, divisions[i]);
        }
        return Slack.isAbove(high - low, division);
    }

    private static boolean isBeyond(double z, double bound) {
        return Slack.isAbove(Math.abs(z), bound);
    }

    private static boolean sameZone(double[] z, int last, int of, int needed, double bound) {
        if (!isBeyond(z[last], bound)) {
            return false;
        }
        int there = 0;
        for (int i = Math.max(0, last - of + 1); i <= last; i++) {
            there += isBeyond(z[i], bound) && side(z[i]) == side(z[last]) ? 1 : 0;
        }
        return there >= needed;
    }

    private static boolean oneSide(double[] z, int last, int of) {
        int side = side(z[last]);
        return side != 0 && all(z, last, of, value -> side(value) == side);
    }

    private static boolean all(double[] z, int last, int of, DoublePredicate holds) {
        for (int i = last - of + 1; i <= last; i++) {
            if (!holds.test(z[i])) {
                return false;
            }
        }
        return true;
    }

    private static int side(double z) {
        return Slack.isAbove(z, 0) ? 1 : Slack.isBelow(z, 0) ? -1 : 0;
    }

    /** Returns whether a point is above (1) or below (-1) the one before it. */
    private static int step(double[] z, int i) {
        return side(z[i] - z[i - 1]);
    }
}
