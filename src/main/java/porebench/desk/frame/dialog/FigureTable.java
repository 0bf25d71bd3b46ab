package porebench.desk.frame.dialog;

import java.awt.Component;
import java.util.List;
import java.util.Objects;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.UIManager;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.SourceText;
import porebench.method.Texts;

/** The figures of the profile on view: what, value, unit, mark, clause; the value of an own copy can be typed over. */
final class FigureTable extends AbstractTableModel {
    static final int VALUE = 1;
    private static final long serialVersionUID = 1L;
    private static final List<String> COLUMNS = List.of("what", "value", "unit", "mark", "clause");

    private final transient ProfileModel model;
    private final transient Texts texts;
    private final transient SourceText sources;
    private final transient FigureWords words;

    FigureTable(ProfileModel model, Texts texts) {
        this.model = model;
        this.texts = texts;
        this.sources = SourceText.in(texts.locale());
        this.words = new FigureWords(texts);
    }

    void refresh() {
        fireTableRowsUpdated(0, getRowCount() - 1);
    }

    static FigureName name(int row) {
        return FigureName.values()[row];
    }

    private boolean isWrong(int row) {
        return model.isOwn() && name(row).check(figure(row).value()).isPresent();
    }

    private Figure figure(int row) {
        return Objects.requireNonNull(model.figures().get(name(row)));
    }

    @Override
    public int getRowCount() {
        return FigureName.values().length;
    }

    @Override
    public int getColumnCount() {
        return COLUMNS.size();
    }

    @Override
    public String getColumnName(int column) {
        return texts.get("profile.column." + COLUMNS.get(column));
    }

    @Override
    public Object getValueAt(int row, int column) {
        Figure figure = figure(row);
        return switch (COLUMNS.get(column)) {
            case "what" -> texts.get(ProfileModel.wordsOf(name(row)));
            case "value" -> words.show(name(row), figure.value());
            case "unit" -> words.unit(name(row));
            case "mark" -> texts.get("mark." + figure.mark().symbol());
            default -> sources.say(figure.clause());
        };
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column == VALUE && model.isOwn();
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        model.change(name(row), words.keep(name(row), String.valueOf(value)));
    }

    /** Returns what draws a cell; a value that does not fit is outlined, and said in words under the table. */
    TableCellRenderer cell() {
        return new Cell();
    }

    private final class Cell extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
            super.getTableCellRendererComponent(table, value, isSelected, hasFocus, row, column);
            setToolTipText(String.valueOf(value));
            if (column == VALUE && isWrong(row)) {
                setBorder(BorderFactory.createLineBorder(UIManager.getColor("Component.error.focusedBorderColor"), 2));
            }
            return this;
        }
    }
}
