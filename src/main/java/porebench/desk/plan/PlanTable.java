package porebench.desk.plan;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import porebench.desk.StateMark;
import porebench.desk.form.Choices;
import porebench.desk.form.Days;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.FactorState;
import porebench.evidence.plan.PlanText;
import porebench.evidence.plan.PlannedTest;
import porebench.method.Texts;
import porebench.record.TestPlan;
import porebench.record.column.Column;
import porebench.record.column.PlanColumns;

/** The tests of a plan, a line a mix; day, trials, meter, person and remark are typed or chosen in place. */
final class PlanTable {
    private static final int MARK_SIDE = 12;

    private final PlanModel model;
    private final Texts texts;
    private final PlanText text;
    private final JComboBox<String> days;
    private final JComboBox<String> meters;
    private final RowTable<PlanLine> table;

    PlanTable(PlanModel model) {
        this.model = model;
        this.texts = model.texts();
        this.text = PlanText.in(texts.locale());
        days = Choices.of("plan.day", List.<String>of(), this::dayWords, day -> {});
        meters = Choices.of("plan.meter", List.<String>of(), Function.identity(), meter -> {});
        table = new RowTable<>("plan.table", texts.get("page.title"), columns());
        // What is moved is a whole line.
        table.setColumnSelectionAllowed(false);
    }

    RowTable<PlanLine> component() {
        return table;
    }

    private List<ShownColumn<PlanLine>> columns() {
        return List.of(
                edited(PlanColumns.DAY, 134, line -> dayWords(line.day())).editor(new DefaultCellEditor(days)),
                new ShownColumn<>(texts.get("row.mixId"), 70, PlanLine::mix),
                new ShownColumn<PlanLine>(texts.get("row.need"), 190, line -> said(line, test -> text.say(test.need())))
                        .mark((line, selected) -> new StateMark(
                                line.test().map(PlannedTest::state).orElse(FactorState.NO_FACTOR), MARK_SIDE)),
                new ShownColumn<PlanLine>(
                                texts.get("row.risk"), 96, line -> said(line, test -> text.brief(test.risk())))
                        .tip(texts.get("row.risk.tip")),
                edited(PlanColumns.TRIALS, 50, this::trials).number(),
                edited(PlanColumns.METER, 62, this::meter).editor(new DefaultCellEditor(meters)),
                edited(PlanColumns.WHO, 100, line -> line.typed().text(PlanColumns.WHO)),
                new ShownColumn<>(texts.get("row.placing"), 112, this::placing),
                edited(PlanColumns.REMARK, 160, line -> line.typed().text(PlanColumns.REMARK)),
                new ShownColumn<>(texts.get("row.title"), 190, line -> said(line, PlannedTest::title)));
    }

    private ShownColumn<PlanLine> edited(Column<TestPlan.Row, ?> column, int width, Function<PlanLine, String> words) {
        return new ShownColumn<>(texts.get("row." + column.field()), width, words)
                .edited(
                        line -> line.isTested() || column == PlanColumns.REMARK,
                        line -> line.typed().text(column),
                        (line, typed) -> {
                            model.type(line.mix(), column, typed);
                            return true;
                        })
                .problems(
                        line -> model.problems(line.mix(), column),
                        model.desk().tools().problemText());
    }

    private static String said(PlanLine line, Function<PlannedTest, String> words) {
        return line.test().map(words).orElse("");
    }

    private String dayWords(String day) {
        return Days.parse(day)
                .map(known -> texts.get(
                        "row.weekday", known.getDayOfWeek().getDisplayName(TextStyle.SHORT, texts.locale()), day))
                .orElse(day);
    }

    private String placing(PlanLine line) {
        PlannedTest.Placing placing = switch (line.mark()) {
            case LEFT_OUT -> PlannedTest.Placing.LEFT_OUT;
            case BY_HAND -> PlannedTest.Placing.BY_HAND;
            case ASKED ->
                line.isArranged()
                        ? PlannedTest.Placing.KEPT
                        : line.test().map(test -> test.place().placing()).orElse(PlannedTest.Placing.PROPOSED);
        };
        return text.say(placing);
    }

    /** Returns what is arranged, or else what is worked out. */
    private String trials(PlanLine line) {
        String typed = line.typed().text(PlanColumns.TRIALS);
        return typed.isEmpty() ? said(line, test -> Integer.toString(test.trials())) : typed;
    }

    private String meter(PlanLine line) {
        String typed = line.typed().text(PlanColumns.METER);
        return typed.isEmpty()
                ? said(line, test -> test.meter().map(meter -> meter.text()).orElse(""))
                : typed;
    }

    /** Shows the lines as they are, the chosen one selected. */
    void refresh() {
        List<LocalDate> week = model.from().map(TestPlan::days).orElse(List.of());
        Choices.offer(days, week.stream().map(Days::show).toList());
        List<String> known = new ArrayList<>(model.desk().meters().stream()
                .map(story -> story.meter().value().id().text())
                .toList());
        known.add(0, "");
        Choices.offer(meters, known);
        table.show(model.lines());
        Optional<String> chosen = model.chosen().map(PlanLine::mix);
        table.select(line -> chosen.filter(line.mix()::equals).isPresent());
        if (table.getSelectedColumn() < 0) {
            table.setColumnSelectionInterval(0, 0);
        }
    }
}
