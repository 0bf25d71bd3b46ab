package porebench.command;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.simulate.Bench;
import porebench.method.simulate.Fault;
import porebench.record.MeterId;
import porebench.record.MixId;
import porebench.record.Trial;

/** {@code simulate}: a sheet of simulated trials of an aggregate whose factor is known. */
@Command(name = "simulate")
final class SimulateCommand extends OneCommand {
    private static final int MOST_TRIALS = 1000;
    private static final BigDecimal HIGHEST_FACTOR = BigDecimal.TEN;
    private static final MixId USUAL_MIX = new MixId("SIM-MIX");
    /** Not today: the same options give the same file on any day. */
    private static final LocalDate USUAL_DAY = LocalDate.of(2001, 1, 1);

    @Option(names = "--true-factor", required = true, paramLabel = "<percent>")
    private BigDecimal trueFactor;

    @Option(names = "--trials", required = true, paramLabel = "<count>")
    private int trials;

    @Option(names = "--meter-type", required = true, paramLabel = "<type>")
    private MeterType meterType;

    @Option(names = "--seed", required = true, paramLabel = "<number>")
    private long seed;

    @Option(names = "--out", required = true, paramLabel = "<file>")
    private Path out;

    @Option(names = "--fault", paramLabel = "<fault>")
    private List<Fault> faults = new ArrayList<>();

    @Option(names = "--mix-id", paramLabel = "<id>")
    private MixId mixId = USUAL_MIX;

    @Option(names = "--meter-id", paramLabel = "<id>")
    private @Nullable MeterId meterId;

    @Option(names = "--from", paramLabel = "<date>")
    private LocalDate from = USUAL_DAY;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    SimulateCommand(Surroundings here, Ports ports) {
        super(here, ports);
    }

    @Override
    Outcome carryOut() {
        List<Problem> problems = new ArrayList<>();
        if (trueFactor.signum() < 0 || trueFactor.compareTo(HIGHEST_FACTOR) > 0) {
            problems.add(Problem.error("trueFactor", "command.true-factor-out-of-range", trueFactor, HIGHEST_FACTOR));
        }
        if (trials < 1 || trials > MOST_TRIALS) {
            problems.add(Problem.error("trials", "command.trials-out-of-range", trials, MOST_TRIALS));
        }
        problems.addAll(whereTo.file(out).problems());
        if (Problem.anyError(problems)) {
            return Outcome.refused(problems);
        }
        Bench bench = Bench.of(meterType, trueFactor.doubleValue());
        for (Fault fault : faults) {
            bench = bench.with(fault);
        }
        SimulatedSheet sheet = new SimulatedSheet(
                mixId,
                Optional.ofNullable(meterId).orElseGet(() -> new MeterId("SIM-" + meterType)),
                from,
                seed,
                words().say("simulate.operator"),
                words().say("simulate.remark", Long.toString(seed)));
        List<Trial> made = bench.trials(trials, seed).stream().map(sheet::trial).toList();
        ports().sheets().get().writeTrials(whereTo.file(out), made);
        return Outcome.done(new SimulateReport(made), List.of());
    }

    private final class SimulateReport implements Report {
        private final List<Trial> made;

        SimulateReport(List<Trial> made) {
            this.made = made;
        }

        @Override
        public void json(JsonFields json) {
            json.text("path", out.toString());
            json.flag("simulated", true);
            json.whole("trials", made.size());
            json.number("trueFactorPercent", trueFactor);
            json.text("meterType", meterType.name());
            json.whole("seed", seed);
            json.texts("faults", faults.stream().map(Fault::symbol).toList());
            json.text("mixId", mixId.text());
            json.text("meterId", made.get(0).meterId().text());
        }

        @Override
        public void text(TextPage page) {
            page.line(words().say("simulate.mark"));
            page.line(words().say("simulate.written", out.toString()));
            page.row(words().say("simulate.trials"), Integer.toString(made.size()), "");
            page.row(words().say("simulate.true-factor"), shown().exact(trueFactor), words().say("unit.air"));
            page.gap();
            page.row(words().say("simulate.first"), made.get(0).id().text(), "");
            page.row(words().say("simulate.mix"), mixId.text(), "");
            page.row(words().say("simulate.meter"), made.get(0).meterId().text(), "");
            page.row(
                    words().say("simulate.faults"),
                    faults.isEmpty()
                            ? Shown.NONE
                            : String.join(
                                    ", ", faults.stream().map(Fault::symbol).toList()),
                    "");
        }
    }
}
