package porebench.desk;

import porebench.evidence.hold.LaboratoryHolds;

/** Asks of which mixes field readings and densities part: one read for all mixes and all who show it. */
public record HoldsNow() implements Question<LaboratoryHolds> {
    @Override
    public LaboratoryHolds answer(Reading seen) {
        return LaboratoryHolds.of(seen.book(), seen.standing(), seen.rows(), seen.moment());
    }
}
