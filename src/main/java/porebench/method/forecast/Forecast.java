package porebench.method.forecast;

import java.util.Map;
import java.util.Optional;

/**
 * The factor of a mix as it is forecast: an estimate before testing, never a factor.
 *
 * @param percent the forecast, in % air, not rounded
 * @param lowPercent the low end of the interval in which one determination would lie in 95 of 100 cases, in % air
 * @param highPercent its high end
 * @param trials of how many trials that determination would be the mean
 * @param degreesOfFreedom how well the scatter is known, at least 1
 * @param parts what each source adds, in % air; a source that is not told apart from others is missing
 * @param extrapolates whether the mix lies outside what the trials cover
 * @param pull the mix without whose trials the forecast would change most; empty where no mix can be left out
 */
public record Forecast(
        double percent,
        double lowPercent,
        double highPercent,
        int trials,
        double degreesOfFreedom,
        Map<String, Double> parts,
        boolean extrapolates,
        Optional<Pull> pull) {
    public Forecast {
        parts = Map.copyOf(parts);
    }

    /**
     * A mix that the forecast rests on.
     *
     * @param mix its name
     * @param withoutPercent what the forecast would be without its trials, in % air
     */
    public record Pull(String mix, double withoutPercent) {}
}
