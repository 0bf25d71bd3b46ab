package porebench.evidence.intake;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import porebench.evidence.Moments;
import porebench.method.Problem;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.ChangeDecision;
import porebench.record.Determination;
import porebench.record.Equipment;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.RecordKind;
import porebench.record.SheetPhoto;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.TestPlan;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Namesakes;
import porebench.record.book.Progress;
import porebench.record.book.Training;
import porebench.record.book.Version;
import porebench.record.book.Wording;
import porebench.record.id.MixId;
import porebench.record.id.ReadingId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/**
 * Checks records from files against a lab book, and against each other, before any is kept.
 *
 * <p>What is already there unchanged is passed over; a changed source, measurement, production, plan, piece of equipment, meter, mix,
 * group, profile or determination becomes a new version; a changed calibration, trial, issue, print or its step, study, photo, proposal or decision
 * is refused: a person corrects those with a reason. Refused are simulated trials and what comes from a training book, unless the book
 * is for training; real ones if it is.
 */
public final class Intake {
    private final LabBook book;
    private final LocalDate today;
    private final Touched touched;
    private final TrialIntake trialIntake;
    private final CustodyIntake custody;
    private final Namesakes namesakes;
    private final Map<RecordKind, Map<String, Incoming>> good = new EnumMap<>(RecordKind.class);
    private final List<Draft> drafts = new ArrayList<>();
    private final Map<RecordKind, Map<String, Integer>> soon = new EnumMap<>(RecordKind.class);
    private final Coming coming;
    private final FieldIntake fieldIntake;
    private final List<Problem> problems = new ArrayList<>();
    private int alreadyThere;

    private Intake(LabBook book, List<Incoming> incoming, LocalDateTime now, Progress progress) {
        this.book = book;
        this.today = now.toLocalDate();
        this.touched = new Touched(book, incoming, progress);
        this.trialIntake = new TrialIntake(book, touched, incoming);
        this.custody = new CustodyIntake(book, this::known, today);
        this.namesakes = new Namesakes(book);
        this.coming = new Coming(good, soon, touched);
        this.fieldIntake = new FieldIntake(book, touched, this::known, now);
        Touched.inParts(
                incoming,
                progress,
                Progress.Stage.COMPARING,
                part -> namesakes.knowing(part.stream().map(Incoming::value).toList()));
    }

    /**
     * What can be kept, and what is wrong with the rest.
     *
     * @param drafts the good records, in the order in which they can be kept
     * @param alreadyThere how many stand in the lab book unchanged
     * @param problems every problem, with its place
     * @param doubted the trials among them that are kept only for a reason, which none gives: the same rule as at the bench
     * @param doubtedReadings the field readings of which that is so
     */
    public record Result(
            List<Draft> drafts,
            int alreadyThere,
            List<Problem> problems,
            Set<TrialId> doubted,
            Set<ReadingId> doubtedReadings) {
        public Result {
            drafts = List.copyOf(drafts);
            problems = List.copyOf(problems);
            doubted = Set.copyOf(doubted);
            doubtedReadings = Set.copyOf(doubtedReadings);
        }

        /** Returns what is to be kept in another form. */
        public Result with(List<Draft> others) {
            return new Result(others, alreadyThere, problems, doubted, doubtedReadings);
        }

        /** Returns how many records are kept only for a reason. */
        public int doubts() {
            return doubted.size() + doubtedReadings.size();
        }

        /** Returns the doubted records kept for a reason. */
        public Result keptFor(String reason) {
            List<Draft> explained = TrialIntake.keptFor(drafts, doubted, reason);
            explained = FieldIntake.keptFor(explained, doubtedReadings, reason);
            return new Result(explained, alreadyThere, problems, Set.of(), Set.of());
        }
    }

    /**
     * Checks some records; nothing is kept yet.
     *
     * @param today no calibration can be of a later day
     */
    public static Result check(LabBook book, List<Incoming> incoming, LocalDate today) {
        return check(book, incoming, today, Progress.UNHEARD);
    }

    /** Checks some records, as {@link #check(LabBook, List, LocalDate)}, and says how far it is. */
    public static Result check(LabBook book, List<Incoming> incoming, LocalDate today, Progress progress) {
        return check(book, incoming, Moments.endOf(today), progress);
    }

    /**
     * Checks some records at an hour of a day.
     *
     * @param now nothing can be of a later moment, but for what a clock may be ahead
     */
    public static Result check(LabBook book, List<Incoming> incoming, LocalDateTime now, Progress progress) {
        Intake intake = new Intake(book, incoming, now, progress);
        List<Incoming> inOrder = incoming.stream().sorted(Incoming.IN_ORDER).toList();
        Touched.inParts(inOrder, progress, Progress.Stage.CHECKING, part -> part.forEach(intake::take));
        List<Draft> drafts =
                ProductionIntake.looked(book, intake.drafts, intake.good(RecordKind.PRODUCTION), intake.problems);
        drafts = IssueIntake.looked(book, drafts, intake.good(RecordKind.FACTOR_ISSUE), intake.problems);
        drafts = intake.fieldIntake.looked(drafts, intake.good(RecordKind.FIELD_READING), intake.problems);
        Set<TrialId> doubted = new TrialJudging(book, intake.touched, intake.drafts, intake.trialIntake.doubted())
                .doubted(intake.good(RecordKind.TRIAL), intake.problems, progress);
        return new Result(drafts, intake.alreadyThere, intake.problems, doubted, intake.fieldIntake.doubted(drafts));
    }

    private Map<String, Incoming> good(RecordKind kind) {
        return good.computeIfAbsent(kind, any -> new LinkedHashMap<>());
    }

    private void take(Incoming one) {
        Incoming twin = good(one.value().kind()).get(one.value().recordId());
        if (twin != null) {
            error(
                    one,
                    "import.duplicate",
                    one.value().kind().word(),
                    one.value().recordId(),
                    twin.place().file(),
                    twin.place().line().orElseThrow());
            return;
        }
        if (one.simulated() && !isTraining()) {
            error(
                    one,
                    "import.simulated",
                    one.value().kind().word(),
                    one.value().recordId());
            return;
        }
        resolve(one).ifPresent(resolved -> {
            good(resolved.value().kind()).put(resolved.value().recordId(), resolved);
            keep(resolved);
        });
    }

    private void keep(Incoming one) {
        Optional<? extends Version<? extends Kept>> there =
                touched.latest(one.value().kind(), one.value().recordId());
        boolean isNew = there.isEmpty();
        boolean isChanged = !isNew && !there.get().value().equals(one.value()) && one.mayChange();
        if (isNew || isChanged) {
            Draft draft = new Draft(one.value(), there.map(Version::number).orElse(0));
            Wording.ofDraft(book, draft).forEach(problem -> problems.add(problem.at(one.place())));
        }
        if (isNew) {
            namesakes.meet(one.value()).ifPresent(problem -> problems.add(problem.at(one.place())));
            draft(Draft.of(one.value()));
        } else if (there.get().value().equals(one.value())) {
            alreadyThere++;
        } else if (isChanged) {
            draft(new Draft(one.value(), there.get().number()));
            problems.add(Problem.warning(
                            "id",
                            "import.new-version",
                            one.value().kind().word(),
                            one.value().recordId(),
                            there.get().number() + 1)
                    .at(one.place()));
        } else {
            error(one, "import.differs", one.value().kind().word(), one.value().recordId());
        }
    }

    private void draft(Draft draft) {
        drafts.add(draft);
        soon.computeIfAbsent(draft.value().kind(), any -> new HashMap<>())
                .putIfAbsent(draft.value().recordId(), draft.number());
    }

    private Optional<Incoming> resolve(Incoming one) {
        return switch (one.value().kind()) {
            case SOURCE -> unlessWrong(one, SourceIntake.check(book, touched, (Source) one.value(), today));
            case EQUIPMENT -> unlessWrong(one, ((Equipment) one.value()).check(today));
            case METER_CALIBRATION -> unlessWrong(one, wrong((MeterCalibration) one.value()));
            case MIX -> mix(one, (MixDesign) one.value());
            case DETERMINATION -> determination(one, (Determination) one.value());
            case TRIAL -> trial(one, (Trial) one.value());
            case FACTOR_ISSUE -> issue(one, (FactorIssue) one.value());
            case TEST_PLAN -> unlessWrong(one, PlanIntake.check((TestPlan) one.value(), this::known));
            case CARD_PRINT -> unlessWrong(one, IssueIntake.check((CardPrint) one.value(), this::known));
            case CARD_STEP -> unlessWrong(one, custody.check((CardStep) one.value()));
            case SHEET_PHOTO -> unlessWrong(one, TrialIntake.photo((SheetPhoto) one.value(), this::known));
            case FACTOR_PROPOSAL -> new ProposalIntake(this::known, touched, isTraining()).take(one, problems);
            case SOURCE_MEASUREMENT ->
                unlessWrong(one, SourceIntake.check((SourceMeasurement) one.value(), this::known, today));
            case PRODUCTION -> unlessWrong(one, ProductionIntake.check((Production) one.value(), this::known, today));
            case FIELD_READING -> field(one, (FieldReading) one.value());
            case FACTOR_GROUP -> unlessWrong(one, GroupIntake.check(book, drafts, touched, (FactorGroup) one.value()));
            case CHANGE_DECISION ->
                unlessWrong(one, DecisionIntake.check((ChangeDecision) one.value(), touched, this::known, today))
                        .map(good -> DecisionIntake.marked(good, touched));
            default -> Optional.of(one);
        };
    }

    private Optional<Incoming> field(Incoming one, FieldReading reading) {
        Incoming explained = new Incoming(one.place(), fieldIntake.asExplained(reading));
        return unlessWrong(explained, fieldIntake.check((FieldReading) explained.value()));
    }

    private Optional<Incoming> unlessWrong(Incoming one, List<Problem> found) {
        found.forEach(problem -> problems.add(problem.at(one.place())));
        return Problem.anyError(found) ? Optional.empty() : Optional.of(one);
    }

    private List<Problem> wrong(MeterCalibration calibration) {
        return new CalibrationIntake(book, good(RecordKind.METER), good(RecordKind.METER_CALIBRATION))
                .check(calibration, today);
    }

    private boolean isTraining() {
        return known(RecordKind.LABORATORY, Laboratory.ID)
                .filter(laboratory -> ((Laboratory) laboratory).training())
                .isPresent();
    }

    private Optional<Incoming> mix(Incoming one, MixDesign mix) {
        if (unlessWrong(one, mix.check()).isEmpty()) {
            return Optional.empty();
        }
        mix.sources().stream()
                .sorted()
                .filter(source -> known(RecordKind.SOURCE, source.text()).isEmpty())
                .forEach(source -> problems.add(Problem.warning(
                                "source_id", "import.unknown-source", mix.id().text(), source.text())
                        .at(one.place())));
        return Optional.of(one);
    }

    private Optional<Incoming> determination(Incoming one, Determination determination) {
        if (!knownMix(one, determination.mixId())) {
            return Optional.empty();
        }
        Determination marked = determination.simulated(determination.simulated() || isTraining());
        Optional<Problem> mixing = Training.mixing(marked, isTraining());
        if (mixing.isPresent()) {
            problems.add(mixing.get().at(one.place()));
            return Optional.empty();
        }
        if (!marked.sourceVersions().isEmpty()) {
            return Optional.of(new Incoming(one.place(), marked));
        }
        Map<SourceId, Integer> sources = touched.value(Determination.class, RecordKind.DETERMINATION, marked.recordId())
                .map(Determination::sourceVersions)
                .orElseGet(() -> coming.sourcesToday(marked.mixId()));
        return Optional.of(new Incoming(one.place(), marked.madeWith(sources)));
    }

    private Optional<Incoming> trial(Incoming one, Trial trial) {
        Optional<Problem> mixing = Training.mixing(trial, isTraining());
        mixing.ifPresent(problem -> problems.add(problem.at(one.place())));
        if (!knownMix(one, trial.mixId()) || mixing.isPresent()) {
            return Optional.empty();
        }
        if (known(RecordKind.METER, trial.meterId().text()).isEmpty()) {
            problems.add(Problem.warning(
                            "meter_id",
                            "import.unknown-meter",
                            trial.id().text(),
                            trial.meterId().text())
                    .at(one.place()));
        }
        Trial placed = trialIntake.placed(trial);
        Optional<Problem> mixedTypes = trialIntake.mixedTypes(placed);
        mixedTypes.ifPresent(problem -> problems.add(problem.at(one.place())));
        if (mixedTypes.isPresent()) {
            return Optional.empty();
        }
        trialIntake.doubts(trial).forEach(problem -> problems.add(problem.at(one.place())));
        trialIntake.tooSoon(placed).ifPresent(problem -> problems.add(problem.at(one.place())));
        Optional<Kept> determination =
                known(RecordKind.DETERMINATION, placed.determinationId().text());
        if (determination.isPresent()
                && !((Determination) determination.get()).mixId().equals(trial.mixId())) {
            error(
                    one,
                    "import.determination-of-another-mix",
                    trial.id().text(),
                    placed.determinationId().text(),
                    ((Determination) determination.get()).mixId().text());
            return Optional.empty();
        }
        if (determination.isEmpty()) {
            Determination begun = new Determination(
                    placed.determinationId(),
                    trial.mixId(),
                    Math.max(1, coming.versionOf(RecordKind.MIX, trial.mixId().text())),
                    coming.sourcesToday(trial.mixId()),
                    trial.testedAt().toLocalDate(),
                    "",
                    trial.simulated());
            good(RecordKind.DETERMINATION).put(begun.recordId(), new Incoming(one.place(), begun));
            draft(Draft.of(begun));
        }
        return Optional.of(new Incoming(one.place(), placed));
    }

    private Optional<Incoming> issue(Incoming one, FactorIssue issue) {
        boolean mixKnown = knownMix(one, issue.mixId());
        boolean determinationKnown =
                known(RecordKind.DETERMINATION, issue.determinationId().text()).isPresent();
        if (!determinationKnown) {
            error(
                    one,
                    "import.unknown-determination",
                    issue.recordId(),
                    issue.determinationId().text());
        }
        if (!mixKnown || !determinationKnown) {
            return Optional.empty();
        }
        Determination made = (Determination)
                known(RecordKind.DETERMINATION, issue.determinationId().text()).orElseThrow();
        if (unlessWrong(one, GroupIntake.otherMix(issue, made)).isEmpty()) {
            return Optional.empty();
        }
        Optional<Problem> mixing = Training.mixing(issue, isTraining());
        if (mixing.isPresent()) {
            problems.add(mixing.get().at(one.place()));
            return Optional.empty();
        }
        Optional<FactorIssue> there = touched.value(FactorIssue.class, RecordKind.FACTOR_ISSUE, issue.recordId());
        if (there.isPresent()) {
            return Optional.of(new Incoming(one.place(), IssueIntake.filled(issue, there.get())));
        }
        return Optional.of(issue.mixVersion() > 0 ? one : new Incoming(one.place(), GroupIntake.resting(issue, made)));
    }

    private boolean knownMix(Incoming one, MixId mixId) {
        boolean isKnown = known(RecordKind.MIX, mixId.text()).isPresent();
        if (!isKnown) {
            error(
                    one,
                    "import.unknown-mix",
                    one.value().kind().word(),
                    one.value().recordId(),
                    mixId.text());
        }
        return isKnown;
    }

    private Optional<Kept> known(RecordKind kind, String recordId) {
        return coming.known(kind, recordId);
    }

    private void error(Incoming one, String code, Object... values) {
        problems.add(Problem.error("id", code, values).at(one.place()));
    }
}
