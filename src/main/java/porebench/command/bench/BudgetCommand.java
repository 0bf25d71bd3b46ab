package porebench.command.bench;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.ProfileOption;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.MeterStory;
import porebench.evidence.budget.BudgetInputs;
import porebench.evidence.budget.FieldBudgetInputs;
import porebench.evidence.intake.Sheet;
import porebench.evidence.intake.TrialSet;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.budget.Budget;
import porebench.method.budget.BudgetResult;
import porebench.method.budget.Capability;
import porebench.method.budget.FactorBudget;
import porebench.method.budget.FactorInputs;
import porebench.method.budget.FieldBudget;
import porebench.method.budget.Omission;
import porebench.record.Equipment;
import porebench.record.Trial;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.statistics.uncertainty.MonteCarlo;

/** {@code budget}: the uncertainty of a factor, and of a field reading corrected by it, and what it is made of. */
@Command(name = "budget")
public final class BudgetCommand extends OneCommand {
    private static final int FEWEST_DRAWS = 1000;
    private static final int MOST_DRAWS = 10_000_000;
    private static final int SETTLED_BY = 2 * MonteCarlo.USUAL_DRAWS;

    @Option(names = "--trials", required = true, paramLabel = "<file>")
    private Path trialFile;

    @Option(names = "--mix-id", required = true, paramLabel = "<id>")
    private MixId mixId;

    @Option(names = "--determination", paramLabel = "<id>")
    private @Nullable DeterminationId determinationId;

    @Option(names = "--calibration", paramLabel = "<file>")
    private @Nullable Path calibrationFile;

    @Option(names = "--equipment", paramLabel = "<file>")
    private @Nullable Path equipmentFile;

    @Mixin
    private final ProfileOption rules = new ProfileOption();

    @Mixin
    private final MeterDivision division = new MeterDivision();

    @Option(names = "--seed", paramLabel = "<number>")
    private long seed = BudgetResult.SEED;

    @Option(names = "--draws", paramLabel = "<count>")
    private @Nullable Integer draws;

    @Option(names = "--reading", paramLabel = "<percent>")
    private @Nullable BigDecimal reading;

    @Option(names = "--reading-meter", paramLabel = "<id>")
    private @Nullable MeterId readingMeter;

    @Option(names = "--at", paramLabel = "<date>")
    private @Nullable LocalDate at;

    public BudgetCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        Profile profile = rules.profile(problems);
        checkOptions(problems);
        List<Trial> trials = TrialsOfFile.read(ports().sheets().get(), trialFile, Optional.of(mixId), problems)
                .getOrDefault(mixId, List.of());
        TrialsOfFile.checkApart(mixId, trials, problems);
        Stamp stamp = new Stamp(here().user(), here().clock().instant(), trialFile.toString());
        StoriesOfFile stories = calibrationFile == null
                ? StoriesOfFile.none(stamp)
                : StoriesOfFile.read(ports().sheets().get(), calibrationFile, stamp, problems);
        LaboratoryEquipment equipment = equipment(problems);
        List<TrialSet> sets = trials.isEmpty() ? List.of() : chosen(TrialSet.of(trials, problems), problems);
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        LaboratoryScatter laboratory = laboratory(profile, stamp);
        Deque<BudgetReport.OfDetermination> parts = new ArrayDeque<>();
        List<Problem> found = new ArrayList<>();
        for (int index = sets.size() - 1; index >= 0; index--) {
            // The field reading goes with the newest determination that has a factor.
            part(sets.get(index), parts.isEmpty(), stories, profile, equipment, stamp, laboratory, found)
                    .ifPresent(parts::addFirst);
        }
        if (!parts.isEmpty()) {
            problems.addAll(found);
        } else {
            problems.add(Problem.error("trials", "command.no-trial-counts", trialFile.toString(), mixId.text()));
        }
        return Problem.anyError(problems)
                ? CommandOutcome.refused(problems)
                : CommandOutcome.done(new BudgetReport(mixId, List.copyOf(parts), words(), shown()), problems);
    }

    /** Returns the determinations to reckon with: the one asked for, or all, the newest last. */
    private List<TrialSet> chosen(List<TrialSet> sets, List<Problem> problems) {
        String ids = sets.stream().map(set -> set.id().text()).collect(Collectors.joining(", "));
        List<TrialSet> chosen = sets.stream()
                .filter(set -> determinationId == null || set.id().equals(determinationId))
                .toList();
        if (determinationId != null && chosen.isEmpty()) {
            problems.add(Problem.error(
                    "determination", "command.no-such-determination", determinationId.text(), mixId.text(), ids));
        } else if (chosen.size() > 1) {
            problems.add(Problem.warning(
                    "determination",
                    "command.several-determinations",
                    mixId.text(),
                    ids,
                    sets.get(sets.size() - 1).id().text()));
        }
        return chosen;
    }

    private Optional<BudgetReport.OfDetermination> part(
            TrialSet set,
            boolean withField,
            StoriesOfFile stories,
            Profile profile,
            LaboratoryEquipment equipment,
            Stamp stamp,
            LaboratoryScatter laboratory,
            List<Problem> problems) {
        Map<MeterId, MeterStory> known = stories.of(set.trials(), division.percent(), profile, problems);
        JudgedDetermination determination = judge(set, known, profile, stamp);
        Optional<FactorInputs> inputs =
                BudgetInputs.of(determination, known, division.percent().doubleValue(), profile, equipment, laboratory);
        if (inputs.isEmpty()) {
            problems.add(
                    Problem.warning("trials", "issue.no-trial-counts", set.id().text()));
            return Optional.empty();
        }
        Budget budget = FactorBudget.of(inputs.get());
        Optional<Budget> field = withField ? field(budget, determination, profile, equipment, known) : Optional.empty();
        budget.omissions().stream().map(Omission::asProblem).forEach(problems::add);
        field.ifPresent(one -> one.omissions().stream().map(Omission::asProblem).forEach(problems::add));
        BudgetResult result = result(budget);
        return Optional.of(new BudgetReport.OfDetermination(
                set.id(), result, Capability.of(result, profile, OptionalDouble.empty()), field.map(this::result)));
    }

    /** Reads the equipment of a file; without one nothing is known of it. */
    private LaboratoryEquipment equipment(List<Problem> problems) {
        if (equipmentFile == null) {
            return LaboratoryEquipment.NONE;
        }
        Sheet<Equipment> sheet = ports().sheets().get().equipment(equipmentFile);
        problems.addAll(sheet.problems());
        sheet.rows()
                .forEach(row -> row.value().check(here().today()).stream()
                        .map(problem -> problem.at(sheet.place(row)))
                        .forEach(problems::add));
        return LaboratoryEquipment.ofFile(sheet.values());
    }

    private BudgetResult result(Budget budget) {
        return draws == null ? BudgetResult.settled(budget, SETTLED_BY, seed) : BudgetResult.drawn(budget, draws, seed);
    }

    /** The other determinations of the sheet are the laboratory; what is wrong with other mixes is not asked about here. */
    private LaboratoryScatter laboratory(Profile profile, Stamp stamp) {
        List<Problem> ofOthers = new ArrayList<>();
        return LaboratoryScatter.ofDeterminations(
                TrialsOfFile.read(ports().sheets().get(), trialFile, Optional.empty(), ofOthers).values().stream()
                        .flatMap(trials -> TrialSet.of(trials, ofOthers).stream())
                        .map(set -> judge(set, Map.of(), profile, stamp))
                        .toList());
    }

    private void checkOptions(List<Problem> problems) {
        division.check(problems);
        if (draws != null && (draws < FEWEST_DRAWS || draws > MOST_DRAWS)) {
            problems.add(Problem.error("draws", "command.draws-out-of-range", draws, FEWEST_DRAWS, MOST_DRAWS));
        }
        if (reading == null && (readingMeter != null || at != null)) {
            problems.add(Problem.error("reading", "command.reading-missing"));
        }
    }

    private JudgedDetermination judge(TrialSet set, Map<MeterId, MeterStory> stories, Profile profile, Stamp stamp) {
        List<JudgedTrial> judged = set.trials().stream()
                .map(trial -> new Version<>(trial, 1, stamp))
                .map(trial -> Optional.ofNullable(stories.get(trial.value().meterId()))
                        .map(story -> JudgedTrial.of(trial, Optional.empty(), story))
                        .orElseGet(() -> JudgedTrial.of(trial, Optional.empty(), Optional.empty(), profile)))
                .toList();
        return JudgedDetermination.of(
                TrialsOfFile.determination(set, stamp),
                judged,
                division.percent().doubleValue(),
                profile);
    }

    private Optional<Budget> field(
            Budget budget,
            JudgedDetermination determination,
            Profile profile,
            LaboratoryEquipment equipment,
            Map<MeterId, MeterStory> stories) {
        if (reading == null) {
            return Optional.empty();
        }
        return Optional.of(FieldBudget.of(new FieldBudgetInputs(determination, stories, profile, equipment, budget)
                .of(
                        reading.doubleValue(),
                        Optional.ofNullable(readingMeter),
                        at == null ? here().today() : at,
                        determination.summary().orElseThrow().reportedPercent().doubleValue(),
                        OptionalDouble.of(profile.factorRounding().step().doubleValue()))));
    }
}
