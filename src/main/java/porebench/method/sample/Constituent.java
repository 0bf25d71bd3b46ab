package porebench.method.sample;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.quantity.Mass;
import porebench.quantity.Typed;

/**
 * One constituent of a batch of concrete, as the mix design states it.
 *
 * @param name what the mix design calls it
 * @param role what it does in the concrete
 * @param sourceId the source it comes from, as the register of sources knows it; empty when none is named
 * @param mass its mass in the batch, as typed
 * @param state the moisture state of that mass; only aggregate can be anything but {@code SSD}
 * @param absorptionPercent water in the pores at SSD, in % of the oven-dry mass
 * @param moisturePercent total moisture of the material on the bench, in % of the oven-dry mass; empty means SSD
 * @param relativeDensity density over that of water at 1000 kg/m3, on the basis of the mass: oven-dry for an oven-dry mass,
 *     otherwise SSD
 * @param retainedPercent share of its mass held on the 37.5 mm (1 1/2 in.) sieve, in %
 */
public record Constituent(
        String name,
        Role role,
        Optional<String> sourceId,
        Typed<Mass> mass,
        MoistureState state,
        Optional<BigDecimal> absorptionPercent,
        Optional<BigDecimal> moisturePercent,
        Optional<BigDecimal> relativeDensity,
        BigDecimal retainedPercent) {

    /** Returns the source, or where none is named the constituent's own name. */
    public String sourceOrName() {
        return sourceId.orElse(name);
    }
}
