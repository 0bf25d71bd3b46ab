package porebench.method.budget;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import porebench.quantity.Require;
import porebench.statistics.MonteCarlo;
import porebench.statistics.UncertaintySum;

/**
 * The uncertainty of a result and what it is made of.
 *
 * <p>Combined is the root of the summed squares of sensitivity times standard uncertainty; expanded is that times the t factor
 * for 95 % at the effective degrees of freedom, uncut. {@link #simulate} draws all inputs instead and computes with them.
 *
 * <p>Source: JCGM 100:2008, clause 5 and G.4; JCGM 101:2008, clauses 7 and 8; recalled. Differences from the source: none.
 */
public final class Budget {
    /** The confidence of expanded uncertainties and intervals. */
    public static final double CONFIDENCE = 0.95;

    private final List<BudgetLine> lines;
    private final ToDoubleFunction<double[]> model;
    private final Set<Omission> omissions;
    private final double valuePercent;
    private final UncertaintySum sum;

    Budget(List<BudgetLine> lines, ToDoubleFunction<double[]> model, Set<Omission> omissions) {
        Require.atLeast("count of lines", lines.size(), 1);
        this.lines = List.copyOf(lines);
        this.model = model;
        this.omissions = new TreeSet<>(omissions);
        this.valuePercent = model.applyAsDouble(
                lines.stream().mapToDouble(BudgetLine::value).toArray());
        this.sum =
                UncertaintySum.of(lines.stream().map(BudgetLine::contribution).toList());
    }

    /** Returns the lines in the order of the method. */
    public List<BudgetLine> lines() {
        return lines;
    }

    /** Returns the lines, the largest contribution first. */
    public List<BudgetLine> largestFirst() {
        return lines.stream()
                .sorted(Comparator.comparingDouble(BudgetLine::sizePercent).reversed())
                .toList();
    }

    /** Returns what is not in the budget, or only stands in for something. */
    public List<Omission> omissions() {
        return List.copyOf(omissions);
    }

    /** Returns the result, in % air, not rounded. */
    public double valuePercent() {
        return valuePercent;
    }

    /** Returns the combined standard uncertainty, in % air. */
    public double combinedPercent() {
        return sum.combined();
    }

    /** Returns the effective degrees of freedom, at least 0.5 and perhaps infinite. */
    public double effectiveDegreesOfFreedom() {
        return sum.effectiveDegreesOfFreedom();
    }

    /** Returns the expanded uncertainty at 95 %, in % air. */
    public double expandedPercent() {
        return sum.expanded(CONFIDENCE);
    }

    /** Returns what part of the combined variance comes from a line, from 0 to 1. */
    public double shareOf(BudgetLine line) {
        return sum.shareOf(line.contribution());
    }

    /** Computes the result from other values of the lines' quantities, in % air. */
    public double at(double... values) {
        return model.applyAsDouble(values);
    }

    /**
     * Draws the quantities of all lines and computes the result with them.
     *
     * @param draws how many times, at least 1000
     * @param seed of the random numbers
     */
    public MonteCarlo simulate(int draws, long seed) {
        return MonteCarlo.of(lines.stream().map(BudgetLine::distribution).toList(), model, draws, seed, CONFIDENCE);
    }
}
