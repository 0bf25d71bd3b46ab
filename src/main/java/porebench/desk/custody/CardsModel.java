package porebench.desk.custody;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import porebench.desk.CardsNow;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.form.Days;
import porebench.evidence.custody.CardActs;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.evidence.paper.RecallList;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.quantity.Symbolic;
import porebench.record.CardHolder;
import porebench.record.CardPlace;
import porebench.record.CardStep;
import porebench.record.CardSteps;
import porebench.record.PlantMark;
import porebench.record.book.Draft;
import porebench.record.chain.Head;

/** The factor cards on view, those that are chosen, and what is said of them, without its window. */
final class CardsModel {
    /** Which cards are on view. */
    enum View implements Symbolic {
        TO_COME_BACK(HeldCard::isToComeBack),
        OUT(HeldCard::isOut),
        ALL(card -> true);

        private final Predicate<HeldCard> rule;

        View(Predicate<HeldCard> rule) {
            this.rule = rule;
        }
    }

    private static final Custody NOWHERE = new Custody(LocalDateTime.MIN, List.of());

    private final DeskModel desk;
    private final Texts texts;
    private View view = View.OUT;
    private final Set<String> chosen = new LinkedHashSet<>();
    private Custody listed = NOWHERE;
    private View listedView = view;
    private List<HeldCard> rows = List.of();
    private CardHolder.Kind kind = CardHolder.Kind.TRUCK;
    private String name = "";
    private String at = "";
    private String remark = "";
    private List<Problem> problems = List.of();
    private String told = "";

    CardsModel(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of("porebench.desk.custody.custody", desk.tools().locale());
    }

    DeskModel desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    View view() {
        return view;
    }

    void show(View other) {
        view = other;
    }

    /** Returns where the cards are; empty until it was looked up. */
    Optional<Custody> custody() {
        return desk.answer(new CardsNow()).map(CardsNow.Found::custody);
    }

    /** Returns the cards on view; the same list until other ones are. */
    List<HeldCard> rows() {
        Optional<Custody> now = custody();
        if (now.isEmpty() || now.get() != listed || view != listedView) {
            listed = now.orElse(NOWHERE);
            listedView = view;
            rows = listed.cards().stream().filter(view.rule).toList();
        }
        return rows;
    }

    /** Says how many cards are out, with how many holders, and how many have to come back; nothing until it was looked up. */
    String sentence() {
        return custody()
                .map(now -> {
                    List<HeldCard> out = now.out();
                    long holders = out.stream()
                            .flatMap(card -> card.place().holder().stream())
                            .distinct()
                            .count();
                    long nobody = out.stream()
                            .filter(card -> card.place().holder().isEmpty())
                            .count();
                    if (now.cards().isEmpty()) {
                        return texts.get("sentence.none");
                    }
                    String count = Integer.toString(out.size());
                    return nobody == 0
                            ? texts.get("sentence", count, Long.toString(holders))
                            : texts.get("sentence.nobody", count, Long.toString(holders), Long.toString(nobody));
                })
                .orElse("");
    }

    /** Says how many cards have to come back; nothing where none has. */
    String alarmWords() {
        int back = custody().map(now -> now.toComeBack().size()).orElse(0);
        return back == 0 ? "" : texts.get("alarm", Integer.toString(back));
    }

    // What is said of a card.

    String holderWords(HeldCard card) {
        return card.place().holder().map(this::words).orElse("");
    }

    /** Returns a holder in words, such as "truck 12". */
    String words(CardHolder holder) {
        return texts.get("holder." + holder.kind().symbol(), holder.name());
    }

    String placeWords(HeldCard card) {
        return texts.get("place." + card.place().where().symbol());
    }

    String standingWords(HeldCard card) {
        return texts.get("is." + card.standing().symbol());
    }

    /** Says whether a card has to come back. */
    String backWords(HeldCard card) {
        return card.isToComeBack() ? texts.get("back") : "";
    }

    /** Says since when the factor on a card does not hold. */
    String sinceWords(HeldCard card) {
        return card.since().map(Days::show).orElse("");
    }

    /** Says when something was said of a card last, and by whom. */
    String lastWords(HeldCard card) {
        return card.place()
                .last()
                .map(step -> texts.get("last", Days.show(step.at()), step.by()))
                .orElseGet(() -> card.print().printedAt().map(Days::show).orElse(""));
    }

    /** Returns what was remarked last; of a plant's card to which nothing happened yet, on which paper it stands with others. */
    String remarkWords(HeldCard card) {
        return card.place()
                .last()
                .map(CardStep::remark)
                .or(() -> PlantMark.of(card.print())
                        .map(mark -> texts.get(
                                "on-plant", Long.toString(mark.card()), mark.plant(), Integer.toString(mark.page()))))
                .orElse("");
    }

    // What is chosen and said.

    /** Chooses cards by the names of their records. */
    void choose(List<String> names) {
        chosen.clear();
        chosen.addAll(names);
    }

    /** Returns the chosen cards that are on view. */
    List<HeldCard> chosen() {
        return rows().stream()
                .filter(card -> chosen.contains(card.print().recordId()))
                .toList();
    }

    CardHolder.Kind kind() {
        return kind;
    }

    void kind(CardHolder.Kind other) {
        kind = other;
    }

    String name() {
        return name;
    }

    void name(String typed) {
        name = typed;
    }

    String at() {
        return at;
    }

    void at(String typed) {
        at = typed;
    }

    String remark() {
        return remark;
    }

    void remark(String typed) {
        remark = typed;
    }

    /** Returns what is against what was said last, or doubtful about it. */
    List<Problem> problems() {
        return problems;
    }

    /** Says what was kept last. */
    String told() {
        return told;
    }

    /** Says that something was done. */
    void tell(String words) {
        told = words;
    }

    /** Returns whether something can happen to every chosen card. */
    boolean can(CardStep.Act act) {
        List<HeldCard> cards = chosen();
        return !cards.isEmpty()
                && cards.stream().allMatch(card -> {
                    CardPlace.Where where = card.place().where();
                    return CardSteps.after(where).contains(act)
                            || where == CardPlace.Where.PRINTED && act == CardStep.Act.RETURNED;
                });
    }

    /**
     * Keeps that something happened to all chosen cards, or says what is against it; a person must be known.
     *
     * @param done told when it is over
     * @param failed takes what went wrong with the lab book
     */
    void keep(CardStep.Act act, Runnable done, Consumer<Exception> failed) {
        told = "";
        Optional<Custody> known = custody();
        Optional<LocalDateTime> moment = moment();
        if (known.isEmpty() || moment.isEmpty()) {
            problems = known.isEmpty() ? List.of() : List.of(Problem.error("at", "custody.no-time", at.strip()));
            done.run();
            return;
        }
        boolean names = act == CardStep.Act.HANDED_OUT || act == CardStep.Act.FOUND;
        Optional<CardHolder> holder =
                names && !name.isBlank() ? Optional.of(new CardHolder(kind, name)) : Optional.empty();
        List<String> cards =
                chosen().stream().map(card -> card.print().recordId()).toList();
        // Since the cards were looked up time went on: what happened meanwhile is not still to come.
        Custody now = new Custody(desk.tools().now(), known.get().cards());
        Answer<List<CardStep>> answer =
                new CardActs(act, holder, moment.get(), desk.person(), remark).steps(now, cards);
        problems = answer.problems();
        if (answer.value().isEmpty()) {
            done.run();
            return;
        }
        List<Draft> drafts = answer.value().get().stream().map(Draft::of).toList();
        desk.keep(
                drafts,
                remark.isBlank() ? texts.get("why") : remark.strip(),
                Outcome.of(
                        refused -> {
                            List<Problem> all = new ArrayList<>(answer.problems());
                            all.addAll(refused);
                            problems = all;
                            if (refused.isEmpty()) {
                                told = texts.get("kept." + act.symbol(), Integer.toString(drafts.size()));
                                remark = "";
                                at = "";
                            }
                            done.run();
                        },
                        failed));
    }

    /** Returns when it happened: what was typed, or now where nothing was; empty where that is no time. */
    private Optional<LocalDateTime> moment() {
        return at.isBlank() ? Optional.of(desk.tools().now().truncatedTo(ChronoUnit.MINUTES)) : Days.parseMoment(at);
    }

    // The list on paper.

    /** Returns the one holder of all chosen cards; empty where they have several, or one is with nobody. */
    Optional<CardHolder> holderOfChosen() {
        List<Optional<CardHolder>> holders = chosen().stream()
                .map(card -> card.isOut() ? card.place().holder() : Optional.<CardHolder>empty())
                .distinct()
                .toList();
        return holders.size() == 1 ? holders.get(0) : Optional.empty();
    }

    /** Returns the list of the cards on view as it is printed: those that have to come back, or all that are out. */
    RecallList list(Custody now, Head head) {
        return RecallList.of(
                desk.laboratory(),
                now,
                view == View.TO_COME_BACK ? RecallList.Which.TO_COME_BACK : RecallList.Which.OUT,
                Optional.empty(),
                head);
    }

    /** Returns the list of everything a holder carries. */
    RecallList carried(CardHolder holder, Custody now, Head head) {
        return RecallList.of(desk.laboratory(), now, RecallList.Which.OUT, Optional.of(holder), head);
    }

    /** Returns the name of a file for a list, without its ending. */
    String fileName() {
        return texts.get("file", desk.tools().today().toString());
    }
}
