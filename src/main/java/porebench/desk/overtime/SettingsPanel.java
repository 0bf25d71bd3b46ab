package porebench.desk.overtime;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.TextLink;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;

/** Where limits come from, what begins a phase, and what is a signal. */
final class SettingsPanel {
    private static final String STYLE = "FlatLaf.styleClass";

    private final OverTimeModel model;
    private final Texts texts;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]"));
    private final JRadioButton first = new JRadioButton();
    private final JRadioButton days = new JRadioButton();
    private final JTextField count = new JTextField(5);
    private final JTextField from = new JTextField(9);
    private final JTextField to = new JTextField(9);
    private final TextLink countLink;
    private final TextLink fromLink;
    private final TextLink toLink;
    private final WrappedText refusal = new WrappedText("overtime.base.refusal", "fieldError");
    private final JRadioButton kept = new JRadioButton();
    private final JRadioButton anew = new JRadioButton();
    private final WrappedText least = new WrappedText("overtime.limits.least", "quiet");
    private final Map<Split, JCheckBox> splits = new EnumMap<>(Split.class);
    private final WrappedText phases = new WrappedText("overtime.phases", "");
    private final Map<RunRule, JCheckBox> rules = new EnumMap<>(RunRule.class);
    private final WrappedText notAsked = new WrappedText("overtime.rules.not-asked", "quiet");
    private final JPanel asked = new JPanel(new MigLayout("insets 0, wrap 2, gapx 28, gapy 2, hidemode 3"));
    private final WrappedText alarms = new WrappedText("overtime.alarms", "quiet");

    SettingsPanel(OverTimeModel model) {
        this.model = model;
        this.texts = model.texts();
        countLink = new TextLink(count, typed -> model.typeBase(false, typed, from.getText(), to.getText()));
        fromLink = new TextLink(from, typed -> model.typeBase(true, count.getText(), typed, to.getText()));
        toLink = new TextLink(to, typed -> model.typeBase(true, count.getText(), from.getText(), typed));
        panel.setOpaque(false);
        panel.add(title("section.limits"));
        panel.add(base(), "wmin 0");
        panel.add(refusal, "wmin 0");
        panel.add(limits(), "wmin 0");
        panel.add(least, "wmin 0");
        panel.add(title("section.phases"), "gaptop 16");
        panel.add(splits(), "wmin 0");
        panel.add(phases, "wmin 0");
        panel.add(title("section.rules"), "gaptop 16");
        panel.add(notAsked, "wmin 0");
        panel.add(rules(), "wmin 0");
        panel.add(alarms, "wmin 0");
    }

    JPanel component() {
        return panel;
    }

    private JLabel title(String key) {
        JLabel title = new JLabel(texts.get(key));
        title.putClientProperty(STYLE, "h2");
        return title;
    }

    private JPanel base() {
        JPanel row = new JPanel(new MigLayout("insets 0", "[]4[]4[]28[]4[]6[]6[]", "[]"));
        row.setOpaque(false);
        ButtonGroup group = new ButtonGroup();
        group(group, first, "overtime.base.first", "base.first", () -> typeBase(false));
        group(group, days, "overtime.base.days", "base.days", () -> typeBase(true));
        count.setName("overtime.base.count");
        from.setName("overtime.base.from");
        to.setName("overtime.base.to");
        count.getAccessibleContext().setAccessibleName(first.getText());
        from.getAccessibleContext().setAccessibleName(days.getText());
        row.add(first);
        row.add(count);
        row.add(new JLabel(texts.get("base.first.unit")));
        row.add(days);
        row.add(from);
        row.add(Form.label(texts.get("base.to"), to));
        row.add(to);
        return row;
    }

    private void typeBase(boolean byDays) {
        model.typeBase(byDays, count.getText(), from.getText(), to.getText());
    }

    private JPanel limits() {
        JPanel row = new JPanel(new MigLayout("insets 0, wrap 1, gapy 2"));
        row.setOpaque(false);
        ButtonGroup group = new ButtonGroup();
        group(group, kept, "overtime.limits.kept", "limits.kept", () -> model.keepLimits(true));
        group(group, anew, "overtime.limits.anew", "limits.anew", () -> model.keepLimits(false));
        row.add(kept);
        row.add(anew);
        return row;
    }

    private void group(ButtonGroup group, JRadioButton button, String name, String key, Runnable chosen) {
        button.setName(name);
        button.setAction(Commands.of(texts.get(key), chosen));
        group.add(button);
    }

    private JPanel splits() {
        JPanel row = new JPanel(new MigLayout("insets 0", "[]12[]12[]12[]", "0[]0"));
        row.setOpaque(false);
        row.add(new JLabel(texts.get("splits.label")));
        for (Split split : Split.values()) {
            JCheckBox box = box(
                    "overtime.split." + ChoicePanel.symbol(split),
                    texts.get("splits." + ChoicePanel.symbol(split)),
                    isOn -> model.split(split, isOn));
            splits.put(split, box);
            row.add(box);
        }
        return row;
    }

    private JPanel rules() {
        asked.setOpaque(false);
        for (RunRule rule : RunRule.values()) {
            JCheckBox box = box(
                    "overtime.rule." + rule.symbol(),
                    texts.get("rule." + rule.symbol()),
                    isOn -> model.ask(rule, isOn));
            rules.put(rule, box);
            asked.add(box);
        }
        return asked;
    }

    private static JCheckBox box(String name, String text, Consumer<Boolean> chosen) {
        JCheckBox box = new JCheckBox(text);
        box.setName(name);
        box.addActionListener(event -> chosen.accept(box.isSelected()));
        return box;
    }

    void refresh() {
        first.setSelected(!model.isByDays());
        days.setSelected(model.isByDays());
        countLink.pull(model.typedCount());
        fromLink.pull(model.typedFrom());
        toLink.pull(model.typedTo());
        refusal.setText(model.baseRefusal());
        refusal.setVisible(!model.baseRefusal().isEmpty());
        JToggleButton limits = model.wishes().isKept() ? kept : anew;
        limits.setSelected(true);
        splits.forEach((split, box) -> box.setSelected(model.wishes().splits().contains(split)));
        phases.setText(String.join("\n", model.phases()));
        phases.setVisible(!model.phases().isEmpty());
        boolean hasRules = model.wishes().kind().hasRunRules();
        notAsked.setText(texts.get(
                model.wishes().kind() == PhasedChart.Kind.TRIALS ? "rules.not-of-trials" : "rules.not-asked"));
        notAsked.setVisible(!hasRules);
        asked.setVisible(hasRules);
        rules.forEach((rule, box) -> box.setSelected(model.wishes().rules().contains(rule)));
        least.setText(model.leastLimit());
        alarms.setText(model.falseAlarms());
    }
}
