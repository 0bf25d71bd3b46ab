package porebench.evidence.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.evidence.intake.Sheet;
import porebench.method.Answer;
import porebench.method.Place;
import porebench.method.Problem;

/**
 * Readings by every operator of every sample, each as often, in the order in which they first stand in the sheet.
 *
 * @param operators the operators
 * @param samples the samples
 * @param readings by operator, sample and repeat
 */
public record CrossedReadings(List<String> operators, List<String> samples, double[][][] readings) {
    public static final String OPERATOR = "operator";
    public static final String SAMPLE = "sample";
    public static final String REPEAT = "repeat";

    private static final int FEWEST = 2;

    /** One cell, its readings by the name of the repeat. */
    private record Cell(String operator, String sample) {}

    public CrossedReadings {
        operators = List.copyOf(operators);
        samples = List.copyOf(samples);
    }

    /**
     * Lays out the rows of a sheet.
     *
     * @return the readings, or all that keeps them from being a study: the sheet's own problems, repeats that stand twice,
     *     cells that are missing, fewer than two of anything
     */
    public static Answer<CrossedReadings> of(Sheet<ValueRow> sheet) {
        List<Problem> problems = new ArrayList<>(sheet.problems());
        Map<Cell, Map<String, Sheet.Row<ValueRow>>> cells = new LinkedHashMap<>();
        for (Sheet.Row<ValueRow> row : sheet.rows()) {
            Map<String, String> names = row.value().factors();
            Cell cell = new Cell(names.getOrDefault(OPERATOR, ""), names.getOrDefault(SAMPLE, ""));
            String repeat = names.getOrDefault(REPEAT, "");
            Sheet.Row<ValueRow> before =
                    cells.computeIfAbsent(cell, any -> new LinkedHashMap<>()).putIfAbsent(repeat, row);
            if (before != null) {
                problems.add(Problem.error(
                                REPEAT, "study.repeat-twice", repeat, cell.sample(), cell.operator(), before.line())
                        .at(sheet.place(row)));
            }
        }
        // A cell that could not be read is not missing.
        if (!Problem.anyError(problems)) {
            problems.addAll(gaps(cells, Place.of(sheet.file())));
        }
        return Problem.anyError(problems) ? Answer.refused(problems) : Answer.of(of(cells), problems);
    }

    private static List<Problem> gaps(Map<Cell, Map<String, Sheet.Row<ValueRow>>> cells, Place place) {
        List<Problem> problems = new ArrayList<>();
        Set<String> operators = names(cells.keySet(), Cell::operator);
        Set<String> samples = names(cells.keySet(), Cell::sample);
        if (cells.isEmpty()) {
            problems.add(Problem.error("value", "study.no-row").at(place));
            return problems;
        }
        if (operators.size() < FEWEST) {
            problems.add(Problem.error(
                            OPERATOR, "study.one-operator", operators.iterator().next())
                    .at(place));
        }
        if (samples.size() < FEWEST) {
            problems.add(
                    Problem.error(SAMPLE, "study.one-sample", samples.iterator().next())
                            .at(place));
        }
        int repeats = usualCount(cells.values());
        if (repeats < FEWEST) {
            problems.add(Problem.error(REPEAT, "study.one-repeat").at(place));
        }
        Set<String> known = cells.values().stream()
                .flatMap(cell -> cell.keySet().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        for (String operator : operators) {
            for (String sample : samples) {
                Map<String, Sheet.Row<ValueRow>> cell = cells.getOrDefault(new Cell(operator, sample), Map.of());
                if (cell.isEmpty()) {
                    problems.add(Problem.error(SAMPLE, "study.cell-missing", operator, sample)
                            .at(place));
                } else if (cell.size() < repeats && known.size() == repeats) {
                    known.stream()
                            .filter(repeat -> !cell.containsKey(repeat))
                            .map(repeat -> Problem.error(REPEAT, "study.repeat-missing", operator, sample, repeat)
                                    .at(place))
                            .forEach(problems::add);
                } else if (cell.size() != repeats) {
                    problems.add(Problem.error(REPEAT, "study.cell-uneven", operator, sample, cell.size(), repeats)
                            .at(place));
                }
            }
        }
        return problems;
    }

    private static Set<String> names(Collection<Cell> cells, Function<Cell, String> name) {
        return cells.stream().map(name).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Returns how many readings most cells have; the larger number where two are as common. */
    private static int usualCount(Collection<Map<String, Sheet.Row<ValueRow>>> cells) {
        Map<Integer, Long> counts = cells.stream().collect(Collectors.groupingBy(Map::size, Collectors.counting()));
        return counts.entrySet().stream()
                .max(Map.Entry.<Integer, Long>comparingByValue().thenComparing(Comparator.comparing(Map.Entry::getKey)))
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    private static CrossedReadings of(Map<Cell, Map<String, Sheet.Row<ValueRow>>> cells) {
        List<String> operators = List.copyOf(names(cells.keySet(), Cell::operator));
        List<String> samples = List.copyOf(names(cells.keySet(), Cell::sample));
        double[][][] readings = operators.stream()
                .map(operator -> samples.stream()
                        .map(sample -> cells.getOrDefault(new Cell(operator, sample), Map.of()).values().stream()
                                .mapToDouble(row -> row.value().value())
                                .toArray())
                        .toArray(double[][]::new))
                .toArray(double[][][]::new);
        return new CrossedReadings(operators, samples, readings);
    }

    /** Returns all readings, operator by operator. */
    public double[] all() {
        return Arrays.stream(readings)
                .flatMap(Arrays::stream)
                .flatMapToDouble(Arrays::stream)
                .toArray();
    }
}
