package porebench.desk.meter;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import porebench.desk.form.Days;
import porebench.desk.form.DraftReader;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.evidence.MeterStory;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.StandardAtmosphere;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.BowlFills;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.DialCheck;
import porebench.method.meter.ImpliedChamber;
import porebench.quantity.Mass;
import porebench.quantity.Pressure;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.record.CalibrationDay;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.Column;
import porebench.record.column.NumberRange;
import porebench.record.column.Part;
import porebench.record.id.CalibrationId;

/**
 * Reads a draft: typed text becomes a calibration, and what is wrong with it becomes problems under the form's fields.
 *
 * <p>Rows of a table that are filled in are worked out although another is not yet, so that results show while a person types.
 */
final class CalibrationReader {
    private final TypedDraft draft;
    private final MeterStory story;
    private final Meter meter;
    private final LocalDate today;
    private final DraftReader typed;
    private final List<Problem> found = new ArrayList<>();
    /** The rows of the table that was read last and could be used; problems count these from 0. */
    private List<Integer> usedRows = List.of();

    private boolean isHalfTyped;

    /**
     * Begins reading.
     *
     * @param story the meter with its other calibrations
     * @param today no calibration can be of a later day
     */
    CalibrationReader(TypedDraft draft, MeterStory story, Numbers numbers, CalibrationModel words, LocalDate today) {
        this.draft = CalibrationFields.parted(draft, numbers);
        this.story = story;
        this.meter = story.meter().value();
        this.today = today;
        this.typed = new DraftReader(this.draft, numbers, words::words, words::cellWords);
    }

    CalibrationReading read() {
        Optional<CalibrationId> id = CalibrationColumns.ID.read(typed);
        Optional<MeterCalibration.Reason> reason = CalibrationColumns.REASON.read(typed);
        Optional<LocalDate> date = date();
        typed.require(CalibrationColumns.BY);
        Optional<BigDecimal> elevation = elevation();
        Optional<BowlFills> fills = bowl();
        Optional<BowlCalibration> bowl =
                fills.flatMap(weighed -> told("bowl.", BowlCalibration.of(weighed, story.profile())));
        LocalDate day = date.orElse(today);
        Volume volume = bowl.map(BowlCalibration::volume).orElseGet(() -> story.bowlOn(day));
        Optional<DialCheck> check = meter.type() == MeterType.B ? dial() : Optional.empty();
        Optional<DialCalibration> dial = check.flatMap(read -> told(
                "dial.",
                DialCalibration.of(read, volume, meter.divisionPercent().doubleValue(), story.profile())));
        Optional<ColumnCheck> levels = meter.type() == MeterType.A ? column(elevation) : Optional.empty();
        Optional<ColumnCalibration> column =
                levels.flatMap(read -> told("column.", ColumnCalibration.of(read, story.profile())));
        if (isNothingMeasured() && !reason.orElseThrow().isWorthANote()) {
            found.add(Problem.error("reason", "meter.nothing-measured").of(Problem.Kind.NOT_MEASURED));
        }
        List<Problem> problems = new ArrayList<>(typed.problems());
        problems.addAll(found);
        Optional<MeterCalibration> calibration = Problem.anyError(problems)
                ? Optional.empty()
                : Optional.of(new MeterCalibration(
                        id.orElseThrow(),
                        meter.id(),
                        meter.type(),
                        date.orElseThrow(),
                        typed.text(CalibrationColumns.BY),
                        reason.orElseThrow(),
                        elevation,
                        fills,
                        check,
                        levels,
                        typed.text(CalibrationColumns.REMARKS)));
        return new CalibrationReading(
                calibration,
                new CalibrationResults(
                        bowl.filter(any -> isReadable("bowl.")),
                        dial.filter(any -> isReadable("bowl.", "dial.")),
                        column.filter(any -> isReadable("column."))),
                drift(dial.filter(any -> isReadable("bowl.", "dial.")), day),
                problems);
    }

    /** Returns whether every number typed in some parts can be read: no figure is shown beside one that is refused. */
    private boolean isReadable(String... parts) {
        return typed.problems().stream()
                .filter(problem -> problem.kind() != Problem.Kind.NOT_YET)
                .noneMatch(problem -> List.of(parts).stream().anyMatch(problem.field()::startsWith));
    }

    private Optional<ImpliedChamber.Drift> drift(Optional<DialCalibration> dial, LocalDate day) {
        Optional<ImpliedChamber> before = story.dialOn(day).flatMap(DialCalibration::chamber);
        return dial.flatMap(DialCalibration::chamber)
                .flatMap(now -> before.map(earlier -> now.since(earlier, story.profile())));
    }

    private Optional<LocalDate> date() {
        Optional<LocalDate> date = CalibrationColumns.CALIBRATED_ON.read(typed);
        String field = CalibrationColumns.CALIBRATED_ON.field();
        date.flatMap(day -> Days.checkYear(field, day)).ifPresent(found::add);
        date.flatMap(day -> CalibrationDay.check(field, day, today)).ifPresent(found::add);
        return date;
    }

    private Optional<BigDecimal> elevation() {
        Optional<BigDecimal> metres = typed.states(CalibrationColumns.ELEVATION)
                ? typed.number(CalibrationColumns.ELEVATION, NumberRange.ANY)
                : Optional.empty();
        metres.filter(read -> !StandardAtmosphere.covers(read.doubleValue()))
                .ifPresent(read -> found.add(Problem.error(
                        "elevation",
                        "meter.elevation-out-of-range",
                        read,
                        StandardAtmosphere.LOWEST_METRES,
                        StandardAtmosphere.HIGHEST_METRES)));
        return metres;
    }

    private boolean isNothingMeasured() {
        boolean noDial = meter.type() == MeterType.A || !hasDial();
        boolean noColumn = meter.type() == MeterType.B || !hasText(CalibrationFields.COLUMN);
        return !hasBowl() && noDial && noColumn;
    }

    private boolean hasBowl() {
        return hasRows(CalibrationColumns.FILLS)
                || hasText(CalibrationFields.BOWL.stream()
                        .filter(column -> column != CalibrationColumns.BUOYANCY)
                        .toList());
    }

    private boolean hasDial() {
        return hasRows(CalibrationColumns.POINTS)
                || hasText(CalibrationFields.VESSEL)
                || hasText(CalibrationFields.DIAL);
    }

    private boolean hasRows(Column<?, ?> column) {
        return typedRows(column) > 0;
    }

    private long typedRows(Column<?, ?> column) {
        return draft.rows(column).stream().filter(row -> !row.texts().isEmpty()).count();
    }

    private boolean hasText(List<Column<MeterCalibration, ?>> columns) {
        return CalibrationFields.isTyped(draft, columns);
    }

    private Optional<BowlFills> bowl() {
        isHalfTyped = false;
        if (!hasBowl()) {
            return Optional.empty();
        }
        return Optional.of(new BowlFills(
                used(CalibrationColumns.FILLS, CalibrationColumns.OF_FILL),
                draft.isYes(CalibrationColumns.BUOYANCY),
                CalibrationColumns.AIR_TEMPERATURE.read(typed),
                CalibrationColumns.AIR_PRESSURE.read(typed),
                CalibrationColumns.DIAMETER.read(typed),
                CalibrationColumns.HEIGHT.read(typed)));
    }

    private <P> List<P> used(Column<?, ?> column, Part<P> part) {
        SortedMap<Integer, P> read = typed.rows(column, part);
        usedRows = List.copyOf(read.keySet());
        isHalfTyped = read.size() < typedRows(column);
        return List.copyOf(read.values());
    }

    private Optional<DialCheck> dial() {
        isHalfTyped = false;
        if (!hasDial()) {
            return Optional.empty();
        }
        return Optional.of(new DialCheck(
                CalibrationColumns.VESSEL_WATER.read(typed),
                CalibrationColumns.DIAL_WATER.read(typed),
                used(CalibrationColumns.POINTS, CalibrationColumns.OF_POINT),
                CalibrationColumns.INITIAL_LINE.read(typed),
                CalibrationColumns.LEAK_MARKS.read(typed),
                CalibrationColumns.CHAMBER.read(typed),
                CalibrationColumns.INITIAL_PRESSURE.read(typed)));
    }

    private Optional<ColumnCheck> column(Optional<BigDecimal> elevation) {
        isHalfTyped = false;
        if (!hasText(CalibrationFields.COLUMN)) {
            return Optional.empty();
        }
        typed.require(CalibrationColumns.ELEVATION);
        CalibrationFields.COLUMN.forEach(typed::require);
        Optional<Typed<Mass>> vessel = CalibrationColumns.COLUMN_VESSEL_WATER.read(typed);
        Optional<Typed<Mass>> bowl = CalibrationColumns.BOWL_WATER.read(typed);
        Optional<BigDecimal> expansion = CalibrationColumns.EXPANSION.read(typed);
        Optional<Typed<Pressure>> working = CalibrationColumns.WORKING_PRESSURE.read(typed);
        boolean isWhole = vessel.isPresent()
                && bowl.isPresent()
                && expansion.isPresent()
                && working.isPresent()
                && elevation.isPresent();
        return isWhole
                ? Optional.of(
                        new ColumnCheck(vessel.get(), bowl.get(), expansion.get(), working.get(), elevation.get()))
                : Optional.empty();
    }

    /** Returns what a part tells; its problems go under the form's fields, with the row as a person counts it. */
    private <T> Optional<T> told(String part, Answer<T> answer) {
        for (Problem problem : answer.problems()) {
            String field = under(part, problem.field());
            boolean isOfTheWhole =
                    problem.field().equals("fills") || problem.field().equals("points");
            boolean isUntrueYet = isHalfTyped && isOfTheWhole && problem.isError();
            boolean isSaid = found.stream().anyMatch(other -> other.field().equals(field) && field.equals("elevation"));
            if (!isUntrueYet
                    && !isSaid
                    && typed.problems().stream()
                            .noneMatch(wrong -> wrong.field().equals(field))) {
                found.add(numbered(problem.under(field)));
            }
        }
        return answer.value();
    }

    private String under(String part, String field) {
        String[] steps = field.split("\\.");
        if (steps.length == 3) {
            return part + steps[0] + "." + usedRows.get(Integer.parseInt(steps[1])) + "." + steps[2];
        }
        return field.equals("elevation") ? field : part + field;
    }

    private Problem numbered(Problem problem) {
        if (!problem.field().startsWith("dial.points.") || !(problem.values().get(0) instanceof Integer number)) {
            return problem;
        }
        List<Object> values = new ArrayList<>(problem.values());
        values.set(0, usedRows.get(number - 1) + 1);
        return problem.naming(values);
    }
}
