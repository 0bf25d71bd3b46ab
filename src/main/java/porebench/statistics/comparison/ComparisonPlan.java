package porebench.statistics.comparison;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;

/**
 * What more readings would show: the power of the comparison as it is, and how many more it takes for a power of 80 % if nothing
 * changed. The readings to come are taken to scatter as is known now.
 */
public final class ComparisonPlan {
    /** The power that is planned for. */
    public static final double TARGET = 0.8;

    /** Beyond this nobody tests. */
    private static final int MOST = 1 << 14;

    private final SidesOfDifference sides;
    private final boolean isOfReadings;
    private final int readingsInOne;
    private final double margin;
    private final boolean isWanting;

    /**
     * So many more.
     *
     * @param readings in all of one side, at least 0
     * @param determinations how many new ones they make; 0 where they go on with those there are
     */
    public record More(int readings, int determinations) {
        static final More NONE = new More(0, 0);
    }

    ComparisonPlan(SidesOfDifference sides, boolean isOfReadings, int readingsInOne, double margin, boolean isWanting) {
        this.sides = sides;
        this.isOfReadings = isOfReadings;
        this.readingsInOne = readingsInOne;
        this.margin = margin;
        this.isWanting = isWanting;
    }

    /** Returns how likely it was that so many readings would show a difference within the margin if nothing changed, from 0 to 1. */
    public double power() {
        return power(sides);
    }

    private double power(SidesOfDifference some) {
        return Equivalence.power(0, some.precision(), margin);
    }

    /** Returns how many more it takes on each side; none once it is decided, and empty where no number is enough. */
    public Optional<More> onEachSide() {
        return more(k -> sides.withMoreValues(k, k), k -> sides.withMoreSets(k, k));
    }

    /** Returns how many more it takes after the change where none can be added before it; empty where no number is enough. */
    public Optional<More> after() {
        return more(k -> sides.withMoreValues(0, k), k -> sides.withMoreSets(0, k));
    }

    private Optional<More> more(IntFunction<SidesOfDifference> values, IntFunction<SidesOfDifference> sets) {
        if (!isWanting) {
            return Optional.of(More.NONE);
        }
        if (isOfReadings) {
            OptionalInt found = least(values);
            if (found.isPresent()) {
                return Optional.of(new More(found.getAsInt(), 0));
            }
        }
        OptionalInt found = least(sets);
        return found.isPresent()
                ? Optional.of(new More(found.getAsInt() * readingsInOne, found.getAsInt()))
                : Optional.empty();
    }

    /** Finds the least number from 1 on that has the power: more of them never have less. */
    private OptionalInt least(IntFunction<SidesOfDifference> with) {
        int enough = 1;
        while (power(with.apply(enough)) < TARGET) {
            enough *= 2;
            if (enough > MOST) {
                return OptionalInt.empty();
            }
        }
        int few = enough / 2;
        while (enough - few > 1) {
            int middle = (few + enough) / 2;
            if (power(with.apply(middle)) < TARGET) {
                few = middle;
            } else {
                enough = middle;
            }
        }
        return OptionalInt.of(enough);
    }
}
