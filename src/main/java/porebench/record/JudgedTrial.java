package porebench.record;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.sample.CorrectionSample;
import porebench.method.trial.Expected;
import porebench.method.trial.TrialFactor;

/**
 * A trial with its factor and doubts, judged against its mix and its meter.
 *
 * @param trial the trial, in its newest version
 * @param figures its factor and what is wrong or doubtful
 */
public record JudgedTrial(Version<Trial> trial, TrialFactor figures) {
    /**
     * Judges a trial.
     *
     * @param trial the trial
     * @param mix its mix design; empty when it is not known, and then nothing is checked against it
     * @param meter its meter; empty when it is not known
     * @param profile whose tolerances hold
     */
    public static JudgedTrial of(
            Version<Trial> trial, Optional<MixDesign> mix, Optional<Meter> meter, Profile profile) {
        return new JudgedTrial(
                trial, TrialFactor.of(trial.value().readings(), expected(trial.value(), mix, meter), profile));
    }

    private static Expected expected(Trial trial, Optional<MixDesign> mix, Optional<Meter> meter) {
        Optional<CorrectionSample> sample = mix.flatMap(design -> CorrectionSample.of(
                        design.batch(), trial.readings().bowl().value())
                .value());
        return new Expected(
                sample.map(CorrectionSample::fine),
                sample.map(CorrectionSample::coarse),
                number(mix.flatMap(MixDesign::soakMinutes).map(Number::doubleValue)),
                number(mix.map(design -> design.batch().targetAirPercent().doubleValue())),
                number(meter.map(m -> m.scaleTopPercent().doubleValue())));
    }

    private static OptionalDouble number(Optional<Double> number) {
        return number.isPresent() ? OptionalDouble.of(number.get()) : OptionalDouble.empty();
    }

    /** Returns whether the trial enters the numbers: it is neither void nor struck. */
    public boolean counts() {
        return figures.counts() && !isStruck();
    }

    /** Returns whether a person struck it. */
    public boolean isStruck() {
        return trial.value().struckBecause().isPresent();
    }

    /** Returns whether its own readings void it. */
    public boolean isVoid() {
        return !figures.counts();
    }

    /** Returns its doubts: warnings only. */
    public List<Problem> doubts() {
        return figures.problems().stream().filter(problem -> !problem.isError()).toList();
    }

    /** Returns the factor in % air, not rounded; empty when it could not be computed. */
    public OptionalDouble factorPercent() {
        return figures.factorPercent();
    }
}
