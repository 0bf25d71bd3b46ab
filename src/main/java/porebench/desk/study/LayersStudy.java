package porebench.desk.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.chart.ComponentShares;
import porebench.desk.form.Texts;
import porebench.record.study.LayeredReadings;
import porebench.statistics.VarianceInterval;
import porebench.statistics.VarianceLayers;

/** Says what a study of layers amounts to. */
final class LayersStudy {
    private final LayeredReadings readings;
    private final VarianceLayers found;
    private final Source source;
    private final Texts texts;
    private final StudyFigures figures;
    private final List<Line> lines = new ArrayList<>();

    private record Line(String name, VarianceLayers.Layer layer) {}

    /**
     * Where the readings are from.
     *
     * @param isBook whether from the lab book, so that they are in % air and the same name is the same thing
     * @param isSimulated whether nothing of them was measured
     * @param division a division of the scale, in their unit
     */
    record Source(boolean isBook, boolean isSimulated, double division) {}

    LayersStudy(LayeredReadings readings, VarianceLayers found, Source source, Texts texts, StudyFigures figures) {
        this.readings = readings;
        this.found = found;
        this.source = source;
        this.texts = texts;
        this.figures = figures;
        for (int i = 0; i < readings.layers().size(); i++) {
            lines.add(new Line(readings.layers().get(i), found.layers().get(i)));
        }
        lines.add(new Line(texts.get("source.repeats"), found.values()));
    }

    StudyShown shown() {
        return new StudyShown(
                source.isSimulated() ? texts.get("layers.simulated", verdict()) : verdict(),
                remarks(),
                Optional.of(shares()),
                Optional.empty(),
                List.of(
                        figures.components(
                                unit(),
                                lines.stream()
                                        .map(line -> figures.componentRow(
                                                line.name(),
                                                line.layer().variance(),
                                                line.layer().interval(),
                                                share(line.layer())))
                                        .toList()),
                        figures.anova(lines.stream()
                                .map(line -> figures.anovaRow(
                                        line.name(),
                                        line.layer().squares(),
                                        line.layer().test()))
                                .toList())));
    }

    private OptionalDouble share(VarianceLayers.Layer layer) {
        return layer.variance().isPresent()
                ? OptionalDouble.of(found.share(layer.variance().getAsDouble()))
                : OptionalDouble.empty();
    }

    private String verdict() {
        Optional<Line> most = found.largest()
                .flatMap(layer ->
                        lines.stream().filter(line -> line.layer() == layer).findFirst());
        if (most.isEmpty()) {
            return texts.get("layers.verdict-none");
        }
        Line largest = most.get();
        Optional<VarianceInterval> roots = largest.layer().interval().map(VarianceInterval::ofRoots);
        return texts.get(
                largest.layer() == found.values() ? "layers.verdict-repeats" : "layers.verdict",
                largest.name(),
                figures.percent(share(largest.layer()).orElse(0)),
                inUnit(figures.root(largest.layer().variance())),
                roots.map(known -> figures.number(known.low())).orElse(texts.get("none")),
                roots.map(known -> figures.number(known.high())).orElse(texts.get("none")));
    }

    private String inUnit(String number) {
        return source.isBook() ? texts.get("value.air", number) : number;
    }

    private String unit() {
        return texts.get(source.isBook() ? "unit.air" : "unit.file");
    }

    private Optional<String> why(Line line) {
        return switch (line.layer().standing()) {
            case ESTIMATED -> Optional.empty();
            case AT_ZERO -> Optional.of(texts.get("layers.at-zero", line.name()));
            case NOT_TOLD_APART ->
                Optional.of(texts.get(
                        line.layer() == found.values() ? "layers.single-values" : "layers.not-told-apart",
                        line.name()));
            case STOOD_STILL -> Optional.of(texts.get("layers.stood-still", line.name()));
        };
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        remarks.add(texts.get(
                "layers.mean",
                figures.number(found.mean()),
                figures.number(Math.sqrt(found.meanVariance())),
                unit(),
                Integer.toString(found.count())));
        lines.forEach(line -> why(line).ifPresent(remarks::add));
        if (source.isBook()) {
            readings.recurring().forEach(layer -> remarks.add(texts.get("layers.recurring", layer)));
        }
        double division = source.division();
        double variance = found.values().variance().orElse(Double.MAX_VALUE);
        if (variance < division * division / 12) {
            remarks.add(texts.get("remark.within-division", figures.number(division)));
        }
        remarks.add(texts.get(found.isBalanced() ? "layers.balanced" : "layers.unbalanced"));
        return remarks;
    }

    private ComponentShares shares() {
        return new ComponentShares(lines.stream().map(this::share).toList(), source.isSimulated());
    }

    private ComponentShares.Share share(Line line) {
        OptionalDouble share = share(line.layer());
        OptionalDouble variance = line.layer().variance();
        return new ComponentShares.Share(
                line.name(),
                share.isPresent() ? OptionalDouble.of(100 * share.getAsDouble()) : share,
                variance.isPresent() ? OptionalDouble.of(Math.sqrt(variance.getAsDouble())) : variance,
                why(line).orElseGet(() -> texts.get("share.deviation", figures.root(variance))));
    }
}
