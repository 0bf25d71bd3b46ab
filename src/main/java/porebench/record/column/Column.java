package porebench.record.column;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One column of a kind of record.
 *
 * @param name its name in the lab book
 * @param type what stands in it
 * @param of where in a record its value is; empty when the record does not state it
 * @param isNeeded whether every record states it
 * @param sinceStep the schema step since which the lab book has it
 * @param heading its name in a file
 * @param isExtra whether a file may be without it
 * @param unitHeadings the columns of a file in which the unit of its number may stand, the first that states one counting;
 *     none where its type has no unit. The last one is needed where the column is, others may be absent.
 * @param blank what an empty cell of a file means; nothing where it means nothing
 * @param isLeftBlank whether a file leaves the cell empty for what an empty cell means
 * @param field its name in problems and forms
 * @param isNeededBeside whether it must be stated because of what other columns state
 * @param <R> the records
 * @param <V> the values
 */
public record Column<R, V>(
        String name,
        CellType<V> type,
        Function<R, Optional<V>> of,
        boolean isNeeded,
        int sinceStep,
        String heading,
        boolean isExtra,
        List<String> unitHeadings,
        Optional<V> blank,
        boolean isLeftBlank,
        String field,
        Predicate<CellReader> isNeededBeside) {
    private static final String UNIT = "_unit";

    public Column {
        unitHeadings = List.copyOf(unitHeadings);
    }

    /** A column that every record states. */
    public static <R, V> Column<R, V> needed(String name, CellType<V> type, Function<R, V> of) {
        return first(name, type, record -> Optional.of(of.apply(record)), true);
    }

    /** A column that a record may leave empty. */
    public static <R, V> Column<R, V> any(String name, CellType<V> type, Function<R, Optional<V>> of) {
        return first(name, type, of, false);
    }

    /** A column that says yes where something holds, and is empty where it does not; last in a file, which may be without it. */
    public static <R> Column<R, Boolean> mark(String name, Function<R, Boolean> of) {
        return Column.<R, Boolean>any(
                        name,
                        CellType.yesNo(),
                        record -> Optional.of(of.apply(record)).filter(yes -> yes))
                .extra();
    }

    private static <R, V> Column<R, V> first(
            String name, CellType<V> type, Function<R, Optional<V>> of, boolean isNeeded) {
        List<String> units = type.units().isEmpty() ? List.of() : List.of(name + UNIT);
        return new Column<>(
                name,
                type,
                of,
                isNeeded,
                1,
                name,
                false,
                units,
                Optional.empty(),
                false,
                camelCase(name),
                any -> false);
    }

    private static String camelCase(String name) {
        StringBuilder camel = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c != '_') {
                camel.append(i > 0 && name.charAt(i - 1) == '_' ? Character.toUpperCase(c) : c);
            }
        }
        return camel.toString();
    }

    /** The same column, in the lab book since a schema step. */
    public Column<R, V> since(int step) {
        return new Column<>(
                name,
                type,
                of,
                isNeeded,
                step,
                heading,
                isExtra,
                unitHeadings,
                blank,
                isLeftBlank,
                field,
                isNeededBeside);
    }

    /** The same column, called otherwise in a file. */
    public Column<R, V> headed(String other) {
        List<String> units = unitHeadings.isEmpty() ? unitHeadings : List.of(other + UNIT);
        return new Column<>(
                name,
                type,
                of,
                isNeeded,
                sinceStep,
                other,
                isExtra,
                units,
                blank,
                isLeftBlank,
                camelCase(other),
                isNeededBeside);
    }

    /** The same column, which a file may be without. */
    public Column<R, V> extra() {
        return new Column<>(
                name,
                type,
                of,
                isNeeded,
                sinceStep,
                heading,
                true,
                unitHeadings,
                blank,
                isLeftBlank,
                field,
                isNeededBeside);
    }

    /** The same column, its unit in other columns of a file, the first that states one counting. */
    public Column<R, V> unitIn(String... headings) {
        return new Column<>(
                name,
                type,
                of,
                isNeeded,
                sinceStep,
                heading,
                isExtra,
                List.of(headings),
                blank,
                isLeftBlank,
                field,
                isNeededBeside);
    }

    /** The same column, where an empty cell of a file has a meaning. */
    public Column<R, V> blankMeans(V value) {
        return new Column<>(
                name,
                type,
                of,
                isNeeded,
                sinceStep,
                heading,
                isExtra,
                unitHeadings,
                Optional.of(value),
                false,
                field,
                isNeededBeside);
    }

    /** The same column, where an empty cell of a file has a meaning, and a file is written so. */
    public Column<R, V> blankIs(V value) {
        return new Column<>(
                name,
                type,
                of,
                isNeeded,
                sinceStep,
                heading,
                isExtra,
                unitHeadings,
                Optional.of(value),
                true,
                field,
                isNeededBeside);
    }

    /** The same column, which must be stated where other columns say so. */
    public Column<R, V> neededWhere(Predicate<CellReader> beside) {
        return new Column<>(
                name, type, of, isNeeded, sinceStep, heading, isExtra, unitHeadings, blank, isLeftBlank, field, beside);
    }

    /** The same column, called otherwise in problems and forms. */
    public Column<R, V> called(String other) {
        return new Column<>(
                name,
                type,
                of,
                isNeeded,
                sinceStep,
                heading,
                isExtra,
                unitHeadings,
                blank,
                isLeftBlank,
                other,
                isNeededBeside);
    }

    /** Returns the name of the lab book's column for the unit beside its number. */
    public String unitName() {
        return name + UNIT;
    }

    /** Returns the name in forms of the unit beside its number, which columns share whose unit stands in one column of a file. */
    public String unitField() {
        String last = unitHeadings.isEmpty() ? "" : unitHeadings.get(unitHeadings.size() - 1);
        return last.isEmpty() || last.equals(heading + UNIT) ? field + "Unit" : camelCase(last);
    }

    /** Returns the symbols of the units in which its number may be typed; none where it has no unit. */
    public List<String> unitsTyped() {
        return hasUnit()
                ? type.units()
                : FixedUnit.of(this).map(FixedUnit::symbols).orElse(List.of());
    }

    /** Returns whether it only says yes where something holds. */
    public boolean isMark() {
        return isExtra && !isNeeded && type.isYesNo();
    }

    /** Returns whether the number of this column has its unit beside it. */
    public boolean hasUnit() {
        return !unitHeadings.isEmpty();
    }

    /** Puts what a record states into its cells. */
    public void write(R record, CellWriter to) {
        of.apply(record).ifPresent(value -> type.write(this, value, to));
    }

    /** Reads its cells; empty when they state nothing or what they state is refused. */
    public Optional<V> read(CellReader from) {
        if (from.states(this)) {
            return type.read(this, from);
        }
        boolean mayBeEmpty = (blank.isPresent() || !isNeeded) && !isNeededBeside.test(from);
        return mayBeEmpty ? blank : type.read(this, from);
    }
}
