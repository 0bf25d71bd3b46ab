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
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import porebench.chart.control.ControlPlot;
import porebench.desk.DeskModel;
import porebench.desk.form.Days;
import porebench.evidence.Evidence;
import porebench.evidence.FactorHistory;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.statistics.control.FalseAlarms;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;

/** The Over-time page without its window: what is wanted, what became of it, and what is said about it. */
final class OverTimeModel {
    private static final String BUNDLE = "porebench.desk.overtime.overtime";
    private final DeskModel desk;
    private final Texts texts;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Map<Alarms, Optional<FalseAlarms>> falseAlarms = new HashMap<>();
    private final Set<Alarms> underWay = new HashSet<>();
    private ChartChoice wishes = ChartChoice.usual();
    private String typedCount = Integer.toString(((BaseChoice.First) BaseChoice.USUAL).count());
    private String typedFrom = "";
    private String typedTo = "";
    private boolean isByDays;
    private List<Evidence> read = List.of();
    private FactorHistory history = new FactorHistory(List.of(), List.of());
    private Charted outcome;

    OverTimeModel(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of(BUNDLE, desk.tools().locale());
        this.outcome = Charted.of(history, wishes);
        follow();
        desk.onChange(this::follow);
    }

    Texts texts() {
        return texts;
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
        wishes = wanted.of(wanted.by(), id);
        outcome = Charted.of(history, wishes);
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

    private void change(UnaryOperator<ChartChoice> changed) {
        ChartChoice next = changed.apply(wishes);
        if (!next.equals(wishes)) {
            chart(next);
        }
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

    void choose(GroupedBy by) {
        change(now -> now.of(by, by == now.by() ? now.id() : ""));
    }

    void choose(String id) {
        change(now -> now.of(now.by(), id));
    }

    void choose(PhasedChart.Kind kind) {
        change(now -> now.withKind(kind));
    }

    void keepLimits(boolean isKept) {
        change(now -> now.withKept(isKept));
    }

    void ask(RunRule rule, boolean isAsked) {
        change(now -> now.with(rule, isAsked));
    }

    void split(Split split, boolean isSplit) {
        change(now -> now.with(split, isSplit));
    }

    /** Takes the base as typed; the chart keeps the one before as long as it cannot be read. */
    void typeBase(boolean byDays, String count, String from, String to) {
        isByDays = byDays;
        typedCount = count;
        typedFrom = from;
        typedTo = to;
        Optional<BaseChoice> base = typedBase();
        if (base.isPresent() && !base.get().equals(wishes.base())) {
            change(now -> now.withBase(base.get()));
        } else {
            List.copyOf(listeners).forEach(Runnable::run);
        }
    }

    boolean isByDays() {
        return isByDays;
    }

    String typedCount() {
        return typedCount;
    }

    String typedFrom() {
        return typedFrom;
    }

    String typedTo() {
        return typedTo;
    }

    private Optional<BaseChoice> typedBase() {
        if (!isByDays) {
            return typedCount.strip().matches("[0-9]{1,6}") && Integer.parseInt(typedCount.strip()) >= 2
                    ? Optional.of(new BaseChoice.First(Integer.parseInt(typedCount.strip())))
                    : Optional.empty();
        }
        Optional<LocalDate> from = Days.parse(typedFrom);
        Optional<LocalDate> to = Days.parse(typedTo);
        if (impossibleYear().isPresent()) {
            return Optional.empty();
        }
        return from.isPresent() && to.isPresent() && !to.get().isBefore(from.get())
                ? Optional.of(new BaseChoice.Between(from.get(), to.get()))
                : Optional.empty();
    }

    private Optional<Problem> impossibleYear() {
        return Stream.of(typedFrom, typedTo)
                .flatMap(typed -> Days.parse(typed).stream())
                .flatMap(day -> Days.checkYear("base", day).stream())
                .findFirst();
    }

    /** Says why the base cannot be read; blank when it can. */
    String baseRefusal() {
        if (typedBase().isPresent() || isByDays && typedFrom.isBlank() && typedTo.isBlank()) {
            return "";
        }
        Optional<Problem> year = isByDays ? impossibleYear() : Optional.empty();
        if (year.isPresent()) {
            return desk.tools().problemText().say(year.get());
        }
        return texts.get(isByDays ? "base.refused.days" : "base.refused.count");
    }

    String verdict() {
        return new StandingWords(outcome, signalWords(), texts).sentence();
    }

    List<String> remarks() {
        return new Remarks(outcome, texts, desk.tools().numbers()).all();
    }

    Optional<String> trend() {
        return new Trend(outcome, texts, desk.tools().numbers()).sentence();
    }

    List<String> phases() {
        return new PhaseWords(outcome, texts, desk.tools().numbers()).all();
    }

    SignalWords signalWords() {
        return new SignalWords(outcome, texts, desk.tools().numbers());
    }

    Optional<ControlPlot> plot() {
        return new PlotOfCharted(
                        outcome,
                        signalWords(),
                        texts,
                        desk.tools().numbers(),
                        desk.tools().problemText(),
                        knownFalseAlarms().map(FalseAlarms::pointsPerAlarm).orElse(OptionalDouble.empty()))
                .plot();
    }

    /** Says how close to the centre a limit may be. */
    String leastLimit() {
        return texts.get(
                "limits.least", desk.tools().numbers().show(outcome.series().divisionPercent(), 2));
    }

    /** Works out how often the chart signals by chance, off the event thread, unless that is known or under way. */
    void workOutFalseAlarms() {
        outcome.alarms()
                .filter(wanted -> !falseAlarms.containsKey(wanted) && underWay.add(wanted))
                .ifPresent(wanted -> desk.tools()
                        .tasks()
                        .run(
                                texts.get("alarms.title"),
                                wanted::simulated,
                                found -> know(wanted, Optional.of(found)),
                                failed -> know(wanted, Optional.empty())));
    }

    private void know(Alarms wanted, Optional<FalseAlarms> found) {
        underWay.remove(wanted);
        falseAlarms.put(wanted, found);
        List.copyOf(listeners).forEach(Runnable::run);
    }

    /** Returns how often the chart signals by chance, as far as that is worked out. */
    Optional<FalseAlarms> knownFalseAlarms() {
        return outcome.alarms().flatMap(wanted -> falseAlarms.getOrDefault(wanted, Optional.empty()));
    }

    /** Says how often the chart signals by chance. */
    String falseAlarms() {
        if (outcome.alarms().isEmpty()) {
            return texts.get("alarms.no-limits");
        }
        Alarms wanted = outcome.alarms().get();
        return knownFalseAlarms()
                .map(found -> new AlarmWords(texts, desk.tools().numbers()).said(wanted, found))
                .orElseGet(() -> texts.get(falseAlarms.containsKey(wanted) ? "alarms.stopped" : "alarms.pending"));
    }

    /** Returns what the plot shows, as its title. */
    String plotTitle() {
        return texts.get("plot.title." + ChoicePanel.symbol(wishes.kind()));
    }

    /** Returns what the plot is of, for the title of a picture. */
    String subject() {
        return texts.get("subject." + ChoicePanel.symbol(wishes.by()), wishes.id());
    }

    /** Returns the name a picture is saved under unless the person says otherwise. */
    String pictureName() {
        return wishes.id().replaceAll("[^\\p{L}\\p{N}_.-]", "-") + "-over-time.png";
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }
}
