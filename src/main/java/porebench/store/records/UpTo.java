package porebench.store.records;

import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.Update;

/**
 * Up to which entry what is kept beside the entries holds, and in which edition of the way it is worked out.
 *
 * @param handle the lab book
 * @param table where that is noted
 * @param edition the edition of today; what another one made counts as nothing
 */
record UpTo(Handle handle, String table, int edition) {
    /** The schema step that made the tables beside the entries. */
    private static final int STEP = 12;

    /** Returns whether a lab book has tables beside its entries; an older one that is only read has none yet. */
    boolean isThere() {
        try (Query query = handle.createQuery("PRAGMA user_version")) {
            return query.mapTo(Integer.class).one() >= STEP;
        }
    }

    /** Returns the number of the entry; 0 where nothing holds, nor where it says more than there are entries. */
    long entry() {
        if (!isThere()) {
            return 0;
        }
        try (Query query = handle.createQuery("SELECT up_to FROM " + table
                + " WHERE edition = :edition AND up_to <= (SELECT max(entry_no) FROM entry)")) {
            return query.bind("edition", edition).mapTo(Long.class).findOne().orElse(0L);
        }
    }

    /** Notes that it holds up to another entry. */
    void move(long entry) {
        forget();
        try (Update noting =
                handle.createUpdate("INSERT INTO " + table + " (edition, up_to) VALUES (:edition, :up_to)")) {
            noting.bind("edition", edition).bind("up_to", entry).execute();
        }
    }

    /** Notes that nothing holds. */
    void forget() {
        handle.execute("DELETE FROM " + table);
    }
}
