package porebench.command.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.outlier.DixonTest;
import porebench.statistics.outlier.GrubbsPairTest;
import porebench.statistics.outlier.GrubbsTest;
import porebench.statistics.summary.AndersonDarlingTest;
import porebench.statistics.summary.CriticalRange;
import porebench.statistics.summary.MeanInterval;
import porebench.statistics.summary.ShapiroWilkTest;
import porebench.statistics.summary.Summary;

/** What {@code stats} has to say; a probability that would mean nothing is not said. */
final class StatsReport implements Report {
    private static final double CONFIDENCE = 0.95;

    private final Texts words;
    private final NumberText shown;
    private final ReportLayout<Summary> figures;
    private final Summary summary;
    private final Optional<MeanInterval> interval;
    private final Optional<CriticalRange.RangeCheck> rangeCheck;
    private final Optional<GrubbsTest> grubbs;
    private final List<Line> tests;
    private final ReportLayout<Line> line;

    /** One test as it is said: its figures, not a number where one is missing, and why. */
    private record Line(String name, String title, double statistic, double p, Optional<Judged.Reason> reason) {
        static <T> Line of(
                String name, String title, Judged<T> judged, ToDoubleFunction<T> statistic, ToDoubleFunction<T> p) {
            if (judged instanceof Judged.Meaningful<T> meaningful) {
                T test = meaningful.test();
                return new Line(name, title, statistic.applyAsDouble(test), p.applyAsDouble(test), Optional.empty());
            }
            OptionalDouble known =
                    judged instanceof Judged.Withheld<T> withheld ? withheld.statistic() : OptionalDouble.empty();
            return new Line(name, title, known.orElse(Double.NaN), Double.NaN, judged.whyWithheld());
        }
    }

    StatsReport(double[] numbers, double division, double repeatability, Texts words, NumberText shown) {
        this.words = words;
        this.shown = shown;
        figures = new ReportLayout<Summary>(words, shown)
                .whole("count", "stats.count", Summary::count)
                .number("mean", "stats.mean", Summary::mean)
                .number(
                        "standardDeviation",
                        "stats.standard-deviation",
                        all -> all.standardDeviation().orElse(Double.NaN))
                .number(
                        "lag1Autocorrelation",
                        "stats.lag1",
                        all -> all.lag1Autocorrelation().orElse(Double.NaN));
        summary = Summary.of(numbers);
        interval = MeanInterval.of(summary, CONFIDENCE);
        rangeCheck = numbers.length < 2
                ? Optional.empty()
                : Optional.of(CriticalRange.check(summary.range(), numbers.length, repeatability));
        grubbs = GrubbsTest.of(numbers);
        tests = List.of(
                Line.of(
                        "grubbs",
                        "stats.grubbs",
                        GrubbsTest.judge(division, numbers),
                        GrubbsTest::statistic,
                        GrubbsTest::p),
                Line.of(
                        "grubbsTwo",
                        "stats.grubbs-two",
                        GrubbsPairTest.judge(division, numbers),
                        GrubbsPairTest::statistic,
                        GrubbsPairTest::p),
                Line.of("dixon", "stats.dixon", DixonTest.judge(division, numbers), DixonTest::statistic, DixonTest::p),
                Line.of(
                        "andersonDarling",
                        "stats.anderson-darling",
                        AndersonDarlingTest.judge(division, numbers),
                        AndersonDarlingTest::statistic,
                        AndersonDarlingTest::p),
                Line.of(
                        "shapiroWilk",
                        "stats.shapiro-wilk",
                        ShapiroWilkTest.judge(division, numbers),
                        ShapiroWilkTest::statistic,
                        ShapiroWilkTest::p));
        line = new ReportLayout<Line>(words, shown)
                .cell("stats.test", test -> words.get(test.title()))
                .number("statistic", "stats.statistic", Line::statistic)
                .number("p", "stats.p", Line::p, shown::probability)
                .field((json, test) -> test.reason().ifPresent(reason -> json.text("reason", why(reason))))
                .cell("", test -> test.reason().map(this::why).orElse(""));
    }

    @Override
    public void json(JsonFields json) {
        figures.json(json, summary);
        json.group("confidence95", interval, (fields, ends) -> {
            fields.number("low", ends.low());
            fields.number("high", ends.high());
        });
        json.group("rangeCheck", rangeCheck, (fields, check) -> {
            fields.number("limit", check.limit());
            fields.flag("passes", check.passes());
        });
        json.group("grubbs", grubbs, (fields, test) -> {
            line.json(fields, tests.get(0));
            fields.whole("index", test.index());
        });
        tests.subList(1, tests.size()).forEach(test -> json.group(test.name(), fields -> line.json(fields, test)));
    }

    @Override
    public void text(TextPage page) {
        figures.rows(page, summary);
        interval.ifPresent(ends -> {
            page.row(words.get("stats.confidence-low"), shown.sixDigits(ends.low()), "");
            page.row(words.get("stats.confidence-high"), shown.sixDigits(ends.high()), "");
        });
        rangeCheck.ifPresent(check -> {
            page.row(words.get("stats.range"), shown.sixDigits(check.range()), "");
            page.row(words.get("stats.range-limit"), shown.sixDigits(check.limit()), "");
        });
        page.gap();
        line.table(page, tests);
        grubbs.filter(test -> tests.get(0).reason().isEmpty())
                .ifPresent(test -> page.row(words.get("stats.grubbs-index"), Integer.toString(test.index()), ""));
    }

    private String why(Judged.Reason reason) {
        return words.get("stats." + reason.symbol());
    }
}
