package porebench.exchange;

import java.util.List;
import java.util.stream.Stream;

/**
 * The columns of one format.
 *
 * @param needed those that a file must have, in the order in which they are written
 * @param extra those that it may have, written after them
 */
record Columns(List<String> needed, List<String> extra) {
    static final String SIMULATED = "simulated";

    Columns {
        needed = List.copyOf(needed);
        extra = List.copyOf(extra);
    }

    /** Returns columns that must all be there, from their names with commas between. */
    static Columns of(String needed) {
        return new Columns(List.of(needed.split(",")), List.of());
    }

    /** Returns columns of which some may be absent. */
    static Columns of(String needed, String extra) {
        return new Columns(List.of(needed.split(",")), List.of(extra.split(",")));
    }

    /** Returns these columns and the one by which a file says that its rows come from a training book; as they are with one. */
    Columns marked() {
        return knows(SIMULATED)
                ? this
                : new Columns(
                        needed,
                        Stream.concat(extra.stream(), Stream.of(SIMULATED)).toList());
    }

    List<String> all() {
        return Stream.concat(needed.stream(), extra.stream()).toList();
    }

    boolean knows(String name) {
        return needed.contains(name) || extra.contains(name);
    }
}
