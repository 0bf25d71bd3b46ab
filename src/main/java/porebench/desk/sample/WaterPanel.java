package porebench.desk.sample;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.FigureLine;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.UnitSystem;
import porebench.method.MeterType;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** The waters after the first that go with a correction sample, and the volumes it is computed from. */
final class WaterPanel {
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, wrap 3, gapy 6, hidemode 3", "[]20[trailing,72::]6[28::]"));
    private final Texts texts;
    private final Numbers numbers;
    private final FigureLine inundation;
    private final FigureLine withdrawal;
    private final FigureLine batch;
    private final FigureLine ratio;

    WaterPanel(Texts texts, Numbers numbers) {
        this.texts = texts;
        this.numbers = numbers;
        panel.putClientProperty("FlatLaf.styleClass", "box");
        panel.add(Form.heading(texts.get("section.water"), "h2"), "span 3, gapbottom 4");
        inundation = line("water.inundation", texts.get("water.inundation"));
        withdrawal = line("water.withdrawal", "");
        batch = line("water.batch", texts.get("water.batch"));
        ratio = line("water.ratio", texts.get("water.ratio"));
    }

    private FigureLine line(String name, String words) {
        return new FigureLine(panel, name, words, numbers, texts.get("unknown"));
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
        millilitres(inundation, sample.flatMap(CorrectionSample::inundation));
        if (type == MeterType.A) {
            withdrawal.call(texts.get("water.withdrawal.none"));
            withdrawal.showNone();
        } else {
            withdrawal.call(texts.get("water.withdrawal", numbers.show(targetAir)));
            millilitres(withdrawal, sample.map(CorrectionSample::withdrawal));
        }
        VolumeUnit unit = units.batchVolume();
        batch.call(texts.get(wetSieved ? "water.passing" : "water.batch"));
        batch.show(number(sample, computed -> computed.batchVolume().in(unit)), 4, unit.symbol());
        ratio.show(
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

    private static void millilitres(FigureLine line, Optional<Volume> water) {
        OptionalDouble number = water.map(volume -> OptionalDouble.of(volume.in(VolumeUnit.MILLILITRE)))
                .orElseGet(OptionalDouble::empty);
        line.show(number, 0, VolumeUnit.MILLILITRE.symbol());
    }
}
