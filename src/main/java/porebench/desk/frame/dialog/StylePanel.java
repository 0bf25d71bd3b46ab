package porebench.desk.frame.dialog;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Choices;
import porebench.desk.form.Form;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.desk.table.TableMemory;
import porebench.evidence.intake.SheetLook;
import porebench.evidence.intake.SheetStyle;
import porebench.method.Texts;

/** The choice how files are to be read, with the first rows of each of them as they would be. */
final class StylePanel {
    private static final int ROWS = 7;
    private static final int WIDTH_IN_ROWS = 24;

    private final JPanel panel = new JPanel(new MigLayout("insets 0, wrap 4", "[][]20[][grow]", ""));
    private final JPanel rows = new JPanel(new BorderLayout());
    private final Texts texts;
    private final ImportRead read;
    private final SheetStyle before;
    private SheetStyle style;
    private Path file;
    private Consumer<Boolean> changed = isOther -> {};

    StylePanel(ImportRead read, Texts texts) {
        this.texts = texts;
        this.read = read;
        file = read.otherwise().keySet().iterator().next();
        before = read.style();
        style = before;
        JComboBox<SheetStyle.Apart> apart = Choices.of(
                "import.apart",
                List.of(SheetStyle.Apart.values()),
                one -> texts.get("import.apart." + one.symbol()),
                one -> choose(new SheetStyle(one, style.decimal())));
        JComboBox<SheetStyle.Decimal> decimal = Choices.of(
                "import.decimal",
                List.of(SheetStyle.Decimal.values()),
                one -> texts.get("import.decimal." + one.symbol()),
                one -> choose(new SheetStyle(style.apart(), one)));
        apart.setPrototypeDisplayValue(SheetStyle.Apart.SEMICOLON);
        decimal.setPrototypeDisplayValue(SheetStyle.Decimal.COMMA);
        apart.setSelectedItem(style.apart());
        decimal.setSelectedItem(style.decimal());
        panel.add(Form.label(texts.get("import.apart"), apart));
        panel.add(apart);
        panel.add(Form.label(texts.get("import.decimal"), decimal));
        panel.add(decimal);
        if (read.otherwise().size() > 1) {
            addFiles();
        }
        panel.add(rows, "span 4, grow, push, gaptop 2");
        show();
    }

    private void addFiles() {
        JComboBox<Path> files =
                Choices.of("import.shown", List.copyOf(read.otherwise().keySet()), ImportModel::name, one -> {
                    file = one;
                    show();
                });
        panel.add(Form.label(texts.get("import.shown"), files));
        panel.add(files, "span 3, growx, wmin 0");
    }

    JComponent component() {
        return panel;
    }

    /** Returns how the files are to be read, as chosen here. */
    SheetStyle style() {
        return style;
    }

    /** Tells now and after every choice whether it is another one than the files were read by. */
    void onChange(Consumer<Boolean> listener) {
        changed = listener;
        changed.accept(!style.equals(before));
    }

    private void choose(SheetStyle other) {
        style = other;
        changed.accept(!style.equals(before));
        show();
    }

    private void show() {
        SheetLook look = Objects.requireNonNull(read.otherwise().get(file));
        List<List<String>> all = look.firstRows().getOrDefault(style, List.of());
        List<String> heading = all.isEmpty() ? List.of() : all.get(0);
        List<ShownColumn<List<String>>> columns = new ArrayList<>();
        IntStream.range(0, heading.size())
                .forEach(index -> columns.add(
                        new ShownColumn<>(heading.get(index), 0, row -> index < row.size() ? row.get(index) : "")));
        RowTable<List<String>> table = new RowTable<>("import.rows", texts.get("import.rows"), columns);
        TableMemory.apart(table, heading);
        table.show(all.isEmpty() ? List.of() : all.subList(1, all.size()));
        table.fitColumns();
        JScrollPane scroll = table.scrolled();
        int unit = table.getRowHeight();
        scroll.setPreferredSize(new Dimension(WIDTH_IN_ROWS * unit, ROWS * unit));
        rows.removeAll();
        rows.add(scroll);
        rows.revalidate();
        rows.repaint();
    }
}
