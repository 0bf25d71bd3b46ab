package porebench.desk.factor;

import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import porebench.desk.DeskModel;
import porebench.desk.form.Texts;
import porebench.method.Problem;
import porebench.record.FactorCard;
import porebench.record.port.OutputFile;
import porebench.record.port.Paper;

/** What can be done on the factor page, each once, for its button and its key. */
final class FactorActions {
    private final DeskModel desk;
    private final FactorModel model;
    private final Texts texts;
    private final Action issue;
    private final Action confirm;
    private final Action withdraw;
    private final Action savePdf;
    private final Action print;
    private JComponent over = new JPanel();
    private Paper paper = Paper.A6;

    FactorActions(DeskModel desk, FactorModel model, Texts texts) {
        this.desk = desk;
        this.model = model;
        this.texts = texts;
        issue = action("issue.action", event -> issue());
        confirm = action("confirm.action", event -> confirm());
        withdraw = action("withdraw.action", event -> withdraw());
        savePdf = action("card.save-pdf", event -> savePdf());
        print = action("card.print", event -> print());
    }

    private Action action(String key, Consumer<ActionEvent> work) {
        return new AbstractAction(texts.get(key)) {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                work.accept(event);
            }
        };
    }

    /** Tells which component the dialogs stand over. */
    void over(JComponent component) {
        over = component;
    }

    Action issueAction() {
        return issue;
    }

    Action confirmAction() {
        return confirm;
    }

    Action withdrawAction() {
        return withdraw;
    }

    Action savePdfAction() {
        return savePdf;
    }

    Action printAction() {
        return print;
    }

    Paper paper() {
        return paper;
    }

    void choose(Paper size) {
        paper = size;
    }

    /** Enables what can be done now. */
    void refresh() {
        issue.setEnabled(model.canIssue());
        withdraw.setEnabled(model.canWithdraw());
        boolean hasCard = model.card().isPresent();
        savePdf.setEnabled(hasCard);
        print.setEnabled(hasCard);
    }

    void issue() {
        if (!model.canIssue() || desk.tools().asker().person(over).isEmpty()) {
            return;
        }
        report(texts.get("issue.refused"), model.issue());
    }

    private void confirm() {
        if (model.confirmable().isEmpty() || desk.tools().asker().person(over).isEmpty()) {
            return;
        }
        report(texts.get("confirm.refused"), model.confirm());
    }

    private void withdraw() {
        if (desk.tools().asker().person(over).isEmpty()) {
            return;
        }
        desk.tools()
                .asker()
                .reason(over, texts.get("withdraw.action"), texts.get("withdraw.question"))
                .ifPresent(reason -> report(texts.get("withdraw.refused"), model.withdraw(reason)));
    }

    private void savePdf() {
        Optional<FactorCard> card = cardToHandOut();
        if (card.isEmpty()) {
            return;
        }
        String suggested = texts.get(
                "card.file-name",
                card.get().mixId().text().replaceAll("[^A-Za-z0-9-]", "_"),
                Integer.toString(card.get().issue().revision()));
        Optional<OutputFile> file = desk.tools().asker().fileToWrite(over, texts.get("card.save-pdf"), suggested);
        file.ifPresent(path -> {
            Paper size = paper;
            desk.tools()
                    .tasks()
                    .run(
                            texts.get("card.saving"),
                            () -> {
                                desk.tools().press().write(card.get(), size, texts.locale(), path);
                                return path.path();
                            },
                            written -> keepPrint(card.get(), size, written.toString()),
                            failure -> desk.tools().asker().failure(over, texts.get("card.saving"), failure));
        });
    }

    private void print() {
        Optional<FactorCard> card = cardToHandOut();
        if (card.isEmpty()) {
            return;
        }
        try {
            if (desk.tools().press().print(card.get(), paper, texts.locale())) {
                keepPrint(card.get(), paper, "printer");
            }
        } catch (RuntimeException failure) {
            desk.tools().asker().failure(over, texts.get("card.printing"), failure);
        }
    }

    /** Returns the card looked at once a person stands for it; an out-of-date one only when they insist. */
    private Optional<FactorCard> cardToHandOut() {
        Optional<FactorCard> card = model.card();
        if (card.isEmpty() || desk.tools().asker().person(over).isEmpty()) {
            return Optional.empty();
        }
        boolean goesOut = model.isCardCurrent()
                || desk.tools()
                        .asker()
                        .confirm(
                                over,
                                texts.get("card.not-current-title"),
                                texts.get("card.not-current-question"),
                                texts.get("card.not-current-action"));
        return goesOut ? card : Optional.empty();
    }

    private void keepPrint(FactorCard card, Paper size, String destination) {
        report(
                texts.get("card.not-recorded"),
                model.keepPrint(card, size, destination, texts.get("card.print-reason")));
    }

    private void report(String title, List<Problem> problems) {
        if (!problems.isEmpty()) {
            desk.tools().asker().problems(over, title, problems);
        }
    }
}
