package porebench.command.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.variance.CrossedVariances;

/** What {@code components --crossed} has to say. */
final class CrossedReport implements Report {
    private final Judged<CrossedVariances> judged;
    private final List<VarianceLine> lines = new ArrayList<>();
    private final ReportLayout<VarianceLine> layout;
    private final ReportLayout<double[]> mean;
    private final Texts words;
    private final NumberText shown;

    CrossedReport(List<String> names, Judged<CrossedVariances> judged, Texts words, NumberText shown) {
        this.judged = judged;
        this.words = words;
        this.shown = shown;
        this.layout = VarianceLine.layout(words, shown);
        this.mean = VarianceLine.mean(words, shown);
        judged.meaningful().ifPresent(done -> {
            for (int i = 0; i < names.size(); i++) {
                lines.add(line(names.get(i), names.get(i), done.layers().get(i), done));
            }
            lines.add(line("residual", words.get("crossed.left"), done.values(), done));
        });
    }

    private static VarianceLine line(String name, String title, CrossedVariances.Layer layer, CrossedVariances done) {
        return new VarianceLine(
                name,
                title,
                layer.groups(),
                layer.variance(),
                layer.interval().low(),
                layer.interval().high(),
                layer.variance() / done.total());
    }

    @Override
    public void json(JsonFields json) {
        Optional<CrossedVariances> found = judged.meaningful();
        json.list("components", lines.isEmpty() ? lines : lines.subList(0, lines.size() - 1), layout::json);
        json.group("residual", found.map(done -> lines.get(lines.size() - 1)), layout::json);
        json.whole("count", found.map(CrossedVariances::count));
        mean.json(json, mean(found));
        json.text("method", "REML");
        json.flag("crossed", true);
        json.text("verdict", verdict());
    }

    private static double[] mean(Optional<CrossedVariances> found) {
        return found.map(done -> new double[] {done.mean(), Math.sqrt(done.meanVariance())})
                .orElseGet(() -> new double[] {Double.NaN, Double.NaN});
    }

    private String verdict() {
        Optional<VarianceLine> largest = lines.stream().max(Comparator.comparingDouble(VarianceLine::share));
        if (largest.isEmpty()) {
            return words.get(
                    judged.whyWithheld().orElseThrow() == Judged.Reason.NO_SPREAD
                            ? "components.verdict-still"
                            : "crossed.verdict-explained");
        }
        String percent = Digits.share(largest.get().share());
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
        layout.table(page, lines);
        lines.stream()
                .filter(line -> line.variance() == 0)
                .forEach(line -> page.line(words.get("components.at-zero", line.title())));
        page.gap();
        mean.rows(page, mean(judged.meaningful()));
    }
}
