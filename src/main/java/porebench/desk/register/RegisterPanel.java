package porebench.desk.register;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.HeadingWidth;
import porebench.desk.form.Numbers;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WideTable;
import porebench.desk.form.WrappedText;
import porebench.evidence.RegisterRow;
import porebench.method.Texts;
import porebench.record.id.MixId;

/** The factor register as a table, and under it what is missing for the chosen mix. */
final class RegisterPanel {
    private static final String STYLE = "FlatLaf.styleClass";

    private final JPanel panel = new JPanel(
            new MigLayout("insets 18 22 14 22, fill, wrap 1", "[grow,fill,0::]", "[]4[]12[]8[grow,fill]10[]"));
    private final DeskModel desk;
    private final RegisterModel model;
    private final Texts texts;
    private final Consumer<MixId> openMix;
    private final WrappedText summary = new WrappedText("register.summary", "quiet");
    private final JCheckBox filter = new JCheckBox();
    private final Rows<RegisterRow> rows;
    private final JTable table;
    private final JLabel missingTitle = new JLabel();
    private final ProblemLines missing;
    private final Action open;
    private boolean showing;

    RegisterPanel(DeskModel desk, RegisterModel model, Texts texts, Consumer<MixId> openMix) {
        this.desk = desk;
        this.model = model;
        this.texts = texts;
        this.openMix = openMix;
        rows = new Rows<>(columns());
        table = new WideTable("register.table", rows);
        missing = new ProblemLines("register.missing", desk.tools().problemText());
        open = Commands.of(texts.get("register.open"), this::openChosen);
        setUpTable();
        panel.setName("register.page");
        JLabel title = new JLabel(texts.get("register.title"));
        title.putClientProperty(STYLE, "h1");
        panel.add(title);
        panel.add(summary, "wmin 0");
        panel.add(bar());
        panel.add(new JScrollPane(table), "hmin 120");
        panel.add(details(), "hmin 90, hmax 200");
    }

    JComponent component() {
        return panel;
    }

    private List<ShownColumn<RegisterRow>> columns() {
        Numbers numbers = desk.tools().numbers();
        return List.of(
                new ShownColumn<>(texts.get("register.state"), 155, row -> model.stateWords(row.state())),
                new ShownColumn<>(
                        texts.get("register.mix"), 75, row -> row.mixId().text()),
                new ShownColumn<>(texts.get("register.mixTitle"), 175, RegisterRow::title),
                new ShownColumn<>(
                        texts.get("register.factor"),
                        50,
                        row -> row.factorPercent().map(numbers::show).orElse("")),
                new ShownColumn<>(
                        texts.get("register.revision"),
                        50,
                        row -> row.revision().map(Object::toString).orElse("")),
                new ShownColumn<>(
                        texts.get("register.since"),
                        95,
                        row -> row.inForceFrom().map(Days::show).orElse("")),
                new ShownColumn<>(
                        texts.get("register.recheck"),
                        95,
                        row -> row.recheckBy().map(Days::show).orElse("")),
                new ShownColumn<>(texts.get("register.trials"), 55, row -> Integer.toString(row.countedTrials())),
                new ShownColumn<>(texts.get("register.missing"), 170, model::missingWords));
    }

    private JComponent bar() {
        JPanel bar = new JPanel(new MigLayout("insets 0, fillx", "[grow][]", "[]"));
        filter.setName("register.attention");
        Action action = Commands.of(texts.get("register.attention"), this::filter);
        filter.setAction(action);
        JButton button = Commands.button("register.open", open);
        bar.add(filter);
        bar.add(button);
        return bar;
    }

    private void filter() {
        model.showOnlyAttention(filter.isSelected());
        refresh();
    }

    private JComponent details() {
        TallPanel details = new TallPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill,0::]", "[]6[]"));
        missingTitle.putClientProperty(STYLE, "h2");
        details.add(missingTitle, "wmin 0");
        details.add(missing.panel(), "wmin 0");
        return details.scrolled();
    }

    private void setUpTable() {
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_LAST_COLUMN);
        table.getAccessibleContext().setAccessibleName(texts.get("register.title"));
        List<ShownColumn<RegisterRow>> columns = columns();
        for (int column = 0; column < columns.size(); column++) {
            HeadingWidth.set(table, column, columns.get(column).width());
        }
        Rows.alignHeadings(table);
        table.getColumnModel().getColumn(0).setCellRenderer(new StateCell(rows));
        table.setDefaultRenderer(Object.class, new WholeTextCell());
        table.getSelectionModel().addListSelectionListener(event -> {
            int row = table.getSelectedRow();
            if (!showing && !event.getValueIsAdjusting() && row >= 0) {
                model.choose(rows.at(row).mixId());
                showMissing();
            }
        });
        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(KeyStroke.getKeyStroke("ENTER"), "openMix");
        table.getActionMap().put("openMix", open);
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2 && table.rowAtPoint(event.getPoint()) >= 0) {
                    openChosen();
                }
            }
        });
    }

    private void openChosen() {
        model.chosen().map(RegisterRow::mixId).ifPresent(openMix);
    }

    void refresh() {
        showing = true;
        summary.setText(model.summary());
        List<RegisterRow> lines = model.rows();
        if (!lines.equals(rows.shown())) {
            rows.show(lines);
        } else {
            table.repaint();
        }
        Optional<RegisterRow> chosen = model.chosen();
        if (chosen.isEmpty()) {
            table.clearSelection();
        } else {
            int row = lines.indexOf(chosen.get());
            table.setRowSelectionInterval(row, row);
        }
        showing = false;
        showMissing();
    }

    private void showMissing() {
        Optional<RegisterRow> chosen = model.chosen();
        open.setEnabled(chosen.isPresent());
        missing.show(chosen.map(RegisterRow::missing).orElse(List.of()));
        missingTitle.setText(
                chosen.isEmpty()
                        ? texts.get("register.choose")
                        : texts.get(
                                chosen.get().missing().isEmpty() ? "register.nothing-for" : "register.missing-for",
                                chosen.get().mixId().text()));
        panel.revalidate();
    }
}
