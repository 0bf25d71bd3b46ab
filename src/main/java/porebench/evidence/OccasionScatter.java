package porebench.evidence;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import porebench.method.MeterType;
import porebench.method.budget.Between;
import porebench.record.Trial;
import porebench.statistics.variance.VarianceLayers;

/**
 * How trials of one determination differ between the occasions on which they were made, an occasion being a day, an operator and a
 * meter.
 *
 * <p>Only occasions within a determination count: between determinations the aggregate may have changed. The variance is that of
 * restricted likelihood, {@link VarianceLayers}. Of a determination made on several occasions it is shared out: v times the sum
 * of the squared shares of the trials. Its degrees of freedom are those of its line of the analysis of variance, times the
 * square of the part of that line's mean square that it makes up (Satterthwaite; ours in this use). An occasion stands for
 * everything that changes with it, the dial of another meter too, which is in the budget besides: rather too wide than too narrow.
 */
public final class OccasionScatter {
    private static final double FEWEST_DEGREES = 5;
    private static final double LEAST_DEGREES = 0.5;

    private final List<CountedTrials> determinations;
    private final Map<MeterType, Optional<Between>> ofOne = new EnumMap<>(MeterType.class);

    OccasionScatter(Collection<CountedTrials> determinations) {
        this.determinations = List.copyOf(determinations);
    }

    /** Returns the occasion on which a trial was made, in words that tell it from every other. */
    static String occasion(JudgedTrial judged) {
        Trial trial = judged.trial().value();
        return trial.testedAt().toLocalDate() + " " + trial.meterId().text() + "\n" + trial.operator();
    }

    /**
     * Returns how the mean of some trials would differ; empty where the lab book cannot tell.
     *
     * @param trials those of a determination that count
     * @param type the type of their meter
     */
    public Optional<Between> of(List<JudgedTrial> trials, MeterType type) {
        double squares = trials.stream()
                .collect(Collectors.groupingBy(OccasionScatter::occasion, Collectors.counting()))
                .values()
                .stream()
                .mapToDouble(count -> Math.pow((double) count / trials.size(), 2))
                .sum();
        return ofOne(type)
                .map(one -> new Between(one.standardUncertaintyPercent() * Math.sqrt(squares), one.degreesOfFreedom()));
    }

    /** Returns how one occasion differs. Is asked again and again while a budget is looked at, and takes a while in a large lab book. */
    synchronized Optional<Between> ofOne(MeterType type) {
        return ofOne.computeIfAbsent(type, this::estimate);
    }

    private Optional<Between> estimate(MeterType type) {
        List<List<String>> paths = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (CountedTrials one : determinations) {
            double[] factors = one.factors();
            for (int i = 0; i < factors.length; i++) {
                if (one.types().get(i) == type) {
                    paths.add(List.of(one.id().text(), one.occasions().get(i)));
                    values.add(factors[i]);
                }
            }
        }
        if (values.isEmpty()) {
            return Optional.empty();
        }
        return VarianceLayers.variances(
                        paths, values.stream().mapToDouble(Double::doubleValue).toArray())
                .meaningful()
                .flatMap(variances -> found(variances, paths));
    }

    private static Optional<Between> found(List<OptionalDouble> variances, List<List<String>> paths) {
        int occasions = (int) paths.stream().distinct().count();
        int around = (int) paths.stream().map(path -> path.get(0)).distinct().count();
        double degrees = (double) occasions - around;
        OptionalDouble between = variances.get(1);
        OptionalDouble values = variances.get(2);
        if (between.isEmpty() || values.isEmpty() || degrees < FEWEST_DEGREES) {
            return Optional.empty();
        }
        double variance = between.getAsDouble();
        double within = values.getAsDouble() * occasions / paths.size();
        double part = variance == 0 ? 1 : variance / (variance + within);
        return Optional.of(new Between(Math.sqrt(variance), Math.max(LEAST_DEGREES, degrees * part * part)));
    }
}
