package porebench.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.MeterCheck;
import porebench.quantity.Volume;
import porebench.record.MeterCalibration;
import porebench.record.book.Version;

/**
 * A calibration of a meter with what its measurements tell, under a profile.
 *
 * @param calibration the calibration, in its newest version
 * @param bowl the bowl; empty when it was not weighed
 * @param dial the dial of a Type B meter; empty when it was not checked
 * @param column the column of a Type A meter; empty when it was not checked
 */
public record JudgedCalibration(
        Version<MeterCalibration> calibration,
        Optional<Answer<BowlCalibration>> bowl,
        Optional<Answer<DialCalibration>> dial,
        Optional<Answer<ColumnCalibration>> column) {
    /**
     * Judges a calibration.
     *
     * @param calibration what was measured
     * @param bowlBefore the bowl volume in force until then, which a dial check without weighings of the bowl rests on
     * @param divisionPercent a division of the meter's scale, in % air, greater than 0
     * @param profile whose limits hold
     */
    public static JudgedCalibration of(
            Version<MeterCalibration> calibration, Volume bowlBefore, double divisionPercent, Profile profile) {
        MeterCalibration measured = calibration.value();
        Optional<Answer<BowlCalibration>> bowl = measured.bowl().map(fills -> BowlCalibration.of(fills, profile));
        Volume volume = bowl.flatMap(Answer::value).map(BowlCalibration::volume).orElse(bowlBefore);
        return new JudgedCalibration(
                calibration,
                bowl,
                measured.dial().map(check -> DialCalibration.of(check, volume, divisionPercent, profile)),
                measured.column().map(check -> ColumnCalibration.of(check, profile)));
    }

    /** Returns whether everything measured could be used and lies within its limits; a note has nothing to fail. */
    public boolean passes() {
        return passesBowl() && passesMeter();
    }

    /** Returns whether the bowl, where it was weighed, could be used and fits the profile. */
    public boolean passesBowl() {
        return bowl.isEmpty()
                || bowl.get().value().filter(BowlCalibration::passes).isPresent();
    }

    /** Returns whether dial or column, where they were checked, could be used and lie within their limits. */
    public boolean passesMeter() {
        boolean dialPasses = dial.isEmpty()
                || dial.get().value().filter(DialCalibration::passes).isPresent();
        boolean columnPasses = column.isEmpty()
                || column.get().value().filter(ColumnCalibration::passes).isPresent();
        return dialPasses && columnPasses;
    }

    /** Returns everything held against a limit, in the order bowl, dial, column. */
    public List<MeterCheck> checks() {
        List<MeterCheck> checks = new ArrayList<>();
        bowl.flatMap(Answer::value).ifPresent(found -> checks.addAll(found.checks()));
        dial.flatMap(Answer::value).ifPresent(found -> checks.addAll(found.checks()));
        column.flatMap(Answer::value).ifPresent(found -> checks.add(found.expansion()));
        return List.copyOf(checks);
    }

    /** Returns what is wrong or doubtful about the measurements, in the order bowl, dial, column. */
    public List<Problem> problems() {
        return Stream.of(bowl.map(Answer::problems), dial.map(Answer::problems), column.map(Answer::problems))
                .flatMap(Optional::stream)
                .flatMap(List::stream)
                .toList();
    }
}
