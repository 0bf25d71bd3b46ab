package porebench.desk.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.Screen;
import porebench.desk.Settings;
import porebench.desk.SheetImport;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.History;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.desk.table.FilterLine;
import porebench.desk.table.TableOrder;
import porebench.desk.table.VersionsTable;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.FieldReading;
import porebench.record.id.MixId;

/** The page of what crews read at the loads: entered, imported, corrected, struck, and listed with what is made of each. */
public final class FieldPage implements Screen {
    private final DeskModel desk;
    private final FieldsModel model;
    private final Texts texts;
    private final Consumer<MixId> openMix;
    private final TallPanel panel = new TallPanel(new MigLayout(
            "insets 18 22 18 22, fillx, wrap 1, hidemode 3", "[grow,fill,0::]", "[]2[]12[]16[]4[]8[]8[]8[]"));
    private final WrappedText summary = new WrappedText("readings.summary", "quiet");
    private final WrappedText none = new WrappedText("readings.none", "quiet");
    private final WrappedText why = new WrappedText("readings.why", "");
    private final WrappedText told = new WrappedText("readings.told", "quiet");
    private final FieldActions actions;
    private final FieldPanel form;
    private final FieldBar bar;
    private final FieldTable table;
    private final VersionsTable<FieldReading> versions;
    private final FieldPrinting printing;
    private final Action paste;
    private final Action correct;
    private final Action strike;
    private final Action restore;
    private final Action open;
    private final JScrollPane scroll;
    private boolean isRefreshing;

    /**
     * Makes the page.
     *
     * @param openMix turns the window to a mix
     * @param sheets brings sheets in
     * @param settings remembers whether readings are judged with a guard band
     */
    public FieldPage(DeskModel desk, Consumer<MixId> openMix, SheetImport sheets, Settings settings) {
        this.desk = desk;
        this.openMix = openMix;
        model = new FieldsModel(desk, settings);
        texts = model.texts();
        actions = new FieldActions(model, panel, this::goTo, this::saved, sheets);
        form = new FieldPanel(
                model.entry(),
                model.words(),
                actions.newer(),
                Commands.of(texts.get("act.save"), actions::save),
                Commands.of(texts.get("act.clear"), this::clear));
        bar = new FieldBar(model, this::refresh);
        table = new FieldTable(model);
        versions = new VersionsTable<>(
                "readings.versions", texts.locale(), desk.tools().zone(), false, model::changes);
        printing = new FieldPrinting(model, panel, () -> TableOrder.rows(table.component()), told::say);
        paste = Commands.of(texts.get("act.paste"), actions::paste);
        correct = Commands.of(texts.get("act.correct"), this::correct);
        strike = Commands.of(texts.get("act.strike"), actions::strike);
        restore = Commands.of(texts.get("act.restore"), actions::restore);
        open = Commands.of(texts.get("act.open"), this::open);
        build();
        scroll = panel.scrolled();
        model.entry().history().onChange(this::refresh);
        desk.onChange(this::refresh);
        refresh();
    }

    private void build() {
        panel.setName("readings.page");
        panel.add(Form.heading(texts.get("page.title"), "h1"));
        panel.add(new WrappedText("readings.sentence", "quiet", texts.get("page.sentence")), "wmin 0");
        panel.add(form.component(), "wmin 0");
        panel.add(bar.component(), "wmin 0");
        panel.add(whole(), "wmin 0");
        panel.add(line(), "wmin 0");
        panel.add(table.component().scrolled(), "wmin 0");
        panel.add(why, "wmin 0");
        panel.add(told, "wmin 0");
        panel.add(none, "wmin 0");
        panel.add(versions.component(), "wmin 0");
        table.component().onSelect(line -> {
            model.choose(line.map(FieldLine::id));
            refresh();
        });
        table.component().on("ENTER", open);
        table.component().on("ctrl V", paste);
    }

    /** What is done with all readings on view, beside how many they are. */
    private JComponent whole() {
        JPanel line = new JPanel(new MigLayout("insets 0, fillx, gap 6", "[grow,fill,0:0:][][]12[][]", "[]"));
        line.setOpaque(false);
        line.add(summary, "wmin 0");
        line.add(Commands.button("readings.import", Commands.of(texts.get("act.import"), actions::importFiles)));
        line.add(Commands.button("readings.paste", paste));
        line.add(Commands.button("readings.print", printing.print));
        line.add(Commands.button("readings.write", printing.save));
        return line;
    }

    /** What is done with the chosen reading. */
    private JComponent line() {
        JPanel line = new JPanel(new MigLayout("insets 0, fillx, gap 6", "[][][]12[]14[grow,fill,0:0:]", "[]"));
        line.setOpaque(false);
        line.add(Commands.button("readings.correct", correct));
        line.add(Commands.button("readings.strike", strike));
        line.add(Commands.button("readings.restore", restore));
        line.add(Commands.button("readings.open", open));
        line.add(FilterLine.overMany(table.component(), texts.locale()), "wmin 0");
        return line;
    }

    @Override
    public JComponent component() {
        return scroll;
    }

    /** Shows the readings of a mix. */
    public void show(MixId mix) {
        model.showMix(mix);
        refresh();
    }

    /** Shows a reading among those of its mix, chosen. */
    public void show(FieldReading reading) {
        model.showReading(reading);
        refresh();
        table.component().requestFocusInWindow();
    }

    @Override
    public void focus() {
        form.begin();
    }

    @Override
    public void beginNew() {
        model.entry().turnToNew();
        refresh();
        form.begin();
    }

    @Override
    public void dropDraft() {
        model.entry().drop();
        refresh();
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.entry().history());
    }

    @Override
    public void save() {
        if (model.entry().history().isChanged()) {
            actions.save();
        }
    }

    private void goTo(List<Problem> problems) {
        refresh();
        form.goTo(problems);
    }

    private void saved() {
        refresh();
        form.begin();
    }

    private void clear() {
        model.entry().clear();
        refresh();
        form.begin();
    }

    private void correct() {
        model.correct();
        refresh();
        form.begin();
    }

    /** Says how the chosen reading is judged and why, whole: the table has no room for it. */
    private String why(FieldLine line) {
        List<String> said = new ArrayList<>();
        said.add(texts.get(
                "said.chosen",
                texts.get(
                        "reading.what",
                        line.reading().mixId().text(),
                        line.reading().truck()),
                Days.show(line.reading().readAt()),
                model.words().verdict(line)));
        said.addAll(model.words().notes(line));
        return String.join("\n", said);
    }

    private void open() {
        model.chosen().map(line -> line.reading().mixId()).ifPresent(openMix);
    }

    private void refresh() {
        if (isRefreshing) {
            return;
        }
        isRefreshing = true;
        model.entry().follow();
        form.refresh();
        bar.refresh();
        List<FieldLine> lines = model.lines();
        table.show(lines);
        table.component().select(model::isChosen);
        summary.say(model.summary());
        none.say(lines.isEmpty() && desk.hasBook() && !model.isLooking() ? texts.get("said.none") : "");
        Optional<FieldLine> chosen = model.chosen();
        correct.setEnabled(chosen.isPresent());
        open.setEnabled(chosen.isPresent());
        paste.setEnabled(desk.hasBook());
        strike.setEnabled(chosen.filter(line -> !line.isStruck()).isPresent());
        restore.setEnabled(chosen.filter(FieldLine::isStruck).isPresent());
        why.say(chosen.map(this::why).orElse(""));
        printing.refresh();
        versions.show(model.versions());
        versions.component().setVisible(chosen.isPresent());
        isRefreshing = false;
    }
}
