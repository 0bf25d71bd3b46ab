package porebench.command.bench;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.evidence.JudgedCalibration;
import porebench.evidence.MeterStory;
import porebench.method.Answer;
import porebench.method.Texts;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.DialCurve;
import porebench.method.meter.ImpliedChamber;
import porebench.quantity.PressureUnit;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.MeterCalibration;

/** How a meter stood on a day: state, bowl, dial curve or column, and the calibrations by then. */
final class MeterReport implements Report {
    private final Texts words;
    private final NumberText shown;
    private final MeterStory story;
    private final LocalDate day;
    private final Optional<Volume> bowl;
    private final Optional<BowlCalibration> weighed;
    private final Optional<DialCalibration> dial;
    private final Optional<ColumnCalibration> column;
    private final List<JudgedCalibration> made;

    /**
     * Makes the report.
     *
     * @param bowl the bowl volume in force on the day; empty when it is not known
     */
    MeterReport(Machine here, MeterStory story, LocalDate day, Optional<Volume> bowl) {
        this.words = here.words();
        this.shown = new NumberText(here.locale());
        this.story = story;
        this.day = day;
        this.bowl = bowl;
        this.weighed = story.bowlCalibrationOn(day);
        this.dial = story.dialOn(day);
        this.column = story.columnOn(day);
        this.made = story.calibrations().stream()
                .filter(one -> !one.calibration().value().calibratedOn().isAfter(day))
                .toList();
    }

    @Override
    public void json(JsonFields json) {
        json.text("meterId", story.meter().value().id().text());
        json.text("meterType", story.meter().value().type().name());
        json.date("at", Optional.of(day));
        json.number("bowlLitres", litres(bowl));
        json.group("bowl", weighed, weighings()::json);
        dial.ifPresentOrElse(
                found -> json.list("dial", found.curve().knots(), knots(found)::json),
                () -> json.texts("dial", List.of()));
        dial.ifPresentOrElse(found -> json.flag("dialPasses", found.curve().passes()), () -> json.absent("dialPasses"));
        json.number(
                "impliedChamberLitres",
                dial.flatMap(DialCalibration::chamber)
                        .map(ImpliedChamber::litres)
                        .orElse(Double.NaN));
        json.group("initialLine", dial.map(DialCalibration::line), (fields, line) -> {
            fields.number("statedPercent", line.stated());
            fields.number("shiftPercent", line.shiftPercent());
            fields.number("largestErrorBeforePercent", line.largestErrorBefore());
            fields.number("largestErrorAfterPercent", line.largestErrorAfter());
        });
        json.group("leak", dial.flatMap(DialCalibration::leak), (fields, leak) -> {
            fields.number("marks", leak.value());
            fields.flag("passes", leak.passes());
        });
        json.group("drift", drift(), (fields, change) -> {
            fields.number("percent", change.drift().percent());
            fields.number("limitPercent", change.drift().limitPercent());
            fields.flag("flagged", change.drift().isFlagged());
        });
        json.group("column", column, column()::json);
        json.date("nextDue", story.nextDueOn(day));
        json.text("state", story.stateOn(day).words());
        json.flag("calibratedInPart", story.isCalibratedInPartOn(day));
        json.list("calibrations", made, calibrations()::json);
    }

    private ReportLayout<BowlCalibration> weighings() {
        String litre = VolumeUnit.LITRE.symbol();
        return new ReportLayout<BowlCalibration>(words, shown)
                .whole("fills", found -> found.fills().size())
                .number(
                        "standardDeviationLitres",
                        "meter.spread",
                        found -> found.litres().standardDeviation().orElse(Double.NaN),
                        shown.fixed(4))
                .in(litre)
                .number(
                        "standardUncertaintyLitres",
                        "meter.uncertainty",
                        BowlCalibration::standardUncertaintyLitres,
                        shown.fixed(4))
                .in(litre)
                .flag("buoyancyCorrected", BowlCalibration::buoyancyCorrected)
                .flag("passes", BowlCalibration::passes);
    }

    private ReportLayout<DialCurve.Knot> knots(DialCalibration found) {
        DoubleFunction<String> three = shown.fixed(3);
        return new ReportLayout<DialCurve.Knot>(words, shown)
                .number("readingPercent", "meter.reading", DialCurve.Knot::readingPercent, three)
                .number("truePercent", "meter.true", DialCurve.Knot::truePercent, three)
                .number("errorPercent", "meter.error", DialCurve.Knot::errorPercent, three)
                .number(
                        "standardUncertaintyPercent",
                        "meter.point-uncertainty",
                        DialCurve.Knot::standardUncertaintyPercent,
                        three)
                .number("modelPercent", "meter.model", knot -> found.predictedReading(knot.truePercent()), three)
                .cell("meter.verdict", knot -> words.get(found.curve().passes(knot) ? "meter.passes" : "meter.fails"));
    }

    private ReportLayout<ColumnCalibration> column() {
        String air = words.get("unit.air");
        String pressure = PressureUnit.KILOPASCAL.symbol();
        return new ReportLayout<ColumnCalibration>(words, shown)
                .number("vesselPercent", "meter.vessel", ColumnCalibration::vesselPercent, shown.fixed(3))
                .in(air)
                .number("expansionPercent", "meter.expansion", ColumnCalibration::expansionPercent, shown.fixed(3))
                .in(air)
                .number("readingPercent", "meter.column-reading", ColumnCalibration::readingPercent, shown.fixed(3))
                .in(air)
                .number(
                        "workingKilopascals",
                        "meter.working",
                        found -> found.working().in(PressureUnit.KILOPASCAL),
                        shown.fixed(2))
                .in(pressure)
                .number(
                        "halfRangeKilopascals",
                        "meter.half-range",
                        found -> found.halfRange().in(PressureUnit.KILOPASCAL),
                        shown.fixed(2))
                .in(pressure)
                .number("elevationMetres", "meter.elevation", ColumnCalibration::elevationMetres, shown.fixed(0))
                .in(words.get("meter.metres"))
                .flag("passes", ColumnCalibration::passes);
    }

    private ReportLayout<JudgedCalibration> calibrations() {
        return new ReportLayout<JudgedCalibration>(words, shown)
                .text(
                        "calibrationId",
                        "meter.calibration",
                        one -> measured(one).id().text())
                .text(
                        "calibratedOn",
                        "meter.day",
                        one -> measured(one).calibratedOn().toString())
                .text("reason", one -> measured(one).reason().symbol())
                .cell(
                        "meter.reason",
                        one -> words.get("reason." + measured(one).reason().symbol()))
                .flag("passes", JudgedCalibration::passes)
                .number("bowlLitres", "meter.volume", one -> litres(volume(one)), shown.fixed(4))
                .cell(
                        "meter.verdict",
                        one -> words.get(
                                measured(one).isNote() ? "meter.note" : one.passes() ? "meter.passes" : "meter.fails"));
    }

    private static MeterCalibration measured(JudgedCalibration one) {
        return one.calibration().value();
    }

    private Optional<MeterStory.ChamberChange> drift() {
        return story.chamberChanges().stream()
                .filter(change ->
                        made.stream().anyMatch(one -> measured(one).id().equals(change.later())))
                .reduce((earlier, later) -> later);
    }

    private static Optional<Volume> volume(JudgedCalibration one) {
        return one.bowl().flatMap(Answer::value).map(BowlCalibration::volume);
    }

    private static double litres(Optional<Volume> volume) {
        return volume.map(found -> found.in(VolumeUnit.LITRE)).orElse(Double.NaN);
    }

    @Override
    public void text(TextPage page) {
        page.line(words.get("meter.title", story.meter().value().id().text(), day.toString()));
        page.row(
                words.get("meter.state"),
                story.isCalibratedInPartOn(day)
                        ? words.get("meter.in-part")
                        : words.get("calibration." + story.stateOn(day).words().replace(' ', '-')),
                "");
        page.row(
                words.get("meter.next-due"),
                story.nextDueOn(day).map(LocalDate::toString).orElse(NumberText.NONE),
                "");
        page.gap();
        bowl.ifPresent(volume -> BowlCommand.volumes(new ReportLayout<Volume>(words, shown), shown, Function.identity())
                .rows(page, volume));
        weighed.ifPresent(found -> weighings().rows(page, found));
        page.gap();
        dial.ifPresent(found -> dialText(page, found));
        column.ifPresent(found -> column().rows(page, found));
        page.gap();
        calibrations().table(page, made);
    }

    private void dialText(TextPage page, DialCalibration found) {
        knots(found).table(page, found.curve().knots());
        String air = words.get("unit.air");
        page.gap();
        page.row(words.get("meter.tolerance"), shown.fixed(found.curve().tolerancePercent(), 3), air);
        page.row(words.get("meter.line-shift"), shown.fixed(found.line().shiftPercent(), 3), air);
        found.leak()
                .ifPresent(leak ->
                        page.row(words.get("meter.leak"), shown.fixed(leak.value(), 2), words.get("meter.marks")));
        found.chamber()
                .ifPresent(chamber -> page.row(
                        words.get("meter.chamber"), shown.fixed(chamber.litres(), 4), VolumeUnit.LITRE.symbol()));
        drift().ifPresent(change ->
                page.row(words.get("meter.drift"), shown.fixed(change.drift().percent(), 2), "%"));
    }
}
