package porebench.desk.form;

import java.awt.Component;
import java.awt.Window;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.SwingUtilities;
import javax.swing.SwingWorker;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import porebench.method.Texts;
import porebench.port.Pace;
import porebench.record.book.Progress;

/** The one way off the event thread and back. */
public interface Tasks {
    /**
     * Work that says how far it is, by which a person can end it.
     *
     * @param <T> what comes of it
     */
    @FunctionalInterface
    interface Told<T> {
        /** Does the work; touches no Swing component. */
        T call(Progress progress) throws Exception;
    }

    /**
     * Does some work off the event thread, then goes on on it. It goes on to its end: nobody can stop it.
     *
     * @param title what is being done, shown when it takes long
     * @param work the work; touches no Swing component
     * @param done takes the result, on the event thread
     * @param failed takes what went wrong, on the event thread
     */
    <T> void run(String title, Callable<T> work, Consumer<T> done, Consumer<Exception> failed);

    /**
     * Does some work as {@link #run(String, Callable, Consumer, Consumer)}; where it takes long, the person sees how far it is and
     * how long it will take, and can stop it.
     *
     * <p>When the person stopped it, {@code failed} takes a {@link CancellationException}, which nobody need be told.
     *
     * @param title what is being done, shown when it takes long
     * @param work the work, which leaves nothing half done where it is ended
     * @param done takes the result, on the event thread
     * @param failed takes what went wrong, on the event thread
     */
    default <T> void run(String title, Told<T> work, Consumer<T> done, Consumer<Exception> failed) {
        run(title, () -> work.call(Progress.UNHEARD), done, failed);
    }

    /**
     * Works out something to look at while the person goes on: no dialog ever comes between, nobody need wait for it, and it can
     * be given up at any time because nothing is kept by it.
     *
     * @param work the work; touches no Swing component
     * @param done takes the result, on the event thread
     * @param failed takes what went wrong, on the event thread
     */
    default <T> void workOut(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        run("", work, done, failed);
    }

    /**
     * Does some work whose answer decides what the next keys and clicks are meant for, and which can be stopped. What the person
     * does meanwhile waits and happens after the answer. Where the answer is a question or a message, it is not what the person
     * reckoned with, and what waited is dropped.
     *
     * @param title what is being done, shown when it takes long
     * @param work the work; touches no Swing component
     * @param done takes the result, on the event thread
     * @param failed takes what went wrong, on the event thread
     */
    default <T> void await(String title, Told<T> work, Consumer<T> done, Consumer<Exception> failed) {
        run(title, work, done, failed);
    }

    /** Returns whether an answer is awaited. */
    default boolean isAwaited() {
        return false;
    }

    /** Does something once no answer is awaited: at once when none is. On the event thread. */
    default void whenAnswered(Runnable next) {
        next.run();
    }

    /** Returns whether some work is under way that must come to its end. */
    default boolean isBusy() {
        return false;
    }

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

    /**
     * Works in the background; after a second a dialog shows how far it is, and lets the person stop what can be stopped.
     *
     * @param over the window the dialog stands over
     * @param locale the person's language
     * @param marking marks the dialog's title, such as with that nothing on view was measured
     * @param input what holds keys and clicks back while an answer is awaited
     */
    static Tasks inBackground(
            Supplier<? extends Component> over, Locale locale, UnaryOperator<String> marking, HeldInput input) {
        return new Background(over, Texts.of("porebench.desk.form.form", locale), marking, input);
    }

    /** Works on a thread of Swing's. */
    final class Background implements Tasks {
        private static final int DIALOG_AFTER_MILLISECONDS = 1000;

        private final Supplier<? extends Component> over;
        private final Texts texts;
        private final UnaryOperator<String> marking;
        private final HeldInput input;
        private final Deque<Runnable> whenAnswered = new ArrayDeque<>();
        private int underWay;
        private int awaited;

        private Background(
                Supplier<? extends Component> over, Texts texts, UnaryOperator<String> marking, HeldInput input) {
            this.over = over;
            this.texts = texts;
            this.marking = marking;
            this.input = input;
        }

        @Override
        public <T> void await(String title, Told<T> work, Consumer<T> done, Consumer<Exception> failed) {
            awaited++;
            input.hold();
            run(
                    title,
                    (Progress progress) -> orFailure(work, progress),
                    result -> answer(() -> done.accept(result)),
                    failure -> answer(() -> failed.accept(failure)));
        }

        /** Does the work; also an error must be answered, so that nothing waits for ever. */
        private static <T> T orFailure(Told<T> work, Progress progress) throws Exception {
            try {
                return work.call(progress);
            } catch (LinkageError | StackOverflowError | OutOfMemoryError fault) {
                throw new IllegalStateException(fault);
            }
        }

        private void answer(Runnable answer) {
            awaited--;
            try {
                input.release(answer);
            } finally {
                while (awaited == 0 && !whenAnswered.isEmpty()) {
                    whenAnswered.remove().run();
                }
            }
        }

        @Override
        public boolean isAwaited() {
            return awaited > 0;
        }

        @Override
        public void whenAnswered(Runnable next) {
            if (awaited == 0) {
                next.run();
            } else {
                whenAnswered.add(next);
            }
        }

        @Override
        public boolean isBusy() {
            return underWay > 0;
        }

        @Override
        public <T> void run(String title, Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
            run(title, work, Optional.empty(), done, failed);
        }

        @Override
        public <T> void run(String title, Told<T> work, Consumer<T> done, Consumer<Exception> failed) {
            Pace pace = new Pace(System::nanoTime);
            run(title, () -> work.call(pace), Optional.of(pace), done, failed);
        }

        private <T> void run(
                String title, Callable<T> work, Optional<Pace> pace, Consumer<T> done, Consumer<Exception> failed) {
            underWay++;
            Worker<T> worker = new Worker<>(work, done, failed, () -> underWay--);
            Timer dialogTimer = new Timer(DIALOG_AFTER_MILLISECONDS, event -> {
                // What is done already is only not told yet, and a dialog would take the next keys.
                if (!worker.isFinished() && !worker.isDone()) {
                    Window owner = SwingUtilities.getWindowAncestor(over.get());
                    PaceDialog dialog = new PaceDialog(owner, marking.apply(title), title, pace, texts);
                    worker.whenFinished(dialog::close);
                    dialog.show();
                }
            });
            dialogTimer.setRepeats(false);
            dialogTimer.start();
            worker.execute();
        }

        @Override
        public <T> void workOut(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
            new Worker<>(work, done, failed, () -> {}).execute();
        }
    }

    /** One piece of work; it is over only when it really ended, also after it was asked to stop. */
    final class Worker<T> extends SwingWorker<T, Void> {
        private final Callable<T> work;
        private final Consumer<T> done;
        private final Consumer<Exception> failed;
        private final Runnable ended;
        private boolean finished;
        private Runnable whenFinished = () -> {};

        private Worker(Callable<T> work, Consumer<T> done, Consumer<Exception> failed, Runnable ended) {
            this.work = work;
            this.done = done;
            this.failed = failed;
            this.ended = ended;
        }

        @Override
        protected T doInBackground() throws Exception {
            return work.call();
        }

        private boolean isFinished() {
            return finished;
        }

        private void whenFinished(Runnable action) {
            whenFinished = action;
        }

        @Override
        protected void done() {
            finished = true;
            ended.run();
            whenFinished.run();
            T result;
            try {
                result = get();
            } catch (ExecutionException failure) {
                fail(failure.getCause());
                return;
            } catch (InterruptedException failure) {
                failed.accept(failure);
                return;
            }
            done.accept(result);
        }

        private void fail(@Nullable Throwable cause) {
            if (cause instanceof Error error) {
                throw error;
            }
            failed.accept(cause instanceof Exception exception ? exception : new IllegalStateException(cause));
        }
    }
}
