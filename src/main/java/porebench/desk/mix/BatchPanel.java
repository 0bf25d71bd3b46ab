package porebench.desk.mix;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.FigureLine;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.UnitSystem;
import porebench.method.Texts;
import porebench.quantity.Unit;

/** The figures of the batch, each with its unit, as they follow from the draft. */
final class BatchPanel {
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, wrap 3, hidemode 3, gapy 6", "[]20[trailing,56::]6[44::]"));
    private final Texts texts;
    private final Numbers numbers;
    private final FigureLine totalMass;
    private final FigureLine airFree;
    private final FigureLine concrete;
    private final FigureLine passing;
    private final FigureLine density;
    private final FigureLine airFreeShare;

    BatchPanel(Texts texts, Numbers numbers) {
        this.texts = texts;
        this.numbers = numbers;
        panel.putClientProperty("FlatLaf.styleClass", "box");
        panel.add(Form.heading(texts.get("section.figures"), "h2"), "span 3, gapbottom 4");
        totalMass = line("figure.totalMass");
        airFree = line("figure.airFree");
        concrete = line("figure.concrete");
        passing = line("figure.passing");
        density = line("figure.density");
        airFreeShare = line("figure.airFreeShare");
    }

    private FigureLine line(String key) {
        return new FigureLine(panel, key, texts.get(key), numbers, texts.get("figure.unknown"));
    }

    JPanel panel() {
        return panel;
    }

    void show(Optional<BatchFigures> figures, UnitSystem units, boolean wetSieved) {
        show(totalMass, figures.map(BatchFigures::totalMass), units.batchMass(), 1);
        show(airFree, figures.flatMap(BatchFigures::airFree), units.batchVolume(), 4);
        show(concrete, figures.flatMap(BatchFigures::concrete), units.batchVolume(), 4);
        show(passing, figures.flatMap(BatchFigures::passing), units.batchVolume(), 4);
        show(density, figures.flatMap(BatchFigures::density), units.density(), 1);
        airFreeShare.show(figures.map(BatchFigures::airFreeSharePercent).orElseGet(OptionalDouble::empty), 1, "%");
        passing.setVisible(wetSieved);
    }

    private static <Q> void show(FigureLine line, Optional<Q> quantity, Unit<Q> unit, int decimals) {
        OptionalDouble number =
                quantity.map(value -> OptionalDouble.of(unit.in(value))).orElseGet(OptionalDouble::empty);
        line.show(number, decimals, unit.symbol());
    }
}
