package porebench.store.records;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import porebench.record.RecordKind;
import porebench.record.book.KeptSince;
import porebench.record.id.MixId;

/**
 * Finds the mixes that entries since some number may have changed: what a mix stands on is itself, its determinations, trials and
 * factors, what was made of it, the sources of its aggregates and what was measured of them, the meters its trials were made on,
 * its profile, and of a factor of a group the group and the mix that is tested for it. What is corrected touches the mix that it
 * belonged to before, too.
 */
public final class TouchedSince {
    /** The records of which something was kept since. It is found by the entries' numbers, before anything else is asked. */
    private static final String SINCE =
            "WITH since AS MATERIALIZED (SELECT kind, record_id FROM entry WHERE entry_no > :after)";

    /**
     * The mixes for each thing that a mix stands on. CROSS JOIN makes SQLite look things up in the order in which they are written:
     * from the few that were kept since to what belongs to them.
     */
    private static final String MIXES = SINCE + """
            , versions AS MATERIALIZED (
                SELECT e.kind, e.entry_no FROM since s CROSS JOIN entry e
                WHERE e.kind = s.kind AND e.record_id = s.record_id),
            touched (mix_id) AS MATERIALIZED (
            SELECT record_id FROM since WHERE kind = 'mix'
            UNION SELECT d.mix_id FROM versions v CROSS JOIN determination d
                WHERE v.kind = 'determination' AND d.entry_no = v.entry_no
            UNION SELECT t.mix_id FROM versions v CROSS JOIN trial t
                WHERE v.kind = 'trial' AND t.entry_no = v.entry_no
            UNION SELECT d.mix_id FROM versions v CROSS JOIN trial t CROSS JOIN entry o CROSS JOIN determination d
                WHERE v.kind = 'trial' AND t.entry_no = v.entry_no
                AND o.kind = 'determination' AND o.record_id = t.determination_id AND d.entry_no = o.entry_no
            UNION SELECT f.mix_id FROM versions v CROSS JOIN factor_issue f
                WHERE v.kind = 'factor_issue' AND f.entry_no = v.entry_no
            UNION SELECT p.mix_id FROM versions v CROSS JOIN production p
                WHERE v.kind = 'production' AND p.entry_no = v.entry_no
            UNION SELECT m.mix_id FROM versions v CROSS JOIN source_measurement o CROSS JOIN mix_constituent c CROSS JOIN mix m
                WHERE v.kind = 'source_measurement' AND o.entry_no = v.entry_no
                AND c.source_id = o.source_id AND m.entry_no = c.entry_no
            UNION SELECT p.mix_id FROM versions v CROSS JOIN factor_proposal p
                WHERE v.kind = 'factor_proposal' AND p.entry_no = v.entry_no
            UNION SELECT c.mix_id FROM versions v CROSS JOIN change_decision c
                WHERE v.kind = 'change_decision' AND c.entry_no = v.entry_no
            UNION SELECT m.mix_id FROM since s CROSS JOIN mix_constituent c CROSS JOIN mix m
                WHERE s.kind = 'source' AND c.source_id = s.record_id AND m.entry_no = c.entry_no
            UNION SELECT d.mix_id FROM since s CROSS JOIN determination_source u CROSS JOIN determination d
                WHERE s.kind = 'source' AND u.source_id = s.record_id AND d.entry_no = u.entry_no
            UNION SELECT f.mix_id FROM since s CROSS JOIN factor_issue_source u CROSS JOIN factor_issue f
                WHERE s.kind = 'source' AND u.source_id = s.record_id AND f.entry_no = u.entry_no
            UNION SELECT t.mix_id FROM since s CROSS JOIN trial t
                WHERE s.kind = 'meter' AND t.meter_id = s.record_id
            UNION SELECT t.mix_id FROM versions v CROSS JOIN meter_calibration c CROSS JOIN trial t
                WHERE v.kind = 'meter_calibration' AND c.entry_no = v.entry_no AND t.meter_id = c.meter_id
            UNION SELECT m.mix_id FROM since s CROSS JOIN mix m
                WHERE s.kind = 'profile' AND m.profile_id = s.record_id
            UNION SELECT f.mix_id FROM since s CROSS JOIN factor_issue f
                WHERE s.kind = 'factor_group' AND f.group_id = s.record_id)
            SELECT mix_id FROM touched
            UNION SELECT f.mix_id FROM touched w CROSS JOIN factor_issue f WHERE f.tested_mix_id = w.mix_id
            """;

    private static final String KINDS = SINCE + " SELECT DISTINCT kind FROM since";

    static final List<String> QUERIES = List.of(KINDS, MIXES);

    private final Handle handle;
    private final long after;

    public TouchedSince(Handle handle, long after) {
        this.handle = handle;
        this.after = after;
    }

    public KeptSince read() {
        Set<String> symbols = new HashSet<>(texts(KINDS));
        return new KeptSince(
                Arrays.stream(RecordKind.values())
                        .filter(kind -> symbols.contains(kind.symbol()))
                        .collect(Collectors.toSet()),
                texts(MIXES).stream().map(MixId::new).collect(Collectors.toSet()));
    }

    private List<String> texts(String sql) {
        try (Query query = handle.createQuery(sql)) {
            return query.bind("after", after).mapTo(String.class).list();
        }
    }
}
