package porebench.record.book;

import porebench.evidence.issue.DecidedOn;
import porebench.quantity.Require;
import porebench.record.Kept;

/**
 * A record to be kept: a new one, or a correction of the version it was made from.
 *
 * @param value the record
 * @param basedOn the version this corrects; 0 for a new record
 * @param cameIn whether it came in from a file as somebody else decided it; a factor decided here is kept only on the evidence it
 *     was decided on ({@link DecidedOn})
 */
public record Draft(Kept value, int basedOn, boolean cameIn) {
    public Draft {
        Require.atLeast("basedOn", basedOn, 0);
    }

    /** Makes a draft that was decided here. */
    public Draft(Kept value, int basedOn) {
        this(value, basedOn, false);
    }

    /** Returns the draft of a new record. */
    public static Draft of(Kept value) {
        return new Draft(value, 0);
    }

    /** Returns whether it is a new record, not the correction of one. */
    public boolean isNew() {
        return basedOn == 0;
    }

    /** Returns the version that it becomes when it is kept. */
    public int number() {
        return basedOn + 1;
    }

    /** Returns the draft of a correction. */
    public static <T extends Kept> Draft correcting(Version<T> version, T corrected) {
        return new Draft(corrected, version.number());
    }
}
