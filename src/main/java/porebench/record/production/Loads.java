package porebench.record.production;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import porebench.record.Production;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/**
 * How many loads of a mix are made in a week, as far as its spells of the last weeks state it.
 *
 * <p>They are the loads of the last {@link #WEEKS} weeks, a spell that reaches into them counting by its days there, over those weeks;
 * where the mix was first reported later, over the days since, at least one week. Days without a report count as without a load.
 */
public final class Loads {
    /** So many weeks count: two months are one rhythm of a plant, and no season. Our own choice, no source. */
    public static final int WEEKS = 8;

    private static final int DAYS_A_WEEK = 7;

    private Loads() {}

    /**
     * Returns the loads a week of some mixes by a day, asking the lab book for their spells alone.
     *
     * @return by mix, in loads a week; a mix of which no spell of these weeks states its loads is left out
     */
    public static Map<MixId, Double> aWeek(Records book, Collection<MixId> mixes, LocalDate until) {
        Map<MixId, List<Production>> spells = new HashMap<>();
        book.latestOf(
                        Belonging.PRODUCTION_OF_MIX,
                        mixes.stream().map(MixId::text).toList())
                .forEach(version -> spells.computeIfAbsent(version.value().mixId(), any -> new ArrayList<>())
                        .add(version.value()));
        Map<MixId, Double> loads = new HashMap<>();
        spells.forEach((mix, ofMix) -> aWeek(ofMix, until).ifPresent(found -> loads.put(mix, found)));
        return loads;
    }

    /** Returns the loads a week of one mix by a day; empty where no spell of these weeks states its loads. */
    public static OptionalDouble aWeek(Records book, MixId mix, LocalDate until) {
        return aWeek(
                book.latestOf(Belonging.PRODUCTION_OF_MIX, mix.text()).stream()
                        .map(Version::value)
                        .toList(),
                until);
    }

    /** Returns the loads a week by a day of a mix whose spells these are. */
    static OptionalDouble aWeek(List<Production> spells, LocalDate until) {
        LocalDate after = until.minusDays((long) WEEKS * DAYS_A_WEEK);
        List<Production> known = spells.stream()
                .filter(spell -> spell.loads().isPresent())
                .filter(spell ->
                        !spell.lastDay().isAfter(until) && spell.lastDay().isAfter(after))
                .toList();
        if (known.isEmpty()) {
            return OptionalDouble.empty();
        }
        LocalDate first = spells.stream()
                .map(Production::firstDay)
                .min(LocalDate::compareTo)
                .orElseThrow();
        long days =
                Math.max(DAYS_A_WEEK, Math.min((long) WEEKS * DAYS_A_WEEK, ChronoUnit.DAYS.between(first, until) + 1));
        double loads = known.stream()
                .mapToDouble(spell -> Made.share(spell, after) * spell.loads().orElse(0))
                .sum();
        return OptionalDouble.of(loads * DAYS_A_WEEK / days);
    }
}
