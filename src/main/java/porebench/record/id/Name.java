package porebench.record.id;

/**
 * The name by which the laboratory knows a record of one kind.
 *
 * @param <N> the names of that kind
 */
public interface Name<N extends Name<N>> extends Comparable<N> {
    /** Returns the name, not blank and without white space around it. */
    String text();

    @Override
    default int compareTo(N other) {
        return text().compareTo(other.text());
    }
}
