package porebench.desk.plan;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Commands;
import porebench.desk.form.DayPicker;
import porebench.desk.form.Days;
import porebench.desk.form.Form;
import porebench.desk.form.ProblemLines;
import porebench.desk.form.Typing;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.TestPlan;

/** The bar over the plan: which days, for how many mixes, how much spare, how loads differ. */
final class PlanBar {
    private static final int FIGURE_COLUMNS = 5;
    private static final int DAY_COLUMNS = 8;

    private final PlanModel model;
    private final Texts texts;
    private final JPanel bar =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]", "[]4[]4[]"));
    private final JTextField from = new JTextField(DAY_COLUMNS);
    private final Map<PlanFields.Field, JTextField> fields = new EnumMap<>(PlanFields.Field.class);
    private final ProblemLines problems;
    private final Runnable changed;
    private boolean showing;
    private String typedDay = "";

    /**
     * Makes the bar.
     *
     * @param adding puts a mix on the plan
     * @param changed is called when other days or figures are wanted
     */
    PlanBar(PlanModel model, JComponent adding, Runnable changed) {
        this.model = model;
        this.texts = model.texts();
        this.changed = changed;
        problems = new ProblemLines("plan.figures", model.desk().tools().problemText());
        JPanel line = line("[][][][]push[]");
        JPanel figures = line("[][]12[][]12[][]push");
        bar.setOpaque(false);
        from.setName("plan.from");
        line.add(Form.label(texts.get("field.from"), from));
        DayPicker.onDay(from, () -> model.desk().tools().today(), texts.locale());
        line.add(from, "wmin 110");
        line.add(Commands.button(
                "plan.earlier", Commands.of(texts.get("act.earlier-week"), () -> week(-TestPlan.DAYS))));
        line.add(Commands.button("plan.later", Commands.of(texts.get("act.later-week"), () -> week(TestPlan.DAYS))));
        line.add(adding);
        for (PlanFields.Field field : PlanFields.Field.values()) {
            add(field, figures);
        }
        Typing.follow(from, typed -> {
            if (!showing) {
                typedDay = typed;
                Days.parse(typed)
                        .filter(day -> Days.checkYear("from", day).isEmpty())
                        .ifPresent(this::turnTo);
                problems.show(wrong());
            }
        });
        bar.add(line, "wmin 0");
        bar.add(figures, "wmin 0");
        bar.add(problems.panel(), "wmin 0");
    }

    private static JPanel line(String columns) {
        JPanel line = new JPanel(new MigLayout("insets 0, fillx, gap 6", columns, "[]"));
        line.setOpaque(false);
        return line;
    }

    private void add(PlanFields.Field field, JPanel line) {
        JTextField input = new JTextField(FIGURE_COLUMNS);
        input.setName("plan." + field.symbol());
        fields.put(field, input);
        JLabel label = Form.label(texts.get("field." + field.symbol()), input);
        line.add(label, "wmin 0");
        line.add(input, "wmin 72");
        Typing.follow(input, typed -> {
            if (!showing) {
                model.fields().type(field, typed);
                changed.run();
            }
        });
    }

    private void week(int by) {
        model.from().map(day -> day.plusDays(by)).ifPresent(day -> {
            typedDay = "";
            turnTo(day);
        });
    }

    private void turnTo(LocalDate day) {
        model.show(day);
        changed.run();
    }

    JComponent component() {
        return bar;
    }

    private List<Problem> wrong() {
        Optional<Problem> noDay = Optional.of(typedDay)
                .filter(typed -> !typed.isBlank() && Days.parse(typed).isEmpty())
                .map(typed -> Problem.error("from", "plan.no-day", typed));
        return Stream.concat(noDay.stream(), model.fields().problems().stream()).toList();
    }

    void refresh() {
        showing = true;
        String day = model.from().map(Days::show).orElse("");
        if (Days.parse(typedDay).isPresent() || typedDay.isBlank()) {
            Typing.show(from, day);
        }
        fields.forEach((field, input) -> Typing.show(input, model.fields().text(field)));
        showing = false;
        problems.show(wrong());
    }
}
