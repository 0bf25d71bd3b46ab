package porebench.desk.sample;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.form.Commands;
import porebench.evidence.paper.TrialSheet;
import porebench.method.Texts;
import porebench.port.OutputFile;
import porebench.port.Paper;

/** What can be done on the correction sample page, each with its words and when it can be done. */
final class SampleActions {
    final Action print;
    final Action save;

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
    }

    void refresh() {
        boolean hasSheet = model.reading().flatMap(SampleReading::weighOut).isPresent();
        print.setEnabled(hasSheet);
        save.setEnabled(hasSheet);
    }

    private void print(TrialSheet sheet) {
        Paper paper = model.paper();
        Locale locale = desk.tools().locale();
        String doing = texts.get("sheet.doing.print", sheet.mix().id().text());
        desk.tools()
                .tasks()
                .run(
                        doing,
                        () -> desk.tools().press().print(sheet, paper, locale),
                        printed -> told.accept(texts.get(printed ? "sheet.printed" : "sheet.not-printed")),
                        failure -> failed(doing, failure));
    }

    private void save(TrialSheet sheet) {
        Optional<OutputFile> file =
                desk.tools().asker().fileToWrite(page, texts.get("sheet.save.title"), model.sheetFileName());
        file.ifPresent(chosen -> write(sheet, chosen));
    }

    private void write(TrialSheet sheet, OutputFile file) {
        Paper paper = model.paper();
        Locale locale = desk.tools().locale();
        String doing = texts.get(
                "sheet.doing.save", sheet.mix().id().text(), file.path().toString());
        desk.tools()
                .tasks()
                .run(
                        doing,
                        () -> {
                            desk.tools().press().write(sheet, paper, locale, file);
                            return file.path();
                        },
                        written -> told.accept(texts.get("sheet.saved", written.toString())),
                        failure -> failed(doing, failure));
    }

    private void failed(String doing, Exception failure) {
        if (!(failure instanceof CancellationException)) {
            desk.tools().asker().failure(page, doing, failure);
        }
    }
}
