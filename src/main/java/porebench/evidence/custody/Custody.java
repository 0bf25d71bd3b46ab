package porebench.evidence.custody;

import java.time.LocalDateTime;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.evidence.RegisterRow;
import porebench.record.CardHolder;
import porebench.record.CardPlace;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.CardSteps;
import porebench.record.FactorIssue;
import porebench.record.Kept;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/**
 * Where the factor cards of some mixes are at a moment. Marked copies, and cards that did not leave after all, are none.
 *
 * @param at the moment, by the laboratory's clock
 * @param cards the cards, by mix, revision and number
 */
public record Custody(LocalDateTime at, List<HeldCard> cards) {
    public Custody {
        cards = List.copyOf(cards);
    }

    /**
     * Reads where the cards of some mixes are: their prints, the steps of these and the revisions, and no trials.
     *
     * @param rows how the mixes stand in the register at the moment
     */
    public static Custody of(Records book, Collection<RegisterRow> rows, LocalDateTime at) {
        List<String> mixes = rows.stream().map(row -> row.mixId().text()).toList();
        List<CardPrint> prints = values(book.latestOf(Belonging.PRINTS_OF_MIX, mixes));
        List<String> printed =
                prints.stream().map(print -> print.mixId().text()).distinct().toList();
        return of(
                rows,
                prints,
                values(book.latestOf(Belonging.CARD_STEPS_OF_MIX, printed)),
                values(book.latestOf(Belonging.ISSUES_OF_MIX, withOtherRevisions(rows, prints))),
                at);
    }

    /**
     * Reads where all cards of a laboratory are, each kind of record in one go; of one or a few mixes {@link #of} tells with less.
     *
     * @param rows how all mixes stand in the register at the moment
     */
    public static Custody ofLaboratory(Records book, Collection<RegisterRow> rows, LocalDateTime at) {
        Set<MixId> mixes = rows.stream().map(RegisterRow::mixId).collect(Collectors.toSet());
        // One of a mix that came in since its rows were read is told the next time.
        List<CardPrint> prints = values(book.latest(CardPrint.class)).stream()
                .filter(print -> mixes.contains(print.mixId()))
                .toList();
        return of(
                rows,
                prints,
                values(book.latest(CardStep.class)),
                values(book.latestOf(Belonging.ISSUES_OF_MIX, withOtherRevisions(rows, prints))),
                at);
    }

    /** Returns the mixes with cards of other revisions than the one in force, of which the line in the register does not tell. */
    private static List<String> withOtherRevisions(Collection<RegisterRow> rows, List<CardPrint> prints) {
        Map<MixId, Integer> inForce = new HashMap<>();
        rows.forEach(row -> row.revision().ifPresent(revision -> inForce.put(row.mixId(), revision)));
        return prints.stream()
                .filter(print -> print.revision() != inForce.getOrDefault(print.mixId(), 0))
                .map(print -> print.mixId().text())
                .distinct()
                .toList();
    }

    private static <T extends Kept> List<T> values(List<Version<T>> versions) {
        return versions.stream().map(Version::value).toList();
    }

    /**
     * Puts together where cards are.
     *
     * @param rows how their mixes stand in the register at the moment
     * @param prints the cards
     * @param steps what happened to them
     * @param issues the revisions of their mixes; none is needed of a mix whose cards are all of the revision in force
     */
    public static Custody of(
            Collection<RegisterRow> rows,
            List<CardPrint> prints,
            List<CardStep> steps,
            List<FactorIssue> issues,
            LocalDateTime at) {
        Map<MixId, RegisterRow> byMix = rows.stream().collect(Collectors.toMap(RegisterRow::mixId, row -> row));
        Map<String, List<CardStep>> byCard = steps.stream().collect(Collectors.groupingBy(CardStep::cardId));
        Map<MixId, List<FactorIssue>> issued = issues.stream().collect(Collectors.groupingBy(FactorIssue::mixId));
        // Many cards are of one revision.
        Map<String, RevisionStanding> revisions = new HashMap<>();
        List<HeldCard> cards = prints.stream()
                .filter(CardSteps::canBeHandedOut)
                .filter(print -> print.printedAt().filter(at::isBefore).isEmpty())
                .sorted(Comparator.comparing(CardPrint::mixId)
                        .thenComparing(CardPrint::revision)
                        .thenComparing(CardPrint::number))
                .map(print -> {
                    RegisterRow row =
                            Objects.requireNonNull(byMix.get(print.mixId()), "prints are read of the rows' mixes");
                    RevisionStanding revision = revisions.computeIfAbsent(
                            FactorIssue.idOf(print.mixId(), print.revision()),
                            any -> RevisionStanding.of(
                                    print.revision(), row, issued.getOrDefault(print.mixId(), List.of()), at));
                    return held(
                            print,
                            row.title(),
                            byCard.getOrDefault(print.recordId(), List.of()),
                            Objects.requireNonNull(revision),
                            at);
                })
                .toList();
        return new Custody(at, cards);
    }

    private static HeldCard held(
            CardPrint print, String title, List<CardStep> kept, RevisionStanding revision, LocalDateTime at) {
        List<CardStep> steps =
                kept.stream().sorted(Comparator.comparingInt(CardStep::number)).toList();
        LocalDateTime latest = at.plusMinutes(CardSteps.CLOCK_MINUTES);
        CardPlace place = CardPlace.after(
                steps.stream().filter(step -> !step.at().isAfter(latest)).toList());
        return new HeldCard(
                print, steps, place, revision.standing(), revision.since(), title, revision.factorPercent());
    }

    /** Returns the cards that a crew may read. */
    public List<HeldCard> out() {
        return cards.stream().filter(HeldCard::isOut).toList();
    }

    /** Returns the cards that are out with a factor that no longer holds. */
    public List<HeldCard> toComeBack() {
        return cards.stream().filter(HeldCard::isToComeBack).toList();
    }

    /** Returns the cards that a holder has. */
    public List<HeldCard> heldBy(CardHolder holder) {
        return out().stream()
                .filter(card -> card.place().holder().filter(holder::equals).isPresent())
                .toList();
    }

    /** Returns the cards by the names of their records. */
    public Map<String, HeldCard> byName() {
        return cards.stream().collect(Collectors.toMap(card -> card.print().recordId(), card -> card));
    }
}
