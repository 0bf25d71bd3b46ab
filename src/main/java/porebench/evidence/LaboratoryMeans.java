package porebench.evidence;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.trial.KnownFactor;
import porebench.method.trial.NextDetermination;
import porebench.method.trial.Scatter;
import porebench.record.id.DeterminationId;
import porebench.statistics.Judged;
import porebench.statistics.comparison.BetweenSets;
import porebench.statistics.comparison.EqualScatterTest;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;
import porebench.statistics.variance.PartialPooling;
import porebench.statistics.variance.VarianceLayers;
import porebench.statistics.variance.VariancePrior;

/**
 * The means of a laboratory's determinations, on each type of meter, and what they say together of one of them.
 *
 * <p>Determinations stand within mixes and mixes within sources, both in the version that they had: what was made of another
 * version is another mix of other sources. The variances between them are those of restricted likelihood, {@link VarianceLayers};
 * each mix's own scatter is drawn towards the others, {@link VariancePrior}. It is made once for a state of the lab book; asking it
 * reads nothing.
 */
final class LaboratoryMeans {
    /** How many other determinations should be known before they say anything. */
    static final int FEWEST_OTHERS = 3;

    /** With fewer degrees of freedom nothing is said of what determinations differ by. */
    private static final double FEWEST_DEGREES = 5;

    private static final double LEAST_DEGREES = 0.5;

    private final Map<MeterType, List<Entry>> entries = new EnumMap<>(MeterType.class);
    private final Map<MeterType, Optional<List<OptionalDouble>>> variances = new EnumMap<>(MeterType.class);
    private final Map<Scale, Judged<EqualScatterTest>> tested = new HashMap<>();

    /** One determination. */
    private record Entry(DeterminationId id, List<String> path, Summary summary, double[] factors) {
        List<String> mix() {
            return path.subList(0, 2);
        }
    }

    LaboratoryMeans(Collection<CountedTrials> determinations) {
        for (CountedTrials one : determinations) {
            if (one.isOfOneType()) {
                entries.computeIfAbsent(one.type(), any -> new ArrayList<>())
                        .add(new Entry(one.id(), one.path(), one.summary(), one.factors()));
            }
        }
    }

    private List<Entry> on(MeterType type) {
        return entries.getOrDefault(type, List.of());
    }

    private static Optional<Entry> find(List<Entry> among, JudgedDetermination judged) {
        return among.stream()
                .filter(entry -> entry.id.equals(judged.determination().value().id()))
                .findFirst();
    }

    /**
     * Returns where the next determination of a mix is to be expected, of the same sources in the same versions.
     *
     * @param judged a determination of the mix
     * @param divisionPercent a division of its meter's scale, in % air, greater than 0
     */
    Optional<NextDetermination> next(JudgedDetermination judged, double divisionPercent) {
        List<Entry> all = on(judged.meterType());
        return find(all, judged)
                .flatMap(own -> NextDetermination.of(
                        all.stream()
                                .filter(entry -> entry.mix().equals(own.mix()))
                                .map(entry -> entry.summary.mean())
                                .toList(),
                        judged.meterType(),
                        divisionPercent));
    }

    /**
     * Returns a determination's factor as it would be with what the laboratory knows.
     *
     * @param judged the determination
     * @param divisionPercent a division of its meter's scale, in % air, greater than 0
     * @param profile whose rounding holds
     * @return empty when too few others are known, or nothing tells how determinations differ
     */
    Optional<KnownFactor> known(JudgedDetermination judged, double divisionPercent, Profile profile) {
        List<Entry> all = on(judged.meterType());
        Optional<Entry> own = find(all, judged);
        if (own.isEmpty()) {
            return Optional.empty();
        }
        double dial = Scatter.ofTheDial(judged.meterType(), divisionPercent);
        return between(judged.meterType())
                .flatMap(between -> known(all, own.get(), between, trialVariances(all, dial * dial), profile));
    }

    private static Optional<KnownFactor> known(
            List<Entry> all,
            Entry own,
            List<OptionalDouble> between,
            Map<List<String>, Double> within,
            Profile profile) {
        List<PartialPooling.Group> groups = all.stream()
                .flatMap(entry -> Optional.ofNullable(within.get(entry.mix()))
                        .map(variance -> new PartialPooling.Group(
                                entry.path, entry.summary.mean(), variance / entry.summary.count()))
                        .stream())
                .toList();
        Double ownTrial = within.get(own.mix());
        if (ownTrial == null || groups.size() <= FEWEST_OTHERS) {
            return Optional.empty();
        }
        PartialPooling pooling = new PartialPooling(
                groups,
                between.stream().mapToDouble(variance -> variance.orElse(0)).toArray());
        PartialPooling.Known around = pooling.around(own.path).orElseThrow();
        PartialPooling.Known known = pooling.of(own.path);
        double ownVariance = ownTrial / own.summary.count();
        return Optional.of(new KnownFactor(
                known.mean(),
                profile.factorRounding().round(known.mean()),
                known.variance() / ownVariance,
                around.mean(),
                groups.size() - 1,
                (int) all.stream()
                                .filter(entry -> entry.mix().equals(own.mix()))
                                .count()
                        - 1,
                deviation(between.get(2)),
                deviation(between.get(1)),
                deviation(between.get(0))));
    }

    private static OptionalDouble deviation(OptionalDouble variance) {
        return variance.isPresent() ? OptionalDouble.of(Math.sqrt(variance.getAsDouble())) : variance;
    }

    /**
     * Tests whether the mixes scatter alike on a type of meter.
     *
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     */
    synchronized Judged<EqualScatterTest> equalScatter(MeterType type, double divisionPercent) {
        return tested.computeIfAbsent(
                new Scale(type, divisionPercent),
                any -> EqualScatterTest.judge(
                        divisionPercent,
                        type == MeterType.A,
                        List.copyOf(deviations(on(type)).values())));
    }

    /** A scale that trials are read on. */
    private record Scale(MeterType type, double divisionPercent) {}

    /** Returns how the trials of each mix scatter, as far as it has a determination of two. */
    private static Map<List<String>, PooledDeviation> deviations(List<Entry> all) {
        Map<List<String>, PooledDeviation> found = new LinkedHashMap<>();
        byMix(all).forEach((mix, sets) -> PooledDeviation.of(sets).ifPresent(pooled -> found.put(mix, pooled)));
        return found;
    }

    private static Map<List<String>, List<Summary>> byMix(List<Entry> all) {
        return all.stream()
                .collect(Collectors.groupingBy(
                        Entry::mix,
                        LinkedHashMap::new,
                        Collectors.mapping(entry -> entry.summary, Collectors.toList())));
    }

    /** Returns the variance of a trial of each mix, drawn towards the others; of no mix where none shows its scatter. */
    private static Map<List<String>, Double> trialVariances(List<Entry> all, double floor) {
        Map<List<String>, PooledDeviation> own = deviations(all);
        Optional<VariancePrior> prior = VariancePrior.of(List.copyOf(own.values()), floor);
        Map<List<String>, Double> found = new HashMap<>();
        for (List<String> mix : byMix(all).keySet()) {
            Optional<PooledDeviation> deviation = Optional.ofNullable(own.get(mix));
            double seen = deviation
                    .map(PooledDeviation::standardDeviation)
                    .map(s -> Math.max(floor, s * s))
                    .orElse(0.0);
            int degrees = deviation.map(PooledDeviation::degreesOfFreedom).orElse(0);
            prior.map(known -> known.shrink(seen, degrees).variance())
                    .or(() -> deviation.map(any -> seen))
                    .ifPresent(variance -> found.put(mix, variance));
        }
        return found;
    }

    /**
     * Returns what determinations of the same mix of the same sources differ by, beyond the scatter of their trials; empty where fewer
     * than {@link #FEWEST_DEGREES} degrees of freedom show it.
     *
     * <p>Of its degrees of freedom, those of its line of the analysis of variance, it has the square of the part of that line's mean
     * square that it makes up, as in {@link OccasionScatter}.
     *
     * @param type the type of meter
     */
    Optional<BetweenSets> determinations(MeterType type) {
        List<Entry> all = on(type);
        int trials = all.stream().mapToInt(entry -> entry.factors.length).sum();
        double degrees =
                all.size() - (double) all.stream().map(Entry::mix).distinct().count();
        Optional<List<OptionalDouble>> found = degrees < FEWEST_DEGREES ? Optional.empty() : layers(type);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble between = found.get().get(2);
        OptionalDouble values = found.get().get(3);
        if (between.isEmpty() || values.isEmpty()) {
            return Optional.empty();
        }
        double variance = between.getAsDouble();
        double within = values.getAsDouble() * all.size() / trials;
        double part = variance == 0 ? 1 : variance / (variance + within);
        return Optional.of(new BetweenSets(Math.sqrt(variance), Math.max(LEAST_DEGREES, degrees * part * part)));
    }

    /** Returns the standard deviation of what determinations differ by, however few show it, in % air; empty where none do. */
    OptionalDouble determinationsSeen(MeterType type) {
        return on(type).isEmpty()
                ? OptionalDouble.empty()
                : layers(type).map(found -> deviation(found.get(2))).orElse(OptionalDouble.empty());
    }

    private Optional<List<OptionalDouble>> between(MeterType type) {
        return layers(type).map(found -> found.subList(0, found.size() - 1));
    }

    /** Is asked again and again while a page is looked at, and takes a while in a large lab book. */
    private synchronized Optional<List<OptionalDouble>> layers(MeterType type) {
        return variances.computeIfAbsent(type, this::estimate);
    }

    /**
     * Estimates the variances between sources, mixes and determinations, and that of trials; a layer that is not told apart counts in
     * that around it.
     */
    private Optional<List<OptionalDouble>> estimate(MeterType type) {
        List<List<String>> paths = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (Entry entry : on(type)) {
            for (double factor : entry.factors) {
                paths.add(entry.path);
                values.add(factor);
            }
        }
        return VarianceLayers.variances(
                        paths, values.stream().mapToDouble(Double::doubleValue).toArray())
                .meaningful();
    }
}
