package porebench.command.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Machine;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
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
        json.group("bowl", weighed, (fields, found) -> {
            fields.whole("fills", found.fills().size());
            fields.number("standardDeviationLitres", found.litres().standardDeviation());
            fields.number("standardUncertaintyLitres", found.standardUncertaintyLitres());
            fields.flag("buoyancyCorrected", found.buoyancyCorrected());
            fields.flag("passes", found.passes());
        });
        dial(json);
        json.group("column", column, (fields, found) -> {
            fields.number("vesselPercent", found.vesselPercent());
            fields.number("expansionPercent", found.expansionPercent());
            fields.number("readingPercent", found.readingPercent());
            fields.number("workingKilopascals", found.working().in(PressureUnit.KILOPASCAL));
            fields.number("halfRangeKilopascals", found.halfRange().in(PressureUnit.KILOPASCAL));
            fields.number("elevationMetres", found.elevationMetres());
            fields.flag("passes", found.passes());
        });
        json.date("nextDue", story.nextDueOn(day));
        json.text("state", story.stateOn(day).words());
        json.list("calibrations", made, (fields, one) -> {
            MeterCalibration calibration = one.calibration().value();
            fields.text("calibrationId", calibration.id().text());
            fields.date("calibratedOn", Optional.of(calibration.calibratedOn()));
            fields.text("reason", calibration.reason().symbol());
            fields.flag("passes", one.passes());
            fields.number("bowlLitres", litres(volume(one)));
        });
    }

    private void dial(JsonFields json) {
        List<DialCurve.Knot> knots = dial.map(found -> found.curve().knots()).orElse(List.of());
        json.list("dial", knots, (fields, knot) -> {
            fields.number("readingPercent", knot.readingPercent());
            fields.number("truePercent", knot.truePercent());
            fields.number("errorPercent", knot.errorPercent());
            fields.number("standardUncertaintyPercent", knot.standardUncertaintyPercent());
            fields.number("modelPercent", dial.orElseThrow().predictedReading(knot.truePercent()));
        });
        dial.ifPresentOrElse(found -> json.flag("dialPasses", found.curve().passes()), () -> json.absent("dialPasses"));
        json.number(
                "impliedChamberLitres",
                number(dial.flatMap(DialCalibration::chamber).map(ImpliedChamber::litres)));
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
    }

    private Optional<MeterStory.ChamberChange> drift() {
        return story.chamberChanges().stream()
                .filter(change -> made.stream()
                        .anyMatch(one -> one.calibration().value().id().equals(change.later())))
                .reduce((earlier, later) -> later);
    }

    private static Optional<Volume> volume(JudgedCalibration one) {
        return one.bowl().flatMap(Answer::value).map(BowlCalibration::volume);
    }

    private static OptionalDouble litres(Optional<Volume> volume) {
        return number(volume.map(found -> found.in(VolumeUnit.LITRE)));
    }

    private static OptionalDouble number(Optional<Double> number) {
        return number.isPresent() ? OptionalDouble.of(number.get()) : OptionalDouble.empty();
    }

    @Override
    public void text(TextPage page) {
        page.line(words.get("meter.title", story.meter().value().id().text(), day.toString()));
        page.row(
                words.get("meter.state"),
                words.get("calibration." + story.stateOn(day).words().replace(' ', '-')),
                "");
        page.row(
                words.get("meter.next-due"),
                story.nextDueOn(day).map(LocalDate::toString).orElse(NumberText.NONE),
                "");
        page.gap();
        bowlText(page);
        page.gap();
        dial.ifPresent(found -> dialText(page, found));
        column.ifPresent(found -> columnText(page, found));
        page.gap();
        page.table(
                List.of(
                        words.get("meter.calibration"),
                        words.get("meter.day"),
                        words.get("meter.reason"),
                        words.get("meter.volume"),
                        words.get("meter.verdict")),
                made.stream().map(this::row).toList());
    }

    private List<String> row(JudgedCalibration one) {
        MeterCalibration calibration = one.calibration().value();
        String verdict = calibration.isNote() ? "meter.note" : one.passes() ? "meter.passes" : "meter.fails";
        return List.of(
                calibration.id().text(),
                calibration.calibratedOn().toString(),
                words.get("reason." + calibration.reason().symbol()),
                shown.fixed(litres(volume(one)), 4),
                words.get(verdict));
    }

    private void bowlText(TextPage page) {
        String litre = VolumeUnit.LITRE.symbol();
        bowl.ifPresent(volume -> {
            page.row(words.get("bowl.volume"), shown.fixed(volume.in(VolumeUnit.LITRE), 4), litre);
            page.row(
                    words.get("bowl.volume"),
                    shown.fixed(volume.in(VolumeUnit.CUBIC_FOOT), 5),
                    VolumeUnit.CUBIC_FOOT.symbol());
        });
        weighed.ifPresent(found -> {
            page.row(words.get("meter.spread"), shown.fixed(found.litres().standardDeviation(), 4), litre);
            page.row(words.get("meter.uncertainty"), shown.fixed(found.standardUncertaintyLitres(), 4), litre);
        });
    }

    private void dialText(TextPage page, DialCalibration found) {
        List<List<String>> rows = new ArrayList<>();
        for (DialCurve.Knot knot : found.curve().knots()) {
            rows.add(List.of(
                    shown.fixed(knot.readingPercent(), 3),
                    shown.fixed(knot.truePercent(), 3),
                    shown.fixed(knot.errorPercent(), 3),
                    shown.fixed(knot.standardUncertaintyPercent(), 3),
                    shown.fixed(found.predictedReading(knot.truePercent()), 3),
                    words.get(found.curve().passes(knot) ? "meter.passes" : "meter.fails")));
        }
        page.table(
                List.of(
                        words.get("meter.reading"),
                        words.get("meter.true"),
                        words.get("meter.error"),
                        words.get("meter.point-uncertainty"),
                        words.get("meter.model"),
                        words.get("meter.verdict")),
                rows);
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

    private void columnText(TextPage page, ColumnCalibration found) {
        String air = words.get("unit.air");
        String pressure = PressureUnit.KILOPASCAL.symbol();
        page.row(words.get("meter.vessel"), shown.fixed(found.vesselPercent(), 3), air);
        page.row(words.get("meter.expansion"), shown.fixed(found.expansionPercent(), 3), air);
        page.row(words.get("meter.column-reading"), shown.fixed(found.readingPercent(), 3), air);
        page.row(words.get("meter.working"), shown.fixed(found.working().in(PressureUnit.KILOPASCAL), 2), pressure);
        page.row(
                words.get("meter.half-range"), shown.fixed(found.halfRange().in(PressureUnit.KILOPASCAL), 2), pressure);
        page.row(words.get("meter.elevation"), shown.fixed(found.elevationMetres(), 0), words.get("meter.metres"));
    }
}
