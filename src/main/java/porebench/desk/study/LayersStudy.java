package porebench.desk.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import porebench.chart.study.ComponentShares;
import porebench.evidence.study.LayeredReadings;
import porebench.method.Texts;
import porebench.statistics.variance.CrossedVariances;
import porebench.statistics.variance.VarianceInterval;
import porebench.statistics.variance.VarianceLayers;

/** Says what a study of layers amounts to, each with what it makes up of the whole: groups within groups, or layers that cross. */
final class LayersStudy {
    private final List<Line> lines;
    private final double total;
    private final Source source;
    private final Texts texts;
    private final StudyFigures figures;

    /**
     * One layer, or what is left within or besides the layers.
     *
     * @param variance empty where it is not estimated
     * @param interval of the variance
     * @param why it is not estimated, or at its bound; empty where nothing is doubtful
     */
    record Line(String name, OptionalDouble variance, Optional<VarianceInterval> interval, Optional<String> why) {}

    /**
     * Where the readings are from.
     *
     * @param isBook whether from the lab book, so that they are in % air and the same name is the same thing
     * @param isSimulated whether nothing of them was measured
     * @param division a division of the scale, in their unit
     */
    record Source(boolean isBook, boolean isSimulated, double division) {}

    /** Takes the lines of a study, the last one being what is left, and the total of all variances. */
    private LayersStudy(List<Line> lines, double total, Source source, Texts texts, StudyFigures figures) {
        this.lines = List.copyOf(lines);
        this.total = total;
        this.source = source;
        this.texts = texts;
        this.figures = figures;
    }

    /** Says what groups within groups amount to. */
    static StudyShown nested(
            LayeredReadings readings, VarianceLayers found, Source source, Texts texts, StudyFigures figures) {
        List<VarianceLayers.Layer> layers = new ArrayList<>(found.layers());
        layers.add(found.values());
        List<String> names = new ArrayList<>(readings.layers());
        names.add(texts.get("source.repeats"));
        List<Line> lines = IntStream.range(0, layers.size())
                .mapToObj(i -> line(names.get(i), layers.get(i), layers.get(i) == found.values(), texts))
                .toList();
        LayersStudy all = new LayersStudy(lines, found.total(), source, texts, figures);
        String verdict = found.largest()
                .map(layer -> all.most(
                        layer == found.values() ? "layers.verdict-repeats" : "layers.verdict",
                        lines.get(layers.indexOf(layer))))
                .orElseGet(() -> texts.get("layers.verdict-none"));
        List<String> recurring = source.isBook()
                ? readings.recurring().stream()
                        .map(layer -> texts.get("layers.recurring", layer))
                        .toList()
                : List.of();
        StudyShown.Table anova = figures.anova(IntStream.range(0, layers.size())
                .mapToObj(i -> figures.anovaRow(
                        lines.get(i).name(),
                        layers.get(i).squares(),
                        layers.get(i).test()))
                .toList());
        return all.shown(
                verdict,
                all.mean(found.mean(), found.meanVariance(), found.count()),
                recurring,
                texts.get(found.isBalanced() ? "layers.balanced" : "layers.unbalanced"),
                List.of(all.table(), anova));
    }

    private static Line line(String name, VarianceLayers.Layer layer, boolean isLeft, Texts texts) {
        Optional<String> key = switch (layer.standing()) {
            case ESTIMATED -> Optional.empty();
            case AT_ZERO -> Optional.of("layers.at-zero");
            case NOT_TOLD_APART -> Optional.of(isLeft ? "layers.single-values" : "layers.not-told-apart");
            case STOOD_STILL -> Optional.of("layers.stood-still");
        };
        return new Line(name, layer.variance(), layer.interval(), key.map(words -> texts.get(words, name)));
    }

    /** Says what layers that cross one another amount to. */
    static StudyShown crossed(
            LayeredReadings readings, CrossedVariances found, Source source, Texts texts, StudyFigures figures) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < found.layers().size(); i++) {
            lines.add(line(readings.layers().get(i), found.layers().get(i), texts));
        }
        Line left = line(texts.get("source.left"), found.values(), texts);
        lines.add(left);
        LayersStudy all = new LayersStudy(lines, found.total(), source, texts, figures);
        Line largest = lines.stream()
                .max(Comparator.comparingDouble(line -> line.variance().orElseThrow()))
                .orElseThrow();
        return all.shown(
                all.most(largest == left ? "crossed.verdict-left" : "layers.verdict", largest),
                all.mean(found.mean(), found.meanVariance(), found.count()),
                List.of(),
                texts.get("crossed.method"),
                List.of(all.table()));
    }

    private static Line line(String name, CrossedVariances.Layer layer, Texts texts) {
        return new Line(
                name,
                OptionalDouble.of(layer.variance()),
                Optional.of(layer.interval()),
                layer.variance() == 0 ? Optional.of(texts.get("layers.at-zero", name)) : Optional.empty());
    }

    private StudyShown shown(
            String verdict, String mean, List<String> besides, String method, List<StudyShown.Table> tables) {
        List<String> remarks = new ArrayList<>(List.of(mean));
        lines.forEach(line -> line.why().ifPresent(remarks::add));
        remarks.addAll(besides);
        withinDivision().ifPresent(remarks::add);
        remarks.add(method);
        return new StudyShown(noticed(verdict), remarks, Optional.of(shares()), Optional.empty(), tables);
    }

    private OptionalDouble share(Line line) {
        return line.variance().isPresent()
                ? OptionalDouble.of(line.variance().getAsDouble() / total)
                : OptionalDouble.empty();
    }

    private Line left() {
        return lines.get(lines.size() - 1);
    }

    private StudyShown.Table table() {
        return figures.components(
                unit(),
                lines.stream()
                        .map(line -> figures.componentRow(line.name(), line.variance(), line.interval(), share(line)))
                        .toList());
    }

    /** Says which line makes up most, and how much that is. */
    private String most(String key, Line line) {
        Optional<VarianceInterval> roots = line.interval().map(VarianceInterval::ofRoots);
        return texts.get(
                key,
                line.name(),
                figures.percent(share(line).orElse(0)),
                inUnit(figures.root(line.variance())),
                roots.map(known -> figures.number(known.low())).orElse(texts.get("none")),
                roots.map(known -> figures.number(known.high())).orElse(texts.get("none")));
    }

    /** Returns a verdict with the notice that nothing was measured, where that is so. */
    private String noticed(String verdict) {
        return source.isSimulated() ? texts.get("layers.simulated", verdict) : verdict;
    }

    /** Says the mean with its standard uncertainty. */
    private String mean(double mean, double variance, int count) {
        return texts.get(
                "layers.mean",
                figures.number(mean),
                figures.number(Math.sqrt(variance)),
                unit(),
                Integer.toString(count));
    }

    /** Says that what is left is less than a division gives by itself, where that is so. */
    private Optional<String> withinDivision() {
        double division = source.division();
        return left().variance().orElse(Double.MAX_VALUE) < division * division / 12
                ? Optional.of(texts.get("remark.within-division", figures.number(division)))
                : Optional.empty();
    }

    private ComponentShares shares() {
        return new ComponentShares(lines.stream().map(this::shown).toList(), source.isSimulated());
    }

    private ComponentShares.Share shown(Line line) {
        OptionalDouble share = share(line);
        OptionalDouble variance = line.variance();
        return new ComponentShares.Share(
                line.name(),
                share.isPresent() ? OptionalDouble.of(100 * share.getAsDouble()) : share,
                variance.isPresent() ? OptionalDouble.of(Math.sqrt(variance.getAsDouble())) : variance,
                line.why().orElseGet(() -> texts.get("share.deviation", figures.root(variance))));
    }

    private String inUnit(String number) {
        return source.isBook() ? texts.get("value.air", number) : number;
    }

    private String unit() {
        return texts.get(source.isBook() ? "unit.air" : "unit.file");
    }
}
