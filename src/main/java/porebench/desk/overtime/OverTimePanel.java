package porebench.desk.overtime;

import java.awt.Rectangle;
import java.awt.event.HierarchyEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import porebench.chart.control.ControlPlot;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.record.id.TrialId;

/** The Over-time page: verdict, what is charted, the plot, its signals in words, and the settings. */
final class OverTimePanel {
    private static final int PLOT_HEIGHT = 460;

    private final OverTimeModel model;
    private final TallPanel panel =
            new TallPanel(new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3, gapy 0", "[grow,fill,0::]"));
    private final WrappedText verdict = new WrappedText("overtime.verdict", "h2");
    private final ChoicePanel choices;
    private final PlotPanel plot;
    private final WrappedText remarks = new WrappedText("overtime.remarks", "");
    private final WrappedText trend = new WrappedText("overtime.trend", "");
    private final JLabel signalsTitle;
    private final SignalsPanel signals;
    private final SettingsPanel settings;
    private boolean showing;

    /**
     * Makes the page.
     *
     * @param openTrial turns the window to a trial
     */
    OverTimePanel(OverTimeModel model, Consumer<TrialId> openTrial) {
        this.model = model;
        Texts texts = model.texts();
        choices = new ChoicePanel(model);
        plot = new PlotPanel(
                model.desk().tools(),
                "control",
                PLOT_HEIGHT,
                new PlotPanel.Words(model.plotTitle(), model::pictureName, model::subject, model.desk()::isTraining));
        plot.onOpen(id -> openTrial.accept(new TrialId(id)));
        signals = new SignalsPanel(model, this::mark);
        settings = new SettingsPanel(model);
        JLabel title = new JLabel(texts.get("page.title"));
        title.putClientProperty("FlatLaf.styleClass", "h1");
        signalsTitle = new JLabel(texts.get("section.signals"));
        signalsTitle.putClientProperty("FlatLaf.styleClass", "h2");
        panel.add(title);
        panel.add(verdict, "wmin 0, gaptop 10");
        panel.add(choices.component(), "wmin 0, gaptop 14");
        panel.add(plot.component(), "wmin 0, gaptop 14");
        panel.add(remarks, "wmin 0, gaptop 10");
        panel.add(trend, "wmin 0, gaptop 6");
        panel.add(signalsTitle, "gaptop 20");
        panel.add(signals.component(), "wmin 0, gaptop 8");
        panel.add(settings.component(), "wmin 0, gaptop 20");
        model.onChange(this::show);
        // Plots take their colours and fonts when they are made, so another theme needs them made anew.
        UIManager.addPropertyChangeListener(change -> {
            if ("lookAndFeel".equals(change.getPropertyName())) {
                SwingUtilities.invokeLater(this::show);
            }
        });
        // How often a chart signals by chance takes a moment to work out, and nobody asks while the page is not on
        // view.
        panel.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && panel.isShowing()) {
                model.workOutFalseAlarms();
            }
        });
        show();
    }

    TallPanel component() {
        return panel;
    }

    /** Marks a point in the plot and brings the plot into sight. */
    private void mark(String trial) {
        plot.view().mark(trial);
        JComponent shown = plot.component();
        shown.scrollRectToVisible(new Rectangle(shown.getSize()));
    }

    private void show() {
        if (showing) {
            return;
        }
        if (panel.isShowing()) {
            model.workOutFalseAlarms();
        }
        showing = true;
        verdict.setText(model.verdict());
        choices.refresh();
        plot.say(model.plotTitle());
        Optional<ControlPlot> data = model.plot();
        data.ifPresent(points -> plot.view().show(points, Looks.now()));
        plot.component().setVisible(data.isPresent());
        remarks.setText(String.join("\n", model.remarks()));
        remarks.setVisible(!model.remarks().isEmpty());
        trend.setText(model.trend().orElse(""));
        trend.setVisible(model.trend().isPresent());
        signalsTitle.setVisible(data.isPresent());
        signals.component().setVisible(data.isPresent());
        signals.refresh();
        settings.component().setVisible(data.isPresent());
        settings.refresh();
        showing = false;
        panel.revalidate();
        panel.repaint();
    }
}
