package porebench.chart.hold;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import porebench.chart.look.PlotSaid;
import porebench.chart.look.PlotWords;
import porebench.method.hold.Hold;

/** What the plots of pairs of air show, in words. */
final class HoldSaid {
    private HoldSaid() {}

    static List<String> of(HoldPlot data, Locale locale) {
        PlotSaid said = new PlotSaid(locale);
        PlotWords words = said.words();
        List<HoldPlot.Point> used =
                data.points().stream().filter(point -> !point.isDoubted()).toList();
        said.axes(words.get("axis.hold-order"), words.get("axis.hold-difference"))
                .range(
                        words.get("legend.hold-pair"),
                        used.stream().mapToDouble(point -> point.on().pair().difference()),
                        words::signed);
        int from = data.shiftFrom().orElse(data.points().size());
        mean(data, said, 0, from);
        mean(data, said, from, data.points().size());
        said.each(words.get("legend.hold-doubted"), named(data, said, HoldPlot.Point::isDoubted))
                .each(
                        beyond(words, "axis.hold-sums"),
                        named(data, said, point -> point.on().isSignal()))
                .each(
                        beyond(words, "axis.hold-average"),
                        named(data, said, point -> point.on().isAverageBeyond()));
        String sums = words.get("axis.hold-sums");
        String average = words.get("axis.hold-average");
        if (!data.points().isEmpty()) {
            HoldPlot.Point last = data.points().get(data.points().size() - 1);
            said.value(
                            words.get("said.of", sums, last.label()),
                            words.percent(last.on().larger()))
                    .value(
                            words.get("said.of", average, last.label()),
                            words.percent(last.on().average()));
        }
        limits(said, sums, Hold.INTERVAL);
        limits(said, average, Hold.AVERAGE_LIMIT);
        data.shiftFrom()
                .ifPresent(first -> said.value(
                        words.get("note.hold-shift"), data.points().get(first).label()));
        return said.sentence(
                        words.get("note.hold-run-length", words.wholeNumbers().format(Math.round(data.runLength()))))
                .simulated(data.isSimulated())
                .sentences();
    }

    /** Says the mean of the pairs from one on up to another, as its line is drawn. */
    private static void mean(HoldPlot data, PlotSaid said, int from, int end) {
        PlotWords words = said.words();
        List<HoldPlot.Point> some = data.points().subList(from, end);
        some.stream()
                .filter(point -> !point.isDoubted())
                .mapToDouble(point -> point.on().pair().difference())
                .average()
                .ifPresent(mean -> said.value(
                        words.get(
                                "said.of",
                                words.get("legend.hold-mean"),
                                words.get(
                                        "said.from-to",
                                        some.get(0).label(),
                                        some.get(some.size() - 1).label())),
                        words.signed(mean)));
    }

    private static void limits(PlotSaid said, String axis, double limit) {
        PlotWords words = said.words();
        said.band(words.get("said.of", words.get("legend.limits"), axis), words.percent(-limit), words.percent(limit));
    }

    private static String beyond(PlotWords words, String axis) {
        return words.get("said.of", words.get("legend.hold-beyond"), words.get(axis));
    }

    private static List<String> named(HoldPlot data, PlotSaid said, Predicate<HoldPlot.Point> which) {
        return data.points().stream()
                .filter(which)
                .map(point -> said.at(
                        point.label(), said.words().signed(point.on().pair().difference())))
                .toList();
    }
}
