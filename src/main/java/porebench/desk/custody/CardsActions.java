package porebench.desk.custody;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JComponent;
import porebench.desk.CardsNow;
import porebench.desk.DeskModel;
import porebench.desk.ListOut;
import porebench.desk.Question;
import porebench.desk.form.Commands;
import porebench.evidence.custody.Custody;
import porebench.evidence.paper.RecallList;
import porebench.method.Texts;
import porebench.record.CardStep;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/** What can be done with cards: say what happened to those that are chosen, print who holds which, go to the mix. */
final class CardsActions {
    final Map<CardStep.Act, Action> acts = new EnumMap<>(CardStep.Act.class);
    final Action open;
    final Action print;
    final Action save;
    final Action carried;
    final Action check;

    private final CardsModel model;
    private final DeskModel desk;
    private final Texts texts;
    private final JComponent page;
    private final Runnable refreshed;
    private final ListOut out;
    private final ListOut.Words words;

    /**
     * Makes the actions.
     *
     * @param page the page, for dialogs to stand over
     * @param openMix turns the window to a mix
     * @param refreshed is called when something was done or refused
     */
    CardsActions(CardsModel model, JComponent page, Consumer<MixId> openMix, Runnable refreshed) {
        this.model = model;
        this.desk = model.desk();
        this.texts = model.texts();
        this.page = page;
        this.refreshed = refreshed;
        this.out = new ListOut(desk, page, this::tell);
        this.words = new ListOut.Words(
                texts.get("doing.print"),
                texts.get("printed"),
                texts.get("not-printed"),
                texts.get("save.title"),
                texts.get("kind.pdf"),
                "",
                file -> texts.get("doing.save", file),
                file -> texts.get("saved", file));
        for (CardStep.Act act : CardStep.Act.values()) {
            acts.put(act, Commands.of(texts.get("act." + act.symbol()), () -> keep(act)));
        }
        open = Commands.of(
                texts.get("open"),
                () -> model.chosen().stream()
                        .findFirst()
                        .ifPresent(card -> openMix.accept(card.print().mixId())));
        print = Commands.of(texts.get("print"), () -> list(model::list, out::print));
        save = Commands.of(texts.get("save"), () -> list(model::list, out::save));
        check = Commands.of(texts.get("check"), () -> TextCheckDialog.ask(desk, page));
        carried = Commands.of(
                texts.get("carried"),
                () -> model.holderOfChosen()
                        .ifPresent(holder -> list((now, head) -> model.carried(holder, now, head), out::save)));
    }

    /** Enables what can be done now. */
    void refresh() {
        acts.forEach((act, action) -> action.setEnabled(model.can(act)));
        open.setEnabled(!model.chosen().isEmpty());
        carried.setEnabled(model.holderOfChosen().isPresent());
    }

    private void keep(CardStep.Act act) {
        if (model.can(act) && desk.tools().asker().person(page).isPresent()) {
            model.keep(act, refreshed, failure -> desk.tools().asker().failure(page, texts.get("doing.keep"), failure));
        }
    }

    /** Makes a list of where the cards are now, which is read beside the event thread. */
    private void list(BiFunction<Custody, Head, RecallList> made, Consumer<ListOut.Leaf> then) {
        desk.ask(
                new Question.HeadOfBook(),
                head -> desk.ask(new CardsNow(), found -> then.accept(leaf(made.apply(found.custody(), head)))));
    }

    private void tell(String words) {
        model.tell(words);
        refreshed.run();
    }

    private ListOut.Leaf leaf(RecallList list) {
        return new ListOut.Leaf(list, Optional.empty(), model.fileName(), words);
    }
}
