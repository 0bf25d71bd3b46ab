package porebench.desk.field;

import java.math.BigDecimal;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.RecordDraft;
import porebench.desk.form.Days;
import porebench.desk.form.DraftReader;
import porebench.desk.form.TypedDraft;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.FieldReading;
import porebench.record.Meter;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.FieldReadingColumns;
import porebench.record.id.MixId;

/** The form of one reading: a new one or the correction of one, as typed so far, with what is wrong and doubtful about it. */
final class FieldEntry extends RecordDraft<FieldReading> {
    /** What names the load, the first column of the form. */
    static final List<Column<FieldReading, ?>> LOAD = List.of(
            FieldReadingColumns.MIX, FieldReadingColumns.TRUCK, FieldReadingColumns.METER, FieldReadingColumns.READ_AT);

    /** What was read, the second. */
    static final List<Column<FieldReading, ?>> READ = List.of(
            FieldReadingColumns.GAUGE,
            FieldReadingColumns.DENSITY,
            FieldReadingColumns.TEMPERATURE,
            FieldReadingColumns.REMARKS);

    private static final String PLACE = "reading/";
    private final Supplier<Optional<BigDecimal>> guard;
    private Optional<TypedDraft> before = Optional.empty();
    private Optional<FieldReading> looked = Optional.empty();
    private boolean isPlaced;

    FieldEntry(DeskModel desk, Texts texts, Supplier<Optional<BigDecimal>> guard) {
        super(desk, texts, FieldReading.class, FieldReadingColumns.ALL);
        this.guard = guard;
        restart(Optional.empty(), fresh());
    }

    @Override
    public String key(Column<?, ?> column) {
        return "reading." + column.field();
    }

    @Override
    protected TypedDraft typed(FieldReading reading) {
        return TypedDraft.of(FieldReadingColumns.ALL, reading, desk().tools().numbers())
                .orFrom(units());
    }

    @Override
    protected List<? extends Column<?, ?>> compared() {
        List<Column<FieldReading, ?>> all = new ArrayList<>(LOAD);
        all.addAll(READ);
        return all;
    }

    /** Returns a draft in which nothing but the units of the screen stands. */
    TypedDraft units() {
        return TypedDraft.BLANK
                .withUnit(FieldReadingColumns.DENSITY, desk().units().density().symbol())
                .withUnit(
                        FieldReadingColumns.TEMPERATURE,
                        desk().units().temperature().symbol());
    }

    /** Returns what the form of a new reading begins with: this minute, and what stays the same from one load to the next. */
    private TypedDraft fresh() {
        TypedDraft last = before.orElseGet(() -> units().with(
                        FieldReadingColumns.MIX,
                        desk().selected().map(MixId::text).orElse("")));
        return TypedDraft.BLANK
                .with(FieldReadingColumns.MIX, last.text(FieldReadingColumns.MIX))
                .with(FieldReadingColumns.METER, last.text(FieldReadingColumns.METER))
                .with(FieldReadingColumns.READ_AT, now())
                .withUnit(FieldReadingColumns.DENSITY, last.unit(FieldReadingColumns.DENSITY))
                .withUnit(FieldReadingColumns.TEMPERATURE, last.unit(FieldReadingColumns.TEMPERATURE));
    }

    private String now() {
        return Days.show(desk().tools().now());
    }

    /** Follows the lab book: what is typed stays, a form in which nothing is typed shows the minute and the newest version. */
    void follow() {
        if (isPlaced && isOfAnotherBook()) {
            isPlaced = false;
            before = Optional.empty();
            turnAway();
            restart(Optional.empty(), fresh());
        }
        if (!isPlaced && desk().hasBook()) {
            isPlaced = true;
            turnToNew();
        } else if (!followNewest() && isNew() && !history().isChanged()) {
            history().rebase(fresh());
        }
    }

    /** Turns to the form of a new reading, as far as one was typed. */
    void turnToNew() {
        looked = Optional.empty();
        turnTo(PLACE, Optional.empty(), fresh());
    }

    /** Begins the correction of a reading. */
    void correct(Version<FieldReading> reading) {
        looked = Optional.empty();
        turnTo(PLACE + reading.value().recordId(), Optional.of(reading), typed(reading.value()));
    }

    /** Empties the form of a new reading, or ends a correction; both can be taken back. */
    void clear() {
        looked = Optional.empty();
        base().ifPresentOrElse(
                        corrected -> giveUp(
                                texts().get("act.end-correction"),
                                () -> {
                                    forgetTyped();
                                    turnToNew();
                                },
                                () -> correct(corrected)),
                        () -> history().renew(texts().get("step.clear"), fresh()));
    }

    /** Drops what is typed for good. */
    void drop() {
        looked = Optional.empty();
        forgetTyped();
        turnToNew();
        if (history().isChanged()) {
            forgetTyped();
            turnToNew();
        }
    }

    /** Takes what was typed; the first thing typed into a new form sets the clock. */
    @Override
    public void update(String label, TypedDraft changed) {
        TypedDraft is = draft();
        if (changed.equals(is)) {
            return;
        }
        boolean clockStands = history().isChanged()
                || !isNew()
                || !changed.text(FieldReadingColumns.READ_AT).equals(is.text(FieldReadingColumns.READ_AT));
        super.update(label, clockStands ? changed : changed.with(FieldReadingColumns.READ_AT, now()));
    }

    /** What stands in the form is looked up when a field is left, not at every stroke. */
    @Override
    public void leave(Column<?, ?> column) {
        super.leave(column);
        look();
    }

    /** Looks up what is against the reading as it is typed now. */
    void look() {
        looked = reading().filter(typed -> history().isChanged());
    }

    @Override
    public boolean isChosen(Column<?, ?> column) {
        return column == FieldReadingColumns.METER;
    }

    /** Returns the meters in service, the one of the reading that is corrected, and none. */
    @Override
    public List<String> choices(Column<?, ?> column) {
        List<String> all = new ArrayList<>(List.of(""));
        String own = draft().text(FieldReadingColumns.METER);
        desk().meters().stream()
                .map(story -> story.meter().value())
                .filter(meter -> meter.inService() || meter.id().text().equals(own))
                .forEach(meter -> all.add(meter.id().text()));
        if (!all.contains(own)) {
            all.add(own);
        }
        return all;
    }

    @Override
    public String choiceWords(Column<?, ?> column, String id) {
        if (id.isEmpty()) {
            return texts().get("meter.none");
        }
        return meter(id)
                .map(meter -> texts().get("meter.item", id, meter.type().name()))
                .orElse(id);
    }

    private Optional<Meter> meter(String id) {
        return desk().meters().stream()
                .map(story -> story.meter().value())
                .filter(meter -> meter.id().text().equals(id))
                .findFirst();
    }

    /** Returns everything that can be said of the draft without the lab book. */
    private List<Problem> readProblems(Consumer<FieldReading> made) {
        TypedDraft whole = base().map(version -> draft())
                .orElseGet(() -> draft().with(FieldReadingColumns.ID, FieldNames.meanwhile(draft())));
        DraftReader reader = new DraftReader(whole, desk().tools().numbers(), this::words);
        Optional<FieldReading> read = FieldReadingColumns.ALL.read(reader);
        List<Problem> problems = new ArrayList<>(reader.problems());
        if (read.isPresent() && problems.isEmpty()) {
            FieldReading reading = asKept(read.get());
            problems.addAll(reading.check(desk().tools().now()));
            reading.meterId()
                    .flatMap(meter -> meter(meter.text()))
                    .flatMap(reading::checkScale)
                    .ifPresent(problems::add);
            problems.addAll(wording(reading));
            made.accept(reading);
        }
        return problems;
    }

    /** The form shows minutes: a time that nobody changed is the one that is kept, to the second. */
    private FieldReading asKept(FieldReading typed) {
        return base().map(Version::value)
                .filter(kept -> Days.show(kept.readAt()).equals(Days.show(typed.readAt())))
                .map(kept -> typed.at(kept.readAt()))
                .orElse(typed);
    }

    /** Returns the reading as it is typed; empty while something in it cannot be read or cannot be. */
    Optional<FieldReading> reading() {
        List<FieldReading> made = new ArrayList<>();
        List<Problem> problems = readProblems(made::add);
        return Problem.anyError(problems) ? Optional.empty() : made.stream().findFirst();
    }

    /** Returns the question what is against the reading and what it comes to; empty while it cannot be read. */
    Optional<FieldGate> gate() {
        return reading().map(this::gate);
    }

    private FieldGate gate(FieldReading reading) {
        // To the minute: the same question is asked again and again until it is answered.
        return new FieldGate(reading, isNew(), guard.get(), desk().tools().now().truncatedTo(ChronoUnit.MINUTES));
    }

    /** Returns what was found of the reading as it was typed when a field was left last; empty once something else is typed. */
    Optional<FieldGate.Held> held() {
        return looked.filter(reading -> reading().equals(looked)).flatMap(reading -> desk().answer(gate(reading)));
    }

    /** Returns the problems to show now: not yet those about empty fields, until somebody tried to save. */
    List<Problem> problems() {
        List<Problem> all = new ArrayList<>(readProblems(reading -> {}));
        held().ifPresent(held -> held.problems().stream()
                .filter(problem -> !all.contains(problem))
                .forEach(all::add));
        return all.stream()
                .filter(problem -> isTried() || !problem.kind().isNotYet())
                .toList();
    }

    /** Says that the person wants to save; from now on empty fields are problems. */
    List<Problem> attempt() {
        setTried();
        return readProblems(reading -> {}).stream().filter(Problem::isError).toList();
    }

    /**
     * Keeps a reading as it was found good, for a reason where something about it is doubted.
     *
     * @param why why a reading is corrected; for a new one what was done
     * @param outcome hears why nothing was kept; empty when it was
     */
    void keep(FieldGate.Held held, Optional<String> keptBecause, String why, Outcome outcome) {
        Optional<String> reason = held.doubts().isEmpty()
                ? Optional.empty()
                : keptBecause.or(() -> base().flatMap(version -> version.value().keptBecause()));
        TypedDraft typed = draft();
        desk().keep(List.of(kept(held.reading().keptFor(reason))), why, outcome.first(() -> {
            if (draft().equals(typed)) {
                before = Optional.of(typed);
                forgetTyped();
                turnToNew();
            }
        }));
    }

    /** Returns whether a reason to keep the reading in spite of its doubts is still wanting. */
    boolean wantsReason(FieldGate.Held held) {
        return !held.doubts().isEmpty()
                && base().flatMap(version -> version.value().keptBecause()).isEmpty();
    }
}
