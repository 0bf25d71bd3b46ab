package porebench.desk.factor;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.Texts;
import porebench.record.Evidence;
import porebench.record.FactorIssue;
import porebench.record.FactorState;

/** The factor page: what holds now, the next revision, the history on the left, the card on the right. */
final class FactorPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient DeskModel desk;
    private final transient FactorModel model;
    private final transient FactorActions actions;
    private final transient Texts texts;
    private final JLabel state = new JLabel();
    private final JLabel factor = new JLabel();
    private final JLabel dates = new JLabel();
    private final JLabel changes = new JLabel();
    private final IssueForm form;
    private final HistoryTable history;
    private final CardPanel card;

    FactorPanel(DeskModel desk, FactorModel model, FactorActions actions, Texts texts) {
        super(new MigLayout("insets 16 20 16 20, fillx, hidemode 3", "[grow,fill]24[]", "[top]"));
        this.desk = desk;
        this.model = model;
        this.actions = actions;
        this.texts = texts;
        form = new IssueForm(desk, model, actions, texts);
        history = new HistoryTable(model, texts, this::refresh);
        card = new CardPanel(desk, model, actions, texts);
        JPanel left = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, wrap 1", "[grow,fill]"));
        left.add(head(), "gapbottom 16");
        left.add(form, "gapbottom 16");
        left.add(styled(new JLabel(texts.get("history.title")), "h2"));
        left.add(history, "growx, hmin 120");
        add(left, "growx, pushx, wmin 420");
        add(card, "top");
    }

    private JPanel head() {
        JPanel head = new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[]24[grow,fill][]"));
        factor.setName("factor.inForce");
        state.setName("factor.state");
        head.add(styled(factor, "number"), "spany 3, top");
        head.add(styled(state, "h2"));
        JButton withdraw = new JButton(actions.withdrawAction());
        withdraw.setName("factor.withdraw");
        head.add(withdraw, "spany 3, top, wrap");
        head.add(styled(dates, "quiet"), "wrap");
        head.add(changes, "growx, wmin 100");
        return head;
    }

    private static JLabel styled(JLabel label, String styleClass) {
        label.putClientProperty("FlatLaf.styleClass", styleClass);
        return label;
    }

    /** Shows everything anew. */
    void refresh() {
        Optional<FactorIssue> inForce = model.inForce();
        FactorState now = model.state().orElse(FactorState.NO_FACTOR);
        factor.setText(inForce.map(issue ->
                        texts.get("head.subtract", desk.tools().numbers().show(issue.factorPercent())))
                .orElse(texts.get("head.none")));
        state.setText(texts.get("state." + now.name()));
        dates.setText(inForce.map(issue -> texts.get(
                        "head.dates",
                        Integer.toString(issue.revision()),
                        issue.inForceFrom().toString(),
                        issue.recheckBy().toString(),
                        issue.meterType().name()))
                .orElse(""));
        showChanges(inForce);
        form.refresh();
        history.refresh();
        card.refresh();
        actions.refresh();
    }

    private void showChanges(Optional<FactorIssue> inForce) {
        List<String> sentences = model.evidence().isEmpty() || inForce.isEmpty()
                ? List.of()
                : model.evidence().get().changesSince(inForce.get()).stream()
                        .map(this::sentence)
                        .toList();
        changes.setVisible(!sentences.isEmpty());
        changes.putClientProperty("FlatLaf.styleClass", "fieldWarning");
        changes.setText(Words.html(sentences));
    }

    private String sentence(Evidence.Change change) {
        return change.source()
                .map(source -> texts.get("head.source-changed", source.text()))
                .orElse(texts.get("head.mix-changed"));
    }
}
