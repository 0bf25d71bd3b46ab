package porebench.desk.frame.dialog;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.form.Form;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.Laboratory;
import porebench.record.book.Draft;
import porebench.record.book.Version;

/** Asks whose lab book this is: the name and address that stand on cards and sheets. */
public final class LaboratoryDialog {
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
        JTextField name = new JTextField(before.map(v -> v.value().name()).orElse(""), 36);
        JTextField address = new JTextField(before.map(v -> v.value().address()).orElse(""), 36);
        Form form = new Form(desk.tools().problemText());
        form.add("name", texts.get("laboratory.name"), name, "");
        form.add("address", texts.get("laboratory.address"), address, "");
        AskDialog dialog = new AskDialog(over, texts.get("laboratory.title"), form.panel());
        JButton keep = dialog.button("accept", texts.get("ask.keep"));
        dialog.button("cancel", texts.get("ask.cancel"));
        dialog.closesOnlyIf(keep, () -> {
            List<Problem> problems = name.getText().isBlank()
                    ? List.of(Problem.missing("name", texts.get("laboratory.name.plain")))
                    : List.of();
            form.show(problems);
            return problems.isEmpty();
        });
        if (dialog.ask() == 0) {
            keep(
                    over,
                    before,
                    new Laboratory(name.getText().strip(), address.getText().strip(), desk.isTraining()));
        }
    }

    private void keep(JComponent over, Optional<Version<Laboratory>> before, Laboratory laboratory) {
        String title = texts.get("laboratory.title");
        if (before.map(version -> version.value().equals(laboratory)).orElse(false)) {
            return;
        }
        Optional<String> why = before.isEmpty()
                ? Optional.of(texts.get("laboratory.first"))
                : desk.tools().asker().reason(over, title, texts.get("laboratory.why"));
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
