package porebench.desk.trial;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import porebench.desk.DeskModel;
import porebench.desk.form.History;
import porebench.evidence.Evidence;
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
import porebench.record.Draft;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.Trial;
import porebench.record.Version;
import porebench.record.Wording;
import porebench.record.id.MixId;

/** The entry form: a new trial or the correction of one, as typed so far, with what is wrong and doubtful about it. */
final class EntryModel {
    /** Said only once the person wants to save: before, the form is simply not filled in yet. */
    private static final Set<String> ABOUT_EMPTY_FIELDS = Set.of(
            "form.required",
            "trial.reading-missing",
            "trial.masses-missing",
            "trial.soak-missing",
            "trial.water-temperature-missing");

    private static final String LEAK = "trial.leak";
    private static final Set<String> EXCUSED_BY_A_LEAK =
            Set.of(LEAK, "trial.reading-missing", "trial.water-temperature-missing");

    private final DeskModel desk;
    private final DeterminationsModel determinations;
    private final Texts texts;
    private final History<TrialDraft> history;
    private Optional<MixId> mix = Optional.empty();
    private Optional<Version<Trial>> correcting = Optional.empty();
    private Optional<TrialField> focused = Optional.empty();
    private boolean attempted;

    EntryModel(DeskModel desk, DeterminationsModel determinations, Texts texts) {
        this.desk = desk;
        this.determinations = determinations;
        this.texts = texts;
        this.history = new History<>(defaults());
    }

    History<TrialDraft> history() {
        return history;
    }

    TrialDraft draft() {
        return history.draft();
    }

    /** Looks at what the desk shows now; another mix begins with an empty form, the same one keeps its draft. */
    void follow() {
        if (!mix.equals(desk.selected()) || correcting.isEmpty() && !history.isChanged()) {
            mix = desk.selected();
            startNew();
        }
    }

    /** Begins the form of a new trial, with what stays the same from one trial to the next. */
    void startNew() {
        correcting = Optional.empty();
        attempted = false;
        history.restart(defaults());
    }

    /** Begins the correction of a trial. */
    void correct(Version<Trial> trial) {
        correcting = Optional.of(trial);
        attempted = false;
        history.restart(TrialDraft.of(trial.value(), desk.tools().numbers()));
    }

    /** Returns the trial that is corrected; empty for a new one. */
    Optional<Version<Trial>> correcting() {
        return correcting;
    }

    /** Takes what was typed; the first thing typed into a new form sets the clock. */
    void type(TrialField field, String text) {
        TrialDraft before = draft();
        if (before.text(field).equals(text)) {
            return;
        }
        TrialDraft after = before.with(field, text);
        if (!history.isChanged() && correcting.isEmpty() && field != TrialField.TESTED_AT) {
            after = after.with(TrialField.TESTED_AT, now());
        }
        history.update(texts.get("step.field", texts.get(field.nameKey())), after);
    }

    /** Says which field is being typed in; its doubts wait until it is left. */
    void focus(Optional<TrialField> field) {
        focused = field;
    }

    private TrialDraft defaults() {
        Optional<Trial> last = desk.evidence().flatMap(EntryModel::lastTrial);
        Optional<TrialDraft> lastDraft =
                last.map(trial -> TrialDraft.of(trial, desk.tools().numbers()));
        List<Meter> meters = metersOn(desk.tools().today());
        Map<TrialField, String> texts = new EnumMap<>(TrialField.class);
        texts.put(TrialField.ID, proposedId(last));
        texts.put(TrialField.TESTED_AT, now());
        texts.put(
                TrialField.OPERATOR,
                desk.person().isBlank() ? last.map(Trial::operator).orElse("") : desk.person());
        texts.put(
                TrialField.METER,
                last.map(trial -> trial.meterId().text())
                        .filter(id -> meters.stream()
                                .anyMatch(meter -> meter.id().text().equals(id)))
                        .or(() -> meters.stream()
                                .findFirst()
                                .map(meter -> meter.id().text()))
                        .orElse(""));
        lastDraft
                .map(draft -> draft.text(TrialField.ELEVATION))
                .filter(text -> !text.isEmpty())
                .ifPresent(text -> texts.put(TrialField.ELEVATION, text));
        texts.put(
                TrialField.MASS_UNIT,
                lastDraft
                        .map(TrialDraft::massUnit)
                        .orElse(desk.units().benchMass())
                        .name());
        texts.put(TrialField.WATER_UNIT, desk.units().temperature().name());
        texts.put(
                TrialField.WITHDRAWN_UNIT,
                lastDraft
                        .map(TrialDraft::withdrawnUnit)
                        .orElse(Withdrawal.Unit.MILLILITRE)
                        .name());
        return new TrialDraft(texts);
    }

    private String now() {
        return Moments.show(LocalDateTime.ofInstant(
                desk.tools().clock().instant(), desk.tools().zone()));
    }

    private String proposedId(Optional<Trial> last) {
        return desk.selected()
                .map(mixId ->
                        NextTrialId.after(last.map(trial -> trial.id().text()), mixId.text(), name -> isTaken(name)))
                .orElse("");
    }

    private boolean isTaken(String trialId) {
        return desk.book().latest(Trial.class, trialId).isPresent();
    }

    private static Optional<Trial> lastTrial(Evidence evidence) {
        return evidence.determinations().stream()
                .flatMap(judged -> judged.trials().stream())
                .map(judged -> judged.trial().value())
                .max(Comparator.comparing(Trial::testedAt).thenComparing(Trial::id));
    }

    /**
     * Returns the meters to choose from, as they were on the day of the trial: those in service, and the one of the trial
     * that is corrected.
     */
    List<Meter> meters() {
        return metersOn(day());
    }

    private List<Meter> metersOn(LocalDate day) {
        Optional<String> own = correcting.map(trial -> trial.value().meterId().text());
        return desk.evidence().map(evidence -> evidence.metersOn(day)).orElse(List.of()).stream()
                .filter(meter -> meter.inService()
                        || own.filter(meter.id().text()::equals).isPresent())
                .toList();
    }

    private LocalDate day() {
        return Moments.parse(draft().text(TrialField.TESTED_AT))
                .map(LocalDateTime::toLocalDate)
                .orElseGet(desk.tools()::today);
    }

    /** Returns the meter chosen, if it is in the register. */
    Optional<Meter> meter() {
        return meters().stream()
                .filter(meter -> meter.id().text().equals(draft().text(TrialField.METER)))
                .findFirst();
    }

    private boolean isOnItsOwnMeter() {
        return correcting
                .filter(trial -> trial.value().meterId().text().equals(draft().text(TrialField.METER)))
                .isPresent();
    }

    /** Returns the type of meter, which decides what is read; Type B while no meter is chosen. */
    MeterType type() {
        return isOnItsOwnMeter()
                ? correcting.orElseThrow().value().readings().meterType()
                : meter().map(Meter::type).orElse(MeterType.B);
    }

    /** Returns the bowl the trial is made in; empty while no meter is chosen. */
    Optional<Typed<Volume>> bowl() {
        return isOnItsOwnMeter()
                ? Optional.of(correcting.orElseThrow().value().readings().bowl())
                : meter().map(Meter::bowl);
    }

    /** Returns the determination the trial belongs to or will join; empty when new trials join none. */
    Optional<Determination> determination() {
        return correcting.isPresent()
                ? desk.evidence()
                        .flatMap(evidence ->
                                evidence.determination(correcting.get().value().determinationId()))
                        .map(judged -> judged.determination().value())
                : determinations.joined();
    }

    private Optional<MixDesign> design() {
        return determination()
                .flatMap(one -> desk.evidence()
                        .flatMap(evidence -> one.mixVersion() == evidence.mix().number()
                                ? Optional.of(evidence.mix().value())
                                : Optional.ofNullable(evidence.made().get(one.id()))
                                        .map(Evidence.Basis::mix)));
    }

    /** Returns what should be weighed and withdrawn for the chosen meter; empty when it cannot be computed. */
    Optional<CorrectionSample> target() {
        return design().flatMap(mixDesign -> bowl().flatMap(bowl ->
                CorrectionSample.of(mixDesign.batch(), bowl.value()).value()));
    }

    /** Returns how long the aggregate should soak, in minutes. */
    Optional<String> soakTarget() {
        return design().flatMap(MixDesign::soakMinutes).map(desk.tools().numbers()::show);
    }

    MassUnit massUnit() {
        return draft().massUnit();
    }

    /** Reads and judges the draft as it stands. */
    Entry read() {
        TrialReader reader = new TrialReader(draft(), desk.tools().numbers(), texts);
        List<Problem> problems = new ArrayList<>();
        String id = reader.required(TrialField.ID);
        reader.required(TrialField.OPERATOR);
        reader.required(TrialField.METER);
        Optional<LocalDateTime> testedAt = reader.testedAt();
        if (correcting.isEmpty() && !id.isEmpty() && isTaken(id)) {
            problems.add(
                    Problem.error(TrialField.ID.problemField(), "book.already-there", RecordKind.TRIAL.word(), id));
        }
        Optional<Trial> trial = bowl().flatMap(bowl -> determination()
                .map(one -> new Assembly(
                                draft(),
                                one,
                                correcting.map(Version::value),
                                desk.book().isTraining())
                        .trial(
                                reader.readings(type(), bowl),
                                testedAt,
                                reader.elevation(type(), correcting.map(Version::value)))));
        Optional<TrialFactor> figures = trial.flatMap(this::judge);
        problems.addAll(reader.problems());
        trial.ifPresent(made -> problems.addAll(Wording.ofForm(made, correcting.map(Version::value), desk.names())));
        if (testedAt.isPresent()) {
            trial.ifPresent(made -> problems.addAll(determinations.checkCompany(made)));
        }
        figures.ifPresent(found -> found.problems().stream()
                .filter(problem -> problems.stream().noneMatch(p -> p.field().equals(problem.field())))
                .toList()
                .forEach(problems::add));
        return new Entry(trial, figures, problems);
    }

    private Optional<TrialFactor> judge(Trial trial) {
        return desk.evidence()
                .map(evidence -> Optional.ofNullable(evidence.stories().get(trial.meterId()))
                        .map(story -> JudgedTrial.of(Assembly.unkept(trial), design(), story))
                        .orElseGet(() -> JudgedTrial.of(Assembly.unkept(trial), design(), meter(), evidence.profile()))
                        .figures());
    }

    /**
     * A draft as read.
     *
     * @param trial the trial it would be; empty while no meter is chosen or no determination takes it
     * @param figures its factor and doubts
     * @param problems everything wrong or doubtful
     */
    record Entry(Optional<Trial> trial, Optional<TrialFactor> figures, List<Problem> problems) {
        Entry {
            problems = List.copyOf(problems);
        }

        /** Returns what forbids keeping it; a leak does not, it only voids the trial. */
        List<Problem> errors() {
            boolean leaked =
                    problems.stream().anyMatch(problem -> problem.code().equals(LEAK));
            return problems.stream()
                    .filter(Problem::isError)
                    .filter(problem -> !leaked || !EXCUSED_BY_A_LEAK.contains(problem.code()))
                    .toList();
        }

        /** Returns the first field with a text, number or day that was refused; a field still empty or a leak is none. */
        Optional<TrialField> refused() {
            return problems.stream()
                    .filter(Problem::isError)
                    .filter(problem -> !problem.code().equals(LEAK) && !ABOUT_EMPTY_FIELDS.contains(problem.code()))
                    .flatMap(problem -> TrialField.measured(problem.field()).stream())
                    .findFirst();
        }

        /** Returns the factor to show while typing: none while anything that was measured is refused. */
        Optional<TrialFactor> live() {
            return figures.filter(any -> refused().isEmpty());
        }

        /** Returns what makes a trial that counts doubtful; it is kept only with a reason. */
        List<Problem> doubts() {
            return figures.filter(TrialFactor::counts).isEmpty()
                    ? List.of()
                    : problems.stream().filter(problem -> !problem.isError()).toList();
        }
    }

    /** Returns the problems to show now: not yet those about empty fields, nor doubts about the field being typed in. */
    List<Problem> shown() {
        return read().problems().stream()
                .filter(problem -> attempted || !ABOUT_EMPTY_FIELDS.contains(problem.code()))
                .filter(problem -> problem.isError()
                        || focused.filter(field -> field.problemField().equals(problem.field()))
                                .isEmpty())
                .toList();
    }

    /** Says that the person wants to save; from now on empty fields are problems. */
    List<Problem> attempt() {
        attempted = true;
        focused = Optional.empty();
        return read().errors();
    }

    /** Returns whether a reason to keep the trial in spite of its doubts is still wanting. */
    boolean wantsReason() {
        return !read().doubts().isEmpty()
                && correcting.flatMap(trial -> trial.value().keptBecause()).isEmpty();
    }

    /**
     * Keeps the trial, a new determination together with its first one.
     *
     * @param keptBecause why it is kept in spite of its doubts; empty when it has none, or the reason of before holds
     * @param why why a trial is corrected; for a new one what was done
     * @return why nothing was kept; empty when it was
     */
    List<Problem> keep(Optional<String> keptBecause, String why) {
        Entry entry = read();
        if (!entry.errors().isEmpty()) {
            return entry.errors();
        }
        Determination joined = determination().orElseThrow();
        Optional<String> reason = entry.doubts().isEmpty()
                ? Optional.empty()
                : keptBecause.or(() -> correcting.flatMap(trial -> trial.value().keptBecause()));
        Trial trial = entry.trial().orElseThrow().keptFor(reason);
        List<Draft> drafts = new ArrayList<>(determinations.drafts(joined));
        drafts.add(correcting.map(before -> Draft.correcting(before, trial)).orElseGet(() -> Draft.of(trial)));
        List<Problem> problems = desk.keep(drafts, why);
        if (problems.isEmpty()) {
            startNew();
        }
        return problems;
    }
}
