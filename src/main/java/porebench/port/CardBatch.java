package porebench.port;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import porebench.evidence.EvidenceReader;
import porebench.evidence.RegisterRow;
import porebench.evidence.custody.CardChoice;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PlantCard;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.PlantMark;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/**
 * Lets the factor cards of many mixes leave in one file, through the gate of {@link CardHandout}: all of them are laid out, all
 * are recorded, and only then the file takes its place; or nothing is recorded and nothing written.
 */
public final class CardBatch {
    /** Somebody else may print one of the revisions meanwhile; the next numbers are then tried, this often. */
    private static final int TRIES = 5;

    private final LabBook book;
    private final Press press;
    private final Locale locale;

    /**
     * Sets up the way out of a lab book.
     *
     * @param locale the language in which a failure is recorded
     */
    public CardBatch(LabBook book, Press press, Locale locale) {
        this.book = book;
        this.press = press;
        this.locale = locale;
    }

    /**
     * What is wanted.
     *
     * @param choice the mixes
     * @param leaveOut whether mixes that may not have a card are left out and named; otherwise one of them stops all
     * @param onOne whether the mixes of a plant stand on one card; mixes without a factor that may be used are then not left out but
     *     stand on it as that
     * @param look how the cards look
     * @param moment the day and time it is, by the laboratory's clock
     * @param who who lets them leave
     * @param why the reason kept with the records
     */
    public record Wish(
            CardChoice choice,
            boolean leaveOut,
            boolean onOne,
            CardLook look,
            LocalDateTime moment,
            String who,
            String why) {
        /** Cards of their own for all mixes. */
        public Wish(CardChoice choice, boolean leaveOut, CardLook look, LocalDateTime moment, String who, String why) {
            this(choice, leaveOut, false, look, moment, who, why);
        }
    }

    /**
     * The mixes that were asked for.
     *
     * @param cards the cards that may leave
     * @param rows all mixes there are, with their cards where they may have one
     * @param plants the plants of these mixes, as their designs name them
     */
    private record Chosen(List<FactorCard> cards, List<PlantCard.Row> rows, List<String> plants) {}

    /**
     * Writes the cards to one file.
     *
     * @param progress hears how far it is, and may end it while nothing is recorded yet; nothing is left then
     * @return the cards, in their order, with every mix that was left out as a warning; without a value when nothing was written,
     *     with every mix that may not have a card
     * @throws OutputRefused if nothing may be written there, or with every card that does not fit its size
     * @throws CancellationException if the person ended it
     */
    public Answer<List<CardHandout.Handed>> toFile(Wish wish, OutputFile file, Progress progress) {
        OutputRefused.unlessNone(file.problems());
        if (wish.onOne() && !wish.choice().isOfPlant()) {
            return Answer.refused(List.of(Problem.error("plant", "cards.on-one-plant")));
        }
        if (wish.onOne() && wish.look().chart()) {
            return Answer.refused(List.of(Problem.error("chart", "cards.on-one-no-chart")));
        }
        Answer<Chosen> chosen = cards(wish, progress);
        if (chosen.value().isEmpty()) {
            return Answer.refused(chosen.problems());
        }
        Answer<List<FactorCard>> cards = Answer.of(chosen.value().get().cards(), chosen.problems());
        String destination = CardPrint.toFile(file.path(), false);
        if (wish.onOne()) {
            List<PlantCard> pages = press.pages(plant(wish, chosen.value().get()), wish.look());
            try (Waiting waiting = press.readyPlant(pages, wish.look(), file, progress)) {
                return let(wish, cards, pages, destination, waiting, progress);
            }
        }
        try (Waiting waiting = press.ready(cards.value().orElseThrow(), wish.look(), file, progress)) {
            return let(wish, cards, List.of(), destination, waiting, progress);
        }
    }

    private static PlantCard plant(Wish wish, Chosen chosen) {
        FactorCard any = chosen.cards().get(0);
        return PlantCard.of(
                any.laboratory(),
                chosen.plants().get(0),
                wish.moment().toLocalDate(),
                chosen.rows().stream()
                        .sorted(Comparator.comparing(PlantCard.Row::mixId))
                        .toList(),
                any.head());
    }

    private Answer<Chosen> cards(Wish wish, Progress progress) {
        List<RegisterRow> rows = wish.choice().asksTheRegister()
                ? LaboratoryStanding.of(book, progress).rows(wish.moment())
                : List.of();
        Answer<List<MixId>> chosen = wish.choice().among(book, rows, wish.moment());
        if (chosen.value().isEmpty()) {
            return Answer.refused(chosen.problems());
        }
        List<MixId> mixes = chosen.value().get();
        CardGate gate = new CardGate(book);
        List<FactorCard> cards = new ArrayList<>();
        List<PlantCard.Row> all = new ArrayList<>();
        List<String> plants = new ArrayList<>();
        List<Problem> refused = new ArrayList<>();
        Set<MixId> found = new HashSet<>();
        EvidenceReader.asking(book).readEach(mixes, progress, evidence -> {
            found.add(evidence.mix().value().id());
            Answer<CardGate.Allowed> allowed = gate.card(evidence, Optional.empty(), false, wish.moment());
            allowed.value().ifPresent(one -> cards.add(one.card()));
            all.add(new PlantCard.Row(
                    evidence.mix().value().id(),
                    evidence.mix().value().title(),
                    allowed.value().map(CardGate.Allowed::card)));
            evidence.mix().value().plant().ifPresent(plants::add);
            refused.addAll(allowed.problems());
        });
        mixes.stream()
                .filter(mix -> !found.contains(mix))
                .map(CardGate::notThere)
                .forEach(refused::add);
        boolean isEnough = refused.isEmpty() || (wish.leaveOut() && !cards.isEmpty());
        return isEnough
                ? Answer.of(
                        new Chosen(cards, all, plants),
                        refused.stream().map(Problem::asWarning).toList())
                : Answer.refused(refused);
    }

    private Answer<List<CardHandout.Handed>> let(
            Wish wish,
            Answer<List<FactorCard>> allowed,
            List<PlantCard> pages,
            String destination,
            Waiting waiting,
            Progress progress) {
        List<FactorCard> cards = allowed.value().orElseThrow();
        List<Problem> refused = List.of();
        for (int attempt = 0; attempt < TRIES; attempt++) {
            List<CardHandout.Handed> handed = numbered(wish, cards, papers(wish, pages), destination);
            refused = book.keep(
                    handed.stream().map(one -> Draft.of(one.print())).toList(), wish.who(), wish.why(), progress);
            if (refused.isEmpty()) {
                return release(wish, Answer.of(handed, allowed.problems()), waiting);
            }
        }
        List<Problem> problems = new ArrayList<>(refused);
        problems.add(Problem.error("out", "cards.not-recorded", destination));
        return Answer.refused(problems);
    }

    /** Returns what is kept as the paper of each mix on a plant's card; of cards of their own nothing, as they are all alike. */
    private Map<MixId, String> papers(Wish wish, List<PlantCard> pages) {
        Map<MixId, String> papers = new HashMap<>();
        long card = pages.isEmpty() ? 0 : book.head().entries();
        for (PlantCard page : pages) {
            PlantMark mark = new PlantMark(page.plant(), card, page.page());
            page.cards()
                    .forEach(
                            one -> papers.put(one.mixId(), mark.onto(wish.look().form())));
        }
        return papers;
    }

    private List<CardHandout.Handed> numbered(
            Wish wish, List<FactorCard> cards, Map<MixId, String> papers, String destination) {
        List<String> mixes = cards.stream().map(card -> card.mixId().text()).toList();
        Map<String, Integer> last = new HashMap<>();
        for (Version<CardPrint> print : book.latestOf(Belonging.PRINTS_OF_MIX, mixes)) {
            String revision =
                    FactorIssue.idOf(print.value().mixId(), print.value().revision());
            last.merge(revision, print.value().number(), Math::max);
        }
        return cards.stream()
                .map(card -> new CardHandout.Handed(
                        card,
                        new CardPrint(
                                card.mixId(),
                                card.issue().revision(),
                                last.getOrDefault(card.issue().recordId(), 0) + 1,
                                papers.getOrDefault(card.mixId(), wish.look().form()),
                                destination,
                                Optional.of(wish.moment().truncatedTo(ChronoUnit.MINUTES)))))
                .toList();
    }

    private Answer<List<CardHandout.Handed>> release(
            Wish wish, Answer<List<CardHandout.Handed>> handed, Waiting waiting) {
        try {
            waiting.release();
            return handed;
        } catch (RuntimeException failure) {
            return Answer.refused(notReleased(wish, handed.value().orElseThrow(), CardHandout.words(failure, locale)));
        }
    }

    /** Corrects the records of cards that did not leave after all; returns what is to be said. */
    private List<Problem> notReleased(Wish wish, List<CardHandout.Handed> handed, String failure) {
        List<Problem> problems = new ArrayList<>();
        try {
            List<String> names =
                    handed.stream().map(one -> one.print().recordId()).toList();
            List<Draft> corrections = book.latest(CardPrint.class, names).values().stream()
                    .<Draft>map(kept -> Draft.correcting(kept, kept.value().notReleased()))
                    .toList();
            problems.addAll(book.keep(corrections, wish.who(), failure));
        } catch (RuntimeException alsoFailed) {
            problems.add(
                    Problem.error("out", "cards.not-corrected", handed.size(), CardHandout.words(alsoFailed, locale)));
        }
        String code = problems.isEmpty() ? "cards.not-released" : "cards.not-released-but-recorded";
        problems.add(0, Problem.error("out", code, handed.size(), failure));
        return problems;
    }
}
