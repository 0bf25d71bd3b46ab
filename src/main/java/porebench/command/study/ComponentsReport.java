package porebench.command.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.variance.VarianceInterval;
import porebench.statistics.variance.VarianceLayers;

/** What {@code components} has to say. */
final class ComponentsReport implements Report {
    private final Optional<VarianceLayers> found;
    private final List<Line> lines;
    private final Texts words;
    private final NumberText shown;

    /** A layer under the name people gave it; the last one is that of the values. */
    private record Line(String name, String title, VarianceLayers.Layer layer) {}

    ComponentsReport(List<String> names, Judged<VarianceLayers> layers, Texts words, NumberText shown) {
        this.found = layers.meaningful();
        this.words = words;
        this.shown = shown;
        this.lines = new ArrayList<>();
        found.ifPresent(done -> {
            IntStream.range(0, names.size())
                    .mapToObj(i ->
                            new Line(names.get(i), names.get(i), done.layers().get(i)))
                    .forEach(lines::add);
            lines.add(new Line("residual", words.get("components.values"), done.values()));
        });
    }

    @Override
    public void json(JsonFields json) {
        List<Line> levels = lines.isEmpty() ? lines : lines.subList(0, lines.size() - 1);
        json.list("components", levels, this::line);
        json.group("residual", found.map(done -> lines.get(lines.size() - 1)), this::line);
        json.list("anova", lines, (fields, line) -> anova(line).json(fields));
        json.whole("count", found.map(VarianceLayers::count));
        json.number(
                "mean", found.map(VarianceLayers::mean).map(OptionalDouble::of).orElse(OptionalDouble.empty()));
        json.number(
                "standardError",
                found.map(done -> OptionalDouble.of(Math.sqrt(done.meanVariance())))
                        .orElse(OptionalDouble.empty()));
        json.text("method", "REML");
        found.ifPresent(done -> json.flag("balanced", done.isBalanced()));
        json.text("verdict", verdict());
    }

    private void line(JsonFields json, Line line) {
        VarianceLayers.Layer layer = line.layer();
        json.text("level", line.name());
        json.whole("groups", layer.groups());
        json.number("variance", layer.variance());
        json.number("low", end(layer, VarianceInterval::low));
        json.number("high", end(layer, VarianceInterval::high));
        json.number("share", share(layer));
        json.number("anovaVariance", layer.byAnova());
        why(line).ifPresent(reason -> json.text("reason", reason));
    }

    private static OptionalDouble end(VarianceLayers.Layer layer, ToDoubleFunction<VarianceInterval> end) {
        return layer.interval()
                .map(interval -> OptionalDouble.of(end.applyAsDouble(interval)))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble share(VarianceLayers.Layer layer) {
        return layer.variance().isPresent() && found.isPresent()
                ? OptionalDouble.of(found.get().share(layer.variance().getAsDouble()))
                : OptionalDouble.empty();
    }

    private static AnovaLine anova(Line line) {
        return new AnovaLine(
                line.name(), line.title(), line.layer().squares(), line.layer().test());
    }

    private Optional<String> why(Line line) {
        return switch (line.layer().standing()) {
            case ESTIMATED -> Optional.empty();
            case AT_ZERO -> Optional.of(words.get("components.at-zero", line.title()));
            case NOT_TOLD_APART ->
                Optional.of(words.get(
                        line.layer() == lines.get(lines.size() - 1).layer()
                                ? "components.single-values"
                                : "components.not-told-apart",
                        line.title()));
            case STOOD_STILL -> Optional.of(words.get("components.stood-still", line.title()));
        };
    }

    private String verdict() {
        if (found.isEmpty()) {
            return words.get("components.verdict-still");
        }
        Optional<Line> largest = found.get()
                .largest()
                .flatMap(layer ->
                        lines.stream().filter(line -> line.layer() == layer).findFirst());
        if (largest.isEmpty()) {
            return words.get("components.verdict-none");
        }
        String percent = shown.fixed(100 * share(largest.get().layer()).orElse(0), 0);
        return largest.get().layer() == found.get().values()
                ? words.get("components.verdict-values", percent)
                : words.get("components.verdict", largest.get().title(), percent);
    }

    @Override
    public void text(TextPage page) {
        page.line(verdict());
        if (found.isEmpty()) {
            return;
        }
        page.gap();
        List<List<String>> cells = new ArrayList<>();
        for (Line line : lines) {
            VarianceLayers.Layer layer = line.layer();
            OptionalDouble share = share(layer);
            cells.add(List.of(
                    line.title(),
                    Integer.toString(layer.groups()),
                    shown.sixDigits(layer.variance()),
                    shown.sixDigits(end(layer, VarianceInterval::low)),
                    layer.interval().isPresent()
                                    && Double.isInfinite(layer.interval().get().high())
                            ? NumberText.NONE
                            : shown.sixDigits(end(layer, VarianceInterval::high)),
                    share.isPresent() ? shown.fixed(100 * share.getAsDouble(), 1) : NumberText.NONE,
                    shown.sixDigits(layer.byAnova())));
        }
        page.table(
                List.of(
                        words.get("components.layer"),
                        words.get("components.groups"),
                        words.get("variance.variance"),
                        words.get("variance.low"),
                        words.get("variance.high"),
                        words.get("variance.share"),
                        words.get("components.by-anova")),
                cells);
        lines.forEach(line -> why(line).ifPresent(page::line));
        page.gap();
        AnovaLine.table(page, lines.stream().map(ComponentsReport::anova).toList(), words, shown);
        page.gap();
        page.row(words.get("components.mean"), shown.sixDigits(found.get().mean()), "");
        page.row(
                words.get("components.standard-error"),
                shown.sixDigits(Math.sqrt(found.get().meanVariance())),
                "");
    }
}
