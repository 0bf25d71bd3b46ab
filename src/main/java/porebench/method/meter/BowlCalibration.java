package porebench.method.meter;

import java.util.List;
import java.util.OptionalDouble;
import porebench.method.Answer;
import porebench.method.Profile;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.statistics.summary.Summary;

/**
 * The volume of a bowl from one or more fills with water, its spread and uncertainty, and whether size and shape fit.
 *
 * <p>Each fill gives V = m / rho, m being the mass of the water and rho its density; with the buoyancy of the air taken
 * out, m is {@link AirDensity#trueMassOfWater}. The bowl's volume is the mean of the fills.
 *
 * <p>Source: JIS A 1128, clause 5.1 (seen); buoyancy by OIML R 111-1:2004 (recalled). Differences from the source: several
 * fills instead of one.
 *
 * @param litres the volumes of the fills taken together, in L
 * @param fills the volume of each fill, in the order made
 * @param buoyancyCorrected whether the buoyancy of the air was taken out; without, volumes are about 0.1 % low
 * @param standardUncertaintyLitres of the mean, in L: scatter (from two fills on), digits of the weighings and of the
 *     water's temperature
 * @param checks size and, where it was measured, shape against the profile
 */
public record BowlCalibration(
        Summary litres,
        List<Volume> fills,
        boolean buoyancyCorrected,
        double standardUncertaintyLitres,
        List<MeterCheck> checks) {
    public BowlCalibration {
        fills = List.copyOf(fills);
        checks = List.copyOf(checks);
    }

    /**
     * Computes the volume of a bowl.
     *
     * @param fills what was weighed and measured
     * @param profile whose least volume and shape hold
     * @return the calibration with its doubts, or everything that is wrong with the weighings
     */
    public static Answer<BowlCalibration> of(BowlFills fills, Profile profile) {
        return new BowlWeighings(fills, profile).answer();
    }

    /** Returns the volume of the bowl. */
    public Volume volume() {
        return Volume.of(litres.mean(), VolumeUnit.LITRE);
    }

    /** Returns the standard deviation of the fills in % of the volume; empty for a single fill. */
    public OptionalDouble spreadPercent() {
        return litres.standardDeviation().isPresent()
                ? OptionalDouble.of(100 * litres.standardDeviation().getAsDouble() / litres.mean())
                : OptionalDouble.empty();
    }

    /** Returns whether size and shape fit the profile. */
    public boolean passes() {
        return checks.stream().allMatch(MeterCheck::passes);
    }
}
