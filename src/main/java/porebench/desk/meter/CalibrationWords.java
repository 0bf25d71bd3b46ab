package porebench.desk.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import porebench.desk.DeskModel;
import porebench.desk.form.Numbers;
import porebench.method.Texts;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.ElevationUse;
import porebench.method.meter.ImpliedChamber;
import porebench.method.meter.InitialLine;
import porebench.method.meter.MeterCheck;
import porebench.quantity.Length;
import porebench.quantity.LengthUnit;
import porebench.quantity.Pressure;
import porebench.quantity.Typed;
import porebench.quantity.Unit;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** Says in sentences what the measurements of a calibration tell. */
final class CalibrationWords {
    private static final int VOLUME_DECIMALS = 4;
    /** Of an uncertainty in cubic feet, of which a bowl holds a quarter. */
    private static final int FOOT_DECIMALS = 6;

    private static final int AIR_DECIMALS = 2;
    private static final double COVERAGE = 2;

    private final DeskModel desk;
    private final Numbers numbers;
    private final Texts texts;

    CalibrationWords(DeskModel desk, Texts texts) {
        this.desk = desk;
        this.numbers = desk.tools().numbers();
        this.texts = texts;
    }

    /** Returns everything a calibration tells, the bowl first. */
    List<String> all(CalibrationResults results, Optional<ImpliedChamber.Drift> drift) {
        List<String> said = new ArrayList<>();
        results.bowl().ifPresent(bowl -> said.addAll(bowl(bowl)));
        results.dial().ifPresent(dial -> said.addAll(dial(dial, drift)));
        results.column().ifPresent(column -> said.addAll(column(column)));
        return said;
    }

    /** Says the bowl: volume, spread, uncertainty, size and shape. */
    List<String> bowl(BowlCalibration bowl) {
        List<String> said = new ArrayList<>();
        int count = bowl.fills().size();
        said.add(texts.get(
                "bowl.volume",
                volume(bowl.volume()),
                plain(
                        bowlUnit().in(litres(COVERAGE * bowl.standardUncertaintyLitres())),
                        bowlUnit() == VolumeUnit.LITRE ? VOLUME_DECIMALS : FOOT_DECIMALS),
                count));
        if (bowl.spreadPercent().isPresent()) {
            said.add(texts.get(
                    "bowl.spread",
                    plain(bowl.spreadPercent().getAsDouble(), 3),
                    String.join(", ", bowl.fills().stream().map(this::bare).toList())));
        }
        said.add(texts.get(bowl.buoyancyCorrected() ? "bowl.buoyancy" : "bowl.no-buoyancy"));
        bowl.checks().forEach(check -> said.add(check(check)));
        return said;
    }

    private static Volume litres(double litres) {
        return Volume.of(litres, VolumeUnit.LITRE);
    }

    /** Says the dial: verdict, leak, where its line belongs, and what the model makes of it. */
    List<String> dial(DialCalibration dial, Optional<ImpliedChamber.Drift> drift) {
        List<String> said = new ArrayList<>();
        dial.checks().forEach(check -> said.add(check(check)));
        if (dial.leak().isEmpty()) {
            said.add(texts.get("dial.leak-not-watched"));
        }
        said.add(line(dial.line()));
        said.add(dial.chamber().map(this::chamber).orElseGet(() -> texts.get("dial.no-chamber")));
        if (dial.isScaleUsual()) {
            said.add(texts.get(
                    "dial.usual-scale",
                    volume(dial.scale().chamber()),
                    pressure(dial.scale().initialGauge())));
        }
        drift.ifPresent(change -> said.add(texts.get(
                change.isFlagged() ? "dial.drifted" : "dial.steady",
                signed(change.percent(), 1),
                plain(change.expandedUncertaintyPercent(), 1),
                plain(change.limitPercent(), 1))));
        return said;
    }

    private String chamber(ImpliedChamber chamber) {
        return texts.get(
                "dial.chamber",
                volume(chamber.volume()),
                plain(100 * COVERAGE * chamber.relativeUncertainty(), 1),
                pressure(chamber.initialGauge()));
    }

    private String line(InitialLine line) {
        String shift = signed(line.shiftPercent(), AIR_DECIMALS);
        String before = plain(line.largestErrorBefore(), AIR_DECIMALS);
        String after = plain(line.largestErrorAfter(), AIR_DECIMALS);
        OptionalDouble implied = line.impliedPercent();
        return implied.isPresent()
                ? texts.get(
                        "dial.line-at",
                        numbers.show(line.stated().orElseThrow()),
                        signed(implied.getAsDouble(), AIR_DECIMALS),
                        before,
                        after)
                : texts.get("dial.line", shift, before, after);
    }

    /** Says the column: R, K, D, P, P1 and how readings move with the elevation. */
    List<String> column(ColumnCalibration column) {
        List<String> said = new ArrayList<>();
        said.add(texts.get(
                "column.reading",
                plain(column.readingPercent(), AIR_DECIMALS),
                pressure(column.working()),
                plain(column.vesselPercent(), AIR_DECIMALS),
                plain(column.expansionPercent(), AIR_DECIMALS)));
        said.add(texts.get("column.half-range", pressure(column.halfRange())));
        said.add(check(column.expansion()));
        said.add(texts.get("column.elevation", height(column.elevationMetres())));
        return said;
    }

    /** Says how a Type A meter reads at another elevation. */
    String elevation(ElevationUse use) {
        return texts.get(
                use.passes() ? "elevation.passes" : "elevation.fails",
                height(use.usedMetres()),
                height(use.check().value()),
                height(use.check().highInclusive().orElseThrow()),
                plain(use.readingOf(StoryPlots.ELEVATION_AIR_PERCENT), AIR_DECIMALS),
                plain(StoryPlots.ELEVATION_AIR_PERCENT, 1));
    }

    /** Says something held against its limits, passed or not. */
    String check(MeterCheck check) {
        DoubleFunction<String> figure = switch (check.subject()) {
            case ELEVATION -> this::height;
            case BOWL_VOLUME -> this::bowl;
            default -> number -> plain(number, AIR_DECIMALS);
        };
        String limit = check.lowInclusive().isPresent() && check.highInclusive().isPresent()
                ? texts.get(
                        "limit.within",
                        figure.apply(check.lowInclusive().getAsDouble()),
                        figure.apply(check.highInclusive().getAsDouble()))
                : check.highInclusive().isPresent()
                        ? texts.get(
                                "limit.most", figure.apply(check.highInclusive().getAsDouble()))
                        : texts.get(
                                "limit.least", figure.apply(check.lowInclusive().orElse(0)));
        return texts.get(
                check.passes() ? "check.passes" : "check.fails",
                texts.get("check." + check.subject().symbol(), figure.apply(check.value())),
                limit);
    }

    /** Says whether something passes. */
    String verdict(boolean passes) {
        return texts.get(passes ? "verdict.passes" : "verdict.fails");
    }

    /** Returns a bowl volume with its unit. */
    String volume(Volume volume) {
        return bare(volume) + " " + bowlUnit().symbol();
    }

    /** Returns a bowl volume without its unit. */
    String bare(Volume volume) {
        return plain(bowlUnit().in(volume), VOLUME_DECIMALS);
    }

    private String bowl(double litres) {
        VolumeUnit unit = desk.units().bowlVolume();
        int decimals = unit == VolumeUnit.LITRE ? AIR_DECIMALS : VOLUME_DECIMALS;
        return plain(unit.in(litres(litres)), decimals) + " " + unit.symbol();
    }

    /** Returns a height above the sea, or a difference of two, with its unit. */
    String height(double metres) {
        LengthUnit unit = desk.units().elevation();
        return plain(unit.in(new Length(metres)), 0) + " " + unit.symbol();
    }

    /** Returns a bowl volume as the register states it: as typed where its unit is shown, and otherwise converted. */
    String stated(Typed<Volume> bowl) {
        return numbers.show(bowl, desk.units().bowlVolume(), VOLUME_DECIMALS) + " "
                + bowlUnit().symbol();
    }

    Unit<Volume> bowlUnit() {
        return desk.units().bowlVolume();
    }

    private String pressure(Pressure pressure) {
        Unit<Pressure> unit = desk.units().pressure();
        return plain(unit.in(pressure), 1) + " " + unit.symbol();
    }

    String plain(double number, int decimals) {
        return numbers.show(number, decimals);
    }

    String signed(double number, int decimals) {
        String shown = numbers.show(number, decimals);
        return number > 0 && !shown.equals(numbers.show(0, decimals)) ? "+" + shown : shown;
    }
}
