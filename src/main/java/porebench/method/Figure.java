package porebench.method;

import porebench.quantity.Require;

/**
 * One figure of a profile and where it comes from.
 *
 * @param value the figure as text: a plain decimal number or one of the words the figure allows
 * @param clause the clause, note or practice that gives it
 * @param mark how sure the source is
 */
public record Figure(String value, String clause, Mark mark) {
    public Figure {
        Require.notBlank("value", value);
        Require.notBlank("clause", clause);
    }
}
