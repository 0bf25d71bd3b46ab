package porebench.method.budget;

import java.util.Optional;
import java.util.Set;
import porebench.method.MeterType;
import porebench.quantity.Require;
import porebench.statistics.summary.Summary;

/**
 * Everything that the budget of a factor is made of. Readings and water are means over the trials that count.
 *
 * @param meterType the type of the meter
 * @param factors the factors of the trials, in % air
 * @param divisionPercent a division of the scale, in % air, greater than 0
 * @param readingPercent the reading before any correction, in % air; of Type A the one under pressure, h1
 * @param releasedPercent Type A: the reading after release, h2, in % air; 0 of Type B
 * @param dial Type B: the correction of the dial; empty when it was never checked
 * @param bowl the bowl
 * @param water Type B: the water withdrawn; empty of Type A
 * @param sample the masses of the sample; empty when not written down
 * @param scatter how a single trial scatters
 * @param between how the mean differs between days, operators and meters; empty where nothing is known of it
 * @param noted what the caller knows to be missing, besides what shows in the other components
 */
public record FactorInputs(
        MeterType meterType,
        Summary factors,
        double divisionPercent,
        double readingPercent,
        double releasedPercent,
        Optional<DialCorrection> dial,
        Bowl bowl,
        Optional<Water> water,
        Optional<Sample> sample,
        TrialScatter scatter,
        Optional<Between> between,
        Set<Omission> noted) {
    public FactorInputs {
        Require.positive("divisionPercent", divisionPercent);
        Require.finite("readingPercent", readingPercent);
        Require.finite("releasedPercent", releasedPercent);
        noted = Set.copyOf(noted);
    }
}
