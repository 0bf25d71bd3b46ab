package porebench.exchange.text;

import java.util.List;
import java.util.stream.Stream;
import porebench.record.column.Columns;

/**
 * The columns of one format.
 *
 * @param needed those that a file must have, in the order in which they are written
 * @param extra those that it may have, written after them
 */
public record Headings(List<String> needed, List<String> extra) {
    public static final String SIMULATED = "simulated";

    public Headings {
        needed = List.copyOf(needed);
        extra = List.copyOf(extra);
    }

    /** Returns the headings of a kind of record of which each row of a file states one. */
    public static Headings of(Columns<?> columns) {
        return new Headings(columns.neededHeadings(), columns.extraHeadings());
    }

    /**
     * Returns the headings of a kind of record of which several rows of a file state one.
     *
     * @param beside the columns that each row states, in the place of the one that holds them all
     */
    public static Headings of(Columns<?> columns, Columns<?> beside) {
        String first = beside.all().get(0).heading();
        List<String> needed = columns.neededHeadings().stream()
                .flatMap(heading -> heading.equals(first) ? beside.neededHeadings().stream() : Stream.of(heading))
                .toList();
        return new Headings(needed, columns.extraHeadings());
    }

    /** Returns these columns and the one by which a file says that its rows come from a training book; as they are with one. */
    public Headings marked() {
        return knows(SIMULATED)
                ? this
                : new Headings(
                        needed,
                        Stream.concat(extra.stream(), Stream.of(SIMULATED)).toList());
    }

    public List<String> all() {
        return Stream.concat(needed.stream(), extra.stream()).toList();
    }

    boolean knows(String name) {
        return needed.contains(name) || extra.contains(name);
    }
}
