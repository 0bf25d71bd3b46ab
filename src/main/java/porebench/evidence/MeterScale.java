package porebench.evidence;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.record.Meter;
import porebench.record.book.Version;
import porebench.record.id.MeterId;

/**
 * The scale that a determination vouches for, when its trials were read on several meters: the one place where that is decided.
 *
 * <p>The division is the coarsest of them, because no reading of the determination may be taken for finer than it was; the top
 * is the lowest, because a reading beyond it was in nobody's sight. The meters are those of the trials that count; where none
 * counts, those of all trials. Laboratory's own rule, no source.
 *
 * @param divisionPercent a division of the scale, in % air; the usual one while no meter is known
 * @param topPercent the highest reading of the scale, in % air; empty while no meter is known
 */
public record MeterScale(BigDecimal divisionPercent, Optional<BigDecimal> topPercent) {
    /** The division of a scale nobody stated, in % air. Common practice, no source. */
    public static final double USUAL_DIVISION_PERCENT = 0.1;

    /** Returns the scale of some trials of one determination. */
    static MeterScale of(List<JudgedTrial> trials, Map<MeterId, Version<Meter>> meters) {
        boolean anyCounts = trials.stream().anyMatch(JudgedTrial::counts);
        List<Meter> used = trials.stream()
                .filter(trial -> trial.counts() || !anyCounts)
                .flatMap(trial ->
                        Optional.ofNullable(meters.get(trial.trial().value().meterId())).stream())
                .map(Version::value)
                .toList();
        return new MeterScale(
                used.stream()
                        .map(Meter::divisionPercent)
                        .max(Comparator.naturalOrder())
                        .orElse(BigDecimal.valueOf(USUAL_DIVISION_PERCENT)),
                used.stream().map(Meter::scaleTopPercent).min(Comparator.naturalOrder()));
    }
}
