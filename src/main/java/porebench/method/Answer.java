package porebench.method;

import java.util.List;
import java.util.Optional;

/**
 * What a computation gives back: its result, unless a problem forbids one, and everything that is wrong or doubtful.
 *
 * @param value the result; empty exactly when one of the problems is an error
 * @param problems all problems found, errors and warnings
 * @param <T> the kind of result
 */
public record Answer<T>(Optional<T> value, List<Problem> problems) {
    public Answer {
        problems = List.copyOf(problems);
        if (value.isPresent() == Problem.anyError(problems)) {
            throw new IllegalArgumentException(
                    "value must be present exactly when no problem is an error, but is " + value + " with " + problems);
        }
    }

    /** Returns a result together with its warnings, of which there may be none. */
    public static <T> Answer<T> of(T value, List<Problem> warnings) {
        return new Answer<>(Optional.of(value), warnings);
    }

    /** Returns the refusal to give a result; at least one problem is an error. */
    public static <T> Answer<T> refused(List<Problem> problems) {
        return new Answer<>(Optional.empty(), problems);
    }
}
