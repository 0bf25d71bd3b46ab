package porebench.store.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.PhotoFile;
import porebench.record.RecordKind;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.column.FieldReadingColumns;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.store.chain.EntryTable;
import porebench.store.file.StoreException;
import porebench.store.file.StoreException.Task;
import porebench.store.rows.PhotoTable;
import porebench.store.rows.RecordTable;
import porebench.store.rows.Selection;
import porebench.store.rows.StoredRows;
import porebench.store.rows.StoredTimes;

/** The records of a lab book as one transaction sees them. */
public final class StoredRecords implements Records {
    private final Handle handle;
    private final String name;

    public StoredRecords(Handle handle, String name) {
        this.handle = handle;
        this.name = name;
    }

    @Override
    public <T extends Kept> List<Version<T>> latest(Class<T> kind) {
        RecordTable<T> table = RecordTable.of(kind);
        return inOrder(read(table, Selection.newest(table.kind())));
    }

    @Override
    public <T extends Kept> void each(Class<T> kind, Consumer<Version<T>> taker) {
        RecordTable<T> table = RecordTable.of(kind);
        EntryTable history = new EntryTable(handle);
        List<String> ids = history.idsBehind(table.kind(), "", Selection.MOST_NAMES);
        while (!ids.isEmpty()) {
            inOrder(read(table, Selection.newest(table.kind(), ids))).forEach(taker);
            ids = history.idsBehind(table.kind(), ids.get(ids.size() - 1), Selection.MOST_NAMES);
        }
    }

    @Override
    public <T extends Kept> Optional<Version<T>> latest(Class<T> kind, String recordId) {
        RecordTable<T> table = RecordTable.of(kind);
        return read(table, Selection.newest(table.kind(), recordId)).stream().findFirst();
    }

    @Override
    public <T extends Kept> List<Version<T>> history(Class<T> kind, String recordId) {
        RecordTable<T> table = RecordTable.of(kind);
        return read(table, Selection.versions(table.kind(), recordId));
    }

    @Override
    public <T extends Kept> Map<String, List<Version<T>>> histories(Class<T> kind, Collection<String> recordIds) {
        RecordTable<T> table = RecordTable.of(kind);
        return Selection.parts(recordIds).stream()
                .flatMap(part -> read(table, Selection.versions(table.kind(), part)).stream())
                .collect(Collectors.groupingBy(version -> version.value().recordId()));
    }

    @Override
    public <T extends Kept> Optional<Version<T>> version(Class<T> kind, String recordId, int number) {
        RecordTable<T> table = RecordTable.of(kind);
        return read(table, Selection.version(table.kind(), recordId, number)).stream()
                .findFirst();
    }

    @Override
    public <T extends Kept> List<Version<T>> latestOf(Belonging<T> belonging, String ownerId) {
        RecordTable<T> table = RecordTable.of(belonging.kind());
        return inOrder(read(table, Selection.belonging(table, belonging.column(), ownerId)));
    }

    @Override
    public <T extends Kept> Map<String, Version<T>> latest(Class<T> kind, Collection<String> recordIds) {
        RecordTable<T> table = RecordTable.of(kind);
        Map<String, Version<T>> found = new HashMap<>();
        Selection.parts(recordIds)
                .forEach(part -> read(table, Selection.newest(table.kind(), part))
                        .forEach(version -> found.put(version.value().recordId(), version)));
        return found;
    }

    @Override
    public <T extends Kept> List<Version<T>> latestOf(Belonging<T> belonging, Collection<String> ownerIds) {
        RecordTable<T> table = RecordTable.of(belonging.kind());
        TreeMap<String, Version<T>> found = new TreeMap<>();
        Selection.parts(ownerIds)
                .forEach(part -> read(table, Selection.belonging(table, belonging.column(), part))
                        .forEach(version -> found.put(version.value().recordId(), version)));
        return List.copyOf(found.values());
    }

    @Override
    public List<Version<FieldReading>> readingsBetween(LocalDateTime from, LocalDateTime until) {
        RecordTable<FieldReading> table = RecordTable.of(FieldReading.class);
        return inOrder(read(
                table,
                Selection.between(table, FieldReadingColumns.READ_AT.name(), from.toString(), until.toString())));
    }

    /** Returns newest versions in the order of their ids; an id may be put together anew each time it is asked for, so it is asked once. */
    private static <T extends Kept> List<Version<T>> inOrder(Collection<Version<T>> newest) {
        TreeMap<String, Version<T>> byId = new TreeMap<>();
        newest.forEach(version -> byId.put(version.value().recordId(), version));
        return List.copyOf(byId.values());
    }

    @Override
    public List<MixId> mixesOn(MeterId meter) {
        return MixesOnMeter.read(handle, meter);
    }

    @Override
    public Optional<PhotoFile> withBytes(PhotoFile stated) {
        return new PhotoTable(handle).withBytes(stated);
    }

    @Override
    public List<String> ids(RecordKind kind) {
        return new EntryTable(handle).ids(kind);
    }

    @Override
    public Map<String, String> alike(RecordKind kind, Collection<String> names) {
        return new NameLooks(handle).alike(kind, names);
    }

    private <T extends Kept> List<Version<T>> read(RecordTable<T> table, Selection selection) {
        List<Found> found;
        try (Query entries = selection.entries(handle)) {
            found = entries.map((row, context) -> Found.of(row)).list();
        }
        if (found.isEmpty()) {
            return List.of();
        }
        StoredRows rows = StoredRows.read(handle, table, selection);
        List<Version<T>> versions = new ArrayList<>(found.size());
        Optional<Stamped> last = Optional.empty();
        for (Found entry : found) {
            // What was kept at one time says the same of who, when and why.
            Stamped stamped = last.filter(before -> before.isOf(entry)).orElseGet(() -> stamped(entry));
            versions.add(version(table, rows, entry, stamped.stamp()));
            last = Optional.of(stamped);
        }
        return versions;
    }

    /** What the entry of a version says of it. */
    private record Found(long entryNo, int number, String who, String atUtc, String why) {
        static Found of(ResultSet row) throws SQLException {
            return new Found(
                    row.getLong("entry_no"),
                    row.getInt("version"),
                    row.getString("who"),
                    row.getString("at_utc"),
                    row.getString("why"));
        }
    }

    /** The stamp that an entry's texts say. */
    private record Stamped(Found found, Stamp stamp) {
        boolean isOf(Found other) {
            return found.atUtc().equals(other.atUtc())
                    && found.who().equals(other.who())
                    && found.why().equals(other.why());
        }
    }

    private Stamped stamped(Found entry) {
        try {
            return new Stamped(entry, new Stamp(entry.who(), StoredTimes.instant(entry.atUtc()), entry.why()));
        } catch (RuntimeException tampered) {
            throw tampered(entry, tampered);
        }
    }

    private <T extends Kept> Version<T> version(RecordTable<T> table, StoredRows rows, Found entry, Stamp stamp) {
        try {
            return new Version<>(table.value(rows.of(entry.entryNo()).orElseThrow()), entry.number(), stamp);
        } catch (RuntimeException tampered) {
            throw tampered(entry, tampered);
        }
    }

    private StoreException tampered(Found entry, RuntimeException why) {
        return new StoreException(Task.READ_ENTRY, name, Long.toString(entry.entryNo()), why);
    }
}
