package porebench.evidence.paper;

import java.time.LocalDate;
import java.util.Optional;
import porebench.evidence.JudgedCalibration;
import porebench.evidence.MeterStory;
import porebench.method.Profile;
import porebench.method.meter.ImpliedChamber;
import porebench.record.Laboratory;
import porebench.record.Meter;
import porebench.record.chain.Head;
import porebench.record.id.CalibrationId;

/**
 * The printed record of one calibration of a meter: what it says.
 *
 * @param laboratory whose record it is; empty when the lab book does not say
 * @param meter the meter
 * @param judged what was measured and what it tells
 * @param drift by how much the implied chamber changed since the dial check before; empty when there is none to compare
 * @param nextDue the last day on which the calibration holds, as known on the day it was made; empty when bowl, dial or
 *     column were not calibrated yet
 * @param profile whose limits and intervals hold
 * @param head how far the lab book reached when the record was put together
 */
public record CalibrationRecord(
        Optional<Laboratory> laboratory,
        Meter meter,
        JudgedCalibration judged,
        Optional<ImpliedChamber.Drift> drift,
        Optional<LocalDate> nextDue,
        Profile profile,
        Head head)
        implements Printed {
    /** Returns the record of one of a meter's calibrations; empty when it is none of them. */
    public static Optional<CalibrationRecord> of(
            MeterStory story, CalibrationId id, Optional<Laboratory> laboratory, Head head) {
        return story.calibrations().stream()
                .filter(judged -> judged.calibration().value().id().equals(id))
                .findFirst()
                .map(judged -> new CalibrationRecord(
                        laboratory,
                        story.meter().value(),
                        judged,
                        story.chamberChanges().stream()
                                .filter(change -> change.later().equals(id))
                                .map(MeterStory.ChamberChange::drift)
                                .findFirst(),
                        story.nextDueOn(judged.calibration().value().calibratedOn()),
                        story.profile(),
                        head));
    }
}
