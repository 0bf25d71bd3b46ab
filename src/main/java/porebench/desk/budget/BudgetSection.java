package porebench.desk.budget;

import java.awt.event.HierarchyEvent;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.DeterminationSection;
import porebench.desk.Looks;
import porebench.desk.PlotPanel;
import porebench.desk.form.Choices;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.Typing;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.method.budget.BudgetResult;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;

/**
 * The uncertainty budget of a determination's factor, and of a field reading corrected by it: verdict, what is missing, plot,
 * table, totals, and a reading from the field.
 */
public final class BudgetSection implements DeterminationSection {
    private static final int PLOT_HEIGHT = 320;
    private static final int[] WIDTHS = {165, 105, 125, 92, 78, 68, 62, 190};
    private static final int READING_COLUMNS = 8;

    private final BudgetModel model;
    private final Texts texts;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    private final WrappedText verdict = new WrappedText("budget.verdict", "h3");
    private final ProblemLines omissions;
    private final PlotPanel plot;
    private final RowTable<List<String>> table;
    private final JPanel totals =
            new JPanel(new MigLayout("insets 0, fillx, wrap 3, gapy 7", "[]18[]18[grow,fill]", "[top]"));
    private final JPanel below = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    private final JTextField reading = new JTextField(READING_COLUMNS);
    private final JComboBox<Optional<MeterId>> meter;
    private final Form form;
    private final WrappedText fieldVerdict = new WrappedText("budget.field", "h4");
    private final WrappedText fieldParts = new WrappedText("budget.fieldParts", "");
    private final ProblemLines fieldOmissions;
    private boolean isStale = true;
    private boolean showing;

    public BudgetSection(DeskModel desk) {
        model = new BudgetModel(desk);
        this.texts = model.texts();
        panel.setName("budget");
        panel.setOpaque(false);
        totals.setOpaque(false);
        below.setOpaque(false);
        omissions = new ProblemLines("budget.omissions", model.desk().tools().problemText());
        fieldOmissions =
                new ProblemLines("budget.fieldOmissions", model.desk().tools().problemText());
        form = new Form(model.desk().tools().problemText());
        plot = new PlotPanel(
                model.desk().tools(),
                "budget",
                PLOT_HEIGHT,
                new PlotPanel.Words(
                        texts.get("section.contributions"),
                        model::pictureName,
                        model::subject,
                        model.desk()::isTraining));
        table = new RowTable<>("budgetLines", texts.get("section.budget"), columns(texts));
        meter = Choices.of("budget.meter", List.of(), this::said, this::choose);
        panel.add(Form.heading(texts.get("section.budget"), "h2"));
        panel.add(verdict, "wmin 0");
        panel.add(omissions.panel(), "wmin 0");
        panel.add(below, "wmin 0");
        below.add(plot.component(), "wmin 0, gaptop 10");
        below.add(table.scrolled(), "wmin 0, gaptop 12");
        below.add(totals, "wmin 0, gaptop 6");
        below.add(field(), "wmin 0, gaptop 18");
        panel.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && isStale && panel.isShowing()) {
                show();
            }
        });
        model.onChange(this::showSoon);
        Looks.onOther(this::showSoon);
    }

    private static List<ShownColumn<List<String>>> columns(Texts texts) {
        List<String> keys =
                List.of("part", "value", "uncertainty", "sensitivity", "contribution", "share", "degrees", "origin");
        return IntStream.range(0, keys.size())
                .mapToObj(at -> {
                    ShownColumn<List<String>> column =
                            new ShownColumn<>(texts.get("heading." + keys.get(at)), WIDTHS[at], cells -> cells.get(at));
                    return at > 0 && at < keys.size() - 1 ? column.number() : column;
                })
                .toList();
    }

    private JPanel field() {
        JPanel field = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
        field.setOpaque(false);
        form.add("reading", texts.get("field.reading"), reading, texts.get("unit.air"));
        reading.setName("budget.reading");
        form.panel().add(Form.label(texts.get("field.meter"), meter));
        form.panel().add(meter, "wrap");
        Typing.follow(reading, typed -> {
            if (!showing) {
                model.typeReading(typed);
                showField();
            }
        });
        field.add(Form.heading(texts.get("section.field"), "h3"));
        field.add(form.panel(), "wmin 0, wmax 420");
        field.add(fieldVerdict, "wmin 0, gaptop 4");
        field.add(fieldParts, "wmin 0");
        field.add(fieldOmissions.panel(), "wmin 0");
        return field;
    }

    private String said(Optional<MeterId> id) {
        return id.map(MeterId::text).orElseGet(() -> texts.get("field.other-meter"));
    }

    private void choose(Optional<MeterId> id) {
        if (!showing) {
            model.chooseMeter(id);
            showField();
        }
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void show(Optional<DeterminationId> determination) {
        model.turnTo(determination);
        showSoon();
    }

    /** Shows the budget now when anybody can see it, else as soon as somebody can: it takes a moment to draw. */
    private void showSoon() {
        isStale = true;
        if (panel.isShowing()) {
            show();
        }
    }

    private void show() {
        isStale = false;
        showing = true;
        verdict.setText(model.verdict());
        omissions.show(model.omissions());
        Optional<BudgetResult> budget = model.budget();
        below.setVisible(budget.isPresent());
        budget.ifPresent(this::show);
        showMeters();
        Typing.show(reading, model.reading());
        showing = false;
        showField();
    }

    private void show(BudgetResult one) {
        BudgetWords words = model.words();
        model.bars().ifPresent(bars -> plot.view().show(bars, Looks.now()));
        table.show(one.budget().lines().stream()
                .map(line -> words.row(one.budget(), line))
                .toList());
        totals.removeAll();
        List<BudgetWords.Line> lines = model.totals();
        for (int i = 0; i < lines.size(); i++) {
            JLabel value = Form.heading(lines.get(i).value(), "h4");
            value.setName("budget.total." + i);
            WrappedText note =
                    new WrappedText("budget.note." + i, "quiet", lines.get(i).note());
            totals.add(new JLabel(lines.get(i).name()));
            totals.add(value);
            totals.add(note, "wmin 0");
        }
        panel.revalidate();
    }

    private void showMeters() {
        Choices.offer(
                meter,
                Stream.concat(
                                Stream.of(Optional.<MeterId>empty()),
                                model.meters().stream().map(Optional::of))
                        .toList());
        meter.setSelectedItem(model.meter());
    }

    private void showField() {
        form.show(model.readingProblems());
        fieldVerdict.say(model.fieldVerdict());
        fieldParts.say(model.fieldParts());
        fieldOmissions.show(model.fieldOmissions());
        panel.revalidate();
        panel.repaint();
    }
}
