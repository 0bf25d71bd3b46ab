package porebench.desk.register;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.chart.factor.CoverageOverTime;
import porebench.desk.DeskModel;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.Screen;
import porebench.desk.Settings;
import porebench.desk.StateMark;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.RegisterRow;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** The factor register: what is in force for every mix, what is due, and under it what is missing for the chosen mix. */
public final class RegisterPage implements Screen {
    private static final int MARK_SIDE = 12;
    private static final int PLOT_HEIGHT = 165;
    /** Where the column of cards to come back stands: an alarm is seen without scrolling. */
    private static final int CARDS_AT = 2;

    /** Where a mix without a factor stands when they are sorted by it. */
    private static final BigDecimal BELOW_ALL = BigDecimal.valueOf(-100);

    private final JPanel panel = new JPanel(new MigLayout(
            "insets 18 22 14 22, fill, wrap 1, hidemode 3", "[grow,fill,0::]", "[]4[]2[]4[]10[]8[grow,fill]10[]"));
    private final DeskModel desk;
    private final RegisterModel model;
    private final Texts texts;
    private final Consumer<MixId> openMix;
    private final JLabel coverage = Form.heading("", "h2");
    private final WrappedText summary = new WrappedText("register.summary", "quiet");
    private final WrappedText alarm = new WrappedText("register.alarm", "caution");
    private final RowTable<RegisterRow> table;
    private final RegisterBar bar;
    private final JLabel missingTitle = Form.heading("", "h2");
    private final ProblemLines missing;
    private final Action open;
    private final PlotPanel plot;
    private Optional<CoverageOverTime> plotted = Optional.empty();

    /**
     * Makes the page.
     *
     * @param openMix turns the window to a mix
     * @param settings keeps the views that a person gave a name
     */
    public RegisterPage(DeskModel desk, Consumer<MixId> openMix, Settings settings) {
        this.desk = desk;
        this.texts = RecordPage.texts(desk);
        this.model = new RegisterModel(desk, texts, settings);
        this.openMix = openMix;
        table = new RowTable<>("register.table", texts.get("register.title"), columns());
        missing = new ProblemLines("register.missing", desk.tools().problemText());
        open = Commands.of(texts.get("register.open"), this::openChosen);
        plot = new PlotPanel(
                desk.tools(),
                "coverage",
                PLOT_HEIGHT,
                new PlotPanel.Words(texts.get("register.over-time"), model::fileName, () -> "", desk::isTraining));
        bar = new RegisterBar(desk, model, table, panel, open, this::refreshed);
        setUpTable();
        panel.setName("register.page");
        coverage.setName("register.coverage");
        panel.add(Form.heading(texts.get("register.title"), "h1"));
        panel.add(coverage, "wmin 0");
        panel.add(summary, "wmin 0");
        panel.add(alarm, "wmin 0");
        panel.add(bar.component(), "wmin 0");
        panel.add(table.scrolled(), "hmin 120");
        panel.add(foot(), "hmax 250");
        desk.onChange(this::refresh);
        Looks.onOther(this::draw);
        refresh();
    }

    @Override
    public JComponent component() {
        return panel;
    }

    private List<ShownColumn<RegisterRow>> columns() {
        Numbers numbers = desk.tools().numbers();
        return List.of(
                new ShownColumn<RegisterRow>(texts.get("register.state"), 155, row -> model.stateWords(row.state()))
                        .mark((row, selected) -> new StateMark(row.state(), MARK_SIDE))
                        .sortedBy(RegisterRow::state),
                new ShownColumn<RegisterRow>(
                                texts.get("register.mix"),
                                75,
                                row -> row.mixId().text())
                        .sortedBy(RegisterRow::mixId),
                new ShownColumn<>(texts.get("register.mixTitle"), 175, RegisterRow::title).sortedBy(RegisterRow::title),
                new ShownColumn<RegisterRow>(
                                texts.get("register.factor"),
                                50,
                                row -> row.factorPercent().map(numbers::show).orElse(""))
                        .sortedBy(row -> row.factorPercent().orElse(BELOW_ALL)),
                new ShownColumn<RegisterRow>(
                                texts.get("register.uncertainty"),
                                58,
                                row -> row.uncertainty()
                                        .expandedPercent()
                                        .map(u -> numbers.show(u.doubleValue(), Digits.AIR))
                                        .orElse(""))
                        .number()
                        .sortedBy(row -> row.uncertainty().expandedPercent().orElse(BELOW_ALL)),
                day("register.uncovered", RegisterRow::uncoveredSince),
                since(),
                day("register.recheck", RegisterRow::recheckBy),
                new ShownColumn<>(texts.get("register.due"), 170, model::dueWords),
                new ShownColumn<>(
                        texts.get("register.revision"),
                        50,
                        row -> row.revision().map(Object::toString).orElse("")),
                new ShownColumn<RegisterRow>(
                                texts.get("register.trials"), 55, row -> Integer.toString(row.countedTrials()))
                        .sortedBy(RegisterRow::countedTrials),
                new ShownColumn<>(texts.get("register.meters"), 80, RegisterPage::meters)
                        .sortedBy(RegisterPage::meters),
                day("register.tested", row -> row.trials().lastOn()),
                new ShownColumn<>(texts.get("register.plant"), 80, RegisterRow::plant).sortedBy(RegisterRow::plant),
                new ShownColumn<>(texts.get("register.missing"), 170, model::missingWords),
                new ShownColumn<>(texts.get("register.cards"), 110, model::cardWords)
                        .sortedBy(model::cardsBack)
                        .tip(texts.get("register.cards.tip")),
                new ShownColumn<RegisterRow>(texts.get("register.recheck-g"), 150, model::recheckWords)
                        .sortedBy(model::recheckSize)
                        .tip(texts.get("register.recheck-g.tip")));
    }

    private static String meters(RegisterRow row) {
        return row.trials().meters().stream().map(MeterId::text).collect(Collectors.joining(", "));
    }

    /** Since when the factor holds: its first day, and the hour where it says one. */
    private ShownColumn<RegisterRow> since() {
        return new ShownColumn<RegisterRow>(
                        texts.get("register.since"),
                        110,
                        row -> (row.inForceFrom().map(Days::show).orElse("") + " "
                                        + row.terms().atText())
                                .strip())
                .sortedBy(row -> row.inForceFrom().orElse(LocalDate.MIN));
    }

    private ShownColumn<RegisterRow> day(String key, Function<RegisterRow, Optional<LocalDate>> day) {
        return new ShownColumn<RegisterRow>(
                        texts.get(key),
                        95,
                        row -> day.apply(row).map(Days::show).orElse(""))
                .sortedBy(row -> day.apply(row).orElse(LocalDate.MIN));
    }

    /** What is missing for the chosen mix, and beside it how many mixes were covered over time. */
    private JComponent foot() {
        TallPanel details = new TallPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill,0::]", "[]6[]"));
        details.add(missingTitle, "wmin 0");
        details.add(missing.panel(), "wmin 0");
        JPanel parts = new JPanel(
                new MigLayout("insets 0, fill, hidemode 3", "[grow 40,fill,0:0:]18[grow 60,fill]", "[fill]"));
        parts.setOpaque(false);
        parts.add(details.scrolled(), "wmin 0");
        parts.add(plot.component(), "hmin 240, aligny top");
        return parts;
    }

    private void setUpTable() {
        // Views that are kept name columns by their numbers: columns that came later are the last ones, wherever they
        // stand.
        table.moveColumn(table.getColumnCount() - 2, CARDS_AT);
        table.onSelect(chosen -> chosen.ifPresent(row -> {
            model.choose(row.mixId());
            showMissing();
        }));
        table.on("ENTER", open);
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2 && table.rowAtPoint(event.getPoint()) >= 0) {
                    openChosen();
                }
            }
        });
    }

    private void openChosen() {
        model.chosen().map(RegisterRow::mixId).ifPresent(openMix);
    }

    private void refresh() {
        coverage.setText(model.coverageWords());
        summary.setText(model.summary());
        alarm.setText(model.alarmWords());
        alarm.setVisible(!model.alarmWords().isEmpty());
        table.show(model.rows());
        Optional<RegisterRow> chosen = model.chosen();
        table.select(row -> chosen.filter(row::equals).isPresent());
        bar.refresh();
        Optional<CoverageOverTime> now = model.overTime();
        if (!now.equals(plotted)) {
            plotted = now;
            draw();
        }
        showMissing();
    }

    private void refreshed() {
        refresh();
        draw();
    }

    private void draw() {
        plotted.ifPresent(data -> plot.view().show(data, Looks.now()));
        plot.component().setVisible(plotted.isPresent() && bar.showsOverTime());
    }

    private void showMissing() {
        Optional<RegisterRow> chosen = model.chosen();
        open.setEnabled(chosen.isPresent());
        missing.show(chosen.map(row -> Stream.concat(row.missing().stream(), row.uncertainty().note().stream())
                        .toList())
                .orElse(List.of()));
        missingTitle.setText(
                chosen.isEmpty()
                        ? texts.get("register.choose")
                        : texts.get(
                                chosen.get().missing().isEmpty() ? "register.nothing-for" : "register.missing-for",
                                chosen.get().mixId().text()));
        panel.revalidate();
    }
}
