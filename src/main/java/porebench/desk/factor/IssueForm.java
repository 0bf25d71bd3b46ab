package porebench.desk.factor;

import java.awt.event.HierarchyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.QuotedUncertainty;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.Row;
import porebench.desk.form.TextLink;
import porebench.desk.form.WorkedOut;
import porebench.desk.form.WrappedText;
import porebench.evidence.JudgedDetermination;
import porebench.method.Texts;
import porebench.method.budget.BudgetResult;
import porebench.method.trial.DeterminationSummary;

/** The next revision: what it rests on, when it holds, who answers for it, and what is doubtful about it. */
final class IssueForm extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient DeskModel desk;
    private final transient FactorModel model;
    private final transient WorkedOut<QuotedUncertainty.Asked, Optional<BudgetResult>> quoted;
    private final transient Texts texts;
    private final transient Form form;
    private final JLabel title = new JLabel();
    private final JComboBox<String> determination = new JComboBox<>();
    private final WrappedText evidence = new WrappedText("factor.evidence", "quiet");
    private final transient ProblemLines doubts;
    private final transient TextLink from;
    private final transient TextLink recheck;
    private final transient TextLink approved;
    private final transient TextLink reason;
    private final JTextField overrideByField = new JTextField(24);
    private final JTextField overrideReasonField = new JTextField(24);
    private final transient TextLink overrideBy;
    private final transient TextLink overrideReason;
    private final transient List<Row> overrideRows;
    private final transient DoubtBoxes boxes;
    private final WrappedText boxesTitle = new WrappedText("factor.doubts-title", "");
    private final JButton confirm;
    private boolean filling;

    IssueForm(DeskModel desk, FactorModel model, FactorActions actions, Texts texts) {
        super(new MigLayout("insets 0, fillx, hidemode 3, wrap 1", "[grow,fill]"));
        this.desk = desk;
        this.model = model;
        this.texts = texts;
        quoted = new WorkedOut<>(() -> desk.tools().tasks(), new QuotedUncertainty()::of, this::showEvidence);
        addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && isShowing()) {
                showEvidence();
            }
        });
        form = new Form(desk.tools().problemText());
        doubts = new ProblemLines("factor.doubts", desk.tools().problemText());
        JTextField fromField = new JTextField(12);
        JTextField recheckField = new JTextField(12);
        JTextField approvedField = new JTextField(24);
        JTextField reasonField = new JTextField(24);
        from = link(fromField, "step.from", IssueDraft::withInForceFrom);
        recheck = link(recheckField, "step.recheck", IssueDraft::withRecheckBy);
        approved = link(approvedField, "step.approved", IssueDraft::withApprovedBy);
        reason = link(reasonField, "step.reason", IssueDraft::withReason);
        overrideBy = link(overrideByField, "step.override-by", IssueDraft::withOverrideBy);
        overrideReason = link(overrideReasonField, "step.override-reason", IssueDraft::withOverrideReason);
        determination.addActionListener(event -> chosen());
        form.add("determination", texts.get("form.determination"), determination, "");
        form.panel().add(evidence, "skip 1, span 2, growx, wmin 0, wrap");
        form.add("inForceFrom", texts.get("form.from"), fromField, texts.get("form.date-pattern"));
        form.add("recheckBy", texts.get("form.recheck"), recheckField, texts.get("form.date-pattern"));
        form.add("approvedBy", texts.get("form.approved"), approvedField, texts.get("form.optional"));
        form.add("reason", texts.get("form.reason"), reasonField, "");
        boxes = new DoubtBoxes(
                desk.tools().problemText()::say,
                (doubt, isTaken) -> model.history()
                        .update(texts.get("step.doubt"), model.history().draft().withTaken(doubt, isTaken)));
        boxesTitle.setText(texts.get("form.doubts-title"));
        form.panel().add(boxesTitle, "skip 1, span 2, growx, wmin 0, wrap, gaptop 8");
        form.panel().add(boxes.panel(), "skip 1, span 2, growx, wmin 0, wrap");
        overrideRows = List.of(
                form.add("overrideBy", texts.get("form.override-by"), overrideByField, ""),
                form.add("overrideReason", texts.get("form.override-reason"), overrideReasonField, ""));
        title.putClientProperty("FlatLaf.styleClass", "h2");
        JButton issue = new JButton(actions.issueAction());
        issue.setName("factor.issue");
        add(title);
        add(form.panel(), "growx");
        add(doubts.panel(), "growx, wmin 0");
        confirm = new JButton(actions.confirmAction());
        confirm.setName("factor.confirm");
        add(issue, "split 2, growx 0, gaptop 8");
        add(confirm, "growx 0, gaptop 8");
    }

    private interface Change {
        IssueDraft of(IssueDraft draft, String text);
    }

    private TextLink link(JTextField field, String label, Change change) {
        return new TextLink(
                field,
                text -> model.history()
                        .update(texts.get(label), change.of(model.history().draft(), text)));
    }

    private void chosen() {
        int index = determination.getSelectedIndex();
        List<JudgedDetermination> all = model.determinations();
        if (!filling && index >= 0 && index < all.size()) {
            String id = all.get(index).determination().value().id().text();
            model.history()
                    .update(
                            texts.get("step.determination"),
                            model.history().draft().withDetermination(id));
        }
    }

    void refresh() {
        int next = model.revisions().stream()
                        .mapToInt(issue -> issue.revision())
                        .max()
                        .orElse(0)
                + 1;
        title.setText(texts.get(next == 1 ? "form.title-first" : "form.title-next", Integer.toString(next)));
        fillDeterminations();
        IssueDraft draft = model.history().draft();
        from.pull(draft.inForceFrom());
        recheck.pull(draft.recheckBy());
        approved.pull(draft.approvedBy());
        reason.pull(draft.reason());
        overrideBy.pull(draft.overrideBy());
        overrideReason.pull(draft.overrideReason());
        overrideRows.forEach(row -> row.setVisible(model.needsOverride()));
        boxesTitle.setVisible(model.needsOverride());
        boxes.show(model.doubts(), draft);
        confirm.setVisible(model.confirmable().isPresent());
        showEvidence();
        doubts.show(form.show(model.problems()));
    }

    private void fillDeterminations() {
        filling = true;
        try {
            List<JudgedDetermination> all = model.determinations();
            DefaultComboBoxModel<String> items = new DefaultComboBoxModel<>();
            all.forEach(judged -> items.addElement(texts.get(
                    "form.determination-item",
                    judged.determination().value().id().text(),
                    judged.determination().value().openedOn().toString(),
                    Integer.toString(judged.counted()))));
            determination.setModel(items);
            determination.setEnabled(!all.isEmpty());
            determination.setSelectedIndex(model.chosen().map(all::indexOf).orElse(-1));
        } finally {
            filling = false;
        }
    }

    private void showEvidence() {
        evidence.setText(evidenceSentence());
    }

    private String evidenceSentence() {
        Optional<DeterminationSummary> summary = model.chosen().flatMap(JudgedDetermination::summary);
        if (summary.isEmpty()) {
            return texts.get("form.no-evidence");
        }
        Numbers numbers = desk.tools().numbers();
        DeterminationSummary known = summary.get();
        String spread = known.summary().standardDeviation().isPresent()
                ? spread(numbers.show(known.summary().standardDeviation().getAsDouble(), 3))
                : texts.get("form.no-spread");
        return texts.get(
                "form.evidence",
                numbers.show(known.reportedPercent()),
                numbers.show(known.summary().mean(), 3),
                Integer.toString(known.summary().count()),
                spread);
    }

    /** The uncertainty is worked out only while somebody looks at it. */
    private String spread(String deviation) {
        Optional<String> uncertainty = desk.evidence()
                .filter(known -> isShowing())
                .flatMap(known ->
                        model.chosen().map(judged -> new QuotedUncertainty.Asked(known, judged, desk.scatter())))
                .flatMap(quoted::to)
                .flatMap(Function.identity())
                .map(BudgetResult::uncertaintyPercent)
                .map(percent -> desk.tools().numbers().show(percent, 2));
        return uncertainty
                .map(percent -> texts.get("form.spread", deviation, percent))
                .orElseGet(
                        () -> texts.get(quoted.isFailed() ? "form.spread-failed" : "form.spread-pending", deviation));
    }
}
