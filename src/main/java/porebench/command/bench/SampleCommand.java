package porebench.command.bench;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.ProfileOption;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.sample.Batch;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.id.MixId;

/** {@code sample}: what to weigh and how much water to have ready for a correction sample. */
@Command(name = "sample")
public final class SampleCommand extends OneCommand {
    private static final int MOST_TRIALS = 100;
    private static final BigDecimal MOST_SPARE = BigDecimal.valueOf(1000);

    @Option(names = "--mix", required = true, paramLabel = "<file>")
    private Path mixFile;

    @Option(names = "--mix-id", required = true, paramLabel = "<id>")
    private MixId mixId;

    @Option(names = "--bowl", required = true, paramLabel = "<volume>")
    private Volume bowl;

    @Option(names = "--wet-sieved")
    private boolean wetSieved;

    @Option(names = "--trials", paramLabel = "<number>")
    private int trials = 1;

    @Option(names = "--spare", paramLabel = "<percent>")
    private BigDecimal sparePercent = BigDecimal.ZERO;

    @Mixin
    private final ProfileOption rules = new ProfileOption();

    public SampleCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> own = new ArrayList<>();
        checkNumbers(own);
        MixesOfFile mixes = MixesOfFile.read(ports().sheets().get(), mixFile);
        Optional<MixDesign> mix = mixes.find(mixId, "mixId", own);
        Profile profile = rules.profile(mix, own);
        Optional<Batch> batch = mix.map(MixDesign::batch).map(b -> b.withWetSieved(b.wetSieved() || wetSieved));
        Optional<Answer<CorrectionSample>> answer = batch.map(b -> CorrectionSample.of(b, bowl));
        answer.ifPresent(a -> own.addAll(a.problems()));
        checkSmall(profile, own);
        List<Problem> all = mixes.with(own);
        if (Problem.anyError(own)) {
            return CommandOutcome.refused(all);
        }
        CorrectionSample sample = answer.orElseThrow().value().orElseThrow();
        WeighOut weighOut = WeighOut.of(sample, trials, sparePercent.doubleValue(), profile);
        return CommandOutcome.done(
                SampleReport.of(here(), mix.orElseThrow(), batch.orElseThrow().wetSieved(), sample, weighOut), all);
    }

    private void checkSmall(Profile profile, List<Problem> problems) {
        double litres = bowl.in(VolumeUnit.LITRE);
        double least = profile.number(FigureName.LEAST_BOWL);
        if (Limit.BOWL.holds(litres) && litres < least) {
            problems.add(Problem.warning("bowl", "trial.bowl-small", litres, least, profile.title()));
        }
    }

    private void checkNumbers(List<Problem> problems) {
        if (trials < 1 || trials > MOST_TRIALS) {
            problems.add(Problem.error("trials", "command.trials-out-of-range", trials, MOST_TRIALS));
        }
        if (sparePercent.signum() < 0 || sparePercent.compareTo(MOST_SPARE) > 0) {
            problems.add(Problem.error("spare", "command.spare-out-of-range", sparePercent, MOST_SPARE));
        }
    }
}
