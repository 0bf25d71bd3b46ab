package porebench.desk.overtime;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Choices;
import porebench.desk.form.Form;
import porebench.method.Texts;
import porebench.statistics.control.PhasedChart;

/** What is charted: by mix, source, meter or operator, which of them, and which chart. */
final class ChoicePanel {
    private final OverTimeModel model;
    private final JComboBox<GroupedBy> by;
    private final JComboBox<String> which;
    private final JComboBox<PhasedChart.Kind> kind;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx", "[]6[]18[]6[grow,fill,120::]18[]6[]", "[]"));
    private List<String> offered = List.of();
    private boolean showing;

    ChoicePanel(OverTimeModel model) {
        this.model = model;
        Texts texts = model.texts();
        by = Choices.of(
                "overtime.by",
                Arrays.asList(GroupedBy.values()),
                each -> texts.get("by." + symbol(each)),
                this::choose);
        which = Choices.of("overtime.which", List.<String>of(), each -> each, this::choose);
        kind = Choices.of(
                "overtime.kind",
                Arrays.asList(PhasedChart.Kind.values()),
                each -> texts.get("kind." + symbol(each)),
                this::choose);
        which.setPrototypeDisplayValue("-");
        kind.setMaximumRowCount(PhasedChart.Kind.values().length);
        panel.setOpaque(false);
        panel.add(Form.label(texts.get("by.label"), by));
        panel.add(by, "w 110!");
        panel.add(Form.label(texts.get("which.label"), which));
        panel.add(which, "wmin 120, growx");
        panel.add(Form.label(texts.get("kind.label"), kind));
        panel.add(kind, "wmin 100, wmax 420");
    }

    static String symbol(Enum<?> each) {
        return each.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    JPanel component() {
        return panel;
    }

    private void choose(GroupedBy chosen) {
        if (!showing) {
            model.choose(chosen);
        }
    }

    private void choose(String chosen) {
        if (!showing) {
            model.choose(chosen);
        }
    }

    private void choose(PhasedChart.Kind chosen) {
        if (!showing) {
            model.choose(chosen);
        }
    }

    void refresh() {
        showing = true;
        by.setSelectedItem(model.wishes().by());
        List<String> ids = model.ids();
        if (!ids.equals(offered)) {
            offered = ids;
            which.removeAllItems();
            ids.forEach(which::addItem);
        }
        which.setSelectedItem(model.wishes().id());
        which.setToolTipText(model.wishes().id());
        which.setEnabled(!ids.isEmpty());
        kind.setSelectedItem(model.wishes().kind());
        showing = false;
    }
}
