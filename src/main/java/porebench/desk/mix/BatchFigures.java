package porebench.desk.mix;

import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.MoistureState;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.sample.Constituent;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Density;
import porebench.quantity.Mass;
import porebench.quantity.Volume;

/**
 * The figures of a batch shown beside its mix design.
 *
 * @param totalMass the sum of all masses, oven-dry aggregate with the water in its pores
 * @param airFree the absolute volume of all constituents; empty when one of them is not known
 * @param concrete the volume of concrete of the whole batch; empty when it cannot be known
 * @param passing the volume of concrete that passes wet sieving; empty when it is not wet-sieved or cannot be known
 * @param density the total mass over the volume of concrete
 * @param airFreeSharePercent the absolute volume in % of the volume of concrete
 */
record BatchFigures(
        Mass totalMass,
        Optional<Volume> airFree,
        Optional<Volume> concrete,
        Optional<Volume> passing,
        Optional<Density> density,
        OptionalDouble airFreeSharePercent) {
    /** A usual bowl, as none is chosen on this page; no figure depends on it. */
    static final Volume NOMINAL_BOWL = new Volume(0.007);

    /**
     * Computes the figures of a batch.
     *
     * @param volumeKnown whether the target air and where the volume comes from are known; if not, no figure that follows
     *     from them is given
     */
    static BatchFigures of(Batch batch, boolean volumeKnown) {
        double air = batch.targetAirPercent().doubleValue() / 100;
        Mass total = new Mass(batch.constituents().stream()
                .mapToDouble(BatchFigures::batchKilograms)
                .sum());
        Optional<Volume> airFree = volume(new Batch(
                        batch.constituents(), new BatchVolume.FromConstituents(), batch.targetAirPercent(), false))
                .map(volume -> volume.times(1 - air));
        Optional<Volume> passing = batch.wetSieved() && volumeKnown ? volume(batch) : Optional.empty();
        Optional<Volume> concrete = volumeKnown ? concrete(batch, airFree, passing, air) : Optional.empty();
        boolean massKnown = batch.constituents().stream().noneMatch(BatchFigures::lacksPoreWater);
        return new BatchFigures(
                total,
                airFree,
                concrete,
                passing,
                concrete.filter(volume -> massKnown)
                        .map(volume -> new Density(total.kilograms() / volume.cubicMetres())),
                airFree.isPresent() && concrete.isPresent()
                        ? OptionalDouble.of(100
                                * airFree.get().cubicMetres()
                                / concrete.get().cubicMetres())
                        : OptionalDouble.empty());
    }

    /** The target air of a wet-sieved batch is that of what passes the sieve; the stone left out has none. */
    private static Optional<Volume> concrete(
            Batch batch, Optional<Volume> airFree, Optional<Volume> passing, double air) {
        if (batch.wetSieved() && batch.volume() instanceof BatchVolume.FromConstituents) {
            return airFree.flatMap(solid -> passing.map(volume -> solid.plus(volume.times(air))));
        }
        return volume(batch.withWetSieved(false));
    }

    /** Oven-dry material goes into the batch with the water in its pores. */
    private static double batchKilograms(Constituent constituent) {
        double stated = constituent.mass().value().kilograms();
        return isOvenDry(constituent)
                ? stated
                        * (1
                                + constituent
                                                .absorptionPercent()
                                                .map(Number::doubleValue)
                                                .orElse(0.0)
                                        / 100)
                : stated;
    }

    private static boolean lacksPoreWater(Constituent constituent) {
        return isOvenDry(constituent) && constituent.absorptionPercent().isEmpty();
    }

    private static boolean isOvenDry(Constituent constituent) {
        return constituent.role().isAggregate() && constituent.state() == MoistureState.OVEN_DRY;
    }

    private static Optional<Volume> volume(Batch batch) {
        return CorrectionSample.of(batch, NOMINAL_BOWL).value().map(CorrectionSample::batchVolume);
    }
}
