package porebench.command.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.method.Texts;
import porebench.statistics.outlier.RepeatSets;

/** What {@code stats --sets} has to say: each set of repeat values in a row, and all of them together. */
final class SetsReport implements Report {
    static final String COLUMN = "set";

    private static final double SIGNIFICANCE = 0.05;

    private final List<String> names;
    private final RepeatSets sets;
    private final Texts words;
    private final NumberText shown;

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
        json.list("sets", places(), (fields, set) -> {
            fields.text(COLUMN, names.get(set));
            fields.whole("count", sets.count(set));
            fields.number("mean", sets.mean(set));
            fields.number("standardDeviation", sets.standardDeviation(set));
            fields.number("range", sets.range(set));
            fields.group("confidence95", interval(set), (ends, halfWidth) -> {
                ends.number("low", sets.mean(set) - halfWidth);
                ends.number("high", sets.mean(set) + halfWidth);
            });
            fields.flag("rangePasses", sets.isWithinCriticalRange(set));
            fields.flag("outlier", sets.hasOutlier(set));
            fields.number("grubbs", sets.grubbs(set));
            fields.whole(
                    "index",
                    sets.farthest(set).isPresent()
                            ? Optional.of(sets.farthest(set).getAsInt())
                            : Optional.empty());
        });
    }

    private Optional<Double> interval(int set) {
        return Double.isNaN(sets.halfWidth(set)) ? Optional.empty() : Optional.of(sets.halfWidth(set));
    }

    @Override
    public void text(TextPage page) {
        List<List<String>> cells = new ArrayList<>();
        for (int set = 0; set < sets.size(); set++) {
            cells.add(List.of(
                    names.get(set),
                    Integer.toString(sets.count(set)),
                    shown.sixDigits(sets.mean(set)),
                    shown.sixDigits(some(sets.standardDeviation(set))),
                    shown.sixDigits(some(sets.halfWidth(set))),
                    shown.sixDigits(sets.range(set)),
                    remark(set)));
        }
        page.table(
                List.of(
                        words.get("sets.set"),
                        words.get("stats.count"),
                        words.get("stats.mean"),
                        words.get("stats.standard-deviation"),
                        words.get("sets.half-width"),
                        words.get("stats.range"),
                        ""),
                cells);
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
