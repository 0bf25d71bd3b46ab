package porebench.method;

import java.util.List;
import java.util.Optional;
import porebench.quantity.Require;

/**
 * Something about the input that a person can correct, or should look at.
 *
 * <p>The words are not here: {@link ProblemText} says a problem in a language, from its code and values.
 *
 * @param severity whether the input can be used at all
 * @param field the field it stands under, such as {@code constituents.2.relativeDensity} (rows counted from 0)
 * @param code the key of the message, such as {@code mix.relative-density-missing}
 * @param values what the message names, in order: the thing, the value, the limit; numbers in the unit the message states.
 *     A name that people gave is a text, a name of ours is a {@link Word}, the source of a figure a {@link Clause}, and a
 *     problem is said within the message.
 * @param place where in a file it stands, if it came from one
 */
public record Problem(Severity severity, String field, String code, List<Object> values, Optional<Place> place) {
    public Problem {
        Require.notBlank("code", code);
        values = List.copyOf(values);
    }

    /**
     * A word of the trade inside a message, said in the language of the message.
     *
     * @param id the word's key in the bundle, without its leading {@code word.}
     */
    public record Word(String id) {
        public Word {
            Require.notBlank("id", id);
        }

        @Override
        public String toString() {
            return id;
        }
    }

    /**
     * Where a figure of a profile comes from, said in the language of the message.
     *
     * @param text the clause as the profile states it
     */
    public record Clause(String text) {
        @Override
        public String toString() {
            return text;
        }
    }

    /** Returns a problem that must be corrected before the input can be used. */
    public static Problem error(String field, String code, Object... values) {
        return new Problem(Severity.ERROR, field, code, List.of(values), Optional.empty());
    }

    /** Returns a doubt: suspicious but possible. */
    public static Problem warning(String field, String code, Object... values) {
        return new Problem(Severity.WARNING, field, code, List.of(values), Optional.empty());
    }

    /** Returns this problem with the place in a file where it stands. */
    public Problem at(Place where) {
        return new Problem(severity, field, code, values, Optional.of(where));
    }

    /** Returns this problem under another field. */
    public Problem under(String otherField) {
        return new Problem(severity, otherField, code, values, place);
    }

    /** Returns this problem as a doubt: suspicious but possible. */
    public Problem asWarning() {
        return new Problem(Severity.WARNING, field, code, values, place);
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** Returns whether any of the problems must be corrected before the input can be used. */
    public static boolean anyError(List<Problem> problems) {
        return problems.stream().anyMatch(Problem::isError);
    }
}
