package porebench.command.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Layout;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
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
    private final Layout<Summary> figures;
    private final Summary summary;
    private final Optional<MeanInterval> interval;
    private final Optional<CriticalRange.RangeCheck> rangeCheck;
    private final Optional<GrubbsTest> grubbs;
    private final Line single;
    private final Line pair;
    private final Line dixon;
    private final Line anderson;
    private final Line shapiro;

    /** One test as it is said: its figures, and why one is missing. */
    private record Line(OptionalDouble statistic, OptionalDouble p, Optional<Judged.Reason> reason) {
        static <T> Line of(Judged<T> judged, ToDoubleFunction<T> statistic, ToDoubleFunction<T> p) {
            if (judged instanceof Judged.Meaningful<T> meaningful) {
                return new Line(
                        OptionalDouble.of(statistic.applyAsDouble(meaningful.test())),
                        OptionalDouble.of(p.applyAsDouble(meaningful.test())),
                        Optional.empty());
            }
            OptionalDouble known =
                    judged instanceof Judged.Withheld<T> withheld ? withheld.statistic() : OptionalDouble.empty();
            return new Line(known, OptionalDouble.empty(), judged.whyWithheld());
        }
    }

    StatsReport(double[] numbers, double division, double repeatability, Texts words, NumberText shown) {
        this.words = words;
        this.shown = shown;
        figures = new Layout<Summary>(words, shown)
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
        single = Line.of(GrubbsTest.judge(division, numbers), GrubbsTest::statistic, GrubbsTest::p);
        pair = Line.of(GrubbsPairTest.judge(division, numbers), GrubbsPairTest::statistic, GrubbsPairTest::p);
        dixon = Line.of(DixonTest.judge(division, numbers), DixonTest::statistic, DixonTest::p);
        anderson = Line.of(
                AndersonDarlingTest.judge(division, numbers), AndersonDarlingTest::statistic, AndersonDarlingTest::p);
        shapiro = Line.of(ShapiroWilkTest.judge(division, numbers), ShapiroWilkTest::statistic, ShapiroWilkTest::p);
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
            test(fields, single);
            fields.whole("index", test.index());
        });
        json.group("grubbsTwo", fields -> test(fields, pair));
        json.group("dixon", fields -> test(fields, dixon));
        json.group("andersonDarling", fields -> test(fields, anderson));
        json.group("shapiroWilk", fields -> test(fields, shapiro));
    }

    private void test(JsonFields json, Line line) {
        json.number("statistic", line.statistic());
        json.number("p", line.p());
        line.reason().ifPresent(reason -> json.text("reason", why(reason)));
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
        List<List<String>> cells = new ArrayList<>();
        cells.add(row(words.get("stats.grubbs"), single));
        cells.add(row(words.get("stats.grubbs-two"), pair));
        cells.add(row(words.get("stats.dixon"), dixon));
        cells.add(row(words.get("stats.anderson-darling"), anderson));
        cells.add(row(words.get("stats.shapiro-wilk"), shapiro));
        page.table(List.of(words.get("stats.test"), words.get("stats.statistic"), words.get("stats.p"), ""), cells);
        grubbs.filter(test -> single.p().isPresent())
                .ifPresent(test -> page.row(words.get("stats.grubbs-index"), Integer.toString(test.index()), ""));
    }

    private List<String> row(String name, Line line) {
        return List.of(
                name,
                shown.sixDigits(line.statistic()),
                shown.probability(line.p()),
                line.reason().map(this::why).orElse(""));
    }

    private String why(Judged.Reason reason) {
        return words.get(
                switch (reason) {
                    case TOO_FEW -> "stats.too-few";
                    case TOO_MANY -> "stats.too-many";
                    case NO_SPREAD -> "stats.no-spread";
                    case WITHIN_ONE_DIVISION -> "stats.within-one-division";
                    case SCALE_TOO_COARSE -> "stats.scale-too-coarse";
                });
    }
}
