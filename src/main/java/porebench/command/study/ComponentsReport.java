package porebench.command.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.method.Digits;
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

    private final ReportLayout<Line> layout;
    private final ReportLayout<double[]> mean;

    /** A layer under the name people gave it; the last one is that of the values. */
    private record Line(String name, String title, VarianceLayers.Layer layer) {
        AnovaLine anova() {
            return new AnovaLine(name, title, layer.squares(), layer.test());
        }
    }

    ComponentsReport(List<String> names, Judged<VarianceLayers> layers, Texts words, NumberText shown) {
        this.found = layers.meaningful();
        this.words = words;
        this.shown = shown;
        this.mean = VarianceLine.mean(words, shown);
        this.layout = VarianceLine.layout(words, shown)
                .of(this::variance)
                .number(
                        "anovaVariance",
                        "components.by-anova",
                        line -> line.layer().byAnova().orElse(Double.NaN))
                .field((json, line) -> why(line).ifPresent(reason -> json.text("reason", reason)));
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
        json.list("components", levels, layout::json);
        json.group("residual", found.map(done -> lines.get(lines.size() - 1)), layout::json);
        json.list("anova", lines, AnovaLine.layout(words, shown).of(Line::anova)::json);
        json.whole("count", found.map(VarianceLayers::count));
        mean.json(json, mean());
        json.text("method", "REML");
        found.ifPresent(done -> json.flag("balanced", done.isBalanced()));
        json.text("verdict", verdict());
    }

    private VarianceLine variance(Line line) {
        VarianceLayers.Layer layer = line.layer();
        Optional<VarianceInterval> interval = layer.interval();
        return new VarianceLine(
                line.name(),
                line.title(),
                layer.groups(),
                layer.variance().orElse(Double.NaN),
                interval.map(VarianceInterval::low).orElse(Double.NaN),
                interval.map(VarianceInterval::high).orElse(Double.NaN),
                share(layer));
    }

    private double share(VarianceLayers.Layer layer) {
        return layer.variance().isPresent() && found.isPresent()
                ? found.get().share(layer.variance().getAsDouble())
                : Double.NaN;
    }

    private double[] mean() {
        return found.map(done -> new double[] {done.mean(), Math.sqrt(done.meanVariance())})
                .orElseGet(() -> new double[] {Double.NaN, Double.NaN});
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
        String percent = Digits.share(share(largest.get().layer()));
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
        layout.table(page, lines);
        lines.forEach(line -> why(line).ifPresent(page::line));
        page.gap();
        AnovaLine.layout(words, shown).of(Line::anova).table(page, lines);
        page.gap();
        mean.rows(page, mean());
    }
}
