package porebench.desk.meter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.chart.meter.BowlHistory;
import porebench.chart.meter.DialErrors;
import porebench.chart.meter.ElevationReadings;
import porebench.evidence.JudgedCalibration;
import porebench.evidence.MeterStory;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.method.StandardAtmosphere;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.DialCurve;
import porebench.quantity.Unit;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** What the plots of a meter show. */
final class StoryPlots {
    /** The air that a Type A meter is taken to read away from home, in % air. */
    static final double ELEVATION_AIR_PERCENT = 5;

    private static final double COVERAGE = 2;
    private static final int MODEL_STEPS = 40;
    private static final double BEYOND_THE_POINTS = 1.12;
    private static final double FARTHEST_METRES = 2000;
    private static final double STEP_METRES = 50;

    private StoryPlots() {}

    /** Returns the error of the dial found in a calibration; empty for one that checked no dial. */
    static Optional<DialErrors> dial(JudgedCalibration calibration) {
        return CalibrationResults.of(calibration)
                .dial()
                .map(dial -> dial(calibration.calibration().value().id().text(), dial));
    }

    /** Returns the error of a dial at its check points, with what the model predicts. */
    static DialErrors dial(String calibration, DialCalibration dial) {
        DialCurve curve = dial.curve();
        List<DialErrors.Point> points = curve.knots().stream()
                .map(knot -> new DialErrors.Point(
                        knot.truePercent(),
                        knot.errorPercent(),
                        COVERAGE * knot.standardUncertaintyPercent(),
                        knot.count(),
                        curve.passes(knot)))
                .toList();
        double end = Math.min(
                100,
                BEYOND_THE_POINTS * Math.max(1, points.get(points.size() - 1).truePercent()));
        List<DialErrors.Predicted> model = IntStream.rangeClosed(0, MODEL_STEPS)
                .mapToDouble(step -> end * step / MODEL_STEPS)
                .mapToObj(air -> new DialErrors.Predicted(air, dial.predictedReading(air) - air))
                .toList();
        return new DialErrors(calibration, points, model, curve.tolerancePercent());
    }

    /** Returns the volumes of the bowl over time, in a unit; empty while none was found. */
    static Optional<BowlHistory> bowl(MeterStory story, Unit<Volume> unit, LocalDate today) {
        List<BowlHistory.Found> found = new ArrayList<>();
        List<BowlHistory.Step> steps = new ArrayList<>();
        for (JudgedCalibration one : story.calibrations()) {
            CalibrationResults.of(one).bowl().ifPresent(bowl -> {
                found.add(found(one, bowl, unit));
                steps.add(new BowlHistory.Step(one.calibration().value().calibratedOn(), unit.in(bowl.volume())));
            });
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(new BowlHistory(found, steps, today, unit.symbol()));
    }

    private static BowlHistory.Found found(JudgedCalibration one, BowlCalibration bowl, Unit<Volume> unit) {
        return new BowlHistory.Found(
                one.calibration().value().id().text(),
                one.calibration().value().calibratedOn(),
                unit.in(bowl.volume()),
                unit.in(Volume.of(COVERAGE * bowl.standardUncertaintyLitres(), VolumeUnit.LITRE)),
                bowl.fills().size(),
                bowl.passes());
    }

    /** Returns what a Type A meter reads of 5 % air by elevation, about where it was calibrated. */
    static ElevationReadings elevation(ColumnCalibration column, Profile profile) {
        double home = column.elevationMetres();
        double low = Math.max(StandardAtmosphere.LOWEST_METRES, home - FARTHEST_METRES);
        double high = Math.min(StandardAtmosphere.HIGHEST_METRES, home + FARTHEST_METRES);
        List<ElevationReadings.Reading> readings = new ArrayList<>();
        for (double metres = low; metres <= high; metres += STEP_METRES) {
            readings.add(new ElevationReadings.Reading(
                    metres, column.elevationUse(metres, profile).readingOf(ELEVATION_AIR_PERCENT)));
        }
        return new ElevationReadings(readings, ELEVATION_AIR_PERCENT, home, profile.number(FigureName.ELEVATION_LIMIT));
    }
}
