package porebench.desk;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javax.swing.JComponent;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.custody.Holders;
import porebench.method.Texts;
import porebench.record.CardPrint;
import porebench.record.id.MixId;

/** What is offered once cards have to come back, or one was printed: to go to the page of cards out, where the list is printed. */
public final class RecallOffer {
    private final DeskModel desk;
    private final Texts texts;
    private final Supplier<JComponent> over;
    private final Consumer<List<String>> openCards;

    /**
     * Makes the offer.
     *
     * @param over what its question stands over
     * @param openCards turns the window to some cards, by the names of their records; without any to those that have to come back
     */
    public RecallOffer(DeskModel desk, Supplier<JComponent> over, Consumer<List<String>> openCards) {
        this.desk = desk;
        this.texts = Texts.of("porebench.desk.desk", desk.tools().locale());
        this.over = over;
        this.openCards = openCards;
    }

    /** Asks where the cards are now and hands those of a mix that are out on. */
    public void withOut(MixId mix, Consumer<List<HeldCard>> then) {
        desk.ask(new CardsOfMix(mix), then);
    }

    /** Asks where the cards are now and hands those of some mixes that are out on. */
    public void withOut(Set<MixId> mixes, Consumer<List<HeldCard>> then) {
        desk.ask(new CardsOfMix(mixes), then);
    }

    /** Says who holds some cards, of which there is at least one. */
    public String names(List<HeldCard> cards) {
        return desk.tools().problemText().say(Holders.named(cards));
    }

    /** Offers the list of the cards that have to come back now, where some of those mixes have any. */
    public void afterKeeping(Predicate<MixId> mixes) {
        desk.ask(new CardsNow(), found -> {
            List<HeldCard> back = found.custody().toComeBack().stream()
                    .filter(card -> mixes.test(card.print().mixId()))
                    .toList();
            if (!back.isEmpty()
                    && desk.tools()
                            .asker()
                            .confirm(
                                    over.get(),
                                    texts.get("recall.title"),
                                    texts.get("recall.question", Integer.toString(back.size()), names(back)),
                                    texts.get("recall.act"))) {
                openCards.accept(List.of());
            }
        });
    }

    /** Offers to say to whom the copies of a card go that were printed for a crew, the first one first. */
    public void afterPrinting(List<CardPrint> prints) {
        if (prints.stream().allMatch(print -> print.way() == CardPrint.Way.HANDED_OUT)
                && desk.tools()
                        .asker()
                        .confirm(over.get(), texts.get("printed.title"), question(prints), texts.get("printed.act"))) {
            openCards.accept(prints.stream().map(CardPrint::recordId).toList());
        }
    }

    private String question(List<CardPrint> prints) {
        String first = prints.get(0).recordId();
        return prints.size() == 1
                ? texts.get("printed.question", first)
                : texts.get(
                        "printed.question.copies",
                        Integer.toString(prints.size()),
                        first,
                        prints.get(prints.size() - 1).recordId());
    }
}
