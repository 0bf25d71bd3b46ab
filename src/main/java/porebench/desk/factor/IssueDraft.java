package porebench.desk.factor;

/**
 * A factor about to be issued, as it stands in the form.
 *
 * @param determination the id of the determination it rests on, blank when there is none
 * @param inForceFrom the first day it holds, as typed
 * @param recheckBy the last day before it lapses, as typed
 * @param approvedBy who approves it, may be blank
 * @param reason why it is issued
 */
record IssueDraft(String determination, String inForceFrom, String recheckBy, String approvedBy, String reason) {
    IssueDraft withDetermination(String other) {
        return new IssueDraft(other, inForceFrom, recheckBy, approvedBy, reason);
    }

    IssueDraft withInForceFrom(String other) {
        return new IssueDraft(determination, other, recheckBy, approvedBy, reason);
    }

    IssueDraft withRecheckBy(String other) {
        return new IssueDraft(determination, inForceFrom, other, approvedBy, reason);
    }

    IssueDraft withApprovedBy(String other) {
        return new IssueDraft(determination, inForceFrom, recheckBy, other, reason);
    }

    IssueDraft withReason(String other) {
        return new IssueDraft(determination, inForceFrom, recheckBy, approvedBy, other);
    }
}
