package porebench.evidence.practice;

import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Optional;
import porebench.method.simulate.SimulatedTrial;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/**
 * Turns what the simulated bench did into the trials of a sheet, each marked as simulated and saying so in its id and
 * remarks. The true factor and the faults stay out of it: who practises has to find them.
 *
 * @param mixId the mix
 * @param determinationId the determination
 * @param meterId the meter
 * @param from when the first trial is made
 * @param aDay how many trials follow one another in a day, an hour apart; the next are made on the next day
 * @param seed the seed of the bench
 * @param operator who stands as operator
 * @param remark what stands beside every trial
 */
public record SimulatedSheet(
        MixId mixId,
        DeterminationId determinationId,
        MeterId meterId,
        LocalDateTime from,
        int aDay,
        long seed,
        String operator,
        String remark) {

    /** Returns the id that a trial of a run gets. */
    public static TrialId idOf(long seed, int number) {
        return new TrialId(String.format(Locale.ROOT, "SIM-%d-%03d", seed, number));
    }

    /** Returns what a trial of the bench looks like in a sheet. */
    public Trial trial(SimulatedTrial made) {
        int index = made.number() - 1;
        return new Trial(
                        idOf(seed, made.number()),
                        mixId,
                        determinationId,
                        from.plusDays(index / aDay).plusHours(index % aDay),
                        operator,
                        meterId,
                        readings(made),
                        remark,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        false)
                .asSimulated();
    }

    private static Readings readings(SimulatedTrial made) {
        return new Readings(
                made.meterType(),
                made.bowl(),
                Optional.of(made.fine()),
                Optional.of(made.coarse()),
                Optional.of(made.soakMinutes()),
                Optional.of(made.waterCelsius()),
                made.withdrawnMillilitres().map(number -> new Withdrawal(number, Withdrawal.Unit.MILLILITRE)),
                made.gaugePercent(),
                made.h1Percent(),
                made.h2Percent(),
                false);
    }
}
