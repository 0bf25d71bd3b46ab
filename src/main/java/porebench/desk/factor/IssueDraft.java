package porebench.desk.factor;

import java.util.HashSet;
import java.util.Set;
import porebench.evidence.issue.IssueDoubt;

/**
 * A factor about to be issued, as it stands in the form.
 *
 * @param determination the id of the determination it rests on, blank when there is none
 * @param inForceFrom the first day it holds, as typed
 * @param recheckBy the last day before it lapses, as typed
 * @param approvedBy who approves it, may be blank
 * @param reason why it is issued
 * @param overrideBy who takes the doubts on, blank when nobody does
 * @param overrideReason why, blank when nobody does
 * @param taken the doubts that were ticked
 */
record IssueDraft(
        String determination,
        String inForceFrom,
        String recheckBy,
        String approvedBy,
        String reason,
        String overrideBy,
        String overrideReason,
        Set<IssueDoubt.Key> taken) {
    IssueDraft {
        taken = Set.copyOf(taken);
    }

    /** Makes a draft in which nobody takes anything on. */
    IssueDraft(String determination, String inForceFrom, String recheckBy, String approvedBy, String reason) {
        this(determination, inForceFrom, recheckBy, approvedBy, reason, "", "", Set.of());
    }

    /** Returns the draft of another determination; its doubts are others, so that none is ticked. */
    IssueDraft withDetermination(String other) {
        return new IssueDraft(other, inForceFrom, recheckBy, approvedBy, reason, overrideBy, overrideReason, Set.of());
    }

    IssueDraft withInForceFrom(String other) {
        return new IssueDraft(determination, other, recheckBy, approvedBy, reason, overrideBy, overrideReason, taken);
    }

    IssueDraft withRecheckBy(String other) {
        return new IssueDraft(determination, inForceFrom, other, approvedBy, reason, overrideBy, overrideReason, taken);
    }

    IssueDraft withApprovedBy(String other) {
        return new IssueDraft(determination, inForceFrom, recheckBy, other, reason, overrideBy, overrideReason, taken);
    }

    IssueDraft withReason(String other) {
        return new IssueDraft(
                determination, inForceFrom, recheckBy, approvedBy, other, overrideBy, overrideReason, taken);
    }

    IssueDraft withOverrideBy(String other) {
        return new IssueDraft(determination, inForceFrom, recheckBy, approvedBy, reason, other, overrideReason, taken);
    }

    IssueDraft withOverrideReason(String other) {
        return new IssueDraft(determination, inForceFrom, recheckBy, approvedBy, reason, overrideBy, other, taken);
    }

    /** Returns the draft with a doubt ticked or not. */
    IssueDraft withTaken(IssueDoubt.Key doubt, boolean isTaken) {
        Set<IssueDoubt.Key> ticked = new HashSet<>(taken);
        if (isTaken) {
            ticked.add(doubt);
        } else {
            ticked.remove(doubt);
        }
        return new IssueDraft(
                determination, inForceFrom, recheckBy, approvedBy, reason, overrideBy, overrideReason, ticked);
    }
}
