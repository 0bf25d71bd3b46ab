package porebench.store;

import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import porebench.record.RecordKind;

/**
 * Which entries of a lab book are meant.
 *
 * @param from the end of a query that gives them
 * @param names the names it is asked with
 */
record Selection(String from, Map<String, String> names) {
    /** Returns the newest version of every record of a kind. */
    static Selection newest(RecordKind kind) {
        return new Selection("FROM newest_entry WHERE kind = :kind", Map.of("kind", kind.symbol()));
    }

    /** Returns the newest version of one record. */
    static Selection newest(RecordKind kind, String recordId) {
        return new Selection(
                "FROM newest_entry WHERE kind = :kind AND record_id = :record_id",
                Map.of("kind", kind.symbol(), "record_id", recordId));
    }

    /** Returns all versions of one record. */
    static Selection versions(RecordKind kind, String recordId) {
        return new Selection(
                "FROM entry WHERE kind = :kind AND record_id = :record_id",
                Map.of("kind", kind.symbol(), "record_id", recordId));
    }

    /** Returns the entries themselves, the oldest first. */
    Query entries(Handle handle) {
        return handle.createQuery("SELECT entry_no, version, who, at_utc, why " + from + " ORDER BY entry_no")
                .bindMap(names);
    }

    /** Returns the rows of a table that belong to the entries. */
    Query rows(Handle handle, String table) {
        return handle.createQuery("SELECT * FROM " + table + " WHERE entry_no IN (SELECT entry_no " + from + ")")
                .bindMap(names);
    }
}
