package porebench.command.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
import porebench.evidence.CountedTrials;
import porebench.evidence.EnoughTrials;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.intake.TrialSet;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.sample.CorrectionSample;
import porebench.method.trial.StopRule;
import porebench.record.MixDesign;
import porebench.record.Trial;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/** {@code factor}: the factor of every determination in a trial sheet. */
@Command(name = "factor")
public final class FactorCommand extends OneCommand {
    @Option(names = "--trials", required = true, paramLabel = "<file>")
    private Path trialFile;

    @Option(names = "--mix-id", paramLabel = "<id>")
    private @Nullable MixId mixId;

    @Option(names = "--mix", paramLabel = "<file>")
    private @Nullable Path mixFile;

    @Mixin
    private final ProfileOption rules = new ProfileOption();

    @Mixin
    private final MeterDivision division = new MeterDivision();

    public FactorCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> own = new ArrayList<>();
        division.check(own);
        rules.profile(own);
        Map<MixId, List<Trial>> trials =
                TrialsOfFile.read(ports().sheets().get(), trialFile, Optional.ofNullable(mixId), own);
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
        Map<MixId, List<TrialSet>> sets = new LinkedHashMap<>();
        trials.forEach((id, ofMix) -> {
            TrialsOfFile.checkApart(id, ofMix, own);
            sets.put(id, TrialSet.of(ofMix, own));
        });
        if (Problem.anyError(own)) {
            return CommandOutcome.refused(mixes.map(file -> file.with(own)).orElse(own));
        }
        List<JudgedDetermination> judged = new ArrayList<>();
        Map<DeterminationId, Profile> profiles = new HashMap<>();
        sets.forEach((id, ofMix) -> {
            Profile profile = rules.profile(Optional.ofNullable(designs.get(id)), own);
            ofMix.forEach(set -> {
                profiles.put(set.id(), profile);
                judged.add(judge(set, Optional.ofNullable(designs.get(id)), profile, own));
            });
        });
        Map<DeterminationId, StopRule> stops = stops(judged, profiles);
        return CommandOutcome.done(
                new FactorReport(here(), judged, stops),
                mixes.map(file -> file.with(own)).orElse(own));
    }

    /** Adds what is wrong with the mix: without its sample the trials could not be checked against it. */
    private static void checkSample(MixDesign design, Trial trial, List<Problem> problems) {
        if (trial.readings().bowl().value().cubicMetres() > 0) {
            problems.addAll(
                    CorrectionSample.of(design.batch(), trial.readings().bowl().value())
                            .problems());
        }
    }

    /** Asks the stop rule, the other mixes of the sheet being the laboratory; simulated and real ones stay apart. */
    private Map<DeterminationId, StopRule> stops(
            List<JudgedDetermination> judged, Map<DeterminationId, Profile> profiles) {
        Map<DeterminationId, StopRule> stops = new HashMap<>();
        Map<Boolean, LaboratoryScatter> laboratories = judged.stream()
                .collect(Collectors.partitioningBy(
                        FactorCommand::isSimulated,
                        Collectors.collectingAndThen(Collectors.toList(), LaboratoryScatter::ofDeterminations)));
        Map<List<?>, List<CountedTrials>> ofMixes = judged.stream()
                .collect(Collectors.groupingBy(
                        FactorCommand::mixOf, Collectors.mapping(CountedTrials::of, Collectors.toList())));
        for (JudgedDetermination one : judged) {
            DeterminationId id = one.determination().value().id();
            new EnoughTrials(
                            Objects.requireNonNull(ofMixes.get(mixOf(one))),
                            CountedTrials.of(one),
                            division.percent().doubleValue(),
                            Objects.requireNonNull(profiles.get(id)))
                    .stop(Objects.requireNonNull(laboratories.get(isSimulated(one))))
                    .ifPresent(stop -> stops.put(id, stop));
        }
        return stops;
    }

    private static List<?> mixOf(JudgedDetermination judged) {
        return List.of(isSimulated(judged), judged.determination().value().mixId());
    }

    private static boolean isSimulated(JudgedDetermination judged) {
        return judged.trials().stream().anyMatch(trial -> trial.trial().value().simulated());
    }

    private JudgedDetermination judge(
            TrialSet set, Optional<MixDesign> design, Profile profile, List<Problem> problems) {
        Stamp stamp = new Stamp(here().user(), here().clock().instant(), trialFile.toString());
        List<JudgedTrial> judged = set.trials().stream()
                .map(trial -> JudgedTrial.of(new Version<>(trial, 1, stamp), design, Optional.empty(), profile))
                .toList();
        JudgedDetermination result = JudgedDetermination.of(
                TrialsOfFile.determination(set, stamp),
                judged,
                division.percent().doubleValue(),
                profile);
        if (result.summary().isEmpty()) {
            problems.add(
                    Problem.warning("trials", "issue.no-trial-counts", set.id().text()));
        }
        return result;
    }
}
