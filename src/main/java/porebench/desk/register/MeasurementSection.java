package porebench.desk.register;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import porebench.chart.look.ChartLook;
import porebench.chart.source.StoneFigures;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.form.Choices;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.KeptRoom;
import porebench.desk.form.Numbers;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.SourceMeasurement;
import porebench.record.source.MeasuredStone;

/** What was measured of a source: a table, what is doubtful, and one figure over time beside the one in use. */
final class MeasurementSection {
    private static final int MOST_ROWS = 6;
    private static final int DOUBT_LINES = 3;
    private static final int PLOT_HEIGHT = 220;

    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]", "[]4[]6[]4[]4[]8[]4[]"));
    private final SourcesModel model;
    private final Texts texts;
    private final Numbers numbers;
    private final WrappedText none;
    private final RowTable<MeasuredStone> table;
    private final JScrollPane scroll;
    private final ProblemLines doubts;
    private final JComboBox<StoneFigures.Figure> choice;
    private final PlotPanel plot;
    private final MeasurementForm form;
    private final Action correct;
    private StoneFigures.Figure figure = StoneFigures.Figure.RELATIVE_DENSITY;
    private Optional<StoneFigures> shown = Optional.empty();
    private @Nullable ChartLook drawnIn;

    MeasurementSection(SourcesModel model) {
        this.model = model;
        this.texts = model.texts();
        this.numbers = model.desk().tools().numbers();
        none = new WrappedText("source.unmeasured", "quiet", texts.get("source.unmeasured"));
        table = new RowTable<>("source.measured", texts.get("source.measured"), columns());
        table.setMostRows(MOST_ROWS);
        scroll = table.scrolled();
        doubts = new ProblemLines("source.measured.doubts", model.desk().tools().problemText());
        choice = Choices.of(
                "source.figure",
                List.of(StoneFigures.Figure.values()),
                one -> texts.get("source.figure." + one.name()),
                this::choose);
        choice.getAccessibleContext().setAccessibleName(texts.get("source.figure"));
        plot = new PlotPanel(
                model.desk().tools(),
                "stone",
                PLOT_HEIGHT,
                new PlotPanel.Words(
                        texts.get("source.plot"),
                        () -> "source-" + id() + "-measured",
                        this::id,
                        () -> model.desk().isTraining()));
        form = new MeasurementForm(model);
        correct = Commands.of(
                texts.get("measured.correct"),
                () -> table.selected().map(MeasuredStone::measurement).ifPresent(form::correct));
        table.on("ENTER", correct);
        table.onSelect(chosen -> correct.setEnabled(chosen.isPresent()));
        panel.setOpaque(false);
        panel.add(Form.heading(texts.get("source.measured"), "h2"));
        panel.add(none, "wmin 0");
        panel.add(scroll, "wmin 0");
        panel.add(Commands.button("measured.correct", correct), "growx 0");
        panel.add(new KeptRoom(doubts.panel(), DOUBT_LINES), "wmin 0");
        panel.add(choice, "growx 0");
        panel.add(plot.component(), "wmin 0");
        panel.add(form.component(), "wmin 0, gaptop 8");
    }

    private String id() {
        return model.base().map(version -> version.value().recordId()).orElse("");
    }

    private List<ShownColumn<MeasuredStone>> columns() {
        return List.of(
                new ShownColumn<MeasuredStone>(
                                texts.get("source.measured.on"), 88, one -> Days.show(of(one).testedOn()))
                        .sortedBy(one -> of(one).testedOn()),
                new ShownColumn<MeasuredStone>(texts.get("source.measured.by"), 100, one -> of(one).testedBy()),
                new ShownColumn<MeasuredStone>(
                        texts.get("source.measured.stone"),
                        90,
                        one -> one.stone().newest().value().ledge()),
                number("source.relativeDensity.short", SourceMeasurement::relativeDensity),
                number("source.absorption.short", SourceMeasurement::absorptionPercent),
                number("source.measured.retained", SourceMeasurement::retainedPercent),
                new ShownColumn<MeasuredStone>(texts.get("source.remarks.plain"), 130, one -> of(one).remarks()));
    }

    private ShownColumn<MeasuredStone> number(String key, Function<SourceMeasurement, Optional<BigDecimal>> figureOf) {
        return new ShownColumn<MeasuredStone>(
                        texts.get(key),
                        64,
                        one -> figureOf.apply(of(one)).map(numbers::show).orElse(""))
                .number();
    }

    private static SourceMeasurement of(MeasuredStone one) {
        return one.measurement().value();
    }

    private void choose(StoneFigures.Figure chosen) {
        figure = chosen;
        refresh();
    }

    JComponent component() {
        return panel;
    }

    void refresh() {
        List<MeasuredStone> rows = new ArrayList<>(model.measured());
        Collections.reverse(rows);
        if (!rows.equals(table.shown())) {
            table.clearSelection();
            table.show(rows);
        }
        none.setVisible(rows.isEmpty());
        scroll.setVisible(!rows.isEmpty());
        correct.setEnabled(table.selected().isPresent());
        form.refresh();
        List<Problem> far = rows.stream().flatMap(one -> one.doubts().stream()).toList();
        doubts.show(far);
        Choices.show(choice, List.of(StoneFigures.Figure.values()), Optional.of(figure));
        choice.setVisible(!rows.isEmpty());
        Optional<StoneFigures> next = model.figures(figure);
        plot.component().setVisible(next.isPresent());
        ChartLook look = Looks.now();
        if (!next.equals(shown) || !look.equals(drawnIn)) {
            shown = next;
            drawnIn = look;
            next.ifPresent(figures -> plot.view().show(figures, look));
        }
    }
}
