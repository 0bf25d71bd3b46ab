package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import porebench.method.MeterType;
import porebench.quantity.Require;
import porebench.quantity.Symbolic;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * A factor handed out for a mix, or its withdrawal: one revision.
 *
 * <p>It remembers the mix and the sources it rests on, so that a later change of either is noticed.
 *
 * @param mixId the mix
 * @param revision counted from 1 for each mix
 * @param action issued or withdrawn
 * @param factorPercent the factor as handed out, rounded by the profile, in % air; of a withdrawal the factor withdrawn
 * @param determinationId the determination it rests on
 * @param meterType the type of meter it was found on
 * @param inForceFrom the first day it holds; of a withdrawal the first day it no longer holds
 * @param recheckBy the last day before it lapses
 * @param issuedBy who issued or withdrew it
 * @param approvedBy who approved it, may be empty
 * @param reason why it was issued, replaced or withdrawn
 * @param mixVersion the version of the mix design it rests on: of the mix that was tested
 * @param sourceVersions the versions of the sources it rests on
 * @param profileId the profile whose rules were used
 * @param overrideBy who took on a meter not to be trusted that day, in a revision issued before each doubt was named; else
 *     blank
 * @param overrideReason why; else blank
 * @param grounds the versions it rests on, the doubts taken on, and where it was decided
 * @param terms from which hour of its first day it holds, under which conditions, and who checked it
 */
public record FactorIssue(
        MixId mixId,
        int revision,
        Action action,
        BigDecimal factorPercent,
        DeterminationId determinationId,
        MeterType meterType,
        LocalDate inForceFrom,
        LocalDate recheckBy,
        String issuedBy,
        String approvedBy,
        String reason,
        int mixVersion,
        Map<SourceId, Integer> sourceVersions,
        String profileId,
        String overrideBy,
        String overrideReason,
        Grounds grounds,
        FactorTerms terms)
        implements Kept {
    /** What a revision does. */
    public enum Action implements Symbolic {
        ISSUED,
        WITHDRAWN;
    }

    public FactorIssue {
        Require.atLeast("revision", revision, 1);
        Require.notBlank("issuedBy", issuedBy);
        sourceVersions = Map.copyOf(sourceVersions);
    }

    /** A revision from the start of its first day, without conditions, that nobody checked. */
    public FactorIssue(
            MixId mixId,
            int revision,
            Action action,
            BigDecimal factorPercent,
            DeterminationId determinationId,
            MeterType meterType,
            LocalDate inForceFrom,
            LocalDate recheckBy,
            String issuedBy,
            String approvedBy,
            String reason,
            int mixVersion,
            Map<SourceId, Integer> sourceVersions,
            String profileId,
            String overrideBy,
            String overrideReason,
            Grounds grounds) {
        this(
                mixId,
                revision,
                action,
                factorPercent,
                determinationId,
                meterType,
                inForceFrom,
                recheckBy,
                issuedBy,
                approvedBy,
                reason,
                mixVersion,
                sourceVersions,
                profileId,
                overrideBy,
                overrideReason,
                grounds,
                FactorTerms.NONE);
    }

    /** Returns the moment from which it holds, by the laboratory's clock; of a withdrawal from which it no longer does. */
    public LocalDateTime begins() {
        return inForceFrom.atTime(terms.at().orElse(LocalTime.MIN));
    }

    /** Returns whether somebody took on a meter not to be trusted, in a revision issued before each doubt was named. */
    public boolean isOverridden() {
        return !overrideBy.isBlank();
    }

    /** Returns the doubts that somebody took on when it was issued. */
    public List<TakenDoubt> takenOn() {
        return grounds.takenOn();
    }

    /** Returns where it was decided. */
    public FactorOrigin origin() {
        return grounds.origin();
    }

    /** Returns the mix on whose trials it rests: its own, or the one that is tested for its group. */
    public MixId testedMix() {
        return grounds.group().map(GroupGround::testedMix).orElse(mixId);
    }

    /** Returns whether it was found on another mix, of the group whose factor it is. */
    public boolean isLent() {
        return !testedMix().equals(mixId);
    }

    /** Returns whether it rests on simulated trials. */
    public boolean isSimulated() {
        return grounds.simulated();
    }

    /** Returns this revision resting on other versions of the mix and its sources. */
    public FactorIssue restingOn(int otherMixVersion, Map<SourceId, Integer> otherSourceVersions) {
        return with(otherMixVersion, otherSourceVersions, grounds, terms);
    }

    /** Returns this revision on other grounds. */
    public FactorIssue on(Grounds other) {
        return with(mixVersion, sourceVersions, other, terms);
    }

    /** Returns this revision on other terms. */
    public FactorIssue under(FactorTerms other) {
        return with(mixVersion, sourceVersions, grounds, other);
    }

    private FactorIssue with(int mix, Map<SourceId, Integer> sources, Grounds otherGrounds, FactorTerms otherTerms) {
        return new FactorIssue(
                mixId,
                revision,
                action,
                factorPercent,
                determinationId,
                meterType,
                inForceFrom,
                recheckBy,
                issuedBy,
                approvedBy,
                reason,
                mix,
                sources,
                profileId,
                overrideBy,
                overrideReason,
                otherGrounds,
                otherTerms);
    }

    /** Returns whether this revision hands out a factor. */
    public boolean isIssue() {
        return action == Action.ISSUED;
    }

    @Override
    public RecordKind kind() {
        return RecordKind.FACTOR_ISSUE;
    }

    @Override
    public String recordId() {
        return idOf(mixId, revision);
    }

    /** Returns the record id of a mix's revision. */
    public static String idOf(MixId mixId, int revision) {
        return mixId.text() + "/r" + revision;
    }
}
