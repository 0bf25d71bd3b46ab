package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.quantity.Require;

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
 * @param mixVersion the version of the mix design it rests on
 * @param sourceVersions the versions of the sources it rests on
 * @param profileId the profile whose rules were used
 * @param overrideBy who took it on that a trial was made on a meter not to be trusted that day; blank when nobody had to
 * @param overrideReason why; blank when nobody had to
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
        String overrideReason)
        implements Kept {
    /** What a revision does. */
    public enum Action {
        ISSUED("issued"),
        WITHDRAWN("withdrawn");

        private final String symbol;

        Action(String symbol) {
            this.symbol = symbol;
        }

        /** Returns the word by which files know the action. */
        public String symbol() {
            return symbol;
        }

        /** Returns the action with a symbol. */
        public static Optional<Action> ofSymbol(String symbol) {
            return Arrays.stream(values())
                    .filter(action -> action.symbol.equals(symbol))
                    .findFirst();
        }
    }

    public FactorIssue {
        Require.atLeast("revision", revision, 1);
        Require.notBlank("issuedBy", issuedBy);
        sourceVersions = Map.copyOf(sourceVersions);
    }

    /** Makes a revision for which nobody had to override anything. */
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
            String profileId) {
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
                "",
                "");
    }

    /** Returns this revision with the name and reason of who took on a meter that was not to be trusted. */
    public FactorIssue overriddenBy(String who, String why) {
        return with(mixVersion, sourceVersions, who, why);
    }

    /** Returns whether somebody took on that a trial was made on a meter not to be trusted that day. */
    public boolean isOverridden() {
        return !overrideBy.isBlank();
    }

    /** Returns this revision resting on other versions of the mix and its sources. */
    public FactorIssue restingOn(int otherMixVersion, Map<SourceId, Integer> otherSourceVersions) {
        return with(otherMixVersion, otherSourceVersions, overrideBy, overrideReason);
    }

    private FactorIssue with(int mix, Map<SourceId, Integer> sources, String who, String why) {
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
                who,
                why);
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
