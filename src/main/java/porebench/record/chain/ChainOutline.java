package porebench.record.chain;

import java.util.List;
import porebench.method.Place;

/**
 * What a whole lab book says of itself before its entries.
 *
 * @param step the number of the last schema step that was taken
 * @param entries how many entries there are
 * @param hash the hash of the newest entry, in full
 * @param tables its tables, that of the entries first
 * @param place where this stands when it was read from a file
 */
public record ChainOutline(int step, long entries, String hash, List<TableOutline> tables, Place place) {
    public ChainOutline {
        tables = List.copyOf(tables);
    }

    /**
     * A table.
     *
     * @param name its name
     * @param columns its columns in their order, the number of the entry among them
     * @param heading where they are named when they were read from a file; else the table
     */
    public record TableOutline(String name, List<String> columns, Place heading) {
        public TableOutline {
            columns = List.copyOf(columns);
        }
    }

    /** Returns how far the lab book reaches. */
    public Head head() {
        return Head.of(hash, entries);
    }
}
