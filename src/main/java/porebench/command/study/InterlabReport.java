package porebench.command.study;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.evidence.study.LaboratoryLevels;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.comparison.LaboratoryBias;
import porebench.statistics.comparison.LaboratoryComparison;
import porebench.statistics.comparison.Mandel;
import porebench.statistics.outlier.CochranTest;
import porebench.statistics.outlier.Suspicion;
import porebench.statistics.variance.VarianceInterval;

/** What {@code interlab} has to say; nothing is left out of the figures, and what stands out is named. */
final class InterlabReport implements Report {
    private static final double STRAGGLING = 0.05;

    private final LaboratoryLevels levels;
    private final BigDecimal division;
    private final Texts words;
    private final NumberText shown;
    private final ReportLayout<LaboratoryBias> bias;

    InterlabReport(LaboratoryLevels levels, BigDecimal division, Texts words, NumberText shown) {
        this.levels = levels;
        this.division = division;
        this.words = words;
        this.shown = shown;
        this.bias = new ReportLayout<LaboratoryBias>(words, shown)
                .text("laboratory", "interlab.laboratory", LaboratoryBias::laboratory)
                .field((json, one) -> json.whole("levels", one.levels()))
                .number("bias", "interlab.bias", LaboratoryBias::bias)
                .field((json, one) -> json.number("standardUncertainty", one.standardUncertainty()))
                .field((json, one) -> json.number("degreesOfFreedom", one.degreesOfFreedom()))
                .number("expandedUncertainty", "interlab.u", LaboratoryBias::expanded)
                .cell("", one -> one.isSeen() ? words.get("interlab.bias-seen") : "");
    }

    @Override
    public void json(JsonFields json) {
        json.number("division", division);
        json.list("levels", levels.levels(), (fields, level) -> {
            LaboratoryComparison comparison = level.comparison();
            fields.text("level", level.name());
            fields.whole("count", comparison.count());
            fields.number("mean", comparison.mean());
            figure(fields, "sr", comparison.repeatability());
            figure(fields, "sR", comparison.reproducibility());
            interval(fields, "srInterval", comparison.repeatabilityInterval(GaugeStudyCommand.CONFIDENCE));
            interval(fields, "sRInterval", comparison.reproducibilityInterval(GaugeStudyCommand.CONFIDENCE));
            fields.number("r", number(comparison.repeatabilityLimit()));
            fields.number("R", number(comparison.reproducibilityLimit()));
            figure(fields, "betweenVariance", comparison.betweenVariance());
            List<Optional<Mandel>> h = h(comparison);
            List<Optional<Mandel>> k = k(comparison);
            fields.numbers("h", h.stream().map(InterlabReport::statistic).toList());
            comparison.h().whyWithheld().ifPresent(reason -> fields.text("hReason", whyOfH(reason)));
            fields.numbers("k", k.stream().map(InterlabReport::statistic).toList());
            reason(fields, "kReason", comparison.k());
            fields.list("laboratories", places(comparison), laboratories(comparison)::json);
            tests(fields, comparison);
        });
        Judged<List<LaboratoryBias>> biases = levels.biases(division.doubleValue());
        json.list("biases", biases.meaningful().orElse(List.of()), bias::json);
        reason(json, "biasesReason", biases);
    }

    private static void interval(JsonFields json, String name, Optional<VarianceInterval> interval) {
        json.group(name, interval, (fields, known) -> {
            fields.number("low", known.low());
            fields.number("high", known.high());
        });
    }

    /** Returns how the laboratories of a level are said, by their places. */
    private ReportLayout<Integer> laboratories(LaboratoryComparison comparison) {
        List<Optional<Mandel>> h = h(comparison);
        List<Optional<Mandel>> k = k(comparison);
        List<LaboratoryComparison.Cell> cells = comparison.cells();
        return new ReportLayout<Integer>(words, shown)
                .text("laboratory", "interlab.laboratory", i -> cells.get(i).laboratory())
                .whole("count", "interlab.n", i -> cells.get(i).results().count())
                .number("mean", "interlab.mean", i -> cells.get(i).results().mean())
                .number(
                        "standardDeviation",
                        "interlab.s",
                        i -> cells.get(i).results().standardDeviation().orElse(Double.NaN))
                .field((json, i) -> mandel(json, "h", h.get(i)))
                .cell("interlab.h", i -> shown.fixed(statistic(h.get(i)), 2))
                .cell("", i -> say(h.get(i)))
                .field((json, i) -> mandel(json, "k", k.get(i)))
                .cell("interlab.k", i -> shown.fixed(statistic(k.get(i)), 2))
                .cell("", i -> say(k.get(i)));
    }

    private static List<Integer> places(LaboratoryComparison comparison) {
        return IntStream.range(0, comparison.cells().size()).boxed().toList();
    }

    private void mandel(JsonFields json, String name, Optional<Mandel> mandel) {
        json.group(name, mandel, (fields, one) -> {
            fields.number("statistic", one.statistic());
            fields.number("critical5", one.critical5());
            fields.number("critical1", one.critical1());
            fields.text("verdict", one.suspicion().symbol());
        });
    }

    private void tests(JsonFields json, LaboratoryComparison comparison) {
        json.number(
                "cochran",
                comparison.cochran() instanceof Judged.Withheld<CochranTest> withheld
                        ? withheld.statistic()
                        : number(comparison.cochran().map(CochranTest::statistic)));
        test(json, "cochranTest", comparison.cochran(), (fields, test) -> {
            found(fields, test.statistic(), test.p());
            fields.number("critical5", test.critical5());
            fields.number("critical1", test.critical1());
            fields.whole("size", test.size());
            fields.text("laboratory", name(comparison, test.index()));
            fields.text("verdict", test.suspicion().symbol());
        });
        test(json, "grubbs", comparison.grubbs(), (fields, test) -> {
            found(fields, test.statistic(), test.p());
            fields.text("laboratory", name(comparison, test.index()));
            fields.text("verdict", Suspicion.ofProbability(test.p()).symbol());
        });
        test(json, "grubbsTwo", comparison.grubbsTwo(), (fields, test) -> {
            found(fields, test.statistic(), test.p());
            fields.flag("high", test.isHigh());
            fields.text("verdict", Suspicion.ofProbability(test.p()).symbol());
        });
    }

    private static void found(JsonFields json, double statistic, double p) {
        json.number("statistic", statistic);
        json.number("p", p);
    }

    private <T> void test(JsonFields json, String name, Judged<T> judged, BiConsumer<JsonFields, T> said) {
        json.group(name, fields -> {
            judged.meaningful().ifPresent(test -> said.accept(fields, test));
            reason(fields, "reason", judged);
        });
    }

    private void figure(JsonFields json, String name, Judged<Double> figure) {
        json.number(name, number(figure));
        reason(json, name + "Reason", figure);
    }

    private <T> void reason(JsonFields json, String name, Judged<T> judged) {
        judged.whyWithheld().ifPresent(reason -> json.text(name, why(reason)));
    }

    private static OptionalDouble number(Judged<Double> figure) {
        return figure.meaningful().map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble statistic(Optional<Mandel> mandel) {
        return mandel.map(one -> OptionalDouble.of(one.statistic())).orElse(OptionalDouble.empty());
    }

    private static String name(LaboratoryComparison comparison, int index) {
        return comparison.cells().get(index).laboratory();
    }

    /** Returns h of every laboratory, none where it means nothing. */
    private static List<Optional<Mandel>> h(LaboratoryComparison comparison) {
        return comparison
                .h()
                .meaningful()
                .map(all -> all.stream().map(Optional::of).toList())
                .orElseGet(() -> nothing(comparison));
    }

    /** Returns k of every laboratory, none where it means nothing. */
    private static List<Optional<Mandel>> k(LaboratoryComparison comparison) {
        return comparison.k().meaningful().orElseGet(() -> nothing(comparison));
    }

    private static List<Optional<Mandel>> nothing(LaboratoryComparison comparison) {
        return comparison.cells().stream().map(cell -> Optional.<Mandel>empty()).toList();
    }

    @Override
    public void text(TextPage page) {
        for (LaboratoryLevels.Level level : levels.levels()) {
            LaboratoryComparison comparison = level.comparison();
            page.gap();
            page.line(words.get("interlab.title", level.name()));
            page.gap();
            figures(page, comparison);
            page.gap();
            table(page, comparison);
            page.gap();
            verdicts(page, comparison);
        }
        biases(page);
        page.gap();
        long mandels = levels.levels().stream()
                .flatMap(level -> Stream.concat(h(level.comparison()).stream(), k(level.comparison()).stream()))
                .filter(Optional::isPresent)
                .count();
        if (mandels > 0) {
            page.line(words.get(
                    "interlab.by-chance",
                    Long.toString(mandels),
                    shown.fixed(mandels * STRAGGLING, mandels * STRAGGLING < 1 ? 1 : 0)));
        }
        page.line(words.get("interlab.kept"));
    }

    /** Says how far each laboratory lies from the others, over all levels. */
    private void biases(TextPage page) {
        Judged<List<LaboratoryBias>> biases = levels.biases(division.doubleValue());
        page.gap();
        page.line(words.get("interlab.biases"));
        page.gap();
        biases.whyWithheld().ifPresent(reason -> page.line(words.get("interlab.no-bias", why(reason))));
        biases.meaningful().ifPresent(all -> bias.table(page, all));
    }

    private void figures(TextPage page, LaboratoryComparison comparison) {
        page.row(words.get("interlab.results"), Integer.toString(comparison.count()), "");
        page.row(words.get("interlab.mean"), shown.sixDigits(comparison.mean()), "");
        row(page, "interlab.sr", comparison.repeatability());
        row(page, "interlab.s-r", comparison.reproducibility());
        row(page, "interlab.r", comparison.repeatabilityLimit());
        row(page, "interlab.r-r", comparison.reproducibilityLimit());
    }

    private void row(TextPage page, String key, Judged<Double> figure) {
        page.row(
                words.get(key),
                shown.sixDigits(number(figure)),
                figure.whyWithheld().map(this::why).orElse(""));
    }

    private void table(TextPage page, LaboratoryComparison comparison) {
        laboratories(comparison).table(page, places(comparison));
        page.gap();
        comparison.h().whyWithheld().ifPresent(reason -> page.line(words.get("interlab.no-h", whyOfH(reason))));
        comparison.k().whyWithheld().ifPresent(reason -> page.line(words.get("interlab.no-k", why(reason))));
    }

    private String say(Optional<Mandel> mandel) {
        return mandel.map(one -> say(one.suspicion())).orElse("");
    }

    private void verdicts(TextPage page, LaboratoryComparison comparison) {
        page.line(said(
                comparison.cochran(),
                "interlab.no-cochran",
                test -> words.get(
                        test.isSizeShared() ? "interlab.cochran" : "interlab.cochran-common",
                        shown.fixed(test.statistic(), 3),
                        shown.fixed(test.critical5(), 3),
                        shown.fixed(test.critical1(), 3),
                        Integer.toString(test.size()),
                        name(comparison, test.index()),
                        verdict(test.suspicion()))));
        page.line(said(
                comparison.grubbs(),
                "interlab.no-grubbs",
                test -> words.get(
                        "interlab.grubbs",
                        name(comparison, test.index()),
                        shown.fixed(test.statistic(), 3),
                        shown.equalsProbability(test.p()),
                        verdict(Suspicion.ofProbability(test.p())))));
        page.line(said(
                comparison.grubbsTwo(),
                "interlab.no-grubbs-two",
                test -> words.get(
                        test.isHigh() ? "interlab.grubbs-two-high" : "interlab.grubbs-two-low",
                        shown.fixed(test.statistic(), 3),
                        shown.equalsProbability(test.p()),
                        verdict(Suspicion.ofProbability(test.p())))));
    }

    /** Returns what a test found, or why there is none. */
    private <T> String said(Judged<T> judged, String none, Function<T, String> found) {
        return judged.meaningful()
                .map(found)
                .orElseGet(() ->
                        words.get(none, judged.whyWithheld().map(this::why).orElse("")));
    }

    private String verdict(Suspicion suspicion) {
        return suspicion == Suspicion.NONE ? words.get("interlab.in-line") : say(suspicion);
    }

    private String say(Suspicion suspicion) {
        return switch (suspicion) {
            case NONE -> "";
            case STRAGGLER -> words.get("interlab.straggler");
            case OUTLIER -> words.get("interlab.outlier");
        };
    }

    private String whyOfH(Judged.Reason reason) {
        return reason == Judged.Reason.TOO_FEW ? words.get("interlab.too-few-for-h") : why(reason);
    }

    private String why(Judged.Reason reason) {
        return words.get("interlab." + reason.symbol());
    }
}
