package porebench.desk.mix;

import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.Version;

/**
 * What saving a new version of a mix design does to what rests on the mix.
 *
 * @param untrueFactor the factor in force that no longer stands for the aggregates; empty when none becomes untrue
 * @param trialsLeftBehind the open determination whose trials were made for an earlier version; empty when there is none
 */
record SavingEffects(Optional<FactorIssue> untrueFactor, Optional<JudgedDetermination> trialsLeftBehind) {
    private static final SavingEffects NONE = new SavingEffects(Optional.empty(), Optional.empty());

    /**
     * Returns what saving would do.
     *
     * @param base the version the draft was made from; a new mix has none and nothing rests on it
     * @param draft the draft, if it can be saved at all
     */
    static SavingEffects of(DeskModel desk, Optional<Version<MixDesign>> base, Optional<MixDesign> draft) {
        if (base.isEmpty()
                || draft.isEmpty()
                || draft.get().hasSameAggregatesAs(base.get().value())) {
            return NONE;
        }
        Optional<Evidence> evidence =
                Evidence.of(desk.book(), base.get().value().id());
        return new SavingEffects(
                evidence.flatMap(known -> known.inForceOn(desk.tools().today())),
                evidence.flatMap(Evidence::openDetermination)
                        .filter(open -> !open.trials().isEmpty()));
    }

    boolean isNone() {
        return equals(NONE);
    }
}
