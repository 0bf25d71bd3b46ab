package porebench.evidence.forecast;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import porebench.evidence.Basis;
import porebench.evidence.Evidence;
import porebench.evidence.EvidenceReader;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.evidence.MeterScale;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.method.forecast.Bowlful;
import porebench.method.forecast.PoreAir;
import porebench.method.forecast.TestedBowls;
import porebench.method.sample.CorrectionSample;
import porebench.method.trial.Readings;
import porebench.method.trial.Scatter;
import porebench.quantity.Mass;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.book.Progress;
import porebench.record.book.Records;
import porebench.record.id.MixId;

/**
 * Gathers the trials that count of a laboratory, with what was in the bowl.
 *
 * <p>Of a trial only the masses of all fine and of all coarse aggregate are known; each is shared out as the mix design of that day
 * shares it, and where a mass was not written down the design's own is taken. The masses of the trials of a determination are
 * averaged. A source whose stone has changed since stands under another name, so that it says nothing of the stone of today.
 */
public final class ForecastTrials {
    private static final Volume ANY_BOWL = new Volume(0.007);

    private final TestedBowls.Builder bowls = new TestedBowls.Builder();

    /** What the coarsest scale in use makes trials scatter by itself; 0 while none is known. */
    private double dialPercent;

    /** Reads the trials of all mixes of a lab book, and says how far it is. */
    public static Answer<LaboratoryForecast> of(Records book, Progress progress) {
        return of(book, book.ids(RecordKind.MIX).stream().map(MixId::new).toList(), progress);
    }

    /** Reads the trials of some mixes of a lab book, and says how far it is; what the others say is not known then. */
    public static Answer<LaboratoryForecast> of(Records book, Collection<MixId> mixes, Progress progress) {
        ForecastTrials gathered = new ForecastTrials();
        EvidenceReader.asking(book).readEach(mixes, progress, gathered::add);
        return gathered.forecast();
    }

    /** Adds the determinations of a mix. */
    private void add(Evidence evidence) {
        for (JudgedDetermination judged : evidence.determinations()) {
            String determination = judged.determination().value().id().text();
            dialPercent =
                    Math.max(dialPercent, Scatter.ofTheDial(judged.meterType(), evidence.divisionPercent(judged)));
            Optional.ofNullable(
                            evidence.made().get(judged.determination().value().id()))
                    .ifPresent(basis -> add(basis.mix(), determination, judged.trials(), names(basis)));
        }
    }

    /** Adds a determination of a mix whose sources are what they were. */
    public void add(MixDesign mix, String determination, List<JudgedTrial> trials) {
        add(mix, determination, trials, source -> source);
    }

    private void add(MixDesign mix, String determination, List<JudgedTrial> trials, Function<String, String> names) {
        List<JudgedTrial> counted = trials.stream().filter(JudgedTrial::counts).toList();
        Map<String, Mass> held = new TreeMap<>();
        Map<Volume, Optional<CorrectionSample>> samples = new HashMap<>();
        double[] factors = new double[counted.size()];
        for (int i = 0; i < factors.length; i++) {
            Readings readings = counted.get(i).trial().value().readings();
            factors[i] = counted.get(i).factorPercent().orElseThrow();
            Optional<CorrectionSample> sample =
                    samples.computeIfAbsent(readings.bowl().value(), bowl -> sample(mix, bowl));
            if (sample.isEmpty()) {
                return;
            }
            double part = ANY_BOWL.cubicMetres() / readings.bowl().value().cubicMetres() / factors.length;
            for (CorrectionSample.Component component : sample.get().components()) {
                double kilograms = component.mass().kilograms() * weighed(sample.get(), component.role(), readings);
                held.merge(names.apply(component.source()), new Mass(kilograms * part), Mass::plus);
            }
        }
        if (factors.length > 0) {
            bowls.add(mix.id().text(), determination, new Bowlful(held, ANY_BOWL), factors);
        }
    }

    static Optional<CorrectionSample> sample(MixDesign mix, Volume bowl) {
        return CorrectionSample.of(mix.batch(), bowl).value();
    }

    /** Returns how much of the designed mass of the fine or of the coarse aggregate was weighed. */
    private static double weighed(CorrectionSample sample, Role role, Readings readings) {
        Optional<Typed<Mass>> typed = role == Role.FINE ? readings.fine() : readings.coarse();
        double designed = (role == Role.FINE ? sample.fine() : sample.coarse()).kilograms();
        return typed.filter(mass -> designed > 0)
                .map(mass -> mass.value().kilograms() / designed)
                .orElse(1.0);
    }

    /** Returns under which name each source of a determination stands. */
    private static Function<String, String> names(Basis basis) {
        Map<String, String> names = new HashMap<>();
        basis.stories().forEach((id, story) -> {
            SortedSet<Integer> stones = basis.stonesOf(id);
            boolean isToday = stones.equals(new TreeSet<>(Set.of(story.last().stone())));
            // No source of today has a name with a line break.
            names.put(id.text(), isToday ? id.text() : id.text() + "\n" + stones);
        });
        return source -> names.getOrDefault(source, source);
    }

    /** Returns the forecast that the gathered trials allow. */
    public Answer<LaboratoryForecast> forecast() {
        Answer<PoreAir> air = PoreAir.of(
                bowls.build(),
                dialPercent > 0 ? dialPercent : Scatter.ofTheDial(MeterType.B, MeterScale.USUAL_DIVISION_PERCENT));
        return new Answer<>(air.value().map(LaboratoryForecast::new), air.problems());
    }
}
