package porebench.desk.field;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.desk.form.Days;
import porebench.desk.form.Numbers;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.record.id.MeterId;

/** The readings on view, a line each: what was read, what was subtracted, what is reported and how it is judged. */
final class FieldTable {
    /** More readings than this scroll within the table. */
    private static final int MOST_ROWS = 14;

    private final Texts texts;
    private final Numbers numbers;
    private final ProblemText problemText;
    private final RowTable<FieldLine> table;

    FieldTable(FieldsModel model) {
        this.texts = model.texts();
        this.numbers = model.desk().tools().numbers();
        this.problemText = model.desk().tools().problemText();
        table = new RowTable<>("readings.table", texts.get("page.title"), columns());
        table.setMostRows(MOST_ROWS);
    }

    RowTable<FieldLine> component() {
        return table;
    }

    private List<ShownColumn<FieldLine>> columns() {
        return List.of(
                new ShownColumn<FieldLine>(
                                texts.get("column.read-at"),
                                136,
                                line -> Days.show(line.reading().readAt()))
                        .sortedBy(line -> line.reading().readAt()),
                new ShownColumn<FieldLine>(
                                texts.get("column.mix"),
                                76,
                                line -> line.reading().mixId().text())
                        .sortedBy(line -> line.reading().mixId()),
                new ShownColumn<>(
                        texts.get("column.truck"), 62, line -> line.reading().truck()),
                new ShownColumn<>(
                        texts.get("column.meter"),
                        60,
                        line -> line.reading().meterId().map(MeterId::text).orElse("")),
                new ShownColumn<FieldLine>(
                                texts.get("column.gauge"),
                                66,
                                line -> numbers.show(line.reading().gaugePercent()))
                        .number()
                        .sortedBy(line -> line.reading().gaugePercent()),
                air("column.factor", 60, air -> numbers.show(air.factorPercent())),
                air("column.revision", 50, air -> Integer.toString(air.revision())),
                air("column.air", 60, air -> numbers.show(air.reportedPercent())),
                air(
                        "column.uncertainty",
                        50,
                        air -> air.expandedPercent().map(numbers::show).orElse("")),
                new ShownColumn<>(texts.get("column.verdict"), 130, this::verdict),
                new ShownColumn<>(texts.get("column.why"), 260, this::why));
    }

    private ShownColumn<FieldLine> air(String key, int width, Function<FieldLine.Air, String> words) {
        return new ShownColumn<FieldLine>(
                        texts.get(key), width, line -> line.now().map(words).orElse(""))
                .number();
    }

    /** Says how a reading is judged; of one that does not count or is marked, that. */
    String verdict(FieldLine line) {
        if (line.isStruck()) {
            return texts.get("verdict.struck");
        }
        return line.now().map(FieldLine.Air::verdict).orElseGet(() -> texts.get("verdict.marked"));
    }

    /** Says why a reading is struck or marked, and what was said at the time where that differs. */
    String why(FieldLine line) {
        Optional<String> struck = line.reading().struckBecause();
        if (struck.isPresent()) {
            return struck.get();
        }
        String marks = line.marks().stream().map(problemText::say).collect(Collectors.joining(" "));
        return (line.then().map(this::then).orElse("") + " " + marks).strip();
    }

    private String then(FieldLine.Air air) {
        return texts.get(
                "why.then", numbers.show(air.reportedPercent()), Integer.toString(air.revision()), air.verdict());
    }
}
