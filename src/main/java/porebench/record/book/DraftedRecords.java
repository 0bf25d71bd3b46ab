package porebench.record.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import porebench.record.Kept;
import porebench.record.PhotoFile;
import porebench.record.RecordKind;

/** The records of a lab book as they would be if some drafts were kept. */
public final class DraftedRecords implements Records {
    private final Records book;
    private final Map<RecordKind, Map<String, Draft>> drafts = new LinkedHashMap<>();
    private final Map<Belonging<?>, Map<String, List<String>>> drafted = new HashMap<>();
    private final Stamp stamp;

    public DraftedRecords(Records book, List<Draft> drafts, Stamp stamp) {
        this.book = book;
        this.stamp = stamp;
        drafts.forEach(draft -> this.drafts
                .computeIfAbsent(draft.value().kind(), any -> new LinkedHashMap<>())
                .put(draft.value().recordId(), draft));
    }

    private static RecordKind kindOf(Class<? extends Kept> type) {
        return List.of(RecordKind.values()).stream()
                .filter(kind -> kind.type().equals(type))
                .findFirst()
                .orElseThrow();
    }

    /** Returns a record of a kind that is to be kept, if one of this name is. */
    public <T extends Kept> Optional<T> draft(Class<T> kind, String recordId) {
        return drafted(kind, recordId).map(Version::value);
    }

    private <T extends Kept> Optional<Version<T>> drafted(Class<T> kind, String recordId) {
        return Optional.ofNullable(drafts.getOrDefault(kindOf(kind), Map.of()).get(recordId))
                .map(draft -> new Version<>(kind.cast(draft.value()), draft.number(), stamp));
    }

    @Override
    public <T extends Kept> List<Version<T>> latest(Class<T> kind) {
        Map<String, Version<T>> newest = new TreeMap<>();
        book.latest(kind).forEach(version -> newest.put(version.value().recordId(), version));
        drafts.getOrDefault(kindOf(kind), Map.of())
                .keySet()
                .forEach(id -> newest.put(id, drafted(kind, id).orElseThrow()));
        return List.copyOf(newest.values());
    }

    @Override
    public <T extends Kept> List<Version<T>> latestOf(Belonging<T> belonging, String ownerId) {
        RecordKind kind = kindOf(belonging.kind());
        Map<String, Version<T>> newest = new TreeMap<>();
        book.latestOf(belonging, ownerId).stream()
                .filter(version -> !drafts.getOrDefault(kind, Map.of())
                        .containsKey(version.value().recordId()))
                .forEach(version -> newest.put(version.value().recordId(), version));
        drafted.computeIfAbsent(belonging, this::byOwner)
                .getOrDefault(ownerId, List.of())
                .forEach(id -> newest.put(id, drafted(belonging.kind(), id).orElseThrow()));
        return List.copyOf(newest.values());
    }

    private <T extends Kept> Map<String, List<String>> byOwner(Belonging<T> belonging) {
        Map<String, List<String>> byOwner = new HashMap<>();
        drafts.getOrDefault(kindOf(belonging.kind()), Map.of()).values().forEach(draft -> {
            T value = belonging.kind().cast(draft.value());
            belonging
                    .owners()
                    .apply(value)
                    .distinct()
                    .forEach(owner -> byOwner.computeIfAbsent(owner, any -> new ArrayList<>())
                            .add(value.recordId()));
        });
        return byOwner;
    }

    @Override
    public <T extends Kept> Optional<Version<T>> latest(Class<T> kind, String recordId) {
        return drafted(kind, recordId).or(() -> book.latest(kind, recordId));
    }

    @Override
    public Optional<PhotoFile> withBytes(PhotoFile stated) {
        return book.withBytes(stated);
    }

    @Override
    public List<String> ids(RecordKind kind) {
        TreeSet<String> ids = new TreeSet<>(book.ids(kind));
        ids.addAll(drafts.getOrDefault(kind, Map.of()).keySet());
        return List.copyOf(ids);
    }

    @Override
    public <T extends Kept> List<Version<T>> history(Class<T> kind, String recordId) {
        List<Version<T>> versions = new ArrayList<>(book.history(kind, recordId));
        drafted(kind, recordId).ifPresent(versions::add);
        return versions;
    }
}
