package porebench.method.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.quantity.Require;
import porebench.statistics.variance.LeftOut;
import porebench.statistics.variance.PooledRegression;
import porebench.statistics.variance.PooledVariances;
import porebench.statistics.variance.Separation;

/**
 * The pore air of all sources of a laboratory, from the trials of all its mixes.
 *
 * <p>The factor of a trial is taken as the sum over the sources of their pore air times how much of them the bowl holds, and what is
 * peculiar to the mix, to the determination and to the trial: G = sum a x + mix + determination + trial, with a in mL/kg, at
 * least 0, and x 100 times kg in the bowl over its mL. The scatter of each of the three is estimated from the trials.
 *
 * <p>Source: none names it; that air in pores adds up follows from Boyle's law, since the water that fills the rest of the bowl does not
 * give way. The estimates are those of {@link PooledRegression}.
 */
public final class PoreAir {
    static final double CONFIDENCE = 0.95;

    /** From so many times the variance on that the others leave, a source is not separable: twenty times the standard error. */
    private static final double MOST_INFLATION = 400;

    private final TestedBowls tested;
    private final Separation separation;
    private final PooledRegression fit;
    private final LeftOut leftOut;

    /**
     * A determination beside what the trials of all other mixes say of it.
     *
     * @param mix its mix
     * @param determination its name
     * @param measuredPercent the mean of its trials, in % air
     * @param forecastPercent what the other mixes say, in % air; empty where they say nothing of it
     */
    public record Compared(String mix, String determination, double measuredPercent, OptionalDouble forecastPercent) {}

    private PoreAir(TestedBowls tested, Separation separation, PooledRegression fit) {
        this.tested = tested;
        this.separation = separation;
        this.fit = fit;
        this.leftOut = fit.leftOut();
    }

    /**
     * Estimates the pore air of the sources.
     *
     * @param dialPercent the standard deviation that the division of a meter's scale makes by itself, in % air, greater than 0: where
     *     trials scatter less they stood still, and that is how far they may be off
     * @return the problem why that cannot be: no trials, or no more mixes than sources
     */
    public static Answer<PoreAir> of(TestedBowls tested, double dialPercent) {
        Require.positive("dialPercent", dialPercent);
        if (tested.determinations().isEmpty()) {
            return Answer.refused(List.of(Problem.error("trials", "forecast.no-trials")));
        }
        Separation separation = Separation.of(tested.columns());
        if (separation.degreesOfFreedom() < 1) {
            return Answer.refused(List.of(Problem.error(
                    "trials",
                    "forecast.too-few-mixes",
                    tested.mixes().size(),
                    tested.sources().size(),
                    separation.rank())));
        }
        PooledRegression fit = PooledRegression.of(tested.columns(), separation, dialPercent * dialPercent)
                .meaningful()
                .orElseThrow();
        return Answer.of(new PoreAir(tested, separation, fit), List.of());
    }

    /** Returns what is known of every source that was in a bowl. */
    public List<SourceAir> sources() {
        List<SourceAir> all = new ArrayList<>();
        for (int place = 0; place < tested.sources().size(); place++) {
            all.add(source(place));
        }
        return all;
    }

    private SourceAir source(int place) {
        OptionalDouble variance = fit.covariance(place, place);
        boolean isSeparable = fit.inflation(place).orElse(Double.POSITIVE_INFINITY) < MOST_INFLATION;
        return new SourceAir(
                tested.sources().get(place),
                fit.share(place),
                variance.isPresent() ? OptionalDouble.of(Math.sqrt(variance.getAsDouble())) : OptionalDouble.empty(),
                isSeparable,
                fit.isAtZero(place),
                tested.covered(place).mixes(),
                Arrays.stream(separation.with(place))
                        .mapToObj(tested.sources()::get)
                        .toList());
    }

    /**
     * Returns the covariance of the pore air of two sources, in the square of mL/kg.
     *
     * @return empty where one of them was in no bowl or is not told apart from others
     */
    public OptionalDouble covariance(String one, String other) {
        Optional<Integer> first = tested.place(one);
        Optional<Integer> second = tested.place(other);
        return first.isPresent() && second.isPresent()
                ? fit.covariance(first.get(), second.get())
                : OptionalDouble.empty();
    }

    /** Returns the scatter between mixes, between determinations of one mix and between trials, as variances in the square of % air. */
    public PooledVariances variances() {
        return fit.variances();
    }

    /** Returns how many mixes with trials there are. */
    public int mixes() {
        return tested.mixes().size();
    }

    /** Returns every determination beside what the other mixes say of it. */
    public List<Compared> compared() {
        List<Compared> all = new ArrayList<>();
        for (int i = 0; i < tested.determinations().size(); i++) {
            TestedBowls.Tested one = tested.determinations().get(i);
            double foretold = leftOut.foretold(i);
            all.add(new Compared(
                    one.mix(),
                    one.determination(),
                    one.percent(),
                    Double.isNaN(foretold) ? OptionalDouble.empty() : OptionalDouble.of(foretold)));
        }
        return all;
    }

    /**
     * Returns how far determinations lie from what the other mixes say of them: the root of the mean square, in % air; empty where
     * they say nothing of any.
     */
    public OptionalDouble leftOutErrorPercent() {
        double error = leftOut.error();
        return Double.isNaN(error) ? OptionalDouble.empty() : OptionalDouble.of(error);
    }

    /**
     * Forecasts the factor of a mix.
     *
     * @param bowl what the bowl would hold of each source
     * @param trials of how many trials the determination would be, at least 1
     * @return the forecast with its doubts, or the reasons why there is none
     */
    public Answer<Forecast> forecast(Bowlful bowl, int trials) {
        return new Forecasting(tested, fit, leftOut, bowl).forecast(trials, this::source);
    }
}
