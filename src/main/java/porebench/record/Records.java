package porebench.record;

import java.util.List;
import java.util.Optional;

/** Records that can be looked up: those of a lab book, or those it would hold if some drafts were kept. */
public interface Records {
    /** Returns the newest version of every record of a kind, in the order of their ids. */
    <T extends Kept> List<Version<T>> latest(Class<T> kind);

    /** Returns the newest version of one record. */
    <T extends Kept> Optional<Version<T>> latest(Class<T> kind, String recordId);

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

    /** Returns the names of all records of a kind. */
    default List<String> ids(RecordKind kind) {
        return latest(kind.type()).stream()
                .map(version -> version.value().recordId())
                .toList();
    }

    /** Returns all versions of one record, the first one first; empty when there is no such record. */
    <T extends Kept> List<Version<T>> history(Class<T> kind, String recordId);
}
