package porebench.store.chain;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteErrorCode;
import porebench.method.Answer;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.port.ChainSource;
import porebench.port.OpeningRefused;
import porebench.record.PhotoFile;
import porebench.record.RecordKind;
import porebench.record.SheetPhoto;
import porebench.record.chain.ChainEntry;
import porebench.record.chain.ChainOutline;
import porebench.record.chain.ChainRow;
import porebench.record.chain.Head;
import porebench.store.rows.PhotoTable;
import porebench.store.rows.RecordTable;
import porebench.store.rows.StoredRecord;
import porebench.store.rows.StoredRow;

/**
 * Puts the entries of another lab book into an empty one, exactly as they were. Every hash is checked on the way, and what was
 * put in is read again and compared, so that the order of the rows is kept, too.
 */
public final class Rebuilding {
    private final Handle handle;
    private final Unrolling stored;
    private final PhotoTable photos;
    private final Map<String, RecordTable<?>> byKind = new HashMap<>();

    public Rebuilding(Handle handle) {
        this.handle = handle;
        this.stored = new Unrolling(handle);
        this.photos = new PhotoTable(handle);
        RecordTable.all().forEach(table -> byKind.put(table.kind().symbol(), table));
    }

    /** Refuses tables and columns that no lab book of this program has; only names that are known come into SQL. */
    public void checkTables(ChainOutline outline) {
        Map<String, List<String>> known = new HashMap<>();
        stored.tables().forEach(table -> known.put(table.name(), table.columns()));
        for (ChainOutline.TableOutline table : outline.tables()) {
            List<String> columns = known.get(table.name());
            if (columns == null) {
                throw refused(table.heading(), 0, "whole.table-unknown", table.name());
            }
            for (int i = 0; i < table.columns().size(); i++) {
                if (!columns.contains(table.columns().get(i))) {
                    throw refused(
                            table.heading(),
                            i + 1,
                            "whole.column-unknown",
                            table.columns().get(i));
                }
            }
        }
    }

    /** Takes all entries. */
    public void take(ChainSource source) {
        ChainOutline outline = source.outline();
        List<String> entryColumns = outline.tables().get(0).columns();
        ChainEnd before = ChainEnd.OF_NONE;
        try (Insertions insertions = new Insertions(handle)) {
            for (Optional<ChainEntry> next = source.next(); next.isPresent(); next = source.next()) {
                before = take(next.get(), before, entryColumns, insertions, source)
                        .end();
            }
        }
        if (before.number() != outline.entries() || !before.hash().equals(outline.hash())) {
            throw refused(
                    outline.place(),
                    0,
                    "whole.end",
                    outline.entries(),
                    outline.head().printed(),
                    before.number(),
                    Head.of(before.hash(), before.number()).printed());
        }
    }

    private Entry take(
            ChainEntry chained, ChainEnd before, List<String> columns, Insertions insertions, ChainSource source) {
        Place place = chained.entry().place();
        if (chained.number() != before.number() + 1) {
            throw refused(
                    place,
                    columns.indexOf(ChainEntry.NUMBER) + 1,
                    "whole.entry-order",
                    chained.number(),
                    before.number() + 1);
        }
        Entry entry = Entry.of(chained).orElseThrow(() -> refused(place, 0, "whole.not-taken", chained.number()));
        if (!entry.follows(before)) {
            throw refused(place, columns.indexOf("previous_hash") + 1, "whole.previous-hash", entry.number());
        }
        if (!entry.hash().equals(entry.computedHash())) {
            throw refused(place, 0, "whole.entry-changed", entry.number());
        }
        RecordTable<?> table = Optional.<RecordTable<?>>ofNullable(byKind.get(entry.kind()))
                .orElseThrow(() -> refused(place, columns.indexOf("kind") + 1, "whole.kind-unknown", entry.kind()));
        insert(entry, table, chained, insertions, source);
        return entry;
    }

    private void insert(
            Entry entry, RecordTable<?> table, ChainEntry chained, Insertions insertions, ChainSource source) {
        StoredRecord record = record(entry, table, chained);
        Place place = chained.rows().get(0).place();
        if (!entry.contentHash().equals(Canonical.hash(Canonical.text(record)))) {
            throw refused(place, 0, "whole.record-changed", table.kind().word(), entry.recordId(), entry.number());
        }
        if (table.kind() == RecordKind.SHEET_PHOTO) {
            photo(entry, record, place, source);
        }
        try {
            insertions.append(entry, record);
        } catch (JdbiException failure) {
            if (failure.getCause() instanceof SQLException cause && isNotAllowed(cause)) {
                throw refused(place, 0, "whole.not-taken", entry.number());
            }
            throw failure;
        }
        checkOrder(entry, chained.rows(), stored.rows(table, entry.number()));
    }

    /** Puts the bytes of a photo before its row, which refers to them. */
    private void photo(Entry entry, StoredRecord record, Place place, ChainSource source) {
        SheetPhoto photo;
        try {
            photo = RecordTable.of(SheetPhoto.class).value(record);
        } catch (RuntimeException noPhoto) {
            throw refused(place, 0, "whole.not-taken", entry.number());
        }
        if (!photos.holds(photo.file().sha256())) {
            Answer<PhotoFile> found = source.photo(photo.file());
            found.problems().stream().filter(Problem::isError).findFirst().ifPresent(problem -> {
                throw new OpeningRefused(problem.at(place));
            });
            found.value().ifPresent(photos::keep);
        }
    }

    /** Returns whether the tables do not allow a row, rather than the file or the disk failing. */
    private static boolean isNotAllowed(SQLException cause) {
        int primary = cause.getErrorCode() & 0xFF;
        return primary == SQLiteErrorCode.SQLITE_CONSTRAINT.code || primary == SQLiteErrorCode.SQLITE_MISMATCH.code;
    }

    private static StoredRecord record(Entry entry, RecordTable<?> table, ChainEntry chained) {
        List<StoredRow> parts = new ArrayList<>();
        Optional<StoredRow> own = Optional.empty();
        for (ChainRow row : chained.rows()) {
            if (row.table().equals(table.name()) && own.isEmpty()) {
                own = Optional.of(storedRow(row));
            } else if (table.partTables().contains(row.table())) {
                parts.add(storedRow(row));
            } else {
                throw refused(
                        row.place(),
                        0,
                        "whole.stray",
                        entry.number(),
                        table.kind().word(),
                        entry.recordId());
            }
        }
        StoredRow row = own.orElseThrow(() -> refused(
                chained.entry().place(),
                0,
                "whole.record-missing",
                table.kind().word(),
                entry.recordId(),
                entry.number()));
        return new StoredRecord(row, parts);
    }

    private static StoredRow storedRow(ChainRow row) {
        StoredRow stored = new StoredRow(row.table());
        row.cells().forEach(stored::cell);
        return stored;
    }

    private static void checkOrder(Entry entry, List<ChainRow> read, List<ChainRow> kept) {
        for (int i = 0; i < read.size(); i++) {
            SortedMap<String, String> cells = i < kept.size() ? kept.get(i).cells() : new TreeMap<>();
            if (!read.get(i).cells().equals(cells)) {
                throw refused(read.get(i).place(), 0, "whole.parts-order", entry.number());
            }
        }
    }

    private static OpeningRefused refused(Place place, int column, String code, Object... values) {
        return new OpeningRefused(Problem.error("file", code, values)
                .at(column == 0 ? place : new Place(place.file(), place.line(), Optional.of(column))));
    }
}
