package porebench.desk.frame.book;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Reading;
import porebench.desk.Tools;
import porebench.desk.frame.dialog.SwingAsker;
import porebench.method.Texts;
import porebench.port.OpeningRefused;
import porebench.port.Spoken;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;

/**
 * Turns the window to a lab book: one that is there, a new one, the demo's.
 *
 * <p>All of it happens beside the event thread, the first reading of the lab book too. When it fails the lab book before
 * stays open and a dialog says why; where none was open, the page that stands for one says it.
 */
public final class Turning {
    static final String EXTENSION = ".porebench";

    private final DeskModel desk;
    private final Tools tools;
    private final Texts texts;
    private final JComponent over;
    private final InventedBooks invented;
    private final Consumer<Runnable> leaving;
    private final Window window;
    private Optional<Path> file = Optional.empty();

    /** What hears how it went. */
    public interface Window {
        /** A lab book is being opened while none is open. */
        void opening(Path file);

        /** A lab book is open from now on. */
        void opened(Path file);

        /** No lab book is open, and this is why. */
        void troubled(Trouble trouble);

        /** A file cannot be opened as a lab book. */
        void gone(Path file);
    }

    /**
     * Makes the turning.
     *
     * @param over what dialogs stand over
     * @param leaving asks about unsaved drafts, and goes on when the window may turn
     */
    Turning(
            DeskModel desk,
            Texts texts,
            JComponent over,
            InventedBooks invented,
            Consumer<Runnable> leaving,
            Window window) {
        this.desk = desk;
        this.tools = desk.tools();
        this.texts = texts;
        this.over = over;
        this.invented = invented;
        this.leaving = leaving;
        this.window = window;
    }

    /** Notes where the lab book on view is kept. */
    public void stands(Path opened) {
        file = Optional.of(opened);
    }

    /** Returns where the lab book on view is kept; empty while none is open. */
    Optional<Path> file() {
        return file.filter(any -> desk.hasBook());
    }

    /** Asks about unsaved drafts, and goes on when the window may turn to another lab book. */
    void leave(Runnable then) {
        leaving.accept(then);
    }

    InventedBooks invented() {
        return invented;
    }

    Window window() {
        return window;
    }

    /** Turns back to a lab book that was closed in vain. */
    void back(Path before) {
        turn(
                before,
                texts.get("book.open.doing", name(before)),
                () -> tools.shelf().open(before));
    }

    /** Turns to the lab book a start of the window was given; to the demo's when it was given none. */
    public void first(Optional<Path> file) {
        file.ifPresentOrElse(this::open, this::openDemo);
    }

    /** Begins a new lab book and turns to it. */
    public void begin() {
        leave(() -> tools.asker()
                .newFile(over, texts.get("book.new.title"), texts.get("book.new.name") + EXTENSION)
                .ifPresent(chosen -> turn(
                        chosen,
                        texts.get("book.new.doing", name(chosen)),
                        () -> tools.shelf().create(chosen))));
    }

    /** Begins a training book with the invented laboratory and turns to it. */
    public void beginTraining() {
        LocalDate day = tools.today();
        leave(() -> tools.asker()
                .newFile(over, texts.get("book.training.title"), texts.get("book.training.name") + EXTENSION)
                .ifPresent(chosen -> turn(
                        chosen,
                        texts.get("book.training.doing", name(chosen)),
                        () -> tools.shelf()
                                .create(chosen, book -> {
                                    invented.practice().fill(book, day);
                                    return true;
                                })
                                .orElseThrow())));
    }

    /** Asks for a lab book and turns to it. */
    public void open() {
        tools.asker().fileToOpen(over, texts.get("book.open.title"), EXTENSION).ifPresent(this::open);
    }

    /** Turns to the lab book in a file. */
    public void open(Path chosen) {
        leave(() -> turn(
                chosen,
                texts.get("book.open.doing", name(chosen)),
                () -> tools.shelf().open(chosen)));
    }

    /** Turns to the demo lab book, which is made when it is not there. */
    public void openDemo() {
        Path chosen = invented.demo();
        leave(() -> turn(chosen, texts.get("book.open.doing", name(chosen)), () -> {
            invented.makeDemo().accept(chosen);
            return tools.shelf().open(chosen);
        }));
    }

    /**
     * Turns to a lab book.
     *
     * @param chosen where it is kept
     * @param doing what is being done
     * @param opening opens it; beside the event thread
     */
    void turn(Path chosen, String doing, Callable<LabBook> opening) {
        turn(chosen, doing, opening, book -> {});
    }

    /**
     * Turns to a lab book.
     *
     * @param opened hears of it once it is on view
     */
    void turn(Path chosen, String doing, Callable<LabBook> opening, Consumer<LabBook> opened) {
        if (!desk.hasBook()) {
            window.opening(chosen);
        }
        LocalDateTime now = tools.now();
        tools.tasks()
                .run(
                        doing,
                        progress -> {
                            Reading reading = read(opening.call(), now, progress);
                            return new Turned(reading, desk.unsaved().read(chosen));
                        },
                        turned -> {
                            Reading reading = turned.reading();
                            desk.unsaved().turnTo(chosen, turned.unsaved());
                            LabBook before = desk.turnTo(reading);
                            window.opened(chosen);
                            close(before, () -> {});
                            opened.accept(reading.book());
                        },
                        failure -> failed(chosen, doing, failure));
    }

    /** A lab book that was read, and what was typed for it and not saved. */
    private record Turned(Reading reading, Map<String, String> unsaved) {}

    /** Reads a lab book that was opened; one that cannot be read is closed. */
    static Reading read(LabBook book, LocalDateTime now, Progress progress) {
        boolean isRead = false;
        try {
            Reading reading = Reading.of(book, now, progress);
            isRead = true;
            return reading;
        } finally {
            if (!isRead) {
                book.close();
            }
        }
    }

    /** Closes a lab book, whose task is then over; says when that failed, and goes on all the same. */
    public void close(LabBook before, Runnable then) {
        String doing = texts.get("book.close.doing", before.name());
        tools.tasks()
                .run(
                        doing,
                        () -> {
                            before.close();
                            return before;
                        },
                        closed -> then.run(),
                        failure -> {
                            tools.asker().failure(over, doing, failure);
                            then.run();
                        });
    }

    /** Says that a lab book could not be opened or made. */
    void failed(Path chosen, String doing, Exception failure) {
        boolean isRefused = failure instanceof OpeningRefused;
        if (isRefused) {
            window.gone(chosen);
        }
        if (!desk.hasBook()) {
            window.troubled(
                    new Trouble(chosen, reason(doing, failure), isLogged(doing, failure), isOfDemo(chosen, failure)));
        } else if (failure instanceof OpeningRefused refused) {
            tools.asker().problems(over, texts.get("book.refused.title"), List.of(refused.problem()));
        } else {
            tools.asker().failure(over, doing, failure);
        }
    }

    /** Returns whether it is the demo's own file that is in the way. */
    private boolean isOfDemo(Path chosen, Exception failure) {
        return chosen.equals(invented.demo()) && (failure instanceof Spoken || failure instanceof OpeningRefused);
    }

    private String reason(String doing, Exception failure) {
        if (failure instanceof OpeningRefused refused) {
            return tools.problemText().say(refused.problem());
        }
        return failure instanceof CancellationException
                ? texts.get("no-book.stopped", doing)
                : SwingAsker.reasonOf(failure, tools.locale());
    }

    /** Logs a failure of the world, and returns whether it was one. */
    private static boolean isLogged(String doing, Exception failure) {
        if (failure instanceof OpeningRefused || failure instanceof CancellationException) {
            return false;
        }
        System.getLogger(Turning.class.getName()).log(System.Logger.Level.WARNING, doing, failure);
        return true;
    }

    static String name(Path chosen) {
        return String.valueOf(chosen.getFileName());
    }
}
