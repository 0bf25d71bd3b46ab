package porebench.command.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.variance.CrossedVariances;

/** What {@code components --crossed} has to say. */
final class CrossedReport implements Report {
    private final Judged<CrossedVariances> judged;
    private final List<Line> lines = new ArrayList<>();
    private final Texts words;
    private final NumberText shown;

    /** A layer under the name people gave it; the last one is what is left. */
    private record Line(String name, String title, CrossedVariances.Layer layer, double share) {}

    CrossedReport(List<String> names, Judged<CrossedVariances> judged, Texts words, NumberText shown) {
        this.judged = judged;
        this.words = words;
        this.shown = shown;
        judged.meaningful().ifPresent(done -> {
            for (int i = 0; i < names.size(); i++) {
                lines.add(line(names.get(i), names.get(i), done.layers().get(i), done));
            }
            lines.add(line("residual", words.get("crossed.left"), done.values(), done));
        });
    }

    private static Line line(String name, String title, CrossedVariances.Layer layer, CrossedVariances done) {
        return new Line(name, title, layer, layer.variance() / done.total());
    }

    @Override
    public void json(JsonFields json) {
        Optional<CrossedVariances> found = judged.meaningful();
        json.list("components", lines.isEmpty() ? lines : lines.subList(0, lines.size() - 1), CrossedReport::line);
        json.group("residual", found.map(done -> lines.get(lines.size() - 1)), CrossedReport::line);
        json.whole("count", found.map(CrossedVariances::count));
        json.number("mean", number(found.map(CrossedVariances::mean)));
        json.number("standardError", number(found.map(done -> Math.sqrt(done.meanVariance()))));
        json.text("method", "REML");
        json.flag("crossed", true);
        json.text("verdict", verdict());
    }

    private static OptionalDouble number(Optional<Double> number) {
        return number.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static void line(JsonFields json, Line line) {
        json.text("level", line.name());
        json.whole("groups", line.layer().groups());
        json.number("variance", OptionalDouble.of(line.layer().variance()));
        json.number("low", OptionalDouble.of(line.layer().interval().low()));
        json.number("high", OptionalDouble.of(line.layer().interval().high()));
        json.number("share", OptionalDouble.of(line.share()));
    }

    private String verdict() {
        Optional<Line> largest = lines.stream().max(Comparator.comparingDouble(Line::share));
        if (largest.isEmpty()) {
            return words.get(
                    judged.whyWithheld().orElseThrow() == Judged.Reason.NO_SPREAD
                            ? "components.verdict-still"
                            : "crossed.verdict-explained");
        }
        String percent = shown.fixed(100 * largest.get().share(), 0);
        return largest.get() == lines.get(lines.size() - 1)
                ? words.get("crossed.verdict-left", percent)
                : words.get("components.verdict", largest.get().title(), percent);
    }

    @Override
    public void text(TextPage page) {
        page.line(verdict());
        if (lines.isEmpty()) {
            return;
        }
        page.gap();
        page.table(
                List.of(
                        words.get("components.layer"),
                        words.get("components.groups"),
                        words.get("variance.variance"),
                        words.get("variance.low"),
                        words.get("variance.high"),
                        words.get("variance.share")),
                lines.stream().map(this::cells).toList());
        lines.stream()
                .filter(line -> line.layer().variance() == 0)
                .forEach(line -> page.line(words.get("components.at-zero", line.title())));
        page.gap();
        CrossedVariances found = judged.meaningful().orElseThrow();
        page.row(words.get("components.mean"), shown.sixDigits(found.mean()), "");
        page.row(words.get("components.standard-error"), shown.sixDigits(Math.sqrt(found.meanVariance())), "");
    }

    private List<String> cells(Line line) {
        CrossedVariances.Layer layer = line.layer();
        double high = layer.interval().high();
        return List.of(
                line.title(),
                Integer.toString(layer.groups()),
                shown.sixDigits(layer.variance()),
                shown.sixDigits(layer.interval().low()),
                Double.isInfinite(high) ? NumberText.NONE : shown.sixDigits(high),
                shown.fixed(100 * line.share(), 1));
    }
}
