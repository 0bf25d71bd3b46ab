package porebench.evidence.intake;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import porebench.evidence.Soaks;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/**
 * The trials of one determination, as a file gives them.
 *
 * @param id the determination: as the file names it, and otherwise as a new lab book would
 * @param trials its trials, at least one, in the order in which they were made
 */
public record TrialSet(DeterminationId id, List<Trial> trials) {
    private static final Comparator<Trial> AS_MADE =
            Comparator.comparing(Trial::testedAt).thenComparing(Trial::id);

    public TrialSet {
        trials = List.copyOf(trials);
    }

    /** Returns the mix. */
    public MixId mixId() {
        return trials.get(0).mixId();
    }

    /** Returns the day of its first trial. */
    public LocalDate openedOn() {
        return trials.get(0).testedAt().toLocalDate();
    }

    /**
     * Parts the trials of one mix into determinations: those that name one stay where they say, the others are put together
     * as long as no more than {@value TrialPlacing#MOST_DAYS_APART} days lie between one and the next.
     *
     * @param trials the trials, in any order
     * @param problems gets a doubt for each set that was begun because of the days between, and for each trial before which no soak
     *     fits, and an error for each set that has trials on both types of meter
     * @return the sets, the one with the earliest trial first
     */
    public static List<TrialSet> of(Collection<Trial> trials, List<Problem> problems) {
        Map<DeterminationId, List<Trial>> sets = new LinkedHashMap<>();
        trials.stream()
                .filter(Trial::namesDetermination)
                .forEach(trial -> sets.computeIfAbsent(trial.determinationId(), id -> new ArrayList<>())
                        .add(trial));
        List<Trial> unnamed = trials.stream()
                .filter(trial -> !trial.namesDetermination())
                .sorted(AS_MADE)
                .toList();
        if (!unnamed.isEmpty()) {
            Set<DeterminationId> named = new HashSet<>(sets.keySet());
            TrialPlacing placing = new TrialPlacing(unnamed.get(0).mixId(), named::contains, 0);
            sets.forEach((id, own) -> placing.add(
                    id,
                    own.stream().map(trial -> trial.testedAt().toLocalDate()).toList()));
            for (Trial trial : unnamed) {
                DeterminationId id = placing.place(trial);
                sets.computeIfAbsent(id, any -> new ArrayList<>()).add(trial.in(id));
            }
            problems.addAll(placing.takeProblems());
        }
        List<TrialSet> all = sets.entrySet().stream()
                .map(one -> new TrialSet(
                        one.getKey(), one.getValue().stream().sorted(AS_MADE).toList()))
                .sorted(Comparator.comparing((TrialSet set) -> set.trials().get(0), AS_MADE))
                .toList();
        all.forEach(set -> {
            mixedTypes(set.id(), set.trials()).ifPresent(problems::add);
            Soaks.doubts(set.trials(), "tested_at").forEach(problems::add);
        });
        return all;
    }

    /**
     * Checks a trial against those it would stand beside in its determination.
     *
     * @return the error that they were made on the other type of meter, or the doubts that they were made long before or after,
     *     or so soon that no soak lies between
     */
    public static List<Problem> checkCompany(Trial trial, Collection<Trial> company) {
        List<Trial> others =
                company.stream().filter(one -> !one.id().equals(trial.id())).toList();
        List<Trial> all = new ArrayList<>(others);
        all.add(trial);
        List<Problem> problems = new ArrayList<>();
        mixedTypes(trial.determinationId(), all)
                .map(problem -> problem.under("meter"))
                .ifPresent(problems::add);
        LocalDate day = trial.testedAt().toLocalDate();
        others.stream()
                .mapToLong(other ->
                        Math.abs(ChronoUnit.DAYS.between(other.testedAt().toLocalDate(), day)))
                .min()
                .stream()
                .filter(days -> days > TrialPlacing.MOST_DAYS_APART)
                .forEach(days -> problems.add(Problem.warning(
                        "testedAt",
                        "trial.far-apart",
                        days,
                        trial.determinationId().text(),
                        TrialPlacing.MOST_DAYS_APART)));
        Soaks soaks = new Soaks();
        others.forEach(soaks::add);
        soaks.doubt(trial, "testedAt").ifPresent(problems::add);
        return problems;
    }

    /** Returns the problem that trials which are not struck were made on both types of meter; never one determination. */
    static Optional<Problem> mixedTypes(DeterminationId id, Collection<Trial> trials) {
        Optional<Trial> typeA = first(trials, MeterType.A);
        Optional<Trial> typeB = first(trials, MeterType.B);
        return typeA.flatMap(one -> typeB.map(other -> Problem.error(
                "meter_type",
                "determination.mixed-meter-types",
                id.text(),
                one.id().text(),
                one.meterId().text(),
                other.id().text(),
                other.meterId().text())));
    }

    private static Optional<Trial> first(Collection<Trial> trials, MeterType type) {
        return trials.stream()
                .filter(trial -> trial.struckBecause().isEmpty())
                .filter(trial -> trial.readings().meterType() == type)
                .min(AS_MADE);
    }
}
