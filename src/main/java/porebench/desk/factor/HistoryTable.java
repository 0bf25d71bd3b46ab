package porebench.desk.factor;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import porebench.desk.form.Numbers;
import porebench.desk.form.WideTable;
import porebench.method.Texts;
import porebench.record.FactorIssue;

/** All revisions of the factor, the newest on top; the selected one's card is looked at. */
final class HistoryTable {
    private static final List<String> COLUMNS = List.of(
            "history.revision",
            "history.action",
            "history.factor",
            "history.from",
            "history.recheck",
            "history.issued",
            "history.approved",
            "history.reason");
    private static final int[] WIDTHS = {50, 90, 80, 100, 100, 120, 120, 260};

    private final FactorModel model;
    private final Texts texts;
    private final Rows rows = new Rows();
    private final WideTable table;
    private final JComponent component;
    private List<FactorIssue> shown = List.of();
    private boolean filling;

    HistoryTable(FactorModel model, Texts texts, Runnable looked) {
        this.model = model;
        this.texts = texts;
        table = new WideTable("factor.history", rows);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        for (int column = 0; column < WIDTHS.length; column++) {
            table.setColumn(column, WIDTHS[column], false);
        }
        table.getSelectionModel().addListSelectionListener(event -> {
            int row = table.getSelectedRow();
            if (!filling && !event.getValueIsAdjusting() && row >= 0) {
                model.look(shown.get(row).revision());
                looked.run();
            }
        });
        component = table.scrolled();
    }

    JComponent component() {
        return component;
    }

    void refresh() {
        filling = true;
        try {
            List<FactorIssue> newest = model.revisions().stream()
                    .sorted((one, two) -> Integer.compare(two.revision(), one.revision()))
                    .toList();
            if (!newest.equals(shown)) {
                shown = newest;
                rows.fireTableDataChanged();
                component.revalidate();
            }
            int row = model.looked().map(shown::indexOf).orElse(-1);
            if (row >= 0 && row != table.getSelectedRow()) {
                table.setRowSelectionInterval(row, row);
            }
        } finally {
            filling = false;
        }
    }

    private final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return shown.size();
        }

        @Override
        public int getColumnCount() {
            return COLUMNS.size();
        }

        @Override
        public String getColumnName(int column) {
            return texts.get(COLUMNS.get(column));
        }

        @Override
        public Object getValueAt(int row, int column) {
            FactorIssue issue = shown.get(row);
            return switch (column) {
                case 0 -> Integer.toString(issue.revision());
                case 1 -> texts.get("action." + issue.action().name());
                case 2 -> texts.get("history.percent", new Numbers(texts.locale()).show(issue.factorPercent()));
                case 3 -> issue.inForceFrom().toString();
                case 4 -> issue.isIssue() ? issue.recheckBy().toString() : "";
                case 5 -> issue.issuedBy();
                case 6 -> issue.approvedBy();
                default -> issue.reason();
            };
        }
    }
}
