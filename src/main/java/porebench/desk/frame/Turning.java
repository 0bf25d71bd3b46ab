package porebench.desk.frame;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Reading;
import porebench.desk.Tools;
import porebench.desk.form.Texts;
import porebench.record.LabBook;
import porebench.record.port.OpeningRefused;

/**
 * Turns the window to a lab book: one that is there, a new one, the demo's.
 *
 * <p>All of it happens beside the event thread, the first reading of the lab book too. When it fails the lab book before
 * stays open and a dialog says why; where none was open, the page that stands for one says it.
 */
final class Turning {
    static final String EXTENSION = ".porebench";

    private final DeskModel desk;
    private final Tools tools;
    private final Texts texts;
    private final JComponent over;
    private final DemoFile demo;
    private final BooleanSupplier mayLeave;
    private final Window window;

    /** What hears how it went. */
    interface Window {
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
     * @param mayLeave asks about unsaved drafts
     */
    Turning(DeskModel desk, Texts texts, JComponent over, DemoFile demo, BooleanSupplier mayLeave, Window window) {
        this.desk = desk;
        this.tools = desk.tools();
        this.texts = texts;
        this.over = over;
        this.demo = demo;
        this.mayLeave = mayLeave;
        this.window = window;
    }

    /** Turns to the lab book a start of the window was given; to the demo's when it was given none. */
    void first(Optional<Path> file) {
        file.ifPresentOrElse(this::open, this::openDemo);
    }

    /** Begins a new lab book and turns to it. */
    void begin() {
        if (mayLeave.getAsBoolean()) {
            tools.asker()
                    .newFile(over, texts.get("book.new.title"), texts.get("book.new.name") + EXTENSION)
                    .ifPresent(file -> turn(
                            file,
                            texts.get("book.new.doing", name(file)),
                            () -> tools.shelf().create(file)));
        }
    }

    /** Asks for a lab book and turns to it. */
    void open() {
        tools.asker().fileToOpen(over, texts.get("book.open.title"), EXTENSION).ifPresent(this::open);
    }

    /** Turns to the lab book in a file. */
    void open(Path file) {
        if (mayLeave.getAsBoolean()) {
            turn(
                    file,
                    texts.get("book.open.doing", name(file)),
                    () -> tools.shelf().open(file));
        }
    }

    /** Turns to the demo lab book, which is made when it is not there. */
    void openDemo() {
        if (mayLeave.getAsBoolean()) {
            Path file = demo.file();
            turn(file, texts.get("book.open.doing", name(file)), () -> {
                demo.make().accept(file);
                return tools.shelf().open(file);
            });
        }
    }

    private void turn(Path file, String doing, Callable<LabBook> opening) {
        if (!desk.hasBook()) {
            window.opening(file);
        }
        LocalDate day = tools.today();
        tools.tasks()
                .run(
                        doing,
                        () -> read(opening.call(), day),
                        reading -> {
                            LabBook before = desk.turnTo(reading);
                            window.opened(file);
                            close(before);
                        },
                        failure -> say(file, doing, failure));
    }

    private static Reading read(LabBook book, LocalDate day) {
        boolean isRead = false;
        try {
            Reading reading = Reading.of(book, day);
            isRead = true;
            return reading;
        } finally {
            if (!isRead) {
                book.close();
            }
        }
    }

    private void close(LabBook before) {
        String doing = texts.get("book.close.doing", before.name());
        tools.tasks()
                .run(
                        doing,
                        () -> {
                            before.close();
                            return before;
                        },
                        closed -> {},
                        failure -> tools.asker().failure(over, doing, failure));
    }

    private void say(Path file, String doing, Exception failure) {
        boolean isRefused = failure instanceof OpeningRefused;
        if (isRefused) {
            window.gone(file);
        }
        if (!desk.hasBook()) {
            window.troubled(new Trouble(file, reason(doing, failure), isLogged(doing, failure)));
        } else if (failure instanceof OpeningRefused refused) {
            tools.asker().problems(over, texts.get("book.refused.title"), List.of(refused.problem()));
        } else {
            tools.asker().failure(over, doing, failure);
        }
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

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
