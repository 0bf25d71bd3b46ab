package porebench.record.book;

import java.time.LocalDateTime;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import porebench.method.Glyphs;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.PhotoFile;
import porebench.record.RecordKind;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** Records that can be looked up: those of a lab book, or those it would hold if some drafts were kept. */
public interface Records {
    /** Returns the newest version of every record of a kind, in the order of their ids. */
    <T extends Kept> List<Version<T>> latest(Class<T> kind);

    /** Hands out the newest version of every record of a kind, in the order of their ids, one after the other; few are held. */
    default <T extends Kept> void each(Class<T> kind, Consumer<Version<T>> taker) {
        latest(kind).forEach(taker);
    }

    /** Returns the newest version of one record. */
    <T extends Kept> Optional<Version<T>> latest(Class<T> kind, String recordId);

    /** Returns the newest version of some records by their names; a name that no record of the kind has is left out. */
    default <T extends Kept> Map<String, Version<T>> latest(Class<T> kind, Collection<String> recordIds) {
        Map<String, Version<T>> found = new HashMap<>();
        recordIds.forEach(id -> latest(kind, id).ifPresent(version -> found.put(id, version)));
        return found;
    }

    /** Returns one version of a record. */
    default <T extends Kept> Optional<Version<T>> version(Class<T> kind, String recordId, int number) {
        return history(kind, recordId).stream()
                .filter(version -> version.number() == number)
                .findFirst();
    }

    /** Returns the newest version of every record that now belongs to the one of a name, in the order of their ids. */
    default <T extends Kept> List<Version<T>> latestOf(Belonging<T> belonging, String ownerId) {
        return latest(belonging.kind()).stream()
                .filter(version -> belonging.holds(version.value(), ownerId))
                .toList();
    }

    /** Returns the newest version of every record that now belongs to one of several, each once, in the order of their ids. */
    default <T extends Kept> List<Version<T>> latestOf(Belonging<T> belonging, Collection<String> ownerIds) {
        Map<String, Version<T>> found = new HashMap<>();
        ownerIds.forEach(owner -> latestOf(belonging, owner)
                .forEach(version -> found.put(version.value().recordId(), version)));
        return found.values().stream()
                .sorted(Comparator.comparing(version -> version.value().recordId()))
                .toList();
    }

    /**
     * Returns the newest version of every field reading of a span of time, in the order of their ids.
     *
     * @param from the first moment
     * @param until the first moment after it
     */
    default List<Version<FieldReading>> readingsBetween(LocalDateTime from, LocalDateTime until) {
        return latest(FieldReading.class).stream()
                .filter(version -> !version.value().readAt().isBefore(from)
                        && version.value().readAt().isBefore(until))
                .toList();
    }

    /** Returns the mixes that now have trials on a meter, in the order of their names. */
    default List<MixId> mixesOn(MeterId meter) {
        return latestOf(Belonging.TRIALS_ON_METER, meter.text()).stream()
                .map(trial -> trial.value().mixId())
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * Returns the file of a photo with its bytes, which no other question reads.
     *
     * @param stated what the photo's record says of it
     * @return empty when the bytes are not there, or are no longer those that were kept
     */
    default Optional<PhotoFile> withBytes(PhotoFile stated) {
        return Optional.empty();
    }

    /** Returns the names of all records of a kind. */
    default List<String> ids(RecordKind kind) {
        return latest(kind.type()).stream()
                .map(version -> version.value().recordId())
                .toList();
    }

    /**
     * Returns the names of records of a kind that look like some names, capital and small letters not told apart: by their look the
     * first in the order of their ids, which may be one of those names.
     */
    default Map<String, String> alike(RecordKind kind, Collection<String> names) {
        Set<String> looks = names.stream().map(Glyphs::lookWithoutCase).collect(Collectors.toSet());
        return ids(kind).stream()
                .filter(id -> looks.contains(Glyphs.lookWithoutCase(id)))
                .collect(Collectors.toMap(Glyphs::lookWithoutCase, id -> id, (first, later) -> first));
    }

    /** Returns all versions of one record, the first one first; empty when there is no such record. */
    <T extends Kept> List<Version<T>> history(Class<T> kind, String recordId);

    /** Returns all versions of each of some records by its name, the first one first; a record that is not there is left out. */
    default <T extends Kept> Map<String, List<Version<T>>> histories(Class<T> kind, Collection<String> recordIds) {
        Map<String, List<Version<T>>> found = new HashMap<>();
        for (String id : recordIds) {
            List<Version<T>> versions = history(kind, id);
            if (!versions.isEmpty()) {
                found.put(id, versions);
            }
        }
        return found;
    }
}
