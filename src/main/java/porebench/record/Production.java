package porebench.record;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.quantity.Mass;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.record.id.MixId;
import porebench.record.id.ProductionId;

/**
 * What was made of a mix in a spell: the days between two, both with it. No two spells of a mix overlap, so that nothing counts twice.
 *
 * @param id its name
 * @param mixId the mix
 * @param firstDay the first day of the spell
 * @param lastDay the last day of the spell
 * @param productionDays on how many of its days the mix was made; empty where nobody counted
 * @param loads how many loads were made; empty where nobody counted
 * @param volume the concrete made; empty where it is stated as a mass, or not at all
 * @param mass the concrete made; empty where it is stated as a volume, or not at all
 * @param reportedBy who reported it, a person or a plant
 * @param remarks anything else, may be empty
 */
public record Production(
        ProductionId id,
        MixId mixId,
        LocalDate firstDay,
        LocalDate lastDay,
        Optional<Integer> productionDays,
        Optional<Integer> loads,
        Optional<Typed<Volume>> volume,
        Optional<Typed<Mass>> mass,
        String reportedBy,
        String remarks)
        implements Kept {
    /** Returns how many days the spell has, at least 1 where it does not end before it begins. */
    public long days() {
        return ChronoUnit.DAYS.between(firstDay, lastDay) + 1;
    }

    /**
     * Returns what is wrong with it by itself, under the fields of its form.
     *
     * @param today the day on which it is to be kept
     */
    public List<Problem> check(LocalDate today) {
        List<Problem> problems = new ArrayList<>();
        if (lastDay.isBefore(firstDay)) {
            problems.add(Problem.error("lastDay", "production.ends-before", lastDay.toString(), firstDay.toString()));
        }
        if (lastDay.isAfter(today)) {
            problems.add(Problem.error("lastDay", "production.to-come", lastDay.toString(), today.toString()));
        }
        if (productionDays.isEmpty() && volume.isEmpty() && mass.isEmpty()) {
            problems.add(Problem.error("productionDays", "production.no-amount", id.text())
                    .of(Problem.Kind.NOT_YET));
        }
        if (volume.isPresent() && mass.isPresent()) {
            problems.add(Problem.error("mass", "production.two-amounts", id.text()));
        }
        productionDays
                .filter(stated -> !lastDay.isBefore(firstDay) && stated > days())
                .ifPresent(stated ->
                        problems.add(Problem.error("productionDays", "production.many-days", stated, days())));
        return problems;
    }

    /** Returns whether it shares a day with another spell of the same mix; no spell overlaps itself. */
    public boolean overlaps(Production other) {
        return mixId.equals(other.mixId)
                && !id.equals(other.id)
                && !lastDay.isBefore(other.firstDay)
                && !other.lastDay.isBefore(firstDay);
    }

    /** Returns why it cannot stand beside others: the first spell of the same mix that it overlaps; empty where it overlaps none. */
    public Optional<Problem> checkBeside(Collection<Production> others) {
        return others.stream()
                .filter(this::overlaps)
                .min(Comparator.comparing(Production::firstDay).thenComparing(Production::id))
                .map(other -> Problem.error(
                        "firstDay",
                        "production.overlaps",
                        mixId.text(),
                        other.id.text(),
                        other.firstDay.toString(),
                        other.lastDay.toString()));
    }

    @Override
    public RecordKind kind() {
        return RecordKind.PRODUCTION;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}
