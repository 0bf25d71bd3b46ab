package porebench.desk.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.evidence.study.LayeredReadings;
import porebench.method.Texts;
import porebench.statistics.variance.VarianceLayers;

/** Says what a study of groups within groups amounts to. */
final class LayersStudy {
    private final LayeredReadings readings;
    private final VarianceLayers found;
    private final LayerLines.Source source;
    private final Texts texts;
    private final StudyFigures figures;
    private final List<VarianceLayers.Layer> layers;
    private final List<LayerLines.Line> lines;
    private final LayerLines all;

    LayersStudy(
            LayeredReadings readings,
            VarianceLayers found,
            LayerLines.Source source,
            Texts texts,
            StudyFigures figures) {
        this.readings = readings;
        this.found = found;
        this.source = source;
        this.texts = texts;
        this.figures = figures;
        layers = new ArrayList<>(found.layers());
        layers.add(found.values());
        List<String> names = new ArrayList<>(readings.layers());
        names.add(texts.get("source.repeats"));
        lines = IntStream.range(0, layers.size())
                .mapToObj(i -> line(names.get(i), layers.get(i)))
                .toList();
        all = new LayerLines(lines, found.total(), source, texts, figures);
    }

    private LayerLines.Line line(String name, VarianceLayers.Layer layer) {
        return new LayerLines.Line(name, layer.variance(), layer.interval(), why(name, layer));
    }

    private Optional<String> why(String name, VarianceLayers.Layer layer) {
        return switch (layer.standing()) {
            case ESTIMATED -> Optional.empty();
            case AT_ZERO -> Optional.of(texts.get("layers.at-zero", name));
            case NOT_TOLD_APART ->
                Optional.of(
                        texts.get(layer == found.values() ? "layers.single-values" : "layers.not-told-apart", name));
            case STOOD_STILL -> Optional.of(texts.get("layers.stood-still", name));
        };
    }

    StudyShown shown() {
        return new StudyShown(
                all.noticed(verdict()),
                remarks(),
                Optional.of(all.shares()),
                Optional.empty(),
                List.of(
                        all.table(),
                        figures.anova(IntStream.range(0, layers.size())
                                .mapToObj(i -> figures.anovaRow(
                                        lines.get(i).name(),
                                        layers.get(i).squares(),
                                        layers.get(i).test()))
                                .toList())));
    }

    private String verdict() {
        return found.largest()
                .map(layer -> all.most(
                        layer == found.values() ? "layers.verdict-repeats" : "layers.verdict",
                        lines.get(layers.indexOf(layer))))
                .orElseGet(() -> texts.get("layers.verdict-none"));
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        remarks.add(all.mean(found.mean(), found.meanVariance(), found.count()));
        remarks.addAll(all.doubts());
        if (source.isBook()) {
            readings.recurring().forEach(layer -> remarks.add(texts.get("layers.recurring", layer)));
        }
        all.withinDivision().ifPresent(remarks::add);
        remarks.add(texts.get(found.isBalanced() ? "layers.balanced" : "layers.unbalanced"));
        return remarks;
    }
}
