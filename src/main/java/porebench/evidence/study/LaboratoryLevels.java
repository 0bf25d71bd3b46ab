package porebench.evidence.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import porebench.evidence.intake.Sheet;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.statistics.Judged;
import porebench.statistics.comparison.LaboratoryBias;
import porebench.statistics.comparison.LaboratoryComparison;

/**
 * The rows of a sheet by level and laboratory, both in the order in which they first stand there.
 *
 * @param levels what each level amounts to
 * @param laboratories all laboratories of the file
 */
public record LaboratoryLevels(List<Level> levels, List<String> laboratories) {
    public static final String LABORATORY = "laboratory";
    public static final String LEVEL = "level";

    public LaboratoryLevels {
        levels = List.copyOf(levels);
        laboratories = List.copyOf(laboratories);
    }

    /**
     * One level.
     *
     * @param name as in the file
     * @param begins where it begins
     * @param comparison of its laboratories
     */
    public record Level(String name, Place begins, LaboratoryComparison comparison) {}

    /** Returns what keeps the rows of a sheet from being compared: the sheet's own problems, or that there is none. */
    public static List<Problem> check(Sheet<ValueRow> sheet) {
        List<Problem> problems = new ArrayList<>(sheet.problems());
        if (sheet.rows().isEmpty() && !Problem.anyError(problems)) {
            problems.add(Problem.error("value", "study.no-row").at(Place.of(sheet.file())));
        }
        return problems;
    }

    /**
     * Compares the laboratories of each level.
     *
     * @param division the smallest step of the scale, in the unit of the values, at least 0
     */
    public static LaboratoryLevels of(Sheet<ValueRow> sheet, double division) {
        Map<String, Map<String, List<Double>>> values = new LinkedHashMap<>();
        Map<String, Place> begins = new LinkedHashMap<>();
        List<String> laboratories = sheet.rows().stream()
                .map(row -> laboratory(row.value()))
                .distinct()
                .toList();
        for (Sheet.Row<ValueRow> row : sheet.rows()) {
            String level = row.value().factors().getOrDefault(LEVEL, "");
            values.computeIfAbsent(level, any -> new LinkedHashMap<>())
                    .computeIfAbsent(laboratory(row.value()), any -> new ArrayList<>())
                    .add(row.value().value());
            begins.putIfAbsent(level, sheet.place(row));
        }
        List<Level> levels = new ArrayList<>();
        begins.forEach((level, place) -> levels.add(
                new Level(level, place, compare(laboratories, values.getOrDefault(level, Map.of()), division))));
        return new LaboratoryLevels(List.copyOf(levels), laboratories);
    }

    private static String laboratory(ValueRow row) {
        return row.factors().getOrDefault(LABORATORY, "");
    }

    private static LaboratoryComparison compare(
            List<String> laboratories, Map<String, List<Double>> results, double division) {
        return LaboratoryComparison.of(
                division,
                laboratories.stream()
                        .filter(results::containsKey)
                        .map(name -> LaboratoryComparison.Cell.of(
                                name,
                                results.getOrDefault(name, List.of()).stream()
                                        .mapToDouble(Double::doubleValue)
                                        .toArray()))
                        .toList());
    }

    /**
     * Returns how far each laboratory lies from the others, pooled over the levels.
     *
     * @param division the smallest step of the scale, in the unit of the values, at least 0
     */
    public Judged<List<LaboratoryBias>> biases(double division) {
        return LaboratoryBias.of(levels.stream().map(Level::comparison).toList(), division);
    }

    /** Returns what is doubtful about these levels. */
    public List<Problem> doubts() {
        List<Problem> doubts = new ArrayList<>();
        for (Level level : levels) {
            LaboratoryComparison comparison = level.comparison();
            List<String> there = comparison.cells().stream()
                    .map(LaboratoryComparison.Cell::laboratory)
                    .toList();
            if (there.size() == 1) {
                doubts.add(Problem.warning(LABORATORY, "study.one-laboratory", level.name())
                        .at(level.begins()));
            }
            if (there.size() == 2) {
                doubts.add(Problem.warning(LABORATORY, "study.two-laboratories", level.name())
                        .at(level.begins()));
            }
            if (there.size() < laboratories.size()) {
                String absent = laboratories.stream()
                        .filter(name -> !there.contains(name))
                        .collect(Collectors.joining(", "));
                doubts.add(Problem.warning(LABORATORY, "study.laboratories-absent", level.name(), absent)
                        .at(level.begins()));
            }
            if (comparison.isBetweenNegative()) {
                doubts.add(Problem.warning(LEVEL, "study.between-negative", level.name())
                        .at(level.begins()));
            }
        }
        return doubts;
    }
}
