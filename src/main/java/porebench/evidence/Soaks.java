package porebench.evidence;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import porebench.method.Problem;
import porebench.record.Trial;
import porebench.record.id.MeterId;
import porebench.record.id.TrialId;

/**
 * Trials in the order in which their meters were used. The aggregate soaks in the bowl, so that between two readings on one
 * meter at least one soak lies; where less time does, a time or a soak is wrong, or another bowl was used. Common practice, no
 * source.
 */
public final class Soaks {
    private static final long SECONDS = 60;

    private final Map<MeterId, TreeMap<LocalDateTime, Map<TrialId, Trial>>> used = new HashMap<>();

    /** Adds a trial, in the place of an earlier version of it. One that was struck is passed over, as one without a soak. */
    public void add(Trial trial) {
        if (trial.struckBecause().isEmpty() && trial.readings().soakMinutes().isPresent()) {
            used.computeIfAbsent(trial.meterId(), id -> new TreeMap<>())
                    .computeIfAbsent(trial.testedAt(), time -> new HashMap<>())
                    .put(trial.id(), trial);
        }
    }

    /** Takes a version of a trial out. */
    public void remove(Trial trial) {
        Optional.ofNullable(used.get(trial.meterId()))
                .flatMap(times -> Optional.ofNullable(times.get(trial.testedAt())))
                .ifPresent(together -> together.remove(trial.id()));
    }

    /**
     * Returns the doubt that a trial was made so soon before or after another one on its meter that neither soak lies between.
     *
     * @param field where the time of the trial stands
     */
    public Optional<Problem> doubt(Trial trial, String field) {
        if (trial.struckBecause().isPresent() || trial.readings().soakMinutes().isEmpty()) {
            return Optional.empty();
        }
        BigDecimal soak = trial.readings().soakMinutes().get();
        LocalDateTime at = trial.testedAt();
        long most = soak.longValue() + 1;
        return used
                .getOrDefault(trial.meterId(), new TreeMap<>())
                .subMap(at.minusMinutes(most), true, at.plusMinutes(most), true)
                .values()
                .stream()
                .flatMap(together -> together.values().stream())
                .filter(other -> !other.id().equals(trial.id()))
                .filter(other ->
                        apart(trial, other).compareTo(soakOf(other).min(soak).multiply(BigDecimal.valueOf(SECONDS)))
                                < 0)
                .min(Comparator.comparing((Trial other) -> apart(trial, other)).thenComparing(Trial::id))
                .map(other -> Problem.warning(
                        field,
                        "trial.soaks-overlap",
                        apart(trial, other).longValue() / SECONDS,
                        other.id().text(),
                        trial.meterId().text(),
                        soakOf(other).min(soak)));
    }

    /** Returns the doubts about trials beside each other, each said once, at the later one. */
    public static Stream<Problem> doubts(Collection<Trial> inOrder, String field) {
        Soaks before = new Soaks();
        return inOrder.stream().flatMap(trial -> {
            Optional<Problem> doubt = before.doubt(trial, field);
            before.add(trial);
            return doubt.stream();
        });
    }

    private static BigDecimal soakOf(Trial trial) {
        return trial.readings().soakMinutes().orElseThrow();
    }

    /** Returns how far two trials lie apart, in seconds. */
    private static BigDecimal apart(Trial one, Trial other) {
        return BigDecimal.valueOf(
                Duration.between(one.testedAt(), other.testedAt()).abs().toSeconds());
    }
}
