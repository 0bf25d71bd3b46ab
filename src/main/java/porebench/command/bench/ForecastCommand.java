package porebench.command.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.evidence.JudgedTrial;
import porebench.evidence.forecast.ForecastTrials;
import porebench.evidence.forecast.LaboratoryForecast;
import porebench.evidence.intake.TrialSet;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.forecast.Forecast;
import porebench.method.profile.Profiles;
import porebench.quantity.Volume;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** {@code forecast}: the factor of a mix as the trials of all mixes let it be expected, before it is tested. */
@Command(name = "forecast")
public final class ForecastCommand extends OneCommand {
    private static final Volume USUAL_BOWL = new Volume(0.007);
    private static final int USUAL_COUNT = 3;
    private static final int MOST_TRIALS = 100;

    @ArgGroup(multiplicity = "1")
    private From from = new From();

    @Option(names = "--mix-id", required = true, paramLabel = "<id>")
    private MixId mixId;

    @Option(names = "--bowl", paramLabel = "<volume>")
    private Volume bowl = USUAL_BOWL;

    @Option(names = "--count", paramLabel = "<number>")
    private int count = USUAL_COUNT;

    /** Where mixes and trials come from. */
    static final class From {
        @ArgGroup(exclusive = false, multiplicity = "1")
        private @Nullable Files files;

        @Option(names = "--book", required = true, paramLabel = "<file>")
        private @Nullable Path book;
    }

    static final class Files {
        @Option(names = "--mixes", required = true, paramLabel = "<file>")
        private Path mixes;

        @Option(names = "--trials", required = true, paramLabel = "<file>")
        private Path trials;
    }

    public ForecastCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        if (count < 1 || count > MOST_TRIALS) {
            return CommandOutcome.refused(
                    List.of(Problem.error("count", "command.trials-out-of-range", count, MOST_TRIALS)));
        }
        if (from.files != null) {
            return ofFiles(from.files);
        }
        if (from.book != null) {
            try (LabBook book = ports().shelf().get().open(from.book)) {
                return marked(book, ofBook(book));
            }
        }
        throw new IllegalStateException("picocli fills one of the two");
    }

    private CommandOutcome ofBook(LabBook book) {
        Optional<MixDesign> mix = book.latest(MixDesign.class, mixId.text()).map(Version::value);
        if (mix.isEmpty()) {
            return CommandOutcome.refused(
                    List.of(Problem.error("mixId", "book.not-there", RecordKind.MIX.word(), mixId.text())));
        }
        return outcome(mix.get(), ForecastTrials.of(book, here().progress()), new ArrayList<>());
    }

    private CommandOutcome ofFiles(Files files) {
        List<Problem> own = new ArrayList<>();
        MixesOfFile mixes = MixesOfFile.read(ports().sheets().get(), files.mixes);
        Optional<MixDesign> mix = mixes.find(mixId, "mixId", own);
        Map<MixId, List<Trial>> trials = TrialsOfFile.read(ports().sheets().get(), files.trials, Optional.empty(), own);
        TrialsOfFile.checkApart(
                mixId, trials.values().stream().flatMap(List::stream).toList(), own);
        if (Problem.anyError(own)) {
            return CommandOutcome.refused(mixes.with(own));
        }
        ForecastTrials gathered = new ForecastTrials();
        Stamp stamp = new Stamp(here().user(), here().clock().instant(), files.trials.toString());
        trials.forEach((id, ofMix) -> {
            List<Problem> missing = new ArrayList<>();
            mixes.find(id, "trials", missing)
                    .ifPresent(design -> TrialSet.of(ofMix, own)
                            .forEach(set -> gathered.add(design, set.id().text(), judged(set, design, stamp))));
            missing.forEach(problem -> own.add(problem.asWarning()));
        });
        return outcome(mix.orElseThrow(), gathered.forecast(), mixes.with(own));
    }

    private static List<JudgedTrial> judged(TrialSet set, MixDesign design, Stamp stamp) {
        Profile profile = Profiles.find(design.profileId()).orElseGet(Profiles::standard);
        return set.trials().stream()
                .map(trial ->
                        JudgedTrial.of(new Version<>(trial, 1, stamp), Optional.of(design), Optional.empty(), profile))
                .toList();
    }

    private CommandOutcome outcome(MixDesign mix, Answer<LaboratoryForecast> laboratory, List<Problem> before) {
        List<Problem> problems = new ArrayList<>(before);
        mix.check().stream().filter(problem -> !problem.isError()).forEach(problems::add);
        problems.addAll(laboratory.problems());
        if (laboratory.value().isEmpty()) {
            return CommandOutcome.refused(problems);
        }
        Answer<Forecast> forecast = laboratory.value().get().of(mix, bowl, count);
        problems.addAll(forecast.problems());
        return forecast.value()
                .map(found -> CommandOutcome.done(
                        new ForecastReport(mix, found, laboratory.value().get(), words(), shown()), problems))
                .orElseGet(() -> CommandOutcome.refused(problems));
    }
}
