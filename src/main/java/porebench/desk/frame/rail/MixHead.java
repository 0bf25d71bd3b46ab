package porebench.desk.frame.rail;

import java.awt.event.KeyEvent;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.StateMark;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.WrappedText;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.JudgedDetermination;
import porebench.method.Texts;
import porebench.record.FactorIssue;

/** The head of the selected mix: its name, how it stands with its factor, what to do next, and the row of steps. */
public final class MixHead {
    private static final String STYLE = "FlatLaf.styleClass";

    private final JPanel panel =
            new JPanel(new MigLayout("insets 14 22 10 22, fillx, hidemode 3", "[grow,fill,0::]24[]", "[]4[]12[]"));
    private final JLabel title = Form.heading("", "h1");
    private final JLabel state = new JLabel();
    private final WrappedText next = new WrappedText("next", "quiet");
    private final JLabel factor = Form.heading("", "number");
    private final JLabel factorNote = Form.heading("", "quiet");
    private final JPanel stepRow = new JPanel(new MigLayout("insets 0, fillx, gapx 6", "", "[]"));
    private final List<StepButton> buttons = new ArrayList<>();
    private final ButtonGroup group = new ButtonGroup();
    private final List<? extends Page> steps;
    private final DeskModel desk;
    private final Texts texts;

    public MixHead(DeskModel desk, Texts texts, List<? extends Page> steps, Consumer<Page> openStep) {
        this.desk = desk;
        this.texts = texts;
        this.steps = steps;
        panel.setName("head");
        panel.putClientProperty(STYLE, "head");
        title.setName("head.title");
        state.setName("head.state");
        factor.setName("head.factor");
        stepRow.setOpaque(false);
        JPanel figure = new JPanel(new MigLayout("insets 0, wrap 1, hidemode 3", "[trailing]", "[]0[]"));
        figure.setOpaque(false);
        figure.add(factor);
        figure.add(factorNote);
        JPanel sentence = new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[]14[grow,fill,0::]", "[top]"));
        sentence.setOpaque(false);
        sentence.add(state);
        sentence.add(next, "wmin 0");
        panel.add(title, "wmin 0");
        panel.add(figure, "spany 2, wrap");
        panel.add(sentence, "wmin 0, wrap");
        panel.add(stepRow, "spanx 2, growx, wmin 0");
        for (int index = 0; index < steps.size(); index++) {
            addStep(index, openStep);
        }
    }

    private void addStep(int index, Consumer<Page> openStep) {
        Page page = steps.get(index);
        StepButton button = new StepButton(index + 1, page.title());
        button.setName("step." + page.name());
        button.addActionListener(event -> openStep.accept(page));
        group.add(button);
        buttons.add(button);
        stepRow.add(button, "grow, pushx");
    }

    public JPanel component() {
        return panel;
    }

    /** Lets Ctrl and a step's number turn to it from every page, also from a register, where the steps are not on view. */
    public void keysIn(JComponent content) {
        for (int index = 0; index < buttons.size(); index++) {
            StepButton button = buttons.get(index);
            content.registerKeyboardAction(
                    event -> button.doClick(),
                    KeyStroke.getKeyStroke(KeyEvent.VK_1 + index, KeyEvent.CTRL_DOWN_MASK),
                    JComponent.WHEN_IN_FOCUSED_WINDOW);
        }
    }

    /** Shows which step is on view. */
    public void mark(Page current) {
        group.clearSelection();
        int index = steps.indexOf(current);
        if (index >= 0) {
            buttons.get(index).setSelected(true);
        }
    }

    /** Marks the steps on which something is typed and not saved, by the names of their pages. */
    public void markTyped(Set<String> names) {
        for (int index = 0; index < buttons.size(); index++) {
            boolean isTyped = names.contains(steps.get(index).name());
            buttons.get(index).mark(isTyped ? texts.get("rail.begun") : "");
        }
    }

    /** Shows the mix as it stands. */
    public void refresh() {
        Optional<Evidence> known = desk.evidence();
        for (int index = 0; index < buttons.size(); index++) {
            buttons.get(index).setEnabled(known.isPresent() || index == 0);
        }
        if (known.isEmpty()) {
            showNewMix();
        } else {
            showMix(known.get(), desk.tools().now());
        }
    }

    private void showNewMix() {
        title.setText(texts.get("head.new"));
        state.setIcon(null);
        state.setText("");
        next.setText(texts.get("head.new.next"));
        factor.setText("");
        factorNote.setText("");
        for (int index = 0; index < buttons.size(); index++) {
            show(index, caption(index), index == 0);
        }
    }

    private void showMix(Evidence evidence, LocalDateTime now) {
        title.setText(texts.get(
                "head.title",
                evidence.mix().value().id().text(),
                evidence.mix().value().title()));
        title.setToolTipText(title.getText());
        FactorState stands = evidence.stateAt(now);
        state.setIcon(new StateMark(stands, 13));
        state.setText(MixCell.stateWords(texts, stands));
        state.setForeground(StateMark.colour(stands));
        NextStep step = NextStep.of(evidence, now, desk.tools().problemText()::say);
        next.setText(texts.get(step.key(), step.values().toArray()));
        Optional<FactorIssue> inForce = evidence.inForceAt(now);
        factor.setText(inForce.map(
                        issue -> texts.get("head.factor", desk.tools().numbers().show(issue.factorPercent())))
                .orElse(texts.get("head.no-factor")));
        // What nobody may subtract is never the largest thing here.
        boolean isLarge = stands.isUsable() || inForce.isEmpty();
        factor.putClientProperty(STYLE, isLarge ? "number" : "doubtfulNumber");
        factorNote.setText(inForce.map(issue -> texts.get(
                        isLarge ? "head.issue" : "head.issue-not",
                        Integer.toString(issue.revision()),
                        (Days.show(issue.inForceFrom()) + " " + issue.terms().atText()).strip()))
                .orElse(""));
        for (int index = 0; index < buttons.size(); index++) {
            boolean isNext = step.step() == index + 1;
            String words = isNext ? texts.get("step.next") : caption(index);
            show(index, words, isNext);
        }
        int trials = 2;
        int counted =
                evidence.openDetermination().map(JudgedDetermination::counted).orElse(0);
        if (counted > 0 && buttons.size() > trials) {
            show(trials, texts.get("step.counted", Integer.toString(counted)), step.step() == trials + 1);
        }
        panel.revalidate();
    }

    /** Shows how far a step is; all of it is said when it is pointed at, also where there is no room for it. */
    private void show(int index, String words, boolean isNext) {
        buttons.get(index).show(words, isNext);
        String key = texts.get("step.key", Integer.toString(index + 1));
        buttons.get(index).setToolTipText(texts.get("step.tip", steps.get(index).title(), words, key));
    }

    private String caption(int index) {
        return texts.get("step." + (index + 1));
    }
}
