package porebench.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import porebench.desk.form.Tasks;

/** Work that goes on when the test says so, to its end or to a stop by the person. */
public final class HeldTasks implements Tasks {
    private final Deque<Consumer<Boolean>> underWay = new ArrayDeque<>();
    private boolean holdsAnswers;

    @Override
    public <T> void run(String title, Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        underWay.add(isStopped -> {
            if (isStopped) {
                failed.accept(new CancellationException("stopped by the person"));
            } else {
                Tasks.direct().run(title, work, done, failed);
            }
        });
    }

    /** What is awaited is there at once, unless the test says otherwise. */
    @Override
    public <T> void await(String title, Told<T> work, Consumer<T> done, Consumer<Exception> failed) {
        (holdsAnswers ? this : Tasks.direct()).run(title, work, done, failed);
    }

    /** From now on also what is awaited goes on when the test says so. */
    public void holdAnswers() {
        holdsAnswers = true;
    }

    /** Returns how many pieces of work are under way. */
    public int count() {
        return underWay.size();
    }

    /** Lets the work that was begun first go on to its end. */
    public void end() {
        underWay.remove().accept(false);
    }

    /** Stops the work that was begun first, as a person does. */
    public void stop() {
        underWay.remove().accept(true);
    }

    /** Returns tools that hold their work, and are otherwise as given. */
    public Tools in(Tools tools) {
        return new Tools(
                tools.shelf(),
                tools.sheets(),
                tools.press(),
                this,
                tools.asker(),
                tools.clock(),
                tools.zone(),
                tools.locale());
    }
}
