package porebench.method.sample;

import porebench.method.MoistureState;
import porebench.method.Role;

/**
 * Conversion of one constituent between moisture states, and its absolute volume.
 *
 * <p>With m the oven-dry mass, a the absorption and w the total moisture, both over m: SSD mass m (1 + a), mass on the bench
 * m (1 + w), free water m (w - a), which is negative for material drier than SSD. Source: derived from the definitions of
 * ASTM C127 and C128 (recalled).
 *
 * <p>Callers have checked the constituent; a figure that is not known is NaN and makes what follows from it NaN.
 */
final class Materials {
    /** The density over which relative densities are stated here, in kg/m3: 62.4 lb/ft3 in US practice. */
    static final double WATER_KILOGRAMS_PER_CUBIC_METRE = 1000;

    private final Constituent constituent;
    /** Only aggregate has a moisture state; any other constituent counts as it is. */
    private final MoistureState state;

    private final double mass;
    private final double absorption;
    private final double moisture;

    Materials(Constituent constituent) {
        this.constituent = constituent;
        this.state = constituent.role().isAggregate() ? constituent.state() : MoistureState.SSD;
        this.mass = constituent.mass().value().kilograms();
        this.absorption = constituent
                .absorptionPercent()
                .map(percent -> percent.doubleValue() / 100)
                .orElse(Double.NaN);
        this.moisture = constituent
                .moisturePercent()
                .map(percent -> percent.doubleValue() / 100)
                .orElse(absorption);
    }

    /** Returns the oven-dry mass in kg, NaN when a moisture needed for it is not known. */
    double ovenDryKilograms() {
        return switch (state) {
            case OVEN_DRY -> mass;
            case SSD -> mass / (1 + absorption);
            case STOCK -> mass / (1 + moisture);
        };
    }

    /** Returns the mass in the moisture state on the bench, in kg. */
    double benchKilograms() {
        boolean asStated = state == MoistureState.STOCK
                || state == MoistureState.SSD && constituent.moisturePercent().isEmpty();
        return asStated ? mass : ovenDryKilograms() * (1 + moisture);
    }

    /** Returns the SSD mass in kg, NaN when the absorption needed for it is not known. */
    double ssdKilograms() {
        return state == MoistureState.SSD ? mass : ovenDryKilograms() * (1 + absorption);
    }

    /** Returns the free water that comes with the material on the bench, in kg; negative when it will take up water. */
    double freeWaterKilograms() {
        return benchKilograms() - ssdKilograms();
    }

    /** Returns the mass that goes into the batch with the water in its pores, in kg: oven-dry material as SSD. */
    double batchKilograms() {
        return state == MoistureState.OVEN_DRY ? ssdKilograms() : mass;
    }

    /** Returns the free water that the batch mass itself brings, in kg: only a stock mass brings any. */
    double freeWaterInBatchKilograms() {
        return state == MoistureState.STOCK ? mass - ssdKilograms() : 0;
    }

    /** Returns the absolute volume of the constituent without free water, in m3; NaN with no relative density. */
    double absoluteCubicMetres() {
        double basis = state == MoistureState.OVEN_DRY ? mass : ssdKilograms();
        return basis / (relativeDensity() * WATER_KILOGRAMS_PER_CUBIC_METRE);
    }

    /** Returns the share of the material that passes the 37.5 mm sieve: all of it, unless it is coarse aggregate. */
    double passingShare() {
        return constituent.role() == Role.COARSE
                ? 1 - constituent.retainedPercent().doubleValue() / 100
                : 1;
    }

    private double relativeDensity() {
        double otherwise = constituent.role() == Role.WATER ? 1 : Double.NaN;
        return constituent.relativeDensity().map(Number::doubleValue).orElse(otherwise);
    }
}
