package porebench.desk.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.quantity.MassUnit;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.book.Version;

/** What is weighed and poured first for one trial, to be read from the balance: a large line an aggregate, then the water. */
final class MassesPanel {
    private static final String COLUMNS = "[grow,fill,0::]16[trailing]6[]20[]";

    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 4, gapy 2, hidemode 3", COLUMNS, "[baseline]"));
    private final Texts texts;
    private final Numbers numbers;
    private List<Line> shown = List.of();
    private Optional<Version<MixDesign>> shownOf = Optional.empty();

    /**
     * One mass or volume.
     *
     * @param key the name of the label with the number
     * @param name of what
     * @param number in the unit
     * @param unit the unit
     * @param limits from what to what it may be; empty where that is not known
     * @param isKnown whether number and limits are true now, not only those whose room is kept
     */
    private record Line(String key, String name, String number, String unit, String limits, boolean isKnown) {
        Line unknown() {
            return new Line(key, name, number, unit, limits, false);
        }
    }

    MassesPanel(Texts texts, Numbers numbers) {
        this.texts = texts;
        this.numbers = numbers;
        panel.setName("masses");
        panel.putClientProperty("FlatLaf.styleClass", "box");
    }

    JComponent component() {
        return panel;
    }

    /**
     * Shows the masses and the water. While they are not known it takes no room, or that of those that were known of the same mix,
     * so that nothing below moves away from somebody who types.
     */
    void show(
            Optional<Version<MixDesign>> mix,
            Optional<CorrectionSample> sample,
            Optional<WeighOut> weighOut,
            MassUnit unit) {
        List<Line> unknown =
                shownOf.equals(mix) ? shown.stream().map(Line::unknown).toList() : List.of();
        shownOf = mix;
        List<Line> lines =
                sample.map(computed -> lines(computed, weighOut, unit)).orElse(unknown);
        if (!lines.equals(shown)) {
            shown = lines;
            panel.removeAll();
            panel.add(Form.heading(texts.get("section.masses"), "quiet"), "span 4");
            lines.forEach(this::add);
            panel.revalidate();
        }
        panel.setVisible(!lines.isEmpty());
    }

    private List<Line> lines(CorrectionSample sample, Optional<WeighOut> weighOut, MassUnit unit) {
        MassText text = new MassText(numbers, unit);
        List<CorrectionSample.Component> components = sample.components();
        List<Line> lines = new ArrayList<>();
        for (int index = 0; index < components.size(); index++) {
            int at = index;
            lines.add(line(components.get(at), weighOut.map(list -> list.lines().get(at)), text, unit));
        }
        lines.add(new Line(
                "water.first",
                texts.get(sample.isThirdTooMuch() ? "water.first.fits" : "water.first"),
                numbers.show(sample.firstWater().in(VolumeUnit.MILLILITRE), 0),
                VolumeUnit.MILLILITRE.symbol(),
                "",
                true));
        return lines;
    }

    private Line line(
            CorrectionSample.Component component, Optional<WeighOut.Line> limits, MassText text, MassUnit unit) {
        boolean hasSource = !component.source().equals(component.name());
        return new Line(
                "mass." + component.name(),
                hasSource ? texts.get("form.moisture", component.name(), component.source()) : component.name(),
                text.show(component.mass()),
                unit.symbol(),
                limits.map(line -> texts.get(
                                "masses.limits", text.showLowest(line.lowest()), text.showHighest(line.highest())))
                        .orElse(""),
                true);
    }

    /** Says something else in the room of what was said. */
    private static void blank(JLabel label, String words) {
        label.setPreferredSize(label.getPreferredSize());
        label.setText(words);
    }

    private void add(Line line) {
        panel.add(new WrappedText(line.key() + ".name", "h2", line.name()), "wmin 0, aligny center");
        JLabel number = Form.heading(line.number(), "number");
        number.setName(line.key());
        panel.add(number);
        panel.add(Form.heading(line.unit(), "h2"));
        JLabel limits = Form.heading(line.limits(), "quiet");
        panel.add(limits);
        if (!line.isKnown()) {
            blank(number, texts.get("unknown"));
            blank(limits, "");
        }
    }
}
