package porebench.desk.meter;

import java.awt.Rectangle;
import java.util.List;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import porebench.desk.form.WideTable;
import porebench.evidence.JudgedCalibration;
import porebench.method.Texts;

/** The calibrations of a meter, the newest first; one of them is chosen. */
final class HistoryTable {
    private static final int[] WIDTHS = {92, 104, 92, 76, 112, 92, 84, 72, 112};
    private static final List<String> KEYS =
            List.of("date", "by", "reason", "bowl", "dial", "error", "chamber", "drift", "verdict");
    private static final List<String> NUMBERS = List.of("bowl", "error", "chamber", "drift");

    private final MeterModel model;
    private final DefaultTableModel rows = new DefaultTableModel() {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean isCellEditable(int row, int column) {
            return false;
        }
    };
    private final WideTable table;
    private final JScrollPane scrolled;
    private List<List<String>> shown = List.of();
    private boolean showing;

    HistoryTable(MeterModel model) {
        this.model = model;
        Texts texts = model.texts();
        KEYS.forEach(key -> rows.addColumn(texts.get("history." + key)));
        table = new WideTable("calibrations", rows);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getAccessibleContext().setAccessibleName(texts.get("section.history"));
        for (int column = 0; column < WIDTHS.length; column++) {
            boolean isNumber = NUMBERS.contains(KEYS.get(column));
            table.setColumn(column, WIDTHS[column], isNumber);
            DefaultTableCellRenderer cell = new DefaultTableCellRenderer();
            cell.setHorizontalAlignment(isNumber ? SwingConstants.TRAILING : SwingConstants.LEADING);
            table.getColumnModel().getColumn(column).setCellRenderer(cell);
        }
        table.getSelectionModel().addListSelectionListener(event -> {
            int row = table.getSelectedRow();
            if (!showing && !event.getValueIsAdjusting() && row >= 0) {
                model.choose(model.calibrations().get(row).calibration().value().id());
            }
        });
        scrolled = table.scrolled();
    }

    JScrollPane component() {
        return scrolled;
    }

    /** Brings the chosen calibration into sight, the keyboard on it. */
    void reveal() {
        int row = table.getSelectedRow();
        if (row >= 0) {
            table.requestFocusInWindow();
            scrolled.scrollRectToVisible(new Rectangle(scrolled.getSize()));
            table.scrollRectToVisible(table.getCellRect(row, 0, true));
        }
    }

    void refresh() {
        showing = true;
        HistoryRow words = new HistoryRow(model);
        List<JudgedCalibration> calibrations = model.calibrations();
        List<List<String>> cells = calibrations.stream().map(words::of).toList();
        if (!cells.equals(shown)) {
            shown = cells;
            rows.setRowCount(0);
            cells.forEach(row -> rows.addRow(row.toArray()));
            scrolled.revalidate();
        }
        model.chosen().map(calibrations::indexOf).filter(row -> row >= 0).ifPresent(row -> {
            if (table.getSelectedRow() != row) {
                table.setRowSelectionInterval(row, row);
            }
        });
        showing = false;
    }
}
