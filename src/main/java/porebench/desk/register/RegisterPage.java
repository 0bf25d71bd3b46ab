package porebench.desk.register;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.Screen;
import porebench.desk.StateMark;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.Numbers;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.desk.table.FilterLine;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.RegisterRow;
import porebench.method.Texts;
import porebench.record.id.MixId;

/** The factor register: what is in force for every mix, what is due, and under it what is missing for the chosen mix. */
public final class RegisterPage implements Screen {
    private static final int MARK_SIDE = 12;
    /** Where a mix without a factor stands when they are sorted by it. */
    private static final BigDecimal BELOW_ALL = BigDecimal.valueOf(-100);

    private final JPanel panel = new JPanel(
            new MigLayout("insets 18 22 14 22, fill, wrap 1", "[grow,fill,0::]", "[]4[]12[]8[grow,fill]10[]"));
    private final DeskModel desk;
    private final RegisterModel model;
    private final Texts texts;
    private final Consumer<MixId> openMix;
    private final WrappedText summary = new WrappedText("register.summary", "quiet");
    private final JCheckBox filter = new JCheckBox();
    private final RowTable<RegisterRow> table;
    private final JLabel missingTitle = Form.heading("", "h2");
    private final ProblemLines missing;
    private final Action open;

    /**
     * Makes the page.
     *
     * @param openMix turns the window to a mix
     */
    public RegisterPage(DeskModel desk, Consumer<MixId> openMix) {
        this.desk = desk;
        this.texts = RecordPage.texts(desk);
        this.model = new RegisterModel(desk, texts);
        this.openMix = openMix;
        table = new RowTable<>("register.table", texts.get("register.title"), columns());
        missing = new ProblemLines("register.missing", desk.tools().problemText());
        open = Commands.of(texts.get("register.open"), this::openChosen);
        setUpTable();
        panel.setName("register.page");
        panel.add(Form.heading(texts.get("register.title"), "h1"));
        panel.add(summary, "wmin 0");
        panel.add(bar());
        panel.add(new JScrollPane(table), "hmin 120");
        panel.add(details(), "hmin 90, hmax 200");
        desk.onChange(this::refresh);
        refresh();
    }

    @Override
    public JComponent component() {
        return panel;
    }

    private List<ShownColumn<RegisterRow>> columns() {
        Numbers numbers = desk.tools().numbers();
        return List.of(
                new ShownColumn<RegisterRow>(texts.get("register.state"), 155, row -> model.stateWords(row.state()))
                        .mark((row, selected) -> new StateMark(row.state(), MARK_SIDE))
                        .sortedBy(RegisterRow::state),
                new ShownColumn<RegisterRow>(
                                texts.get("register.mix"),
                                75,
                                row -> row.mixId().text())
                        .sortedBy(RegisterRow::mixId),
                new ShownColumn<>(texts.get("register.mixTitle"), 175, RegisterRow::title).sortedBy(RegisterRow::title),
                new ShownColumn<RegisterRow>(
                                texts.get("register.factor"),
                                50,
                                row -> row.factorPercent().map(numbers::show).orElse(""))
                        .sortedBy(row -> row.factorPercent().orElse(BELOW_ALL)),
                new ShownColumn<>(
                        texts.get("register.revision"),
                        50,
                        row -> row.revision().map(Object::toString).orElse("")),
                day("register.since", RegisterRow::inForceFrom),
                day("register.recheck", RegisterRow::recheckBy),
                new ShownColumn<RegisterRow>(
                                texts.get("register.trials"), 55, row -> Integer.toString(row.countedTrials()))
                        .sortedBy(RegisterRow::countedTrials),
                new ShownColumn<>(texts.get("register.missing"), 170, model::missingWords));
    }

    private ShownColumn<RegisterRow> day(String key, Function<RegisterRow, Optional<LocalDate>> day) {
        return new ShownColumn<RegisterRow>(
                        texts.get(key),
                        95,
                        row -> day.apply(row).map(Days::show).orElse(""))
                .sortedBy(row -> day.apply(row).orElse(LocalDate.MIN));
    }

    private JComponent bar() {
        JPanel bar = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill,0::]12[]12[]", "[]"));
        bar.add(new FilterLine(table, texts.locale()).component(), "wmin 0");
        filter.setName("register.attention");
        filter.setAction(Commands.of(texts.get("register.attention"), this::filter));
        bar.add(filter);
        bar.add(Commands.button("register.open", open));
        return bar;
    }

    private void filter() {
        model.showOnlyAttention(filter.isSelected());
        refresh();
    }

    private JComponent details() {
        TallPanel details = new TallPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow,fill,0::]", "[]6[]"));
        details.add(missingTitle, "wmin 0");
        details.add(missing.panel(), "wmin 0");
        return details.scrolled();
    }

    private void setUpTable() {
        table.setAutoResizeMode(JTable.AUTO_RESIZE_LAST_COLUMN);
        table.onSelect(chosen -> chosen.ifPresent(row -> {
            model.choose(row.mixId());
            showMissing();
        }));
        table.on("ENTER", open);
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

    private void refresh() {
        summary.setText(model.summary());
        table.show(model.rows());
        Optional<RegisterRow> chosen = model.chosen();
        table.select(row -> chosen.filter(row::equals).isPresent());
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
