package porebench.statistics;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import porebench.quantity.Symbolic;

/**
 * A test's result where it means something, else the reason why it does not.
 *
 * <p>A probability is only to be had from {@link Meaningful}: whoever shows p cannot show one that means nothing.
 *
 * @param <T> the test
 */
public sealed interface Judged<T> {
    /** Why a test says nothing about some values. */
    enum Reason implements Symbolic {
        /** There are fewer values than the test is defined for, or than it can tell anything from. */
        TOO_FEW,
        /** There are more values than the method's source covers. */
        TOO_MANY,
        /** All values are equal: the reading stood still, and there is no spread to judge by. */
        NO_SPREAD,
        /** What stands out does so by no more than one division of the scale. */
        WITHIN_ONE_DIVISION,
        /** The spread is only a few divisions of the scale: what the test would find is the division. */
        SCALE_TOO_COARSE
    }

    /**
     * A result that may be shown with its probability.
     *
     * @param test the test made
     * @param <T> the test
     */
    record Meaningful<T>(T test) implements Judged<T> {}

    /**
     * No result.
     *
     * @param reason why
     * @param statistic the statistic where it is defined all the same; its probability would mislead
     * @param <T> the test
     */
    record Withheld<T>(Reason reason, OptionalDouble statistic) implements Judged<T> {}

    /** Returns the result, if it means something. */
    default Optional<T> meaningful() {
        return this instanceof Meaningful<T> meaningful ? Optional.of(meaningful.test()) : Optional.empty();
    }

    /** Returns why there is no result, if there is none. */
    default Optional<Reason> whyWithheld() {
        return this instanceof Withheld<T> withheld ? Optional.of(withheld.reason()) : Optional.empty();
    }

    /** Returns the same judgement of something made of the result. */
    default <R> Judged<R> map(Function<T, R> made) {
        if (this instanceof Meaningful<T> meaningful) {
            return new Meaningful<>(made.apply(meaningful.test()));
        }
        Withheld<T> withheld = (Withheld<T>) this;
        return new Withheld<>(withheld.reason(), withheld.statistic());
    }

    /** Returns no result, of which not even a statistic is defined. */
    static <T> Judged<T> withheld(Reason reason) {
        return new Withheld<>(reason, OptionalDouble.empty());
    }

    /** Returns no result in spite of a statistic. */
    static <T> Judged<T> withheld(Reason reason, double statistic) {
        return new Withheld<>(reason, OptionalDouble.of(statistic));
    }
}
