package porebench.evidence.field;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.evidence.paper.SievedAirs;
import porebench.method.air.AcceptanceLimits;
import porebench.method.air.AirVerdict;
import porebench.method.budget.Budget;
import porebench.record.FactorIssue;

/**
 * The air of a load from a field reading and the factor in force at its time.
 *
 * @param issue the revision that was subtracted, with its standing conditions
 * @param airPercent reading less factor at full precision, in % air; a dial's correction is not in it, as it is not on the card
 * @param reportedPercent the same, reported by the rule of the profile, in % air
 * @param rule where that rule stands
 * @param budget what the uncertainty of the air is made of; empty where the factor's own is not known
 * @param limits between which it is accepted
 * @param verdict what is said of the load; empty where the guard band that was asked for cannot be laid. Of wet-sieved concrete the
 *     air of the sieved concrete is judged, for which the target is stated
 * @param spread what the air of a wet-sieved concrete means for the full mixture and for the mortar; empty of any other concrete, and
 *     where its design does not give the volumes
 */
public record FieldAir(
        FactorIssue issue,
        BigDecimal airPercent,
        BigDecimal reportedPercent,
        String rule,
        Optional<Budget> budget,
        AcceptanceLimits limits,
        Optional<AirVerdict> verdict,
        Optional<SievedAirs.Spread> spread) {
    /** Returns the standard uncertainty of the air, in % air; empty where it is not known. */
    public OptionalDouble standardPercent() {
        return budget.map(known -> OptionalDouble.of(known.combinedPercent())).orElse(OptionalDouble.empty());
    }

    /** Returns the expanded uncertainty of the air at 95 %, in % air; empty where it is not known. */
    public OptionalDouble expandedPercent() {
        return budget.map(known -> OptionalDouble.of(known.expandedPercent())).orElse(OptionalDouble.empty());
    }

    /** Returns the probability that the true air lies within the tolerance, from 0 to 1; empty where the uncertainty is not known. */
    public OptionalDouble conforming() {
        return budget.map(known ->
                        OptionalDouble.of(limits.conforming(airPercent.doubleValue(), known.combinedPercent())))
                .orElse(OptionalDouble.empty());
    }

    /** Returns whether a person would be told the same by both: revision, factor, conditions, airs and verdict. */
    boolean saysTheSameAs(FieldAir other) {
        return issue.revision() == other.issue.revision()
                && issue.factorPercent().compareTo(other.issue.factorPercent()) == 0
                && issue.terms().conditions().equals(other.issue.terms().conditions())
                && reportedPercent.compareTo(other.reportedPercent) == 0
                && verdict.equals(other.verdict)
                && spread.equals(other.spread);
    }
}
