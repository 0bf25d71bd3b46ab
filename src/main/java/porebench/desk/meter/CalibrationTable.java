package porebench.desk.meter;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.desk.form.Days;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.evidence.JudgedCalibration;
import porebench.method.Texts;
import porebench.method.meter.DialCalibration;
import porebench.record.MeterCalibration;

/** The calibrations of a meter, the newest first: day, person, reason, bowl, dial, worst error, implied chamber, drift, verdict. */
final class CalibrationTable {
    private final MeterModel model;
    private final Texts texts;
    private final CalibrationWords words;

    private CalibrationTable(MeterModel model) {
        this.model = model;
        this.texts = model.texts();
        this.words = model.words();
    }

    /** Makes the table, without rows. */
    static RowTable<JudgedCalibration> of(MeterModel model) {
        return new RowTable<>(
                "calibrations", model.texts().get("section.history"), new CalibrationTable(model).columns());
    }

    private List<ShownColumn<JudgedCalibration>> columns() {
        return List.of(
                column("date", 92, one -> Days.show(made(one).calibratedOn())),
                column("by", 104, one -> made(one).by()),
                column("reason", 92, one -> model.reasonWords(made(one).reason())),
                column(
                                "bowl",
                                76,
                                one -> CalibrationResults.of(one)
                                        .bowl()
                                        .map(bowl -> words.bare(bowl.volume()))
                                        .orElse(""))
                        .number(),
                column("dial", 112, one -> made(one).checksMeter() ? words.verdict(one.passesMeter()) : ""),
                column(
                                "error",
                                92,
                                one -> dial(one)
                                        .map(dial -> words.plain(
                                                dial.curve().largestError().value(), 2))
                                        .orElse(""))
                        .number(),
                column(
                                "chamber",
                                84,
                                one -> dial(one)
                                        .flatMap(DialCalibration::chamber)
                                        .map(chamber -> words.bare(chamber.volume()))
                                        .orElse(""))
                        .number(),
                column("drift", 72, this::drift).number(),
                column(
                        "verdict",
                        112,
                        one -> made(one).isNote() ? texts.get("verdict.note") : words.verdict(one.passes())));
    }

    private ShownColumn<JudgedCalibration> column(String key, int width, Function<JudgedCalibration, String> said) {
        return new ShownColumn<>(texts.get("history." + key), width, said);
    }

    private static MeterCalibration made(JudgedCalibration one) {
        return one.calibration().value();
    }

    private static Optional<DialCalibration> dial(JudgedCalibration one) {
        return CalibrationResults.of(one).dial();
    }

    private String drift(JudgedCalibration one) {
        return model.driftAt(one)
                .map(drift -> {
                    String percent = words.signed(drift.percent(), 1);
                    return drift.isFlagged() ? texts.get("drift.flagged", percent) : percent;
                })
                .orElse("");
    }
}
