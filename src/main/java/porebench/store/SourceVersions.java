package porebench.store;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import porebench.record.SourceId;

/** The versions of sources that a record rests on, as rows of a table beside it. */
final class SourceVersions {
    private SourceVersions() {}

    static List<StoredRow> rows(String table, Map<SourceId, Integer> versions) {
        return versions.entrySet().stream()
                .map(entry -> new StoredRow(table)
                        .cell("source_id", entry.getKey().text())
                        .cell("source_version", entry.getValue()))
                .toList();
    }

    static Map<SourceId, Integer> of(List<StoredRow> rows) {
        return rows.stream()
                .collect(Collectors.toMap(
                        row -> new SourceId(row.text("source_id")), row -> row.count("source_version")));
    }
}
