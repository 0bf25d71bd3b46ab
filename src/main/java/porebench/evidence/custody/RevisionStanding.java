package porebench.evidence.custody;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.evidence.RegisterRow;
import porebench.record.FactorIssue;

/**
 * How it stands with the factor of a revision at a moment; it is the same for all cards of the revision.
 *
 * @param standing how it stands
 * @param since since when it does not hold; empty where it does, and where nothing says when that began
 * @param factorPercent the factor, in % air; empty where the revision is not in the lab book
 */
record RevisionStanding(CardStanding standing, Optional<LocalDateTime> since, Optional<BigDecimal> factorPercent) {
    /**
     * Returns how it stands with a revision.
     *
     * @param row how its mix stands in the register at the moment
     * @param issues the revisions of the mix; none is needed where the revision is the one in force
     */
    static RevisionStanding of(int revision, RegisterRow row, List<FactorIssue> issues, LocalDateTime at) {
        Optional<FactorIssue> own =
                issues.stream().filter(issue -> issue.revision() == revision).findFirst();
        boolean isInForce =
                row.revision().filter(inForce -> inForce == revision).isPresent();
        Optional<BigDecimal> factor =
                own.map(FactorIssue::factorPercent).or(() -> row.factorPercent().filter(any -> isInForce));
        List<FactorIssue> later = issues.stream()
                .filter(issue -> issue.revision() > revision)
                .filter(issue -> !issue.begins().isAfter(at))
                .sorted(Comparator.comparing(FactorIssue::begins).thenComparing(FactorIssue::revision))
                .toList();
        if (!later.isEmpty()) {
            boolean isGone = later.stream()
                    .max(Comparator.comparingInt(FactorIssue::revision))
                    .filter(FactorIssue::isIssue)
                    .isEmpty();
            return new RevisionStanding(
                    isGone ? CardStanding.WITHDRAWN : CardStanding.SUPERSEDED,
                    Optional.of(later.get(0).begins()),
                    factor);
        }
        if (own.filter(issue -> issue.begins().isAfter(at)).isPresent()) {
            return new RevisionStanding(CardStanding.NOT_YET, Optional.empty(), factor);
        }
        CardStanding standing = CardStanding.of(row.state());
        Optional<LocalDateTime> since =
                standing.isRecalled() ? row.uncoveredSince().map(day -> day.atStartOfDay()) : Optional.empty();
        return new RevisionStanding(standing, since, factor);
    }
}
