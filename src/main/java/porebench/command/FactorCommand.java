package porebench.command;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.sample.CorrectionSample;
import porebench.record.Determination;
import porebench.record.DeterminationId;
import porebench.record.JudgedDetermination;
import porebench.record.JudgedTrial;
import porebench.record.MixDesign;
import porebench.record.MixId;
import porebench.record.RecordKind;
import porebench.record.Stamp;
import porebench.record.Trial;
import porebench.record.TrialId;
import porebench.record.Version;
import porebench.record.port.Sheet;

/** {@code factor}: the factor of every mix in a trial sheet, all trials of a mix being one determination. */
@Command(name = "factor")
final class FactorCommand extends OneCommand {
    private static final BigDecimal WIDEST_DIVISION = BigDecimal.TEN;

    @Option(names = "--trials", required = true, paramLabel = "<file>")
    private Path trialFile;

    @Option(names = "--mix-id", paramLabel = "<id>")
    private @Nullable MixId mixId;

    @Option(names = "--mix", paramLabel = "<file>")
    private @Nullable Path mixFile;

    @Option(names = "--profile", paramLabel = "<id>")
    private @Nullable String profileId;

    @Option(names = "--division", paramLabel = "<percent>")
    private BigDecimal division = BigDecimal.valueOf(JudgedDetermination.USUAL_DIVISION_PERCENT);

    FactorCommand(Surroundings here, Ports ports) {
        super(here, ports);
    }

    @Override
    Outcome carryOut() {
        List<Problem> own = new ArrayList<>();
        if (division.signum() <= 0 || division.compareTo(WIDEST_DIVISION) > 0) {
            own.add(Problem.error("division", "air.division-out-of-range", division));
        }
        Profile chosen = profile(Optional.ofNullable(profileId), own);
        Map<MixId, List<Trial>> trials = readTrials(own);
        Optional<MixesOfFile> mixes = Optional.empty();
        if (mixFile != null) {
            mixes = Optional.of(MixesOfFile.read(ports().sheets().get(), mixFile));
        }
        Map<MixId, MixDesign> designs = new HashMap<>();
        for (Map.Entry<MixId, List<Trial>> one : trials.entrySet()) {
            mixes.flatMap(file -> file.find(one.getKey(), "mix", own)).ifPresent(design -> {
                designs.put(one.getKey(), design);
                checkSample(design, one.getValue().get(0), own);
            });
        }
        trials.forEach((id, ofMix) -> checkApart(id, ofMix, own));
        if (Problem.anyError(own)) {
            return Outcome.refused(mixes.map(file -> file.with(own)).orElse(own));
        }
        List<JudgedDetermination> judged = new ArrayList<>();
        trials.forEach((id, ofMix) -> judged.add(judge(id, ofMix, Optional.ofNullable(designs.get(id)), chosen, own)));
        return Outcome.done(
                new FactorReport(here(), judged),
                mixes.map(file -> file.with(own)).orElse(own));
    }

    private Map<MixId, List<Trial>> readTrials(List<Problem> problems) {
        Map<MixId, List<Trial>> byMix = new LinkedHashMap<>();
        Sheet<Trial> sheet = ports().sheets().get().trials(trialFile);
        problems.addAll(sheet.problems());
        Map<TrialId, Integer> lines = new HashMap<>();
        for (Sheet.Row<Trial> row : sheet.rows()) {
            Trial trial = row.value();
            Integer twin = lines.putIfAbsent(trial.id(), row.line());
            if (twin != null) {
                problems.add(Problem.error(
                                "trial_id",
                                "import.duplicate",
                                RecordKind.TRIAL.word(),
                                trial.id().text(),
                                sheet.file(),
                                twin)
                        .at(new Place(sheet.file(), row.line(), 0)));
            }
            if (mixId == null || mixId.equals(trial.mixId())) {
                byMix.computeIfAbsent(trial.mixId(), id -> new ArrayList<>()).add(trial);
            }
        }
        if (byMix.isEmpty() && mixId != null) {
            problems.add(Problem.error("mixId", "command.no-trial-of-mix", trialFile.toString(), mixId.text()));
        } else if (byMix.isEmpty() && !Problem.anyError(problems)) {
            problems.add(Problem.error("trials", "command.no-trial", trialFile.toString()));
        }
        return byMix;
    }

    /** Adds what is wrong with the mix: without its sample the trials could not be checked against it. */
    private static void checkSample(MixDesign design, Trial trial, List<Problem> problems) {
        if (trial.readings().bowl().value().cubicMetres() > 0) {
            problems.addAll(
                    CorrectionSample.of(design.batch(), trial.readings().bowl().value())
                            .problems());
        }
    }

    /** Adds the problem that simulated trials stand beside real ones. */
    private static void checkApart(MixId id, List<Trial> trials, List<Problem> problems) {
        if (trials.stream().map(Trial::simulated).distinct().count() > 1) {
            problems.add(Problem.error("simulated", "command.simulated-beside-real", id.text()));
        }
    }

    private JudgedDetermination judge(
            MixId id, List<Trial> trials, Optional<MixDesign> design, Profile chosen, List<Problem> problems) {
        Profile profile = profileId == null && design.isPresent()
                ? profileOfMix(design.get().profileId(), problems)
                : chosen;
        Stamp stamp = new Stamp(here().user(), here().clock().instant(), trialFile.toString());
        List<JudgedTrial> judged = trials.stream()
                .map(trial -> JudgedTrial.of(new Version<>(trial, 1, stamp), design, Optional.empty(), profile))
                .toList();
        Determination determination = new Determination(
                new DeterminationId(id.text()),
                id,
                1,
                Map.of(),
                trials.get(0).testedAt().toLocalDate(),
                "");
        JudgedDetermination result =
                JudgedDetermination.of(new Version<>(determination, 1, stamp), judged, division.doubleValue(), profile);
        if (result.summary().isEmpty()) {
            problems.add(Problem.warning("trials", "issue.no-trial-counts", id.text()));
        }
        return result;
    }
}
