package porebench.desk.mix;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Numbers;
import porebench.desk.form.Texts;
import porebench.desk.form.UnitSystem;
import porebench.quantity.Unit;

/** The figures of the batch, each with its unit, as they follow from the draft. */
final class FiguresPanel {
    private final JPanel panel = new JPanel(new MigLayout("insets 0, wrap 3, hidemode 3, gapy 6", "[]20[trailing]6[]"));
    private final Map<String, JLabel[]> lines = new LinkedHashMap<>();
    private final Texts texts;
    private final Numbers numbers;

    FiguresPanel(Texts texts, Numbers numbers) {
        this.texts = texts;
        this.numbers = numbers;
        panel.putClientProperty("FlatLaf.styleClass", "box");
        JLabel heading = new JLabel(texts.get("section.figures"));
        heading.putClientProperty("FlatLaf.styleClass", "h2");
        panel.add(heading, "span 3, gapbottom 4");
        line("figure.totalMass");
        line("figure.airFree");
        line("figure.concrete");
        line("figure.passing");
        line("figure.density");
        line("figure.airFreeShare");
    }

    private void line(String key) {
        JLabel name = new JLabel(texts.get(key));
        JLabel value = new JLabel();
        value.setName(key);
        name.setLabelFor(value);
        JLabel unit = new JLabel();
        panel.add(name);
        panel.add(value);
        panel.add(unit);
        lines.put(key, new JLabel[] {name, value, unit});
    }

    JPanel panel() {
        return panel;
    }

    void show(Optional<BatchFigures> figures, UnitSystem units, boolean wetSieved) {
        show("figure.totalMass", figures.map(BatchFigures::totalMass), units.batchMass(), 1);
        show("figure.airFree", figures.flatMap(BatchFigures::airFree), units.batchVolume(), 4);
        show("figure.concrete", figures.flatMap(BatchFigures::concrete), units.batchVolume(), 4);
        show("figure.passing", figures.flatMap(BatchFigures::passing), units.batchVolume(), 4);
        show("figure.density", figures.flatMap(BatchFigures::density), units.density(), 1);
        OptionalDouble share = figures.map(BatchFigures::airFreeSharePercent).orElseGet(OptionalDouble::empty);
        show("figure.airFreeShare", share, 1, "%");
        for (JLabel label : lines.get("figure.passing")) {
            label.setVisible(wetSieved);
        }
    }

    private <Q> void show(String key, Optional<Q> quantity, Unit<Q> unit, int decimals) {
        OptionalDouble number =
                quantity.map(value -> OptionalDouble.of(unit.in(value))).orElseGet(OptionalDouble::empty);
        show(key, number, decimals, unit.symbol());
    }

    private void show(String key, OptionalDouble number, int decimals, String unit) {
        JLabel[] line = lines.get(key);
        boolean known = number.isPresent();
        line[1].setText(known ? numbers.show(number.getAsDouble(), decimals) : texts.get("figure.unknown"));
        line[1].putClientProperty("FlatLaf.styleClass", known ? null : "quiet");
        line[2].setText(known ? unit : "");
    }
}
