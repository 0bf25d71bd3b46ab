package porebench.desk.factor;

/**
 * A factor about to be issued, as it stands in the form.
 *
 * @param determination the id of the determination it rests on, blank when there is none
 * @param inForceFrom the first day it holds, as typed
 * @param recheckBy the last day before it lapses, as typed
 * @param approvedBy who approves it, may be blank
 * @param reason why it is issued
 * @param overrideBy who takes on a meter that was not to be trusted, blank when nobody does
 * @param overrideReason why, blank when nobody does
 */
record IssueDraft(
        String determination,
        String inForceFrom,
        String recheckBy,
        String approvedBy,
        String reason,
        String overrideBy,
        String overrideReason) {
    /** Makes a draft in which nobody takes anything on. */
    IssueDraft(String determination, String inForceFrom, String recheckBy, String approvedBy, String reason) {
        this(determination, inForceFrom, recheckBy, approvedBy, reason, "", "");
    }

    IssueDraft withDetermination(String other) {
        return new IssueDraft(other, inForceFrom, recheckBy, approvedBy, reason, overrideBy, overrideReason);
    }

    IssueDraft withInForceFrom(String other) {
        return new IssueDraft(determination, other, recheckBy, approvedBy, reason, overrideBy, overrideReason);
    }

    IssueDraft withRecheckBy(String other) {
        return new IssueDraft(determination, inForceFrom, other, approvedBy, reason, overrideBy, overrideReason);
    }

    IssueDraft withApprovedBy(String other) {
        return new IssueDraft(determination, inForceFrom, recheckBy, other, reason, overrideBy, overrideReason);
    }

    IssueDraft withReason(String other) {
        return new IssueDraft(determination, inForceFrom, recheckBy, approvedBy, other, overrideBy, overrideReason);
    }

    IssueDraft withOverrideBy(String other) {
        return new IssueDraft(determination, inForceFrom, recheckBy, approvedBy, reason, other, overrideReason);
    }

    IssueDraft withOverrideReason(String other) {
        return new IssueDraft(determination, inForceFrom, recheckBy, approvedBy, reason, overrideBy, other);
    }
}
