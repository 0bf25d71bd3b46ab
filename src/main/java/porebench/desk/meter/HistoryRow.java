package porebench.desk.meter;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.desk.form.Days;
import porebench.evidence.JudgedCalibration;
import porebench.method.Texts;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.ImpliedChamber;
import porebench.record.MeterCalibration;

/** One calibration in the table of a meter's calibrations. */
final class HistoryRow {
    private final MeterModel model;
    private final Texts texts;
    private final CalibrationWords words;

    HistoryRow(MeterModel model) {
        this.model = model;
        this.texts = model.texts();
        this.words = model.words();
    }

    /** Returns the cells: day, person, reason, bowl, dial, worst error, implied chamber, drift, verdict. */
    List<String> of(JudgedCalibration one) {
        MeterCalibration made = one.calibration().value();
        CalibrationResults results = CalibrationResults.of(one);
        Optional<DialCalibration> dial = results.dial();
        OptionalDouble error = dial.map(
                        known -> OptionalDouble.of(known.curve().largestError().value()))
                .orElseGet(OptionalDouble::empty);
        String verdict = made.isNote() ? texts.get("verdict.note") : passWords(one.passes());
        return List.of(
                Days.show(made.calibratedOn()),
                made.by(),
                model.reasonWords(made.reason()),
                results.bowl().map(bowl -> words.bare(bowl.volume())).orElse(""),
                made.checksMeter() ? passWords(one.passesMeter()) : "",
                error.isPresent() ? words.plain(error.getAsDouble(), 2) : "",
                dial.flatMap(DialCalibration::chamber)
                        .map(chamber -> words.bare(chamber.volume()))
                        .orElse(""),
                model.driftAt(one).map(this::drift).orElse(""),
                verdict);
    }

    private String drift(ImpliedChamber.Drift drift) {
        String percent = words.signed(drift.percent(), 1);
        return drift.isFlagged() ? texts.get("drift.flagged", percent) : percent;
    }

    private String passWords(boolean passes) {
        return texts.get(passes ? "verdict.passes" : "verdict.fails");
    }
}
