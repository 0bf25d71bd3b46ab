package porebench.desk;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.id.MixId;

/**
 * The lab book and a mix as they were found.
 *
 * @param reading the lab book
 * @param mix the mix
 * @param evidence what is known about it; empty when it is not in the lab book
 * @param answers what the lab book answers to the questions of those who show it, where it was read anew
 */
record Look(Reading reading, Optional<MixId> mix, Optional<Evidence> evidence, Map<Question<?>, Object> answers) {
    /**
     * Looks; beside the event thread. The lab book is read anew only when something in it is another, or
     * the day, or what holds at the hour.
     *
     * @param before what was read last
     * @param asked what is asked by those who show it
     * @param progress hears how far it is
     */
    static Look at(Reading before, LocalDateTime now, Optional<MixId> mix, List<Question<?>> asked, Progress progress) {
        boolean isNew = before.book().changeNumber() != before.standing().upTo() || before.isOtherAt(now);
        Reading read = isNew ? before.renewed(now, progress) : before;
        return new Look(
                read, mix, mix.flatMap(read.standing()::evidence), isNew ? Answers.lookUp(asked, read) : Map.of());
    }

    boolean isOf(LabBook book) {
        return reading.book() == book;
    }

    /** Returns whether the same lab book was read later for what is on view. */
    boolean isOlderThan(Reading seen) {
        return isOf(seen.book())
                && (reading.standing().upTo() < seen.standing().upTo()
                        || reading.moment().isBefore(seen.moment()));
    }
}
