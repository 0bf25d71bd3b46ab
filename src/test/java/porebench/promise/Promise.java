package porebench.promise;

import java.util.List;

/** One thing that the program says of how often it is right. */
interface Promise {
    /** Returns a short name: the first column of the table. */
    String name();

    /** Returns the sentence that is held against the simulation, as the documentation gives it. */
    String sentence();

    /** Returns how many runs a cell has in every build, which should take no more than three seconds. */
    int fewRuns();

    /** Returns how many runs a cell has for the table. */
    int manyRuns();

    /**
     * Simulates all cells.
     *
     * @param runs how many runs each cell has
     */
    List<Cell> simulate(int runs);
}
