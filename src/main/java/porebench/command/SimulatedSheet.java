package porebench.command;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Optional;
import porebench.method.simulate.SimulatedTrial;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.record.DeterminationId;
import porebench.record.MeterId;
import porebench.record.MixId;
import porebench.record.Trial;
import porebench.record.TrialId;

/**
 * Turns what the simulated bench did into the trials of a sheet, each marked as simulated and saying so in its id and
 * remarks. The true factor stays out of the sheet: who practises on it has to find it.
 *
 * @param mixId the mix the sheet is for
 * @param meterId the meter the sheet is for
 * @param from the day of the first trial; six trials a day follow one another
 * @param seed the seed of the bench
 * @param operator who stands as operator
 * @param remark what stands beside every trial
 */
record SimulatedSheet(MixId mixId, MeterId meterId, LocalDate from, long seed, String operator, String remark) {
    private static final int TRIALS_A_DAY = 6;
    private static final int FIRST_HOUR = 8;

    Trial trial(SimulatedTrial made) {
        int index = made.number() - 1;
        LocalDateTime testedAt = from.plusDays(index / TRIALS_A_DAY).atTime(FIRST_HOUR + index % TRIALS_A_DAY, 0);
        String run = "SIM-" + seed;
        return new Trial(
                        new TrialId(String.format(Locale.ROOT, "%s-%03d", run, made.number())),
                        mixId,
                        new DeterminationId(mixId.text() + "/" + run),
                        testedAt,
                        operator,
                        meterId,
                        readings(made),
                        remark,
                        Optional.empty(),
                        Optional.empty())
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
