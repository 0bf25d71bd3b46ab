package porebench.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import porebench.record.Stamp;

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
record Entry(
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
    /** Stands before the first entry. */
    static final Entry BEFORE_THE_FIRST = new Entry(0, "", "", 0, "", "", "", "", "", "0".repeat(64));

    /** Returns the entry that follows this one. */
    Entry next(String nextKind, String nextRecordId, int nextVersion, Stamp stamp, String nextContentHash) {
        Entry open = new Entry(
                number + 1,
                nextKind,
                nextRecordId,
                nextVersion,
                stamp.who(),
                stamp.at().toString(),
                stamp.why(),
                nextContentHash,
                hash,
                "");
        return open.sealed();
    }

    private Entry sealed() {
        return new Entry(number, kind, recordId, version, who, atUtc, why, contentHash, previousHash, computedHash());
    }

    /** Returns the hash that this entry must have. */
    String computedHash() {
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

    /** Returns whether this entry stands right after another one. */
    boolean follows(Entry before) {
        return number == before.number + 1 && previousHash.equals(before.hash);
    }

    static Entry of(ResultSet row) throws SQLException {
        return new Entry(
                row.getLong("entry_no"),
                row.getString("kind"),
                row.getString("record_id"),
                row.getInt("version"),
                row.getString("who"),
                row.getString("at_utc"),
                row.getString("why"),
                row.getString("content_hash"),
                row.getString("previous_hash"),
                row.getString("hash"));
    }
}
