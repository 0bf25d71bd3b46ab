package porebench.desk;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import porebench.method.Problem;

/** Hears, on the event thread, how the keeping of records went. */
@FunctionalInterface
public interface Outcome {
    /** Takes why nothing was kept; empty when all was. */
    void take(List<Problem> refused);

    /** Takes what went wrong with the lab book; nothing was kept. Thrown on, it is told as a fault, unless the person stopped it. */
    default void fail(Exception failure) {
        if (!(failure instanceof CancellationException)) {
            throw new IllegalStateException("keeping records", failure);
        }
    }

    /** Makes one of two parts. */
    static Outcome of(Consumer<List<Problem>> taken, Consumer<Exception> failed) {
        return new Outcome() {
            @Override
            public void take(List<Problem> refused) {
                taken.accept(refused);
            }

            @Override
            public void fail(Exception failure) {
                failed.accept(failure);
            }
        };
    }

    /** Returns one that does something first when all was kept; what went wrong it hands on. */
    default Outcome first(Runnable kept) {
        return of(
                refused -> {
                    if (refused.isEmpty()) {
                        kept.run();
                    }
                    take(refused);
                },
                this::fail);
    }
}
