package porebench.desk.overtime;

import java.util.List;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Form;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;

/** Where limits come from, what begins a phase, and what is a signal. */
final class SettingsPanel {
    private final OverTimeModel model;
    private final Texts texts;
    private final ColumnForm form;
    private final JPanel panel = clear(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]"));
    private final WrappedText refusal = new WrappedText("overtime.base.refusal", "fieldError");
    private final WrappedText least = new WrappedText("overtime.limits.least", "quiet");
    private final WrappedText phases = new WrappedText("overtime.phases", "");
    private final WrappedText notAsked = new WrappedText("overtime.rules.not-asked", "quiet");
    private final JPanel asked = clear(new MigLayout("insets 0, wrap 1, gapy 2, hidemode 3"));
    private final WrappedText alarms = new WrappedText("overtime.alarms", "quiet");

    /**
     * Makes the settings.
     *
     * @param form the form of the page, which fills the fields here too
     */
    SettingsPanel(OverTimeModel model, ColumnForm form) {
        this.model = model;
        this.texts = model.texts();
        this.form = form;
        panel.add(Form.heading(texts.get("section.limits"), "h2"));
        panel.add(base(), "wmin 0");
        panel.add(refusal, "wmin 0");
        JPanel limits = clear(new MigLayout("insets 0, wrap 1, gapy 2"));
        form.radios(ChartFields.LIMITS).forEach(limits::add);
        panel.add(limits, "wmin 0");
        panel.add(least, "wmin 0");
        panel.add(Form.heading(texts.get("section.phases"), "h2"), "gaptop 16");
        panel.add(splits(), "wmin 0");
        panel.add(phases, "wmin 0");
        panel.add(Form.heading(texts.get("section.rules"), "h2"), "gaptop 16");
        panel.add(notAsked, "wmin 0");
        for (RunRule rule : RunRule.values()) {
            asked.add(form.<JCheckBox>alone(ChartFields.of(rule)));
        }
        panel.add(asked, "wmin 0");
        panel.add(alarms, "wmin 0");
    }

    private static JPanel clear(MigLayout layout) {
        JPanel clear = new JPanel(layout);
        clear.setOpaque(false);
        return clear;
    }

    JComponent component() {
        return panel;
    }

    private JPanel base() {
        JPanel row = clear(new MigLayout("insets 0", "[]4[]4[]28[]4[]6[]6[]", "[]"));
        List<JRadioButton> bases = form.radios(ChartFields.BASE);
        JTextField count = form.alone(ChartFields.COUNT);
        JTextField from = form.alone(ChartFields.FROM);
        JTextField to = form.alone(ChartFields.TO);
        count.setColumns(5);
        from.setColumns(9);
        to.setColumns(9);
        count.getAccessibleContext().setAccessibleName(bases.get(0).getText());
        from.getAccessibleContext().setAccessibleName(bases.get(1).getText());
        row.add(bases.get(0));
        row.add(count);
        row.add(new JLabel(texts.get("base.first.unit")));
        row.add(bases.get(1));
        row.add(from);
        row.add(Form.label(texts.get("base.to"), to));
        row.add(to);
        return row;
    }

    private JPanel splits() {
        JPanel row = clear(new MigLayout("insets 0, wrap 3, gapx 12, gapy 2"));
        row.add(new JLabel(texts.get("splits.label")), "spanx, wrap");
        for (Split split : Split.values()) {
            row.add(form.<JCheckBox>alone(ChartFields.of(split)));
        }
        return row;
    }

    void refresh() {
        refusal.say(model.baseRefusal());
        phases.say(String.join("\n", model.phases()));
        PhasedChart.Kind kind = model.wishes().kind();
        notAsked.setText(texts.get(kind == PhasedChart.Kind.TRIALS ? "rules.not-of-trials" : "rules.not-asked"));
        notAsked.setVisible(!kind.hasRunRules());
        asked.setVisible(kind.hasRunRules());
        least.setText(model.leastLimit());
        alarms.setText(model.falseAlarms());
    }
}
