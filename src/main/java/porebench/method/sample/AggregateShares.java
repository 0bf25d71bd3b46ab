package porebench.method.sample;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import porebench.method.Problem;
import porebench.quantity.Volume;

/**
 * What share of the aggregate of a concrete comes from each source, and how much aggregate stands in a cubic metre of it: with
 * these two, the bowl holds the same of each source whatever its volume.
 *
 * <p>Masses are those at SSD, whatever state the design states them in, so that two designs can be compared. For wet-sieved concrete
 * they are those of what passes 37.5 mm. Source: derived from the masses of the bowl, Fs = (S / B) Fb and Cs = (S / B) Cb, of
 * {@link CorrectionSample}; no published definition.
 *
 * @param percent the share of each source in the mass of all aggregate, in %; a constituent without a source by its name
 * @param kilogramsPerCubicMetre the mass of all aggregate in a cubic metre of concrete, in kg/m3
 */
public record AggregateShares(SortedMap<String, Double> percent, double kilogramsPerCubicMetre) {
    public AggregateShares {
        percent = Collections.unmodifiableSortedMap(new TreeMap<>(percent));
    }

    /** Returns the shares of a batch; empty where its figures cannot be right, or do not give the masses at SSD or the volume. */
    public static Optional<AggregateShares> of(Batch batch) {
        List<Problem> problems = new ArrayList<>(BatchCheck.problems(batch));
        if (Problem.anyError(problems)) {
            return Optional.empty();
        }
        Volume concrete = Volumes.concrete(batch, problems);
        SortedMap<String, Double> masses = new TreeMap<>();
        double all = 0;
        for (Constituent constituent : batch.constituents()) {
            if (constituent.role().isAggregate()) {
                Materials material = new Materials(constituent);
                double mass = material.ssdKilograms() * (batch.wetSieved() ? material.passingShare() : 1);
                masses.merge(constituent.sourceOrName(), mass, Double::sum);
                all += mass;
            }
        }
        double perCubicMetre = all / concrete.cubicMetres();
        if (Problem.anyError(problems) || !(all > 0) || !Double.isFinite(perCubicMetre)) {
            return Optional.empty();
        }
        double whole = all;
        masses.replaceAll((source, mass) -> 100 * mass / whole);
        return Optional.of(new AggregateShares(masses, perCubicMetre));
    }
}
