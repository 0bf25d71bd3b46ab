package porebench.desk.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.NewerVersion;
import porebench.desk.Outcome;
import porebench.desk.Screen;
import porebench.desk.Settings;
import porebench.desk.form.Commands;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.History;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.TallPanel;
import porebench.desk.form.WrappedText;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.plan.PlanText;
import porebench.evidence.plan.PlannedTest;
import porebench.evidence.plan.WeekPlan;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.TestPlan;
import porebench.record.id.MixId;

/** The plan of a week: the tests by day, which a person moves and gives to somebody, and what to fetch for them. */
public final class PlanPage implements Screen {
    private final JPanel panel = new JPanel(new MigLayout(
            "insets 18 22 14 22, fill, wrap 1, hidemode 3",
            "[grow,fill,0::]",
            "[]2[]8[]8[grow 60,fill]6[]8[grow 40,fill]8[]"));
    private final DeskModel desk;
    private final PlanModel model;
    private final Texts texts;
    private final PlanText text;
    private final Consumer<MixId> openTrials;
    private final WrappedText sentence = new WrappedText("plan.sentence", "quiet");
    private final WrappedText risk = new WrappedText("plan.risk", "");
    private final WrappedText newerText = new WrappedText("plan.newer", "fieldWarning");
    private final WrappedText told = new WrappedText("plan.told", "quiet");
    private final JTextField mixToAdd = new JTextField(6);
    private final ProblemLines doubts;
    private final PlanBar bar;
    private final PlanTable table;
    private final RowTable<WeekPlan.Fetch> fetches;
    private final PlanActions actions;
    private final NewerVersion<TestPlan> newer;
    private final Action up;
    private final Action down;
    private final Action earlier;
    private final Action later;
    private final Action leaveOut;
    private final Action open;
    private final Action save;
    private final Action drop;
    private boolean isRefreshing;

    /**
     * Makes the page.
     *
     * @param openTrials turns the window to the trials of a mix
     * @param settings remembers the room, the spare and how loads differ
     */
    public PlanPage(DeskModel desk, Consumer<MixId> openTrials, Settings settings) {
        this.desk = desk;
        this.model = new PlanModel(desk, settings);
        this.texts = model.texts();
        this.text = PlanText.in(desk.tools().locale());
        this.openTrials = openTrials;
        doubts = new ProblemLines("plan.doubts", desk.tools().problemText());
        bar = new PlanBar(model, adding(), this::followed);
        table = new PlanTable(model);
        fetches = new RowTable<>("plan.fetches", texts.get("fetch.title"), fetchColumns());
        actions = new PlanActions(model, panel, told::say);
        newer = new NewerVersion<>(model, () -> panel);
        up = onChosen("act.up", mix -> model.move(mix, -1));
        down = onChosen("act.down", mix -> model.move(mix, 1));
        earlier = onChosen("act.earlier", mix -> model.moveDay(mix, -1));
        later = onChosen("act.later", mix -> model.moveDay(mix, 1));
        leaveOut = Commands.of(texts.get("act.leave-out"), this::leaveOut);
        open = onChosen("act.open", mix -> openTrials.accept(new MixId(mix)));
        save = Commands.of(texts.get("act.save"), this::save);
        drop = Commands.of(texts.get("act.drop"), this::dropDraft);
        build();
        model.history().onChange(this::followed);
        desk.onChange(this::followed);
        followed();
    }

    private Action onChosen(String key, Consumer<String> doing) {
        return Commands.of(texts.get(key), () -> {
            table.component().finishTyping();
            model.chosen().map(PlanLine::mix).ifPresent(doing);
        });
    }

    private List<ShownColumn<WeekPlan.Fetch>> fetchColumns() {
        return List.of(
                new ShownColumn<>(texts.get("fetch.source"), 60, WeekPlan.Fetch::source),
                new ShownColumn<>(texts.get("fetch.name"), 170, WeekPlan.Fetch::name),
                new ShownColumn<WeekPlan.Fetch>(texts.get("fetch.tests"), 50, fetch -> Integer.toString(fetch.tests()))
                        .number()
                        .sortedBy(WeekPlan.Fetch::tests),
                new ShownColumn<WeekPlan.Fetch>(
                                () -> texts.get(
                                        "fetch.mass", desk.units().batchMass().symbol()),
                                90,
                                fetch -> desk.tools()
                                        .numbers()
                                        .show(fetch.upwards(desk.units().batchMass())))
                        .number()
                        .sortedBy(fetch -> fetch.total().kilograms()));
    }

    private void build() {
        panel.setName("plan.page");
        panel.add(Form.heading(texts.get("page.title"), "h1"));
        panel.add(sentence, "wmin 0");
        panel.add(bar.component(), "wmin 0");
        panel.add(table.component().scrolled(), "hmin 110");
        panel.add(moving(), "wmin 0");
        panel.add(foot(), "hmin 90");
        panel.add(keeping(), "wmin 0");
        table.component()
                .onSelect(line -> line.ifPresent(known -> {
                    model.choose(Optional.of(known.mix()));
                    showChosen();
                }));
        PlanDrag.on(table.component(), model::moveTo);
        table.component().on("alt UP", up);
        table.component().on("alt DOWN", down);
        table.component().on("alt LEFT", earlier);
        table.component().on("alt RIGHT", later);
    }

    private JComponent moving() {
        JPanel line = row("[][][][]12[]12[]push");
        line.add(Commands.button("plan.up", up));
        line.add(Commands.button("plan.down", down));
        line.add(Commands.button("plan.day-earlier", earlier));
        line.add(Commands.button("plan.day-later", later));
        line.add(Commands.button("plan.leave-out", leaveOut));
        line.add(Commands.button("plan.open", open));
        return line;
    }

    private JComponent adding() {
        JPanel line = row("[][][]");
        mixToAdd.setName("plan.add-mix");
        mixToAdd.addActionListener(event -> add());
        line.add(Form.label(texts.get("field.add"), mixToAdd));
        line.add(mixToAdd, "wmin 72");
        line.add(Commands.button("plan.add", Commands.of(texts.get("act.add"), this::add)));
        return line;
    }

    private JComponent foot() {
        TallPanel chosen =
                new TallPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]", "[]4[]"));
        chosen.add(risk, "wmin 0");
        chosen.add(doubts.panel(), "wmin 0");
        JPanel parts = row("[grow 45,fill,0:0:]18[grow 55,fill,0:0:]");
        ((MigLayout) parts.getLayout()).setLayoutConstraints("insets 0, fill");
        ((MigLayout) parts.getLayout()).setRowConstraints("[grow,fill]");
        parts.add(chosen.scrolled(), "wmin 0");
        parts.add(fetches.scrolled(), "wmin 0");
        return parts;
    }

    private JComponent keeping() {
        JPanel line = row("[][]push[][]");
        line.add(newer.button("plan.save", save));
        line.add(Commands.button("plan.drop", drop));
        line.add(Commands.button("plan.print", actions.print));
        line.add(Commands.button("plan.pdf", actions.save));
        JPanel all = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]", "[]2[]"));
        all.setOpaque(false);
        all.add(newerText, "wmin 0");
        all.add(line, "wmin 0");
        all.add(told, "wmin 0");
        return all;
    }

    private static JPanel row(String columns) {
        JPanel line = new JPanel(new MigLayout("insets 0, fillx, gap 6", columns, "[]"));
        line.setOpaque(false);
        return line;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void focus() {
        table.component().requestFocusInWindow();
    }

    @Override
    public void finishTyping() {
        table.component().finishTyping();
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.history());
    }

    private void followed() {
        if (isRefreshing) {
            return;
        }
        isRefreshing = true;
        model.follow();
        isRefreshing = false;
        refresh();
    }

    private void refresh() {
        bar.refresh();
        table.refresh();
        fetches.show(model.shown().map(WeekPlan::fetches).orElse(List.of()));
        sentence.say(sentence());
        newerText.say(newer.words());
        Commands.say(save, newer.act(texts.get("act.save")));
        save.setEnabled(model.canSave());
        drop.setEnabled(model.history().isChanged());
        actions.refresh();
        showChosen();
    }

    private String sentence() {
        if (model.shown().isEmpty()) {
            return texts.get(desk.hasBook() ? "said.looking" : "said.no-book");
        }
        WeekPlan plan = model.shown().get();
        String who = model.history().isChanged()
                ? texts.get("said.changed")
                : model.base()
                        .map(kept -> texts.get(
                                "said.kept",
                                kept.stamp().who(),
                                Days.show(kept.stamp().at(), desk.tools().zone()),
                                Integer.toString(kept.number())))
                        .orElseGet(() -> texts.get("said.proposed"));
        long isNew = plan.tests().stream()
                .filter(test -> test.place().placing() == PlannedTest.Placing.NEW)
                .count();
        return texts.get("said.plan", Days.show(plan.from()), Days.show(plan.until()), who, isNew, plan.left());
    }

    private void showChosen() {
        Optional<PlanLine> chosen = model.chosen();
        boolean isTested = chosen.filter(PlanLine::isTested).isPresent();
        List.of(up, down, earlier, later).forEach(action -> action.setEnabled(isTested));
        leaveOut.setEnabled(chosen.isPresent());
        open.setEnabled(chosen.isPresent());
        Commands.say(leaveOut, texts.get(chosen.isPresent() && !isTested ? "act.put-back" : "act.leave-out"));
        Optional<PlannedTest> test = chosen.flatMap(PlanLine::test);
        risk.say(test.map(known ->
                        texts.get("said.test", known.mixId().text(), text.say(known.need()), text.say(known.risk())))
                .orElse(""));
        List<Problem> all = new ArrayList<>(model.problems());
        test.ifPresent(known -> {
            all.addAll(known.due());
            all.addAll(known.doubts());
        });
        doubts.show(all);
    }

    private Asker asker() {
        return desk.tools().asker();
    }

    private void leaveOut() {
        finishTyping();
        model.chosen().ifPresent(line -> {
            if (line.isTested()) {
                asker().reason(
                                panel,
                                texts.get("leave-out.title", line.mix()),
                                texts.get("leave-out.question"),
                                texts.get("leave-out.act"))
                        .ifPresent(why -> model.leaveOut(line.mix(), why));
            } else {
                model.putBack(line.mix());
            }
        });
    }

    private void add() {
        finishTyping();
        Optional<Problem> refused = model.add(mixToAdd.getText());
        if (refused.isPresent()) {
            told.say(desk.tools().problemText().say(refused.get()));
        } else {
            mixToAdd.setText("");
            told.say("");
        }
    }

    @Override
    public void dropDraft() {
        model.dropDraft();
        followed();
    }

    /** Keeps the plan as it is on view, or shows what is wrong with it, or what somebody else kept meanwhile. */
    @Override
    public void save() {
        finishTyping();
        newer.save(this::saveNewest);
    }

    private void saveNewest() {
        boolean good = model.trySaving();
        refresh();
        if (!good) {
            asker().problems(panel, texts.get("page.title"), model.problems());
            return;
        }
        if (model.history().isChanged() && asker().person(panel).isPresent()) {
            model.save(
                    texts.get(model.isNew() ? "why.first" : "why.again"),
                    Outcome.of(this::tell, failure -> asker().failure(panel, texts.get("doing.save"), failure)));
        }
    }

    private void tell(List<Problem> refused) {
        followed();
        if (!refused.isEmpty()) {
            asker().problems(panel, texts.get("page.title"), refused);
        }
    }
}
