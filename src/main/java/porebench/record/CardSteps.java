package porebench.record;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import porebench.method.Problem;
import porebench.record.CardPlace.Where;

/**
 * Which step of a factor card may follow which: the one gate of command line and files, and of a window that may come.
 *
 * <p>A clock may go wrong by {@value #CLOCK_MINUTES} minutes before a step counts as one that is still to come (common practice,
 * no source).
 */
public final class CardSteps {
    /** So far a clock may be ahead of the laboratory's, in minutes. */
    public static final int CLOCK_MINUTES = 5;

    private CardSteps() {}

    /**
     * Returns what is wrong with the next step of a card, and what is doubtful.
     *
     * @param print the card
     * @param before what happened to it, the first step first
     * @param next what is said now
     * @param now the day and time it is, by the laboratory's clock
     */
    public static List<Problem> check(CardPrint print, List<CardStep> before, CardStep next, LocalDateTime now) {
        List<Problem> problems = new ArrayList<>();
        CardPlace place = CardPlace.after(before);
        if (next.number() != before.size() + 1) {
            problems.add(Problem.error("number", "custody.not-next", next.cardId(), next.number(), before.size() + 1));
        }
        if (!canBeHandedOut(print)) {
            problems.add(Problem.error("card", "custody.not-for-crews", next.cardId()));
        } else {
            problems.addAll(follow(place, next));
        }
        problems.addAll(times(print, place, next, now));
        return problems;
    }

    /** Returns whether a card can go to a crew: unmarked, on paper or in a file that somebody printed. */
    public static boolean canBeHandedOut(CardPrint print) {
        return print.way() == CardPrint.Way.HANDED_OUT || print.way() == CardPrint.Way.SAVED;
    }

    /** Returns what can happen next to a card that is somewhere. */
    public static Set<CardStep.Act> after(Where where) {
        return switch (where) {
            case PRINTED, RETURNED -> Set.of(CardStep.Act.HANDED_OUT, CardStep.Act.DESTROYED, CardStep.Act.LOST);
            case OUT, ACKNOWLEDGED ->
                Set.of(
                        CardStep.Act.HANDED_OUT,
                        CardStep.Act.ACKNOWLEDGED,
                        CardStep.Act.RETURNED,
                        CardStep.Act.DESTROYED,
                        CardStep.Act.LOST);
            case LOST -> Set.of(CardStep.Act.FOUND);
            case DESTROYED -> Set.of();
        };
    }

    private static List<Problem> follow(CardPlace place, CardStep next) {
        List<Problem> problems = new ArrayList<>();
        boolean fromPrinter = place.where() == Where.PRINTED && next.act() == CardStep.Act.RETURNED;
        if (!fromPrinter && !after(place.where()).contains(next.act())) {
            problems.add(Problem.error(
                    "act",
                    "custody.cannot-follow",
                    next.cardId(),
                    place.where().word(),
                    next.act().word()));
            return problems;
        }
        if (next.act() == CardStep.Act.LOST && next.remark().isBlank()) {
            problems.add(Problem.error("remark", "custody.lost-without-remark", next.cardId()));
        }
        if (next.act() == CardStep.Act.HANDED_OUT) {
            handedOut(place, next).ifPresent(problems::add);
        } else if (next.act() != CardStep.Act.FOUND) {
            Optional<CardHolder> held = place.holder();
            next.holder()
                    .filter(named -> held.isPresent() && !held.get().equals(named))
                    .ifPresent(named -> problems.add(Problem.error(
                            "holder",
                            "custody.other-holder",
                            next.cardId(),
                            held.get().text(),
                            named.text())));
        }
        return problems;
    }

    private static Optional<Problem> handedOut(CardPlace place, CardStep next) {
        if (next.holder().isEmpty()) {
            return Optional.of(Problem.error("holder", "custody.no-holder", next.cardId()));
        }
        String to = next.holder().get().text();
        return place.holder().map(CardHolder::text).map(from -> {
            if (from.equals(to)) {
                return Problem.error("holder", "custody.holds-it-already", next.cardId(), from);
            }
            return next.remark().isBlank()
                    ? Problem.error("remark", "custody.handed-on-without-remark", next.cardId(), from, to)
                    : Problem.warning("holder", "custody.handed-on", next.cardId(), from, to);
        });
    }

    private static List<Problem> times(CardPrint print, CardPlace place, CardStep next, LocalDateTime now) {
        List<Problem> problems = new ArrayList<>();
        place.last()
                .map(CardStep::at)
                .filter(last -> next.at().isBefore(last))
                .ifPresent(last -> problems.add(
                        Problem.error("at", "custody.before-the-last", next.cardId(), said(next.at()), said(last))));
        print.printedAt()
                .filter(printed -> next.at().isBefore(printed))
                .ifPresent(printed -> problems.add(
                        Problem.error("at", "custody.before-printing", next.cardId(), said(next.at()), said(printed))));
        if (next.at().isAfter(now.plusMinutes(CLOCK_MINUTES))) {
            problems.add(Problem.error("at", "custody.to-come", next.cardId(), said(next.at()), said(now)));
        }
        return problems;
    }

    private static String said(LocalDateTime moment) {
        return moment.toString().replace('T', ' ');
    }
}
