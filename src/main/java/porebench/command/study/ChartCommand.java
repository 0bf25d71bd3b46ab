package porebench.command.study;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.OneCommand;
import porebench.command.reply.Ports;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.ValueFile;
import porebench.evidence.study.ValueRow;
import porebench.method.Problem;
import porebench.statistics.Judged;
import porebench.statistics.control.ChartTerms;
import porebench.statistics.control.CusumChart;
import porebench.statistics.control.EwmaChart;
import porebench.statistics.control.FalseAlarms;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;
import porebench.statistics.control.ShewhartChart;

/** {@code chart}: a control chart of values in subgroups, as numbers. */
@Command(name = "chart")
public final class ChartCommand extends OneCommand {
    private static final double USUAL_WIDTH = 3;

    @Option(names = "--values", required = true, paramLabel = "<file>")
    private Path values;

    @Option(names = "--kind", required = true, paramLabel = "<kind>")
    private ChartKind kind;

    @Option(names = "--lambda", paramLabel = "<number>")
    private @Nullable BigDecimal lambda;

    @Option(names = "--slack", paramLabel = "<number>")
    private @Nullable BigDecimal slack;

    @Option(names = "--width", paramLabel = "<number>")
    private @Nullable BigDecimal width;

    @Option(names = "--base-count", paramLabel = "<count>")
    private @Nullable Integer baseCount;

    @Option(names = "--rules", split = ",", paramLabel = "<rule>")
    private @Nullable Set<RunRule> rules;

    @Mixin
    private final ValuesDivision division = new ValuesDivision();

    @Option(names = "--centre", paramLabel = "<number>")
    private @Nullable BigDecimal centre;

    @Option(names = "--sigma", paramLabel = "<number>")
    private @Nullable BigDecimal sigma;

    public ChartCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        List<Problem> problems = checkOptions();
        Sheet<ValueRow> sheet = ports().sheets().get().table(values, ValueFile.SUBGROUPS.asked());
        problems.addAll(sheet.problems());
        Subgroups groups = Subgroups.of(sheet, Subgroups.COLUMN);
        if (groups.names().isEmpty() && !Problem.anyError(problems)) {
            problems.add(Problem.error("values", "command.no-number", values.toString()));
        }
        problems.addAll(groups.check(kind, sheet.file()));
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        ChartTerms terms = terms(groups);
        Judged<ChartReport.Chart> chart = chart(groups.values(), terms);
        if (chart.meaningful().isEmpty()) {
            problems.add(Problem.error("base-count", "command.base-too-short"));
            return CommandOutcome.refused(problems);
        }
        ChartReport.Chart done = chart.meaningful().get();
        int base = Math.min(groups.names().size(), terms.baseCount());
        problems.addAll(doubts(done, base, terms));
        Optional<FalseAlarms> alarms = new ChartAlarms(
                        groups,
                        terms,
                        base,
                        drawn -> chart(drawn, terms.withBaseCount(base))
                                .meaningful()
                                .map(ChartReport.Chart::signalling)
                                .orElseGet(() -> new boolean[drawn.size()]))
                .found();
        return CommandOutcome.done(
                new ChartReport(new ChartReport.Asked(kind, terms, base), done, groups, alarms, words(), shown()),
                problems);
    }

    private List<Problem> checkOptions() {
        List<Problem> problems = new ArrayList<>();
        checkPositive("lambda", lambda, problems);
        checkPositive("width", width, problems);
        division.check(problems);
        checkPositive("sigma", sigma, problems);
        checkPositive("base-count", baseCount == null ? null : BigDecimal.valueOf(baseCount), problems);
        if (lambda != null && lambda.compareTo(BigDecimal.ONE) > 0) {
            problems.add(Problem.error("lambda", "command.lambda-out-of-range", lambda));
        }
        if (slack != null && slack.signum() < 0) {
            problems.add(Problem.error("slack", "command.slack-negative", slack));
        }
        checkUse("lambda", lambda, kind == ChartKind.EWMA, problems);
        checkUse("slack", slack, kind == ChartKind.CUSUM, problems);
        checkUse("rules", rules, kind.hasRunRules(), problems);
        checkUse("centre", centre, kind != ChartKind.MEANS, problems);
        checkUse("sigma", sigma, kind != ChartKind.MEANS, problems);
        return problems;
    }

    private void checkUse(String option, @Nullable Object given, boolean isUsed, List<Problem> problems) {
        if (given != null && !isUsed) {
            problems.add(Problem.error(option, "command.option-not-used", "--" + option, kind.symbol()));
        }
    }

    private ChartTerms terms(Subgroups groups) {
        double usualWidth = switch (kind) {
            case EWMA -> EwmaChart.USUAL_WIDTH;
            case CUSUM -> CusumChart.USUAL_INTERVAL;
            case INDIVIDUALS, MEANS, MEAN_RANGE, MEAN_SD -> USUAL_WIDTH;
        };
        return new ChartTerms(
                baseCount == null ? Integer.MAX_VALUE : baseCount,
                number(width, usualWidth),
                rules == null ? RunRule.westernElectric() : rules,
                division.of(groups.all()).doubleValue(),
                centre == null ? OptionalDouble.empty() : OptionalDouble.of(centre.doubleValue()),
                sigma == null ? OptionalDouble.empty() : OptionalDouble.of(sigma.doubleValue()));
    }

    private Judged<ChartReport.Chart> chart(List<double[]> groups, ChartTerms terms) {
        return switch (kind) {
            case INDIVIDUALS ->
                ShewhartChart.individuals(
                                groups.stream().mapToDouble(group -> group[0]).toArray(), terms)
                        .map(ChartReport.Chart::of);
            case MEANS ->
                PhasedChart.of(
                                groups,
                                List.of(),
                                PhasedChart.Kind.MEANS,
                                0,
                                new PhasedChart.Base(0, terms.baseCount(), true),
                                terms)
                        .phases()
                        .get(0)
                        .chart()
                        .map(ChartReport.Chart::of);
            case MEAN_RANGE -> ShewhartChart.meanRange(groups, terms).map(ChartReport.Chart::of);
            case MEAN_SD -> ShewhartChart.meanDeviation(groups, terms).map(ChartReport.Chart::of);
            case EWMA ->
                EwmaChart.of(groups, number(lambda, EwmaChart.USUAL_WEIGHT), terms)
                        .map(ChartReport.Chart::of);
            case CUSUM ->
                CusumChart.of(groups, number(slack, CusumChart.USUAL_SLACK), terms)
                        .map(ChartReport.Chart::of);
        };
    }

    private List<Problem> doubts(ChartReport.Chart chart, int base, ChartTerms terms) {
        List<Problem> doubts = new ArrayList<>();
        boolean needsBase = terms.knownCentre().isEmpty() || terms.knownSigma().isEmpty();
        if (needsBase && base < ChartTerms.FEWEST_FOR_LASTING_LIMITS) {
            doubts.add(Problem.warning(
                    "base-count", "command.base-provisional", base, ChartTerms.FEWEST_FOR_LASTING_LIMITS));
        }
        if (chart.isSigmaOfDivision()) {
            doubts.add(
                    Problem.warning("division", "command.base-within-division", BigDecimal.valueOf(terms.division())));
        }
        return doubts;
    }

    private static double number(@Nullable BigDecimal given, double usual) {
        return given == null ? usual : given.doubleValue();
    }
}
