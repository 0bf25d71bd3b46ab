package porebench.desk.trial;

import java.util.Optional;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.WrappedText;
import porebench.method.ProblemText;
import porebench.method.Texts;

/** What a trial sheet holds and what is wrong with it, until the person says what becomes of the good trials. */
final class ImportPanel {
    private static final int SHOWN_LINES = 7;

    private final TrialsModel model;
    private final Texts texts;
    private final WrappedText summary = new WrappedText("importSummary", "");
    private final JTextArea problems = new JTextArea(SHOWN_LINES, 60);
    private final JScrollPane scroll = new JScrollPane(problems);
    private final Action keep;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]", "[]6[]6[]8[]"));

    ImportPanel(TrialsModel model, TrialsActions actions) {
        this.model = model;
        this.texts = model.texts();
        problems.setName("importProblems");
        problems.setEditable(false);
        problems.setLineWrap(true);
        problems.setWrapStyleWord(true);
        keep = Commands.of(texts.get("import.keep"), actions::keepImport);
        JPanel buttons = new JPanel(new MigLayout("insets 0", "[]8[]"));
        buttons.setOpaque(false);
        buttons.add(Commands.button("importKeep", keep));
        buttons.add(Commands.button(
                "importLeave", Commands.of(texts.get("import.leave"), () -> model.show(Optional.empty()))));
        panel.add(Form.heading(texts.get("import.title"), "h2"));
        panel.add(summary, "wmin 0");
        panel.add(scroll, "wmin 0");
        panel.add(buttons);
    }

    JComponent component() {
        return panel;
    }

    void show() {
        Optional<TrialImport> underWay = model.underWay();
        panel.setVisible(underWay.isPresent());
        underWay.ifPresent(this::show);
    }

    private void show(TrialImport checked) {
        ProblemText problemText = model.desk().tools().problemText();
        String counts = texts.get(
                "import.summary",
                checked.file(),
                Integer.toString(checked.trials()),
                Integer.toString(checked.alreadyThere()),
                Integer.toString(checked.problems().size()));
        summary.setText(checked.trials() == 0 ? counts + " " + texts.get("import.nothing") : counts);
        String lines = String.join(
                "\n", checked.problems().stream().map(problemText::sayWithPlace).toList());
        if (!problems.getText().equals(lines)) {
            problems.setText(lines);
            problems.setCaretPosition(0);
        }
        scroll.setVisible(!checked.problems().isEmpty());
        keep.setEnabled(checked.trials() > 0);
    }
}
