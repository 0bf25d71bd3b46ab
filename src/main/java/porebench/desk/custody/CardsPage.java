package porebench.desk.custody;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.Screen;
import porebench.desk.form.Choices;
import porebench.desk.form.Commands;
import porebench.desk.form.DayPicker;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.Typing;
import porebench.desk.form.WrappedText;
import porebench.desk.table.FilterLine;
import porebench.method.Texts;
import porebench.record.CardHolder;
import porebench.record.CardStep;
import porebench.record.id.MixId;

/** Who holds which factor card: what happened to one or many is said at once, and the list to call them back is printed. */
public final class CardsPage implements Screen {
    private static final int NAME_COLUMNS = 10;
    private static final int TIME_COLUMNS = 12;
    private static final int REMARK_COLUMNS = 20;

    private final JPanel panel = new JPanel(new MigLayout(
            "insets 18 22 14 22, fill, wrap 1, hidemode 3", "[grow,fill,0::]", "[]4[]2[]10[]8[grow,fill]10[]6[]6[]"));
    private final CardsModel model;
    private final Texts texts;
    private final CardsTable table;
    private final CardsActions actions;
    private final WrappedText sentence = new WrappedText("cards.sentence", "quiet");
    private final WrappedText alarm = new WrappedText("cards.alarm", "caution");
    private final WrappedText told = new WrappedText("cards.told", "quiet");
    private final ProblemLines problems;
    private final JComboBox<CardsModel.View> views;
    private final JComboBox<CardHolder.Kind> kinds;
    private final JTextField name = new JTextField(NAME_COLUMNS);
    private final JTextField at = new JTextField(TIME_COLUMNS);
    private final JTextField remark = new JTextField(REMARK_COLUMNS);
    private boolean isShowing;

    /**
     * Makes the page.
     *
     * @param openMix turns the window to a mix
     */
    public CardsPage(DeskModel desk, Consumer<MixId> openMix) {
        model = new CardsModel(desk);
        texts = model.texts();
        table = new CardsTable(model, this::refresh);
        actions = new CardsActions(model, panel, openMix, this::refresh);
        problems = new ProblemLines("cards.problems", desk.tools().problemText());
        views = Choices.of(
                "cards.view", List.of(CardsModel.View.values()), view -> texts.get("view." + view.symbol()), view -> {
                    model.show(view);
                    refresh();
                });
        kinds = Choices.of(
                "cards.kind",
                List.of(CardHolder.Kind.values()),
                kind -> texts.get("kind." + kind.symbol()),
                model::kind);
        panel.setName("cards.page");
        panel.add(Form.heading(texts.get("page.title"), "h1"));
        panel.add(sentence, "wmin 0");
        panel.add(alarm, "wmin 0");
        panel.add(bar(desk), "wmin 0");
        panel.add(table.component().scrolled(), "hmin 120");
        panel.add(said(), "wmin 0");
        panel.add(buttons(), "wmin 0");
        panel.add(problems.panel(), "wmin 0");
        panel.add(told, "wmin 0");
        table.component().on("ENTER", actions.open);
        desk.onChange(this::refresh);
        refresh();
    }

    @Override
    public JComponent component() {
        return panel;
    }

    /** Shows some cards, chosen, by the names of their records; without any those that have to come back. */
    public void show(List<String> cards) {
        model.show(cards.isEmpty() ? CardsModel.View.TO_COME_BACK : CardsModel.View.ALL);
        model.choose(cards);
        refresh();
        if (!cards.isEmpty()) {
            name.requestFocusInWindow();
        }
    }

    private static JPanel line(String columns) {
        JPanel line = new JPanel(new MigLayout("insets 0, fillx, gap 6", columns, "[]"));
        line.setOpaque(false);
        return line;
    }

    private JComponent bar(DeskModel desk) {
        JPanel bar = line("[]6[]12[grow]");
        bar.add(Form.label(texts.get("view"), views));
        bar.add(views, "wmin 120");
        bar.add(
                new FilterLine(table.component(), desk.tools().locale()).component(),
                "wmin 140, wmax 320, growx, wrap");
        bar.add(Commands.button("cards.carried", actions.carried), "spanx, split 4");
        bar.add(Commands.button("cards.print", actions.print));
        bar.add(Commands.button("cards.save", actions.save));
        bar.add(Commands.button("cards.check", actions.check));
        return bar;
    }

    /** What is said of the chosen cards: to whom, when, and anything else. */
    private JComponent said() {
        JPanel line = line("[][][]14[][]14[][grow,fill]");
        field(name, "cards.name", model::name);
        field(at, "cards.at", model::at);
        field(remark, "cards.remark", model::remark);
        at.setToolTipText(texts.get("at.tip"));
        DayPicker.onMoment(at, () -> model.desk().tools().today(), texts.locale());
        line.add(Form.label(texts.get("to"), kinds));
        line.add(kinds);
        line.add(name, "wmin 90");
        name.getAccessibleContext().setAccessibleName(texts.get("name"));
        line.add(Form.label(texts.get("at"), at));
        line.add(at, "wmin 130");
        line.add(Form.label(texts.get("remark"), remark));
        line.add(remark, "wmin 90");
        return line;
    }

    private void field(JTextField field, String called, Consumer<String> taken) {
        field.setName(called);
        Typing.follow(field, typed -> {
            if (!isShowing) {
                taken.accept(typed);
            }
        });
    }

    private JComponent buttons() {
        JPanel line = line("[][][][][][]push[]");
        for (CardStep.Act act : CardStep.Act.values()) {
            line.add(Commands.button(
                    "cards." + act.symbol(),
                    Optional.ofNullable(actions.acts.get(act)).orElseThrow()));
        }
        line.add(Commands.button("cards.open", actions.open));
        return line;
    }

    private void refresh() {
        isShowing = true;
        sentence.say(model.sentence());
        String words = model.alarmWords();
        alarm.setText(words);
        alarm.setVisible(!words.isEmpty());
        Choices.show(views, List.of(CardsModel.View.values()), Optional.of(model.view()));
        Choices.show(kinds, List.of(CardHolder.Kind.values()), Optional.of(model.kind()));
        Typing.show(name, model.name());
        Typing.show(at, model.at());
        Typing.show(remark, model.remark());
        isShowing = false;
        table.refresh();
        actions.refresh();
        problems.show(model.problems());
        told.say(model.told());
    }
}
