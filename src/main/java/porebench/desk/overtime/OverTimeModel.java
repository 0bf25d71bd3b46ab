package porebench.desk.overtime;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import porebench.chart.control.ControlPlot;
import porebench.desk.DeskModel;
import porebench.desk.form.Days;
import porebench.desk.form.DraftModel;
import porebench.desk.form.FileNames;
import porebench.desk.form.TypedDraft;
import porebench.evidence.Evidence;
import porebench.evidence.FactorHistory;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.column.Column;
import porebench.statistics.control.FalseAlarms;

/** The Over-time page without its window: what is wanted, what became of it, and what is said about it. */
final class OverTimeModel extends DraftModel {
    private final DeskModel desk;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Map<Alarms, Optional<FalseAlarms>> falseAlarms = new HashMap<>();
    private final Set<Alarms> underWay = new HashSet<>();
    private BaseChoice base = BaseChoice.USUAL;
    private ChartChoice wishes = ChartChoice.of(draft(), base);
    private List<Evidence> read = List.of();
    private FactorHistory history = new FactorHistory(List.of(), List.of());
    private Charted outcome;

    OverTimeModel(DeskModel desk) {
        super(
                Texts.of("porebench.desk.overtime.overtime", desk.tools().locale()),
                ChartFields.LEAD,
                ChartChoice.usual());
        this.desk = desk;
        this.outcome = Charted.of(history, wishes);
        follow();
        desk.onChange(this::follow);
    }

    DeskModel desk() {
        return desk;
    }

    /** Reads all trials beside the event thread; nothing is worked out anew while they are the same. */
    private void follow() {
        LaboratoryStanding standing = desk.standing();
        desk.tools().tasks().workOut(standing::everything, all -> take(standing, all), failed -> {
            if (standing == desk.standing()) {
                throw new IllegalStateException("reading the trials of the laboratory", failed);
            }
        });
    }

    private void take(LaboratoryStanding standing, List<Evidence> all) {
        if (standing == desk.standing() && !isSame(all)) {
            read = all;
            history = FactorHistory.of(all);
            chart(wishes);
        }
    }

    /** Returns whether these are the very objects of the last reading; to compare all that is in them would take longer. */
    private boolean isSame(List<Evidence> all) {
        boolean same = all.size() == read.size() && !all.isEmpty();
        for (int i = 0; same && i < all.size(); i++) {
            same = all.get(i) == read.get(i);
        }
        return same;
    }

    private void chart(ChartChoice wanted) {
        List<String> ids = wanted.by().all(history);
        String id = ids.contains(wanted.id()) ? wanted.id() : usual(wanted.by(), ids);
        history().restart(draft().with(ChartFields.WHICH, id));
        wishes = ChartChoice.of(draft(), base);
        outcome = Charted.of(history, wishes);
        tell();
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    /** Returns what is looked at first: the selected mix, else the one with the most trials. */
    private String usual(GroupedBy by, List<String> ids) {
        Optional<String> selected =
                desk.selected().map(mix -> mix.text()).filter(mix -> by == GroupedBy.MIX && ids.contains(mix));
        return selected.orElseGet(() -> ids.stream()
                .reduce((one, other) -> count(by, other) > count(by, one) ? other : one)
                .orElse(""));
    }

    private long count(GroupedBy by, String id) {
        return history.made().stream().filter(made -> by.of(made).contains(id)).count();
    }

    // The form; nothing of it is undone.

    /** Takes what a person changed; the chart keeps the base before as long as the one that is typed cannot be read. */
    @Override
    public void update(String label, TypedDraft changed) {
        if (changed.equals(draft())) {
            return;
        }
        history().restart(changed);
        base = typedBase().orElse(base);
        ChartChoice next = ChartChoice.of(changed, base);
        if (next.equals(wishes)) {
            tell();
        } else {
            chart(next);
        }
    }

    /** Takes what was chosen or typed; whoever types a base means it, and another kind of thing has other names. */
    @Override
    public void type(Column<?, ?> column, String text) {
        TypedDraft typed = draft().with(column, text);
        if (column == ChartFields.COUNT) {
            typed = typed.with(ChartFields.BASE, ChartFields.FIRST);
        } else if (column == ChartFields.FROM || column == ChartFields.TO) {
            typed = typed.with(ChartFields.BASE, ChartFields.DAYS);
        } else if (column == ChartFields.BY && !text.equals(draft().text(column))) {
            typed = typed.with(ChartFields.WHICH, "");
        }
        update("", typed);
    }

    @Override
    public String key(Column<?, ?> column) {
        return column.field().substring(ChartFields.LEAD.length());
    }

    @Override
    public String step(Column<?, ?> column) {
        return "";
    }

    @Override
    public String tickWords(Column<?, ?> column) {
        return texts().get(key(column));
    }

    @Override
    public boolean isChosen(Column<?, ?> column) {
        return column == ChartFields.WHICH || super.isChosen(column);
    }

    /** Returns what there is to choose from, such as the mixes, sources, meters or operators. */
    @Override
    public List<String> choices(Column<?, ?> column) {
        return column == ChartFields.WHICH ? ids() : super.choices(column);
    }

    @Override
    public String choiceWords(Column<?, ?> column, String symbol) {
        return column == ChartFields.WHICH ? symbol : super.choiceWords(column, symbol);
    }

    @Override
    public boolean isFixed(Column<?, ?> column) {
        return column == ChartFields.WHICH && ids().isEmpty();
    }

    ChartChoice wishes() {
        return wishes;
    }

    Charted outcome() {
        return outcome;
    }

    /** Returns the mixes, sources, meters or operators to choose from. */
    List<String> ids() {
        return wishes.by().all(history);
    }

    private boolean isByDays() {
        return draft().text(ChartFields.BASE).equals(ChartFields.DAYS);
    }

    private Optional<BaseChoice> typedBase() {
        if (!isByDays()) {
            String count = draft().text(ChartFields.COUNT).strip();
            return count.matches("[0-9]{1,6}") && Integer.parseInt(count) >= 2
                    ? Optional.of(new BaseChoice.First(Integer.parseInt(count)))
                    : Optional.empty();
        }
        Optional<LocalDate> from = Days.parse(draft().text(ChartFields.FROM));
        Optional<LocalDate> to = Days.parse(draft().text(ChartFields.TO));
        if (impossibleYear().isPresent()) {
            return Optional.empty();
        }
        return from.isPresent() && to.isPresent() && !to.get().isBefore(from.get())
                ? Optional.of(new BaseChoice.Between(from.get(), to.get()))
                : Optional.empty();
    }

    private Optional<Problem> impossibleYear() {
        return Stream.of(draft().text(ChartFields.FROM), draft().text(ChartFields.TO))
                .flatMap(typed -> Days.parse(typed).stream())
                .flatMap(day -> Days.checkYear("base", day).stream())
                .findFirst();
    }

    /** Says why the base cannot be read; blank when it can. */
    String baseRefusal() {
        boolean isBlank = (draft().text(ChartFields.FROM) + draft().text(ChartFields.TO)).isBlank();
        if (typedBase().isPresent() || isByDays() && isBlank) {
            return "";
        }
        Optional<Problem> year = isByDays() ? impossibleYear() : Optional.empty();
        if (year.isPresent()) {
            return desk.tools().problemText().say(year.get());
        }
        return texts().get(isByDays() ? "base.refused.days" : "base.refused.count");
    }

    String verdict() {
        return words().verdict();
    }

    List<String> remarks() {
        return words().remarks();
    }

    Optional<String> trend() {
        return new Trend(outcome, texts(), desk.tools().numbers()).sentence();
    }

    List<String> phases() {
        return words().phases();
    }

    private OutcomeWords words() {
        return new OutcomeWords(outcome, signalWords(), texts(), desk.tools().numbers());
    }

    SignalWords signalWords() {
        return new SignalWords(outcome, texts(), desk.tools().numbers());
    }

    Optional<ControlPlot> plot() {
        return new PlotOfCharted(
                        outcome,
                        signalWords(),
                        texts(),
                        desk.tools().numbers(),
                        desk.tools().problemText(),
                        knownFalseAlarms().map(FalseAlarms::pointsPerAlarm).orElse(OptionalDouble.empty()))
                .plot();
    }

    /** Says how close to the centre a limit may be. */
    String leastLimit() {
        return texts().get(
                        "limits.least",
                        desk.tools().numbers().show(outcome.series().divisionPercent(), 2));
    }

    /** Works out how often the chart signals by chance, off the event thread, unless that is known or under way. */
    void workOutFalseAlarms() {
        outcome.alarms()
                .filter(wanted -> !falseAlarms.containsKey(wanted) && underWay.add(wanted))
                .ifPresent(wanted -> desk.tools()
                        .tasks()
                        .run(
                                texts().get("alarms.title"),
                                wanted::simulated,
                                found -> know(wanted, Optional.of(found)),
                                failed -> know(wanted, Optional.empty())));
    }

    private void know(Alarms wanted, Optional<FalseAlarms> found) {
        underWay.remove(wanted);
        falseAlarms.put(wanted, found);
        tell();
    }

    /** Returns how often the chart signals by chance, as far as that is worked out. */
    Optional<FalseAlarms> knownFalseAlarms() {
        return outcome.alarms().flatMap(wanted -> falseAlarms.getOrDefault(wanted, Optional.empty()));
    }

    /** Says how often the chart signals by chance. */
    String falseAlarms() {
        if (outcome.alarms().isEmpty()) {
            return texts().get("alarms.no-limits");
        }
        Alarms wanted = outcome.alarms().get();
        return knownFalseAlarms()
                .map(found -> words().alarms(wanted, found))
                .orElseGet(() -> texts().get(falseAlarms.containsKey(wanted) ? "alarms.stopped" : "alarms.pending"));
    }

    /** Returns what the plot shows, as its title. */
    String plotTitle() {
        return texts().get("plot.title." + ChartFields.symbol(wishes.kind()));
    }

    /** Returns what the plot is of, for the title of a picture. */
    String subject() {
        return texts().get("subject." + ChartFields.symbol(wishes.by()), wishes.id());
    }

    /** Returns the name a picture is saved under unless the person says otherwise. */
    String pictureName() {
        return FileNames.part(wishes.id()) + "-over-time.png";
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    @Override
    public Optional<LocalDate> today() {
        return Optional.of(desk.tools().today());
    }
}
