package porebench.desk.manual;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.Image;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListModel;
import javax.swing.ListSelectionModel;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.Tasks;
import porebench.desk.form.Typing;
import porebench.method.Texts;

/** The manual beside the workbench: contents and search on the left, the page on the right. Stays open while the work goes on. */
public final class ManualWindow {
    private static final Dimension SIZE = new Dimension(1060, 760);
    private static final int LIST_WIDTH = 300;

    private final Texts texts;
    private final Tasks tasks;
    private final ManualModel model;
    private final JFrame frame = new JFrame();
    private final ManualPane pane;
    private final JTextField words = new JTextField();
    private final DefaultListModel<ManualSearch.Found> rows = new DefaultListModel<>();
    private final JList<ManualSearch.Found> list = new NarrowList(rows);
    private final JLabel count = new JLabel();
    private final Action back;
    private final Action forward;
    private boolean filling;
    private int turns;

    /**
     * Makes the window; {@link #show} opens it.
     *
     * @param texts the words of {@code porebench.desk.manual.manual}
     * @param icons the marks of the window
     * @param over the window it opens beside
     */
    public ManualWindow(ManualModel model, Texts texts, Tasks tasks, List<? extends Image> icons, Window over) {
        this.model = model;
        this.texts = texts;
        this.tasks = tasks;
        pane = new ManualPane(this::follow);
        back = Commands.of(texts.get("back"), "alt LEFT", () -> turn(model::back));
        forward = Commands.of(texts.get("forward"), "alt RIGHT", () -> turn(model::forward));
        frame.setName("manual");
        frame.setTitle(texts.get("title"));
        frame.setIconImages(icons);
        frame.setDefaultCloseOperation(WindowConstants.HIDE_ON_CLOSE);
        // It can be read while a dialog of the workbench waits for an answer.
        frame.setModalExclusionType(Dialog.ModalExclusionType.APPLICATION_EXCLUDE);
        frame.setContentPane(content());
        frame.setSize(UIScale.scale(SIZE));
        frame.setLocationRelativeTo(over);
        pane.addPropertyChangeListener("UI", event -> showPage(""));
        key("alt LEFT", "back", back);
        key("alt RIGHT", "forward", forward);
        key("ctrl F", "find", Commands.of("", this::find));
        key("ESCAPE", "leave", Commands.of("", this::leave));
        fill();
    }

    private JComponent content() {
        Action contents = Commands.of(texts.get("contents"), () -> open(new ManualModel.Spot(ManualPage.CONTENTS, "")));
        JPanel bar = new JPanel(new MigLayout("insets 8 10 8 10, gap 6"));
        bar.add(Commands.button("manual.back", back));
        bar.add(Commands.button("manual.forward", forward));
        bar.add(Commands.button("manual.contents", contents));
        words.setName("manual.words");
        words.putClientProperty("JTextField.placeholderText", texts.get("search.hint"));
        words.putClientProperty("JTextField.showClearButton", true);
        JLabel label = new JLabel();
        label.setText(texts.get("search"));
        label.setLabelFor(words);
        words.getAccessibleContext().setAccessibleName(label.getText());
        Typing.listen(words, this::fill);
        words.addActionListener(event -> openFirst());
        count.putClientProperty("FlatLaf.styleClass", "quiet");
        list.setName("manual.list");
        list.getAccessibleContext().setAccessibleName(texts.get("list"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer((of, found, index, isSelected, hasFocus) -> row(found, isSelected));
        list.addListSelectionListener(event -> choose());
        JPanel left = new JPanel(new MigLayout("insets 0 10 10 0, wrap 1", "[grow,fill]", "[][]2[]4[grow,fill]"));
        left.add(label);
        left.add(words);
        left.add(count);
        JScrollPane listScroll =
                new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        left.add(listScroll);
        JScrollPane scroll = new JScrollPane(pane);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, left, scroll);
        split.setBorder(BorderFactory.createEmptyBorder());
        split.setDividerLocation(UIScale.scale(LIST_WIDTH));
        JPanel content = new JPanel(new BorderLayout());
        content.add(bar, BorderLayout.NORTH);
        content.add(split, BorderLayout.CENTER);
        return content;
    }

    private void key(String stroke, String name, Action action) {
        JComponent root = frame.getRootPane();
        root.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(stroke), name);
        root.getActionMap().put(name, action);
    }

    private Component row(ManualSearch.Found found, boolean isSelected) {
        JPanel row = new JPanel(new MigLayout("insets 4 8 4 8, wrap 1, gapy 1", "[grow,fill]"));
        row.setBackground(isSelected ? list.getSelectionBackground() : list.getBackground());
        JLabel title = new JLabel(found.page().title());
        title.setForeground(isSelected ? list.getSelectionForeground() : list.getForeground());
        row.add(title, "wmin 0");
        if (!found.words().isEmpty()) {
            JLabel around = new JLabel(found.words());
            around.putClientProperty("FlatLaf.styleClass", isSelected ? "" : "quiet");
            around.setToolTipText(found.words());
            row.add(around, "wmin 0");
        }
        row.getAccessibleContext().setAccessibleName(found.page().title());
        return row;
    }

    /** Lists what was found, or all pages while nothing is looked for. */
    private void fill() {
        filling = true;
        rows.clear();
        boolean searches = !words.getText().isBlank();
        List<ManualSearch.Found> found = searches
                ? model.find(words.getText())
                : model.pages().stream()
                        .map(page -> new ManualSearch.Found(page, ""))
                        .toList();
        found.forEach(rows::addElement);
        count.setText(searches ? texts.get("found", Integer.toString(found.size())) : " ");
        mark();
        filling = false;
    }

    /** Marks the page on view in the list. */
    private void mark() {
        boolean before = filling;
        filling = true;
        list.clearSelection();
        for (int index = 0; index < rows.size(); index++) {
            if (rows.get(index).page().name().equals(model.now().page())) {
                list.setSelectedIndex(index);
                list.ensureIndexIsVisible(index);
            }
        }
        filling = before;
    }

    private void choose() {
        Optional.ofNullable(list.getSelectedValue()).filter(found -> !filling).ifPresent(found -> {
            model.open(new ManualModel.Spot(found.page().name(), ""));
            showPage(words.getText());
        });
    }

    private void openFirst() {
        if (!rows.isEmpty()) {
            list.setSelectedIndex(0);
            list.requestFocusInWindow();
            choose();
        }
    }

    private void find() {
        words.requestFocusInWindow();
        words.selectAll();
    }

    /** Gives up the search first, then closes. */
    private void leave() {
        if (words.getText().isEmpty()) {
            frame.setVisible(false);
        } else {
            words.setText("");
        }
    }

    private void follow(String link) {
        if (model.follow(link)) {
            showPage("");
            mark();
        }
    }

    private void turn(Runnable how) {
        how.run();
        showPage("");
        mark();
    }

    private void open(ManualModel.Spot spot) {
        model.open(spot);
        showPage("");
        mark();
    }

    /** Opens the window on a place of the manual. */
    public void show(ManualModel.Spot spot) {
        // A page can be scrolled to a heading once it has its size.
        frame.setVisible(true);
        frame.toFront();
        open(spot);
        pane.requestFocusInWindow();
    }

    private void showPage(String marked) {
        back.setEnabled(model.canGoBack());
        forward.setEnabled(model.canGoForward());
        ManualPage page = model.page();
        String anchor = model.now().anchor();
        String note = page.isTranslated() ? "" : texts.get("page.english");
        ManualPane.Look look = ManualPane.Look.now();
        turns++;
        int turn = turns;
        // Of pages asked for quickly one after another, the last one stays.
        tasks.workOut(
                () -> ManualPane.document(page, note, look),
                document -> {
                    if (turn == turns) {
                        pane.show(document, anchor, marked);
                        pane.getAccessibleContext().setAccessibleName(page.title());
                    }
                },
                failure -> pane.setText(texts.get("page.failed")));
    }

    public JFrame frame() {
        return frame;
    }

    /** A list as wide as its place: longer lines end in dots. */
    private static final class NarrowList extends JList<ManualSearch.Found> {
        private static final long serialVersionUID = 1L;

        NarrowList(ListModel<ManualSearch.Found> rows) {
            super(rows);
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    }

    /** Closes it for good. */
    public void dispose() {
        frame.dispose();
    }
}
