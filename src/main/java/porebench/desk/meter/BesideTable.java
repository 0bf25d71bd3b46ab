package porebench.desk.meter;

import java.util.List;
import java.util.Optional;
import javax.swing.JScrollPane;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import porebench.desk.form.WideTable;
import porebench.method.Texts;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.DialCurve;

/** The readings of a dial beside what the model predicts of the same air. */
final class BesideTable {
    private static final int WIDTH = 110;
    private static final List<String> KEYS = List.of("true", "reading", "error", "uncertainty", "model", "verdict");
    private static final int DECIMALS = 2;
    private static final double COVERAGE = 2;

    private final MeterModel model;
    private final DefaultTableModel rows = new DefaultTableModel() {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean isCellEditable(int row, int column) {
            return false;
        }
    };
    private final JScrollPane scrolled;
    private Optional<DialCalibration> shown = Optional.empty();

    BesideTable(MeterModel model) {
        this.model = model;
        Texts texts = model.texts();
        KEYS.forEach(key -> rows.addColumn(texts.get("beside." + key)));
        WideTable table = new WideTable("beside", rows);
        table.getAccessibleContext().setAccessibleName(texts.get("section.beside"));
        for (int column = 0; column < KEYS.size(); column++) {
            boolean isNumber = column < KEYS.size() - 1;
            table.setColumn(column, WIDTH, isNumber);
            DefaultTableCellRenderer cell = new DefaultTableCellRenderer();
            cell.setHorizontalAlignment(isNumber ? SwingConstants.TRAILING : SwingConstants.LEADING);
            table.getColumnModel().getColumn(column).setCellRenderer(cell);
        }
        scrolled = table.scrolled();
    }

    JScrollPane component() {
        return scrolled;
    }

    void refresh() {
        Optional<DialCalibration> dial = model.shownDial();
        if (dial.equals(shown)) {
            return;
        }
        shown = dial;
        rows.setRowCount(0);
        dial.ifPresent(known -> known.curve().knots().forEach(knot -> add(known, knot)));
        scrolled.revalidate();
    }

    private void add(DialCalibration dial, DialCurve.Knot knot) {
        CalibrationWords words = model.words();
        rows.addRow(new Object[] {
            words.plain(knot.truePercent(), DECIMALS),
            words.plain(knot.readingPercent(), DECIMALS),
            words.signed(knot.errorPercent(), DECIMALS),
            words.plain(COVERAGE * knot.standardUncertaintyPercent(), DECIMALS),
            words.plain(dial.predictedReading(knot.truePercent()), DECIMALS),
            model.texts().get(dial.curve().passes(knot) ? "verdict.passes" : "verdict.fails")
        });
    }
}
