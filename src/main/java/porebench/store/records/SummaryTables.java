package porebench.store.records;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Query;
import porebench.record.book.MixSummary;
import porebench.record.id.MixId;

/** The tables beside the entries in which is kept what was worked out of them: they may be changed, and made anew. */
public final class SummaryTables {
    /** Holds each mix's line in the register. */
    public static final String REGISTER = "register_summary";

    /** Holds each mix's trials that count. */
    public static final String TRIALS = "trials_summary";

    private final Handle handle;
    private final UpTo upTo;

    public SummaryTables(Handle handle, int edition) {
        this.handle = handle;
        this.upTo = new UpTo(handle, "summary_state", edition);
    }

    /** Returns the number of the entry up to which they hold; 0 where there are none. */
    public long upTo() {
        return upTo.entry();
    }

    /** Returns the texts of one of the tables by mix. */
    public Map<MixId, String> said(String table) {
        Map<MixId, String> said = new HashMap<>();
        try (Query query = handle.createQuery("SELECT mix_id, said FROM " + table + " WHERE trim(mix_id) <> ''")) {
            query.map((row, context) -> Map.entry(new MixId(row.getString(1)), row.getString(2)))
                    .forEach(entry -> said.put(entry.getKey(), entry.getValue()));
        }
        return said;
    }

    /** Puts some in the place of those before; does nothing and returns false where those before are others by now. */
    public boolean renew(long before, long now, List<MixSummary> renewed) {
        if (!upTo.isThere() || upTo.entry() != before) {
            return false;
        }
        if (before == 0) {
            handle.execute("DELETE FROM " + REGISTER);
            handle.execute("DELETE FROM " + TRIALS);
        }
        write(REGISTER, renewed, MixSummary::registerLine);
        write(TRIALS, renewed, MixSummary::trials);
        upTo.move(now);
        return true;
    }

    /** Forgets them, so that they are worked out anew. */
    public void forget() {
        upTo.forget();
    }

    private void write(String table, List<MixSummary> renewed, Function<MixSummary, String> said) {
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
