package porebench.evidence;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;

/**
 * How it stood with a mix's factor at moments that have passed: what made a factor untrue only afterwards does not count, as it does
 * where somebody asks what holds now.
 *
 * <p>A revision begins and is replaced to the minute. Lapsing, another stone and changed evidence count by days, as {@link CoveredSpell}
 * has them.
 */
public final class FactorThen {
    private final Evidence evidence;
    private final Map<List<Integer>, List<CoveredSpell>> spells = new HashMap<>();

    public FactorThen(Evidence evidence) {
        this.evidence = evidence;
    }

    /** Returns the evidence that is asked. */
    public Evidence evidence() {
        return evidence;
    }

    /** Returns the revision that a crew could rightly subtract at a moment; empty where there was none. */
    public Optional<FactorIssue> usableAt(LocalDateTime moment) {
        return stateAt(moment).isUsable() ? evidence.inForceAt(moment) : Optional.empty();
    }

    /** Returns how it stood with the factor at a moment. */
    public FactorState stateAt(LocalDateTime moment) {
        Optional<FactorIssue> begun = evidence.begunBy(moment);
        if (begun.isEmpty()) {
            return FactorState.NO_FACTOR;
        }
        FactorIssue issue = begun.get();
        if (!issue.isIssue()) {
            return FactorState.WITHDRAWN;
        }
        if (issue.origin() == FactorOrigin.IMPORTED) {
            return FactorState.NOT_VERIFIED;
        }
        LocalDate day = moment.toLocalDate();
        FactorState byRules = evidence.recheck(issue).stateOn(day);
        if (!byRules.isUsable() || isCovered(moment)) {
            return byRules;
        }
        FactorState now = evidence.stateAt(moment);
        return now.isUsable() ? FactorState.EVIDENCE_CHANGED : now;
    }

    private boolean isCovered(LocalDateTime moment) {
        if (!evidence.lent().isEmpty()) {
            // What is lent ends by the revisions of another mix as well.
            return isIn(CoveredSpell.of(evidence, moment), moment);
        }
        List<Integer> begun = evidence.issues().stream()
                .filter(version -> !version.value().begins().isAfter(moment))
                .map(version -> version.value().revision())
                .toList();
        return isIn(spells.computeIfAbsent(begun, any -> CoveredSpell.of(evidence, moment)), moment);
    }

    private static boolean isIn(List<CoveredSpell> spells, LocalDateTime moment) {
        return spells.stream().anyMatch(spell -> spell.holds(moment.toLocalDate()));
    }
}
