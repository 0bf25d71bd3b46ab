package porebench.desk.frame.dialog;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.TwoVersions;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.book.Stamp;

/**
 * Shows two versions of a record side by side, a line each in which they differ, and takes one of the two in each: with the arrow
 * keys and the space bar or Enter, or with the mouse. At first what one changed alone is taken, and of what both changed yours.
 */
final class BothDialog {
    private static final int WIDTH = 840;
    private static final int HEIGHT = 330;
    private static final int LEAST_HEIGHT = 80;
    private static final int LINE_HEIGHT = 34;
    private static final int NAME_WIDTH = 190;
    private static final int CELL_WIDTH = 205;
    private static final int THEIRS = 2;
    private static final int YOURS = 3;
    private static final String TAKEN = "\u25CF ";
    private static final String LEFT = "\u25CB ";

    private final Texts texts;
    private final List<TwoVersions.Line> lines;
    private final List<Boolean> takesTheirs;
    private final RowTable<Integer> table;

    BothDialog(Texts texts, List<TwoVersions.Line> lines) {
        this.texts = texts;
        this.lines = lines;
        this.takesTheirs =
                new ArrayList<>(lines.stream().map(TwoVersions.Line::isTheirs).toList());
        table = new RowTable<>(
                "both",
                texts.get("ask.both.title"),
                List.of(
                        new ShownColumn<Integer>(
                                        texts.get("ask.both.line"),
                                        NAME_WIDTH,
                                        row -> lines.get(row).name())
                                .wrapped(),
                        new ShownColumn<Integer>(
                                        texts.get("ask.both.before"),
                                        CELL_WIDTH,
                                        row -> said(lines.get(row).before()))
                                .wrapped(),
                        new ShownColumn<Integer>(
                                        texts.get("ask.both.theirs"),
                                        CELL_WIDTH,
                                        row -> choice(
                                                takesTheirs.get(row),
                                                lines.get(row).theirs()))
                                .wrapped(),
                        new ShownColumn<Integer>(
                                        texts.get("ask.both.yours"),
                                        CELL_WIDTH,
                                        row -> choice(
                                                !takesTheirs.get(row),
                                                lines.get(row).yours()))
                                .wrapped()));
        table.setCellSelectionEnabled(true);
        table.on("SPACE", Commands.of("", this::take));
        table.on("ENTER", Commands.of("", this::take));
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseReleased(MouseEvent event) {
                int column = table.convertColumnIndexToModel(table.columnAtPoint(event.getPoint()));
                if (SwingUtilities.isLeftMouseButton(event)
                        && column >= THEIRS
                        && table.rowAtPoint(event.getPoint()) >= 0) {
                    take();
                }
            }
        });
        show();
        table.changeSelection(0, takesTheirs.get(0) ? THEIRS : YOURS, false, false);
    }

    private String said(String text) {
        return text.isEmpty() ? texts.get("ask.both.nothing") : text;
    }

    private String choice(boolean isTaken, String text) {
        return (isTaken ? TAKEN : LEFT) + said(text);
    }

    private void show() {
        table.show(IntStream.range(0, lines.size()).boxed().toList());
    }

    /** Takes the version of the selected cell; on the name of a line, or on what was before, the other one. */
    private void take() {
        int shownIn = table.getSelectedColumn();
        int column = table.convertColumnIndexToModel(shownIn);
        table.selected().ifPresent(line -> {
            boolean isTheirs = column == THEIRS || column != YOURS && !takesTheirs.get(line);
            takesTheirs.set(line, isTheirs);
            show();
            table.select(line::equals);
            table.changeSelection(table.getSelectedRow(), shownIn, false, false);
        });
    }

    /** Asks, and returns whether theirs is taken, one a line; empty when the person thought better of it. */
    Optional<List<Boolean>> ask(JComponent over, String record, Stamp theirs, int number, ZoneId zone) {
        JPanel content = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill]", "[]10[grow,fill]10[]"));
        content.add(wide(texts.get(
                "ask.both.who",
                theirs.who(),
                Integer.toString(number),
                record,
                Days.show(theirs.at(), zone),
                theirs.why())));
        JScrollPane scroll = table.scrolled();
        int high = Math.min(HEIGHT, LEAST_HEIGHT + lines.size() * LINE_HEIGHT);
        scroll.setPreferredSize(new Dimension(UIScale.scale(WIDTH), UIScale.scale(high)));
        content.add(scroll, "hmin 120, push, grow");
        JTextArea keys = wide(texts.get("ask.both.keys"));
        keys.putClientProperty("FlatLaf.styleClass", "quiet");
        content.add(keys);
        AskDialog dialog = new AskDialog(over, texts.get("ask.both.title"), content);
        dialog.button("goOn", texts.get("ask.both.go-on"));
        dialog.button("cancel", texts.get("ask.both.cancel"));
        SwingUtilities.invokeLater(table::requestFocusInWindow);
        return dialog.ask() == 0 ? Optional.of(List.copyOf(takesTheirs)) : Optional.empty();
    }

    /** A text area knows its height only once it knows its width. */
    private static JTextArea wide(String words) {
        JTextArea text = AskDialog.text(words);
        text.setColumns(0);
        text.setSize(UIScale.scale(WIDTH), Short.MAX_VALUE);
        return text;
    }
}
