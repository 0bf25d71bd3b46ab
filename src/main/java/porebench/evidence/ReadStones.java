package porebench.evidence;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.SourceId;
import porebench.record.source.SourceStory;

/** The stories of the sources that mixes name, each read once. */
final class ReadStones {
    private final Records book;
    private final Map<SourceId, Optional<SourceStory>> known = new ConcurrentHashMap<>();

    ReadStones(Records book) {
        this.book = book;
    }

    /** Returns the story of a source; empty when the lab book has no such source. */
    Optional<SourceStory> of(SourceId id) {
        return known.computeIfAbsent(id, any -> SourceStory.of(book, id));
    }

    /** Reads the sources that some mixes, their determinations and their factors name and that are not known yet, all at once. */
    void know(
            Collection<Version<MixDesign>> mixes,
            List<Version<Determination>> determinations,
            List<Version<FactorIssue>> issues) {
        List<SourceId> asked = Stream.of(
                        mixes.stream().flatMap(mix -> mix.value().sources().stream()),
                        determinations.stream().flatMap(made -> made.value().sourceVersions().keySet().stream()),
                        issues.stream().flatMap(issued -> issued.value().sourceVersions().keySet().stream()))
                .flatMap(ids -> ids)
                .distinct()
                .filter(id -> !known.containsKey(id))
                .toList();
        Map<String, List<Version<Source>>> found =
                book.histories(Source.class, asked.stream().map(SourceId::text).toList());
        asked.forEach(
                id -> known.put(id, Optional.ofNullable(found.get(id.text())).map(SourceStory::of)));
    }
}
