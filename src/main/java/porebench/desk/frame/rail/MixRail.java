package porebench.desk.frame.rail;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.Insets;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.DefaultListSelectionModel;
import javax.swing.JButton;
import javax.swing.JComponent;
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
import javax.swing.text.Position;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Bowls;
import porebench.desk.DeskModel;
import porebench.desk.MixNote;
import porebench.desk.Page;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.Typing;
import porebench.desk.form.WrappedText;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.TrialsBehind;
import porebench.method.Texts;
import porebench.record.id.MixId;

/** The strip on the left: the mixes with their factor and its state, and under them the registers. */
public final class MixRail {
    private static final String STYLE = "FlatLaf.styleClass";

    private static final int ENTRY_HEIGHT = 19;

    private final JPanel panel =
            new JPanel(new MigLayout("insets 10 10 8 6, fillx, wrap 1", "[grow,fill]", "[]4[]4[grow,fill]3[]0[]"));
    private final ShownMixes shown = new ShownMixes();
    private final JList<RegisterRow> list = new JList<>(shown) {
        private static final long serialVersionUID = 1L;

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        /** A letter typed on the list looks for nothing: each mix it ran over would be opened. */
        @Override
        public int getNextMatch(String prefix, int startIndex, Position.Bias bias) {
            return -1;
        }
    };
    private final JTextField search = new JTextField();
    private final WrappedText nothing = new WrappedText("mixes.nothing", "quiet");
    private final JLabel count = Form.heading("", "quiet");
    private final JPanel registerGrid = new JPanel(
            new MigLayout("insets 0, fillx, wrap 2, gap 2 0, novisualpadding", "[grow,fill,0::][grow,fill,0::]"));
    private final MixCell cell;
    private final MixSearch found;
    private final List<JToggleButton> entries = new ArrayList<>();
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
        this.cell = new MixCell(texts, desk.tools().numbers(), desk.tools().problemText());
        this.found = new MixSearch(state -> MixCell.stateWords(texts, state));
        panel.putClientProperty(STYLE, "rail");
        panel.setName("rail");
        JButton begin = Commands.button("newMix", newMix);
        addHeading(begin);
        addSearch(openMix);
        addList(openMix);
        panel.add(Form.heading(texts.get("rail.registers"), "h2"), "gapleft 6");
        registerGrid.setOpaque(false);
        panel.add(registerGrid, "wmin 0");
        registers.forEach(page -> addEntry(page, openRegister));
        List<Component> order = new ArrayList<>(List.of(list));
        order.addAll(entries);
        order.addAll(List.of(search, begin));
        panel.setFocusTraversalPolicyProvider(true);
        panel.setFocusTraversalPolicy(new RailOrder(order));
        Bowls bowls = new Bowls(desk);
        cell.add(bowls::words);
        cell.add(mix -> isBegun(mix) ? Optional.of(texts.get("rail.begun")) : Optional.empty());
        desk.unsaved().onChange(list::repaint);
    }

    public JPanel component() {
        return panel;
    }

    /** Returns whether something is typed of a mix, its trials or its factor that is not saved. */
    private boolean isBegun(MixId mix) {
        return Stream.of("mix/", "trial/", "issue/")
                .map(place -> place + mix.text())
                .anyMatch(name -> desk.unsaved().find(name).isPresent()
                        || !desk.unsaved().names(name + '\t').isEmpty());
    }

    private void addHeading(JButton begin) {
        JPanel heading = new JPanel(new MigLayout("insets 0 6 0 4", "[]4[grow]2[]", "[]"));
        heading.setOpaque(false);
        JLabel title = Form.label(texts.get("rail.mixes"), list);
        title.putClientProperty(STYLE, "h2");
        heading.add(title);
        count.setName("mixes.count");
        heading.add(count, "aligny baseline, wmin 0");
        heading.add(begin);
        panel.add(heading);
    }

    private void addSearch(Consumer<MixId> openMix) {
        search.setName("findMix");
        search.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, texts.get("rail.find"));
        search.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
        search.getAccessibleContext().setAccessibleName(texts.get("rail.find"));
        search.setToolTipText(texts.get("rail.find.by"));
        Typing.follow(search, typed -> refresh());
        bind(search, "ENTER", "openFound", () -> openFound(openMix));
        bind(search, "ESCAPE", "clear", () -> search.setText(""));
        bind(search, "DOWN", "toList", this::goToList);
        panel.add(search, "gapleft 6, gapright 4");
    }

    private static void bind(JComponent part, String stroke, String name, Runnable doing) {
        part.getInputMap().put(KeyStroke.getKeyStroke(stroke), name);
        part.getActionMap().put(name, Commands.of("", doing));
    }

    /** Opens the only mix that has the words; with several, the keyboard goes to them. What is found is looked up first. */
    private void openFound(Consumer<MixId> openMix) {
        if (MixSearch.asks(search.getText()) && desk.answer(new MixWords()).isEmpty()) {
            String sought = search.getText();
            desk.ask(new MixWords(), words -> openFound(found(sought, words), openMix));
        } else {
            openFound(found(), openMix);
        }
    }

    private void openFound(List<RegisterRow> mixes, Consumer<MixId> openMix) {
        if (mixes.isEmpty()) {
            return;
        }
        goToList();
        if (mixes.size() == 1) {
            openMix.accept(mixes.get(0).mixId());
        }
    }

    /** Puts the keyboard on the list, on the first mix found where none of them is open; none is opened by that. */
    private void goToList() {
        if (shown.getSize() > 0) {
            if (list.isSelectionEmpty() && list.getSelectionModel() instanceof DefaultListSelectionModel lead) {
                lead.moveLeadSelectionIndex(0);
            }
            list.requestFocusInWindow();
        }
    }

    /** Returns the mixes that have the words looked for; what is not looked up yet of their words comes later. */
    private List<RegisterRow> found() {
        String sought = search.getText();
        Map<MixId, String> words =
                MixSearch.asks(sought) ? desk.answer(new MixWords()).orElse(Map.of()) : Map.of();
        return found(sought, words);
    }

    private List<RegisterRow> found(String sought, Map<MixId, String> words) {
        found.among(desk.rows(), words);
        return found.find(sought);
    }

    private void addList(Consumer<MixId> openMix) {
        list.setName("mixes");
        list.putClientProperty(STYLE, "railList");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(cell);
        list.setPrototypeCellValue(new RegisterRow(
                new MixId("M"),
                "M",
                "",
                FactorState.IN_FORCE,
                Optional.of(BigDecimal.ONE),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                TrialsBehind.NONE,
                Optional.empty(),
                List.of()));
        list.addListSelectionListener(event -> {
            RegisterRow row = list.getSelectedValue();
            if (!showing && !event.getValueIsAdjusting() && row != null) {
                openMix.accept(row.mixId());
                refresh();
            }
        });
        bind(list, "ENTER", "open", () -> pointedAt().map(RegisterRow::mixId).ifPresent(openMix));
        list.addMouseListener(new MouseAdapter() {
            /** A click on the mix that is selected already selects nothing, but leaves a register. */
            @Override
            public void mousePressed(MouseEvent event) {
                int row = list.locationToIndex(event.getPoint());
                boolean isOn = row >= 0 && list.getCellBounds(row, row).contains(event.getPoint());
                if (isOn
                        && desk.selected()
                                .filter(shown.getElementAt(row).mixId()::equals)
                                .isPresent()) {
                    openMix.accept(shown.getElementAt(row).mixId());
                }
            }
        });
        JScrollPane scroll = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        // Not none at all, which another theme would take for its own.
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        JPanel box = new JPanel(new MigLayout("insets 0, fill, hidemode 3, wrap 1", "[grow,fill]", "[]"));
        box.setOpaque(false);
        box.add(nothing, "gapleft 8, wmin 0");
        box.add(scroll, "wmin 0, grow, push");
        panel.add(box, "wmin 0");
    }

    /** Returns the mix that is open in the list, or else the one the keyboard stands on. */
    private Optional<RegisterRow> pointedAt() {
        int lead = list.getLeadSelectionIndex();
        return Optional.ofNullable(list.getSelectedValue())
                .or(() ->
                        lead >= 0 && lead < shown.getSize() ? Optional.of(shown.getElementAt(lead)) : Optional.empty());
    }

    private void addEntry(Page page, Consumer<Page> openRegister) {
        JToggleButton entry = new JToggleButton(page.title());
        entry.setName("register." + page.name());
        entry.setHorizontalAlignment(SwingConstants.LEADING);
        entry.setToolTipText(page.title());
        entry.setMargin(new Insets(0, 6, 0, 2));
        entry.putClientProperty(STYLE, "entry");
        entry.addActionListener(event -> openRegister.accept(page));
        entries.add(entry);
        // As low as its words allow: each row of registers is one mix less on view.
        registerGrid.add(entry, "wmin 0, h " + ENTRY_HEIGHT + "!");
    }

    /** Shows the mixes as they stand, and which of them or which register is on view. */
    public void refresh() {
        List<RegisterRow> rows = found();
        showing = true;
        shown.show(rows);
        Optional<RegisterRow> selected = desk.selected()
                .flatMap(id ->
                        rows.stream().filter(row -> row.mixId().equals(id)).findFirst());
        if (selected.isEmpty()) {
            list.clearSelection();
        } else {
            list.setSelectedValue(selected.get(), true);
        }
        showing = false;
        boolean isLookingUp =
                MixSearch.asks(search.getText()) && desk.answer(new MixWords()).isEmpty();
        nothing.setText(
                desk.rows().isEmpty()
                        ? texts.get("rail.none")
                        : rows.isEmpty() ? texts.get(isLookingUp ? "rail.looking" : "rail.none-found") : "");
        nothing.setVisible(rows.isEmpty());
        String all = Integer.toString(desk.rows().size());
        count.setText(
                MixSearch.asks(search.getText())
                        ? texts.get("rail.found", Integer.toString(rows.size()), all)
                        : desk.rows().isEmpty() ? "" : all);
        list.repaint();
    }

    /** From now on the list also says something else of each mix, beside its state. */
    public void add(MixNote note) {
        cell.add(note);
        list.repaint();
    }

    /** Says anew what is said of each mix beside its state, as when time went by. */
    public void showNotes() {
        list.repaint();
    }

    /** Shows which register is on view. */
    public void mark(Page current) {
        int index = registers.indexOf(current);
        for (int each = 0; each < entries.size(); each++) {
            entries.get(each).setSelected(each == index);
        }
    }

    /** Marks the registers in which something is typed and not saved, by the names of their pages. */
    public void markTyped(Set<String> names) {
        for (int each = 0; each < entries.size(); each++) {
            String title = registers.get(each).title();
            boolean isTyped = names.contains(registers.get(each).name());
            entries.get(each).setText(isTyped ? title + " \u2022" : title);
            String said = isTyped ? title + ", " + texts.get("rail.begun") : title;
            entries.get(each).setToolTipText(said);
            entries.get(each).getAccessibleContext().setAccessibleName(said);
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
}
