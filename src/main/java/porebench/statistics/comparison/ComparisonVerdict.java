package porebench.statistics.comparison;

import porebench.quantity.Symbolic;

/** What a comparison of readings before and after a change says of the factor in force. */
public enum ComparisonVerdict implements Symbolic {
    /** The difference is shown to lie within the margin: what was found before still holds. */
    KEEP,
    /** There is a difference, and it is larger than the margin as far as is known. */
    REPLACE,
    /** Neither is shown. */
    TEST_MORE
}
