package porebench.evidence.forecast;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import porebench.evidence.InTheBowl;
import porebench.method.Answer;
import porebench.method.forecast.Bowlful;
import porebench.method.forecast.Forecast;
import porebench.method.forecast.PoreAir;
import porebench.method.forecast.SourceAir;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Mass;
import porebench.quantity.Volume;
import porebench.record.MixDesign;
import porebench.statistics.variance.PooledVariances;

/**
 * What the trials of a laboratory say of mixes that were not tested. It is an estimate: no factor is issued from it, and no card made.
 */
public final class LaboratoryForecast {
    private final PoreAir air;

    LaboratoryForecast(PoreAir air) {
        this.air = air;
    }

    /**
     * Forecasts the factor of a mix as a design has it, with the stone that its sources give today. What is peculiar to a mix that was
     * tested is not taken over: its design is forecast as that of a new mix.
     *
     * @param mix the design, which need not be kept
     * @param bowl the bowl volume
     * @param trials of how many trials the determination would be
     * @return the forecast with its own doubts, not those about the design, or every reason why there is none
     */
    public Answer<Forecast> of(MixDesign mix, Volume bowl, int trials) {
        Answer<CorrectionSample> sample = CorrectionSample.of(mix.batch(), bowl);
        if (sample.value().isEmpty()) {
            return Answer.refused(sample.problems());
        }
        Map<String, Mass> held = new TreeMap<>();
        sample.value()
                .get()
                .components()
                .forEach(component -> held.merge(component.source(), component.mass(), Mass::plus));
        return air.forecast(new Bowlful(held, bowl), trials);
    }

    /** Returns what is known of the stone that each source gives today, those in no trial left out. */
    public List<SourceAir> sources() {
        return air.sources().stream()
                .filter(one -> InTheBowl.isOfToday(one.source()))
                .sorted(Comparator.comparing(SourceAir::source))
                .toList();
    }

    /** Returns what is known of one source; empty when no trial has its stone of today. */
    public Optional<SourceAir> source(String source) {
        return sources().stream().filter(one -> one.source().equals(source)).findFirst();
    }

    /** Returns the correlation of the pore air of two sources; empty where one of them is not told apart or was in no bowl. */
    public OptionalDouble correlation(String one, String other) {
        OptionalDouble covariance = air.covariance(one, other);
        return covariance.isPresent()
                ? OptionalDouble.of(covariance.getAsDouble()
                        / Math.sqrt(air.covariance(one, one).orElseThrow()
                                * air.covariance(other, other).orElseThrow()))
                : covariance;
    }

    /** Returns the scatter between mixes, determinations and trials, as variances in the square of % air. */
    public PooledVariances variances() {
        return air.variances();
    }

    /** Returns how many mixes with trials there are. */
    public int mixes() {
        return air.mixes();
    }

    /** Returns every determination beside what the trials of the other mixes say of it. */
    public List<PoreAir.Compared> compared() {
        return air.compared();
    }

    /** Returns how far determinations lie from what the other mixes say of them, in % air; empty where they say nothing. */
    public OptionalDouble leftOutErrorPercent() {
        return air.leftOutErrorPercent();
    }
}
