package porebench.desk.mix;

import java.util.List;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.evidence.Evidence;
import porebench.evidence.RegisterRow;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.custody.Holders;
import porebench.evidence.source.DraftTouch;
import porebench.evidence.source.TouchedMix;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.id.MixId;

/** What keeping the draft would do to the factor in force, and by which rule, as it is typed; nothing of it is kept. */
record DraftEffects(MixModel mix) {
    /**
     * What is shown.
     *
     * @param words what becomes of the factor in force; blank where the draft is as it is kept, or there is no such factor
     * @param why what takes the factor from the mix; empty where nothing does
     */
    record Shown(String words, List<Problem> why) {
        static final Shown NOTHING = new Shown("", List.of());
    }

    /** Asks where the cards of a mix are. */
    record CardsOf(MixId mix) implements Question<List<HeldCard>> {
        @Override
        public List<HeldCard> answer(Reading seen) {
            List<RegisterRow> rows =
                    seen.rows().stream().filter(row -> row.mixId().equals(mix)).toList();
            return Custody.of(seen.book(), rows, seen.moment()).cards();
        }
    }

    /** Returns what is to be shown of the draft as it stands. */
    Shown shown() {
        DeskModel desk = mix.desk();
        Optional<MixDesign> draft = mix.reading().mix();
        Optional<Evidence> kept = desk.evidence()
                .filter(evidence -> mix.base()
                        .filter(base ->
                                base.value().id().equals(evidence.mix().value().id()))
                        .isPresent());
        if (kept.isEmpty()
                || draft.isEmpty()
                || draft.get().equals(kept.get().mix().value())
                || !draft.get().id().equals(kept.get().mix().value().id())) {
            return Shown.NOTHING;
        }
        List<HeldCard> cards = desk.answer(new CardsOf(draft.get().id())).orElse(List.of());
        DraftTouch touch =
                DraftTouch.of(kept.get(), draft.get(), cards, desk.tools().now());
        return touch.touched()
                .inForce()
                .map(issue -> new Shown(words(touch, issue), touch.why()))
                .orElse(Shown.NOTHING);
    }

    private String words(DraftTouch touch, FactorIssue issue) {
        Texts texts = mix.texts();
        String factor = mix.desk().tools().numbers().show(issue.factorPercent());
        String revision = Integer.toString(issue.revision());
        if (!touch.asksForNewTest()) {
            return texts.get("draft.stands", factor, revision);
        }
        TouchedMix touched = touch.touched();
        String cards = touched.cardsOut() + touched.cardFiles() == 0
                ? texts.get("draft.no-cards")
                : texts.get("draft.cards", touched.cardsOut(), touched.cardFiles());
        String holders = touched.out().isEmpty()
                ? ""
                : " "
                        + texts.get(
                                "draft.holders",
                                mix.desk().tools().problemText().say(Holders.named(touched.out())));
        return texts.get("draft.asks", factor, revision) + " " + cards + holders;
    }
}
