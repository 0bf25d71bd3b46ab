package porebench.store;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The versions of other records that a record rests on, as rows of a table beside it.
 *
 * @param table the table
 * @param idColumn the column of the other record's id
 * @param versionColumn the column of its version
 * @param make makes an id of its text
 * @param text gives the text of an id
 * @param <I> the kind of id
 */
record IdVersions<I>(
        String table, String idColumn, String versionColumn, Function<String, I> make, Function<I, String> text) {
    List<StoredRow> rows(Map<I, Integer> versions) {
        return versions.entrySet().stream()
                .map(entry -> new StoredRow(table)
                        .cell(idColumn, text.apply(entry.getKey()))
                        .cell(versionColumn, entry.getValue()))
                .toList();
    }

    /** Returns the versions that stand in the rows of the table, rows of other tables left out. */
    Map<I, Integer> of(List<StoredRow> parts) {
        return parts.stream()
                .filter(row -> row.table().equals(table))
                .collect(Collectors.toMap(row -> make.apply(row.text(idColumn)), row -> row.count(versionColumn)));
    }
}
