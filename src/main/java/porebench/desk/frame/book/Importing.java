package porebench.desk.frame.book;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.SheetImport;
import porebench.desk.Tools;
import porebench.desk.frame.dialog.ImportModel;
import porebench.desk.frame.dialog.ImportQuestion;
import porebench.desk.frame.dialog.ImportRead;
import porebench.evidence.intake.Sheet;
import porebench.evidence.intake.SheetStyle;
import porebench.method.Texts;
import porebench.record.Kept;
import porebench.record.book.LabBook;

/** Brings records in from CSV files: one preview, one decision and one keeping for all of them, whatever their order. */
public final class Importing {
    private final DeskModel desk;
    private final Tools tools;
    private final Texts texts;
    private final JComponent over;
    private final Turning turning;

    /**
     * Makes it.
     *
     * @param over what dialogs stand over
     */
    Importing(DeskModel desk, Texts texts, JComponent over, Turning turning) {
        this.desk = desk;
        this.tools = desk.tools();
        this.texts = texts;
        this.over = over;
        this.turning = turning;
    }

    /** Asks for files and brings them in, after showing what is wrong with them. */
    void choose(SheetImport.Taking taking) {
        List<Path> files = tools.asker().filesToOpen(over, texts.get("import.title"), ".csv");
        if (!files.isEmpty()) {
            read(files, SheetStyle.DOCUMENTED, taking);
        }
    }

    /** Takes files that were dropped on the window: a lab book is offered to be opened, others are brought in. */
    void dropped(List<Path> files) {
        String title = texts.get("import.title");
        List<Path> books = files.stream().filter(Importing::isBook).toList();
        if (files.size() == 1 && !books.isEmpty()) {
            Path book = books.get(0);
            if (tools.asker()
                    .confirm(
                            over,
                            texts.get("book.open.title"),
                            texts.get("drop.book", name(book)),
                            texts.get("drop.book.open"))) {
                turning.open(book);
            }
        } else if (!books.isEmpty()) {
            tools.asker().tell(over, title, texts.get("drop.book.alone", name(books.get(0))));
        } else if (!desk.hasBook()) {
            tools.asker().tell(over, title, texts.get("drop.no-book"));
        } else if (!files.isEmpty()) {
            read(files, SheetStyle.DOCUMENTED, SheetImport.Taking.ALL);
        }
    }

    /** Brings in rows that were pasted, after showing what is wrong with them. */
    void take(Sheet<Kept> pasted) {
        LabBook book = desk.book();
        LocalDateTime now = tools.now();
        String doing = texts.get("import.doing", pasted.file());
        tools.tasks()
                .run(
                        doing,
                        progress -> new ImportRead(
                                List.of(),
                                Map.of(),
                                SheetStyle.DOCUMENTED,
                                ImportModel.of(book, List.of(pasted), now, progress)),
                        read -> ask(read, SheetImport.Taking.ALL),
                        failure -> tools.asker().failure(over, doing, failure));
    }

    private static boolean isBook(Path file) {
        return name(file).toLowerCase(Locale.ROOT).endsWith(Turning.EXTENSION);
    }

    private void read(List<Path> files, SheetStyle style, SheetImport.Taking taking) {
        LabBook book = desk.book();
        LocalDateTime now = tools.now();
        String doing =
                texts.get("import.doing", files.stream().map(Importing::name).collect(Collectors.joining(", ")));
        tools.tasks()
                .run(
                        doing,
                        progress ->
                                ImportRead.of(tools.sheets(), book, files, style, taking, now, tools.zone(), progress),
                        read -> ask(read, taking),
                        failure -> tools.asker().failure(over, doing, failure));
    }

    private void ask(ImportRead read, SheetImport.Taking taking) {
        ImportQuestion.Answer answer = new ImportQuestion(texts, tools).ask(over, read);
        answer.anew().ifPresent(style -> read(read.files(), style, taking));
        if (answer.keeps() && tools.asker().person(over).isPresent()) {
            explained(read.incoming()).ifPresent(this::keep);
        }
    }

    /** Asks why doubted records are kept, as at the bench; empty when the person does not want to say. */
    private Optional<ImportModel> explained(ImportModel incoming) {
        int doubted = incoming.result().doubts();
        if (doubted == 0) {
            return Optional.of(incoming);
        }
        return tools.asker()
                .reason(
                        over,
                        texts.get("import.doubted.title"),
                        texts.get("import.doubted.question", doubted, incoming.doubtedNames()),
                        texts.get("import.doubted.act"))
                .map(incoming::keptFor);
    }

    private void keep(ImportModel incoming) {
        String title = texts.get("import.title");
        desk.keep(incoming.result().drafts(), texts.get("import.why", incoming.file()), problems -> {
            if (problems.isEmpty()) {
                tools.asker()
                        .tell(over, title, texts.get("import.done", ImportQuestion.countsInWords(texts, incoming)));
            } else {
                tools.asker().problems(over, title, problems);
            }
        });
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
