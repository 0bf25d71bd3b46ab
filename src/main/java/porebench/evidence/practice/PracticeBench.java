package porebench.evidence.practice;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.MeterStory;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.meter.DialCurve;
import porebench.method.sample.CorrectionSample;
import porebench.method.simulate.Bench;
import porebench.method.simulate.Dial;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.record.Meter;
import porebench.record.MixDesign;

/**
 * The simulated bench for a mix and a meter: who works at it without a fault weighs the correction sample of that mix for that
 * bowl, soaks it as long as the mix says, withdraws the target air and reads that meter, so that nothing about the trial is
 * doubtful but what was planted.
 */
public final class PracticeBench {
    private static final int USUAL_SOAK_MINUTES = 30;
    private static final double MOST_AIR_PERCENT = 20;

    private PracticeBench() {}

    /**
     * Makes a bench.
     *
     * @param mix the mix
     * @param story what is known of the meter
     * @param day the day of the trials: the bowl volume and the dial's errors are those known on it
     * @param trueFactorPercent G, in % air, from 0 to 10
     * @return the bench, or why nobody could make a trial of this mix on this meter
     */
    public static Answer<Bench> of(MixDesign mix, MeterStory story, LocalDate day, double trueFactorPercent) {
        Meter meter = story.meterOn(day);
        Optional<DialCurve> curve = meter.type() == MeterType.B ? story.dialCurveOn(day) : Optional.empty();
        Dial dial = curve.<Dial>map(known -> known::readingOf).orElse(Dial.TRUE);
        return of(mix, meter.type(), meter.bowl(), meter.divisionPercent(), dial, trueFactorPercent);
    }

    /**
     * Makes a bench with a meter of which nothing more is known: its dial is taken to be true.
     *
     * @param mix the mix
     * @param type the type of the meter
     * @param bowl its bowl volume
     * @param divisionPercent a division of its scale, in % air
     * @param trueFactorPercent G, in % air, from 0 to 10
     */
    public static Answer<Bench> of(
            MixDesign mix, MeterType type, Typed<Volume> bowl, BigDecimal divisionPercent, double trueFactorPercent) {
        return of(mix, type, bowl, divisionPercent, Dial.TRUE, trueFactorPercent);
    }

    private static Answer<Bench> of(
            MixDesign mix,
            MeterType type,
            Typed<Volume> bowl,
            BigDecimal divisionPercent,
            Dial dial,
            double trueFactorPercent) {
        Answer<CorrectionSample> answer = CorrectionSample.of(mix.batch(), bowl.value());
        List<Problem> problems = new ArrayList<>(answer.problems());
        double air = mix.batch().targetAirPercent().doubleValue();
        if (air > MOST_AIR_PERCENT) {
            problems.add(Problem.error("targetAir", "practice.air-beyond", air, MOST_AIR_PERCENT));
        }
        if (answer.value().isEmpty() || Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        CorrectionSample sample = answer.value().get();
        int soak = mix.soakMinutes()
                .map(minutes -> minutes.setScale(0, RoundingMode.HALF_UP).intValue())
                .orElse(USUAL_SOAK_MINUTES);
        double scatter = Bench.Gauge.of(type).scatterPercent();
        return Answer.of(
                Bench.of(type, trueFactorPercent)
                        .with(new Bench.Gauge(type, bowl, divisionPercent, scatter, 1, dial))
                        .with(new Bench.Filling(air, sample.fine(), sample.coarse(), soak)),
                problems);
    }
}
