package porebench.method.sample;

import java.math.BigDecimal;
import java.util.List;

/**
 * One batch of concrete: what is in it, how much concrete it makes, and the air expected of it.
 *
 * @param constituents all constituents, in the order of the mix design
 * @param volume where the volume of the batch comes from
 * @param targetAirPercent the air expected of the concrete in the bowl, in %: of the sieved concrete when it is wet-sieved
 * @param wetSieved whether the concrete is wet-sieved over 37.5 mm before the air test
 */
public record Batch(
        List<Constituent> constituents, BatchVolume volume, BigDecimal targetAirPercent, boolean wetSieved) {
    public Batch {
        constituents = List.copyOf(constituents);
    }

    /** Returns this batch with wet sieving switched on or off. */
    public Batch withWetSieved(boolean sieved) {
        return new Batch(constituents, volume, targetAirPercent, sieved);
    }
}
