package porebench.evidence.paper;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.evidence.CardState;
import porebench.evidence.Evidence;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.Laboratory;
import porebench.record.book.LabBook;
import porebench.record.book.Version;

/**
 * Which lines of an altered card's text differ from what it said, where that can be known.
 *
 * <p>The lab book does not keep the texts of cards. But where a text that the program would write of the revision now has the very code that was typed,
 * it is the text of that card (another would have it once in 31 to the power of 8 times), and the lines can be compared. Where none has, because a name
 * has changed since or the code was altered too, nothing is said of lines.
 */
final class AlteredLines {
    private static final String FIELD = "text";

    private final LabBook book;
    private final Evidence evidence;
    private final FactorIssue issue;
    private final CardSeal seal;
    private final LocalDateTime moment;

    AlteredLines(LabBook book, Evidence evidence, FactorIssue issue, CardSeal seal, LocalDateTime moment) {
        this.book = book;
        this.evidence = evidence;
        this.issue = issue;
        this.seal = seal;
        this.moment = moment;
    }

    /** Returns what can be said of the lines of a text whose code is not its own. */
    List<Problem> of(CardCheck.Typed typed) {
        List<String> texts = texts();
        for (String text : texts) {
            if (typed.code().equals(Optional.of(seal.code(text)))) {
                return differing(text, typed.text());
            }
        }
        boolean isWhole = texts.stream()
                .anyMatch(text -> CheckCode.normal(text + "\n[" + seal.name() + "] ")
                        .equals(typed.body().strip()));
        return List.of(
                isWhole
                        ? Problem.warning(FIELD, "cardcheck.code-only")
                        : Problem.warning(FIELD, "cardcheck.line-unknown", seal.name()));
    }

    private List<Problem> differing(String card, String typed) {
        List<String> lines = lines(card);
        String body = CheckCode.normal(typed);
        List<Problem> problems = new ArrayList<>();
        for (String line : lines) {
            if (!(" " + body + " ").contains(" " + line + " ")) {
                problems.add(Problem.warning(FIELD, "cardcheck.line-gone", line));
            }
        }
        List<String> given = lines(typed);
        // The last line of a text is the name of the revision and the code; a text in one line has no others to
        // compare.
        for (String line : given.subList(0, Math.max(0, given.size() - 1))) {
            if (!lines.contains(line) && !line.startsWith("[" + seal.name() + "]")) {
                problems.add(Problem.warning(FIELD, "cardcheck.line-added", line));
            }
        }
        return problems.isEmpty() ? List.of(Problem.warning(FIELD, "cardcheck.line-order")) : problems;
    }

    private static List<String> lines(String text) {
        return text.lines()
                .map(CheckCode::normal)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    /** Returns what a card of the revision says without its code, in every language: as handed out, as it stands now, and marked. */
    private List<String> texts() {
        Optional<Laboratory> laboratory =
                book.latest(Laboratory.class, Laboratory.ID).map(Version::value);
        FactorCard now = FactorCard.of(evidence, issue, laboratory, book.head(), moment);
        FactorCard atFirst = now.in(CardState.IN_FORCE, issue.recheckBy(), Optional.empty());
        FactorCard unmarked = now.in(CardState.IN_FORCE, now.lastDay(), now.until());
        return Stream.of(atFirst, unmarked, now)
                .distinct()
                .flatMap(card ->
                        Stream.of(PaperLanguage.values()).map(CardWords::in).map(words -> CardText.of(card, words)))
                .toList();
    }
}
