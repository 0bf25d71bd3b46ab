package porebench.method.sample;

import porebench.quantity.Density;
import porebench.quantity.Typed;
import porebench.quantity.Volume;

/** Where the volume of concrete in a batch comes from. */
public sealed interface BatchVolume {
    /**
     * The mix design states the volume.
     *
     * @param volume the volume of concrete in one batch, as typed
     */
    record Stated(Typed<Volume> volume) implements BatchVolume {}

    /** The absolute volumes of all constituents, plus the target air. */
    record FromConstituents() implements BatchVolume {}

    /**
     * The batch's total mass over a measured density, as ASTM C138 computes the yield (recalled).
     *
     * @param density the measured density of the fresh concrete, as typed
     */
    record FromDensity(Typed<Density> density) implements BatchVolume {}
}
