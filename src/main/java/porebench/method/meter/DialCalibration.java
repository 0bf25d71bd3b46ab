package porebench.method.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Answer;
import porebench.method.BoyleTypeB;
import porebench.method.DialScale;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Surroundings;
import porebench.quantity.Volume;

/**
 * Everything a dial check tells about a Type B meter: its curve, where the initial line belongs, the chamber it implies,
 * and whether it leaks.
 *
 * @param curve reading against true air
 * @param scale what the dial is taken to be graduated for
 * @param isScaleUsual whether chamber or initial pressure were not known and the usual ones were taken
 * @param line where the initial pressure line belongs
 * @param chamber the chamber and initial pressure that explain the points best; empty when no chamber could give them
 * @param leak the leak check; empty when the hand was not watched
 */
public record DialCalibration(
        DialCurve curve,
        DialScale scale,
        boolean isScaleUsual,
        InitialLine line,
        Optional<ImpliedChamber> chamber,
        Optional<MeterCheck> leak) {
    /**
     * Works out a dial check.
     *
     * @param check what was read
     * @param bowl the volume of the bowl, greater than 0
     * @param divisionPercent a division of the dial, in % air, greater than 0
     * @param profile whose tolerances hold
     * @return the calibration with its doubts, or everything that is wrong with the check
     */
    public static Answer<DialCalibration> of(DialCheck check, Volume bowl, double divisionPercent, Profile profile) {
        Answer<DialCurve> answer = DialCurve.of(check, bowl, divisionPercent, profile);
        if (answer.value().isEmpty()) {
            return Answer.refused(answer.problems());
        }
        List<Problem> doubts = new ArrayList<>(answer.problems());
        DialCurve curve = answer.value().get();
        DialScale usual = DialScale.usual(bowl);
        DialScale scale = new DialScale(
                check.chamber().map(chamber -> chamber.value()).orElse(usual.chamber()),
                check.initialPressure().map(pressure -> pressure.value()).orElse(usual.initialGauge()),
                bowl);
        Optional<ImpliedChamber> chamber = ImpliedChamber.of(curve, scale);
        if (chamber.isEmpty()) {
            doubts.add(Problem.warning("points", "meter.no-chamber-implied"));
        }
        Optional<MeterCheck> leak = check.leakMarks().map(marks -> DialPoints.leak(marks, profile));
        return Answer.of(
                new DialCalibration(
                        curve,
                        scale,
                        check.chamber().isEmpty() || check.initialPressure().isEmpty(),
                        InitialLine.of(curve, scale, check.initialLine()),
                        chamber,
                        leak),
                doubts);
    }

    /** Returns dial and, where it was watched, leak against their limits. */
    public List<MeterCheck> checks() {
        List<MeterCheck> checks = new ArrayList<>(List.of(curve.largestError()));
        leak.ifPresent(checks::add);
        return List.copyOf(checks);
    }

    /** Returns whether dial and leak, where it was watched, lie within their limits. */
    public boolean passes() {
        return checks().stream().allMatch(MeterCheck::passes);
    }

    /**
     * Returns what the model reads of a true air, in % air: with the implied chamber and initial pressure, else with those
     * of the scale.
     *
     * @param truePercent air in the bowl just under the cover, in % of the bowl, from 0 to 100
     */
    public double predictedReading(double truePercent) {
        BoyleTypeB made = BoyleTypeB.of(scale, Surroundings.at(0));
        return chamber.map(implied -> made.withChamber(implied.volume()).withInitialGauge(implied.initialGauge()))
                .orElse(made)
                .reading(truePercent, scale);
    }
}
