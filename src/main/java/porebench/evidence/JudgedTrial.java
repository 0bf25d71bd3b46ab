package porebench.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.DialCurve;
import porebench.method.meter.ElevationUse;
import porebench.method.meter.MeterState;
import porebench.method.sample.CorrectionSample;
import porebench.method.trial.Corrections;
import porebench.method.trial.Expected;
import porebench.method.trial.TrialFactor;
import porebench.quantity.Volume;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.Trial;
import porebench.record.book.Version;

/**
 * A trial with its factor and doubts, judged against its mix and its meter as that stood on the day.
 *
 * @param trial the trial, in its newest version
 * @param figures its factor and what is wrong or doubtful
 * @param meterState whether the meter was to be trusted that day; empty when the laboratory had not begun to keep
 *     calibrations of it, and then nothing is said about it
 */
public record JudgedTrial(Version<Trial> trial, TrialFactor figures, Optional<MeterState> meterState) {
    /**
     * Judges a trial by its readings as typed, as far as nothing is known of the meter's calibrations.
     *
     * @param trial the trial
     * @param mix its mix design; empty when it is not known, and then nothing is checked against it
     * @param meter its meter; empty when it is not known
     * @param profile whose tolerances hold
     */
    public static JudgedTrial of(
            Version<Trial> trial, Optional<MixDesign> mix, Optional<Meter> meter, Profile profile) {
        return new JudgedTrial(
                trial,
                TrialFactor.of(
                        trial.value().readings(),
                        expected(trial.value(), mix, meter, bowl -> sample(mix, bowl)),
                        profile),
                Optional.empty());
    }

    /**
     * Judges a trial with the meter as it was that day: the factor is computed with the bowl volume in force, whatever the
     * sheet states, and with the reading of a dial corrected along its curve.
     *
     * <p>A laboratory that keeps no calibrations of the meter by that day is not reminded of it with every trial.
     *
     * @param trial the trial
     * @param mix its mix design; empty when it is not known, and then nothing is checked against it
     * @param story what is known of its meter
     */
    public static JudgedTrial of(Version<Trial> trial, Optional<MixDesign> mix, MeterStory story) {
        return of(trial, mix, story, bowl -> sample(mix, bowl));
    }

    /** Judges a trial as {@link #of(Version, Optional, MeterStory)}, its mix's correction sample being at hand. */
    static JudgedTrial of(
            Version<Trial> trial,
            Optional<MixDesign> mix,
            MeterStory story,
            Function<Volume, Optional<CorrectionSample>> samples) {
        Trial made = trial.value();
        LocalDate day = made.testedAt().toLocalDate();
        Meter meter = story.meter().value();
        TrialFactor figures = TrialFactor.of(
                made.readings(),
                corrections(made, story, day),
                expected(made, mix, Optional.of(meter), samples),
                story.profile());
        if (!story.isKeptOn(day)) {
            return new JudgedTrial(trial, figures, Optional.empty());
        }
        MeterState state = story.stateOn(day);
        List<Problem> doubts = new ArrayList<>(doubt(story, state, day));
        doubts.addAll(movedTooFar(made, story, day));
        return new JudgedTrial(trial, figures.alsoDoubted(doubts), Optional.of(state));
    }

    /** A Type A meter holds for the elevation at which its column was calibrated. */
    private static List<Problem> movedTooFar(Trial made, MeterStory story, LocalDate day) {
        return story.columnOn(day)
                .flatMap(column -> made.elevationMetres()
                        .map(metres -> column.elevationUse(metres.doubleValue(), story.profile())))
                .map(ElevationUse::doubts)
                .orElse(List.of());
    }

    private static Corrections corrections(Trial trial, MeterStory story, LocalDate day) {
        boolean isTypeB = trial.readings().meterType() == MeterType.B;
        Optional<DialCurve> curve = isTypeB ? story.dialCurveOn(day) : Optional.empty();
        return new Corrections(
                story.bowlCalibrationOn(day).map(BowlCalibration::volume),
                trial.readings()
                        .gaugePercent()
                        .flatMap(gauge -> curve.map(known -> known.trueOf(gauge.doubleValue())))
                        .map(corrected -> new Corrections.Gauge(
                                corrected.truePercent(),
                                corrected.standardUncertaintyPercent(),
                                corrected.isExtrapolated())));
    }

    private static List<Problem> doubt(MeterStory story, MeterState state, LocalDate day) {
        String meter = story.meter().value().id().text();
        return switch (state) {
            case OK, DUE -> List.of();
            case OVERDUE ->
                List.of(Problem.warning(
                                "meter",
                                "trial.meter-overdue",
                                meter,
                                story.nextDueOn(day).orElseThrow().toString())
                        .of(Problem.Kind.METER));
            case FAILED ->
                List.of(Problem.warning("meter", "trial.meter-failed", meter).of(Problem.Kind.METER));
            case NEVER ->
                List.of(Problem.warning("meter", "trial.meter-never-calibrated", meter)
                        .of(Problem.Kind.METER));
        };
    }

    /** Returns the correction sample of a mix for a bowl; empty where there is no mix or it has none. */
    static Optional<CorrectionSample> sample(Optional<MixDesign> mix, Volume bowl) {
        return mix.flatMap(design -> CorrectionSample.of(design.batch(), bowl).value());
    }

    private static Expected expected(
            Trial trial,
            Optional<MixDesign> mix,
            Optional<Meter> meter,
            Function<Volume, Optional<CorrectionSample>> samples) {
        Optional<CorrectionSample> sample =
                samples.apply(trial.readings().bowl().value());
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

    /** Returns this with more doubts. */
    JudgedTrial alsoDoubted(List<Problem> doubts) {
        return new JudgedTrial(trial, figures.alsoDoubted(doubts), meterState);
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
