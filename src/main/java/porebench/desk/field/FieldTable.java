package porebench.desk.field;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import porebench.desk.form.Days;
import porebench.desk.form.Numbers;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.method.Texts;
import porebench.record.id.MeterId;

/** The readings on view, a line each: what was read, what was subtracted, what is reported and how it is judged. */
final class FieldTable {
    /** More readings than this scroll within the table. */
    private static final int MOST_ROWS = 14;

    private final Texts texts;
    private final Numbers numbers;
    private final FieldWords words;
    private final RowTable<FieldLine> table;
    private final Map<FieldLine, String> said = new IdentityHashMap<>();
    private List<FieldLine> listed = List.of();

    FieldTable(FieldsModel model) {
        this.texts = model.texts();
        this.numbers = model.desk().tools().numbers();
        this.words = model.words();
        table = new RowTable<>("readings.table", texts.get("page.title"), columns());
        table.setMostRows(MOST_ROWS);
    }

    RowTable<FieldLine> component() {
        return table;
    }

    /** Shows lines; those that are on view already are not shown anew for a letter that is typed. */
    void show(List<FieldLine> lines) {
        if (lines != listed) {
            listed = lines;
            said.clear();
            table.show(lines);
        }
    }

    /** Says why, as {@link FieldWords#notes} does; sorting and filtering thousands of lines asks for it many times. */
    private String why(FieldLine line) {
        return Objects.requireNonNull(said.computeIfAbsent(line, one -> String.join(" ", words.notes(one))));
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
                new ShownColumn<>(texts.get("column.verdict"), 150, words::verdict),
                new ShownColumn<>(texts.get("column.why"), 260, this::why));
    }

    private ShownColumn<FieldLine> air(String key, int width, Function<FieldLine.Air, String> said) {
        return new ShownColumn<FieldLine>(
                        texts.get(key), width, line -> line.counted().map(said).orElse(""))
                .number();
    }
}
