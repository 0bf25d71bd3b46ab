package porebench.desk.field;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.ListOut;
import porebench.desk.Question;
import porebench.desk.form.Commands;
import porebench.evidence.paper.FieldList;
import porebench.method.Texts;
import porebench.port.ReadingsTable;

/** What can be done with the readings as they are on view: print them, and write them into a file. */
final class FieldPrinting {
    final Action print;
    final Action save;

    private final FieldsModel model;
    private final DeskModel desk;
    private final Texts texts;
    private final Supplier<List<FieldLine>> shown;
    private final ListOut out;
    private final ListOut.Words words;

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
        this.shown = shown;
        this.out = new ListOut(desk, page, told);
        this.words = new ListOut.Words(
                texts.get("doing.print"),
                texts.get("printed"),
                texts.get("not-printed"),
                texts.get("write.title"),
                texts.get("write.kind-pdf"),
                texts.get("write.kind-csv"),
                file -> texts.get("doing.write", file),
                file -> texts.get("written", file));
        print = Commands.of(texts.get("act.print"), () -> list(list -> out.print(leaf(list))));
        save = Commands.of(texts.get("act.write"), () -> list(list -> out.save(leaf(list))));
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

    private ListOut.Leaf leaf(FieldList list) {
        return new ListOut.Leaf(
                list,
                Optional.of(() -> ReadingsTable.of(list)),
                texts.get(
                        "write.file",
                        list.days().first().toString(),
                        list.days().last().toString()),
                words);
    }
}
