package porebench.store;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import porebench.record.KeptSince;
import porebench.record.RecordKind;
import porebench.record.id.MixId;

/**
 * Finds the mixes that entries since some number may have changed: what a mix stands on is itself, its determinations, trials and
 * factors, the sources of its aggregates, the meters its trials were made on, and its profile. What is corrected touches the mix
 * that it belonged to before, too.
 */
final class TouchedSince {
    private static final String VERSIONS = """
            (SELECT v.entry_no FROM entry e JOIN entry v ON v.kind = e.kind AND v.record_id = e.record_id
            WHERE e.entry_no > :after AND e.kind = ':kind_asked')
            """;

    private static final String NAMES =
            "(SELECT record_id FROM entry WHERE entry_no > :after AND kind = ':kind_asked')";

    /** A query of names of mixes for each thing that a mix stands on. */
    private static final List<String> QUERIES = List.of(
            "SELECT record_id FROM entry WHERE entry_no > :after AND kind = 'mix'",
            "SELECT mix_id FROM determination WHERE entry_no IN " + versions(RecordKind.DETERMINATION),
            "SELECT mix_id FROM trial WHERE entry_no IN " + versions(RecordKind.TRIAL),
            """
            SELECT d.mix_id FROM trial t
            JOIN entry o ON o.kind = 'determination' AND o.record_id = t.determination_id
            JOIN determination d ON d.entry_no = o.entry_no
            WHERE t.entry_no IN\s""" + versions(RecordKind.TRIAL),
            "SELECT mix_id FROM factor_issue WHERE entry_no IN " + versions(RecordKind.FACTOR_ISSUE),
            "SELECT m.mix_id FROM mix_constituent c JOIN mix m ON m.entry_no = c.entry_no WHERE c.source_id IN "
                    + names(RecordKind.SOURCE),
            "SELECT d.mix_id FROM determination_source s JOIN determination d ON d.entry_no = s.entry_no"
                    + " WHERE s.source_id IN " + names(RecordKind.SOURCE),
            "SELECT f.mix_id FROM factor_issue_source s JOIN factor_issue f ON f.entry_no = s.entry_no"
                    + " WHERE s.source_id IN " + names(RecordKind.SOURCE),
            "SELECT mix_id FROM trial WHERE meter_id IN " + names(RecordKind.METER),
            "SELECT mix_id FROM trial WHERE meter_id IN (SELECT meter_id FROM meter_calibration WHERE entry_no IN "
                    + versions(RecordKind.METER_CALIBRATION) + ")",
            "SELECT mix_id FROM mix WHERE profile_id IN " + names(RecordKind.PROFILE));

    private static String versions(RecordKind kind) {
        return VERSIONS.replace(":kind_asked", kind.symbol());
    }

    private static String names(RecordKind kind) {
        return NAMES.replace(":kind_asked", kind.symbol());
    }

    private final Handle handle;
    private final long after;

    TouchedSince(Handle handle, long after) {
        this.handle = handle;
        this.after = after;
    }

    KeptSince read() {
        Set<String> symbols = new HashSet<>(texts("SELECT DISTINCT kind FROM entry WHERE entry_no > :after"));
        return new KeptSince(
                Arrays.stream(RecordKind.values())
                        .filter(kind -> symbols.contains(kind.symbol()))
                        .collect(Collectors.toSet()),
                texts(String.join(" UNION ", QUERIES)).stream().map(MixId::new).collect(Collectors.toSet()));
    }

    private List<String> texts(String sql) {
        try (Query query = handle.createQuery(sql)) {
            return query.bind("after", after).mapTo(String.class).list();
        }
    }
}
