package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Map;
import java.util.Optional;
import porebench.quantity.Require;
import porebench.quantity.Symbolic;
import porebench.record.id.DeterminationId;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * What is proposed as the next revision of a mix's factor. Its versions are its steps: drafted, checked, sent back, dropped, or
 * issued as a revision.
 *
 * @param mixId the mix
 * @param number counted from 1 for each mix
 * @param step the step it has come to
 * @param factorPercent the factor that it would hand out, rounded by the profile, in % air
 * @param determinationId the determination it rests on
 * @param inForceFrom the first day it would hold
 * @param recheckBy the last day before it would lapse
 * @param reason why it is proposed
 * @param terms from which hour, under which conditions, and who checked it; nobody since it was drafted anew or sent back
 * @param mixVersion the version of the mix design it rests on
 * @param sourceVersions the versions of the sources it rests on
 * @param grounds the versions of trials and calibrations it was drafted on, the doubts taken on, the group whose factor it is, and the
 *     decision that keeps it
 * @param draftedBy who drafted it
 * @param by who took the last step
 * @param at when, by the laboratory's clock
 * @param remark what was said with the last step, may be empty
 * @param revision the revision that it became; empty while it is none
 */
public record FactorProposal(
        MixId mixId,
        int number,
        Step step,
        BigDecimal factorPercent,
        DeterminationId determinationId,
        LocalDate inForceFrom,
        LocalDate recheckBy,
        String reason,
        FactorTerms terms,
        int mixVersion,
        Map<SourceId, Integer> sourceVersions,
        Grounds grounds,
        String draftedBy,
        String by,
        LocalDateTime at,
        String remark,
        Optional<Integer> revision)
        implements Kept {
    /** How far a proposal has come. */
    public enum Step implements Symbolic {
        /** Written down, and to be checked. */
        DRAFTED,
        /** Checked, and to be put in force. */
        CHECKED,
        /** Sent back, to be drafted anew or dropped. */
        SENT_BACK,
        /** Given up. */
        DROPPED,
        /** Put in force as a revision. */
        ISSUED;
    }

    public FactorProposal {
        Require.atLeast("number", number, 1);
        Require.notBlank("draftedBy", draftedBy);
        Require.notBlank("by", by);
        sourceVersions = Map.copyOf(sourceVersions);
    }

    /** Returns whether something is still to be done about it. */
    public boolean isOpen() {
        return step != Step.DROPPED && step != Step.ISSUED;
    }

    /** Returns the mix on which it was found: that which is tested for the group whose factor it is, or its own. */
    public MixId testedMix() {
        return grounds.group().map(GroupGround::testedMix).orElse(mixId);
    }

    /** Returns whether it was found on another mix, of the group whose factor it is. */
    public boolean isLent() {
        return !testedMix().equals(mixId);
    }

    /** Returns whether it is the factor of a group. */
    public boolean isOf(GroupId group) {
        return grounds.group().filter(ground -> ground.group().equals(group)).isPresent();
    }

    /** Returns the moment from which it would hold. */
    public LocalDateTime begins() {
        return inForceFrom.atTime(terms.at().orElse(LocalTime.MIN));
    }

    /** Returns the same proposal a step on. */
    public FactorProposal then(Step next, String who, LocalDateTime when, String said) {
        return new FactorProposal(
                mixId,
                number,
                next,
                factorPercent,
                determinationId,
                inForceFrom,
                recheckBy,
                reason,
                switch (next) {
                    case CHECKED -> terms.checked(who);
                    case DRAFTED, SENT_BACK -> terms.checked("");
                    case DROPPED, ISSUED -> terms;
                },
                mixVersion,
                sourceVersions,
                grounds,
                draftedBy,
                who,
                when,
                said,
                revision);
    }

    /** Returns the same proposal on other grounds. */
    public FactorProposal on(Grounds other) {
        return new FactorProposal(
                mixId,
                number,
                step,
                factorPercent,
                determinationId,
                inForceFrom,
                recheckBy,
                reason,
                terms,
                mixVersion,
                sourceVersions,
                other,
                draftedBy,
                by,
                at,
                remark,
                revision);
    }

    /** Returns the same proposal as a revision. */
    public FactorProposal as(int issued) {
        return new FactorProposal(
                mixId,
                number,
                step,
                factorPercent,
                determinationId,
                inForceFrom,
                recheckBy,
                reason,
                terms,
                mixVersion,
                sourceVersions,
                grounds,
                draftedBy,
                by,
                at,
                remark,
                Optional.of(issued));
    }

    @Override
    public RecordKind kind() {
        return RecordKind.FACTOR_PROPOSAL;
    }

    @Override
    public String recordId() {
        return mixId.text() + "/p" + number;
    }
}
