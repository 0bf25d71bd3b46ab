package porebench.desk.field;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.Settings;
import porebench.desk.form.Days;
import porebench.evidence.paper.FieldList;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.FieldReading;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/** The page of field readings without its window: which days and mix are on view, the lines, the chosen one, and the form. */
final class FieldsModel {
    static final String BUNDLE = "porebench.desk.field.field";
    private static final int DAYS = 30;
    private static final String GUARDED = "readings.guarded";
    private static final String YES = "yes";
    /** In standard uncertainties: the expanded uncertainty at about 95 %, as JCGM 106:2012, 8.3.2 has it (recalled). */
    private static final BigDecimal GUARD = BigDecimal.valueOf(2);

    private final DeskModel desk;
    private final Texts texts;
    private final Settings settings;
    private final FieldEntry entry;
    private Optional<String> firstTyped = Optional.empty();
    private Optional<String> lastTyped = Optional.empty();
    private String mixTyped = "";
    private Optional<String> chosen = Optional.empty();
    private List<FieldLine> shown = List.of();

    /**
     * Makes the page.
     *
     * @param settings remembers whether readings are judged with a guard band
     */
    FieldsModel(DeskModel desk, Settings settings) {
        this.desk = desk;
        this.settings = settings;
        this.texts = Texts.of(BUNDLE, desk.tools().locale());
        this.entry = new FieldEntry(desk, texts, this::guardWidth);
    }

    DeskModel desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    FieldWords words() {
        return new FieldWords(texts, desk.tools().numbers(), desk.tools().problemText());
    }

    FieldEntry entry() {
        return entry;
    }

    // Which readings.

    /** Returns the first day as it is typed; thirty days up to today until somebody types another. */
    String first() {
        return firstTyped.orElseGet(() -> Days.show(desk.tools().today().minusDays(DAYS - 1L)));
    }

    String last() {
        return lastTyped.orElseGet(() -> Days.show(desk.tools().today()));
    }

    String mix() {
        return mixTyped;
    }

    void typeFirst(String day) {
        firstTyped = Optional.of(day);
    }

    void typeLast(String day) {
        lastTyped = Optional.of(day);
    }

    void typeMix(String mix) {
        mixTyped = mix;
    }

    /** Shows the readings of one mix, of the days that are on view. */
    void showMix(MixId mix) {
        mixTyped = mix.text();
        chosen = Optional.empty();
    }

    /** Shows a reading among those of its mix, chosen; its day comes to those on view where it is not among them. */
    void showReading(FieldReading reading) {
        showMix(reading.mixId());
        LocalDate day = reading.readAt().toLocalDate();
        if (Days.parse(first()).filter(first -> !first.isAfter(day)).isEmpty()) {
            firstTyped = Optional.of(Days.show(day));
        }
        if (Days.parse(last()).filter(last -> !last.isBefore(day)).isEmpty()) {
            lastTyped = Optional.of(Days.show(day));
        }
        choose(Optional.of(reading.recordId()));
    }

    boolean isGuarded() {
        return settings.get(GUARDED, "").equals(YES);
    }

    /** Returns how many standard uncertainties wide the guard band is; empty where none is wanted. */
    Optional<BigDecimal> guardWidth() {
        return isGuarded() ? Optional.of(GUARD) : Optional.empty();
    }

    void guard(boolean isWanted) {
        settings.put(GUARDED, isWanted ? YES : "");
    }

    /** Returns what is wrong with the days and the mix that are typed. */
    List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        Optional<LocalDate> first = day("first", first(), problems);
        Optional<LocalDate> last = day("last", last(), problems);
        if (first.isPresent() && last.isPresent() && first.get().isAfter(last.get())) {
            problems.add(Problem.error("last", "readings.days-turned", last(), first()));
        }
        return problems;
    }

    private static Optional<LocalDate> day(String field, String typed, List<Problem> problems) {
        Optional<LocalDate> day = Days.parse(typed);
        if (day.isEmpty()) {
            problems.add(Problem.error(field, "form.not-a-date", typed));
        }
        Optional<Problem> year = day.flatMap(known -> Days.checkYear(field, known));
        year.ifPresent(problems::add);
        return year.isPresent() ? Optional.empty() : day;
    }

    private Optional<FieldAsked> asked() {
        return problems().isEmpty() && desk.hasBook()
                ? Optional.of(new FieldAsked(
                        Days.parse(first()).orElseThrow(),
                        Days.parse(last()).orElseThrow(),
                        Optional.of(mixTyped.strip())
                                .filter(typed -> !typed.isEmpty())
                                .map(MixId::new),
                        guardWidth()))
                : Optional.empty();
    }

    /** Returns whether the lines asked for are still looked up. */
    boolean isLooking() {
        return asked().filter(wanted -> desk.answer(wanted).isEmpty()).isPresent();
    }

    /** Returns whether the lines on view are those that are asked for. */
    boolean isReady() {
        return asked().isPresent() && !isLooking();
    }

    /**
     * Returns the readings as they are printed.
     *
     * @param lines those that are printed, in their order
     */
    FieldList list(List<FieldLine> lines, Head head) {
        FieldAsked of = asked().orElseThrow();
        return new FieldList(
                desk.laboratory(),
                desk.tools().now(),
                new FieldList.Days(of.first(), of.last()),
                of.mix(),
                of.guard(),
                lines.stream().map(words()::printed).toList(),
                head);
    }

    /** Returns the lines on view, the newest first; those of before while others are looked up. */
    List<FieldLine> lines() {
        if (!desk.hasBook()) {
            shown = List.of();
        }
        asked().flatMap(desk::answer).ifPresent(found -> shown = found);
        return shown;
    }

    // The chosen one.

    void choose(Optional<String> id) {
        chosen = id;
    }

    boolean isChosen(FieldLine line) {
        return chosen.filter(line.id()::equals).isPresent();
    }

    Optional<FieldLine> chosen() {
        return lines().stream().filter(this::isChosen).findFirst();
    }

    /** Returns all versions of the chosen reading, the newest first. */
    List<Version<FieldReading>> versions() {
        return chosen().map(line -> entry.versions(line.id())).orElse(List.of());
    }

    /** Returns what one version says differently from the one before. */
    String changes(FieldReading before, FieldReading after) {
        return String.join("\n", entry.changes(entry.compared(), entry.typed(before), entry.typed(after)));
    }

    void correct() {
        chosen().ifPresent(line -> entry.correct(line.version()));
    }

    /** Strikes the chosen reading, with a reason: it stays visible and does not count. */
    void strike(String reason, Outcome outcome) {
        change(reading -> reading.struck(reason), reason, outcome);
    }

    /** Lets the chosen reading count again, with a reason. */
    void restore(String reason, Outcome outcome) {
        change(FieldReading::standing, reason, outcome);
    }

    private void change(UnaryOperator<FieldReading> changed, String reason, Outcome outcome) {
        chosen().ifPresentOrElse(
                        line -> desk.keep(
                                List.of(Draft.correcting(line.version(), changed.apply(line.reading()))),
                                reason,
                                outcome),
                        () -> outcome.take(List.of()));
    }

    /** Says how many readings are on view, and how many of them are marked or struck. */
    String summary() {
        if (!desk.hasBook()) {
            return texts.get("said.no-book");
        }
        if (isLooking()) {
            return texts.get("said.looking");
        }
        List<FieldLine> all = lines();
        long marked = all.stream().filter(FieldLine::isMarked).count();
        long struck = all.stream().filter(FieldLine::isStruck).count();
        return texts.get("said.lines", all.size(), marked, struck);
    }
}
