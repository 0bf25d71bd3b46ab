package porebench.desk.factor;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.QuotedUncertainty;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.OnView;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.ReasonMenu;
import porebench.desk.form.WorkedOut;
import porebench.desk.form.WrappedText;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.issue.IssueDoubt;
import porebench.method.Digits;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.method.budget.BudgetResult;
import porebench.method.trial.DeterminationSummary;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.column.Column;
import porebench.record.column.FactorIssueColumns;
import porebench.record.id.MixId;

/** The next revision: what it rests on, when it holds, who answers for it, and what is doubtful about it. */
final class IssueForm {
    private static final List<Column<FactorIssue, ?>> TYPED = List.of(
            FactorIssueColumns.IN_FORCE_FROM,
            FactorIssueColumns.IN_FORCE_AT,
            FactorIssueColumns.RECHECK_BY,
            FactorIssueColumns.CONDITIONS,
            FactorIssueColumns.APPROVED_BY,
            FactorIssueColumns.REASON);

    private static final List<Column<FactorIssue, String>> OVERRIDE =
            List.of(FactorIssueColumns.OVERRIDE_BY, FactorIssueColumns.OVERRIDE_REASON);
    private static final String BELOW_FIELD = "skip 1, span 2, growx, wmin 0, wrap";

    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, wrap 1", "[grow,fill]"));
    private final DeskModel desk;
    private final FactorModel model;
    private final Texts texts;
    private final ProblemText problemText;
    private final WorkedOut<QuotedUncertainty.Asked, Optional<BudgetResult>> quoted;
    private final ColumnForm form;
    private final JLabel title = Form.heading("", "h2");
    private final WrappedText evidence = new WrappedText("factor.evidence", "quiet");
    private final JPanel keptRow = new JPanel(new MigLayout("insets 0, fillx", "[]6[grow,fill]"));
    private final WrappedText kept = new WrappedText("factor.kept", "");
    private final JCheckBox keeping;
    private final ProblemLines doubts;
    private final WrappedText boxesTitle;
    private final JPanel boxes = new JPanel(new MigLayout("insets 0, fillx, wrap 2", "[]6[grow,fill]", "[]2[]"));
    private List<IssueDoubt> boxed = List.of();
    private ColumnForm boxesForm;
    private final JButton issue;
    private final JButton draft;
    private final JButton confirm;
    private final JButton forGroup;
    private final JButton draftGroup;
    private final WrappedText groupWords = new WrappedText("factor.groupMembers", "quiet");
    private final FactorActions actions;

    IssueForm(DeskModel desk, FactorModel model, FactorActions actions) {
        this.desk = desk;
        this.model = model;
        this.actions = actions;
        texts = model.texts();
        problemText = desk.tools().problemText();
        quoted = new WorkedOut<>(() -> desk.tools().tasks(), new QuotedUncertainty()::of, this::showEvidence);
        OnView.each(panel, this::showEvidence);
        form = new ColumnForm(model, problemText).on(() -> desk.tools().today());
        boxesForm = new ColumnForm(model, problemText);
        doubts = new ProblemLines("factor.doubts", problemText).keepingRoom(3);
        boxesTitle = new WrappedText("factor.doubts-title", "", texts.get("form.doubts-title"));
        boxes.setName("factor.doubt-boxes");
        boxes.setOpaque(false);
        form.add(FactorModel.DETERMINATION);
        form.panel().add(evidence, BELOW_FIELD + ", gapbottom 6");
        keeping = form.alone(KeptChoice.COLUMN);
        keeping.setName("factor.asDecided");
        kept.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                keeping.doClick(0);
            }
        });
        keptRow.setOpaque(false);
        keptRow.add(keeping, "top");
        keptRow.add(kept, "wmin 0");
        form.panel().add(keptRow, BELOW_FIELD + ", gapbottom 6");
        form.addAll(TYPED);
        ReasonMenu.in((JTextField) form.field(FactorIssueColumns.REASON.field()), this::earlierReasons, texts.locale());
        form.panel().add(boxesTitle, BELOW_FIELD + ", gaptop 8");
        form.panel().add(boxes, BELOW_FIELD);
        form.addAll(OVERRIDE);
        panel.add(title);
        panel.add(form.panel(), "growx");
        confirm = Commands.button("factor.confirm", actions.confirm);
        issue = Commands.button("factor.issue", actions.issue);
        draft = Commands.button("factor.draft", actions.draft);
        forGroup = Commands.button("factor.issueForGroup", actions.issueForGroup);
        draftGroup = Commands.button("factor.draftForGroup", actions.draftForGroup);
        panel.add(issue, "split 5, growx 0, gaptop 8");
        panel.add(draft, "growx 0, gaptop 8");
        panel.add(forGroup, "growx 0, gaptop 8");
        panel.add(draftGroup, "growx 0, gaptop 8");
        panel.add(confirm, "growx 0, gaptop 8");
        panel.add(groupWords, "growx, wmin 0");
        panel.add(doubts.panel(), "growx, wmin 0");
        actions.onRefused(this::goTo);
    }

    /** Returns the reasons of the factors of this mix, the newest first, each once. */
    private List<String> earlierReasons() {
        List<String> reasons = new ArrayList<>();
        desk.evidence()
                .ifPresent(evidence -> evidence.issues()
                        .forEach(version -> reasons.add(version.value().reason())));
        Collections.reverse(reasons);
        return reasons.stream().distinct().toList();
    }

    /** Puts the caret into the first field with one of the problems. */
    private void goTo(List<Problem> problems) {
        Stream.concat(TYPED.stream(), OVERRIDE.stream())
                .map(Column::field)
                .filter(field ->
                        problems.stream().anyMatch(problem -> problem.field().equals(field)))
                .findFirst()
                .ifPresent(field -> form.field(field).requestFocusInWindow());
    }

    JComponent component() {
        return panel;
    }

    void refresh() {
        int next =
                model.revisions().stream().mapToInt(FactorIssue::revision).max().orElse(0) + 1;
        title.setText(texts.get(
                model.proposal().isDrafted() ? "form.title-draft" : next == 1 ? "form.title-first" : "form.title-next",
                Integer.toString(next)));
        form.pull();
        boolean isDoubtful = model.needsOverride();
        OVERRIDE.forEach(column -> form.setVisible(column, isDoubtful));
        boxesTitle.setVisible(isDoubtful);
        boxes.setVisible(isDoubtful);
        showBoxes(model.doubts());
        boolean isDrafted = model.proposal().isDrafted();
        issue.setVisible(!isDrafted);
        draft.setVisible(isDrafted);
        form.setVisible(FactorIssueColumns.APPROVED_BY, !isDrafted);
        confirm.setVisible(!isDrafted && model.confirmable().isPresent());
        Optional<FactorGroup> group = actions.group();
        forGroup.setVisible(!isDrafted && group.isPresent());
        draftGroup.setVisible(isDrafted && group.isPresent());
        groupWords.say(group.map(tested -> texts.get(
                        "form.group",
                        tested.id().text(),
                        tested.others().stream().map(MixId::text).collect(Collectors.joining(", "))))
                .orElse(""));
        String words = model.keptWords();
        kept.setText(words);
        keeping.getAccessibleContext().setAccessibleName(words);
        keptRow.setVisible(!words.isEmpty());
        showEvidence();
        doubts.show(form.show(model.problems()));
    }

    /** Shows a box a doubt, which whoever takes it on ticks; boxes that are there already stay, and with them the focus. */
    private void showBoxes(List<IssueDoubt> all) {
        if (!all.equals(boxed)) {
            boxed = List.copyOf(all);
            boxesForm = new ColumnForm(model, problemText);
            boxes.removeAll();
            boxed.forEach(this::addBox);
            boxes.revalidate();
            boxes.repaint();
        }
        boxesForm.pull();
    }

    private void addBox(IssueDoubt doubt) {
        int index = boxes.getComponentCount() / 2;
        JCheckBox box = boxesForm.alone(FactorModel.taken(doubt));
        WrappedText said = new WrappedText("factor.doubt-words." + index, "", problemText.say(doubt.asSaid()));
        box.setName("factor.doubt." + index);
        box.getAccessibleContext().setAccessibleName(said.getText());
        said.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                box.doClick(0);
            }
        });
        boxes.add(box, "top");
        boxes.add(said, "wmin 0");
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
                ? spread(numbers.show(known.summary().standardDeviation().getAsDouble(), Digits.SCATTER))
                : texts.get("form.no-spread");
        return texts.get(
                "form.evidence",
                numbers.show(known.reportedPercent()),
                numbers.show(known.summary().mean(), Digits.AIR),
                Integer.toString(known.summary().count()),
                spread);
    }

    /** The uncertainty is worked out only while somebody looks at it. */
    private String spread(String deviation) {
        Optional<String> uncertainty = desk.evidence()
                .filter(known -> panel.isShowing())
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
