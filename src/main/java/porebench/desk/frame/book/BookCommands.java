package porebench.desk.frame.book;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.SheetImport;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.evidence.intake.Sheet;
import porebench.method.Answer;
import porebench.method.Texts;
import porebench.port.BookCopy;
import porebench.port.OutputFolder;
import porebench.port.OutputRefused;
import porebench.record.Kept;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;

/** What can be done with the open lab book as a whole: copy it, bring records in and out, check the chain. */
public final class BookCommands {
    private final DeskModel desk;
    private final Tools tools;
    private final Texts texts;
    private final JComponent over;
    private final Turning turning;
    private final Importing importing;

    /**
     * Makes the commands.
     *
     * @param over what dialogs stand over
     */
    BookCommands(DeskModel desk, Texts texts, JComponent over, Turning turning, Importing importing) {
        this.desk = desk;
        this.tools = desk.tools();
        this.texts = texts;
        this.over = over;
        this.turning = turning;
        this.importing = importing;
    }

    /** Writes a copy of the lab book to a new file and stays with this one. */
    public void saveCopy() {
        Optional<Path> file = tools.asker()
                .newFile(
                        over,
                        texts.get("book.copy.title"),
                        texts.get("book.copy.name", plainName()) + Turning.EXTENSION);
        file.ifPresent(chosen -> work(
                texts.get("book.copy.doing", name(chosen)),
                () -> {
                    desk.book().saveCopy(chosen);
                    return chosen;
                },
                done -> tools.asker()
                        .tell(over, texts.get("book.copy.title"), texts.get("book.copy.done", done.toString()))));
    }

    /** Backs the lab book up into a folder, under a name of the moment; the backup is checked before it gets it. */
    public void backUp() {
        Optional<Path> file = turning.file();
        if (file.isEmpty()) {
            return;
        }
        tools.asker().folder(over, texts.get("backup.title")).ifPresent(folder -> {
            String doing = texts.get("backup.doing", folder.toString());
            work(doing, progress -> tools.shelf().backUp(file.get(), folder, progress), this::tellBackedUp);
        });
    }

    private void tellBackedUp(Answer<BookCopy> answer) {
        String title = texts.get("backup.title");
        answer.value()
                .ifPresent(copy -> tools.asker()
                        .tell(
                                over,
                                title,
                                texts.get(
                                        "backup.done",
                                        copy.file().toString(),
                                        copy.head().entries(),
                                        copy.head().printed())));
        if (!answer.problems().isEmpty()) {
            tools.asker().problems(over, title, answer.problems());
        }
    }

    /** Brings records in from CSV files, after showing what is wrong with them. */
    public void importCsv() {
        importCsv(SheetImport.Taking.ALL);
    }

    /** Brings in what a page takes of CSV files, after showing what is wrong with them. */
    public void importCsv(SheetImport.Taking taking) {
        importing.choose(taking);
    }

    /** Brings in rows that were pasted, after showing what is wrong with them. */
    public void take(Sheet<Kept> pasted) {
        importing.take(pasted);
    }

    /** Writes every kind of record into a folder as CSV. */
    public void exportCsv() {
        export("export.title", tools.sheets()::export);
    }

    /** Writes everything, all versions with who, when and why, into a folder, from which it can be built anew. */
    public void exportWhole() {
        export("export.whole.title", tools.sheets()::exportWhole);
    }

    /** One of the ways of writing a lab book into a folder. */
    @FunctionalInterface
    private interface Writing {
        List<Path> write(LabBook book, OutputFolder folder, Progress progress);
    }

    private void export(String titleKey, Writing writing) {
        String title = texts.get(titleKey);
        tools.asker().folder(over, title).ifPresent(folder -> exportTo(OutputFolder.fresh(folder), title, writing));
    }

    private void exportTo(OutputFolder folder, String title, Writing writing) {
        String doing = texts.get("export.doing", folder.path().toString());
        tools.tasks()
                .run(
                        doing,
                        progress -> writing.write(desk.book(), folder, progress),
                        files -> tellExported(folder.path(), title, files),
                        failure -> {
                            if (mayReplace(folder, title, doing, failure)) {
                                exportTo(OutputFolder.replacing(folder.path()), title, writing);
                            }
                        });
    }

    /** Asks before files that are there are replaced; nothing is written until then. Tells any other failure. */
    private boolean mayReplace(OutputFolder folder, String title, String doing, Exception failure) {
        if (!(failure instanceof OutputRefused refused) || !refused.isOnlyThere()) {
            tools.asker().failure(over, doing, failure);
            return false;
        }
        String question = texts.get(
                "export.replace",
                folder.path().toString(),
                Integer.toString(refused.problems().size()));
        return tools.asker().confirm(over, title, question, texts.get("ask.replace.action"));
    }

    private void tellExported(Path folder, String title, List<Path> files) {
        String names = String.join("\n", files.stream().map(BookCommands::name).toList());
        tools.asker().tell(over, title, texts.get("export.done", folder.toString(), names));
    }

    /** Checks the whole lab book: file, tables, indexes and the chain of entries. */
    public void verify() {
        work(texts.get("verify.doing"), progress -> desk.book().check(Optional.empty(), progress), check -> {
            if (check.problems().isEmpty()) {
                tools.asker()
                        .tell(
                                over,
                                texts.get("verify.title"),
                                texts.get(
                                        "verify.good",
                                        desk.book().name(),
                                        check.head().entries(),
                                        check.head().printed()));
            } else {
                tools.asker().problems(over, texts.get("verify.title"), check.problems());
            }
        });
    }

    private <T> void work(String doing, Callable<T> work, Consumer<T> done) {
        tools.tasks().run(doing, work, done, failure -> tools.asker().failure(over, doing, failure));
    }

    private <T> void work(String doing, Tasks.Told<T> work, Consumer<T> done) {
        tools.tasks().run(doing, work, done, failure -> tools.asker().failure(over, doing, failure));
    }

    private String plainName() {
        String name = desk.book().name();
        return name.endsWith(Turning.EXTENSION) ? name.substring(0, name.length() - Turning.EXTENSION.length()) : name;
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
