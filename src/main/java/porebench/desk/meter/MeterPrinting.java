package porebench.desk.meter;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.WithoutPrinter;
import porebench.desk.form.Commands;
import porebench.desk.form.FileNames;
import porebench.evidence.MeterStory;
import porebench.evidence.paper.CalibrationForm;
import porebench.evidence.paper.CalibrationRecord;
import porebench.evidence.paper.Printed;
import porebench.method.Texts;
import porebench.port.OutputFile;
import porebench.port.Paper;
import porebench.record.Meter;
import porebench.record.chain.Head;

/** Puts the record of a calibration and the blank form of the next one on paper. */
final class MeterPrinting {
    final Action printRecord;
    final Action saveRecord;
    final Action printForm;
    final Action saveForm;

    private final DeskModel desk;
    private final MeterModel model;
    private final Texts texts;
    private final Supplier<JComponent> page;
    private final Consumer<String> told;

    /** Something to print with the words for it. */
    private record Leaf(Printed what, String words, String fileName) {}

    /**
     * Makes the commands.
     *
     * @param page the page, for dialogs to stand over
     * @param told takes what was done, in words
     */
    MeterPrinting(MeterModel model, Supplier<JComponent> page, Consumer<String> told) {
        this.desk = model.desk();
        this.model = model;
        this.texts = model.texts();
        this.page = page;
        this.told = told;
        printRecord = Commands.of(texts.get("action.record.print"), () -> record(this::print));
        saveRecord = Commands.of(texts.get("action.record.save"), () -> record(this::save));
        printForm = Commands.of(texts.get("action.form.print"), () -> form().ifPresent(this::print));
        saveForm = Commands.of(texts.get("action.form.save"), () -> form().ifPresent(this::save));
    }

    /** Offers what can be done now. */
    void refresh() {
        boolean hasRecord = model.chosen().isPresent();
        printRecord.setEnabled(hasRecord);
        saveRecord.setEnabled(hasRecord);
        printForm.setEnabled(model.story().isPresent());
        saveForm.setEnabled(model.story().isPresent());
    }

    private void record(Consumer<Leaf> then) {
        desk.ask(new Question.HeadOfBook(), head -> record(head).ifPresent(then));
    }

    private Optional<Leaf> record(Head head) {
        return model.story()
                .flatMap(story -> model.chosen()
                        .map(one -> one.calibration().value().id())
                        .flatMap(id -> CalibrationRecord.of(story, id, desk.laboratory(), head)
                                .map(what -> new Leaf(
                                        what,
                                        texts.get("paper.record", id.text()),
                                        fileName(name -> texts.get("paper.record.file", name), id.text())))));
    }

    private Optional<Leaf> form() {
        return model.story().map(this::form);
    }

    private Leaf form(MeterStory story) {
        Meter meter = story.meter().value();
        return new Leaf(
                CalibrationForm.of(desk.laboratory(), meter, desk.units().benchMass(), story.profile()),
                texts.get("paper.form", meter.id().text()),
                fileName(name -> texts.get("paper.form.file", name), meter.id().text()));
    }

    private String fileName(Function<String, String> naming, String id) {
        return FileNames.dated(naming.apply(FileNames.part(id)), desk.tools().today());
    }

    private void print(Leaf leaf) {
        Paper paper = desk.units().sheet();
        Locale locale = desk.tools().locale();
        String doing = texts.get("paper.doing.print", leaf.words());
        desk.tools()
                .tasks()
                .run(
                        doing,
                        progress -> desk.tools().press().print(leaf.what(), paper, locale, progress),
                        printed ->
                                told.accept(texts.get(printed ? "paper.printed" : "paper.not-printed", leaf.words())),
                        failure -> WithoutPrinter.tell(desk.tools(), page.get(), doing, failure, () -> save(leaf)));
    }

    private void save(Leaf leaf) {
        desk.tools()
                .asker()
                .fileToWrite(page.get(), texts.get("paper.save.title", leaf.words()), leaf.fileName())
                .ifPresent(file -> write(leaf, file));
    }

    private void write(Leaf leaf, OutputFile file) {
        Paper paper = desk.units().sheet();
        Locale locale = desk.tools().locale();
        String doing = texts.get("paper.doing.save", leaf.words(), file.path().toString());
        desk.tools()
                .tasks()
                .run(
                        doing,
                        () -> {
                            desk.tools().press().write(leaf.what(), paper, locale, file);
                            return file.path();
                        },
                        written -> told.accept(texts.get("paper.saved", written.toString())),
                        failure -> desk.tools().asker().failure(page.get(), doing, failure));
    }
}
