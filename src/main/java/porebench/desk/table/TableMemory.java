package porebench.desk.table;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Container;
import java.awt.Cursor;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.RootPaneContainer;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ListSelectionEvent;
import javax.swing.event.TableColumnModelEvent;
import javax.swing.event.TableColumnModelListener;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableColumn;
import javax.swing.table.TableColumnModel;
import porebench.desk.Settings;

/**
 * How wide a person made the columns of a table, and in which order they put them, kept from one day to the next. A double click
 * on the edge of a heading makes the column as wide as what stands in it.
 */
public final class TableMemory {
    private static final String AROUND = "porebench.tables";
    private static final String APART = "porebench.tables.apart";
    private static final String ATTACHED = "porebench.tables.attached";

    private final RowTable<?> table;
    private final Settings settings;
    private final String key;

    private TableMemory(RowTable<?> table, Settings settings, String key) {
        this.table = table;
        this.settings = settings;
        this.key = key;
    }

    /** Where tables stand that are remembered together. */
    private record Around(String name, Settings settings) {}

    /**
     * Lets all tables that ever stand in a page, or in the dialogs of a window, be as a person left them.
     *
     * @param within the page, or the root pane of the window
     * @param name of the page, or a word for the dialogs of the window
     */
    public static void keep(JComponent within, String name, Settings settings) {
        within.putClientProperty(AROUND, new Around(name, settings));
    }

    /** Lets a table remember its columns for one set of headings only, because it shows now these and now others. */
    public static void apart(RowTable<?> table, List<String> headings) {
        table.putClientProperty(APART, "." + Integer.toHexString(headings.hashCode()));
    }

    /** Lets a table that has come into a window be as a person left it; in no page or window that keeps any it stays as made. */
    static void attach(RowTable<?> table) {
        if (table.getClientProperty(ATTACHED) == null && table.getName() != null) {
            around(table).ifPresent(around -> {
                table.putClientProperty(ATTACHED, true);
                String apart = Objects.requireNonNullElse(table.getClientProperty(APART), "")
                        .toString();
                TableMemory memory = new TableMemory(
                        table, around.settings(), "table." + around.name() + "." + table.getName() + apart);
                memory.recall();
                memory.listen();
            });
        }
    }

    /** Returns the nearest page around a table, else the window it stands in or that the dialog belongs to. */
    private static Optional<Around> around(RowTable<?> table) {
        for (Container at = table.getParent(); at != null; at = at.getParent()) {
            Container shown = at instanceof RootPaneContainer window ? window.getRootPane() : at;
            if (shown instanceof JComponent page && page.getClientProperty(AROUND) instanceof Around around) {
                return Optional.of(around);
            }
        }
        return Optional.empty();
    }

    private void recall() {
        List<int[]> kept = new ArrayList<>();
        for (String one : settings.get(key, "").split(",", -1)) {
            String[] parts = one.split(":", -1);
            if (parts.length == 2 && parts[0].matches("\\d{1,3}") && parts[1].matches("\\d{1,4}")) {
                kept.add(new int[] {Integer.parseInt(parts[0]), Integer.parseInt(parts[1])});
            }
        }
        List<Integer> places = kept.stream().map(one -> one[0]).sorted().toList();
        if (!places.equals(IntStream.range(0, table.getColumnCount()).boxed().toList())) {
            // Nothing remembered, or of another set of columns.
            return;
        }
        TableColumnModel columns = table.getColumnModel();
        for (int at = 0; at < kept.size(); at++) {
            if (!table.isTyped()) {
                columns.moveColumn(table.convertColumnIndexToView(kept.get(at)[0]), at);
            }
            columns.getColumn(table.convertColumnIndexToView(kept.get(at)[0]))
                    .setPreferredWidth(UIScale.scale(kept.get(at)[1]));
        }
    }

    private void listen() {
        JTableHeader header = table.getTableHeader();
        // What is typed in keeps its columns in the order in which it is typed.
        header.setReorderingAllowed(!table.isTyped());
        table.getColumnModel().addColumnModelListener(new TableColumnModelListener() {
            @Override
            public void columnMarginChanged(ChangeEvent event) {
                if (header.getResizingColumn() != null) {
                    remember();
                }
            }

            @Override
            public void columnMoved(TableColumnModelEvent event) {
                if (event.getFromIndex() != event.getToIndex()) {
                    remember();
                }
            }

            @Override
            public void columnAdded(TableColumnModelEvent event) {
                // A table has the columns it was made with.
            }

            @Override
            public void columnRemoved(TableColumnModelEvent event) {
                // A table has the columns it was made with.
            }

            @Override
            public void columnSelectionChanged(ListSelectionEvent event) {
                // Which is selected is not kept.
            }
        });
        header.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                boolean isOnEdge = header.getCursor().getType() == Cursor.E_RESIZE_CURSOR;
                if (event.getClickCount() == 2 && isOnEdge) {
                    fit(header.columnAtPoint(event.getPoint()), event.getX());
                }
            }
        });
    }

    private void fit(int under, int x) {
        int middle = table.getTableHeader().getHeaderRect(under).x
                + table.getTableHeader().getHeaderRect(under).width / 2;
        int column = x < middle ? under - 1 : under;
        if (column >= 0) {
            ColumnWidths.fit(table, column);
            remember();
        }
    }

    private void remember() {
        List<TableColumn> columns = IntStream.range(0, table.getColumnCount())
                .mapToObj(table.getColumnModel()::getColumn)
                .toList();
        settings.put(
                key,
                columns.stream()
                        .map(column -> column.getModelIndex() + ":" + UIScale.unscale(column.getWidth()))
                        .collect(Collectors.joining(",")));
    }
}
