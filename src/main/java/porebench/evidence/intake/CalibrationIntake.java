package porebench.evidence.intake;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.evidence.MeterStory;
import porebench.method.Problem;
import porebench.record.CalibrationDay;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.book.Belonging;
import porebench.record.book.LabBook;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.MeterId;

/** Checks a calibration from a file against its meter and the calibrations of that meter before it. */
final class CalibrationIntake {
    private static final Stamp NOT_KEPT_YET = new Stamp("not kept yet", Instant.EPOCH, "not kept yet");

    private final LabBook book;
    private final Map<String, Incoming> meters;
    private final Map<String, Incoming> calibrations;

    CalibrationIntake(LabBook book, Map<String, Incoming> meters, Map<String, Incoming> calibrations) {
        this.book = book;
        this.meters = meters;
        this.calibrations = calibrations;
    }

    /** Returns the day by which calibrations are taken in: a dial check may rest on a bowl weighed before. */
    static LocalDate day(Incoming one) {
        return one.value() instanceof MeterCalibration calibration ? calibration.calibratedOn() : LocalDate.MIN;
    }

    List<Problem> check(MeterCalibration calibration, LocalDate today) {
        Optional<Problem> early = CalibrationDay.check("calibratedOn", calibration.calibratedOn(), today);
        if (early.isPresent()) {
            return List.of(early.get());
        }
        Optional<Meter> meter = meter(calibration.meterId());
        if (meter.isEmpty()) {
            return List.of(Problem.error(
                    "meter_id",
                    "import.calibration-without-meter",
                    calibration.id().text(),
                    calibration.meterId().text()));
        }
        if (meter.get().type() != calibration.meterType()) {
            return List.of(Problem.error(
                    "meter_type",
                    "import.calibration-of-other-type",
                    calibration.id().text(),
                    calibration.meterType().name(),
                    calibration.meterId().text(),
                    meter.get().type().name()));
        }
        return MeterStory.of(
                        new Version<>(meter.get(), 1, NOT_KEPT_YET), with(calibration), MeterStory.usualProfile(book))
                .calibrations()
                .stream()
                .filter(judged -> judged.calibration().value().equals(calibration))
                .flatMap(judged -> judged.problems().stream())
                .filter(Problem::isError)
                .toList();
    }

    private Optional<Meter> meter(MeterId id) {
        return Optional.ofNullable(meters.get(id.text()))
                .map(incoming -> (Meter) incoming.value())
                .or(() -> book.latest(Meter.class, id.text()).map(Version::value));
    }

    private List<Version<MeterCalibration>> with(MeterCalibration calibration) {
        List<Version<MeterCalibration>> all = new ArrayList<>();
        book.latestOf(Belonging.CALIBRATIONS_OF_METER, calibration.meterId().text()).stream()
                .filter(version -> !version.value().id().equals(calibration.id()))
                .filter(version -> !calibrations.containsKey(version.value().recordId()))
                .forEach(all::add);
        calibrations.values().stream()
                .map(incoming -> (MeterCalibration) incoming.value())
                .map(incoming -> new Version<>(incoming, 1, NOT_KEPT_YET))
                .forEach(all::add);
        all.add(new Version<>(calibration, 1, NOT_KEPT_YET));
        return all;
    }
}
