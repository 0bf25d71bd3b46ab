package porebench.desk.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.evidence.study.LayeredReadings;
import porebench.method.Texts;
import porebench.statistics.variance.CrossedVariances;

/** Says what a study of layers that cross one another amounts to. */
final class CrossedStudy {
    private final CrossedVariances found;
    private final Texts texts;
    private final List<LayerLines.Line> lines = new ArrayList<>();
    private final LayerLines all;

    CrossedStudy(
            LayeredReadings readings,
            CrossedVariances found,
            LayerLines.Source source,
            Texts texts,
            StudyFigures figures) {
        this.found = found;
        this.texts = texts;
        for (int i = 0; i < found.layers().size(); i++) {
            lines.add(line(readings.layers().get(i), found.layers().get(i)));
        }
        lines.add(line(texts.get("source.left"), found.values()));
        all = new LayerLines(lines, found.total(), source, texts, figures);
    }

    private LayerLines.Line line(String name, CrossedVariances.Layer layer) {
        return new LayerLines.Line(
                name,
                OptionalDouble.of(layer.variance()),
                Optional.of(layer.interval()),
                layer.variance() == 0 ? Optional.of(texts.get("layers.at-zero", name)) : Optional.empty());
    }

    StudyShown shown() {
        return new StudyShown(
                all.noticed(verdict()), remarks(), Optional.of(all.shares()), Optional.empty(), List.of(all.table()));
    }

    private String verdict() {
        LayerLines.Line largest = lines.stream()
                .max(Comparator.comparingDouble(line -> line.variance().orElseThrow()))
                .orElseThrow();
        return all.most(largest == all.left() ? "crossed.verdict-left" : "layers.verdict", largest);
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        remarks.add(all.mean(found.mean(), found.meanVariance(), found.count()));
        remarks.addAll(all.doubts());
        all.withinDivision().ifPresent(remarks::add);
        remarks.add(texts.get("crossed.method"));
        return remarks;
    }
}
