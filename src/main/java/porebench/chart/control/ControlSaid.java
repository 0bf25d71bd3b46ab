package porebench.chart.control;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import porebench.chart.look.PlotSaid;
import porebench.chart.look.PlotWords;

/** What a control chart shows, in words: the limits are those of its last phase, as they stand at its last point. */
final class ControlSaid {
    private final ControlPlot data;
    private final PlotSaid said;
    private final PlotWords words;

    private ControlSaid(ControlPlot data, Locale locale) {
        this.data = data;
        this.said = new PlotSaid(locale);
        this.words = said.words();
    }

    static List<String> of(ControlPlot data, Locale locale) {
        return new ControlSaid(data, locale).all();
    }

    private List<String> all() {
        said.axes(words.get("axis.order"), data.levelAxis());
        if (data.points().stream().anyMatch(point -> point.sums().isPresent())) {
            sums();
        } else {
            part(point -> Optional.of(point.level()));
        }
        if (data.hasSpread()) {
            said.axis(data.spreadAxis());
            part(ControlPlot.Point::spread);
        }
        said.each(words.get("legend.change"), changes(false)).each(words.get("legend.phase"), changes(true));
        if (data.baseCount() > 0) {
            said.band(
                    words.get("legend.base"), label(data.baseFirst()), label(data.baseFirst() + data.baseCount() - 1));
        }
        if (!data.notCounted().isEmpty()) {
            said.trials(data.notCounted().stream()
                    .map(ControlPlot.NotCounted::trial)
                    .toList());
        }
        return said.simulated(data.isSimulated()).sentences();
    }

    private String label(int index) {
        return index < data.points().size() ? data.points().get(index).label() : "";
    }

    private List<String> changes(boolean areBreaks) {
        return data.changes().stream()
                .filter(change -> change.isBreak() == areBreaks)
                .map(change -> said.at(label(change.before()), change.words()))
                .toList();
    }

    private void part(Function<ControlPlot.Point, Optional<ControlPlot.Plotted>> part) {
        List<ControlPlot.Plotted> plotted =
                data.points().stream().map(part).flatMap(Optional::stream).toList();
        said.range(words.get("legend.point"), plotted.stream().mapToDouble(ControlPlot.Plotted::value), words::fine);
        if (!plotted.isEmpty()) {
            ControlPlot.Plotted last = plotted.get(plotted.size() - 1);
            said.value(words.get("legend.centre"), last.centre(), words::fine);
            limits(last.low(), last.high());
        }
        List<String> signals = new ArrayList<>();
        for (ControlPlot.Point point : data.points()) {
            part.apply(point)
                    .filter(ControlPlot.Plotted::isSignal)
                    .ifPresent(one -> signals.add(said.at(named(point), words.fine(one.value()))));
        }
        said.each(words.get("legend.signal"), signals);
    }

    private void limits(OptionalDouble low, OptionalDouble high) {
        if (low.isPresent() && high.isPresent()) {
            said.band(words.get("legend.limits"), words.fine(low.getAsDouble()), words.fine(high.getAsDouble()));
        } else {
            said.value(words.get("legend.limits"), high.isPresent() ? high : low, words::fine);
        }
    }

    private static String named(ControlPlot.Point point) {
        return point.id().isBlank() ? point.label() : point.id();
    }

    private void sums() {
        said.range(
                words.get("legend.point"),
                data.points().stream()
                        .flatMap(point -> point.sums().stream())
                        .flatMapToDouble(sums -> java.util.stream.DoubleStream.of(sums.high(), -sums.low())),
                words::fine);
        ControlPlot.Point last = data.points().get(data.points().size() - 1);
        last.sums()
                .ifPresent(sums -> said.band(
                        words.get("legend.limits"), words.fine(-sums.interval()), words.fine(sums.interval())));
        said.each(
                words.get("legend.signal"),
                data.points().stream().flatMap(this::beyond).toList());
    }

    private Stream<String> beyond(ControlPlot.Point point) {
        return point.sums().stream()
                .filter(sums -> sums.high() > sums.interval() || sums.low() > sums.interval())
                .map(sums ->
                        said.at(named(point), words.fine(sums.high() > sums.interval() ? sums.high() : -sums.low())));
    }
}
