package porebench.command.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.ValueFile;
import porebench.evidence.study.ValueRow;
import porebench.method.Place;
import porebench.method.Problem;

/**
 * The rows of a sheet by their subgroup, subgroups in the order in which they first stand there.
 *
 * @param names the subgroups
 * @param values the values of each
 * @param lines the line on which each begins
 */
record Subgroups(List<String> names, List<double[]> values, List<Integer> lines) {
    static final String COLUMN = ValueFile.SUBGROUPS.asked().get(0);

    /** Puts rows together that have the same text in a column. */
    static Subgroups of(Sheet<ValueRow> sheet, String column) {
        Map<String, List<Double>> values = new LinkedHashMap<>();
        Map<String, Integer> lines = new LinkedHashMap<>();
        for (Sheet.Row<ValueRow> row : sheet.rows()) {
            String name = row.value().factors().getOrDefault(column, "");
            values.computeIfAbsent(name, any -> new ArrayList<>())
                    .add(row.value().value());
            lines.putIfAbsent(name, row.line());
        }
        return new Subgroups(
                List.copyOf(values.keySet()),
                values.values().stream()
                        .map(group ->
                                group.stream().mapToDouble(Double::doubleValue).toArray())
                        .toList(),
                List.copyOf(lines.values()));
    }

    /** Returns what keeps these subgroups from being charted in some kind. */
    List<Problem> check(ChartKind kind, String file) {
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            int size = values.get(i).length;
            String name = names.get(i);
            Place place = Place.of(file, lines.get(i));
            if (kind == ChartKind.INDIVIDUALS && size > 1) {
                problems.add(Problem.error(COLUMN, "command.subgroup-not-single", name, size)
                        .at(place));
            } else if ((kind == ChartKind.MEAN_RANGE || kind == ChartKind.MEAN_SD) && size < 2) {
                problems.add(
                        Problem.error(COLUMN, "command.subgroup-single", name).at(place));
            }
        }
        return problems;
    }

    /** Returns all values in the order of the subgroups. */
    double[] all() {
        return values.stream().flatMapToDouble(Arrays::stream).toArray();
    }
}
