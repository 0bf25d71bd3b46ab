package porebench.method.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.Answer;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.quantity.Mass;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/**
 * The aggregate that stands in the bowl for the aggregate of the concrete it holds, and the waters that go with it.
 *
 * <p>Fs = (S / B) Fb and Cs = (S / B) Cb, with S the bowl volume, B the volume of concrete in the batch and Fb, Cb the batch
 * masses of fine and coarse aggregate, all in the moisture state on the bench. Several sizes each take the ratio S / B.
 *
 * <p>Source: ASTM C231, clause 6.2, and AASHTO T 152 (recalled); the same formula in JIS A 1128, clause 6 (seen).
 * Differences from the source: for wet-sieved concrete the stone held on 37.5 mm is left out and B is the volume that
 * passes, B' = Vc / (1 - As / 100) with Vc the air-free volume passing and As its air in % (derived, not a quoted clause).
 *
 * @param components one entry an aggregate constituent, in the order of the mix design
 * @param batchVolume the volume of concrete the batch masses stand for: B, or B' when wet-sieved
 * @param bowl the bowl volume S
 * @param oneThird the water that the standard starts with: a third of the bowl
 * @param inundation all the water that goes with the aggregate when the bowl is full, the first third among it: the bowl less
 *     the particles at SSD and less the free water they bring from the bench. It may be less than a third of the bowl. Empty when a relative density or absorption is not known.
 * @param withdrawal water to withdraw on a Type B meter, for the target air
 */
public record CorrectionSample(
        List<Component> components,
        Volume batchVolume,
        Volume bowl,
        Volume oneThird,
        Optional<Volume> inundation,
        Volume withdrawal) {
    public CorrectionSample {
        components = List.copyOf(components);
    }

    /**
     * One aggregate of the correction sample.
     *
     * @param name what the mix design calls it
     * @param source its source, or its name where none is stated
     * @param role fine or coarse
     * @param mass what to weigh, in the moisture state on the bench
     * @param ovenDryKilograms the same oven-dry, in kg; empty when the absorption needed for it is not known
     * @param passingShare the share of the material from the pile that the mass is sieved out of: below 1 only where the
     *     concrete is wet-sieved and some of its stone is held on 37.5 mm
     */
    public record Component(
            String name, String source, Role role, Mass mass, OptionalDouble ovenDryKilograms, double passingShare) {
        /** Returns what to take from the pile, before sieving, to be left with the mass; nothing where nothing passes. */
        public Mass fetched() {
            return passingShare > 0 ? mass.times(1 / passingShare) : mass;
        }
    }

    /**
     * Computes the correction sample of a batch for a bowl.
     *
     * @param batch the batch, wet-sieved or not as it says
     * @param bowl the bowl volume, greater than 0
     * @return the sample, or every reason why there can be none
     */
    public static Answer<CorrectionSample> of(Batch batch, Volume bowl) {
        List<Problem> problems = new ArrayList<>(BatchCheck.problems(batch));
        if (bowl.cubicMetres() <= 0) {
            problems.add(Problem.error("bowl", "sample.bowl-not-positive", bowl.in(VolumeUnit.LITRE)));
        } else if (!Limit.BOWL.holds(bowl.in(VolumeUnit.LITRE))) {
            problems.add(Problem.error(
                    "bowl",
                    "sample.bowl-impossible",
                    bowl.in(VolumeUnit.LITRE),
                    Limit.BOWL.lowInclusive(),
                    Limit.BOWL.highInclusive()));
        }
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        Volume concrete = Volumes.concrete(batch, problems);
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        CorrectionSample sample = compute(batch, bowl, concrete, problems);
        return Problem.anyError(problems) ? Answer.refused(problems) : Answer.of(sample, problems);
    }

    private static CorrectionSample compute(Batch batch, Volume bowl, Volume concrete, List<Problem> problems) {
        double ratio = bowl.cubicMetres() / concrete.cubicMetres();
        List<Component> components = new ArrayList<>();
        double solids = 0;
        double freeWater = 0;
        for (Constituent constituent : batch.constituents()) {
            if (constituent.role().isAggregate()) {
                Materials material = new Materials(constituent);
                double passing = batch.wetSieved() ? material.passingShare() : 1;
                double share = ratio * passing;
                components.add(component(constituent, material, share, passing));
                solids += share * material.absoluteCubicMetres();
                freeWater += share * material.freeWaterKilograms() / Materials.WATER_KILOGRAMS_PER_CUBIC_METRE;
            }
        }
        return new CorrectionSample(
                components,
                concrete,
                bowl,
                bowl.times(1.0 / 3),
                inundation(bowl, solids, freeWater, problems),
                bowl.times(batch.targetAirPercent().doubleValue() / 100));
    }

    private static Optional<Volume> inundation(Volume bowl, double solids, double freeWater, List<Problem> problems) {
        double room = bowl.cubicMetres() - solids;
        if (room <= 0) {
            problems.add(
                    Problem.error("bowl", "sample.aggregate-exceeds-bowl", litres(solids), bowl.in(VolumeUnit.LITRE)));
        } else if (freeWater > room) {
            problems.add(Problem.warning("bowl", "sample.too-wet-for-bowl", litres(freeWater), litres(room)));
        }
        return Double.isNaN(room - freeWater)
                ? Optional.empty()
                : Optional.of(new Volume(Math.max(0, room - freeWater)));
    }

    private static double litres(double cubicMetres) {
        return new Volume(cubicMetres).in(VolumeUnit.LITRE);
    }

    private static Component component(Constituent constituent, Materials material, double share, double passing) {
        double dry = material.ovenDryKilograms();
        return new Component(
                constituent.name(),
                constituent.sourceOrName(),
                constituent.role(),
                new Mass(share * material.benchKilograms()),
                Double.isNaN(dry) ? OptionalDouble.empty() : OptionalDouble.of(share * dry),
                passing);
    }

    /**
     * Returns the water to start with: a third of the bowl, or all the water the bowl takes beside this aggregate where that
     * is less. A full third would then run over when the last scoops go in, and carry fines out of the bowl.
     *
     * <p>Source: ASTM C231 and AASHTO T 152 for the third (recalled); that no more goes in than fits: derived, from the
     * volumes. While the water that fits is not known it is the third.
     */
    public Volume firstWater() {
        return inundation.filter(water -> water.compareTo(oneThird) < 0).orElse(oneThird);
    }

    /** Returns whether a third of the bowl is more water than the bowl takes beside this aggregate. */
    public boolean isThirdTooMuch() {
        return firstWater().compareTo(oneThird) < 0;
    }

    /** Returns the mass of all fine aggregate, in the moisture state on the bench. */
    public Mass fine() {
        return total(Role.FINE);
    }

    /** Returns the mass of all coarse aggregate, in the moisture state on the bench. */
    public Mass coarse() {
        return total(Role.COARSE);
    }

    private Mass total(Role role) {
        return new Mass(components.stream()
                .filter(component -> component.role() == role)
                .mapToDouble(component -> component.mass().kilograms())
                .sum());
    }
}
