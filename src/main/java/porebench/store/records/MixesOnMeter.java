package porebench.store.records;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** Which mixes have trials on a meter: an index holds both, so that no trial is read for it. */
final class MixesOnMeter {
    /** A trial that was corrected to another meter or mix counts as it stands now. */
    static final String QUERY = """
            SELECT DISTINCT t.mix_id FROM trial t
            WHERE t.meter_id = :meter AND EXISTS (SELECT 1 FROM newest_entry n WHERE n.entry_no = t.entry_no)
            ORDER BY t.mix_id
            """;

    private MixesOnMeter() {}

    /** Returns the mixes, in the order of their names. */
    static List<MixId> read(Handle handle, MeterId meter) {
        try (Query query = handle.createQuery(QUERY)) {
            return query.bind("meter", meter.text())
                    .map((row, context) -> new MixId(row.getString(1)))
                    .list();
        }
    }
}
