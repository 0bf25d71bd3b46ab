package porebench.desk.overtime;

import java.awt.Rectangle;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.chart.control.ControlPlot;
import porebench.desk.DeskModel;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.Screen;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Form;
import porebench.desk.form.OnView;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.method.Texts;
import porebench.record.id.TrialId;
import porebench.statistics.control.PhasedChart;

/**
 * The page of the laboratory that says whether the factor has changed over time: verdict, what is charted, the plot, its signals
 * in words, and the settings.
 */
public final class OverTimePage implements Screen {
    private static final int PLOT_HEIGHT = 460;

    private final OverTimeModel model;
    private final ColumnForm form;
    private final TallPanel panel =
            new TallPanel(new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3, gapy 0", "[grow,fill,0::]"));
    private final JScrollPane scroll = panel.scrolled();
    private final WrappedText verdict = new WrappedText("overtime.verdict", "h2");
    private final JComboBox<String> which;
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
    public OverTimePage(DeskModel desk, Consumer<TrialId> openTrial) {
        model = new OverTimeModel(desk);
        form = new ColumnForm(model, desk.tools().problemText());
        which = form.alone(ChartFields.WHICH);
        plot = new PlotPanel(
                desk.tools(),
                "control",
                PLOT_HEIGHT,
                new PlotPanel.Words(model.plotTitle(), model::pictureName, model::subject, desk::isTraining));
        plot.onOpen(id -> openTrial.accept(new TrialId(id)));
        signals = new SignalsPanel(model, this::mark);
        signalsTitle = Form.heading(model.texts().get("section.signals"), "h2");
        JComponent choices = choices();
        settings = new SettingsPanel(model, form);
        panel.add(Form.heading(model.texts().get("page.title"), "h1"));
        panel.add(verdict, "wmin 0, gaptop 10");
        panel.add(choices, "wmin 0, gaptop 14");
        panel.add(plot.component(), "wmin 0, gaptop 14");
        panel.add(remarks, "wmin 0, gaptop 10");
        panel.add(trend, "wmin 0, gaptop 6");
        panel.add(signalsTitle, "gaptop 20");
        panel.add(signals.component(), "wmin 0, gaptop 8");
        panel.add(settings.component(), "wmin 0, gaptop 20");
        model.onChange(this::show);
        Looks.onChange(this::show);
        // How often a chart signals by chance takes a moment to work out, and nobody asks while the page is not on
        // view.
        OnView.each(panel, model::workOutFalseAlarms);
        show();
    }

    /** Returns the row of what is charted: by mix, source, meter or operator, which of them, and which chart. */
    private JComponent choices() {
        Texts texts = model.texts();
        JComboBox<String> by = form.alone(ChartFields.BY);
        JComboBox<String> kind = form.alone(ChartFields.KIND);
        which.setPrototypeDisplayValue("-");
        kind.setMaximumRowCount(PhasedChart.Kind.values().length);
        JPanel row = new JPanel(new MigLayout("insets 0, fillx", "[]6[]18[]6[grow,fill,120::]18[]6[]", "[]"));
        row.setOpaque(false);
        row.add(Form.label(texts.get("by.label"), by));
        row.add(by, "w 110!");
        row.add(Form.label(texts.get("which.label"), which));
        row.add(which, "wmin 120, growx");
        row.add(Form.label(texts.get("kind.label"), kind));
        row.add(kind, "wmin 100, wmax 420");
        return row;
    }

    @Override
    public JComponent component() {
        return scroll;
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
        form.pull();
        which.setToolTipText(model.wishes().id());
        plot.say(model.plotTitle());
        Optional<ControlPlot> data = model.plot();
        data.ifPresent(points -> plot.view().show(points, Looks.now()));
        plot.component().setVisible(data.isPresent());
        remarks.say(String.join("\n", model.remarks()));
        trend.say(model.trend().orElse(""));
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
