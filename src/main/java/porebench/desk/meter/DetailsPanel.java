package porebench.desk.meter;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.JudgedCalibration;
import porebench.method.Texts;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.DialCurve;
import porebench.record.MeterCalibration;

/** The calibration that is looked at: what was measured, what it tells, the model beside it, and its versions. */
final class DetailsPanel {
    private static final int WIDTH = 110;
    private static final int DECIMALS = 2;
    private static final double COVERAGE = 2;

    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 8", "[grow,fill,0::]"));
    private final MeterModel model;
    private final Texts texts;
    private final WrappedText heading = new WrappedText("details.heading", "h2");
    private final ProblemLines problems;
    private final Sentences measured = new Sentences("details.measured", "");
    private final Sentences told = new Sentences("details.told", "");
    private final RowTable<Beside> beside;
    private final JComponent besideTable;
    private final JLabel besideTitle;
    private final Sentences versions = new Sentences("details.versions", "quiet");

    /** A reading of a dial beside what the model predicts of the same air. */
    private record Beside(DialCalibration dial, DialCurve.Knot knot) {}

    DetailsPanel(MeterModel model) {
        this.model = model;
        this.texts = model.texts();
        problems = new ProblemLines("details.problems", model.desk().tools().problemText());
        beside = new RowTable<>("beside", texts.get("section.beside"), columns());
        besideTable = beside.scrolled();
        besideTitle = Form.heading(texts.get("section.beside"), "h3");
        JPanel both = new JPanel(new MigLayout(
                "insets 0, fillx, wrap 2, gapy 6", "[0:0:,grow 50,fill]24[0:0:,grow 50,fill]", "[][top]"));
        both.add(Form.heading(texts.get("section.measured"), "h3"));
        both.add(Form.heading(texts.get("section.told"), "h3"));
        both.add(measured.panel(), "wmin 0");
        both.add(told.panel(), "wmin 0");
        panel.add(heading, "wmin 0, gaptop 6");
        panel.add(problems.panel(), "wmin 0");
        panel.add(both, "wmin 0");
        panel.add(besideTitle, "gaptop 4");
        panel.add(besideTable, "wmin 0");
        panel.add(versions.panel(), "wmin 0, gaptop 4");
    }

    private List<ShownColumn<Beside>> columns() {
        CalibrationWords words = model.words();
        return List.of(
                figure("beside.true", row -> words.plain(row.knot().truePercent(), DECIMALS)),
                figure("beside.reading", row -> words.plain(row.knot().readingPercent(), DECIMALS)),
                figure("beside.error", row -> words.signed(row.knot().errorPercent(), DECIMALS)),
                figure(
                        "beside.uncertainty",
                        row -> words.plain(COVERAGE * row.knot().standardUncertaintyPercent(), DECIMALS)),
                figure(
                        "beside.model",
                        row -> words.plain(
                                row.dial().predictedReading(row.knot().truePercent()), DECIMALS)),
                new ShownColumn<>(
                        texts.get("beside.verdict"),
                        WIDTH,
                        row -> words.verdict(row.dial().curve().passes(row.knot()))));
    }

    private ShownColumn<Beside> figure(String key, Function<Beside, String> words) {
        return new ShownColumn<>(texts.get(key), WIDTH, words).number();
    }

    JComponent component() {
        return panel;
    }

    void refresh() {
        Optional<JudgedCalibration> chosen = model.chosen();
        panel.setVisible(chosen.isPresent());
        chosen.ifPresent(this::show);
    }

    private void show(JudgedCalibration one) {
        MeterCalibration made = one.calibration().value();
        heading.setText(texts.get("detail.heading", made.id().text()));
        problems.show(one.problems());
        measured.show(model.measured(made));
        CalibrationResults results = CalibrationResults.of(one);
        List<String> said = model.words().all(results, model.driftAt(one));
        told.show(said.isEmpty() ? List.of(texts.get("detail.note")) : said);
        boolean hasDial = results.dial().isPresent();
        besideTitle.setVisible(hasDial);
        besideTable.setVisible(hasDial);
        beside.show(model.shownDial().stream()
                .flatMap(dial -> dial.curve().knots().stream().map(knot -> new Beside(dial, knot)))
                .toList());
        versions.show(model.versions(made.id()).stream().map(model::stampWords).toList());
    }
}
