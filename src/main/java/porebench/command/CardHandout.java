package porebench.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.CardPrint;
import porebench.record.Draft;
import porebench.record.Evidence;
import porebench.record.FactorCard;
import porebench.record.FactorIssue;
import porebench.record.FactorState;
import porebench.record.LabBook;
import porebench.record.Laboratory;
import porebench.record.Version;
import porebench.record.port.OutputFile;
import porebench.record.port.Paper;
import porebench.record.port.Press;

/** Hands out the factor card of a mix: writes it, and keeps in the lab book that it left the laboratory. */
final class CardHandout {
    /** Somebody else may print the same revision meanwhile; the next number is then tried, this often. */
    private static final int TRIES = 5;

    private final Surroundings here;
    private final LabBook book;
    private final Press press;

    CardHandout(Surroundings here, LabBook book, Press press) {
        this.here = here;
        this.book = book;
        this.press = press;
    }

    /**
     * What was handed out.
     *
     * @param issue the revision on the card
     * @param print the record of it
     * @param file where the card is
     */
    record Handed(FactorIssue issue, CardPrint print, Path file) {}

    /** Returns why no card of a mix may leave the laboratory on a day; empty when one may. */
    static Optional<Problem> refusal(Evidence evidence, LocalDate day) {
        String mixId = evidence.mix().value().id().text();
        if (evidence.inForceOn(day).isEmpty()) {
            return Optional.of(Problem.error("factor", "issue.none-in-force", mixId, day.toString()));
        }
        FactorState state = evidence.stateOn(day);
        return state.isUsable()
                ? Optional.empty()
                : Optional.of(Problem.error("factor", "issue.not-usable", mixId, state.word()));
    }

    /**
     * Writes the card of the revision in force and records it.
     *
     * @param problems takes why it could not be recorded, although the card is written
     */
    Optional<Handed> handOut(
            Evidence evidence, Paper paper, OutputFile file, String who, String why, List<Problem> problems) {
        FactorIssue issue = evidence.inForceOn(here.today()).orElseThrow();
        Optional<Laboratory> laboratory =
                book.latest(Laboratory.class, Laboratory.ID).map(Version::value);
        press.write(FactorCard.of(evidence, issue, laboratory), paper, here.locale(), file);
        List<Problem> refused = List.of();
        for (int attempt = 0; attempt < TRIES; attempt++) {
            CardPrint print = new CardPrint(
                    issue.mixId(),
                    issue.revision(),
                    nextNumber(issue),
                    paper.symbol(),
                    file.path().toString());
            refused = book.keep(List.of(Draft.of(print)), who, why);
            if (refused.isEmpty()) {
                return Optional.of(new Handed(issue, print, file.path()));
            }
        }
        problems.addAll(refused);
        problems.add(
                Problem.error("out", "command.card-not-recorded", file.path().toString()));
        return Optional.empty();
    }

    private int nextNumber(FactorIssue issue) {
        return book.latest(CardPrint.class).stream()
                        .map(Version::value)
                        .filter(print -> print.mixId().equals(issue.mixId()) && print.revision() == issue.revision())
                        .mapToInt(CardPrint::number)
                        .max()
                        .orElse(0)
                + 1;
    }
}
