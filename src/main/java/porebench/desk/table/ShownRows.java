package porebench.desk.table;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.DefaultRowSorter;
import javax.swing.RowFilter;
import javax.swing.table.AbstractTableModel;

/** The rows of a table, as its columns say them. */
final class ShownRows<R> extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private final transient List<ShownColumn<R>> columns;
    private transient List<R> all = List.of();

    ShownRows(List<ShownColumn<R>> columns) {
        this.columns = List.copyOf(columns);
    }

    List<ShownColumn<R>> columns() {
        return columns;
    }

    List<R> all() {
        return all;
    }

    /** Shows other rows; a cell being typed in stays open, and the selection where it is, unless rows go. */
    void show(List<R> rows) {
        int before = all.size();
        all = List.copyOf(rows);
        if (all.size() < before) {
            fireTableDataChanged();
            return;
        }
        if (all.size() > before) {
            fireTableRowsInserted(before, all.size() - 1);
        }
        if (!all.isEmpty()) {
            fireTableRowsUpdated(0, all.size() - 1);
        }
    }

    @Override
    public int getRowCount() {
        return all.size();
    }

    @Override
    public int getColumnCount() {
        return columns.size();
    }

    @Override
    public String getColumnName(int column) {
        return columns.get(column).heading();
    }

    /** Returns what is typed or chosen in a cell; of a cell to read its words. */
    @Override
    public Object getValueAt(int row, int column) {
        return columns.get(column).typed(all.get(row));
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return columns.get(column).isOpen(all.get(row));
    }

    /** Takes what was typed; an editor that closes after its row went takes nothing. */
    @Override
    public void setValueAt(Object value, int row, int column) {
        take(String.valueOf(value), row, column);
    }

    /** Takes a text into a cell, and returns whether it was taken. */
    boolean take(String text, int row, int column) {
        return row < all.size() && columns.get(column).take(all.get(row), text);
    }

    /** Lets a sorter of these rows show only those in which every word occurs in some column. */
    void filter(DefaultRowSorter<ShownRows<R>, Integer> sorter, String sought, Locale locale) {
        List<String> wanted = Stream.of(sought.strip().toLowerCase(locale).split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
        sorter.setRowFilter(new RowFilter<ShownRows<R>, Integer>() {
            @Override
            public boolean include(Entry<? extends ShownRows<R>, ? extends Integer> entry) {
                String said = words(all.get(entry.getIdentifier())).toLowerCase(locale);
                return wanted.stream().allMatch(said::contains);
            }
        });
    }

    private String words(R row) {
        return columns.stream().map(column -> column.words(row)).collect(Collectors.joining("\n"));
    }

    /** Sorts by the values that columns state, where they state none by their words. */
    DefaultRowSorter<ShownRows<R>, Integer> sorter() {
        return new ByValue<>(this);
    }

    private static final class ByValue<R> extends DefaultRowSorter<ShownRows<R>, Integer> {
        ByValue(ShownRows<R> rows) {
            setModelWrapper(new ModelWrapper<>() {
                @Override
                public ShownRows<R> getModel() {
                    return rows;
                }

                @Override
                public int getColumnCount() {
                    return rows.getColumnCount();
                }

                @Override
                public int getRowCount() {
                    return rows.getRowCount();
                }

                @Override
                public Object getValueAt(int row, int column) {
                    return rows.columns.get(column).order(rows.all.get(row), Locale.ROOT);
                }

                @Override
                public Integer getIdentifier(int row) {
                    return row;
                }
            });
            for (int column = 0; column < rows.getColumnCount(); column++) {
                setSortable(column, rows.columns.get(column).isSorted());
                setComparator(column, Comparator.naturalOrder());
            }
            setSortsOnUpdates(true);
        }
    }
}
