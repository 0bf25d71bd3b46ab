package porebench.desk.meter;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.chart.PlotView;
import porebench.desk.Looks;
import porebench.desk.NewerVersion;
import porebench.desk.form.Choices;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.desk.table.PartTable;
import porebench.desk.table.RowTable;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.method.meter.DialCalibration;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;

/** The form of a calibration on the left, and what it tells so far on the right. */
final class CalibrationPanel {
    private static final String FILLS = "bowl.fills";
    private static final String POINTS = "dial.points";
    private static final int PLOT_HEIGHT = 420;
    private static final List<Integer> WIDTHS = List.of(90, 90, 90, 90);

    private final JPanel panel = new JPanel(new MigLayout(
            "insets 20 24 16 24, fill, hidemode 3",
            "[0:0:,grow 58,fill]24[0:0:,grow 42,fill]",
            "[]10[0:0:,grow,fill]"));
    private final MeterModel model;
    private final NewerVersion<MeterCalibration> newer;
    private final WrappedText newerText = new WrappedText("entry.newer", "fieldWarning");
    private final CalibrationModel entry;
    private final Texts texts;
    private final WrappedText heading = new WrappedText("entry.heading", "h1");
    private final WrappedText refusal = new WrappedText("entry.refusal", "fieldError");
    private final List<ColumnForm> forms;
    private final JButton keep;
    private final JComboBox<String> fillUnit;
    private final JComboBox<String> fillTemperatureUnit;
    private final PartTable fills;
    private final PartTable points;
    private final ProblemLines fillLines;
    private final ProblemLines pointLines;
    private final ProblemLines otherLines;
    private final JPanel dialSection = section();
    private final JPanel columnSection = section();
    private final Sentences results = new Sentences("entry.results", "");
    private final PlotView plot;
    private final CalibrationCautions cautions;

    CalibrationPanel(MeterModel model, NewerVersion<MeterCalibration> newer, Action save, Action drop) {
        this.model = model;
        this.newer = newer;
        this.entry = model.entry();
        this.texts = model.texts();
        ProblemText problemText = model.desk().tools().problemText();
        forms = Stream.of(
                        CalibrationFields.GENERAL,
                        CalibrationFields.BOWL,
                        CalibrationFields.VESSEL,
                        CalibrationFields.DIAL,
                        CalibrationFields.COLUMN)
                .map(columns -> new ColumnForm(entry, problemText).addAll(columns))
                .toList();
        fillUnit = Choices.of(
                "bowl.fillsUnit", CalibrationColumns.FULL.type().units(), symbol -> symbol, this::chooseFillUnit);
        fillUnit.getAccessibleContext().setAccessibleName(entry.unitName(CalibrationColumns.FILLS));
        fillTemperatureUnit = Choices.of(
                "bowl.fillTemperatureUnit",
                entry.units(CalibrationColumns.FILL_WATER),
                entry::unitWords,
                this::chooseFillTemperatureUnit);
        fillTemperatureUnit
                .getAccessibleContext()
                .setAccessibleName(texts.get("unit-of", texts.get("fill.waterTemperature.plain")));
        fills = new PartTable(
                FILLS,
                texts.get("section.fills"),
                entry.fills(),
                CalibrationColumns.OF_FILL.columns().all(),
                WIDTHS,
                problemText,
                this::tellLeft);
        points = new PartTable(
                POINTS,
                texts.get("section.points"),
                entry.points(),
                CalibrationColumns.OF_POINT.columns().all(),
                WIDTHS,
                problemText,
                this::tellLeft);
        fillLines = new ProblemLines("bowl.fills.problems", problemText).keepingRoom(2);
        pointLines = new ProblemLines("dial.points.problems", problemText).keepingRoom(2);
        otherLines = new ProblemLines("entry.problems", problemText).keepingRoom(2);
        plot = new PlotView("plot.entry", texts.locale());
        plot.component().getAccessibleContext().setAccessibleName(texts.get("plot.dial"));
        cautions = new CalibrationCautions(texts);
        panel.setName("entry");
        keep = newer.button("entry.save", save);
        leadOn();
        panel.add(head(drop), "spanx 2, growx, wrap");
        panel.add(left());
        panel.add(right());
    }

    JComponent component() {
        return panel;
    }

    private void tellLeft(String words) {
        model.desk().tools().asker().tell(panel, texts.get("section.fills"), words);
    }

    private void chooseFillUnit(String symbol) {
        if (!symbol.equals(entry.draft().unit(CalibrationColumns.FILLS))) {
            entry.chooseUnit(CalibrationColumns.FILLS, symbol);
        }
    }

    private void chooseFillTemperatureUnit(String symbol) {
        if (!symbol.equals(entry.shownUnit(CalibrationColumns.FILL_WATER))) {
            entry.update(
                    texts.get("unit-of", texts.get("fill.waterTemperature.plain")),
                    entry.draft().withUnit(CalibrationColumns.FILL_WATER, symbol));
        }
    }

    private JPanel fillUnits() {
        JPanel units = new JPanel(new MigLayout("insets 0, gap 6"));
        units.setOpaque(false);
        units.add(fillUnit);
        units.add(fillTemperatureUnit);
        return units;
    }

    private static JPanel section() {
        JPanel section = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 8", "[grow,fill,0::]"));
        section.setOpaque(false);
        return section;
    }

    /** Leads from the last field of each form on to what is typed next. */
    private void leadOn() {
        forms.get(0).then(() -> begin(fills.table()));
        forms.get(1)
                .then(() -> (dialSection.isVisible()
                                ? forms.get(2)
                                        .field(CalibrationFields.VESSEL.get(0).field())
                                : forms.get(4)
                                        .field(CalibrationFields.COLUMN.get(0).field()))
                        .requestFocusInWindow());
        forms.get(2).then(() -> begin(points.table()));
        forms.get(3).then(keep::requestFocusInWindow);
        forms.get(4).then(keep::requestFocusInWindow);
    }

    /** Goes to the first row of a table in which nothing stands yet. */
    private static void begin(RowTable<?> table) {
        int row = 0;
        while (row < table.getRowCount() - 1
                && !String.valueOf(table.getValueAt(row, 0)).isBlank()) {
            row++;
        }
        table.changeSelection(row, 0, false, false);
        table.requestFocusInWindow();
    }

    private JPanel head(Action drop) {
        JPanel head =
                new JPanel(new MigLayout("insets 0, fillx, hidemode 3, wrap 3", "[grow,fill,0::]16[]8[]", "[]4[]"));
        head.add(heading, "wmin 0");
        head.add(Commands.button("entry.drop", drop), "aligny top");
        head.add(keep, "aligny top");
        head.add(refusal.keepingRoom(1), "span 3, wmin 0, " + WrappedText.ROOM_KEPT);
        return head;
    }

    private JScrollPane left() {
        TallPanel left =
                new TallPanel(new MigLayout("insets 0 2 12 8, fillx, wrap 1, hidemode 3, gapy 8", "[grow,fill,0::]"));
        left.add(forms.get(0).panel());
        left.add(otherLines.panel(), "wmin 0");
        left.add(tableHead("section.fills", fills.table(), "fills.remove", entry.fills(), fillUnits()), "gaptop 2");
        left.add(new WrappedText("hint.fills", "quiet", texts.get("hint.fills")), "wmin 0");
        left.add(fills.table().scrolled());
        left.add(fillLines.panel(), "wmin 0");
        left.add(forms.get(1).panel());
        dialSection.add(Form.heading(texts.get("section.dial"), "h2"), "gaptop 14");
        dialSection.add(forms.get(2).panel());
        dialSection.add(
                tableHead("section.points", points.table(), "points.remove", entry.points(), new JLabel()), "gaptop 6");
        dialSection.add(new WrappedText("hint.points", "quiet", texts.get("hint.points")), "wmin 0");
        dialSection.add(points.table().scrolled());
        dialSection.add(pointLines.panel(), "wmin 0");
        dialSection.add(forms.get(3).panel());
        left.add(dialSection);
        columnSection.add(Form.heading(texts.get("section.column"), "h2"), "gaptop 14");
        columnSection.add(new WrappedText("hint.column", "quiet", texts.get("hint.column")), "wmin 0");
        columnSection.add(forms.get(4).panel());
        left.add(columnSection);
        JScrollPane scroll = left.scrolled();
        scroll.setName("entry.form");
        return scroll;
    }

    private JPanel tableHead(String key, RowTable<?> table, String remove, TypedRows rows, JComponent unit) {
        JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[grow,0::][]8[]"));
        JLabel title = Form.heading(texts.get(key), "h2");
        title.setLabelFor(table);
        head.add(title, "wmin 0");
        head.add(unit);
        head.add(Commands.button(remove, remover(table, rows)));
        return head;
    }

    /** Makes the command that takes the selected row away; control and delete do so too. */
    private Action remover(RowTable<?> table, TypedRows rows) {
        Action remove = Commands.of(texts.get("action.remove-row"), () -> {
            table.finishTyping();
            int[] chosen = table.getSelectedRows();
            int column = table.getSelectedColumn();
            for (int at = chosen.length - 1; at >= 0; at--) {
                if (!rows.isFoot(chosen[at])) {
                    rows.remove(chosen[at]);
                }
            }
            table.changeSelection(chosen[0], column, false, false);
        });
        table.on("ctrl DELETE", remove);
        remove.setEnabled(false);
        table.getSelectionModel()
                .addListSelectionListener(event ->
                        remove.setEnabled(table.getSelectedRow() >= 0 && !rows.isFoot(table.getSelectedRow())));
        return remove;
    }

    private JScrollPane right() {
        TallPanel right =
                new TallPanel(new MigLayout("insets 0 0 8 4, fillx, wrap 1, hidemode 3, gapy 8", "[grow,fill,0::]"));
        // Beside the form, so that nothing is moved that is being typed in.
        right.add(newerText, "wmin 0");
        right.add(cautions.component(), "wmin 0");
        right.add(Form.heading(texts.get("section.results"), "h2"));
        right.add(results.panel(), "wmin 0");
        right.add(plot.component(), "wmin 0, gaptop 10, h " + PLOT_HEIGHT + "!");
        return right.scrolled();
    }

    /** Takes over what is being typed in a cell. */
    void finishTyping() {
        fills.table().finishTyping();
        points.table().finishTyping();
    }

    void focusFirst() {
        forms.get(0).field(CalibrationColumns.CALIBRATED_ON.field()).requestFocusInWindow();
    }

    /** Shows the draft, its problems and what it tells. */
    void refresh() {
        if (!entry.isOpen()) {
            return;
        }
        newerText.say(newer.words());
        forms.forEach(ColumnForm::pull);
        fillUnit.setSelectedItem(entry.draft().unit(CalibrationColumns.FILLS));
        fillTemperatureUnit.setSelectedItem(entry.shownUnit(CalibrationColumns.FILL_WATER));
        fills.refresh();
        points.refresh();
        MeterType type = entry.story().orElseThrow().meter().value().type();
        cautions.show(type);
        dialSection.setVisible(type == MeterType.B);
        columnSection.setVisible(type == MeterType.A);
        List<Problem> others = entry.shownProblems();
        for (ColumnForm form : forms) {
            others = form.show(others);
        }
        fillLines.show(of(FILLS, others));
        pointLines.show(of(POINTS, others));
        otherLines.show(others.stream()
                .filter(problem ->
                        !problem.field().startsWith(FILLS) && !problem.field().startsWith(POINTS))
                .toList());
        int errors = entry.errorsInTheWay();
        refusal.say(errors == 0 ? "" : texts.get("save.refused", errors));
        heading.setText(entry.base()
                .map(version -> texts.get("entry.correct", version.value().id().text()))
                .orElseGet(() -> texts.get(
                        "entry.new",
                        entry.story().orElseThrow().meter().value().id().text())));
        showResults();
    }

    private static List<Problem> of(String table, List<Problem> problems) {
        return problems.stream()
                .filter(problem -> problem.field().startsWith(table))
                .toList();
    }

    /** Shows what the draft tells so far, its plot in the look of the theme. */
    void showResults() {
        entry.reading().ifPresent(this::show);
    }

    private void show(CalibrationReading reading) {
        List<String> said = model.words().all(reading.results(), reading.drift());
        results.show(said.isEmpty() ? List.of(texts.get("results.none")) : said);
        Optional<DialCalibration> dial = reading.results().dial();
        plot.component().setVisible(dial.isPresent());
        dial.ifPresent(known ->
                plot.show(StoryPlots.dial(entry.draft().text(CalibrationColumns.ID), known), Looks.now()));
    }
}
