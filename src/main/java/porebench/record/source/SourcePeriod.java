package porebench.record.source;

import java.time.LocalDate;
import java.util.Optional;
import porebench.record.Source;
import porebench.record.book.Version;

/**
 * One stone of a source, from the day it was first worked until the next one was.
 *
 * @param number counted from 1 for each source; changes that were withdrawn do not count
 * @param stone which stone it is, known by the number of the first period of the same: without a step a source returns to a stone
 *     from before where it reads as that did
 * @param from its first day; empty where nobody stated one: the stone then holds on every day until a later one does
 * @param begun the version that declared it
 * @param newest the version that says how it is known now
 */
public record SourcePeriod(
        int number, int stone, Optional<LocalDate> from, Version<Source> begun, Version<Source> newest) {
    /** Returns whether it had begun by a day; that day counts, and one that states no day always has. */
    public boolean hasBegunBy(LocalDate day) {
        return from.isEmpty() || !from.get().isAfter(day);
    }

    /** Returns whether it begins after a day. */
    public boolean isToComeOn(LocalDate day) {
        return !hasBegunBy(day);
    }

    /** Returns why it began, as its version says, or else as whoever kept that did. */
    public String why() {
        return begun.value().reason().orElse(begun.stamp().why());
    }

    SourcePeriod with(Optional<LocalDate> otherFrom, Version<Source> otherNewest) {
        return new SourcePeriod(number, stone, otherFrom.or(() -> from), begun, otherNewest);
    }
}
