package porebench.desk.table;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javax.swing.Action;
import javax.swing.DefaultRowSorter;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableCellEditor;
import javax.swing.table.TableColumn;
import org.jspecify.annotations.Nullable;

/**
 * A table of stated columns, as high as its rows, within a page that scrolls up and down: it fills the width when there is room
 * and scrolls sideways when there is not.
 *
 * <p>Where nothing can be typed in, Tab leaves the table and the arrow keys move within it. Typing into a cell replaces what
 * stands there; a cell being edited when something else is clicked keeps what was typed. A cell too narrow for its text says all
 * of it when pointed at. What is selected is copied with the headings.
 *
 * @param <R> what stands in a row
 */
public final class RowTable<R> extends JTable {
    private static final long serialVersionUID = 1L;
    private static final int LEAST_WIDTH = 200;

    private final ShownRows<R> rows;
    private final transient DefaultRowSorter<ShownRows<R>, Integer> sorter;
    private transient Consumer<Runnable> pasting = Runnable::run;
    private transient BooleanSupplier moreRows = () -> false;
    private transient Consumer<List<String>> leftOver = left -> {};
    private int mostRows = Integer.MAX_VALUE;
    private boolean showing;

    /**
     * Makes a table without rows.
     *
     * @param name the component's name
     * @param title what it is called to those who hear it read
     */
    public RowTable(String name, String title, List<ShownColumn<R>> columns) {
        this(name, title, new ShownRows<>(columns));
    }

    private RowTable(String name, String title, ShownRows<R> rows) {
        super(rows);
        this.rows = rows;
        this.sorter = rows.sorter();
        setName(name);
        SpokenCells.name(this, title);
        setSurrendersFocusOnKeystroke(true);
        setFillsViewportHeight(true);
        setTransferHandler(new CellTransfer());
        getTableHeader().setReorderingAllowed(false);
        putClientProperty("terminateEditOnFocusLost", true);
        for (int column = 0; column < rows.columns().size(); column++) {
            setUp(getColumnModel().getColumn(column), rows.columns().get(column));
        }
        if (isTyped()) {
            setCellSelectionEnabled(true);
            CellTyping.leaveByTab(this);
        } else {
            setRowSorter(rows.columns().stream().anyMatch(ShownColumn::isSorted) ? sorter : null);
            setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
            setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        }
    }

    private void setUp(TableColumn place, ShownColumn<R> column) {
        int alignment = column.isNumber() ? SwingConstants.TRAILING : SwingConstants.LEADING;
        place.setCellRenderer(column.isWrapped() ? new WrappedCell() : new ShownCell<>(column, rows));
        column.editor().ifPresent(place::setCellEditor);
        place.setHeaderRenderer((table, value, isSelected, hasFocus, row, at) -> {
            Component heading = table.getTableHeader()
                    .getDefaultRenderer()
                    .getTableCellRendererComponent(table, value, isSelected, hasFocus, row, at);
            if (heading instanceof JLabel label) {
                label.setHorizontalAlignment(alignment);
            }
            return heading;
        });
        place.setPreferredWidth(Math.max(UIScale.scale(column.widthPixels()), ColumnWidths.heading(this, place)));
    }

    /** Makes every column just as wide as what stands in it. */
    public void fitColumns() {
        for (int at = 0; at < getColumnCount(); at++) {
            ColumnWidths.fit(this, at);
        }
    }

    /** Shows only the rows in which every word occurs somewhere, letter case not mattering. */
    void filter(String sought) {
        showing = true;
        try {
            if (getRowSorter() == null) {
                sorter.allRowsChanged(); // those that came before it
                setRowSorter(sorter);
            }
            rows.filter(sorter, sought, getLocale());
        } finally {
            showing = false;
        }
        if (scroll() instanceof JComponent around) {
            around.revalidate();
        }
    }

    /** A letter struck on a closed cell to choose in chooses what begins with it. */
    @Override
    protected boolean processKeyBinding(KeyStroke stroke, KeyEvent event, int condition, boolean pressed) {
        boolean wasEditing = isEditing();
        boolean isDone = super.processKeyBinding(stroke, event, condition, pressed);
        boolean isBegun = !wasEditing && isEditing() && Character.isLetterOrDigit(event.getKeyChar());
        if (isBegun && getEditorComponent() instanceof JComboBox<?> box && !box.isEditable()) {
            box.selectWithKeyChar(event.getKeyChar());
            event.consume();
            return true;
        }
        return isDone;
    }

    /** Lets the table be as high as its rows up to some number of them; with more it scrolls within itself. */
    public void setMostRows(int count) {
        mostRows = count;
    }

    @Override
    protected JTableHeader createDefaultTableHeader() {
        return new JTableHeader(getColumnModel()) {
            private static final long serialVersionUID = 1L;

            @Override
            public String getToolTipText(MouseEvent event) {
                int column = columnAtPoint(event.getPoint());
                return column < 0
                        ? ""
                        : rows.columns()
                                .get(RowTable.this.convertColumnIndexToModel(column))
                                .tip();
            }
        };
    }

    // Rows and selection.

    /** Shows some rows and the headings as they are now; a cell being typed in stays open unless rows go. */
    public void show(List<R> shown) {
        int before = getRowCount();
        showing = true;
        try {
            rows.show(shown);
            for (int column = 0; column < getColumnCount(); column++) {
                getColumnModel().getColumn(column).setHeaderValue(getColumnName(column));
            }
        } finally {
            showing = false;
        }
        getTableHeader().repaint();
        if (getRowCount() != before && scroll() instanceof JComponent around) {
            around.revalidate();
        }
    }

    private @Nullable Container scroll() {
        return SwingUtilities.getAncestorOfClass(JScrollPane.class, this);
    }

    /** Returns the rows on view, in the order in which they were given. */
    public List<R> shown() {
        return rows.all();
    }

    /** Returns the selected row. */
    public Optional<R> selected() {
        int row = getSelectedRow();
        return row < 0 ? Optional.empty() : Optional.of(rowAt(row));
    }

    R rowAt(int row) {
        return rows.all().get(convertRowIndexToModel(row));
    }

    /** Selects the first row of some kind, or nothing where there is none; nobody is told. */
    public void select(Predicate<R> wanted) {
        int row = -1;
        for (int at = rows.all().size() - 1; at >= 0; at--) {
            row = wanted.test(rows.all().get(at)) && convertRowIndexToView(at) >= 0 ? convertRowIndexToView(at) : row;
        }
        showing = true;
        try {
            if (row < 0) {
                clearSelection();
            } else if (getSelectedRow() != row) {
                setRowSelectionInterval(row, row);
            }
        } finally {
            showing = false;
        }
    }

    /** Calls back with the one row that a person selected; empty when they took the selection away. */
    public void onSelect(Consumer<Optional<R>> chosen) {
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getSelectionModel().addListSelectionListener(event -> {
            if (!showing && !event.getValueIsAdjusting()) {
                chosen.accept(selected());
            }
        });
    }

    /** Lets a key do something while the table or a cell of it has the keyboard. */
    public void on(String key, Action action) {
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), action);
        getActionMap().put(action, action);
    }

    /** Brings the selected row into sight, the keyboard on it. */
    public void reveal() {
        int row = getSelectedRow();
        if (row >= 0) {
            requestFocusInWindow();
            if (scroll() instanceof JComponent around) {
                around.scrollRectToVisible(new Rectangle(around.getSize()));
            }
            scrollRectToVisible(getCellRect(row, 0, true));
        }
    }

    /** Takes over what is being typed in a cell. */
    public void finishTyping() {
        if (isEditing() && !getCellEditor().stopCellEditing()) {
            getCellEditor().cancelCellEditing();
        }
    }

    /**
     * Says how the cells that are pasted are taken.
     *
     * @param together does all of it, as one step
     * @param more adds a row behind the last, and returns whether it did
     * @param left gets the cells that found no place, or that the column does not know
     */
    public void pasteBy(Consumer<Runnable> together, BooleanSupplier more, Consumer<List<String>> left) {
        pasting = together;
        moreRows = more;
        leftOver = left;
    }

    boolean isTyped() {
        return rows.columns().stream().anyMatch(ShownColumn::isEdited);
    }

    /** Types some cells from the selected one on, headings above them apart; what could not be typed is told. */
    void paste(List<List<String>> lines) {
        int top = Math.max(0, getSelectedRow());
        int left = Math.max(0, getSelectedColumn());
        finishTyping();
        List<String> over = new ArrayList<>();
        pasting.accept(() -> {
            int row = top;
            for (List<String> line : lines) {
                if (row == top && lines.size() > 1 && isHeadings(line)) {
                    continue;
                }
                boolean isThere = row < getRowCount() || moreRows.getAsBoolean();
                for (int at = 0; at < line.size(); at++) {
                    if (!isThere || !take(row, left + at, line.get(at))) {
                        over.add(line.get(at));
                    }
                }
                row++;
            }
        });
        over.removeIf(String::isEmpty);
        if (!over.isEmpty()) {
            leftOver.accept(over);
        }
    }

    /** Returns whether a cell took a text, or says it already. */
    private boolean take(int row, int column, String text) {
        if (column >= getColumnCount()) {
            return false;
        }
        return isCellEditable(row, column)
                ? rows.take(text, convertRowIndexToModel(row), convertColumnIndexToModel(column))
                : words(row, column).equals(text);
    }

    /** Returns whether a line is the headings that a copy has over its cells, of whichever columns it was made. */
    private boolean isHeadings(List<String> line) {
        return IntStream.rangeClosed(0, getColumnCount() - line.size())
                .anyMatch(first -> IntStream.range(0, line.size())
                        .allMatch(at -> getColumnName(first + at).equals(line.get(at))));
    }

    // How it looks.

    /** Returns the whole text of a cell too narrow for it, where the cell has no tip of its own. */
    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        @Nullable String tip = super.getToolTipText(event);
        int row = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint());
        if (tip != null || row < 0 || column < 0) {
            return tip;
        }
        Component shown = prepareRenderer(getCellRenderer(row, column), row, column);
        boolean isCut = shown.getPreferredSize().width > getCellRect(row, column, false).width;
        return isCut && shown instanceof JLabel label ? label.getText() : null;
    }

    /**
     * Returns the table in its sideways scroll bar; turning the wheel goes on to the page, unless there are more rows. Where nothing
     * is typed in, the line that filters it stands within, above the headings: over many rows, and when it is called.
     */
    public JScrollPane scrolled() {
        return new SidewaysScroll(this, !isTyped());
    }

    /** Returns the same where some cells are typed in, but all rows are there from the beginning. */
    public JScrollPane filtered() {
        return new SidewaysScroll(this, true);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        TableMemory.attach(this);
    }

    /** How high wrapped words are follows from how wide their column is. */
    @Override
    public void doLayout() {
        boolean isDragged = getTableHeader().getResizingColumn() != null;
        if (!isDragged && getWidth() < getPreferredSize().width) {
            ColumnWidths.narrow(this);
        } else {
            super.doLayout();
        }
        if (RowHeights.wrap(this) && scroll() instanceof JComponent around) {
            // Not now: in the middle of a layout nobody would notice.
            SwingUtilities.invokeLater(around::revalidate);
        }
    }

    /** Returns the words that stand in a cell, not the symbol behind them. */
    String words(int row, int column) {
        return rows.columns()
                .get(convertColumnIndexToModel(column))
                .words(rows.all().get(convertRowIndexToModel(row)));
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        Container viewport = getParent();
        return viewport == null
                || getPreferredSize().width < viewport.getWidth()
                || ColumnWidths.canNarrow(this, viewport.getWidth());
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        int rowsHigh = getRowCount() > mostRows ? mostRows * getRowHeight() : getPreferredSize().height;
        int height = Math.max(getRowHeight(), rowsHigh);
        return new Dimension(LEAST_WIDTH, height);
    }

    @Override
    public Component prepareEditor(TableCellEditor editor, int row, int column) {
        return SpokenCells.typed(this, super.prepareEditor(editor, row, column), getColumnName(column));
    }
}
