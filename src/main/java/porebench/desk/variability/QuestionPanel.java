package porebench.desk.variability;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.record.id.TrialId;

/** The questions below one another: question, answer, and what it rests on. */
final class QuestionPanel {
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 0", "[grow,fill]", ""));
    private final Texts texts;
    private final Consumer<TrialId> strike;
    private List<Finding> shown = List.of();

    /**
     * Makes a place for questions.
     *
     * @param strike turns the window to a trial and asks why it should be struck
     */
    QuestionPanel(Texts texts, Consumer<TrialId> strike) {
        this.texts = texts;
        this.strike = strike;
        panel.setName("questions");
        panel.setOpaque(false);
    }

    JComponent component() {
        return panel;
    }

    void show(List<Finding> questions) {
        if (questions.equals(shown)) {
            return;
        }
        shown = List.copyOf(questions);
        panel.removeAll();
        questions.forEach(this::add);
        panel.revalidate();
    }

    private void add(Finding question) {
        boolean isFirst = panel.getComponentCount() == 0;
        panel.add(Form.heading(question.title(), "h2"), isFirst ? "" : "gaptop 16");
        String style = question.isAlarm() ? "answerAlarm" : "answer";
        panel.add(new WrappedText("answer." + question.name(), style, question.answer()), "wmin 0, gaptop 4");
        for (int i = 0; i < question.reasons().size(); i++) {
            String name = "reason." + question.name() + "." + i;
            panel.add(new WrappedText(name, "", question.reasons().get(i)), "wmin 0, gaptop 4");
        }
        if (!question.named().isEmpty()) {
            panel.add(offers(question), "wmin 0, gaptop 6");
        }
    }

    /** Returns a button for each trial that the answer names. */
    private JPanel offers(Finding question) {
        JPanel row = new JPanel(new MigLayout("insets 0"));
        row.setOpaque(false);
        for (TrialId id : question.named()) {
            row.add(Commands.button(
                    "offer.strike." + id.text(),
                    Commands.of(texts.get("wrong.strike", id.text()), () -> strike.accept(id))));
        }
        return row;
    }
}
