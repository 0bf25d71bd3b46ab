package porebench.evidence.plan;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import porebench.record.id.MixId;

/** Tells how many loads of mixes are made a week. */
@FunctionalInterface
public interface LoadsAWeek {
    /** Of no mix anything is known. */
    LoadsAWeek UNKNOWN = (mixes, until) -> Map.of();

    /**
     * Returns the loads a week of some mixes, each at least 0; a mix of which nothing is known is missing.
     *
     * @param until the last day that counts
     */
    Map<MixId, Double> of(Collection<MixId> mixes, LocalDate until);
}
