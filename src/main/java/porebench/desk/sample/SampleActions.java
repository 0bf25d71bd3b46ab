package porebench.desk.sample;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.WithoutPrinter;
import porebench.desk.form.Commands;
import porebench.desk.form.FileNames;
import porebench.desk.form.Tasks;
import porebench.evidence.paper.Printed;
import porebench.evidence.paper.SampleLabels;
import porebench.evidence.paper.TrialSheet;
import porebench.method.Texts;
import porebench.port.OutputFile;
import porebench.port.Paper;

/** What can be done on the correction sample page, each with its words and when it can be done. */
final class SampleActions {
    final Action print;
    final Action save;
    final Action printLabels;
    final Action saveLabels;

    private final DeskModel desk;
    private final SampleModel model;
    private final Texts texts;
    private final JComponent page;
    private final Consumer<String> told;

    /**
     * Makes the actions.
     *
     * @param page the page, for dialogs to stand over
     * @param told takes what was done, in words
     */
    SampleActions(DeskModel desk, SampleModel model, JComponent page, Consumer<String> told) {
        this.desk = desk;
        this.model = model;
        this.texts = model.texts();
        this.page = page;
        this.told = told;
        print = Commands.of(texts.get("action.print"), () -> model.sheet().ifPresent(this::print));
        save = Commands.of(texts.get("action.save"), () -> model.sheet().ifPresent(this::save));
        printLabels = Commands.of(texts.get("action.labels.print"), () -> labels().ifPresent(this::printLabels));
        saveLabels = Commands.of(texts.get("action.labels.save"), () -> labels().ifPresent(this::saveLabels));
    }

    void refresh() {
        boolean hasSheet = model.reading().flatMap(SampleReading::weighOut).isPresent();
        print.setEnabled(hasSheet);
        save.setEnabled(hasSheet);
        printLabels.setEnabled(hasSheet);
        saveLabels.setEnabled(hasSheet);
    }

    /** Returns the labels for what is weighed today; empty while something forbids the sheet. */
    private Optional<SampleLabels> labels() {
        return model.sheet().map(sheet -> new SampleLabels(sheet, desk.tools().today()));
    }

    private void printLabels(SampleLabels labels) {
        Paper paper = model.paper();
        run(
                texts.get("labels.doing.print", labels.sheet().mix().id().text()),
                progress -> desk.tools().press().print(labels, paper, texts.locale(), progress),
                printed -> texts.get(printed ? "labels.printed" : "sheet.not-printed"),
                () -> saveLabels(labels));
    }

    private void saveLabels(SampleLabels labels) {
        String id = labels.sheet().mix().id().text();
        desk.tools()
                .asker()
                .fileToWrite(
                        page,
                        texts.get("labels.save.title"),
                        FileNames.dated(texts.get("labels.file", FileNames.part(id)), labels.day()))
                .ifPresent(file -> write(
                        labels,
                        file,
                        texts.get("labels.doing.save", id, file.path().toString())));
    }

    private void print(TrialSheet sheet) {
        Paper paper = model.paper();
        run(
                texts.get("sheet.doing.print", sheet.mix().id().text()),
                progress -> desk.tools().press().print(sheet, paper, texts.locale(), progress),
                printed -> texts.get(printed ? "sheet.printed" : "sheet.not-printed"),
                () -> save(sheet));
    }

    private void save(TrialSheet sheet) {
        desk.tools()
                .asker()
                .fileToWrite(page, texts.get("sheet.save.title"), model.sheetFileName())
                .ifPresent(file -> write(
                        sheet,
                        file,
                        texts.get(
                                "sheet.doing.save",
                                sheet.mix().id().text(),
                                file.path().toString())));
    }

    private void write(Printed sheet, OutputFile file, String doing) {
        Paper paper = model.paper();
        desk.tools()
                .tasks()
                .run(
                        doing,
                        () -> {
                            desk.tools().press().write(sheet, paper, texts.locale(), file);
                            return file.path().toString();
                        },
                        written -> told.accept(texts.get("sheet.saved", written)),
                        failure -> desk.tools().asker().failure(page, doing, failure));
    }

    private <T> void run(String doing, Tasks.Told<T> work, Function<T, String> done, Runnable withoutPrinter) {
        desk.tools()
                .tasks()
                .run(
                        doing,
                        work,
                        result -> told.accept(done.apply(result)),
                        failure -> WithoutPrinter.tell(desk.tools(), page, doing, failure, withoutPrinter));
    }
}
