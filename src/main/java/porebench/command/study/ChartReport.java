package porebench.command.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.method.Texts;
import porebench.statistics.control.ChartConstants;
import porebench.statistics.control.ChartPoint;
import porebench.statistics.control.ChartTerms;
import porebench.statistics.control.CusumChart;
import porebench.statistics.control.EwmaChart;
import porebench.statistics.control.FalseAlarms;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;
import porebench.statistics.control.ShewhartChart;
import porebench.statistics.summary.Summary;

/** What {@code chart} has to say. */
final class ChartReport implements Report {
    private final Chart chart;
    private final Subgroups groups;
    private final ChartKind kind;
    private final ChartTerms terms;
    private final int base;
    private final Optional<FalseAlarms> alarms;
    private final Texts words;
    private final NumberText shown;
    private final ReportLayout<ChartPoint> points;

    /**
     * A chart of any kind.
     *
     * @param sums the sums of a CUSUM chart; none otherwise
     * @param spread the chart of the spread; none of averages and sums
     */
    record Chart(
            double centre,
            double sigma,
            boolean isSigmaOfDivision,
            List<ChartPoint> points,
            Optional<List<ChartPoint>> spread,
            OptionalDouble meanSpread,
            OptionalDouble lambda,
            Optional<CusumChart> sums) {

        static Chart of(ShewhartChart chart) {
            return new Chart(
                    chart.centre(),
                    chart.sigma(),
                    chart.isSigmaOfDivision(),
                    chart.level(),
                    Optional.of(chart.spread()),
                    OptionalDouble.of(chart.meanSpread()),
                    OptionalDouble.empty(),
                    Optional.empty());
        }

        static Chart of(PhasedChart.Limited chart) {
            return new Chart(
                    chart.centre(),
                    chart.sigma(),
                    chart.isSigmaOfDivision(),
                    chart.level(),
                    Optional.of(chart.spread()),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.empty());
        }

        static Chart of(EwmaChart chart) {
            return new Chart(
                    chart.centre(),
                    chart.sigma(),
                    chart.isSigmaOfDivision(),
                    chart.points(),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.of(chart.lambda()),
                    Optional.empty());
        }

        static Chart of(CusumChart chart) {
            return new Chart(
                    chart.centre(),
                    chart.sigma(),
                    chart.isSigmaOfDivision(),
                    chart.larger(),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.of(chart));
        }

        /** Returns for each subgroup whether it signals, by itself or by its spread. */
        boolean[] signalling() {
            boolean[] signalling = new boolean[points.size()];
            points.forEach(
                    point -> signalling[point.index()] |= !point.signals().isEmpty());
            spread.ifPresent(beside -> beside.forEach(
                    point -> signalling[point.index()] |= !point.signals().isEmpty()));
            return signalling;
        }
    }

    /**
     * What was asked for.
     *
     * @param base how many subgroups the limits come from
     */
    record Asked(ChartKind kind, ChartTerms terms, int base) {}

    ChartReport(
            Asked asked, Chart chart, Subgroups groups, Optional<FalseAlarms> alarms, Texts words, NumberText shown) {
        this.chart = chart;
        this.groups = groups;
        this.kind = asked.kind();
        this.terms = asked.terms();
        this.base = asked.base();
        this.alarms = alarms;
        this.words = words;
        this.shown = shown;
        this.points = new ReportLayout<ChartPoint>(words, shown)
                .text("subgroup", "chart.subgroup", point -> groups.names().get(point.index()))
                .number("value", "chart.value", ChartPoint::value)
                .number("low", "chart.low", ChartPoint::low)
                .number("high", "chart.high", ChartPoint::high)
                .field((json, point) -> json.texts(
                        "signals", point.signals().stream().map(RunRule::symbol).toList()))
                .cell(
                        "chart.signals",
                        point -> point.signals().stream()
                                .map(rule -> words.get("rule." + rule.symbol()))
                                .collect(Collectors.joining("; ")));
    }

    @Override
    public void json(JsonFields json) {
        json.text("kind", kind.symbol());
        json.number("centre", chart.centre());
        json.number("sigma", chart.sigma());
        json.number("width", terms.width());
        json.whole("baseCount", base);
        json.number("division", terms.division());
        json.number("lambda", chart.lambda());
        json.number("slack", chart.sums().map(CusumChart::slack).orElse(Double.NaN));
        json.list("points", chart.points(), (fields, point) -> {
            points.json(fields, point);
            if (!kind.hasRunRules()) {
                fields.number(
                        "mean", Summary.of(groups.values().get(point.index())).mean());
            }
            chart.sums().map(sums -> sums.points().get(point.index())).ifPresent(sums -> {
                fields.number("highSum", sums.high());
                fields.number("lowSum", sums.low());
            });
        });
        json.group("spread", chart.spread(), (fields, spread) -> {
            fields.number("centre", chart.meanSpread());
            fields.list("points", spread, points::json);
        });
        json.number("interval", chart.sums().map(CusumChart::interval).orElse(Double.NaN));
        json.group("falseAlarms", alarms, (fields, found) -> {
            fields.number("pointsPerAlarm", found.pointsPerAlarm());
            fields.number("rarerThan", found.pointsPerAlarm().isPresent() ? Double.NaN : found.rarerThan());
            fields.number("shareOfChartsWithOne", found.shareWithAlarm());
            fields.whole("charts", found.charts());
            fields.whole("seed", (int) found.seed());
        });
        json.list("constants", constants(), (fields, constants) -> {
            fields.whole("n", constants.n());
            fields.number("d2", constants.d2());
            fields.number("d3", constants.d3());
            fields.number("c4", constants.c4());
            fields.number("A2", constants.a2());
            fields.number("A3", constants.a3());
            fields.number("B3", constants.b3());
            fields.number("B4", constants.b4());
            fields.number("D3", constants.lowD3());
            fields.number("D4", constants.highD4());
            fields.number("E2", constants.e2());
        });
    }

    /** Returns the constants of every size of subgroup; single values are compared by pairs. */
    private List<ChartConstants> constants() {
        return groups.values().stream()
                .map(group -> Math.max(2, group.length))
                .distinct()
                .sorted()
                .map(ChartConstants::of)
                .toList();
    }

    @Override
    public void text(TextPage page) {
        page.row(words.get("chart.centre"), shown.sixDigits(chart.centre()), "");
        page.row(words.get("chart.sigma"), shown.sixDigits(chart.sigma()), "");
        page.row(words.get("chart.base"), Integer.toString(base), "");
        alarms.ifPresent(found -> page.line(alarmed(found)));
        page.gap();
        points.table(page, chart.points());
        chart.spread().ifPresent(spread -> {
            page.gap();
            page.line(words.get("chart.spread"));
            points.table(page, spread);
        });
    }

    private String alarmed(FalseAlarms found) {
        boolean isRare = found.pointsPerAlarm().isEmpty();
        return words.get(
                isRare ? "chart.alarms-rare" : "chart.alarms",
                Long.toString(Math.round(found.pointsPerAlarm().orElse(found.rarerThan()))),
                Long.toString(Math.round(100 * found.shareWithAlarm())),
                Integer.toString(found.charts()),
                Long.toString(found.seed()));
    }
}
