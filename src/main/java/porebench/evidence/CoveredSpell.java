package porebench.evidence;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Source;
import porebench.record.book.Version;
import porebench.record.id.SourceId;

/**
 * A time without a gap in which a mix had a factor that might be used, as its lab book shows it today.
 *
 * <p>A revision begins such a time on its first day. The time ends where the next revision begins, on the day after the one to recheck
 * by, or on the day on which something that makes the factor untrue was kept. Days of keeping are those of UTC: near midnight the day
 * may be the one before or after that of the laboratory's wall.
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
        List<CoveredSpell> spells = new ArrayList<>();
        for (Version<FactorIssue> version : evidence.issues()) {
            FactorIssue issue = version.value();
            LocalDate end = end(evidence, version);
            if (issue.isIssue()
                    && issue.origin() != FactorOrigin.IMPORTED
                    && issue.inForceFrom().isBefore(end)) {
                add(spells, new CoveredSpell(issue.inForceFrom(), end));
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

    private static LocalDate end(Evidence evidence, Version<FactorIssue> version) {
        FactorIssue issue = version.value();
        Stream<LocalDate> next = evidence.issues().stream()
                .map(Version::value)
                .filter(other -> other.revision() > issue.revision())
                .map(FactorIssue::inForceFrom);
        Stream<LocalDate> untrue = Stream.concat(
                        new EvidenceChanges(evidence).begun(version).stream(),
                        evidence.changesSince(issue).stream().map(change -> begun(evidence, change)))
                .map(at -> at.atOffset(ZoneOffset.UTC).toLocalDate());
        return Stream.concat(
                        Stream.concat(next, untrue), Stream.of(issue.recheckBy().plusDays(1)))
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** Returns when a change was kept: with the newest version of the source or the mix. */
    private static Instant begun(Evidence evidence, Evidence.AggregateChange change) {
        return change.source()
                .flatMap(id -> newest(evidence, id))
                .map(version -> version.stamp().at())
                .orElseGet(() -> evidence.mix().stamp().at());
    }

    private static Optional<Version<Source>> newest(Evidence evidence, SourceId id) {
        return evidence.sources().stream()
                .filter(version -> version.value().id().equals(id))
                .findFirst();
    }
}
