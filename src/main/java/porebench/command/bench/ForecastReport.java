package porebench.command.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.evidence.forecast.LaboratoryForecast;
import porebench.method.Texts;
import porebench.method.forecast.Forecast;
import porebench.method.forecast.PoreAir;
import porebench.method.forecast.SourceAir;
import porebench.method.sample.Constituent;
import porebench.record.MixDesign;

/** What {@code forecast} has to say. */
final class ForecastReport implements Report {
    private static final int DECIMALS = 2;

    private final MixDesign mix;
    private final Forecast forecast;
    private final LaboratoryForecast laboratory;
    private final Texts words;
    private final NumberText shown;
    private final Set<String> ofMix;

    private record Pair(String one, String other, double correlation) {}

    ForecastReport(MixDesign mix, Forecast forecast, LaboratoryForecast laboratory, Texts words, NumberText shown) {
        this.mix = mix;
        this.forecast = forecast;
        this.laboratory = laboratory;
        this.words = words;
        this.shown = shown;
        this.ofMix = mix.aggregates().stream().map(Constituent::sourceOrName).collect(Collectors.toUnmodifiableSet());
    }

    @Override
    public void json(JsonFields json) {
        json.text("mixId", mix.id().text());
        json.number("forecastPercent", forecast.percent());
        json.group("interval95", fields -> {
            fields.number("low", forecast.lowPercent());
            fields.number("high", forecast.highPercent());
        });
        json.list("sources", laboratory.sources(), this::source);
        json.flag("extrapolates", forecast.extrapolates());
        json.whole("count", forecast.trials());
        json.number("degreesOfFreedom", forecast.degreesOfFreedom());
        json.whole("mixes", laboratory.mixes());
        json.number("leaveOneOutErrorPercent", laboratory.leftOutErrorPercent());
        json.group("variances", fields -> {
            fields.number("mix", laboratory.variances().outer());
            fields.number("determination", laboratory.variances().group());
            fields.number("trial", laboratory.variances().value());
        });
        json.group("mostInfluential", forecast.pull(), (fields, pull) -> {
            fields.text("mixId", pull.mix());
            fields.number("forecastWithoutPercent", pull.withoutPercent());
        });
        json.list("correlations", pairs(), (fields, pair) -> {
            fields.text("sourceId", pair.one());
            fields.text("otherSourceId", pair.other());
            fields.number("correlation", pair.correlation());
        });
        json.list("compared", laboratory.compared(), ForecastReport::compared);
    }

    private void source(JsonFields json, SourceAir source) {
        json.text("sourceId", source.source());
        json.number("poreAirMillilitresPerKilogram", source.millilitresPerKilogram());
        json.number("standardError", source.standardError());
        json.flag("separable", source.isSeparable());
        json.flag("inMix", ofMix.contains(source.source()));
        json.flag("atZero", source.isAtZero());
        json.whole("mixes", source.mixes());
        json.texts("alwaysTogetherWith", source.together());
    }

    private static void compared(JsonFields json, PoreAir.Compared one) {
        json.text("mixId", one.mix());
        json.text("determinationId", one.determination());
        json.number("measuredPercent", one.measuredPercent());
        json.number("forecastWithoutItsMixPercent", one.forecastPercent());
    }

    /** Returns the correlations between the sources of the mix. */
    private List<Pair> pairs() {
        List<String> sources = ofMix.stream().sorted().toList();
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            for (int j = i + 1; j < sources.size(); j++) {
                OptionalDouble correlation = laboratory.correlation(sources.get(i), sources.get(j));
                if (correlation.isPresent()) {
                    pairs.add(new Pair(sources.get(i), sources.get(j), correlation.getAsDouble()));
                }
            }
        }
        return pairs;
    }

    @Override
    public void text(TextPage page) {
        page.line(words.get("forecast.title", mix.id().text(), mix.title()));
        page.line(words.get("forecast.never"));
        page.gap();
        page.row(words.get("forecast.forecast"), fixed(forecast.percent()), "%");
        page.row(
                words.get("forecast.interval", forecast.trials()),
                fixed(forecast.lowPercent()) + " … " + fixed(forecast.highPercent()),
                "%");
        page.row(words.get("forecast.mixes"), Integer.toString(laboratory.mixes()), "");
        page.row(words.get("forecast.left-out"), shown.fixed(laboratory.leftOutErrorPercent(), DECIMALS), "%");
        page.gap();
        new ReportLayout<SourceAir>(words, shown)
                .cell("forecast.source", SourceAir::source)
                .number(
                        "forecast.pore-air",
                        source -> source.millilitresPerKilogram().orElse(Double.NaN),
                        this::fixed)
                .number(
                        "forecast.standard-error",
                        source -> source.standardError().orElse(Double.NaN),
                        this::fixed)
                .cell(
                        "forecast.part",
                        source -> forecast.parts().containsKey(source.source())
                                ? fixed(forecast.parts().get(source.source()))
                                : NumberText.NONE)
                .cell(
                        "forecast.separable",
                        source -> words.get(source.isSeparable() ? "forecast.apart" : "forecast.not-apart"))
                .table(
                        page,
                        laboratory.sources().stream()
                                .filter(source -> ofMix.contains(source.source()))
                                .toList());
    }

    private String fixed(double number) {
        return shown.fixed(number, DECIMALS);
    }
}
