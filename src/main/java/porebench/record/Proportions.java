package porebench.record;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.sample.Batch;
import porebench.method.sample.Constituent;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Slack;
import porebench.quantity.Volume;

/**
 * In what proportion a mix design has its aggregates, by the masses of its batch as they are stated, each in its own moisture state.
 *
 * @param kilograms the mass of each aggregate in the batch, in kg
 * @param batchKilograms the mass of all constituents together, in kg
 * @param cubicMetres the concrete of the batch, with all its stone, in m3; empty when the design does not give it
 */
public record Proportions(Map<Part, Double> kilograms, double batchKilograms, OptionalDouble cubicMetres) {
    /** The volume of concrete does not depend on the bowl. */
    private static final Volume ANY_BOWL = new Volume(0.007);

    public Proportions {
        kilograms = Map.copyOf(kilograms);
    }

    /**
     * One aggregate of a mix.
     *
     * @param source its source, or its name where none is stated
     * @param role fine or coarse
     * @param state the moisture state of its mass
     * @param retainedPercent the share held on 37.5 mm, in %
     */
    public record Part(String source, Role role, MoistureState state, double retainedPercent) {}

    /** Returns the proportions of a mix design. */
    public static Proportions of(MixDesign mix) {
        Map<Part, Double> kilograms = new HashMap<>();
        double batch = 0;
        for (Constituent one : mix.batch().constituents()) {
            double mass = one.mass().value().kilograms();
            batch += mass;
            if (one.role().isAggregate()) {
                kilograms.merge(
                        new Part(
                                one.sourceOrName(),
                                one.role(),
                                one.state(),
                                one.retainedPercent().doubleValue()),
                        mass,
                        Double::sum);
            }
        }
        return new Proportions(kilograms, batch, cubicMetres(mix.batch()));
    }

    /** Wet sieving takes stone out of the sample, not out of what the plant makes. */
    private static OptionalDouble cubicMetres(Batch batch) {
        Batch whole = new Batch(batch.constituents(), batch.volume(), batch.targetAirPercent(), false);
        return CorrectionSample.of(whole, ANY_BOWL).value().stream()
                .mapToDouble(sample -> sample.batchVolume().cubicMetres())
                .filter(volume -> volume > 0)
                .findFirst();
    }

    /** Returns the mass of all aggregates in the batch, in kg. */
    public double aggregateKilograms() {
        return kilograms.values().stream().mapToDouble(mass -> mass).sum();
    }

    /**
     * Returns whether the aggregates are the same and none drifted beyond a tolerance: the share of each in the mass of all by no more
     * than so many percentage points, and the mass of all in a cubic metre of concrete by no more than as many per cent of itself.
     *
     * @param points the tolerance, at least 0
     */
    boolean isWithin(Proportions other, double points) {
        if (!kilograms.keySet().equals(other.kilograms.keySet())
                || cubicMetres.isPresent() != other.cubicMetres.isPresent()) {
            return false;
        }
        double all = aggregateKilograms();
        double otherAll = other.aggregateKilograms();
        double here = all / cubicMetres.orElse(1);
        double there = otherAll / other.cubicMetres.orElse(1);
        return kilograms.entrySet().stream()
                        .noneMatch(one -> Slack.isAbove(
                                Math.abs(100 * one.getValue() / all
                                        - 100 * other.kilograms.getOrDefault(one.getKey(), 0.0) / otherAll),
                                points))
                && !Slack.isAbove(100 * Math.abs(there - here) / here, points);
    }
}
