package porebench.desk.hold;

import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.chart.hold.HoldPlot;
import porebench.desk.DeskModel;
import porebench.desk.DeterminationSection;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.OnView;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.record.FieldReading;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/** Whether the factor of a mix still holds, by its field readings with a density: the sentence, the plots, what it rests on. */
public final class HoldSection implements DeterminationSection {
    private static final int HEIGHT = 560;

    private final HoldModel model;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    private final WrappedText sentence = new WrappedText("hold.sentence", "h4");
    private final WrappedText reasons = new WrappedText("hold.reasons", "");
    private final ProblemLines notes;
    private final PlotPanel plot;
    private final JButton readings;
    private boolean isStale = true;

    /**
     * Makes the section.
     *
     * @param openReadings leads to the field readings of a mix
     * @param openReading leads to one field reading
     */
    public HoldSection(DeskModel desk, Consumer<MixId> openReadings, Consumer<FieldReading> openReading) {
        model = new HoldModel(desk);
        readings = Commands.button(
                "hold.readings",
                Commands.of(model.texts().get("readings"), () -> desk.selected().ifPresent(openReadings)));
        notes = new ProblemLines("hold.notes", desk.tools().problemText());
        plot = new PlotPanel(
                desk.tools(),
                "hold",
                HEIGHT,
                new PlotPanel.Words(
                        model.texts().get("section.plot"), model::pictureName, model::subject, desk::isTraining));
        plot.onOpen(id -> model.reading(id).ifPresent(openReading));
        panel.setName("hold");
        panel.setOpaque(false);
        panel.add(Form.heading(model.texts().get("section.hold"), "h2"));
        panel.add(new WrappedText("hold.about", "", model.texts().get("about")), "wmin 0");
        panel.add(sentence, "wmin 0, gaptop 4");
        panel.add(readings, "growx 0");
        panel.add(notes.panel(), "wmin 0");
        panel.add(plot.component(), "wmin 0, gaptop 8");
        panel.add(reasons, "wmin 0, gaptop 4");
        OnView.each(panel, () -> {
            if (isStale) {
                show();
            }
        });
        desk.onChange(this::showSoon);
        Looks.onOther(this::showSoon);
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void show(Optional<DeterminationId> determination) {
        showSoon();
    }

    /** Shows it now when anybody can see it, else as soon as somebody can. */
    private void showSoon() {
        isStale = true;
        if (panel.isShowing()) {
            show();
        }
    }

    private void show() {
        isStale = false;
        sentence.say(model.sentence());
        readings.setEnabled(model.desk().selected().isPresent());
        notes.show(model.notes());
        reasons.say(String.join("\n", model.reasons()));
        Optional<HoldPlot> data = model.plot();
        data.ifPresent(known -> plot.view().show(known, Looks.now()));
        plot.component().setVisible(data.isPresent());
        panel.revalidate();
        panel.repaint();
    }
}
