package porebench.evidence.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedTrial;
import porebench.evidence.intake.Sheet;
import porebench.method.Answer;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.quantity.Require;
import porebench.record.KeptStudy;
import porebench.statistics.variance.CrossedVariances;

/**
 * Readings in groups within groups, or in groups of layers that cross one another.
 *
 * @param layers what the layers are called, from the outermost
 * @param paths the names of each reading's groups, in that order
 * @param values the readings
 */
public record LayeredReadings(List<String> layers, List<List<String>> paths, double[] values) {
    /** The most layers there may be. */
    public static final int MOST_LAYERS = KeptStudy.MOST_LAYERS;

    /** Groups of all crossing layers but the largest: more would keep the machine busy for minutes. */
    public static final int MOST_CROSSING_GROUPS = 200;

    public LayeredReadings {
        layers = List.copyOf(layers);
        paths = List.copyOf(paths);
    }

    /**
     * Lays out the factors of all trials that count.
     *
     * @param all everything known of the mixes
     * @param chosen the layers from the outermost, at least one, none twice
     * @param name what a layer is called
     * @return the factors in % air, mix by mix; none while no trial counts
     */
    public static LayeredReadings of(List<Evidence> all, List<TrialLayer> chosen, Function<TrialLayer, String> name) {
        Require.atLeast("count of layers", chosen.size(), 1);
        List<List<String>> paths = new ArrayList<>();
        List<Double> factors = new ArrayList<>();
        for (Evidence evidence : all) {
            evidence.determinations().stream()
                    .flatMap(determination -> determination.trials().stream())
                    .filter(JudgedTrial::counts)
                    .forEach(trial -> {
                        paths.add(chosen.stream()
                                .map(layer -> layer.group(evidence, trial))
                                .toList());
                        factors.add(trial.factorPercent().orElseThrow());
                    });
        }
        return new LayeredReadings(
                chosen.stream().map(name).toList(),
                paths,
                factors.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /**
     * Lays out the rows of a sheet, its columns from left to right being the layers from the outermost.
     *
     * @return the readings, or all that keeps them from being a study
     */
    public static Answer<LayeredReadings> of(Sheet<ValueRow> sheet) {
        List<Problem> problems = new ArrayList<>(sheet.problems());
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        Place place = Place.of(sheet.file());
        if (sheet.rows().size() < 2) {
            problems.add(
                    Problem.error("value", "study.too-few-rows", sheet.rows().size())
                            .at(place));
            return Answer.refused(problems);
        }
        List<String> layers = List.copyOf(sheet.rows().get(0).value().factors().keySet());
        if (layers.isEmpty()) {
            problems.add(Problem.error("value", "study.no-layer").at(place));
        } else if (layers.size() > MOST_LAYERS) {
            problems.add(Problem.error("value", "study.too-many-layers", layers.size(), MOST_LAYERS)
                    .at(place));
        }
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        List<List<String>> paths = sheet.values().stream()
                .map(row -> List.copyOf(row.factors().values()))
                .toList();
        double[] values = sheet.values().stream().mapToDouble(ValueRow::value).toArray();
        return Answer.of(new LayeredReadings(layers, paths, values), problems);
    }

    /**
     * Returns what keeps the layers from being taken as crossing one another, the same name being the same thing wherever it
     * stands: layers that these readings cannot tell from one another, or from what is left besides them.
     */
    public List<Problem> checkCrossing() {
        int[] groups = IntStream.range(0, layers.size())
                .map(place -> (int)
                        paths.stream().map(path -> path.get(place)).distinct().count())
                .toArray();
        int besides = Arrays.stream(groups).sum() - Arrays.stream(groups).max().orElse(0);
        if (besides > MOST_CROSSING_GROUPS) {
            return List.of(Problem.error("value", "study.too-many-groups", besides, MOST_CROSSING_GROUPS));
        }
        List<Integer> alike = CrossedVariances.notToldApart(paths);
        List<String> named = alike.stream()
                .filter(place -> place < layers.size())
                .map(layers::get)
                .toList();
        List<Problem> problems = new ArrayList<>();
        for (Integer place : alike) {
            if (place < layers.size()
                    && paths.stream().map(path -> path.get(place)).distinct().count() == 1) {
                problems.add(Problem.error("value", "study.one-group", layers.get(place)));
            }
        }
        if (!problems.isEmpty()) {
            return problems;
        }
        if (alike.contains(layers.size())) {
            problems.add(Problem.error("value", "study.nothing-left", String.join(", ", named)));
        } else if (!named.isEmpty()) {
            problems.add(Problem.error("value", "study.layers-alike", String.join(", ", named)));
        }
        return problems;
    }

    /**
     * Returns the layers whose names stand in more than one group of the layer around, such as an operator with several
     * determinations; they are taken for different things.
     */
    public List<String> recurring() {
        List<String> recurring = new ArrayList<>();
        for (int layer = 1; layer < layers.size(); layer++) {
            int place = layer;
            long names = paths.stream().map(path -> path.get(place)).distinct().count();
            long groups = paths.stream()
                    .map(path -> path.subList(0, place + 1))
                    .distinct()
                    .count();
            if (groups > names) {
                recurring.add(layers.get(layer));
            }
        }
        return recurring;
    }
}
