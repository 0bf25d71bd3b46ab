package porebench.desk.mix;

import java.util.List;
import java.util.Optional;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.evidence.DesignChange;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.source.DraftTouch;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.book.Version;

/**
 * What saving a new version of a mix design does to what rests on the mix.
 *
 * @param untrueFactor the factor in force that no longer stands for the aggregates; empty when none becomes untrue
 * @param trialsLeftBehind the open determination whose trials were made for an earlier version; empty when there is none
 */
record SavingEffects(Optional<FactorIssue> untrueFactor, Optional<JudgedDetermination> trialsLeftBehind) {
    private static final SavingEffects NONE = new SavingEffects(Optional.empty(), Optional.empty());

    /**
     * Asks what saving would do.
     *
     * @param base the version the draft was made from; a new mix has none and nothing rests on it
     * @param draft the draft, if it can be saved at all
     */
    record Of(Optional<Version<MixDesign>> base, Optional<MixDesign> draft) implements Question<SavingEffects> {
        @Override
        public SavingEffects answer(Reading seen) {
            if (base.isEmpty()
                    || draft.isEmpty()
                    || draft.get().hasSameAggregatesAs(base.get().value())) {
                return NONE;
            }
            Optional<Evidence> evidence =
                    Evidence.of(seen.book(), base.get().value().id());
            Optional<DesignChange> change = evidence.map(known -> new DesignChange(known, draft.get()));
            return new SavingEffects(
                    evidence.map(known -> DraftTouch.of(known, draft.get(), List.of(), seen.moment()))
                            .filter(DraftTouch::asksForNewTest)
                            .flatMap(touch -> touch.touched().inForce()),
                    change.flatMap(DesignChange::closedDetermination));
        }
    }
}
