package porebench.desk;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;
import porebench.desk.form.Tasks;

/**
 * Work beside the event thread, waited for at once: what is asked for is there when the call returns, as with
 * {@link Tasks#direct}, and yet nothing of it ran on the event thread.
 */
public final class AsideTasks implements Tasks {
    @Override
    public <T> void run(String title, Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        Tasks.direct().run(title, () -> aside(work), done, failed);
    }

    /** Does some work beside the calling thread and waits for it. */
    public static <T> T aside(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        new Thread(task, "aside").start();
        try {
            return task.get();
        } catch (ExecutionException failure) {
            if (failure.getCause() instanceof Exception exception) {
                throw exception;
            }
            throw failure;
        }
    }
}
