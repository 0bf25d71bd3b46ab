package porebench.desk.trial;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.RecordDraft;
import porebench.desk.form.Days;
import porebench.desk.form.DraftReader;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.evidence.Basis;
import porebench.evidence.JudgedTrial;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.sample.CorrectionSample;
import porebench.method.trial.TrialFactor;
import porebench.method.trial.Withdrawal;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.record.Determination;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;
import porebench.record.id.MixId;

/** The entry form: a new trial or the correction of one, as typed so far, with what is wrong and doubtful about it. */
class BenchModel extends RecordDraft<Trial> {
    /** Stands where nothing was typed yet, in a trial that is only judged and never kept. */
    private static final String UNKNOWN = "?";

    private final DeterminationsModel determinations;
    private final TrialDrafts drafts;
    private Optional<MixId> mix = Optional.empty();
    private Optional<Column<Trial, ?>> focused = Optional.empty();

    BenchModel(DeskModel desk, DeterminationsModel determinations, Texts texts) {
        super(desk, texts, Trial.class, TrialColumns.ALL);
        this.determinations = determinations;
        this.drafts = new TrialDrafts(desk);
        restart(Optional.empty(), fresh());
    }

    /**
     * Looks at what the desk shows now. Each mix has a draft of its own, which it is found with again; without one the form begins
     * the next trial.
     */
    void follow() {
        if (!mix.equals(desk().selected()) || isOfAnotherBook()) {
            mix = desk().selected();
            turnToMix();
        } else if (!followNewest() && isNew() && !history().isChanged()) {
            history().rebase(fresh());
        }
    }

    private void turnToMix() {
        if (mix.isEmpty()) {
            turnAway();
            restart(Optional.empty(), fresh());
            return;
        }
        turnTo(drafts.placeOf(mix.get()), Optional.empty(), fresh());
    }

    /** Returns what the form of a new trial begins with. */
    final TypedDraft fresh() {
        return drafts.next(metersOn(desk().tools().today(), Optional.empty()));
    }

    /** Turns from a correction, whose draft stays kept, to the form of the next trial, as far as it was typed. */
    void turnToNew() {
        mix.ifPresent(id -> turnTo(TrialDrafts.nameOfNew(id), Optional.empty(), fresh()));
    }

    /** Begins the form of a new trial, with what stays the same from one trial to the next; what stands in it is dropped. */
    void startNew() {
        boolean wasNew = isNew();
        restart(Optional.empty(), fresh());
        if (!wasNew) {
            turnToNew();
        }
    }

    /** Empties the form of a new trial, or ends a correction; both can be undone. */
    void clear() {
        base().ifPresentOrElse(
                        corrected -> giveUp(texts().get("action.cancel"), this::startNew, () -> correct(corrected)),
                        () -> history().renew(texts().get("step.clear"), fresh()));
    }

    TrialDrafts drafts() {
        return drafts;
    }

    /** Begins the correction of a trial. */
    void correct(Version<Trial> trial) {
        turnTo(
                TrialDrafts.nameOfCorrection(
                        trial.value().mixId(), trial.value().id().text()),
                Optional.of(trial),
                typed(trial.value()));
    }

    @Override
    protected TypedDraft typed(Trial trial) {
        return drafts.of(trial);
    }

    @Override
    protected List<Column<Trial, ?>> compared() {
        return BenchFields.ALL;
    }

    /** Takes what was typed; the first thing typed into a new form sets the clock. */
    @Override
    public void update(String label, TypedDraft changed) {
        TypedDraft before = draft();
        if (changed.equals(before)) {
            return;
        }
        boolean clockStands = history().isChanged()
                || !isNew()
                || !changed.text(TrialColumns.TESTED_AT).equals(before.text(TrialColumns.TESTED_AT));
        super.update(label, clockStands ? changed : changed.with(TrialColumns.TESTED_AT, drafts.now()));
    }

    @Override
    public String key(Column<?, ?> column) {
        return "trial." + column.field();
    }

    @Override
    public boolean isChosen(Column<?, ?> column) {
        return column == TrialColumns.METER;
    }

    @Override
    public List<String> choices(Column<?, ?> column) {
        return meters().stream().map(meter -> meter.id().text()).toList();
    }

    @Override
    public String choiceWords(Column<?, ?> column, String id) {
        return meters().stream()
                .filter(meter -> meter.id().text().equals(id))
                .map(meter -> texts().get("meter.item", id, meter.type().name()))
                .findFirst()
                .orElse(id);
    }

    @Override
    public String unitWords(String symbol) {
        return withdrawnUnit(symbol);
    }

    /** Returns a unit of withdrawn water as people write it; any other unit as it is. */
    static String withdrawnUnit(String symbol) {
        return symbol.equals(Withdrawal.Unit.PERCENT.symbol()) ? "%" : symbol;
    }

    /** Says which field is being typed in; its doubts wait until it is left. */
    void focus(Optional<Column<Trial, ?>> field) {
        focused = field;
    }

    /**
     * Returns the meters to choose from, as they were on the day of the trial: those in service, and the one of the trial
     * that is corrected.
     */
    List<Meter> meters() {
        return metersOn(day(), base().map(trial -> trial.value().meterId().text()));
    }

    private List<Meter> metersOn(LocalDate day, Optional<String> own) {
        return desk().evidence().map(evidence -> evidence.metersOn(day)).orElse(List.of()).stream()
                .filter(meter -> meter.inService()
                        || own.filter(meter.id().text()::equals).isPresent())
                .toList();
    }

    private LocalDate day() {
        return Days.parseMoment(draft().text(TrialColumns.TESTED_AT))
                .map(LocalDateTime::toLocalDate)
                .orElseGet(desk().tools()::today);
    }

    /** Returns the meter chosen, if it is in the register. */
    Optional<Meter> meter() {
        return meters().stream()
                .filter(meter -> meter.id().text().equals(draft().text(TrialColumns.METER)))
                .findFirst();
    }

    private boolean isOnItsOwnMeter() {
        return base().filter(trial -> trial.value().meterId().text().equals(draft().text(TrialColumns.METER)))
                .isPresent();
    }

    /** Returns the type of meter, which decides what is read; Type B while no meter is chosen. */
    MeterType type() {
        return isOnItsOwnMeter()
                ? base().orElseThrow().value().readings().meterType()
                : meter().map(Meter::type).orElse(MeterType.B);
    }

    /** Returns the bowl the trial is made in; empty while no meter is chosen. */
    Optional<Typed<Volume>> bowl() {
        return isOnItsOwnMeter()
                ? Optional.of(base().orElseThrow().value().readings().bowl())
                : meter().map(Meter::bowl);
    }

    /** Returns the determination the trial belongs to or will join; empty when new trials join none. */
    Optional<Determination> determination() {
        return !isNew()
                ? desk().evidence()
                        .flatMap(evidence ->
                                evidence.determination(base().get().value().determinationId()))
                        .map(judged -> judged.determination().value())
                : determinations.joined();
    }

    private Optional<MixDesign> design() {
        return determination()
                .flatMap(one -> desk().evidence()
                        .flatMap(evidence -> one.mixVersion() == evidence.mix().number()
                                ? Optional.of(evidence.mix().value())
                                : Optional.ofNullable(evidence.made().get(one.id()))
                                        .map(Basis::mix)));
    }

    /** Returns what should be weighed and withdrawn for the chosen meter; empty when it cannot be computed. */
    Optional<CorrectionSample> target() {
        return design().flatMap(mixDesign -> bowl().flatMap(bowl ->
                CorrectionSample.of(mixDesign.batch(), bowl.value()).value()));
    }

    /** Returns how long the aggregate should soak, in minutes. */
    Optional<String> soakTarget() {
        return design().flatMap(MixDesign::soakMinutes).map(desk().tools().numbers()::show);
    }

    MassUnit massUnit() {
        return Stream.of(MassUnit.values())
                .filter(unit -> unit.symbol().equals(draft().unit(TrialColumns.FINE)))
                .findFirst()
                .orElseThrow();
    }

    /** Reads and judges the draft as it stands. */
    TypedTrial read() {
        TypedDraft typed = draft();
        DraftReader reader = new DraftReader(typed, desk().tools().numbers(), this::words);
        BenchFields.ALL.stream()
                .filter(column -> TrialColumns.isAsked(column, type()))
                .forEach(column -> column.read(reader));
        reader.require(TrialColumns.OPERATOR);
        List<Problem> problems = new ArrayList<>();
        String id = reader.text(TrialColumns.ID);
        if (isNew() && !id.isEmpty() && drafts.isTaken(id)) {
            problems.add(alreadyThere(RecordKind.TRIAL.word()));
        }
        problems.addAll(reader.problems());
        Optional<Trial> trial = bowl().flatMap(bowl -> determination()
                .flatMap(one -> trial(withoutWhatIsRefused(typed, reader.problems()), bowl, one, problems)));
        Optional<TrialFactor> figures = trial.flatMap(this::judge);
        trial.ifPresent(made -> problems.addAll(wording(made)));
        if (reader.problems().stream().noneMatch(problem -> problem.field().equals(TrialColumns.TESTED_AT.field()))) {
            trial.ifPresent(made -> problems.addAll(determinations.checkCompany(made)));
        }
        figures.ifPresent(found -> found.problems().stream()
                .filter(problem -> problems.stream().noneMatch(p -> p.field().equals(problem.field())))
                .toList()
                .forEach(problems::add));
        return new TypedTrial(trial, figures, problems);
    }

    private TypedDraft withoutWhatIsRefused(TypedDraft typed, List<Problem> refused) {
        List<String> wrong = refused.stream().map(Problem::field).toList();
        return typed.without(BenchFields.ALL.stream()
                .filter(column -> wrong.contains(column.field()) || !TrialColumns.isAsked(column, type()))
                .map(Column::field)
                .toList());
    }

    /** Makes the trial; one with missing fields can be judged but not kept. */
    private Optional<Trial> trial(TypedDraft read, Typed<Volume> bowl, Determination joined, List<Problem> problems) {
        Numbers numbers = desk().tools().numbers();
        TypedDraft whole = read.with(TrialColumns.MIX, joined.mixId().text())
                .with(TrialColumns.DETERMINATION, joined.id().text())
                .with(TrialColumns.METER_TYPE, type().name())
                .with(TrialColumns.BOWL, numbers.show(bowl.number()))
                .withUnit(TrialColumns.BOWL, bowl.unit().symbol())
                .with(TrialColumns.SIMULATED, desk().isTraining());
        if (type() == MeterType.B) {
            // The form of a Type B meter does not ask for it; a correction keeps what was there.
            whole = whole.with(
                    TrialColumns.ELEVATION,
                    base().map(before -> drafts.of(before.value()).text(TrialColumns.ELEVATION))
                            .orElse(""));
        }
        whole = whole.orFrom(TypedDraft.BLANK
                .with(TrialColumns.ID, UNKNOWN)
                .with(TrialColumns.METER, UNKNOWN)
                .with(TrialColumns.TESTED_AT, Days.show(joined.openedOn().atStartOfDay())));
        DraftReader reader = new DraftReader(whole, numbers, this::words);
        Optional<Trial> trial = TrialColumns.ALL.read(reader);
        problems.addAll(reader.problems());
        return trial;
    }

    /** Returns a trial as a version to be judged, which is not in the lab book. */
    private static Version<Trial> unkept(Trial trial) {
        return new Version<>(trial, 1, new Stamp(UNKNOWN, Instant.EPOCH, UNKNOWN));
    }

    private Optional<TrialFactor> judge(Trial trial) {
        return desk().evidence()
                .map(evidence -> Optional.ofNullable(evidence.stories().get(trial.meterId()))
                        .map(story -> JudgedTrial.of(unkept(trial), design(), story))
                        .orElseGet(() -> JudgedTrial.of(unkept(trial), design(), meter(), evidence.profile()))
                        .figures());
    }

    /** Returns the problems to show now: not yet those about empty fields, nor doubts about the field being typed in. */
    List<Problem> shown() {
        return read().problems().stream()
                .filter(problem -> isTried() || !problem.kind().isNotYet())
                .filter(problem -> problem.isError()
                        || focused.filter(field -> field.field().equals(problem.field()))
                                .isEmpty())
                .toList();
    }

    /** Says that the person wants to save; from now on empty fields are problems. */
    List<Problem> attempt() {
        setTried();
        focused = Optional.empty();
        return read().errors();
    }

    /** Returns whether a reason to keep the trial in spite of its doubts is still wanting. */
    boolean wantsReason() {
        return !read().doubts().isEmpty()
                && base().flatMap(trial -> trial.value().keptBecause()).isEmpty();
    }

    /**
     * Keeps the trial, a new determination together with its first one.
     *
     * @param keptBecause why it is kept in spite of its doubts; empty when it has none, or the reason of before holds
     * @param why why a trial is corrected; for a new one what was done
     * @param outcome hears why nothing was kept; empty when it was
     */
    void keep(Optional<String> keptBecause, String why, Outcome outcome) {
        TypedTrial entry = read();
        if (!entry.errors().isEmpty()) {
            outcome.take(entry.errors());
            return;
        }
        Determination joined = determination().orElseThrow();
        Optional<String> reason = entry.doubts().isEmpty()
                ? Optional.empty()
                : keptBecause.or(() -> base().flatMap(trial -> trial.value().keptBecause()));
        Trial trial = entry.trial().orElseThrow().keptFor(reason);
        List<Draft> drafts = new ArrayList<>(determinations.drafts(joined));
        drafts.add(kept(trial));
        TypedDraft typed = draft();
        desk().keep(drafts, why, outcome.first(() -> {
            if (draft().equals(typed)) {
                startNew();
            }
        }));
    }
}
