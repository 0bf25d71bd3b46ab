package porebench.desk.field;

import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.NewerVersion;
import porebench.desk.Outcome;
import porebench.desk.SheetImport;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.FieldReading;

/** The commands of the page: what must be asked is asked, then the model does it. */
final class FieldActions {
    private final FieldsModel model;
    private final FieldEntry entry;
    private final DeskModel desk;
    private final Texts texts;
    private final JComponent over;
    private final Consumer<List<Problem>> goTo;
    private final Runnable saved;
    private final SheetImport sheets;
    private final NewerVersion<FieldReading> newer;

    /**
     * Makes the commands.
     *
     * @param over the page, over which dialogs stand
     * @param goTo puts the caret where something is wrong
     * @param saved told when a reading was saved
     * @param sheets brings sheets in
     */
    FieldActions(FieldsModel model, JComponent over, Consumer<List<Problem>> goTo, Runnable saved, SheetImport sheets) {
        this.model = model;
        this.entry = model.entry();
        this.desk = model.desk();
        this.texts = model.texts();
        this.over = over;
        this.goTo = goTo;
        this.saved = saved;
        this.sheets = sheets;
        this.newer = new NewerVersion<>(entry, () -> over);
    }

    NewerVersion<FieldReading> newer() {
        return newer;
    }

    private Asker asker() {
        return desk.tools().asker();
    }

    /** Saves the form: a new reading, or the correction of one with a reason; shows before what somebody else kept meanwhile. */
    void save() {
        if (desk.hasBook()) {
            newer.save(this::saveNewest);
        }
    }

    private void saveNewest() {
        List<Problem> errors = entry.attempt();
        if (!errors.isEmpty()) {
            goTo.accept(errors);
            return;
        }
        if (asker().person(over).isPresent()) {
            entry.look();
            entry.gate().ifPresent(gate -> desk.ask(gate, this::saveHeld));
        }
    }

    private void saveHeld(FieldGate.Held held) {
        if (!held.errors().isEmpty()) {
            goTo.accept(held.errors());
            return;
        }
        Optional<String> kept = Optional.empty();
        String what = texts.get(
                "reading.what", held.reading().mixId().text(), held.reading().truck());
        if (entry.wantsReason(held)) {
            kept = asker().reason(
                            over,
                            texts.get("doubts.title", what),
                            texts.get("doubts.question", said(held.doubts())),
                            texts.get("doubts.act"));
            if (kept.isEmpty()) {
                return;
            }
        }
        Optional<String> why = entry.isNew()
                ? Optional.of(texts.get("why.entered"))
                : asker().reason(
                                over,
                                texts.get("correct.title", what),
                                texts.get("correct.question"),
                                texts.get("correct.act"));
        if (why.isPresent()) {
            entry.keep(held, kept, why.get(), refused -> {
                tell(refused);
                if (refused.isEmpty()) {
                    model.choose(Optional.of(held.reading().recordId()));
                    saved.run();
                }
            });
        }
    }

    private String said(List<Problem> problems) {
        return problems.stream().map(desk.tools().problemText()::say).collect(Collectors.joining("\n"));
    }

    void strike() {
        withReason("strike", model::strike);
    }

    void restore() {
        withReason("restore", model::restore);
    }

    private void withReason(String act, BiConsumer<String, Outcome> change) {
        Optional<FieldReading> reading = model.chosen().map(FieldLine::reading);
        if (reading.isPresent() && asker().person(over).isPresent()) {
            String what = texts.get(
                    "reading.what", reading.get().mixId().text(), reading.get().truck());
            asker().reason(over, texts.get(act + ".title", what), texts.get(act + ".question"), texts.get(act + ".act"))
                    .ifPresent(reason -> change.accept(reason, this::tell));
        }
    }

    /** Brings readings in from files, with a preview. */
    void importFiles() {
        sheets.choose(over, SheetImport.Taking.ALL);
    }

    /** Takes the rows that were copied in a spreadsheet, with the preview of an import. */
    void paste() {
        String doing = texts.get("doing.paste");
        desk.tools()
                .tasks()
                .run(doing, FieldActions::copied, this::take, failure -> asker().failure(over, doing, failure));
    }

    private static String copied() throws IOException {
        try {
            return (String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
        } catch (UnsupportedFlavorException noText) {
            return "";
        }
    }

    private void take(String text) {
        if (text.isBlank()) {
            asker().tell(over, texts.get("paste.title"), texts.get("paste.nothing"));
        } else {
            sheets.take(over, PastedReadings.of(entry, texts.get("paste.name"), text));
        }
    }

    private void tell(List<Problem> problems) {
        if (!problems.isEmpty()) {
            asker().problems(over, texts.get("refused.title"), problems);
        }
    }
}
