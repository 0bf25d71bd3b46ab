package porebench.evidence.forecast;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import porebench.evidence.CountedTrials;
import porebench.evidence.EvidenceReader;
import porebench.evidence.InTheBowl;
import porebench.evidence.JudgedTrial;
import porebench.evidence.MeterScale;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.forecast.Bowlful;
import porebench.method.forecast.PoreAir;
import porebench.method.forecast.TestedBowls;
import porebench.method.trial.Scatter;
import porebench.quantity.Mass;
import porebench.record.MixDesign;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Records;
import porebench.record.id.MixId;

/** Gathers the trials that count of a laboratory, with what was in the bowl: see {@link InTheBowl}. */
public final class ForecastTrials {
    private final TestedBowls.Builder bowls = new TestedBowls.Builder();

    /** What the coarsest scale in use makes trials scatter by itself; 0 while none is known. */
    private double dialPercent;

    /** Reads how the mixes of a lab book stand, and forecasts from the trials of all of them; says how far it is. */
    public static Answer<LaboratoryForecast> of(LabBook book, Progress progress) {
        return of(LaboratoryStanding.of(book, progress));
    }

    /** Forecasts from the trials of all mixes of a laboratory, as they are kept beside the entries; none is judged again for it. */
    public static Answer<LaboratoryForecast> of(LaboratoryStanding standing) {
        ForecastTrials gathered = new ForecastTrials();
        standing.eachCounted(gathered::add);
        return gathered.forecast();
    }

    /** Reads and judges the trials of some mixes of a lab book, and says how far it is; what the others say is not known then. */
    public static Answer<LaboratoryForecast> of(Records book, Collection<MixId> mixes, Progress progress) {
        ForecastTrials gathered = new ForecastTrials();
        EvidenceReader.asking(book)
                .readEach(mixes, progress, evidence -> evidence.counted().forEach(gathered::add));
        return gathered.forecast();
    }

    /** Adds a determination; those of one mix come one after the other. */
    private void add(CountedTrials counted) {
        dialPercent = Math.max(
                dialPercent,
                Scatter.ofTheDial(counted.meterType(), counted.bowl().divisionPercent()));
        add(counted.mixId(), counted.id().text(), counted.bowl(), counted.factors());
    }

    /** Adds a determination of a mix whose sources are what they were. */
    public void add(MixDesign mix, String determination, List<JudgedTrial> trials) {
        add(
                mix.id(),
                determination,
                InTheBowl.of(mix, trials),
                trials.stream()
                        .filter(JudgedTrial::counts)
                        .mapToDouble(trial -> trial.factorPercent().orElseThrow())
                        .toArray());
    }

    private void add(MixId mix, String determination, InTheBowl bowl, double[] factors) {
        if (bowl.kilograms().isEmpty()) {
            return;
        }
        Map<String, Mass> held = new HashMap<>();
        bowl.kilograms().forEach((source, kilograms) -> held.put(source, new Mass(kilograms)));
        bowls.add(mix.text(), determination, new Bowlful(held, InTheBowl.BOWL), factors);
    }

    /** Returns the forecast that the gathered trials allow. */
    public Answer<LaboratoryForecast> forecast() {
        Answer<PoreAir> air = PoreAir.of(
                bowls.build(),
                dialPercent > 0 ? dialPercent : Scatter.ofTheDial(MeterType.B, MeterScale.USUAL_DIVISION_PERCENT));
        return new Answer<>(air.value().map(LaboratoryForecast::new), air.problems());
    }
}
