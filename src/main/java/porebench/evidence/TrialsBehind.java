package porebench.evidence;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.record.Trial;
import porebench.record.id.MeterId;

/**
 * The trials behind a factor, in short: those that count.
 *
 * @param counted how many count
 * @param meters the meters they were made on, in the order of their ids
 * @param firstOn the day of the first; empty when none counts
 * @param lastOn the day of the last; empty when none counts
 */
public record TrialsBehind(int counted, List<MeterId> meters, Optional<LocalDate> firstOn, Optional<LocalDate> lastOn) {
    /** No trial. */
    public static final TrialsBehind NONE = new TrialsBehind(0, List.of(), Optional.empty(), Optional.empty());

    public TrialsBehind {
        meters = List.copyOf(meters);
    }

    /** Returns the trials of a determination that count. */
    public static TrialsBehind of(JudgedDetermination judged) {
        List<Trial> counted = judged.trials().stream()
                .filter(JudgedTrial::counts)
                .map(trial -> trial.trial().value())
                .toList();
        List<LocalDate> days = counted.stream()
                .map(trial -> trial.testedAt().toLocalDate())
                .sorted()
                .toList();
        return new TrialsBehind(
                counted.size(),
                counted.stream()
                        .map(Trial::meterId)
                        .distinct()
                        .sorted(Comparator.comparing(MeterId::text))
                        .toList(),
                days.stream().findFirst(),
                days.stream().reduce((earlier, later) -> later));
    }
}
