package porebench.command.study;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.variance.FTest;
import porebench.statistics.variance.GaugeStudy;
import porebench.statistics.variance.VarianceEstimate;
import porebench.statistics.variance.VarianceInterval;

/** What {@code gauge-study} has to say. */
final class GaugeStudyReport implements Report {
    private final GaugeStudy study;
    private final double poolingLevel;
    private final Texts words;
    private final NumberText shown;
    private final List<AnovaLine> lines = new ArrayList<>();
    private final List<Share> shares = new ArrayList<>();
    private final Share gauge;

    /**
     * A part of the spread with its interval.
     *
     * @param estimate how it came out, below 0 too; empty for all of reading together
     */
    private record Share(
            String name,
            String title,
            double variance,
            VarianceInterval interval,
            Optional<VarianceEstimate> estimate) {
        static Share of(String name, String title, VarianceEstimate estimate) {
            return new Share(name, title, estimate.variance(), estimate.interval(), Optional.of(estimate));
        }
    }

    GaugeStudyReport(GaugeStudy study, double poolingLevel, Texts words, NumberText shown) {
        this.study = study;
        this.poolingLevel = poolingLevel;
        this.words = words;
        this.shown = shown;
        Judged<FTest> none = Judged.withheld(Judged.Reason.TOO_FEW);
        lines.add(new AnovaLine("sample", words.get("source.sample"), study.sampleSquares(), study.sampleTest()));
        lines.add(
                new AnovaLine("operator", words.get("source.operator"), study.operatorSquares(), study.operatorTest()));
        study.interactionSquares()
                .ifPresent(squares -> lines.add(new AnovaLine(
                        "interaction", words.get("source.interaction"), squares, study.interactionTest())));
        lines.add(
                new AnovaLine("repeatability", words.get("source.repeatability"), study.repeatabilitySquares(), none));
        lines.add(new AnovaLine("total", words.get("source.total"), study.totalSquares(), none));
        shares.add(Share.of("repeatability", words.get("source.repeatability"), study.repeatability()));
        shares.add(Share.of("operator", words.get("source.operator"), study.operator()));
        study.interaction()
                .ifPresent(estimate -> shares.add(Share.of("interaction", words.get("source.interaction"), estimate)));
        shares.add(Share.of("sample", words.get("source.sample"), study.sample()));
        gauge = new Share("gauge", words.get("gauge.whole"), study.gauge(), study.gaugeInterval(), Optional.empty());
    }

    @Override
    public void json(JsonFields json) {
        json.whole("operators", study.operators());
        json.whole("samples", study.samples());
        json.whole("repeats", study.repeats());
        json.flag("withInteraction", study.isWithInteraction());
        json.list("anova", lines, AnovaLine.layout(words, shown)::json);
        json.group("components", fields -> {
            shares.forEach(share -> fields.group(share.name(), inner -> layout().json(inner, share)));
            if (!study.isWithInteraction()) {
                fields.absent("interaction");
            }
        });
        json.group("gauge", fields -> {
            layout().json(fields, gauge);
            fields.group("shareInterval", study.gaugeShareInterval(), GaugeStudyReport::interval);
            fields.number("studyVariationPercent", percent(study.gaugeShareOfVariation()));
            fields.group(
                    "studyVariationPercentInterval",
                    study.gaugeShareInterval().map(VarianceInterval::ofRoots),
                    (inner, roots) -> {
                        inner.number("low", 100 * roots.low());
                        inner.number("high", 100 * roots.high());
                    });
        });
        json.number("totalVariance", study.total());
        json.whole("distinctCategories", study.distinctCategories());
        json.number("confidence", study.gaugeInterval().confidence());
        json.group("pooling", fields -> {
            fields.number(
                    "p", study.interactionTest().meaningful().map(FTest::p).orElse(Double.NaN));
            fields.number("level", poolingLevel);
            fields.flag("suggestsInteraction", study.suggestsInteraction(poolingLevel));
        });
        json.text("verdict", verdict());
    }

    private static void interval(JsonFields json, VarianceInterval interval) {
        json.number("low", interval.low());
        json.number("high", interval.high());
    }

    private static OptionalDouble percent(OptionalDouble share) {
        return share.isPresent() ? OptionalDouble.of(100 * share.getAsDouble()) : share;
    }

    private static String share(OptionalDouble share) {
        return share.isPresent() ? Digits.share(share.getAsDouble()) : NumberText.NONE;
    }

    private String verdict() {
        OptionalDouble share = percent(study.gaugeShareOfVariation());
        if (share.isEmpty()) {
            return words.get("gauge.verdict-still");
        }
        String percent = share(study.gaugeShareOfVariation());
        if (study.distinctCategories().isEmpty()) {
            return words.get("gauge.verdict-no-gauge-spread");
        }
        String kinds = study.distinctCategories().get().toString();
        if (study.sample().variance() == 0) {
            return words.get("gauge.verdict-samples-alike");
        }
        if (share.getAsDouble() < GaugeStudy.SMALL_SHARE_PERCENT) {
            return words.get("gauge.verdict-small", percent, kinds);
        }
        return words.get(
                share.getAsDouble() <= GaugeStudy.LARGEST_SHARE_PERCENT
                        ? "gauge.verdict-middling"
                        : "gauge.verdict-large",
                percent,
                kinds);
    }

    @Override
    public void text(TextPage page) {
        page.line(verdict());
        page.gap();
        AnovaLine.layout(words, shown).table(page, lines);
        page.gap();
        layout().table(page, Stream.concat(shares.stream(), Stream.of(gauge)).toList());
        shares.forEach(share -> share.estimate()
                .filter(VarianceEstimate::isAtZero)
                .ifPresent(estimate ->
                        page.line(words.get("variance.below-zero", share.title(), shown.sixDigits(estimate.raw())))));
        page.gap();
        page.row(words.get("gauge.variation"), share(study.gaugeShareOfVariation()), "%");
        study.gaugeShareInterval().map(VarianceInterval::ofRoots).ifPresent(roots -> {
            page.row(words.get("gauge.variation-low"), shown.fixed(100 * roots.low(), 1), "%");
            page.row(words.get("gauge.variation-high"), shown.fixed(100 * roots.high(), 1), "%");
        });
        page.row(
                words.get("gauge.categories"),
                study.distinctCategories().map(String::valueOf).orElse(NumberText.NONE),
                "");
        page.line(words.get(hint(), shown.exact(BigDecimal.valueOf(poolingLevel))));
    }

    private String hint() {
        if (study.suggestsInteraction(poolingLevel)) {
            return study.isWithInteraction() ? "gauge.hint-keep" : "gauge.hint-should-keep";
        }
        return study.isWithInteraction() ? "gauge.hint-may-pool" : "gauge.hint-pooled";
    }

    private ReportLayout<Share> layout() {
        return new ReportLayout<Share>(words, shown)
                .cell("anova.source", Share::title)
                .number("variance", "variance.variance", Share::variance)
                .field((json, share) ->
                        share.estimate().ifPresent(estimate -> json.number("rawVariance", estimate.raw())))
                .number("low", "variance.low", share -> share.interval().low())
                .number("high", "variance.high", share -> share.interval().high())
                .field((json, share) -> json.number("share", study.share(share.variance())))
                .cell("variance.share", share -> share(study.share(share.variance())));
    }
}
