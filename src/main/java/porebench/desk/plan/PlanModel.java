package porebench.desk.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.Question;
import porebench.desk.RecordDraft;
import porebench.desk.Settings;
import porebench.desk.form.Days;
import porebench.desk.form.DraftReader;
import porebench.desk.form.PartWords;
import porebench.desk.form.TypedDraft;
import porebench.evidence.plan.Need;
import porebench.evidence.plan.WeekPlan;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.TestPlan;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.PlanColumns;

/**
 * The plan of seven days: what asks for a test, as a person arranges it, without its window.
 *
 * <p>As long as nothing was moved or typed it is what is kept, merged with what asks today, or else what is proposed. The first change takes
 * all that is on view over into the draft.
 */
final class PlanModel extends RecordDraft<TestPlan> {
    private final PlanFields fields;
    private Optional<LocalDate> from = Optional.empty();
    private boolean isLoaded;
    private Optional<WeekPlan> shown = Optional.empty();
    private Optional<TestPlan> arranged = Optional.empty();
    private Optional<String> chosen = Optional.empty();
    private Optional<Judged> judged = Optional.empty();

    PlanModel(DeskModel desk, Settings settings) {
        super(desk, Texts.of("porebench.desk.plan.plan", desk.tools().locale()), TestPlan.class, PlanColumns.ALL);
        fields = new PlanFields(texts(), desk.tools().numbers(), settings);
        history().onChange(this::workOut);
        follow();
    }

    PlanFields fields() {
        return fields;
    }

    // Which days.

    /** Returns the first day; empty while it is looked up which plan is opened first. */
    Optional<LocalDate> from() {
        return from;
    }

    /** Turns to the seven days from another day on; what was arranged of those before stays kept outside the lab book. */
    void show(LocalDate day) {
        if (!from.equals(Optional.of(day))) {
            turnAway();
            from = Optional.of(day);
            isLoaded = false;
            shown = Optional.empty();
            restart(Optional.empty(), blank(day));
            follow();
        }
    }

    private TypedDraft blank(LocalDate day) {
        return TypedDraft.BLANK.with(PlanColumns.FROM, Days.show(day));
    }

    /** Follows the lab book: with a draft it stays as it is, without one it shows the newest version. */
    void follow() {
        if (isOfAnotherBook()) {
            turnAway();
            from = Optional.empty();
            isLoaded = false;
            shown = Optional.empty();
            restart(Optional.empty(), TypedDraft.BLANK);
        }
        if (!desk().hasBook()) {
            return;
        }
        if (from.isEmpty()) {
            from = desk().answer(new FirstDay(desk().tools().today()));
        }
        from.ifPresent(day -> desk().answer(new Question.One<>(TestPlan.class, Days.show(day)))
                .ifPresent(found -> load(day, found)));
        workOut();
    }

    private void workOut() {
        plan().ifPresent(plan -> shown = Optional.of(plan));
    }

    private void load(LocalDate day, Optional<Version<TestPlan>> found) {
        if (!isLoaded) {
            isLoaded = true;
            turnTo(
                    "plan/" + Days.show(day),
                    found,
                    found.map(version -> typed(version.value())).orElseGet(() -> blank(day)));
        } else if (!history().isChanged() && !found.equals(base())) {
            restart(found, found.map(version -> typed(version.value())).orElseGet(() -> blank(day)));
        }
    }

    @Override
    protected TypedDraft typed(TestPlan plan) {
        return TypedDraft.of(PlanColumns.ALL, plan, desk().tools().numbers());
    }

    // What is on view.

    private List<TypedDraft> rows() {
        return draft().rows(PlanColumns.ROWS);
    }

    /** Returns the plan as it is arranged now, what is worked out with it; empty while that is not known. */
    Optional<WeekPlan> plan() {
        if (from.isEmpty() || !isLoaded) {
            return Optional.empty();
        }
        DraftReader reader = reader(draft());
        List<TestPlan.Row> read =
                List.copyOf(reader.rows(PlanColumns.ROWS, PlanColumns.OF_ROWS).values());
        if (read.size() == rows().size()) {
            arranged = read.isEmpty() ? Optional.empty() : Optional.of(new TestPlan(from.get(), read));
        }
        return desk().answer(new PlanAsked(from.get(), desk().tools().today(), arranged, fields.figures()));
    }

    /** Returns what was worked out last for the days on view. */
    Optional<WeekPlan> shown() {
        return shown;
    }

    /** Returns the lines by day, those left out last. */
    List<PlanLine> lines() {
        return PlanLine.all(rows(), shown);
    }

    void choose(Optional<String> mix) {
        chosen = mix;
    }

    /** Returns the chosen line, or the first one. */
    Optional<PlanLine> chosen() {
        List<PlanLine> lines = lines();
        return lines.stream()
                .filter(line -> chosen.filter(line.mix()::equals).isPresent())
                .findFirst()
                .or(() -> lines.stream().findFirst());
    }

    // What a person arranges.

    private void arrange(String label, List<TypedDraft> rows) {
        history().update(label, draft().with(PlanColumns.ROWS, rows));
    }

    private List<TypedDraft> onView() {
        return new ArrayList<>(lines().stream().map(PlanLine::typed).toList());
    }

    private void change(String label, String mix, UnaryOperator<TypedDraft> changing) {
        arrange(
                label,
                onView().stream()
                        .map(row -> row.text(PlanColumns.MIX).equals(mix) ? changing.apply(row) : row)
                        .toList());
    }

    /** Takes what was typed or chosen of a mix. */
    void type(String mix, Column<TestPlan.Row, ?> column, String text) {
        Optional<PlanLine> line = line(mix);
        if (line.filter(known -> !known.typed().text(column).equals(text)).isPresent()) {
            change(
                    texts().get("step.cell", mix, texts().get("row." + column.field() + ".plain")),
                    mix,
                    row -> row.with(column, text));
        }
    }

    private Optional<PlanLine> line(String mix) {
        return lines().stream().filter(line -> line.mix().equals(mix)).findFirst();
    }

    /** Moves a test up (-1) or down (1): past the next one of its day, or else to the day before or after. */
    void move(String mix, int by) {
        List<PlanLine> lines = lines().stream().filter(PlanLine::isTested).toList();
        Optional<PlanLine> moved = line(mix).filter(PlanLine::isTested);
        if (moved.isEmpty()) {
            return;
        }
        int at = lines.indexOf(moved.get());
        int other = at + by;
        boolean isSameDay = other >= 0
                && other < lines.size()
                && lines.get(other).day().equals(lines.get(at).day());
        if (!isSameDay) {
            moveDay(mix, by);
            return;
        }
        List<TypedDraft> rows = onView();
        TypedDraft own = rows.get(at);
        rows.set(at, rows.get(other));
        rows.set(other, own);
        arrange(texts().get("step.move", mix), rows);
    }

    /** Moves a test to the place of another, on its day: before it from below, after it from above. */
    void moveTo(String mix, String place) {
        List<PlanLine> lines = lines();
        Optional<PlanLine> moved = line(mix).filter(PlanLine::isTested);
        Optional<PlanLine> other = line(place).filter(PlanLine::isTested);
        if (moved.isPresent() && other.isPresent() && !mix.equals(place)) {
            List<TypedDraft> rows = onView();
            TypedDraft own = rows.remove(lines.indexOf(moved.get()));
            rows.add(
                    lines.indexOf(other.get()),
                    own.with(PlanColumns.DAY, other.get().day()));
            choose(Optional.of(mix));
            arrange(texts().get("step.move", mix), rows);
        }
    }

    /** Moves a test to the day before (-1) or after (1), within the seven days. */
    void moveDay(String mix, int by) {
        line(mix)
                .filter(PlanLine::isTested)
                .flatMap(line -> Days.parse(line.day()))
                .map(day -> day.plusDays(by))
                .filter(day -> from.map(TestPlan::days).orElse(List.of()).contains(day))
                .ifPresent(day ->
                        change(texts().get("step.move", mix), mix, row -> row.with(PlanColumns.DAY, Days.show(day))));
    }

    /** Puts a mix on the plan by hand, on the day of the chosen test; returns why it cannot be. */
    Optional<Problem> add(String typed) {
        String mix = typed.strip();
        if (mix.isEmpty()) {
            return Optional.of(Problem.missing("add", texts().get("name.add")));
        }
        if (desk().rows().stream().noneMatch(row -> row.mixId().text().equals(mix))) {
            return Optional.of(Problem.error(
                    "add", "plan.unknown-mix", from.map(Days::show).orElse(""), mix));
        }
        if (line(mix).isPresent()) {
            return Optional.of(Problem.error(
                    "add", "plan.mix-twice", mix, from.map(Days::show).orElse("")));
        }
        List<TypedDraft> rows = onView();
        rows.add(TypedDraft.BLANK
                .with(PlanColumns.MIX, mix)
                .with(PlanColumns.DAY, dayToAdd())
                .with(PlanColumns.MARK, TestPlan.Mark.BY_HAND.symbol()));
        arrange(texts().get("step.add", mix), rows);
        choose(Optional.of(mix));
        return Optional.empty();
    }

    /** Returns the day of the chosen test, or else of the first one. */
    private String dayToAdd() {
        return Stream.concat(chosen().stream(), lines().stream())
                .filter(PlanLine::isTested)
                .map(PlanLine::day)
                .findFirst()
                .orElseGet(() -> from.map(Days::show).orElse(""));
    }

    /** Leaves a mix out for a reason. */
    void leaveOut(String mix, String why) {
        change(
                texts().get("step.leave-out", mix),
                mix,
                row -> row.with(PlanColumns.MARK, TestPlan.Mark.LEFT_OUT.symbol())
                        .with(PlanColumns.REMARK, why));
    }

    /** Puts a mix back on the plan that was left out. */
    void putBack(String mix) {
        boolean asks = line(mix)
                .flatMap(PlanLine::test)
                .filter(test -> test.need() != Need.NO_MORE)
                .isPresent();
        TestPlan.Mark mark = asks ? TestPlan.Mark.ASKED : TestPlan.Mark.BY_HAND;
        change(
                texts().get("step.put-back", mix),
                mix,
                row -> row.with(PlanColumns.MARK, mark.symbol()).with(PlanColumns.REMARK, ""));
    }

    /** Drops what was arranged and shows what is kept or proposed. */
    void dropDraft() {
        if (!takeBack(texts().get("step.drop"))) {
            giveUp(texts().get("step.drop"), () -> from.ifPresent(this::begin), () -> {});
        }
    }

    private void begin(LocalDate day) {
        forgetTyped();
        restart(base(), base().map(version -> typed(version.value())).orElseGet(() -> blank(day)));
        isLoaded = false;
        follow();
    }

    // What is wrong, and how it is kept.

    @Override
    public String key(Column<?, ?> column) {
        return "plan." + column.field();
    }

    private DraftReader reader(TypedDraft typed) {
        return new DraftReader(
                typed, desk().tools().numbers(), this::words, (row, thing, cell) -> words().cell(row, thing, cell));
    }

    private PlanWords words() {
        return new PlanWords(texts());
    }

    /** Returns the draft as it can be kept, or what is wrong; looked at once as long as neither it nor the lab book changes. */
    private Answer<TestPlan> read() {
        if (judged.filter(known -> known.isOf(draft(), desk())).isEmpty()) {
            judged = Optional.of(Judged.of(draft(), reader(draft()), desk(), this::wording));
        }
        return judged.orElseThrow().answer();
    }

    /** Returns what is wrong with what is arranged. */
    List<Problem> problems() {
        return rows().isEmpty() ? List.of() : read().problems();
    }

    /** Returns what is wrong with a cell. */
    List<Problem> problems(String mix, Column<TestPlan.Row, ?> column) {
        for (int at = 0; at < rows().size(); at++) {
            if (rows().get(at).text(PlanColumns.MIX).equals(mix)) {
                String field = PlanColumns.ROWS.field() + "." + at + "." + column.field();
                return problems().stream()
                        .filter(problem -> problem.field().equals(field))
                        .toList();
            }
        }
        return List.of();
    }

    /** Returns whether there is anything to keep: something arranged, or on view and not kept yet. */
    boolean canSave() {
        return history().isChanged() || lines().stream().anyMatch(line -> !line.isArranged());
    }

    /** Takes over what is on view, so that it is kept as it is seen; returns whether it can be. */
    boolean trySaving() {
        setTried();
        if (lines().stream().anyMatch(line -> !line.isArranged())) {
            arrange(texts().get("step.take-over"), onView());
        }
        return read().value().isPresent();
    }

    /**
     * Keeps the plan.
     *
     * @param outcome hears why it was not kept; empty when it was
     */
    void save(String why, Outcome outcome) {
        TestPlan plan = read().value().orElseThrow();
        desk().keep(List.of(kept(plan)), why, outcome.first(() -> {
            forgetTyped();
            isLoaded = false;
            restart(Optional.empty(), typed(plan));
            follow();
        }));
    }

    @Override
    protected List<Column<TestPlan, ?>> compared() {
        return List.of(PlanColumns.ROWS);
    }

    @Override
    protected PartWords partWords(Column<?, ?> column) {
        return words();
    }

    /** A test is known by its mix. */
    @Override
    protected List<List<Column<?, ?>>> partNames(Column<?, ?> column) {
        return List.of(List.of(PlanColumns.MIX));
    }
}
