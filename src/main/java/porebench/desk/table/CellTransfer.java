package porebench.desk.table;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.TransferHandler;
import org.jspecify.annotations.Nullable;

/**
 * Copies what is selected in a table as a spreadsheet takes it: the headings, then a line a row, cells between tabulators; and
 * takes the same into a table to type in.
 */
final class CellTransfer extends TransferHandler {
    private static final long serialVersionUID = 1L;
    private static final String BETWEEN = "\t";

    @Override
    public int getSourceActions(JComponent table) {
        return COPY;
    }

    @Override
    protected @Nullable Transferable createTransferable(JComponent component) {
        RowTable<?> table = (RowTable<?>) component;
        List<String> lines = new ArrayList<>();
        lines.add(line(table, table::getColumnName));
        for (int row : table.getSelectedRows()) {
            lines.add(line(table, column -> table.words(row, column)));
        }
        return lines.size() == 1 ? null : new StringSelection(String.join("\n", lines));
    }

    private static String line(RowTable<?> table, IntFunction<String> cell) {
        IntStream columns = table.getColumnSelectionAllowed()
                ? IntStream.of(table.getSelectedColumns())
                : IntStream.range(0, table.getColumnCount());
        return columns.mapToObj(cell).map(text -> text.replaceAll("\\s", " ")).collect(Collectors.joining(BETWEEN));
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return !support.isDrop()
                && support.isDataFlavorSupported(DataFlavor.stringFlavor)
                && ((RowTable<?>) support.getComponent()).isTyped();
    }

    @Override
    public boolean importData(TransferSupport support) {
        if (!canImport(support)) {
            return false;
        }
        try {
            String text = (String) support.getTransferable().getTransferData(DataFlavor.stringFlavor);
            List<List<String>> lines = text.lines()
                    .map(line -> Stream.of(line.split(BETWEEN, -1))
                            .map(String::strip)
                            .toList())
                    .toList();
            ((RowTable<?>) support.getComponent()).paste(lines);
            return true;
        } catch (UnsupportedFlavorException | IOException gone) {
            // Whoever offered the text has taken it back meanwhile.
            return false;
        }
    }
}
