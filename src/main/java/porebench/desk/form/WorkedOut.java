package porebench.desk.form;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The answer to the question last asked, worked out off the event thread.
 *
 * @param <Q> the question; equal ones have the same answer
 * @param <A> the answer
 */
public final class WorkedOut<Q, A> {
    private final Supplier<Tasks> tasks;
    private final Function<Q, A> work;
    private final Runnable changed;
    private Optional<Q> asked = Optional.empty();
    private Optional<A> answer = Optional.empty();
    private boolean failed;
    private boolean underWay;

    /**
     * Makes it with nothing asked yet.
     *
     * @param tasks the way off the event thread
     * @param work finds the answer; touches no Swing component
     * @param changed runs on the event thread when an answer is there, or there will be none
     */
    public WorkedOut(Supplier<Tasks> tasks, Function<Q, A> work, Runnable changed) {
        this.tasks = tasks;
        this.work = work;
        this.changed = changed;
    }

    /** Returns the answer to a question; empty while it is worked out, which begins when it is asked for the first time. */
    public Optional<A> to(Q question) {
        if (!asked.equals(Optional.of(question))) {
            asked = Optional.of(question);
            answer = Optional.empty();
            failed = false;
            if (!underWay) {
                begin(question);
            }
        }
        return answer;
    }

    /** Returns whether working out the answer to the question last asked did not succeed. */
    public boolean isFailed() {
        return failed;
    }

    /** One at a time: what is asked meanwhile waits, and of several the last one. */
    private void begin(Q question) {
        underWay = true;
        tasks.get().workOut(() -> work.apply(question), found -> take(question, found), failure -> {
            underWay = false;
            if (isOvertaken(question)) {
                asked.ifPresent(this::begin);
            } else {
                failed = true;
                changed.run();
            }
            if (!(failure instanceof CancellationException)) {
                throw new IllegalStateException("working out an answer", failure);
            }
        });
    }

    private void take(Q question, A found) {
        underWay = false;
        if (isOvertaken(question)) {
            asked.ifPresent(this::begin);
        } else {
            answer = Optional.of(found);
            changed.run();
        }
    }

    private boolean isOvertaken(Q question) {
        return !asked.equals(Optional.of(question));
    }
}
