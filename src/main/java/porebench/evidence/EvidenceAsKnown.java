package porebench.evidence;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.source.SourceStory;

/**
 * What was known of a mix when something was said of it: its revisions and the stones of its sources as they stood in the lab book at an
 * instant, from the versions kept up to then. Nothing is kept for it: versions are only ever added.
 *
 * <p>Trials, meters and production are those of now. What changed of them made a factor untrue on the day on which it was kept, which
 * {@link FactorThen} asks for.
 *
 * @param now what is known now
 * @param book holds the earlier versions
 */
public record EvidenceAsKnown(Evidence now, Records book) {
    /** Returns what was known at an instant; empty where that is what is known now. */
    public Optional<Evidence> at(Instant instant) {
        List<SourceStory> stones = new ArrayList<>();
        Map<Integer, Basis> bases = now.bases();
        for (SourceStory story : now.stones()) {
            SourceStory then = then(story, instant);
            stones.add(then);
            if (!then.versions().equals(story.versions())) {
                bases = Basis.with(bases, then);
            }
        }
        List<Version<FactorIssue>> issues = now.issues().stream()
                .flatMap(issue -> then(issue, instant).stream())
                .toList();
        return issues.equals(now.issues()) && bases.equals(now.bases())
                ? Optional.empty()
                : Optional.of(new OtherEvidence(now).as(issues, stones, bases));
    }

    /** Returns the design of the mix as it stood at an instant; its first one where it was not there yet. */
    public MixDesign designAt(Instant instant) {
        Version<MixDesign> newest = now.mix();
        if (!newest.stamp().at().isAfter(instant)) {
            return newest.value();
        }
        List<Version<MixDesign>> versions =
                book.history(MixDesign.class, newest.value().recordId());
        return versions.stream()
                .filter(version -> !version.stamp().at().isAfter(instant))
                .reduce((earlier, later) -> later)
                .or(() -> versions.stream().findFirst())
                .orElse(newest)
                .value();
    }

    private Optional<Version<FactorIssue>> then(Version<FactorIssue> issue, Instant instant) {
        if (!issue.stamp().at().isAfter(instant)) {
            return Optional.of(issue);
        }
        return issue.number() == 1
                ? Optional.empty()
                : book.history(FactorIssue.class, issue.value().recordId()).stream()
                        .filter(version -> !version.stamp().at().isAfter(instant))
                        .reduce((earlier, later) -> later);
    }

    /** A source of which nothing was known yet is told as it is now: no revision from before rests on it. */
    private static SourceStory then(SourceStory story, Instant instant) {
        var versions = story.versions().stream()
                .filter(version -> !version.stamp().at().isAfter(instant))
                .toList();
        return versions.isEmpty() || versions.size() == story.versions().size() ? story : SourceStory.of(versions);
    }
}
