package porebench.evidence;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import porebench.method.Role;
import porebench.method.sample.CorrectionSample;
import porebench.method.trial.Readings;
import porebench.quantity.Mass;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.record.MixDesign;

/**
 * What stood in the bowl of a determination, on average of its trials that count: what a forecast asks of it beside its factors.
 *
 * <p>Of a trial only the masses of all fine and of all coarse aggregate are known; each is shared out as the mix design of that day
 * shares it, and where a mass was not written down the design's own is taken. A source whose stone has changed since stands under
 * another name, so that it says nothing of the stone of today.
 *
 * @param divisionPercent a division of the scale that the determination vouches for, in % air
 * @param kilograms the mass of each source in a bowl of {@link #BOWL}, in kg, in the moisture state on the bench; none where no
 *     trial counts or nothing is known of it
 */
public record InTheBowl(double divisionPercent, Map<String, Double> kilograms) {
    /** The bowl that the masses are those of, whichever the trials were made in. */
    public static final Volume BOWL = new Volume(0.007);

    /** Nothing is known of what stood in it, and the scale is the usual one. */
    public static final InTheBowl UNKNOWN = new InTheBowl(MeterScale.USUAL_DIVISION_PERCENT, Map.of());

    /** Parts the name of a source from the stones that it gave; no source of today has a name with it. */
    private static final char OF_OTHER_STONE = '\n';

    public InTheBowl {
        kilograms = Map.copyOf(kilograms);
    }

    /** Returns whether a name is that of a source with the stone of today. */
    public static boolean isOfToday(String name) {
        return name.indexOf(OF_OTHER_STONE) < 0;
    }

    /** Returns what stood in the bowl of trials of a mix whose sources are what they were; the scale is the usual one. */
    public static InTheBowl of(MixDesign mix, List<JudgedTrial> trials) {
        return new InTheBowl(MeterScale.USUAL_DIVISION_PERCENT, kilograms(mix, trials, source -> source));
    }

    /** Returns what stood in the bowl of trials that were made with something; empty where nobody knows with what. */
    static InTheBowl of(Optional<Basis> made, List<JudgedTrial> trials, double divisionPercent) {
        return new InTheBowl(
                divisionPercent,
                made.map(basis -> kilograms(basis.mix(), trials, names(basis))).orElse(Map.of()));
    }

    private static Map<String, Double> kilograms(MixDesign mix, List<JudgedTrial> trials, UnaryOperator<String> names) {
        List<JudgedTrial> counted = trials.stream().filter(JudgedTrial::counts).toList();
        Map<String, Double> held = new TreeMap<>();
        Map<Volume, Optional<CorrectionSample>> samples = new HashMap<>();
        for (JudgedTrial trial : counted) {
            Readings readings = trial.trial().value().readings();
            Optional<CorrectionSample> sample = samples.computeIfAbsent(
                    readings.bowl().value(),
                    bowl -> CorrectionSample.of(mix.batch(), bowl).value());
            if (sample.isEmpty()) {
                return Map.of();
            }
            double part = BOWL.cubicMetres() / readings.bowl().value().cubicMetres() / counted.size();
            for (CorrectionSample.Component component : sample.get().components()) {
                double weighed = component.mass().kilograms() * weighed(sample.get(), component.role(), readings);
                held.merge(names.apply(component.source()), weighed * part, Double::sum);
            }
        }
        return held;
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
    private static UnaryOperator<String> names(Basis basis) {
        Map<String, String> names = new HashMap<>();
        basis.stories().forEach((id, story) -> {
            SortedSet<Integer> stones = basis.stonesOf(id);
            boolean isToday = stones.equals(new TreeSet<>(Set.of(story.last().stone())));
            names.put(id.text(), isToday ? id.text() : id.text() + OF_OTHER_STONE + stones);
        });
        return source -> names.getOrDefault(source, source);
    }
}
