package porebench.desk.mix;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.chart.forecast.ForecastCheck;
import porebench.desk.DeskModel;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.id.MixId;

/** The forecast of the draft, below the design: asked for with a button, and then beside every change. */
final class ForecastPanel {
    private static final int HEIGHT = 320;

    private final ForecastModel model;
    private final DraftEffects draft;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 6", "[grow,fill]"));
    private final WrappedText headline = new WrappedText("forecast.headline", "answer");
    private final WrappedText against = new WrappedText("forecast.against", "quiet");
    private final WrappedText effects = new WrappedText("draft.effects", "h4");
    private final ProblemLines rules;
    private final WrappedText note;
    private final RowTable<ForecastModel.Line> table;
    private final JScrollPane scrolled;
    private final ProblemLines problems;
    private final PlotPanel plot;

    ForecastPanel(ForecastModel model, DraftEffects draft, DeskModel desk, Texts texts, Consumer<MixId> openMix) {
        this.model = model;
        this.draft = draft;
        rules = new ProblemLines("draft.rules", desk.tools().problemText());
        Action ask = Commands.of(texts.get("action.forecast"), () -> model.ask(this::refresh));
        note = new WrappedText("forecast.note", "quiet", texts.get("forecast.note"));
        table = new RowTable<>("forecast.sources", texts.get("section.forecast"), columns(texts));
        scrolled = table.scrolled();
        problems = new ProblemLines("forecast.problems", desk.tools().problemText());
        plot = new PlotPanel(
                desk.tools(),
                "forecastCheck",
                HEIGHT,
                new PlotPanel.Words(
                        texts.get("forecast.check"), () -> "forecast-check.png", () -> "", desk::isTraining));
        plot.onOpen(mix -> openMix.accept(new MixId(mix)));
        Looks.onChange(this::refresh);
        JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill]16[]"));
        head.add(Form.heading(texts.get("section.forecast"), "h2"));
        head.add(Commands.button("forecast.ask", ask));
        panel.setName("forecast");
        panel.add(head);
        panel.add(effects, "wmin 0");
        panel.add(rules.panel(), "wmin 0");
        for (WrappedText words : List.of(headline, against)) {
            panel.add(words, "wmin 0");
        }
        panel.add(scrolled);
        panel.add(problems.panel(), "wmin 0");
        panel.add(note, "wmin 0");
        panel.add(plot.component(), "gaptop 8, wmin 0");
        refresh();
    }

    private List<ShownColumn<ForecastModel.Line>> columns(Texts texts) {
        return List.of(
                new ShownColumn<>(texts.get("forecast.source"), 120, ForecastModel.Line::source).unsorted(),
                new ShownColumn<>(model::massHeading, 120, ForecastModel.Line::mass)
                        .number()
                        .unsorted(),
                new ShownColumn<>(texts.get("forecast.pore-air"), 130, ForecastModel.Line::poreAir)
                        .number()
                        .unsorted(),
                new ShownColumn<>(texts.get("forecast.uncertainty"), 150, ForecastModel.Line::uncertainty)
                        .number()
                        .unsorted(),
                new ShownColumn<>(texts.get("forecast.part"), 110, ForecastModel.Line::part)
                        .number()
                        .unsorted(),
                new ShownColumn<>(texts.get("forecast.told-apart"), 100, ForecastModel.Line::apart).unsorted());
    }

    JPanel panel() {
        return panel;
    }

    /** Shows the forecast of the draft as it stands. */
    void refresh() {
        ForecastModel.Shown shown = model.shown();
        headline.say(shown.headline());
        headline.putClientProperty("FlatLaf.styleClass", shown.isForecast() ? "answer" : "quiet");
        against.say(shown.against());
        DraftEffects.Shown done = draft.shown();
        effects.say(done.words());
        rules.show(done.why());
        table.show(shown.lines());
        scrolled.setVisible(!shown.lines().isEmpty());
        note.setVisible(shown.isForecast());
        problems.show(shown.problems());
        Optional<ForecastCheck> check = model.check();
        plot.component().setVisible(check.isPresent());
        check.ifPresent(data -> plot.view().show(data, Looks.now()));
    }
}
