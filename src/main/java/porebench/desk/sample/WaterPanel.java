package porebench.desk.sample;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Numbers;
import porebench.desk.form.Texts;
import porebench.desk.form.UnitSystem;
import porebench.method.MeterType;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** The waters that go with a correction sample, and the volumes it is computed from. */
final class WaterPanel {
    private final JPanel panel = new JPanel(new MigLayout("insets 0, wrap 3, gapy 6, hidemode 3", "[]20[trailing]6[]"));
    private final Map<String, JLabel[]> lines = new LinkedHashMap<>();
    private final Texts texts;
    private final Numbers numbers;

    WaterPanel(Texts texts, Numbers numbers) {
        this.texts = texts;
        this.numbers = numbers;
        panel.putClientProperty("FlatLaf.styleClass", "box");
        JLabel heading = new JLabel(texts.get("section.water"));
        heading.putClientProperty("FlatLaf.styleClass", "h2");
        panel.add(heading, "span 3, gapbottom 4");
        line("water.first");
        line("water.inundation");
        line("water.withdrawal");
        line("water.batch");
        line("water.ratio");
    }

    private void line(String name) {
        JLabel label = new JLabel();
        JLabel value = new JLabel();
        value.setName(name);
        label.setLabelFor(value);
        JLabel unit = new JLabel();
        panel.add(label);
        panel.add(value);
        panel.add(unit);
        lines.put(name, new JLabel[] {label, value, unit});
    }

    JPanel panel() {
        return panel;
    }

    void show(
            Optional<CorrectionSample> sample,
            MeterType type,
            BigDecimal targetAir,
            boolean wetSieved,
            UnitSystem units) {
        millilitres("water.first", texts.get("water.first"), sample.map(CorrectionSample::oneThird));
        millilitres("water.inundation", texts.get("water.inundation"), sample.flatMap(CorrectionSample::inundation));
        if (type == MeterType.A) {
            line("water.withdrawal", texts.get("water.withdrawal.none"), "", "");
        } else {
            millilitres(
                    "water.withdrawal",
                    texts.get("water.withdrawal", numbers.show(targetAir)),
                    sample.map(CorrectionSample::withdrawal));
        }
        VolumeUnit unit = units.batchVolume();
        number(
                "water.batch",
                texts.get(wetSieved ? "water.passing" : "water.batch"),
                number(sample, computed -> computed.batchVolume().in(unit)),
                4,
                unit.symbol());
        number(
                "water.ratio",
                texts.get("water.ratio"),
                number(
                        sample,
                        computed -> computed.bowl().cubicMetres()
                                / computed.batchVolume().cubicMetres()),
                6,
                "");
    }

    private static OptionalDouble number(Optional<CorrectionSample> sample, ToDoubleFunction<CorrectionSample> figure) {
        return sample.isPresent() ? OptionalDouble.of(figure.applyAsDouble(sample.get())) : OptionalDouble.empty();
    }

    private void millilitres(String name, String label, Optional<Volume> water) {
        OptionalDouble number = water.map(volume -> OptionalDouble.of(volume.in(VolumeUnit.MILLILITRE)))
                .orElseGet(OptionalDouble::empty);
        number(name, label, number, 0, VolumeUnit.MILLILITRE.symbol());
    }

    private void number(String name, String label, OptionalDouble number, int decimals, String unit) {
        boolean known = number.isPresent();
        line(
                name,
                label,
                known ? numbers.show(number.getAsDouble(), decimals) : texts.get("unknown"),
                known ? unit : "");
        lines.get(name)[1].putClientProperty("FlatLaf.styleClass", known ? null : "quiet");
    }

    private void line(String name, String label, String value, String unit) {
        JLabel[] line = lines.get(name);
        line[0].setText(label);
        line[1].setText(value);
        line[2].setText(unit);
    }
}
