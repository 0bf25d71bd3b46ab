package porebench.command.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.evidence.study.ValueFile;
import porebench.method.Texts;
import porebench.statistics.outlier.RepeatSets;

/** What {@code stats --sets} has to say: each set of repeat values in a row, and all of them together. */
final class SetsReport implements Report {
    static final String COLUMN = ValueFile.SETS.asked().get(0);

    private static final double SIGNIFICANCE = 0.05;

    private final List<String> names;
    private final RepeatSets sets;
    private final Texts words;
    private final NumberText shown;
    private final ReportLayout<Integer> layout;

    SetsReport(Subgroups groups, double division, double repeatability, Texts words, NumberText shown) {
        this.names = groups.names();
        this.words = words;
        this.shown = shown;
        int[] ends = new int[names.size()];
        int end = 0;
        for (int set = 0; set < ends.length; set++) {
            end += groups.values().get(set).length;
            ends[set] = end;
        }
        sets = RepeatSets.of(groups.all(), ends, new RepeatSets.Judging(repeatability, division, SIGNIFICANCE));
        layout = new ReportLayout<Integer>(words, shown)
                .text(COLUMN, "sets.set", names::get)
                .whole("count", "stats.count", sets::count)
                .number("mean", "stats.mean", sets::mean)
                .number("standardDeviation", "stats.standard-deviation", sets::standardDeviation)
                .cell("sets.half-width", set -> shown.sixDigits(some(sets.halfWidth(set))))
                .number("range", "stats.range", sets::range)
                .field(this::judgement)
                .cell("", this::remark);
    }

    private List<Integer> places() {
        return IntStream.range(0, sets.size()).boxed().toList();
    }

    private long wide() {
        return places().stream().filter(set -> !sets.isWithinCriticalRange(set)).count();
    }

    private long outlying() {
        return places().stream().filter(sets::hasOutlier).count();
    }

    private long judged() {
        return places().stream()
                .filter(set -> sets.count(set) >= RepeatSets.FEWEST_TO_JUDGE)
                .count();
    }

    @Override
    public void json(JsonFields json) {
        json.whole("count", sets.size());
        json.number("pooledStandardDeviation", sets.pooledStandardDeviation());
        json.whole("tooWide", wide());
        json.whole("withOutlier", outlying());
        json.list("sets", places(), layout::json);
    }

    private void judgement(JsonFields json, int set) {
        json.group("confidence95", interval(set), (ends, halfWidth) -> {
            ends.number("low", sets.mean(set) - halfWidth);
            ends.number("high", sets.mean(set) + halfWidth);
        });
        json.flag("rangePasses", sets.isWithinCriticalRange(set));
        json.flag("outlier", sets.hasOutlier(set));
        json.number("grubbs", sets.grubbs(set));
        json.whole(
                "index",
                sets.farthest(set).isPresent() ? Optional.of(sets.farthest(set).getAsInt()) : Optional.empty());
    }

    private Optional<Double> interval(int set) {
        return Double.isNaN(sets.halfWidth(set)) ? Optional.empty() : Optional.of(sets.halfWidth(set));
    }

    @Override
    public void text(TextPage page) {
        layout.table(page, places());
        page.gap();
        page.row(words.get("sets.sets"), Integer.toString(sets.size()), "");
        page.row(words.get("sets.pooled"), shown.sixDigits(sets.pooledStandardDeviation()), "");
        page.row(words.get("sets.too-wide"), Long.toString(wide()), "");
        page.row(words.get("sets.with-outlier"), Long.toString(outlying()), "");
        page.line(words.get(
                "sets.by-chance",
                Long.toString(judged()),
                shown.fixed(judged() * SIGNIFICANCE, judged() < 20 ? 2 : judged() < 200 ? 1 : 0)));
    }

    private static OptionalDouble some(double number) {
        return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
    }

    private String remark(int set) {
        List<String> remarks = new ArrayList<>();
        if (!sets.isWithinCriticalRange(set)) {
            remarks.add(words.get("sets.wide"));
        }
        if (sets.hasOutlier(set)) {
            remarks.add(words.get(
                    "sets.outlier", Integer.toString(sets.farthest(set).orElseThrow() + 1)));
        }
        return String.join(" ", remarks);
    }
}
