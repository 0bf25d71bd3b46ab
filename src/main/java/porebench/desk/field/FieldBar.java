package porebench.desk.field;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.DayPicker;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.Typing;
import porebench.method.Texts;

/** The bar over the readings: of which days and which mix, and whether they are judged with a guard band. */
final class FieldBar {
    private static final int DAY_COLUMNS = 8;
    private static final int MIX_COLUMNS = 8;

    private final FieldsModel model;
    private final Texts texts;
    private final JPanel bar =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]", "[]2[]"));
    private final JTextField first = new JTextField(DAY_COLUMNS);
    private final JTextField last = new JTextField(DAY_COLUMNS);
    private final JTextField mix = new JTextField(MIX_COLUMNS);
    private final JCheckBox guard = new JCheckBox();
    private final ProblemLines problems;
    private final Runnable changed;
    private boolean showing;

    /**
     * Makes the bar.
     *
     * @param changed is called when other readings are wanted
     */
    FieldBar(FieldsModel model, Runnable changed) {
        this.model = model;
        this.texts = model.texts();
        this.changed = changed;
        problems = new ProblemLines("readings.days", model.desk().tools().problemText());
        JPanel line = new JPanel(new MigLayout("insets 0, fillx, gap 6", "[][]12[][]12[][]16[]push", "[]"));
        line.setOpaque(false);
        bar.setOpaque(false);
        add(line, first, "readings.first", "field.first", model::typeFirst);
        add(line, last, "readings.last", "field.last", model::typeLast);
        for (JTextField day : List.of(first, last)) {
            DayPicker.onDay(day, () -> model.desk().tools().today(), texts.locale());
        }
        add(line, mix, "readings.mix", "field.mix", model::typeMix);
        guard.setName("readings.guard");
        guard.setOpaque(false);
        guard.setToolTipText(texts.get("guard.tip"));
        Commands.say(guard, texts.get("field.guard"));
        guard.addActionListener(event -> {
            model.guard(guard.isSelected());
            changed.run();
        });
        line.add(guard, "wmin 0");
        bar.add(line, "wmin 0");
        bar.add(problems.panel(), "wmin 0");
    }

    private void add(JPanel line, JTextField input, String name, String label, Consumer<String> typed) {
        input.setName(name);
        line.add(Form.label(texts.get(label), input));
        line.add(input, "wmin 110");
        Typing.follow(input, text -> {
            if (!showing) {
                typed.accept(text);
                changed.run();
            }
        });
    }

    JComponent component() {
        return bar;
    }

    void refresh() {
        showing = true;
        Typing.show(first, model.first());
        Typing.show(last, model.last());
        Typing.show(mix, model.mix());
        guard.setSelected(model.isGuarded());
        showing = false;
        problems.show(model.problems());
    }
}
