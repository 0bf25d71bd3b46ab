package porebench.promise;

import java.util.Locale;

/**
 * One cell of a simulation: a figure that is said, and the share that was seen.
 *
 * @param of what is simulated, as the table names it
 * @param way whether the share should be at least or at most what is said
 * @param said the figure that the program states
 * @param seen the share that the simulation found
 * @param error the standard error of that share
 */
record Cell(String of, Way way, double said, double seen, double error) {
    /** How much worse than said a share may be: half a percentage point. */
    static final double SLACK = 0.005;

    /** Three standard errors: of a thousand cells that keep their word, about one looks as if it did not. */
    private static final double ERRORS = 3;

    /** The side on which a promise is kept. */
    enum Way {
        /** A confidence: right at least so often. */
        AT_LEAST,
        /** An alarm: false at most so often. */
        AT_MOST
    }

    /** Counts a cell: so many of all were right (or alarmed). */
    static Cell counted(String of, Way way, double said, long hits, long runs) {
        double seen = (double) hits / runs;
        // With a hit more and a miss more, so that a cell without a single miss has an error too.
        double smooth = (hits + 1.0) / (runs + 2.0);
        return new Cell(of, way, said, seen, Math.sqrt(smooth * (1 - smooth) / runs));
    }

    /** Returns whether the word is kept, as far as so many runs can tell. */
    boolean holds() {
        double worse = way == Way.AT_LEAST ? said - seen : seen - said;
        return worse <= SLACK + ERRORS * error;
    }

    /** Returns the cell as a row of the table, percents with one decimal. */
    String row() {
        return String.format(
                Locale.ROOT,
                "| %s | %s %.1f | %.1f | %.1f |",
                of,
                way == Way.AT_LEAST ? "at least" : "at most",
                100 * said,
                100 * seen,
                100 * error);
    }
}
