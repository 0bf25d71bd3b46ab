package porebench.record.production;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import porebench.record.Production;
import porebench.record.Proportions;

/**
 * What was made of a mix after a day and by another, as far as its spells state it. A spell counts on its last day, for only then is it
 * known; one that began on or before the first of the two days counts by the share of its days that come after it.
 *
 * @param productionDays on how many days it was made
 * @param loads how many loads were made
 * @param cubicMetres the concrete made, in m3; a mass of concrete counts by the density of the mix design
 * @param tonnes the aggregate that took, by source, in t
 */
public record Made(double productionDays, double loads, double cubicMetres, Map<String, Double> tonnes) {
    private static final double KILOGRAMS_IN_A_TONNE = 1000;

    public Made {
        tonnes = Map.copyOf(tonnes);
    }

    /**
     * Adds up some spells of a mix.
     *
     * @param mix the proportions by which concrete counts as aggregate
     * @param spells the spells, in any order
     * @param after the day after which they count
     * @param until the last day on which a spell may end
     */
    public static Made of(Proportions mix, Collection<Production> spells, LocalDate after, LocalDate until) {
        double days = 0;
        double loads = 0;
        double volume = 0;
        Map<String, Double> tonnes = new TreeMap<>();
        for (Production spell : spells) {
            if (spell.lastDay().isAfter(until)) {
                continue;
            }
            double share = share(spell, after);
            days += share * spell.productionDays().orElse(0);
            loads += share * spell.loads().orElse(0);
            double made = share * cubicMetres(mix, spell).orElse(0);
            volume += made;
            double batches = share * batches(mix, spell).orElse(0);
            mix.kilograms()
                    .forEach((part, mass) ->
                            tonnes.merge(part.source(), batches * mass / KILOGRAMS_IN_A_TONNE, Double::sum));
        }
        return new Made(days, loads, volume, tonnes);
    }

    /** Returns the share of the days of a spell that come after a day, 0 to 1. */
    public static double share(Production spell, LocalDate after) {
        long days = ChronoUnit.DAYS.between(after, spell.lastDay());
        return (double) Math.max(0, Math.min(spell.days(), days)) / spell.days();
    }

    private static OptionalDouble cubicMetres(Proportions mix, Production spell) {
        return spell.volume().isPresent()
                ? OptionalDouble.of(spell.volume().get().value().cubicMetres())
                : mix.cubicMetres().stream()
                        .flatMap(volume -> batches(mix, spell).stream().map(count -> count * volume))
                        .findFirst();
    }

    /** Returns how many batches of the mix design were made; empty where that does not follow from what is stated. */
    private static OptionalDouble batches(Proportions mix, Production spell) {
        if (spell.mass().isPresent()) {
            return mix.batchKilograms() > 0
                    ? OptionalDouble.of(spell.mass().get().value().kilograms() / mix.batchKilograms())
                    : OptionalDouble.empty();
        }
        return spell.volume().isPresent()
                ? mix.cubicMetres().stream()
                        .map(volume -> spell.volume().get().value().cubicMetres() / volume)
                        .findFirst()
                : OptionalDouble.empty();
    }

    /** Returns the aggregate of all sources together, in t. */
    public double tonnesInAll() {
        return tonnes.values().stream().mapToDouble(mass -> mass).sum();
    }
}
