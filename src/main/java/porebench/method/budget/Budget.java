package porebench.method.budget;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import porebench.quantity.Require;
import porebench.statistics.uncertainty.Correlation;
import porebench.statistics.uncertainty.MonteCarlo;
import porebench.statistics.uncertainty.Uncertain;
import porebench.statistics.uncertainty.UncertaintySum;

/**
 * The uncertainty of a result and what it is made of.
 *
 * <p>Combined is the root of the summed squares of sensitivity times standard uncertainty; expanded is that times the t factor
 * for 95 % at the effective degrees of freedom, uncut. Lines that err together have their covariances in it. {@link #simulate}
 * draws all inputs instead and computes with them; which of the two is the result, {@link BudgetResult} says.
 *
 * <p>Source: JCGM 100:2008, clause 5 and G.4; JCGM 101:2008, clauses 7 and 8; recalled. Differences from the source: none.
 */
public final class Budget {
    /** The confidence of expanded uncertainties and intervals. */
    public static final double CONFIDENCE = 0.95;

    private final List<BudgetLine> lines;
    private final ToDoubleFunction<double[]> model;
    private final Drawing drawing;
    private final Set<Omission> omissions;
    private final double valuePercent;
    private final UncertaintySum sum;

    /**
     * What is drawn instead of the lines.
     *
     * @param inputs the quantities
     * @param correlations between them, by their places
     * @param model the result from a value of each
     */
    record Drawing(List<Uncertain> inputs, List<Correlation> correlations, ToDoubleFunction<double[]> model) {
        Drawing {
            inputs = List.copyOf(inputs);
            correlations = List.copyOf(correlations);
        }
    }

    /** A budget whose lines are all that there is to draw. */
    Budget(
            List<BudgetLine> lines,
            List<Correlation> correlations,
            ToDoubleFunction<double[]> model,
            Set<Omission> omissions) {
        this(
                lines,
                correlations,
                model,
                new Drawing(lines.stream().map(BudgetLine::distribution).toList(), correlations, model),
                omissions);
    }

    /** A budget one of whose lines is the result of another, of which the parts are drawn. */
    Budget(
            List<BudgetLine> lines,
            List<Correlation> correlations,
            ToDoubleFunction<double[]> model,
            Drawing drawing,
            Set<Omission> omissions) {
        Require.atLeast("count of lines", lines.size(), 1);
        this.lines = List.copyOf(lines);
        this.model = model;
        this.drawing = drawing;
        this.omissions = new TreeSet<>(omissions);
        this.valuePercent = model.applyAsDouble(
                lines.stream().mapToDouble(BudgetLine::value).toArray());
        this.sum =
                UncertaintySum.of(lines.stream().map(BudgetLine::contribution).toList(), correlations);
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

    /** Returns what part of the summed variances of the lines comes from a line, from 0 to 1. */
    public double shareOf(BudgetLine line) {
        return sum.shareOf(line.contribution());
    }

    /** Returns what the combined standard uncertainty would be if no lines erred together, in % air. */
    public double apartPercent() {
        return sum.apart();
    }

    Drawing drawing() {
        return drawing;
    }

    /** Computes the result from other values of the lines' quantities, in % air. */
    double at(double... values) {
        return model.applyAsDouble(values);
    }

    /**
     * Draws the quantities of all lines and computes the result with them.
     *
     * @param draws how many times, at least 1000
     * @param seed of the random numbers
     */
    public MonteCarlo simulate(int draws, long seed) {
        return MonteCarlo.of(drawing.inputs(), drawing.correlations(), drawing.model(), draws, seed, CONFIDENCE);
    }

    /**
     * Draws until the ends of the interval have settled.
     *
     * @param tolerancePercent to which they settle, in % air, greater than 0
     * @param mostDraws after which drawing ends all the same
     * @param seed of the random numbers
     */
    MonteCarlo settle(double tolerancePercent, int mostDraws, long seed) {
        return MonteCarlo.settled(
                drawing.inputs(),
                drawing.correlations(),
                drawing.model(),
                tolerancePercent,
                mostDraws,
                seed,
                CONFIDENCE);
    }
}
