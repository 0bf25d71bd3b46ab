package porebench.method.simulate;

/** What a dial shows where a true one would show something else. */
@FunctionalInterface
public interface Dial {
    /** A dial without error. */
    Dial TRUE = reading -> reading;

    /**
     * Returns what the dial shows.
     *
     * @param truePercent what a dial without error would show, in % air
     */
    double readingOf(double truePercent);
}
