package porebench.store.chain;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import porebench.record.chain.ChainEntry;
import porebench.record.chain.ChainRow;
import porebench.store.rows.StoredRow;

/**
 * One entry of the append-only history: one version of a record, chained to the entry before.
 *
 * @param number counted from 1 without gaps
 * @param kind the word for the kind of record
 * @param recordId the name of the record
 * @param version the version, counted from 1
 * @param who who kept it
 * @param atUtc when, as ISO 8601 text in UTC
 * @param why why
 * @param contentHash the hash of the record as stored
 * @param previousHash the hash of the entry before
 * @param hash the hash of all of the above
 */
public record Entry(
        long number,
        String kind,
        String recordId,
        int version,
        String who,
        String atUtc,
        String why,
        String contentHash,
        String previousHash,
        String hash) {
    /** Returns where the chain ends with this entry. */
    public ChainEnd end() {
        return new ChainEnd(number, hash);
    }

    Entry sealed() {
        return new Entry(number, kind, recordId, version, who, atUtc, why, contentHash, previousHash, computedHash());
    }

    /** Returns the hash that this entry must have. */
    public String computedHash() {
        return Canonical.hash(Canonical.text(
                previousHash,
                Long.toString(number),
                kind,
                recordId,
                Integer.toString(version),
                who,
                atUtc,
                why,
                contentHash));
    }

    /** Returns whether this entry stands right after the end of a chain. */
    public boolean follows(ChainEnd before) {
        return number == before.number() + 1 && previousHash.equals(before.hash());
    }

    /** Returns the row of this entry, the number apart. */
    StoredRow stored() {
        return new StoredRow(ChainEntry.TABLE)
                .cell("kind", kind)
                .cell("record_id", recordId)
                .cell("version", version)
                .cell("who", who)
                .cell("at_utc", atUtc)
                .cell("why", why)
                .cell("content_hash", contentHash)
                .cell("previous_hash", previousHash)
                .cell("hash", hash);
    }

    /** Returns the row of this entry as text, the number apart. */
    ChainRow row() {
        return stored().chained();
    }

    /** Returns the entry that a row states; empty when the row lacks something, or its version is no number. */
    static Optional<Entry> of(ChainEntry chained) {
        Map<String, String> cells = chained.entry().cells();
        if (!cells.getOrDefault("version", "").matches("[1-9]\\d{0,8}")) {
            return Optional.empty();
        }
        Entry entry = new Entry(
                chained.number(),
                cells.getOrDefault("kind", ""),
                cells.getOrDefault("record_id", ""),
                Integer.parseInt(cells.get("version")),
                cells.getOrDefault("who", ""),
                cells.getOrDefault("at_utc", ""),
                cells.getOrDefault("why", ""),
                cells.getOrDefault("content_hash", ""),
                cells.getOrDefault("previous_hash", ""),
                cells.getOrDefault("hash", ""));
        return Optional.of(entry).filter(read -> read.row().cells().equals(cells));
    }

    /** Reads a row; a text that is missing is empty, and then the hash does not fit. */
    static Entry of(ResultSet row) throws SQLException {
        return new Entry(
                row.getLong("entry_no"),
                text(row, "kind"),
                text(row, "record_id"),
                row.getInt("version"),
                text(row, "who"),
                text(row, "at_utc"),
                text(row, "why"),
                text(row, "content_hash"),
                text(row, "previous_hash"),
                text(row, "hash"));
    }

    private static String text(ResultSet row, String column) throws SQLException {
        return Objects.requireNonNullElse(row.getString(column), "");
    }
}
