package porebench.desk.field;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.WithoutPrinter;
import porebench.desk.form.Commands;
import porebench.desk.form.UnitSystem;
import porebench.evidence.paper.FieldList;
import porebench.method.Texts;
import porebench.port.OutputFile;
import porebench.port.Paper;
import porebench.port.ReadingsTable;

/** What can be done with the readings as they are on view: print them, and write them into a file. */
final class FieldPrinting {
    private static final String PDF = "pdf";
    private static final String CSV = "csv";

    final Action print;
    final Action save;

    private final FieldsModel model;
    private final DeskModel desk;
    private final Texts texts;
    private final JComponent page;
    private final Supplier<List<FieldLine>> shown;
    private final Consumer<String> told;

    /**
     * Makes the actions.
     *
     * @param page the page, for dialogs to stand over
     * @param shown the lines on view, in their order
     * @param told takes what was done, in words
     */
    FieldPrinting(FieldsModel model, JComponent page, Supplier<List<FieldLine>> shown, Consumer<String> told) {
        this.model = model;
        this.desk = model.desk();
        this.texts = model.texts();
        this.page = page;
        this.shown = shown;
        this.told = told;
        print = Commands.of(texts.get("act.print"), () -> list(this::print));
        save = Commands.of(texts.get("act.write"), () -> list(this::save));
    }

    void refresh() {
        boolean isKnown = model.isReady();
        print.setEnabled(isKnown);
        save.setEnabled(isKnown);
    }

    /** Makes the list of what is on view now; how far the lab book reaches is read beside the event thread. */
    private void list(Consumer<FieldList> then) {
        List<FieldLine> lines = shown.get();
        desk.ask(new Question.HeadOfBook(), head -> then.accept(model.list(lines, head)));
    }

    private Paper paper() {
        return desk.units() == UnitSystem.US ? Paper.LETTER : Paper.A4;
    }

    private void print(FieldList list) {
        Paper paper = paper();
        Locale locale = desk.tools().locale();
        String doing = texts.get("doing.print");
        desk.tools()
                .tasks()
                .run(
                        doing,
                        progress -> desk.tools().press().print(list, paper, locale, progress),
                        printed -> told.accept(texts.get(printed ? "printed" : "not-printed")),
                        failure -> WithoutPrinter.tell(desk.tools(), page, doing, failure, () -> save(list)));
    }

    private void save(FieldList list) {
        desk.tools()
                .asker()
                .fileToWrite(
                        page,
                        texts.get("write.title"),
                        texts.get(
                                        "write.file",
                                        list.days().first().toString(),
                                        list.days().last().toString()) + "." + PDF,
                        List.of(
                                new Asker.Kind(PDF, texts.get("write.kind-pdf")),
                                new Asker.Kind(CSV, texts.get("write.kind-csv"))))
                .ifPresent(file -> write(list, file));
    }

    private void write(FieldList list, OutputFile file) {
        Paper paper = paper();
        Locale locale = desk.tools().locale();
        String doing = texts.get("doing.write", file.path().toString());
        desk.tools()
                .tasks()
                .run(
                        doing,
                        () -> {
                            if (Asker.Kind.endingOf(file.path()).equals(CSV)) {
                                desk.tools().sheets().writeTable(file, ReadingsTable.of(list));
                            } else {
                                desk.tools().press().write(list, paper, locale, file);
                            }
                            return file.path().toString();
                        },
                        written -> told.accept(texts.get("written", written)),
                        failure -> desk.tools().asker().failure(page, doing, failure));
    }
}
