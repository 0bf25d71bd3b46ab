package porebench.method;

import porebench.quantity.Require;

/**
 * One figure of a profile and where it comes from.
 *
 * @param value the figure as text: a plain decimal number or one of the words the figure allows; blanks around it are
 *     taken off
 * @param clause the clause, note or practice that gives it
 * @param mark how sure the source is
 */
public record Figure(String value, String clause, Mark mark) {
    public Figure {
        value = Require.notBlank("value", value).strip();
        Require.notBlank("clause", clause);
    }
}
