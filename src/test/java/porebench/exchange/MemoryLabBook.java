package porebench.exchange;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import porebench.method.Problem;
import porebench.record.Draft;
import porebench.record.Kept;
import porebench.record.LabBook;
import porebench.record.RecordKind;
import porebench.record.Stamp;
import porebench.record.Version;

/** A lab book that lives as long as a test, so that files are tested without a database. */
final class MemoryLabBook implements LabBook {
    private static final Instant ALWAYS = Instant.parse("2026-11-25T08:00:00Z");

    private final Map<RecordKind, Map<String, List<Version<Kept>>>> kept = new EnumMap<>(RecordKind.class);
    private long changes;

    MemoryLabBook() {
        for (RecordKind kind : RecordKind.values()) {
            kept.put(kind, new TreeMap<>());
        }
    }

    @Override
    public String name() {
        return "memory";
    }

    @Override
    public <T extends Kept> List<Version<T>> latest(Class<T> kind) {
        return ofKind(kind).values().stream()
                .map(all -> as(kind, all.get(all.size() - 1)))
                .toList();
    }

    @Override
    public <T extends Kept> Optional<Version<T>> latest(Class<T> kind, String recordId) {
        List<Version<T>> all = history(kind, recordId);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    @Override
    public <T extends Kept> List<Version<T>> history(Class<T> kind, String recordId) {
        return ofKind(kind).getOrDefault(recordId, List.of()).stream()
                .map(version -> as(kind, version))
                .toList();
    }

    private Map<String, List<Version<Kept>>> ofKind(Class<? extends Kept> type) {
        return kept.entrySet().stream()
                .filter(entry -> entry.getKey().type().equals(type))
                .findFirst()
                .orElseThrow()
                .getValue();
    }

    private static <T extends Kept> Version<T> as(Class<T> kind, Version<Kept> version) {
        return new Version<>(kind.cast(version.value()), version.number(), version.stamp());
    }

    @Override
    public List<Problem> keep(List<Draft> drafts, String who, String why) {
        for (Draft draft : drafts) {
            List<Version<Kept>> all = kept.get(draft.value().kind())
                    .computeIfAbsent(draft.value().recordId(), id -> new ArrayList<>());
            if (all.size() != draft.basedOn()) {
                throw new IllegalStateException(
                        draft.value().recordId() + " is at version " + all.size() + ", not " + draft.basedOn());
            }
            all.add(new Version<>(draft.value(), draft.basedOn() + 1, new Stamp(who, ALWAYS, why)));
            changes++;
        }
        return List.of();
    }

    @Override
    public long changeNumber() {
        return changes;
    }

    @Override
    public List<Problem> verify() {
        return List.of();
    }

    @Override
    public void saveCopy(Path file) {
        throw new UnsupportedOperationException("a lab book in memory has no file");
    }

    @Override
    public void close() {}
}
