package porebench.desk.mix;

import java.awt.CardLayout;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.ColumnForm;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
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
final class MixPanel implements MixActions.Rows {
    private static final List<Integer> WIDTHS = List.of(150, 104, 88, 74, 50, 86, 80, 76, 84, 80);
    private static final String DESIGN = "design";
    private static final String EMPTY = "empty";

    private final DeskModel desk;
    private final MixModel model;
    private final Texts texts;
    private final JPanel cards = new JPanel(new CardLayout());
    private final WrappedText heading = new WrappedText("mix.heading", "h1");
    private final WrappedText standing = new WrappedText("mix.standing", "quiet");
    private final WrappedText refusal = new WrappedText("mix.refusal", "fieldError");
    private final ColumnForm form;
    private final BatchPanel figures;
    private final PartTable table;
    private final ProblemLines lines;
    private final VersionsTable<MixDesign> versions;
    private final JLabel versionsHeading;
    private final MixActions actions;

    MixPanel(DeskModel desk, MixModel model, MixActions.Doing page) {
        this.desk = desk;
        this.model = model;
        this.texts = model.texts();
        actions = new MixActions(model, page, this);
        form = new ColumnForm(model, desk.tools().problemText()).addAll(MixFields.ALL);
        figures = new BatchPanel(texts, desk.tools().numbers());
        table = new PartTable(
                "constituents",
                texts.get("section.constituents"),
                model,
                MixColumns.OF_CONSTITUENT.all(),
                WIDTHS,
                desk.tools().problemText());
        table.edit(MixColumns.SOURCE, new SourceEditor(model));
        lines = new ProblemLines("constituents.problems", desk.tools().problemText());
        versions = new VersionsTable<>(
                "versions",
                texts.locale(),
                desk.tools().zone(),
                false,
                (before, after) -> String.join(", ", model.changes(before, after)));
        versionsHeading = heading2("section.versions");
        table.table().getSelectionModel().addListSelectionListener(event -> actions.refresh(selected()));
        table.table().on("INSERT", actions.addRow);
        table.table().on("ctrl DELETE", actions.removeRow);
        table.table().on("alt UP", actions.moveUp);
        table.table().on("alt DOWN", actions.moveDown);
        cards.setName("mix");
        cards.add(empty(), EMPTY);
        cards.add(design(), DESIGN);
        refresh();
    }

    JComponent component() {
        return cards;
    }

    private JPanel empty() {
        JPanel panel = new JPanel(new MigLayout("insets 24, fillx, wrap 1", "[grow,fill]", "[]16[]"));
        WrappedText text = new WrappedText("mix.empty", "quiet");
        text.setText(texts.get("empty"));
        panel.add(text, "wmin 0");
        panel.add(Commands.button("mix.begin", actions.begin), "growx 0");
        return panel;
    }

    private JScrollPane design() {
        TallPanel page =
                new TallPanel(new MigLayout("insets 20 24 24 24, fillx, wrap 1, hidemode 3, gapy 8", "[grow,fill]"));
        JPanel head = new JPanel(new MigLayout("insets 0, fillx, wrap 3, gapy 4", "[grow,fill]16[]8[]"));
        head.add(heading, "wmin 0");
        head.add(Commands.button("mix.revert", actions.revert), "aligny top");
        head.add(Commands.button("mix.save", actions.save), "aligny top");
        head.add(standing, "span 3, wmin 0");
        page.add(head);
        page.add(refusal, "wmin 0");
        JPanel top = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill,400::760]24[pref!]push", "[top]"));
        JPanel left = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill]"));
        left.add(heading2("section.batch"), "gapbottom 4");
        left.add(form.panel());
        top.add(left);
        top.add(figures.panel());
        page.add(top, "gaptop 8");
        JPanel buttons = new JPanel(new MigLayout("insets 0, fillx", "[]push[]8[]8[]8[]"));
        buttons.add(heading2("section.constituents"));
        buttons.add(Commands.button("constituents.add", actions.addRow));
        buttons.add(Commands.button("constituents.remove", actions.removeRow));
        buttons.add(Commands.button("constituents.up", actions.moveUp));
        buttons.add(Commands.button("constituents.down", actions.moveDown));
        page.add(buttons, "gaptop 16");
        page.add(table.table().scrolled());
        page.add(lines.panel(), "wmin 0");
        WrappedText keys = new WrappedText("constituents.keys", "quiet");
        keys.setText(texts.get("keys"));
        page.add(keys, "wmin 0");
        page.add(versionsHeading, "gaptop 16");
        page.add(versions.component());
        return page.scrolled();
    }

    private JLabel heading2(String key) {
        JLabel label = new JLabel(texts.get(key));
        label.putClientProperty("FlatLaf.styleClass", "h2");
        return label;
    }

    /** Takes over what is being typed in a cell. */
    void finishTyping() {
        table.table().finishTyping();
    }

    /** Puts the cursor where a new mix design begins. */
    void focusFirst() {
        form.field(MixColumns.ID.field()).requestFocusInWindow();
    }

    @Override
    public int selected() {
        return table.table().getSelectedRow();
    }

    @Override
    public void select(int row) {
        if (row >= 0 && row < model.rows().size()) {
            int column = Math.max(0, table.table().getSelectedColumn());
            table.table().changeSelection(row, column, false, false);
            table.table().requestFocusInWindow();
        }
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
        versions.show(model.versions());
        versionsHeading.setVisible(model.base().isPresent());
        versions.component().setVisible(model.base().isPresent());
        actions.refresh(selected());
        say();
    }

    private void showFields() {
        form.pull();
        VolumeFrom from = model.draft().chosen(MixFields.VOLUME_FROM);
        form.setVisible(MixColumns.VOLUME, from == VolumeFrom.STATED);
        form.setVisible(MixColumns.MEASURED_DENSITY, from == VolumeFrom.DENSITY);
        model.profiles().stream()
                .filter(profile -> profile.id().equals(model.draft().text(MixColumns.PROFILE)))
                .findFirst()
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
                .orElseGet(() -> texts.get("state.new"));
        boolean changed = model.base().isPresent() && model.history().isChanged();
        standing.setText(changed ? saved + " " + texts.get("state.changed") : saved);
        int errors = model.errorsInTheWay();
        refusal.setText(errors == 0 ? "" : texts.get("save.refused", errors));
        refusal.setVisible(errors > 0);
    }
}
