package porebench.desk.meter;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.desk.form.Days;
import porebench.desk.form.Numbers;
import porebench.evidence.MeterStory;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.StandardAtmosphere;
import porebench.method.Texts;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.CheckPoint;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.DialCheck;
import porebench.method.meter.ImpliedChamber;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.PressureUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.CalibrationDay;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.id.CalibrationId;

/**
 * Reads a draft: typed text becomes a calibration, and what is wrong with it becomes problems under the form's fields.
 *
 * <p>Rows of a table that are filled in are worked out although another is not yet, so that results show while a person types.
 */
final class CalibrationReader {
    private static final List<String> FILL_FIELDS = List.of("empty", "plate", "full", "waterTemperature");

    private final CalibrationDraft draft;
    private final MeterStory story;
    private final Meter meter;
    private final Texts texts;
    private final LocalDate today;
    private final TypedReader typed;
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
    CalibrationReader(CalibrationDraft draft, MeterStory story, Numbers numbers, Texts texts, LocalDate today) {
        this.draft = draft;
        this.story = story;
        this.meter = story.meter().value();
        this.texts = texts;
        this.today = today;
        this.typed = new TypedReader(draft, numbers, texts);
    }

    CalibrationReading read() {
        typed.missing(CalibrationField.ID);
        Optional<LocalDate> date = date();
        typed.missing(CalibrationField.BY);
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
        if (isNothingMeasured() && !draft.reason().isWorthANote()) {
            found.add(Problem.error("reason", "meter.nothing-measured").of(Problem.Kind.NOT_MEASURED));
        }
        List<Problem> problems = new ArrayList<>(typed.problems());
        problems.addAll(found);
        Optional<MeterCalibration> calibration = Problem.anyError(problems)
                ? Optional.empty()
                : Optional.of(new MeterCalibration(
                        new CalibrationId(draft.text(CalibrationField.ID)),
                        meter.id(),
                        meter.type(),
                        date.orElseThrow(),
                        draft.text(CalibrationField.BY).strip(),
                        draft.reason(),
                        elevation,
                        fills,
                        check,
                        levels,
                        draft.text(CalibrationField.REMARKS).strip()));
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
                .filter(problem -> problem.kind() == Problem.Kind.NOT_A_NUMBER)
                .noneMatch(problem -> List.of(parts).stream().anyMatch(problem.field()::startsWith));
    }

    private Optional<ImpliedChamber.Drift> drift(Optional<DialCalibration> dial, LocalDate day) {
        Optional<ImpliedChamber> before = story.dialOn(day).flatMap(DialCalibration::chamber);
        return dial.flatMap(DialCalibration::chamber)
                .flatMap(now -> before.map(earlier -> now.since(earlier, story.profile())));
    }

    private Optional<LocalDate> date() {
        typed.missing(CalibrationField.DATE);
        String text = draft.text(CalibrationField.DATE).strip();
        Optional<LocalDate> date = Days.parse(text);
        String field = CalibrationField.DATE.field();
        if (date.isEmpty() && !text.isEmpty()) {
            found.add(Problem.error(field, "form.not-a-date", text));
        }
        date.flatMap(day -> Days.checkYear(field, day)).ifPresent(found::add);
        date.flatMap(day -> CalibrationDay.check(field, day, today)).ifPresent(found::add);
        return date;
    }

    private Optional<BigDecimal> elevation() {
        Optional<BigDecimal> metres = typed.number(CalibrationField.ELEVATION);
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
        boolean noDial =
                meter.type() == MeterType.A || draft.points().typedRows().isEmpty() && !draft.hasTextOf("dial.");
        boolean noColumn = meter.type() == MeterType.B || !draft.hasTextOf("column.");
        return draft.fills().typedRows().isEmpty() && !draft.hasTextOf("bowl.") && noDial && noColumn;
    }

    private Optional<BowlFills> bowl() {
        isHalfTyped = false;
        List<Integer> rows = draft.fills().typedRows();
        if (rows.isEmpty() && !draft.hasTextOf("bowl.")) {
            return Optional.empty();
        }
        List<BowlFill> fills = used(rows, this::fill);
        return Optional.of(new BowlFills(
                fills,
                draft.buoyancy(),
                typed.number(CalibrationField.AIR_TEMPERATURE),
                typed.number(CalibrationField.AIR_PRESSURE),
                typed.number(CalibrationField.DIAMETER),
                typed.number(CalibrationField.HEIGHT)));
    }

    private <T> List<T> used(List<Integer> rows, Function<Integer, Optional<T>> reader) {
        List<T> read = new ArrayList<>();
        List<Integer> used = new ArrayList<>();
        for (int row : rows) {
            reader.apply(row).ifPresent(one -> {
                read.add(one);
                used.add(row);
            });
        }
        usedRows = used;
        isHalfTyped = used.size() < rows.size();
        return read;
    }

    private Optional<BowlFill> fill(int row) {
        Optional<Typed<Mass>> empty = mass(row, 0);
        Optional<Typed<Mass>> plate = mass(row, 1);
        Optional<Typed<Mass>> full = mass(row, 2);
        Optional<BigDecimal> water =
                typed.cell(fillField(row, 3), fillName(row, 3), draft.fills().cell(row, 3));
        return empty.isPresent() && plate.isPresent() && full.isPresent() && water.isPresent()
                ? Optional.of(new BowlFill(empty.get(), plate.get(), full.get(), water.get()))
                : Optional.empty();
    }

    private Optional<Typed<Mass>> mass(int row, int column) {
        return typed.cell(
                fillField(row, column),
                fillName(row, column),
                draft.fills().cell(row, column),
                draft.unit(CalibrationField.FILL_MASS),
                List.of(MassUnit.values()));
    }

    private static String fillField(int row, int column) {
        return "bowl.fills." + row + "." + FILL_FIELDS.get(column);
    }

    private String fillName(int row, int column) {
        return texts.get("name.fill", row + 1, texts.get("name.fill." + FILL_FIELDS.get(column)));
    }

    private Optional<DialCheck> dial() {
        isHalfTyped = false;
        List<Integer> rows = draft.points().typedRows();
        if (rows.isEmpty() && !draft.hasTextOf("dial.")) {
            return Optional.empty();
        }
        List<CheckPoint> points = used(rows, this::point);
        return Optional.of(new DialCheck(
                typed.quantity(CalibrationField.VESSEL_WATER, List.of(MassUnit.values())),
                typed.number(CalibrationField.WATER_TEMPERATURE),
                points,
                typed.number(CalibrationField.INITIAL_LINE),
                typed.number(CalibrationField.LEAK),
                typed.quantity(CalibrationField.CHAMBER, List.of(VolumeUnit.values())),
                typed.quantity(CalibrationField.INITIAL_PRESSURE, List.of(PressureUnit.values()))));
    }

    private Optional<CheckPoint> point(int row) {
        String field = "dial.points." + row + ".";
        Optional<BigDecimal> amount = typed.cell(
                field + "amount",
                texts.get("name.point.amount", row + 1),
                draft.points().cell(row, 0));
        CheckAmount.Unit unit =
                CheckAmount.Unit.ofSymbol(draft.points().cell(row, 1)).orElse(CheckAmount.Unit.VESSELS);
        Optional<BigDecimal> gauge = typed.cell(
                field + "gauge",
                texts.get("name.point.gauge", row + 1),
                draft.points().cell(row, 2));
        return amount.flatMap(number -> gauge.map(reading -> new CheckPoint(new CheckAmount(number, unit), reading)));
    }

    private Optional<ColumnCheck> column(Optional<BigDecimal> elevation) {
        isHalfTyped = false;
        if (!draft.hasTextOf("column.")) {
            return Optional.empty();
        }
        if (elevation.isEmpty()) {
            typed.missing(CalibrationField.ELEVATION);
        }
        Optional<Typed<Mass>> vessel =
                typed.requiredQuantity(CalibrationField.COLUMN_VESSEL, List.of(MassUnit.values()));
        Optional<Typed<Mass>> bowl = typed.requiredQuantity(CalibrationField.COLUMN_BOWL, List.of(MassUnit.values()));
        Optional<BigDecimal> expansion = typed.required(CalibrationField.EXPANSION);
        var working = typed.requiredQuantity(CalibrationField.WORKING_PRESSURE, List.of(PressureUnit.values()));
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
            if (!isUntrueYet && !isSaid && !typed.isWrong(field)) {
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
