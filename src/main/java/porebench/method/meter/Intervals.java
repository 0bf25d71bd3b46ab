package porebench.method.meter;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.quantity.Require;

/**
 * How long a calibration holds.
 *
 * <p>Dial or column and bowl have an interval each; the earlier end counts. A repair, or a new project where the
 * laboratory calibrates before each, ends both at once. On the day an interval ends the calibration still holds.
 *
 * <p>Source: three months or when doubtful, ASTM C231 (seen in a secondary page); yearly, before each project and in
 * season, Iowa I.M. 318 (seen). The profile, or the laboratory's own copy of it, decides.
 *
 * @param meterMonths months that a dial or column calibration holds, at least 1
 * @param bowlMonths months that a bowl calibration holds, at least 1
 * @param noticeDays days before the end from which it is shown as due, at least 0
 * @param isEachProject whether a new project asks for a calibration
 */
public record Intervals(int meterMonths, int bowlMonths, int noticeDays, boolean isEachProject) {
    public Intervals {
        Require.atLeast("meterMonths", meterMonths, 1);
        Require.atLeast("bowlMonths", bowlMonths, 1);
        Require.atLeast("noticeDays", noticeDays, 0);
    }

    /**
     * What is known of a meter on a day, of the time up to that day.
     *
     * @param meterCalibratedOn the last day dial or column were calibrated
     * @param bowlCalibratedOn the last day the bowl was calibrated
     * @param hasPassed whether the last calibration of each passed
     * @param repairedOn the last day the meter was repaired, knocked or came into doubt
     * @param projectStartedOn the last day a new project began with it
     */
    public record Known(
            Optional<LocalDate> meterCalibratedOn,
            Optional<LocalDate> bowlCalibratedOn,
            boolean hasPassed,
            Optional<LocalDate> repairedOn,
            Optional<LocalDate> projectStartedOn) {
        /** What is known of a meter that was never calibrated. */
        public static final Known NOTHING =
                new Known(Optional.empty(), Optional.empty(), true, Optional.empty(), Optional.empty());

        /** Returns this with dial or column calibrated, and passed so far, on a day. */
        public Known withMeter(LocalDate day) {
            return new Known(Optional.of(day), bowlCalibratedOn, hasPassed, repairedOn, projectStartedOn);
        }

        /** Returns this with the bowl calibrated on a day. */
        public Known withBowl(LocalDate day) {
            return new Known(meterCalibratedOn, Optional.of(day), hasPassed, repairedOn, projectStartedOn);
        }

        /** Returns this with the last calibration passed or failed. */
        public Known withPassed(boolean passed) {
            return new Known(meterCalibratedOn, bowlCalibratedOn, passed, repairedOn, projectStartedOn);
        }

        /** Returns this with a repair on a day. */
        public Known withRepair(LocalDate day) {
            return new Known(meterCalibratedOn, bowlCalibratedOn, hasPassed, Optional.of(day), projectStartedOn);
        }

        /** Returns this with a new project on a day. */
        public Known withProject(LocalDate day) {
            return new Known(meterCalibratedOn, bowlCalibratedOn, hasPassed, repairedOn, Optional.of(day));
        }
    }

    /** Returns the intervals of a profile. */
    public static Intervals of(Profile profile) {
        return new Intervals(
                profile.count(FigureName.CALIBRATION_MONTHS),
                profile.count(FigureName.BOWL_MONTHS),
                profile.count(FigureName.CALIBRATION_NOTICE_DAYS),
                profile.figure(FigureName.CALIBRATE_EACH_PROJECT).value().equals("yes"));
    }

    /**
     * Returns the last day on which the calibration holds; empty when bowl, dial or column were never calibrated.
     *
     * <p>A repair or project after a calibration ends it on the day itself.
     */
    public Optional<LocalDate> nextDue(Known known) {
        if (known.meterCalibratedOn().isEmpty() || known.bowlCalibratedOn().isEmpty()) {
            return Optional.empty();
        }
        LocalDate meter = known.meterCalibratedOn().get();
        LocalDate bowl = known.bowlCalibratedOn().get();
        // What a repair touches first is the dial or column; the bowl has its own interval.
        Optional<LocalDate> upset = Stream.concat(
                        known.repairedOn().stream(), isEachProject ? known.projectStartedOn().stream() : Stream.empty())
                .filter(day -> day.isAfter(meter))
                .min(LocalDate::compareTo);
        return Stream.concat(upset.stream(), Stream.of(meter.plusMonths(meterMonths), bowl.plusMonths(bowlMonths)))
                .min(LocalDate::compareTo);
    }

    /** Returns whether the meter may be trusted on a day. */
    public MeterState stateOn(LocalDate day, Known known) {
        Optional<LocalDate> due = nextDue(known);
        if (due.isEmpty()) {
            return MeterState.NEVER;
        }
        if (!known.hasPassed()) {
            return MeterState.FAILED;
        }
        boolean isUpset = Stream.concat(
                        known.repairedOn().stream(), isEachProject ? known.projectStartedOn().stream() : Stream.empty())
                .anyMatch(when -> when.isAfter(known.meterCalibratedOn().get()));
        if (isUpset || day.isAfter(due.get())) {
            return MeterState.OVERDUE;
        }
        return day.isBefore(due.get().minusDays(noticeDays)) ? MeterState.OK : MeterState.DUE;
    }
}
