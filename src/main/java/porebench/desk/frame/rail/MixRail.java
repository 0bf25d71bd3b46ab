package porebench.desk.frame.rail;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.ButtonGroup;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.Typing;
import porebench.evidence.RegisterRow;
import porebench.method.Texts;
import porebench.record.id.MixId;

/** The strip on the left: the mixes with their factor and its state, and under them the registers. */
public final class MixRail {
    private static final String STYLE = "FlatLaf.styleClass";

    private final JPanel panel = new JPanel(
            new MigLayout("insets 14 10 12 6, fillx, wrap 1", "[grow,fill]", "[]8[]8[grow,fill]14[]6[]2[]2[]"));
    private final DefaultListModel<RegisterRow> shown = new DefaultListModel<>();
    private final JList<RegisterRow> list = new JList<>(shown) {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    };
    private final JTextField search = new JTextField();
    private final JLabel nothing = Form.heading("", "quiet");
    private final List<JToggleButton> entries = new ArrayList<>();
    private final ButtonGroup group = new ButtonGroup();
    private final List<? extends Page> registers;
    private final DeskModel desk;
    private final Texts texts;
    private boolean showing;

    public MixRail(
            DeskModel desk,
            Texts texts,
            List<? extends Page> registers,
            Action newMix,
            Consumer<MixId> openMix,
            Consumer<Page> openRegister) {
        this.desk = desk;
        this.texts = texts;
        this.registers = registers;
        panel.putClientProperty(STYLE, "rail");
        panel.setName("rail");
        addHeading(newMix);
        addSearch();
        addList(openMix);
        panel.add(Form.heading(texts.get("rail.registers"), "h2"), "gapleft 6");
        registers.forEach(page -> addEntry(page, openRegister));
    }

    public JPanel component() {
        return panel;
    }

    private void addHeading(Action newMix) {
        JPanel heading = new JPanel(new MigLayout("insets 0 6 0 4", "[grow][]", "[]"));
        heading.setOpaque(false);
        JLabel title = Form.label(texts.get("rail.mixes"), list);
        title.putClientProperty(STYLE, "h2");
        heading.add(title);
        heading.add(Commands.button("newMix", newMix));
        panel.add(heading);
    }

    private void addSearch() {
        search.setName("findMix");
        search.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, texts.get("rail.find"));
        search.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
        search.getAccessibleContext().setAccessibleName(texts.get("rail.find"));
        Typing.follow(search, typed -> refresh());
        search.addActionListener(event -> list.requestFocusInWindow());
        panel.add(search, "gapleft 6, gapright 4");
    }

    private void addList(Consumer<MixId> openMix) {
        list.setName("mixes");
        desk.unsaved().onChange(list::repaint);
        list.putClientProperty(STYLE, "railList");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new MixCell(texts, desk));
        list.addListSelectionListener(event -> {
            RegisterRow row = list.getSelectedValue();
            if (!showing && !event.getValueIsAdjusting() && row != null) {
                openMix.accept(row.mixId());
                refresh();
            }
        });
        list.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "open");
        list.getActionMap()
                .put(
                        "open",
                        Commands.of(
                                "",
                                () -> Optional.ofNullable(list.getSelectedValue())
                                        .map(RegisterRow::mixId)
                                        .ifPresent(openMix)));
        nothing.setVerticalAlignment(SwingConstants.TOP);
        JScrollPane scroll = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(null);
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        JPanel box = new JPanel(new MigLayout("insets 0, fill, hidemode 3, wrap 1", "[grow,fill]", "[][grow,fill]"));
        box.setOpaque(false);
        box.add(nothing, "gapleft 8, wmin 0");
        box.add(scroll, "wmin 0");
        panel.add(box, "wmin 0");
    }

    private void addEntry(Page page, Consumer<Page> openRegister) {
        JToggleButton entry = new JToggleButton(page.title());
        entry.setName("register." + page.name());
        entry.setHorizontalAlignment(SwingConstants.LEADING);
        entry.putClientProperty(STYLE, "entry");
        entry.addActionListener(event -> openRegister.accept(page));
        group.add(entry);
        entries.add(entry);
        panel.add(entry);
    }

    /** Shows the mixes as they stand, and which of them or which register is on view. */
    public void refresh() {
        String sought = search.getText().strip().toLowerCase(texts.locale());
        List<RegisterRow> rows = desk.rows().stream()
                .filter(row -> matches(row, sought, texts.locale()))
                .toList();
        showing = true;
        if (!rows.equals(List.of(shown.toArray()))) {
            shown.clear();
            rows.forEach(shown::addElement);
        }
        Optional<RegisterRow> selected = desk.selected()
                .flatMap(id ->
                        rows.stream().filter(row -> row.mixId().equals(id)).findFirst());
        if (selected.isEmpty()) {
            list.clearSelection();
        } else {
            list.setSelectedValue(selected.get(), true);
        }
        showing = false;
        nothing.setText(
                desk.rows().isEmpty() ? texts.get("rail.none") : rows.isEmpty() ? texts.get("rail.none-found") : "");
        nothing.setVisible(rows.isEmpty());
        list.repaint();
    }

    /** Shows which register is on view. */
    public void mark(Page current) {
        group.clearSelection();
        int index = registers.indexOf(current);
        if (index >= 0) {
            entries.get(index).setSelected(true);
        }
    }

    /** Puts the keyboard on the list of mixes. */
    public void focusMixes() {
        list.requestFocusInWindow();
    }

    public void find() {
        search.requestFocusInWindow();
        search.selectAll();
    }

    static boolean matches(RegisterRow row, String soughtLowerCase, Locale locale) {
        return row.mixId().text().toLowerCase(locale).contains(soughtLowerCase)
                || row.title().toLowerCase(locale).contains(soughtLowerCase);
    }
}
