package porebench.exchange.schema;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import porebench.exchange.sheet.Format;
import porebench.exchange.text.Headings;
import porebench.record.column.CellShape;
import porebench.record.column.Column;
import porebench.record.column.FixedUnit;
import porebench.record.column.NumberRange;

/**
 * The table schema of a format.
 *
 * <p>Source of the form: Frictionless Table Schema, version 1 (recalled; checked by a validator in a test). Differences from
 * the source: a number's {@code unit}, or the {@code unitField} beside it, are properties of their own, which the form allows.
 */
final class SheetSchema {
    /** How a field of each kind is called there. */
    static final Map<CellShape.Kind, String> TYPES = Map.of(
            CellShape.Kind.TEXT, "string",
            CellShape.Kind.SEVERAL, "string",
            CellShape.Kind.CHOICE, "string",
            CellShape.Kind.NUMBER, "number",
            CellShape.Kind.WHOLE, "integer",
            CellShape.Kind.YES_NO, "boolean",
            CellShape.Kind.DAY, "date",
            CellShape.Kind.MOMENT, "datetime");

    private final Format<?> format;
    private final FormatsPage.Section words;

    SheetSchema(Format<?> format, FormatsPage.Section words) {
        this.format = format;
        this.words = words;
    }

    /** Returns the schema of a file with some headings. */
    Map<String, Object> of(Headings headings) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put(
                "fields", headings.all().stream().map(heading -> field(heading)).toList());
        schema.put("missingValues", List.of(""));
        if (!format.key().isEmpty()) {
            schema.put("primaryKey", format.key());
        }
        return schema;
    }

    private Map<String, Object> field(String heading) {
        List<Column<?, ?>> ofRow = headed(format.stated().ofRow(), heading);
        List<Column<?, ?>> ofFirst = headed(format.stated().ofFirst(), heading);
        if (!ofRow.isEmpty()) {
            return ofCell(heading, ofRow, isInEveryRow(heading));
        }
        if (!ofFirst.isEmpty()) {
            return ofCell(heading, ofFirst, false);
        }
        Set<String> units = new LinkedHashSet<>();
        boolean isNeeded = false;
        for (Column<?, ?> column : stated()) {
            int place = column.unitHeadings().indexOf(heading);
            if (place >= 0) {
                units.addAll(column.type().units());
                isNeeded |= place == column.unitHeadings().size() - 1
                        && isNeeded(column)
                        && format.stated().ofRow().contains(column)
                        && isInEveryRow(heading);
            }
        }
        if (!units.isEmpty()) {
            return ofUnit(heading, List.copyOf(units), isNeeded);
        }
        if (heading.equals(Headings.SIMULATED)) {
            return simulated();
        }
        throw new IllegalStateException("heading must be that of a column, but is " + heading);
    }

    /** Where rows are of several kinds, all of them state which record they belong to, and their kind. */
    private boolean isInEveryRow(String heading) {
        return !format.stated().kinds()
                || format.stated().ofRow().stream()
                        .limit(2)
                        .anyMatch(column -> column.heading().equals(heading));
    }

    private List<Column<?, ?>> stated() {
        return Stream.concat(format.stated().ofRow().stream(), format.stated().ofFirst().stream())
                .toList();
    }

    private static List<Column<?, ?>> headed(List<Column<?, ?>> columns, String heading) {
        return columns.stream()
                .filter(column -> column.heading().equals(heading))
                .toList();
    }

    /** A cell may be empty where that means something, or where the record may be without it. */
    private static boolean isNeeded(Column<?, ?> column) {
        return column.isNeeded()
                && column.blank().isEmpty()
                && CellShape.of(column).isBlankRefused();
    }

    private Map<String, Object> ofCell(String heading, List<Column<?, ?>> columns, boolean isInEveryRow) {
        Column<?, ?> column = columns.get(0);
        CellShape shape =
                columns.stream().map(CellShape::of).reduce(CellShape::or).orElseThrow();
        Map<String, Object> field = named(heading, TYPES.getOrDefault(shape.kind(), "string"));
        if (shape.kind() == CellShape.Kind.MOMENT) {
            // Seconds may be there or not, which no pattern of the form says.
            field.put("format", "any");
        }
        if (shape.kind() == CellShape.Kind.YES_NO) {
            yesNo(field);
        }
        FixedUnit.of(column).ifPresent(unit -> field.put("unit", symbol(unit.kept())));
        if (column.hasUnit()) {
            List<String> units = column.unitHeadings();
            field.put("unitField", units.size() == 1 ? units.get(0) : units);
        }
        Map<String, Object> constraints = new LinkedHashMap<>();
        if (isInEveryRow && isNeeded(column)) {
            constraints.put("required", true);
        }
        if (List.of(heading).equals(format.key())) {
            constraints.put("unique", true);
        }
        bounds(shape.range(), constraints);
        if (!shape.words().isEmpty()) {
            constraints.put("enum", shape.words());
        }
        return constrained(field, constraints);
    }

    private static void bounds(Optional<NumberRange> range, Map<String, Object> constraints) {
        range.ifPresent(bounds -> {
            if (bounds.lowInclusive().compareTo(NumberRange.ANY.lowInclusive()) > 0) {
                constraints.put("minimum", bounds.lowInclusive());
            }
            // Beyond is what nobody means: a slip of the pen, and no limit of a quantity.
            if (bounds.highInclusive().compareTo(NumberRange.NOT_NEGATIVE.highInclusive()) < 0) {
                constraints.put("maximum", bounds.highInclusive());
            }
        });
    }

    static String symbol(String kept) {
        return kept.equals("pct") ? "%" : kept;
    }

    private Map<String, Object> ofUnit(String heading, List<String> units, boolean isNeeded) {
        Map<String, Object> constraints = new LinkedHashMap<>();
        if (isNeeded) {
            constraints.put("required", true);
        }
        constraints.put("enum", units);
        return constrained(named(heading, "string"), constraints);
    }

    /** The column by which the files of a training book say that they come from one. */
    static Map<String, Object> simulated() {
        Map<String, Object> field = new LinkedHashMap<>();
        field.put("name", Headings.SIMULATED);
        field.put("type", "boolean");
        field.put("description", "whether the row comes from a training book, in which nothing was measured");
        yesNo(field);
        return field;
    }

    private static void yesNo(Map<String, Object> field) {
        field.put("trueValues", List.of("yes"));
        field.put("falseValues", List.of("no"));
    }

    static Map<String, Object> constrained(Map<String, Object> field, Map<String, Object> constraints) {
        if (!constraints.isEmpty()) {
            field.put("constraints", constraints);
        }
        return field;
    }

    private Map<String, Object> named(String heading, String type) {
        Map<String, Object> field = new LinkedHashMap<>();
        field.put("name", heading);
        field.put("type", type);
        field.put("description", words.column(heading).words());
        return field;
    }
}
