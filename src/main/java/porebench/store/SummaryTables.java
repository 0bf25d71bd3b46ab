package porebench.store;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.Update;
import porebench.record.Summary;
import porebench.record.id.MixId;

/** The tables beside the entries in which is kept what was worked out of them: they may be changed, and made anew. */
final class SummaryTables {
    /** Holds each mix's line in the register. */
    static final String REGISTER = "register_summary";

    /** Holds each mix's trials that count. */
    static final String TRIALS = "trials_summary";

    /** The schema step that made them, and the other tables beside the entries. */
    private static final int STEP = 12;

    private final Handle handle;

    SummaryTables(Handle handle) {
        this.handle = handle;
    }

    /** Returns whether a lab book has tables beside its entries; an older one that is only read has none yet. */
    static boolean areThere(Handle handle) {
        try (Query query = handle.createQuery("PRAGMA user_version")) {
            return query.mapTo(Integer.class).one() >= STEP;
        }
    }

    /** Returns the number of the entry up to which they hold; 0 where there are none of an edition. */
    long upTo(int edition) {
        if (!areThere(handle)) {
            return 0;
        }
        try (Query query = handle.createQuery(
                "SELECT up_to FROM summary_state WHERE edition = :edition AND up_to <= (SELECT max(entry_no) FROM entry)")) {
            return query.bind("edition", edition).mapTo(Long.class).findOne().orElse(0L);
        }
    }

    /** Returns the texts of one of the tables by mix. */
    Map<MixId, String> said(String table) {
        Map<MixId, String> said = new HashMap<>();
        try (Query query = handle.createQuery("SELECT mix_id, said FROM " + table)) {
            query.map((row, context) -> Map.entry(new MixId(row.getString(1)), row.getString(2)))
                    .forEach(entry -> said.put(entry.getKey(), entry.getValue()));
        }
        return said;
    }

    /** Puts some in the place of those before; does nothing and returns false where those before are others by now. */
    boolean renew(int edition, long before, long upTo, List<Summary> renewed) {
        if (!areThere(handle) || upTo(edition) != before) {
            return false;
        }
        if (before == 0) {
            handle.execute("DELETE FROM " + REGISTER);
            handle.execute("DELETE FROM " + TRIALS);
        }
        write(REGISTER, renewed, Summary::registerLine);
        write(TRIALS, renewed, Summary::trials);
        handle.execute("DELETE FROM summary_state");
        try (Update state =
                handle.createUpdate("INSERT INTO summary_state (edition, up_to) VALUES (:edition, :up_to)")) {
            state.bind("edition", edition).bind("up_to", upTo).execute();
        }
        return true;
    }

    /** Forgets them, so that they are worked out anew. */
    void forget() {
        handle.execute("DELETE FROM summary_state");
    }

    private void write(String table, List<Summary> renewed, Function<Summary, String> said) {
        if (renewed.isEmpty()) {
            return;
        }
        try (PreparedBatch batch =
                handle.prepareBatch("INSERT OR REPLACE INTO " + table + " (mix_id, said) VALUES (:mix_id, :said)")) {
            renewed.forEach(summary -> batch.bind("mix_id", summary.mixId().text())
                    .bind("said", said.apply(summary))
                    .add());
            batch.execute();
        }
    }
}
