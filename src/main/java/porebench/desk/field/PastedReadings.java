package porebench.desk.field;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import porebench.desk.form.DraftReader;
import porebench.desk.form.TypedDraft;
import porebench.evidence.intake.Sheet;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.column.Column;
import porebench.record.column.FieldReadingColumns;
import porebench.record.id.ReadingId;

/**
 * Readings that were copied in a spreadsheet: a row a reading, cells between tabulators.
 *
 * <p>Where the first row names columns, by the names of the file or of the form, those are taken in their order; else the order is mix,
 * time, truck, meter, reading, density, temperature, remarks. Numbers have the decimal sign of the person, a unit may stand behind its
 * number, and what has none is in the units of the form. A reading is named after its mix, minute and truck, so that rows pasted twice
 * are the same readings.
 */
final class PastedReadings {
    /** The columns in the order of rows without headings. */
    static final List<Column<FieldReading, ?>> ORDER = List.of(
            FieldReadingColumns.MIX,
            FieldReadingColumns.READ_AT,
            FieldReadingColumns.TRUCK,
            FieldReadingColumns.METER,
            FieldReadingColumns.GAUGE,
            FieldReadingColumns.DENSITY,
            FieldReadingColumns.TEMPERATURE,
            FieldReadingColumns.REMARKS);

    private static final String UNIT = "_unit";
    private static final String BETWEEN = "\t";
    private static final int LONGEST_TRUCK = 20;
    /** A moment as spreadsheets write it: an hour of one digit, seconds that may be there. */
    private static final Pattern MOMENT =
            Pattern.compile("(\\d{4}-\\d{2}-\\d{2})[ T](\\d{1,2}):(\\d{2})(?::(\\d{2})(?:\\.\\d*)?)?");

    private final FieldEntry entry;
    private final String name;
    private final List<Sheet.Row<Kept>> rows = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private List<Slot> order = ORDER.stream().map(Slot::of).toList();

    /**
     * What stands in a cell of each row.
     *
     * @param column the column; empty for one that is not known
     * @param isUnit whether it is the unit of that column
     */
    private record Slot(Optional<Column<FieldReading, ?>> column, boolean isUnit) {
        static Slot of(Column<FieldReading, ?> column) {
            return new Slot(Optional.of(column), false);
        }

        TypedDraft put(TypedDraft draft, String cell) {
            return column.map(known ->
                            isUnit ? cell.isEmpty() ? draft : draft.withUnit(known, cell) : draft.with(known, cell))
                    .orElse(draft);
        }
    }

    private PastedReadings(FieldEntry entry, String name) {
        this.entry = entry;
        this.name = name;
    }

    /**
     * Reads rows.
     *
     * @param entry the form, whose words, numbers and units hold for the rows
     * @param name what the rows are called where their problems are told
     * @param text the rows as they were copied
     * @return the readings that could be read, with every problem at its row
     */
    static Sheet<Kept> of(FieldEntry entry, String name, String text) {
        PastedReadings pasted = new PastedReadings(entry, name);
        pasted.read(text.lines().toList());
        return new Sheet<>(name, pasted.rows, pasted.problems);
    }

    private void read(List<String> lines) {
        for (int at = 0; at < lines.size(); at++) {
            List<String> cells = Stream.of(lines.get(at).split(BETWEEN, -1))
                    .map(String::strip)
                    .toList();
            if (cells.stream().allMatch(String::isEmpty)) {
                continue;
            }
            if (at == 0 && isHeading(cells)) {
                order = cells.stream().map(this::named).toList();
                continue;
            }
            row(at + 1, cells);
        }
    }

    /** A row is one of headings where its cells name columns by their names. */
    private boolean isHeading(List<String> cells) {
        return cells.stream().filter(cell -> named(cell).column().isPresent()).count() >= 2;
    }

    private Slot named(String heading) {
        String sought = heading.toLowerCase(Locale.ROOT);
        for (Column<FieldReading, ?> column : FieldReadingColumns.ALL.all()) {
            if (column.name().equals(sought)
                    || words(column).filter(sought::equals).isPresent()) {
                return Slot.of(column);
            }
            if (column.hasUnit() && sought.equals(column.name() + UNIT)) {
                return new Slot(Optional.of(column), true);
            }
        }
        return new Slot(Optional.empty(), false);
    }

    private Optional<String> words(Column<FieldReading, ?> column) {
        return ORDER.contains(column) ? Optional.of(entry.words(column).toLowerCase(Locale.ROOT)) : Optional.empty();
    }

    private void row(int line, List<String> cells) {
        TypedDraft draft = entry.units();
        for (int at = 0; at < cells.size(); at++) {
            if (at < order.size() && order.get(at).column().isPresent()) {
                draft = order.get(at).put(draft, cells.get(at));
            } else if (!cells.get(at).isEmpty()) {
                problems.add(Problem.warning("row", "readings.cell-unknown", cells.get(at))
                        .at(Place.of(name, line, at + 1)));
            }
        }
        read(line, draft);
    }

    private void read(int line, TypedDraft typed) {
        Matcher moment = MOMENT.matcher(typed.text(FieldReadingColumns.READ_AT));
        boolean isMoment = moment.matches();
        TypedDraft draft = isMoment
                ? typed.with(
                        FieldReadingColumns.READ_AT,
                        moment.group(1) + " " + (moment.group(2).length() == 1 ? "0" : "") + moment.group(2) + ":"
                                + moment.group(3))
                : typed;
        boolean isNamed = !draft.text(FieldReadingColumns.ID).isEmpty();
        if (!isNamed) {
            draft = draft.with(FieldReadingColumns.ID, FieldNames.meanwhile(draft));
        }
        DraftReader reader = new DraftReader(draft, entry.desk().tools().numbers(), this::saidOf);
        Optional<FieldReading> read = FieldReadingColumns.ALL.read(reader);
        reader.problems().forEach(problem -> problems.add(problem.at(place(line, problem))));
        if (read.isPresent() && !Problem.anyError(reader.problems())) {
            FieldReading reading = read.get();
            LocalDateTime at = isMoment && moment.group(4) != null
                    ? reading.readAt().withSecond(Integer.parseInt(moment.group(4)))
                    : reading.readAt();
            rows.add(new Sheet.Row<>(
                    line, isNamed ? reading.at(at) : reading.at(at).named(name(reading))));
        }
    }

    private String saidOf(Column<?, ?> column) {
        return ORDER.contains(column) ? entry.words(column) : column.name();
    }

    private Place place(int line, Problem problem) {
        for (int at = 0; at < order.size(); at++) {
            if (order.get(at)
                    .column()
                    .filter(column -> column.field().equals(problem.field()))
                    .isPresent()) {
                return Place.of(name, line, at + 1);
            }
        }
        return Place.of(name, line);
    }

    private static ReadingId name(FieldReading reading) {
        String truck = reading.truck().replaceAll("[^\\p{L}\\p{N}]+", "-");
        return new ReadingId(
                FieldNames.of(reading) + "-" + truck.substring(0, Math.min(LONGEST_TRUCK, truck.length())));
    }
}
