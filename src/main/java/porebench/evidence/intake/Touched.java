package porebench.evidence.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.RecordKind;
import porebench.record.Trial;
import porebench.record.book.Belonging;
import porebench.record.book.Progress;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.SourceId;

/**
 * What a lab book holds of the records that come in and of those they name: asked for once, kind by kind, before the first row is
 * looked at. A record that nobody foresaw is asked for when it is needed, once, too.
 */
final class Touched {
    private static final int PART = 2000;

    private final Records book;
    private final Map<RecordKind, Map<String, Optional<Version<? extends Kept>>>> known =
            new EnumMap<>(RecordKind.class);
    private final Map<DeterminationId, List<Trial>> trials = new HashMap<>();

    Touched(Records book, List<Incoming> incoming, Progress progress) {
        this.book = book;
        Map<RecordKind, Set<String>> named = new EnumMap<>(RecordKind.class);
        for (Incoming one : incoming) {
            named.computeIfAbsent(one.value().kind(), any -> new LinkedHashSet<>())
                    .add(one.value().recordId());
            namedBy(one.value())
                    .forEach((kind, ids) -> named.computeIfAbsent(kind, any -> new LinkedHashSet<>())
                            .addAll(ids));
        }
        named.forEach((kind, ids) ->
                inParts(List.copyOf(ids), progress, Progress.Stage.LOOKING_UP, part -> ask(kind.type(), kind, part)));
        askTrials(incoming);
    }

    private static Map<RecordKind, List<String>> namedBy(Kept value) {
        if (value instanceof Trial trial) {
            return Map.of(
                    RecordKind.MIX, List.of(trial.mixId().text()),
                    RecordKind.METER, List.of(trial.meterId().text()),
                    RecordKind.DETERMINATION, List.of(trial.determinationId().text()));
        }
        if (value instanceof Determination determination) {
            return Map.of(RecordKind.MIX, List.of(determination.mixId().text()));
        }
        if (value instanceof MixDesign mix) {
            return Map.of(
                    RecordKind.SOURCE,
                    mix.sources().stream().map(SourceId::text).toList());
        }
        if (value instanceof Production made) {
            return Map.of(RecordKind.MIX, List.of(made.mixId().text()));
        }
        if (value instanceof FieldReading reading) {
            return Map.of(
                    RecordKind.MIX,
                    List.of(reading.mixId().text()),
                    RecordKind.METER,
                    reading.meterId().stream().map(MeterId::text).toList());
        }
        if (value instanceof FactorProposal proposal) {
            return Map.of(
                    RecordKind.MIX,
                            List.of(
                                    proposal.mixId().text(),
                                    proposal.testedMix().text()),
                    RecordKind.DETERMINATION, List.of(proposal.determinationId().text()));
        }
        return value instanceof FactorIssue issue
                ? Map.of(
                        RecordKind.MIX,
                                List.of(issue.mixId().text(), issue.testedMix().text()),
                        RecordKind.DETERMINATION,
                                List.of(issue.determinationId().text()))
                : Map.of();
    }

    /** Hands out some things in parts, and says before each how far it is. */
    static <T> void inParts(List<T> all, Progress progress, Progress.Stage stage, Consumer<List<T>> taker) {
        for (int from = 0; from < all.size(); from += PART) {
            progress.at(stage, from, all.size());
            taker.accept(all.subList(from, Math.min(all.size(), from + PART)));
        }
    }

    private <T extends Kept> void ask(Class<T> type, RecordKind kind, Collection<String> ids) {
        Map<String, Version<T>> found = book.latest(type, ids);
        Map<String, Optional<Version<? extends Kept>>> ofKind = known.computeIfAbsent(kind, any -> new HashMap<>());
        ids.forEach(id -> ofKind.put(id, Optional.ofNullable(found.get(id))));
    }

    private void askTrials(List<Incoming> incoming) {
        List<String> determinations = of(Trial.class, incoming)
                .map(trial -> trial.determinationId().text())
                .distinct()
                .filter(id -> latest(RecordKind.DETERMINATION, id).isPresent())
                .toList();
        determinations.forEach(id -> trials.put(new DeterminationId(id), new ArrayList<>()));
        book.latestOf(Belonging.TRIALS_OF_DETERMINATION, determinations)
                .forEach(
                        trial -> Objects.requireNonNull(trials.get(trial.value().determinationId()))
                                .add(trial.value()));
    }

    /** Returns the newest version of a record, if the lab book holds it. */
    Optional<Version<? extends Kept>> latest(RecordKind kind, String recordId) {
        return known.computeIfAbsent(kind, any -> new HashMap<>())
                .computeIfAbsent(recordId, id -> book.latest(kind.type(), id).map(version -> version));
    }

    /** Returns the newest version of a record of a class, if the lab book holds it. */
    <T extends Kept> Optional<T> value(Class<T> type, RecordKind kind, String recordId) {
        return latest(kind, recordId).map(version -> type.cast(version.value()));
    }

    /** Returns the trials that a determination has in the lab book. */
    List<Trial> trialsOf(DeterminationId id) {
        return trials.computeIfAbsent(
                id,
                any -> latest(RecordKind.DETERMINATION, id.text()).isEmpty()
                        ? List.of()
                        : book.latestOf(Belonging.TRIALS_OF_DETERMINATION, id.text()).stream()
                                .map(Version::value)
                                .toList());
    }

    /** Returns the records of a class among those that come in. */
    static <T extends Kept> Stream<T> of(Class<T> type, List<Incoming> incoming) {
        return incoming.stream().map(Incoming::value).filter(type::isInstance).map(type::cast);
    }

    /** Returns the records of a class among those that come in, by what they belong to, in their order. */
    static <T extends Kept, K> Map<K, List<T>> grouped(Class<T> type, List<Incoming> incoming, Function<T, K> key) {
        return of(type, incoming).collect(Collectors.groupingBy(key));
    }
}
