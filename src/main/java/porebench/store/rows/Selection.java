package porebench.store.rows;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import porebench.record.RecordKind;

/**
 * Which entries of a lab book are meant.
 *
 * @param from the end of a query that gives them
 * @param names the names it is asked with
 */
public record Selection(String from, Map<String, ?> names) {
    /** SQLite takes 999 values in one query at the least. */
    public static final int MOST_NAMES = 500;

    /**
     * Returns the newest version of every record of a kind. Which entries these are the index tells alone; then they are taken in their
     * own order, and not here and there in the file in that of their names.
     */
    public static Selection newest(RecordKind kind) {
        return new Selection(
                "FROM entry WHERE entry_no IN (SELECT entry_no FROM newest_entry WHERE kind = :kind)",
                Map.of("kind", kind.symbol()));
    }

    /** Returns the newest version of one record. */
    public static Selection newest(RecordKind kind, String recordId) {
        return new Selection(
                "FROM newest_entry WHERE kind = :kind AND record_id = :record_id",
                Map.of("kind", kind.symbol(), "record_id", recordId));
    }

    /** Returns the newest version of each of some records. */
    public static Selection newest(RecordKind kind, List<String> recordIds) {
        Map<String, Object> names = numbered(recordIds);
        String list = listOf(names);
        names.put("kind", kind.symbol());
        return new Selection("FROM newest_entry WHERE kind = :kind AND record_id IN (" + list + ")", names);
    }

    /** Returns names in groups that one query can take. */
    public static List<List<String>> parts(Collection<String> names) {
        List<String> all = names.stream().distinct().sorted().toList();
        List<List<String>> parts = new ArrayList<>();
        for (int from = 0; from < all.size(); from += MOST_NAMES) {
            parts.add(all.subList(from, Math.min(all.size(), from + MOST_NAMES)));
        }
        return parts;
    }

    private static Map<String, Object> numbered(List<String> values) {
        Map<String, Object> names = new LinkedHashMap<>();
        values.forEach(value -> names.put("one" + names.size(), value));
        return names;
    }

    private static String listOf(Map<String, Object> names) {
        return names.keySet().stream().map(name -> ":" + name).collect(Collectors.joining(", "));
    }

    /** Returns all versions of one record. */
    public static Selection versions(RecordKind kind, String recordId) {
        return new Selection(
                "FROM entry WHERE kind = :kind AND record_id = :record_id",
                Map.of("kind", kind.symbol(), "record_id", recordId));
    }

    /** Returns all versions of each of some records. */
    public static Selection versions(RecordKind kind, List<String> recordIds) {
        Map<String, Object> names = numbered(recordIds);
        String list = listOf(names);
        names.put("kind", kind.symbol());
        return new Selection("FROM entry WHERE kind = :kind AND record_id IN (" + list + ")", names);
    }

    /** Returns one version of a record. */
    public static Selection version(RecordKind kind, String recordId, int number) {
        return new Selection(
                "FROM entry WHERE kind = :kind AND record_id = :record_id AND version = :version",
                Map.of("kind", kind.symbol(), "record_id", recordId, "version", number));
    }

    /** Returns the newest version of every record whose newest version names an owner in a column of its own or of its parts. */
    public static Selection belonging(RecordTable<?> table, String column, String ownerId) {
        return new Selection(ofThose(table, column, "= :owner"), Map.of("owner", ownerId));
    }

    /** Returns the newest version of every record whose newest version names one of some owners. */
    public static Selection belonging(RecordTable<?> table, String column, List<String> ownerIds) {
        Map<String, Object> names = numbered(ownerIds);
        return new Selection(ofThose(table, column, "IN (" + listOf(names) + ")"), names);
    }

    /** Returns the newest version of every record whose newest version has a text in a column from one up to, not with, another. */
    public static Selection between(RecordTable<?> table, String column, String from, String until) {
        return new Selection(
                ofThose(table, column, ">= :from AND " + column + " < :until"), Map.of("from", from, "until", until));
    }

    /** Their table tells the kind. Were the kind asked for, SQLite would go through all entries of that kind. */
    private static String ofThose(RecordTable<?> table, String column, String owners) {
        return "FROM newest_entry WHERE entry_no IN (SELECT entry_no FROM " + table.holding(column) + " WHERE " + column
                + " " + owners + ")";
    }

    /** Returns the entries themselves, the oldest first. */
    public Query entries(Handle handle) {
        return handle.createQuery(entriesText()).bindMap(names);
    }

    /** Returns the query that gives the entries. */
    public String entriesText() {
        return "SELECT entry_no, version, who, at_utc, why " + from + " ORDER BY entry_no";
    }

    /** Returns the rows of a table that belong to the entries. */
    Query rows(Handle handle, String table) {
        return handle.createQuery(rowsText(table)).bindMap(names);
    }

    /** Returns the query that gives the rows of a table. */
    public String rowsText(String table) {
        return "SELECT * FROM " + table + " WHERE entry_no IN (SELECT entry_no " + from + ")";
    }
}
