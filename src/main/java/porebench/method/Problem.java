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
 * @param kind what kind of matter it is, for whoever treats all of a kind alike; nobody asks for the code
 * @param field the field it stands under, such as {@code constituents.2.relativeDensity} (rows counted from 0)
 * @param code the key of the message, such as {@code mix.relative-density-missing}
 * @param values what the message names, in order: the thing, the value, the limit; numbers in the unit the message states.
 *     A name that people gave is a text, a name of ours is a {@link Word}, the source of a figure a {@link Clause}, and a
 *     problem is said within the message.
 * @param place where in a file it stands, if it came from one
 */
public record Problem(
        Severity severity, Kind kind, String field, String code, List<Object> values, Optional<Place> place) {
    public Problem {
        Require.notBlank("code", code);
        values = List.copyOf(values);
    }

    /** What kind of matter a problem is. */
    public enum Kind {
        /** Something stated is wrong or doubtful. */
        STATED,
        /** Something is still to be filled in, decided or changed; a form says it once somebody wants to keep it. */
        NOT_YET,
        /** A reading or weighing was not made, or not yet. */
        NOT_MEASURED,
        /** A text is no number: what would follow from it is not known. */
        NOT_A_NUMBER,
        /** A number lies beyond what can be, whatever else is stated. */
        OUT_OF_RANGE,
        /** A word is none of those to choose from. */
        NOT_A_CHOICE,
        /** There are fewer than asked for. */
        TOO_FEW,
        /** It may be kept but does not count. */
        VOID,
        /** The state of the meter is doubtful, whatever was read on it. */
        METER,
        /** A file is there that may be replaced if the person says so. */
        FILE_THERE,
        /** The folder is missing, which the file system tells as well. */
        NO_FOLDER,
        /** A lab book is there, which only the store may replace. */
        LAB_BOOK;

        /** Returns whether a form that is being filled in does not say it before somebody wants to keep it. */
        public boolean isNotYet() {
            return this == NOT_YET || this == NOT_MEASURED;
        }
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
        return new Problem(Severity.ERROR, Kind.STATED, field, code, List.of(values), Optional.empty());
    }

    /** Returns a doubt: suspicious but possible. */
    public static Problem warning(String field, String code, Object... values) {
        return new Problem(Severity.WARNING, Kind.STATED, field, code, List.of(values), Optional.empty());
    }

    /** Returns the problem that a field must be filled in; the name is the field's, as the reader knows it. */
    public static Problem missing(String field, Object name) {
        return error(field, "form.required", name).of(Kind.NOT_YET);
    }

    /** Returns the problem that what was typed in a field is no number. */
    public static Problem notANumber(String field, String name, String typed) {
        return error(field, "form.not-a-number", name, typed).of(Kind.NOT_A_NUMBER);
    }

    /** Returns this problem as one of a kind. */
    public Problem of(Kind other) {
        return new Problem(severity, other, field, code, values, place);
    }

    /** Returns this problem with other values in its message. */
    public Problem naming(List<Object> others) {
        return new Problem(severity, kind, field, code, others, place);
    }

    /** Returns this problem with the place in a file where it stands. */
    public Problem at(Place where) {
        return new Problem(severity, kind, field, code, values, Optional.of(where));
    }

    /** Returns this problem under another field. */
    public Problem under(String otherField) {
        return new Problem(severity, kind, otherField, code, values, place);
    }

    /** Returns this problem as a doubt: suspicious but possible. */
    public Problem asWarning() {
        return new Problem(Severity.WARNING, kind, field, code, values, place);
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** Returns whether any of the problems must be corrected before the input can be used. */
    public static boolean anyError(List<Problem> problems) {
        return problems.stream().anyMatch(Problem::isError);
    }
}
