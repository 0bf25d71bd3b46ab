package porebench.desk.form;

import java.awt.Component;
import java.awt.Dialog;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JProgressBar;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.SwingWorker;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import porebench.method.Texts;

/** The one way off the event thread and back. */
public interface Tasks {
    /**
     * Does some work off the event thread, then goes on on it.
     *
     * <p>When the person stopped it, {@code failed} takes a {@link CancellationException}, which nobody need be told.
     *
     * @param title what is being done, shown when it takes long
     * @param work the work; touches no Swing component
     * @param done takes the result, on the event thread
     * @param failed takes what went wrong, on the event thread
     */
    <T> void run(String title, Callable<T> work, Consumer<T> done, Consumer<Exception> failed);

    /**
     * Works out something to look at while the person goes on: as {@link #run}, but no dialog ever comes between, nobody need
     * wait for it, and it can be given up at any time because nothing is kept by it.
     *
     * @param work the work; touches no Swing component
     * @param done takes the result, on the event thread
     * @param failed takes what went wrong, on the event thread
     */
    default <T> void workOut(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        run("", work, done, failed);
    }

    /**
     * Does some work whose answer decides what the next keys and clicks are meant for: as {@link #run}, and what the person does
     * meanwhile waits and happens after the answer. Where the answer is a question or a message, it is not what the person
     * reckoned with, and what waited is dropped.
     *
     * @param title what is being done, shown when it takes long
     * @param work the work; touches no Swing component
     * @param done takes the result, on the event thread
     * @param failed takes what went wrong, on the event thread
     */
    default <T> void await(String title, Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
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
     * Works in the background; after a second a dialog shows that it goes on and lets the person stop it.
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
        public <T> void await(String title, Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
            awaited++;
            input.hold();
            run(
                    title,
                    () -> orFailure(work),
                    result -> answer(() -> done.accept(result)),
                    failure -> answer(() -> failed.accept(failure)));
        }

        /** Does the work; also an error must be answered, so that nothing waits for ever. */
        private static <T> T orFailure(Callable<T> work) throws Exception {
            try {
                return work.call();
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
            underWay++;
            Worker<T> worker = new Worker<>(work, done, failed, () -> underWay--);
            Timer dialogTimer = new Timer(DIALOG_AFTER_MILLISECONDS, event -> showDialog(title, worker));
            dialogTimer.setRepeats(false);
            dialogTimer.start();
            worker.execute();
        }

        @Override
        public <T> void workOut(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
            new Worker<>(work, done, failed, () -> {}).execute();
        }

        private void showDialog(String title, Worker<?> worker) {
            if (worker.isFinished()) {
                return;
            }
            Window owner = SwingUtilities.getWindowAncestor(over.get());
            JDialog dialog = new JDialog(owner, marking.apply(title), Dialog.ModalityType.APPLICATION_MODAL);
            dialog.setName(HeldInput.OPEN);
            dialog.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
            JProgressBar bar = new JProgressBar();
            bar.setIndeterminate(true);
            JButton stop = new JButton(texts.get("task.stop"));
            stop.addActionListener((ActionEvent event) -> {
                stop.setEnabled(false);
                stop.setText(texts.get("task.stopping"));
                worker.stop();
            });
            dialog.getRootPane()
                    .registerKeyboardAction(
                            event -> stop.doClick(),
                            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
                            JComponent.WHEN_IN_FOCUSED_WINDOW);
            dialog.setLayout(new MigLayout("insets 20, wrap 1", "[360::,grow,fill]", "[]12[]16[]"));
            dialog.add(new JLabel(title));
            dialog.add(bar);
            dialog.add(stop, "alignx trailing, growx 0");
            dialog.pack();
            dialog.setLocationRelativeTo(owner);
            worker.whenFinished(dialog::dispose);
            dialog.setVisible(true);
        }
    }

    /** One piece of work; it is over only when it really ended, also after it was asked to stop. */
    final class Worker<T> extends SwingWorker<T, Void> {
        private final Callable<T> work;
        private final Consumer<T> done;
        private final Consumer<Exception> failed;
        private final Runnable ended;
        private volatile @Nullable Thread thread;
        private volatile boolean stopped;
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
            thread = Thread.currentThread();
            try {
                return work.call();
            } finally {
                thread = null;
            }
        }

        private void stop() {
            stopped = true;
            Thread working = thread;
            if (working != null) {
                working.interrupt();
            }
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
            Exception failure = cause instanceof Exception exception ? exception : new IllegalStateException(cause);
            failed.accept(stopped ? stoppedBecauseOf(failure) : failure);
        }

        private static CancellationException stoppedBecauseOf(Exception failure) {
            CancellationException stop = new CancellationException("stopped by the person");
            stop.initCause(failure);
            return stop;
        }
    }
}
