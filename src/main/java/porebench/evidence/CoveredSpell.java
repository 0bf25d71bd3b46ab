package porebench.evidence;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.book.Version;

/**
 * A time without a gap in which a mix had a factor that might be used, as its lab book shows it today.
 *
 * <p>A day is covered when a factor may be used at its end. A revision begins such a time on its first day, whatever the hour. The time
 * ends where the next revision begins, where it lapses by a rule for rechecking, such as on the day after the one to recheck by, where a
 * source becomes another stone, or on the day on which something else that makes the factor untrue was kept. Days of keeping
 * are those of UTC: near midnight the day may be the one before or after that of the laboratory's wall. What was corrected several
 * times since, a mix or a trial, counts from its newest correction.
 *
 * @param from the first day
 * @param untilExclusive the first day after it
 */
public record CoveredSpell(LocalDate from, LocalDate untilExclusive) {
    public CoveredSpell {
        if (!from.isBefore(untilExclusive)) {
            throw new IllegalArgumentException("untilExclusive must be after " + from + ", but is " + untilExclusive);
        }
    }

    /** Returns whether a day lies in it. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(from) && day.isBefore(untilExclusive);
    }

    /** Returns the times in which a mix was covered, the first one first; between two of them there is a gap. */
    public static List<CoveredSpell> of(Evidence evidence) {
        return of(evidence, LocalDateTime.MAX);
    }

    /** Returns the times as they were before any revision that begins after a moment. */
    static List<CoveredSpell> of(Evidence evidence, LocalDateTime moment) {
        List<CoveredSpell> spells = new ArrayList<>();
        for (Version<FactorIssue> version : evidence.issues()) {
            FactorIssue issue = version.value();
            if (issue.begins().isAfter(moment)) {
                continue;
            }
            Optional<LocalDate[]> stones =
                    Optional.ofNullable(evidence.bases().get(issue.revision())).flatMap(Basis::daysOfItsStones);
            if (issue.isIssue() && issue.origin() != FactorOrigin.IMPORTED && stones.isPresent()) {
                LocalDate from = Collections.max(List.of(issue.inForceFrom(), stones.get()[0]));
                LocalDate end = Collections.min(List.of(end(evidence, version, moment), stones.get()[1]));
                if (from.isBefore(end)) {
                    add(spells, new CoveredSpell(from, end));
                }
            }
        }
        return List.copyOf(spells);
    }

    /** Returns the first day after the newest of some times that had begun by a day; empty when none had. */
    static Optional<LocalDate> endOfNewest(List<CoveredSpell> spells, LocalDate day) {
        return spells.stream()
                .filter(spell -> !spell.from().isAfter(day))
                .map(CoveredSpell::untilExclusive)
                .max(Comparator.naturalOrder());
    }

    private static void add(List<CoveredSpell> spells, CoveredSpell next) {
        int last = spells.size() - 1;
        if (last >= 0 && spells.get(last).untilExclusive().equals(next.from())) {
            spells.set(last, new CoveredSpell(spells.get(last).from(), next.untilExclusive()));
        } else {
            spells.add(next);
        }
    }

    private static LocalDate end(Evidence evidence, Version<FactorIssue> version, LocalDateTime moment) {
        FactorIssue issue = version.value();
        Stream<LocalDate> next = evidence.issues().stream()
                .map(Version::value)
                .filter(other -> other.revision() > issue.revision())
                .filter(other -> !other.begins().isAfter(moment))
                .map(FactorIssue::inForceFrom);
        Stream<Instant> untrue = Stream.concat(
                new EvidenceChanges(evidence).begun(version).stream(), otherAggregates(evidence, issue).stream());
        Stream<LocalDate> withdrawn = Lent.of(evidence, issue).stream()
                .flatMap(lent -> lent.withdrawals(moment))
                .map(day -> day.isBefore(issue.inForceFrom()) ? issue.inForceFrom() : day);
        return Stream.of(
                        next,
                        withdrawn,
                        untrue.map(at -> at.atOffset(ZoneOffset.UTC).toLocalDate()),
                        Stream.of(evidence.recheck(issue).lapsesOn()))
                .flatMap(days -> days)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** Returns when the mix, or the one tested for it, came to have other aggregates than a revision rests on: with its newest version. */
    private static Optional<Instant> otherAggregates(Evidence evidence, FactorIssue issue) {
        return Optional.ofNullable(evidence.bases().get(issue.revision()))
                .flatMap(basis -> basis.otherSince(evidence.mix(), evidence.proportionTolerance()));
    }
}
