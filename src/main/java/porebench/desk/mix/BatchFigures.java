package porebench.desk.mix;

import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Density;
import porebench.quantity.Mass;
import porebench.quantity.Volume;

/**
 * The figures of a batch shown beside its mix design.
 *
 * @param totalMass the sum of all masses as stated
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
        Mass total = new Mass(batch.constituents().stream()
                .mapToDouble(constituent -> constituent.mass().value().kilograms())
                .sum());
        double solidShare = 1 - batch.targetAirPercent().doubleValue() / 100;
        Batch whole = batch.withWetSieved(false);
        Optional<Volume> airFree = volume(new Batch(
                        whole.constituents(), new BatchVolume.FromConstituents(), whole.targetAirPercent(), false))
                .map(volume -> volume.times(solidShare));
        Optional<Volume> concrete = volumeKnown ? volume(whole) : Optional.empty();
        return new BatchFigures(
                total,
                airFree,
                concrete,
                batch.wetSieved() && volumeKnown ? volume(batch) : Optional.empty(),
                concrete.map(volume -> new Density(total.kilograms() / volume.cubicMetres())),
                airFree.isPresent() && concrete.isPresent()
                        ? OptionalDouble.of(100
                                * airFree.get().cubicMetres()
                                / concrete.get().cubicMetres())
                        : OptionalDouble.empty());
    }

    private static Optional<Volume> volume(Batch batch) {
        return CorrectionSample.of(batch, NOMINAL_BOWL).value().map(CorrectionSample::batchVolume);
    }
}
