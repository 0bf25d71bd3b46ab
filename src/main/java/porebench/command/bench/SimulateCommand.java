package porebench.command.bench;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.command.reply.WhereTo;
import porebench.evidence.practice.Planted;
import porebench.evidence.practice.SimulatedSheet;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.simulate.Bench;
import porebench.method.simulate.Fault;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** {@code simulate}: a sheet of simulated trials of an aggregate whose factor is known. */
@Command(name = "simulate")
public final class SimulateCommand extends OneCommand {
    private static final int MOST_TRIALS = 1000;
    private static final BigDecimal HIGHEST_FACTOR = BigDecimal.TEN;
    private static final MixId USUAL_MIX = new MixId("SIM-MIX");
    /** Not today: the same options give the same file on any day. */
    private static final LocalDate USUAL_DAY = LocalDate.of(2001, 1, 1);

    private static final int FIRST_HOUR = 8;
    private static final int TRIALS_A_DAY = 6;

    @Option(names = "--true-factor", required = true, paramLabel = "<percent>")
    private BigDecimal trueFactor;

    @Option(names = "--trials", required = true, paramLabel = "<count>")
    private int trials;

    @Option(names = "--meter-type", paramLabel = "<type>")
    private @Nullable MeterType meterType;

    @Option(names = "--book", paramLabel = "<file>")
    private @Nullable Path book;

    @Option(names = "--mix", paramLabel = "<file>")
    private @Nullable Path mixes;

    @Option(names = "--meters", paramLabel = "<file>")
    private @Nullable Path meters;

    @Option(names = "--faulty", paramLabel = "<count>")
    private @Nullable Integer faulty;

    @Option(names = "--seed", required = true, paramLabel = "<number>")
    private long seed;

    @Option(names = "--out", required = true, paramLabel = "<file>")
    private Path out;

    @Option(names = "--fault", paramLabel = "<fault>")
    private List<Fault> faults = new ArrayList<>();

    @Option(names = "--mix-id", paramLabel = "<id>")
    private @Nullable MixId namedMix;

    @Option(names = "--meter-id", paramLabel = "<id>")
    private @Nullable MeterId meterId;

    @Option(names = "--from", paramLabel = "<date>")
    private @Nullable LocalDate from;

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final WhereTo whereTo = new WhereTo();

    public SimulateCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        checkUsage();
        List<Problem> problems = new ArrayList<>();
        if (trueFactor.signum() < 0 || trueFactor.compareTo(HIGHEST_FACTOR) > 0) {
            problems.add(Problem.error("trueFactor", "command.true-factor-out-of-range", trueFactor, HIGHEST_FACTOR));
        }
        if (trials < 1 || trials > MOST_TRIALS) {
            problems.add(Problem.error("trials", "command.trials-out-of-range", trials, MOST_TRIALS));
        } else if (faulty != null && (faulty < 0 || faulty > trials)) {
            problems.add(Problem.error("faulty", "command.faulty-out-of-range", faulty, trials));
        }
        problems.addAll(whereTo.file(out).problems());
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        Answer<Bench> answer = bench(problems);
        problems.addAll(answer.problems());
        return answer.value()
                .map(bench -> CommandOutcome.done(simulate(bench), problems))
                .orElseGet(() -> CommandOutcome.refused(problems));
    }

    /** A bench that knows no meter of a register needs the type; a book and a sheet of mixes are not both the mix. */
    private void checkUsage() {
        if (meterType == null && (meterId == null || book == null && meters == null)) {
            throw missing("--meter-type");
        }
        if ((book != null || mixes != null) && namedMix == null) {
            throw missing("--mix-id");
        }
        if (meters != null && mixes == null) {
            throw missing("--mix");
        }
        if (book != null && mixes != null) {
            throw new UnmatchedArgumentException(spec().commandLine(), List.of("--mix"));
        }
    }

    private ParameterException missing(String option) {
        ArgSpec argument = spec().findOption(option);
        return new MissingParameterException(
                spec().commandLine(), argument, "Missing required option: '" + option + "'");
    }

    private MixId mixId() {
        return Optional.ofNullable(namedMix).orElse(USUAL_MIX);
    }

    private Answer<Bench> bench(List<Problem> problems) {
        KnownBench known = new KnownBench(
                ports(),
                mixId(),
                Optional.ofNullable(meterId),
                Optional.ofNullable(meterType),
                trueFactor.doubleValue());
        if (book != null) {
            return known.ofBook(book, firstDay());
        }
        return mixes == null
                ? Answer.of(Bench.of(Objects.requireNonNull(meterType), trueFactor.doubleValue()), List.of())
                : known.ofSheets(mixes, meters, problems);
    }

    /** Trials of a book stand beside its calibrations, so the last ones are of today; else a file is the same on any day. */
    private LocalDate firstDay() {
        if (from != null) {
            return from;
        }
        return book == null ? USUAL_DAY : here().today().minusDays((trials - 1) / TRIALS_A_DAY);
    }

    private SimulateReport simulate(Bench bench) {
        Bench faultyBench = bench;
        for (Fault fault : faults) {
            faultyBench = faultyBench.with(fault);
        }
        Set<Integer> wrong = faults.isEmpty()
                ? Set.of()
                : Planted.draw(trials, Optional.ofNullable(faulty).orElse(trials), seed);
        SimulatedSheet sheet = new SimulatedSheet(
                mixId(),
                new DeterminationId(mixId().text() + "/SIM-" + seed),
                Optional.ofNullable(meterId)
                        .orElseGet(() -> new MeterId("SIM-" + bench.gauge().type())),
                firstDay().atTime(FIRST_HOUR, 0),
                TRIALS_A_DAY,
                seed,
                words().get("simulate.operator"),
                words().get("simulate.remark", Long.toString(seed)));
        List<Trial> made = faultyBench.trials(trials, seed, wrong).stream()
                .map(sheet::trial)
                .toList();
        ports().sheets().get().writeTrials(whereTo.file(out), made);
        acted();
        return new SimulateReport(
                made,
                bench.gauge().type(),
                new Planted(
                        trueFactor.doubleValue(),
                        wrong.isEmpty() ? Set.of() : Set.copyOf(faults),
                        wrong.stream()
                                .sorted()
                                .map(number -> SimulatedSheet.idOf(seed, number))
                                .toList()));
    }

    private final class SimulateReport implements Report {
        private final List<Trial> made;
        private final MeterType type;
        private final Planted planted;

        SimulateReport(List<Trial> made, MeterType type, Planted planted) {
            this.made = made;
            this.type = type;
            this.planted = planted;
        }

        @Override
        public void json(JsonFields json) {
            json.text("path", out.toString());
            json.flag("simulated", true);
            json.whole("trials", made.size());
            json.number("trueFactorPercent", trueFactor);
            json.text("meterType", type.name());
            json.whole("seed", seed);
            json.texts("faults", faults.stream().map(Fault::symbol).toList());
            json.text("mixId", mixId().text());
            json.text("meterId", made.get(0).meterId().text());
            json.group("planted", fields -> {
                fields.number("trueFactorPercent", trueFactor);
                fields.texts("faults", symbols());
                fields.texts("trials", trialIds());
            });
        }

        private List<String> symbols() {
            return planted.faults().stream().sorted().map(Fault::symbol).toList();
        }

        private List<String> trialIds() {
            return planted.trials().stream().map(TrialId::text).toList();
        }

        @Override
        public void text(TextPage page) {
            page.line(words().get("simulate.mark"));
            page.line(words().get("simulate.written", out.toString()));
            page.row(words().get("simulate.trials"), Integer.toString(made.size()), "");
            page.row(words().get("simulate.true-factor"), shown().exact(trueFactor), words().get("unit.air"));
            page.gap();
            page.row(words().get("simulate.first"), made.get(0).id().text(), "");
            page.row(words().get("simulate.mix"), mixId().text(), "");
            page.row(words().get("simulate.meter"), made.get(0).meterId().text(), "");
            page.row(
                    words().get("simulate.faults"),
                    planted.faults().isEmpty() ? NumberText.NONE : String.join(", ", symbols()),
                    "");
            if (!planted.trials().isEmpty() && planted.trials().size() < made.size()) {
                page.row(words().get("simulate.faulty"), String.join(", ", trialIds()), "");
            }
        }
    }

    private CommandSpec spec() {
        return Objects.requireNonNull(spec);
    }
}
