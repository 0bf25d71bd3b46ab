package porebench.desk.hold;

import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.chart.hold.HoldPlot;
import porebench.desk.DeskModel;
import porebench.desk.DeterminationSection;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.form.Form;
import porebench.desk.form.OnView;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.record.id.DeterminationId;

/** Whether the factor of a mix still holds, by its field readings with a density: the sentence, the plots, what it rests on. */
public final class HoldSection implements DeterminationSection {
    private static final int HEIGHT = 560;

    private final HoldModel model;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    private final WrappedText sentence = new WrappedText("hold.sentence", "h4");
    private final WrappedText reasons = new WrappedText("hold.reasons", "");
    private final ProblemLines notes;
    private final PlotPanel plot;
    private boolean isStale = true;

    public HoldSection(DeskModel desk) {
        model = new HoldModel(desk);
        notes = new ProblemLines("hold.notes", desk.tools().problemText());
        plot = new PlotPanel(
                desk.tools(),
                "hold",
                HEIGHT,
                new PlotPanel.Words(
                        model.texts().get("section.plot"), model::pictureName, model::subject, desk::isTraining));
        panel.setName("hold");
        panel.setOpaque(false);
        panel.add(Form.heading(model.texts().get("section.hold"), "h2"));
        panel.add(new WrappedText("hold.about", "", model.texts().get("about")), "wmin 0");
        panel.add(sentence, "wmin 0, gaptop 4");
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
        notes.show(model.notes());
        reasons.say(String.join("\n", model.reasons()));
        Optional<HoldPlot> data = model.plot();
        data.ifPresent(known -> plot.view().show(known, Looks.now()));
        plot.component().setVisible(data.isPresent());
        panel.revalidate();
        panel.repaint();
    }
}
