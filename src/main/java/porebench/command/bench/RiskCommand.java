package porebench.command.bench;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.command.reply.ReportLayout;
import porebench.method.Problem;
import porebench.method.risk.AirLimits;
import porebench.method.risk.LoadRisk;
import porebench.method.risk.Loads;
import porebench.method.risk.RiskCheck;
import porebench.method.risk.RiskCurve;

/** {@code risk}: the shares of loads that a wrong factor passes or fails wrongly. */
@Command(name = "risk")
public final class RiskCommand extends OneCommand {
    private static final int PER_CENT = 100;
    private static final int DECIMALS = 2;

    @Option(names = "--target", required = true, paramLabel = "<percent>")
    private BigDecimal target;

    @Option(names = "--tolerance", required = true, paramLabel = "<percent>")
    private BigDecimal tolerance;

    @Option(names = "--spread", required = true, paramLabel = "<percent>")
    private BigDecimal spread;

    @Option(names = "--error", required = true, paramLabel = "<percent>")
    private BigDecimal error;

    @Option(names = "--mean", paramLabel = "<percent>")
    private @Nullable BigDecimal mean;

    @Option(names = "--reading-spread", paramLabel = "<percent>")
    private BigDecimal readingSpread = BigDecimal.ZERO;

    /** What is said: the shares at the error asked for, and over other errors. */
    private record Said(LoadRisk risk, RiskCurve curve) {}

    public RiskCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = RiskCheck.check(tolerance, spread, readingSpread);
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        AirLimits limits = new AirLimits(target.doubleValue(), tolerance.doubleValue());
        Loads loads = new Loads(
                (mean == null ? target : mean).doubleValue(), spread.doubleValue(), readingSpread.doubleValue());
        double wrongBy = error.doubleValue();
        Said said = new Said(
                LoadRisk.of(limits, loads, wrongBy), RiskCurve.of(limits, loads, RiskCurve.farthest(limits, wrongBy)));
        return CommandOutcome.done(layout().report(said), problems);
    }

    private ReportLayout<Said> layout() {
        return this.<Said>laidOut()
                .number("wronglyPassed", said -> said.risk().wronglyPassed())
                .number("wronglyFailed", said -> said.risk().wronglyFailed())
                .number("risk.wrongly-passed", said -> PER_CENT * said.risk().wronglyPassed(), shown().fixed(DECIMALS))
                .in("%")
                .number("risk.wrongly-failed", said -> PER_CENT * said.risk().wronglyFailed(), shown().fixed(DECIMALS))
                .in("%")
                .gap()
                .list("curve", said -> said.curve().points(), points());
    }

    private ReportLayout<RiskCurve.Point> points() {
        return this.<RiskCurve.Point>laidOut()
                .number("error", "risk.error", RiskCurve.Point::errorPercent)
                .number("wronglyPassed", point -> point.risk().wronglyPassed())
                .number("wronglyFailed", point -> point.risk().wronglyFailed())
                .number(
                        "risk.passed-percent",
                        point -> PER_CENT * point.risk().wronglyPassed(),
                        shown().fixed(DECIMALS))
                .number(
                        "risk.failed-percent",
                        point -> PER_CENT * point.risk().wronglyFailed(),
                        shown().fixed(DECIMALS));
    }
}
