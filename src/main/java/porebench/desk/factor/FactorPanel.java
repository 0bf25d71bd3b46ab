package porebench.desk.factor;

import com.formdev.flatlaf.util.UIScale;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.FactorIssue;

/** The factor page: what holds now, the next revision and the history on the left, the card on the right. */
final class FactorPanel {
    /** In pixels at 100 %: in less the form would be squeezed beside the card, which then stands below it. */
    private static final int LEAST_BESIDE = 860;

    private final MigLayout layout = new MigLayout("insets 20 24 24 24, fillx, hidemode 3", "", "[top]");
    private final TallPanel panel = new TallPanel(layout);
    private boolean isBeside;
    private final DeskModel desk;
    private final FactorModel model;
    private final FactorActions actions;
    private final Texts texts;
    private final JLabel factor = new JLabel();
    private final WrappedText state = new WrappedText("factor.state", "h2");
    private final WrappedText dates = new WrappedText("factor.dates", "quiet");
    private final ProblemLines changes;
    private final IssueForm form;
    private final HistoryTable history;
    private final CardPanel card;

    FactorPanel(DeskModel desk, FactorModel model, FactorActions actions, Texts texts) {
        this.desk = desk;
        this.model = model;
        this.actions = actions;
        this.texts = texts;
        changes = new ProblemLines("factor.changes", desk.tools().problemText());
        form = new IssueForm(desk, model, actions, texts);
        history = new HistoryTable(model, texts, this::refresh);
        card = new CardPanel(desk, model, actions, texts);
        JPanel left = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, wrap 1", "[grow,fill]"));
        left.setOpaque(false);
        left.add(styled(new JLabel(texts.get("page.title")), "h1"), "gapbottom 8");
        factor.setName("factor.inForce");
        left.add(styled(factor, "number"), "wmin 0");
        left.add(state, "wmin 0");
        left.add(dates, "wmin 0");
        left.add(changes.panel(), "wmin 0");
        left.add(form, "wmin 0, gaptop 20");
        left.add(historyHead(), "wmin 0, gaptop 20");
        left.add(history.component(), "wmin 0");
        panel.add(left, "growx, pushx, wmin 0");
        panel.add(card, "top");
        arrange(true);
        panel.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                boolean hasRoom = panel.getWidth() >= UIScale.scale(LEAST_BESIDE);
                if (hasRoom != isBeside) {
                    arrange(hasRoom);
                }
            }
        });
    }

    private void arrange(boolean beside) {
        isBeside = beside;
        layout.setColumnConstraints(beside ? "[grow,fill,0::]24[]" : "[grow,fill,0::]");
        layout.setComponentConstraints(card, beside ? "top" : "newline, gaptop 24, growx 0");
        panel.revalidate();
    }

    private JPanel historyHead() {
        JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill][]"));
        head.setOpaque(false);
        head.add(styled(new JLabel(texts.get("history.title")), "h2"));
        JButton withdraw = new JButton(actions.withdrawAction());
        withdraw.setName("factor.withdraw");
        head.add(withdraw);
        return head;
    }

    private static JLabel styled(JLabel label, String styleClass) {
        label.putClientProperty("FlatLaf.styleClass", styleClass);
        return label;
    }

    TallPanel component() {
        return panel;
    }

    /** Shows everything anew. */
    void refresh() {
        Optional<FactorIssue> inForce = model.inForce();
        FactorState now = model.state().orElse(FactorState.NO_FACTOR);
        factor.setText(inForce.map(issue -> texts.get(
                        now.isUsable() ? "head.subtract" : "head.do-not-subtract",
                        desk.tools().numbers().show(issue.factorPercent())))
                .orElse(texts.get("head.none")));
        state.setText(texts.get("state." + now.name()));
        dates.setText(inForce.map(issue -> texts.get(
                        "head.dates",
                        Integer.toString(issue.revision()),
                        issue.inForceFrom().toString(),
                        issue.recheckBy().toString(),
                        issue.meterType().name()))
                .orElse(""));
        dates.setVisible(inForce.isPresent());
        changes.show(inForce.map(this::changes).orElse(List.of()));
        form.refresh();
        history.refresh();
        card.refresh();
        actions.refresh();
    }

    private List<Problem> changes(FactorIssue issue) {
        Evidence evidence = model.evidence().orElseThrow();
        List<Problem> said = new ArrayList<>(evidence.whyUntrue(issue));
        issue.takenOn()
                .forEach(doubt -> said.add(Problem.warning(
                        "override", "register.doubt-taken-on", doubt.by(), doubt.words(), doubt.reason())));
        return said;
    }
}
