package porebench.record.chain;

import java.util.List;

/**
 * One entry of a lab book's history with everything that is stored for it: one version of one record, who kept it, when and
 * why, and the hashes that chain it to the entry before.
 *
 * @param number the number of the entry, counted from 1
 * @param entry its row in the table of entries
 * @param rows the rows of the record: its own, then those of its parts in the order of their keys
 */
public record ChainEntry(long number, ChainRow entry, List<ChainRow> rows) {
    /** The table of entries. */
    public static final String TABLE = "entry";

    /** The column of the entry's number, in every table. */
    public static final String NUMBER = "entry_no";

    public ChainEntry {
        rows = List.copyOf(rows);
    }
}
