package porebench.desk.frame.dialog;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.DraftModel;
import porebench.desk.form.DraftReader;
import porebench.desk.form.TypedDraft;
import porebench.method.Texts;
import porebench.record.Laboratory;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.LaboratoryColumns;

/** Asks whose lab book this is: the name and address that stand on cards and sheets. */
public final class LaboratoryDialog {
    private static final Column<Laboratory, String> NAME = LaboratoryColumns.NAME.called("name");
    private static final Column<Laboratory, String> ADDRESS = LaboratoryColumns.ADDRESS.called("address");

    private final DeskModel desk;
    private final Texts texts;

    public LaboratoryDialog(DeskModel desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
    }

    public void ask(JComponent over) {
        desk.ask(new Question.One<>(Laboratory.class, Laboratory.ID), before -> ask(over, before));
    }

    private void ask(JComponent over, Optional<Version<Laboratory>> before) {
        TypedDraft kept = before.map(Version::value)
                .map(laboratory ->
                        TypedDraft.BLANK.with(NAME, laboratory.name()).with(ADDRESS, laboratory.address()))
                .orElse(TypedDraft.BLANK);
        DraftModel model = new DraftModel(texts, "laboratory.", kept);
        ColumnForm form = new ColumnForm(model, desk.tools().problemText()).addAll(List.of(NAME, ADDRESS));
        ((JTextField) form.field(NAME.field())).setColumns(36);
        form.pull();
        AskDialog dialog = new AskDialog(over, texts.get("laboratory.title"), form.panel());
        JButton keep = dialog.button("accept", texts.get("laboratory.keep"));
        dialog.button("cancel", texts.get("ask.cancel"));
        dialog.closesOnlyIf(keep, () -> {
            DraftReader reader = new DraftReader(model.draft(), desk.tools().numbers(), model::words);
            reader.require(NAME);
            form.show(reader.problems());
            return reader.problems().isEmpty();
        });
        if (dialog.ask() == 0) {
            keep(
                    over,
                    before,
                    new Laboratory(
                            model.draft().text(NAME).strip(),
                            model.draft().text(ADDRESS).strip(),
                            desk.isTraining()));
        }
    }

    private void keep(JComponent over, Optional<Version<Laboratory>> before, Laboratory laboratory) {
        String title = texts.get("laboratory.title");
        if (before.map(version -> version.value().equals(laboratory)).orElse(false)) {
            return;
        }
        Optional<String> why = before.isEmpty()
                ? Optional.of(texts.get("laboratory.first"))
                : desk.tools().asker().reason(over, title, texts.get("laboratory.why"), texts.get("laboratory.act"));
        if (why.isEmpty() || desk.tools().asker().person(over).isEmpty()) {
            return;
        }
        Draft draft =
                before.map(version -> Draft.correcting(version, laboratory)).orElseGet(() -> Draft.of(laboratory));
        desk.keep(List.of(draft), why.get(), problems -> {
            if (!problems.isEmpty()) {
                desk.tools().asker().problems(over, title, problems);
            }
        });
    }
}
