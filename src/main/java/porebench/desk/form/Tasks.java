package porebench.desk.form;

import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** The one way off the event thread and back. */
public interface Tasks {
    /**
     * Does some work off the event thread, then goes on on it.
     *
     * @param title what is being done, shown when it takes long
     * @param work the work; touches no Swing component
     * @param done takes the result, on the event thread
     * @param failed takes what went wrong, on the event thread
     */
    <T> void run(String title, Callable<T> work, Consumer<T> done, Consumer<Exception> failed);

    /** Does everything at once on the calling thread: for tests of models. */
    static Tasks direct() {
        return new Tasks() {
            @Override
            public <T> void run(String title, Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
                T result;
                try {
                    result = work.call();
                } catch (Exception failure) {
                    failed.accept(failure);
                    return;
                }
                done.accept(result);
            }
        };
    }
}
