package porebench.record.column;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The version of another record that a record rests on.
 *
 * @param id the other record
 * @param version its version, from 1
 * @param <I> the kind of id
 */
public record IdVersion<I>(I id, int version) {
    /**
     * Makes the column of such versions.
     *
     * @param heading its name in a file
     * @param table the table in which they stand
     * @param other the word for the other record in the names of the table's columns, such as {@code source}
     * @param id its id
     * @param of where in a record they are
     * @param sinceStep the schema step since which the lab book has the table
     */
    static <R, I extends Comparable<I>> Column<R, List<IdVersion<I>>> column(
            String heading,
            String table,
            String other,
            CellType<I> id,
            Function<R, Map<I, Integer>> of,
            int sinceStep) {
        Column<IdVersion<I>, I> ids = Column.needed(other + "_id", id, IdVersion::id);
        Column<IdVersion<I>, Integer> versions =
                Column.needed(other + "_version", CellType.whole(1), IdVersion::version);
        Columns<IdVersion<I>> both = Columns.of(
                        table, cells -> new IdVersion<>(cells.get(ids), cells.get(versions)), ids, versions)
                .since(sinceStep);
        return Column.any(
                heading,
                CellType.several(new Part<>(both, false)),
                record -> Optional.of(of.apply(record).entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(entry -> new IdVersion<>(entry.getKey(), entry.getValue()))
                        .toList()));
    }

    /** Returns versions by id. */
    static <I> Map<I, Integer> byId(List<IdVersion<I>> versions) {
        return versions.stream().collect(Collectors.toMap(IdVersion::id, IdVersion::version));
    }
}
