package porebench.evidence.plan;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import porebench.record.book.Records;
import porebench.record.id.MixId;
import porebench.record.production.Loads;

/** Tells how many loads of mixes are made a week. */
@FunctionalInterface
public interface LoadsAWeek {
    /** Tells what the production says that was reported to a lab book; no other mixes are looked up. */
    static LoadsAWeek reportedTo(Records book) {
        return (mixes, until) -> Loads.aWeek(book, mixes, until);
    }

    /**
     * Returns the loads a week of some mixes, each at least 0; a mix of which nothing is known is missing.
     *
     * @param until the last day that counts
     */
    Map<MixId, Double> of(Collection<MixId> mixes, LocalDate until);
}
