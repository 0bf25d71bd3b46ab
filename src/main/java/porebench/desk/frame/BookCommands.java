package porebench.desk.frame;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Tools;
import porebench.desk.form.Texts;
import porebench.method.Problem;
import porebench.record.LabBook;
import porebench.record.port.OpeningRefused;
import porebench.record.port.OutputFolder;
import porebench.record.port.OutputRefused;

/** What can be done with the lab book as a whole: begin, open, copy, bring records in and out, check the chain. */
final class BookCommands {
    static final String EXTENSION = ".porebench";

    private final DeskModel desk;
    private final Tools tools;
    private final Texts texts;
    private final JComponent over;
    private final BooleanSupplier mayLeave;
    private final Consumer<Path> opened;
    private final Consumer<Path> gone;

    /**
     * Makes the commands.
     *
     * @param over what dialogs stand over
     * @param mayLeave asks about unsaved drafts
     * @param opened told the file of the lab book that is open from now on
     * @param gone told a file that cannot be opened
     */
    BookCommands(
            DeskModel desk,
            Texts texts,
            JComponent over,
            BooleanSupplier mayLeave,
            Consumer<Path> opened,
            Consumer<Path> gone) {
        this.desk = desk;
        this.tools = desk.tools();
        this.texts = texts;
        this.over = over;
        this.mayLeave = mayLeave;
        this.opened = opened;
        this.gone = gone;
    }

    /** Begins a new lab book and turns to it. */
    void begin() {
        if (mayLeave.getAsBoolean()) {
            tools.asker()
                    .newFile(over, texts.get("book.new.title"), texts.get("book.new.name") + EXTENSION)
                    .ifPresent(file -> turnTo(
                            file,
                            texts.get("book.new.doing", name(file)),
                            () -> tools.shelf().create(file)));
        }
    }

    /** Asks for a lab book and turns to it. */
    void open() {
        tools.asker().fileToOpen(over, texts.get("book.open.title"), EXTENSION).ifPresent(this::open);
    }

    /** Turns to the lab book in a file; one that cannot be opened leaves the lab book before open. */
    void open(Path file) {
        if (mayLeave.getAsBoolean()) {
            turnTo(
                    file,
                    texts.get("book.open.doing", name(file)),
                    () -> tools.shelf().open(file));
        }
    }

    private void turnTo(Path file, String doing, Callable<LabBook> opening) {
        tools.tasks()
                .run(
                        doing,
                        opening,
                        book -> {
                            desk.turnTo(book);
                            opened.accept(file);
                        },
                        failure -> {
                            if (failure instanceof OpeningRefused refused) {
                                gone.accept(file);
                                tools.asker()
                                        .problems(over, texts.get("book.refused.title"), List.of(refused.problem()));
                            } else {
                                tools.asker().failure(over, doing, failure);
                            }
                        });
    }

    /** Writes a copy of the lab book to a new file and stays with this one. */
    void saveCopy() {
        Optional<Path> file = tools.asker()
                .newFile(over, texts.get("book.copy.title"), texts.get("book.copy.name", plainName()) + EXTENSION);
        file.ifPresent(chosen -> work(
                texts.get("book.copy.doing", name(chosen)),
                () -> {
                    desk.book().saveCopy(chosen);
                    return chosen;
                },
                done -> tools.asker()
                        .tell(over, texts.get("book.copy.title"), texts.get("book.copy.done", done.toString()))));
    }

    /** Brings records in from a CSV file, after showing what is wrong with it. */
    void importCsv() {
        Optional<Path> file = tools.asker().fileToOpen(over, texts.get("import.title"), ".csv");
        file.ifPresent(chosen -> work(
                texts.get("import.doing", name(chosen)),
                () -> tools.sheets().records(chosen),
                sheet -> keepGood(ImportModel.of(desk.book(), sheet))));
    }

    private void keepGood(ImportModel incoming) {
        String title = texts.get("import.title");
        boolean keep = new ImportQuestion(texts, tools).ask(over, incoming);
        if (!keep || tools.asker().person(over).isEmpty()) {
            return;
        }
        List<Problem> problems = desk.keep(incoming.result().drafts(), texts.get("import.why", incoming.file()));
        if (problems.isEmpty()) {
            tools.asker().tell(over, title, texts.get("import.done", ImportQuestion.countsInWords(texts, incoming)));
        } else {
            tools.asker().problems(over, title, problems);
        }
    }

    /** Writes every kind of record into a folder as CSV. */
    void exportCsv() {
        tools.asker().folder(over, texts.get("export.title")).ifPresent(folder -> exportTo(OutputFolder.fresh(folder)));
    }

    private void exportTo(OutputFolder folder) {
        String doing = texts.get("export.doing", folder.path().toString());
        tools.tasks()
                .run(
                        doing,
                        () -> tools.sheets().export(desk.book(), folder),
                        files -> tellExported(folder.path(), files),
                        failure -> exportFailed(folder, doing, failure));
    }

    /** Asks before files that are there are replaced; nothing is written until then. */
    private void exportFailed(OutputFolder folder, String doing, Exception failure) {
        if (!(failure instanceof OutputRefused refused) || !refused.isOnlyThere()) {
            tools.asker().failure(over, doing, failure);
            return;
        }
        String question = texts.get(
                "export.replace",
                folder.path().toString(),
                Integer.toString(refused.problems().size()));
        if (tools.asker().confirm(over, texts.get("export.title"), question, texts.get("ask.replace.action"))) {
            exportTo(OutputFolder.replacing(folder.path()));
        }
    }

    private void tellExported(Path folder, List<Path> files) {
        String names = String.join("\n", files.stream().map(BookCommands::name).toList());
        tools.asker().tell(over, texts.get("export.title"), texts.get("export.done", folder.toString(), names));
    }

    /** Checks that nothing in the chain of histories was changed outside the program. */
    void verify() {
        work(texts.get("verify.doing"), () -> desk.book().verify(), problems -> {
            if (problems.isEmpty()) {
                tools.asker()
                        .tell(
                                over,
                                texts.get("verify.title"),
                                texts.get("verify.good", desk.book().name()));
            } else {
                tools.asker().problems(over, texts.get("verify.title"), problems);
            }
        });
    }

    private <T> void work(String doing, Callable<T> work, Consumer<T> done) {
        tools.tasks().run(doing, work, done, failure -> tools.asker().failure(over, doing, failure));
    }

    private String plainName() {
        String name = desk.book().name();
        return name.endsWith(EXTENSION) ? name.substring(0, name.length() - EXTENSION.length()) : name;
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
