package porebench.desk.mix;

import java.awt.CardLayout;
import java.util.List;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.NewerVersion;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.desk.table.PartTable;
import porebench.desk.table.VersionsTable;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.MixDesign;
import porebench.record.column.MixColumns;

/** The mix design page as it is seen. */
final class MixPanel {
    private static final List<Integer> WIDTHS = List.of(150, 104, 88, 74, 50, 86, 80, 76, 84, 80);
    private static final String DESIGN = "design";
    private static final String EMPTY = "empty";

    private final DeskModel desk;
    private final MixModel model;
    private final NewerVersion<MixDesign> newer;
    private final Texts texts;
    private final JPanel cards = new JPanel(new CardLayout());
    private final WrappedText heading = new WrappedText("mix.heading", "h1");
    private final WrappedText standing = new WrappedText("mix.standing", "quiet");
    private final WrappedText refusal = new WrappedText("mix.refusal", "fieldError");
    private final ColumnForm form;
    private final BatchPanel figures;
    private final PartTable table;
    private final ProblemLines lines;
    private final ForecastPanel forecast;
    private final VersionsTable<MixDesign> versions;
    private final JLabel versionsHeading;
    private final Action addRow;
    private final Action removeRow;
    private final Action moveUp;
    private final Action moveDown;

    MixPanel(MixModel model, NewerVersion<MixDesign> newer, Action begin, List<Action> acts) {
        this.desk = model.desk();
        this.model = model;
        this.newer = newer;
        this.texts = model.texts();
        addRow = Commands.of(
                texts.get("action.add-row"), () -> select(model.constituents().addRow(selected())));
        removeRow = Commands.of(texts.get("action.remove-row"), this::removeRow);
        moveUp = Commands.of(texts.get("action.move-up"), () -> move(-1));
        moveDown = Commands.of(texts.get("action.move-down"), () -> move(1));
        form = new ColumnForm(model, desk.tools().problemText())
                .addAll(MixFields.ALL)
                .then(this::begin);
        figures = new BatchPanel(texts, desk.tools().numbers());
        table = new PartTable(
                "constituents",
                texts.get("section.constituents"),
                model.constituents(),
                MixColumns.OF_CONSTITUENT.all(),
                WIDTHS,
                desk.tools().problemText(),
                left -> desk.tools().asker().tell(component(), texts.get("section.constituents"), left));
        table.edit(MixColumns.SOURCE, new SourceEditor(model));
        lines = new ProblemLines("constituents.problems", desk.tools().problemText()).keepingRoom(2);
        forecast = new ForecastPanel(new ForecastModel(model), new DraftEffects(model), desk, texts, desk::select);
        versions = new VersionsTable<>(
                "versions",
                texts.locale(),
                desk.tools().zone(),
                false,
                (before, after) -> String.join(", ", model.changes(before, after)));
        versionsHeading = Form.heading(texts.get("section.versions"), "h2");
        table.table().getSelectionModel().addListSelectionListener(event -> offer());
        table.table().on("INSERT", addRow);
        table.table().on("ctrl DELETE", removeRow);
        table.table().on("alt UP", moveUp);
        table.table().on("alt DOWN", moveDown);
        cards.setName("mix");
        cards.add(empty(begin), EMPTY);
        cards.add(design(acts), DESIGN);
    }

    JComponent component() {
        return cards;
    }

    private JPanel empty(Action begin) {
        JPanel panel = new JPanel(new MigLayout("insets 24, fillx, wrap 1", "[grow,fill]", "[]16[]"));
        panel.add(new WrappedText("mix.empty", "quiet", texts.get("empty")), "wmin 0");
        panel.add(Commands.button("mix.begin", begin), "growx 0");
        return panel;
    }

    /** Lays the page out; the acts are those that save, drop, lead to the readings, copy and compare. */
    private JScrollPane design(List<Action> acts) {
        TallPanel page =
                new TallPanel(new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3, gapy 8", "[grow,fill]"));
        JPanel head = new JPanel(new MigLayout("insets 0, fillx, wrap 4, gapy 4", "[grow,fill]16[]8[]8[]"));
        head.add(heading, "wmin 0");
        head.add(Commands.button("mix.readings", acts.get(2)), "aligny top");
        head.add(Commands.button("mix.revert", acts.get(1)), "aligny top");
        head.add(newer.button("mix.save", acts.get(0)), "aligny top");
        head.add(standing, "span 4, wmin 0");
        page.add(head);
        page.add(refusal.keepingRoom(1), "wmin 0, " + WrappedText.ROOM_KEPT);
        JPanel top = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill,340::760]20[pref!]push", "[top]"));
        JPanel left = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill]"));
        left.add(Form.heading(texts.get("section.batch"), "h2"), "gapbottom 4");
        left.add(form.panel());
        top.add(left);
        JPanel right = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill]", "[]12[]6[]"));
        right.add(figures.panel());
        right.add(Commands.button("mix.copy", acts.get(3)));
        right.add(Commands.button("mix.compare", acts.get(4)));
        top.add(right);
        page.add(top);
        JPanel buttons = new JPanel(new MigLayout("insets 0, fillx", "[]push[]8[]8[]8[]"));
        buttons.add(Form.heading(texts.get("section.constituents"), "h2"));
        buttons.add(Commands.button("constituents.add", addRow));
        buttons.add(Commands.button("constituents.remove", removeRow));
        buttons.add(Commands.button("constituents.up", moveUp));
        buttons.add(Commands.button("constituents.down", moveDown));
        page.add(buttons, "gaptop 16");
        page.add(table.table().scrolled());
        page.add(lines.panel(), "wmin 0");
        page.add(new WrappedText("constituents.keys", "quiet", texts.get("keys")), "wmin 0");
        page.add(forecast.panel(), "gaptop 16, wmin 0");
        page.add(versionsHeading, "gaptop 16");
        page.add(versions.component());
        return page.scrolled();
    }

    /** Goes on to the first constituent, which is added where there is none. */
    private void begin() {
        select(model.rows().isEmpty() ? model.constituents().addRow(-1) : 0);
    }

    /** Takes over what is being typed in a cell. */
    void finishTyping() {
        table.table().finishTyping();
    }

    /** Puts the cursor where a new mix design begins. */
    void focusFirst() {
        form.field(MixColumns.ID.field()).requestFocusInWindow();
    }

    private int selected() {
        return table.table().getSelectedRow();
    }

    /** Selects a row; what is being typed has been taken over before. */
    private void select(int row) {
        if (row >= 0 && row < model.rows().size()) {
            int column = Math.max(0, table.table().getSelectedColumn());
            table.table().changeSelection(row, column, false, false);
            table.table().requestFocusInWindow();
        }
    }

    private void removeRow() {
        int row = selected();
        model.constituents().removeRow(row);
        select(Math.min(row, model.rows().size() - 1));
    }

    private void move(int by) {
        int row = selected();
        model.constituents().moveRow(row, by);
        select(row + by);
    }

    /** Offers what can be done to the selected row. */
    private void offer() {
        int row = selected();
        int count = model.rows().size();
        removeRow.setEnabled(row >= 0 && row < count);
        moveUp.setEnabled(row > 0 && row < count);
        moveDown.setEnabled(row >= 0 && row < count - 1);
    }

    /** Shows the draft, its problems and its figures. */
    void refresh() {
        CardLayout layout = (CardLayout) cards.getLayout();
        layout.show(cards, model.isEmpty() ? EMPTY : DESIGN);
        showFields();
        table.refresh();
        List<Problem> problems = model.shownProblems();
        lines.show(form.show(problems));
        figures.show(model.reading().figures(), desk.units(), model.draft().isYes(MixColumns.WET_SIEVED));
        forecast.refresh();
        versions.show(model.versions());
        versionsHeading.setVisible(model.base().isPresent());
        versions.component().setVisible(model.base().isPresent());
        offer();
        say();
    }

    private void showFields() {
        form.pull();
        VolumeFrom from = model.draft().chosen(MixFields.VOLUME_FROM);
        form.setVisible(MixColumns.VOLUME, from == VolumeFrom.STATED);
        form.setVisible(MixColumns.MEASURED_DENSITY, from == VolumeFrom.DENSITY);
        model.profile(model.draft().text(MixColumns.PROFILE))
                .ifPresent(chosen -> form.field(MixColumns.TOLERANCE.field())
                        .putClientProperty(
                                "JTextField.placeholderText",
                                texts.get(
                                        "placeholder.airTolerance",
                                        chosen.figure(FigureName.AIR_TOLERANCE).value(),
                                        chosen.title())));
    }

    private void say() {
        heading.setText(model.base()
                .map(version -> texts.get(
                        "heading.saved",
                        version.value().id().text(),
                        version.value().title()))
                .orElseGet(() -> texts.get("heading.new")));
        String saved = model.base()
                .map(version -> texts.get(
                        "state.saved",
                        Integer.toString(version.number()),
                        version.stamp().who(),
                        Days.show(version.stamp().at(), desk.tools().zone())))
                .orElseGet(() -> model.copied()
                        .map(from -> from + ". " + texts.get("state.new"))
                        .orElse(texts.get("state.new")));
        boolean changed = model.base().isPresent() && model.history().isChanged();
        String other = newer.words();
        standing.setText(!other.isEmpty() ? other : changed ? saved + " " + texts.get("state.changed") : saved);
        standing.putClientProperty("FlatLaf.styleClass", other.isEmpty() ? "quiet" : "fieldWarning");
        int errors = model.errorsInTheWay();
        refusal.say(errors == 0 ? "" : texts.get("save.refused", errors));
    }
}
