package porebench.evidence.paper;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import porebench.evidence.CardState;
import porebench.evidence.Evidence;
import porebench.method.Problem;
import porebench.quantity.Symbolic;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.book.Belonging;
import porebench.record.book.LabBook;

/**
 * What a lab book finds about the text of a card, as its code of squares, a phone or a person gives it.
 *
 * <p>An unaltered text was made with the key of its revision: by this laboratory's program, or by somebody who can read its lab book.
 * It says nothing about the paper: a text copied letter for letter is unaltered too.
 *
 * @param verdict what is to be thought of the text
 * @param issue the revision that it names, of a plant's card the first that is no longer to be worked by, or else the first; empty
 *     where the lab book holds none of that name
 * @param state how it stands with the cards of that revision now
 * @param copies how many cards, files and marked copies of the revision left the laboratory; of several the fewest
 * @param others the other revisions on a plant's card
 * @param problems why the text is no card to work by; warnings where it is one, or was
 */
public record CardCheck(
        Verdict verdict,
        Optional<FactorIssue> issue,
        Optional<CardState> state,
        int copies,
        List<FactorIssue> others,
        List<Problem> problems) {
    private static final Pattern SEALED =
            Pattern.compile("(.*\\[.+/r[1-9]\\d{0,8}] ?)(\\S{4}-?\\S{4})", Pattern.DOTALL);
    private static final String FIELD = "text";

    /** Far more than a code of squares holds, in bytes. */
    public static final int LONGEST = 100_000;

    public CardCheck {
        others = List.copyOf(others);
        problems = List.copyOf(problems);
    }

    /** What is to be thought of a text. */
    public enum Verdict implements Symbolic {
        /** It is what this laboratory's program wrote. */
        UNALTERED,
        /** It is what the program wrote, in a training book or on simulated trials: no card to work by. */
        TRAINING,
        /** Its code is not that of the text. */
        ALTERED,
        /** It names a revision that the lab book does not hold. */
        UNKNOWN,
        /** It does not end in a code, as that of a card older than the codes does not. */
        NO_CODE
    }

    /** Returns why there is nothing to look at: no text, or one that is far too long; empty where there is. */
    public static Optional<Problem> unusable(String text) {
        if (text.isBlank()) {
            return Optional.of(Problem.error(FIELD, "cardcheck.blank"));
        }
        return text.getBytes(StandardCharsets.UTF_8).length > LONGEST
                ? Optional.of(Problem.error(FIELD, "cardcheck.too-long", LONGEST))
                : Optional.empty();
    }

    /**
     * Looks at a text. Where that of a card of one mix is altered, its lines that differ are named if that can be known.
     *
     * @param moment the day and time it is, by the laboratory's clock
     */
    public static CardCheck of(LabBook book, String text, LocalDateTime moment) {
        Matcher matcher = SEALED.matcher(CheckCode.normal(text));
        if (!matcher.matches()) {
            return without(Verdict.NO_CODE, Problem.error(FIELD, "cardcheck.no-code"));
        }
        String body = matcher.group(1);
        Optional<CheckCode> code = CheckCode.parse(matcher.group(2));
        List<SealedNames> found = SealedNames.in(book, body);
        if (found.isEmpty()) {
            return without(
                    Verdict.UNKNOWN,
                    Problem.error(
                            FIELD,
                            "cardcheck.unknown",
                            body.substring(body.lastIndexOf('[') + 1, body.lastIndexOf(']'))));
        }
        Optional<SealedNames> fitting = found.stream()
                .filter(names ->
                        code.equals(Optional.of(CheckCode.of(names.seal().key(), body))))
                .findFirst();
        return new Found(book, fitting.orElse(found.get(0)), moment, new Typed(text, body, code))
                .checked(fitting.isPresent());
    }

    /** Returns whether a text ends as that of a card does: in the name of a revision and a code, right or wrong. */
    public static boolean isSealed(String text) {
        return SEALED.matcher(CheckCode.normal(text)).matches();
    }

    private static CardCheck without(Verdict verdict, Problem problem) {
        return new CardCheck(verdict, Optional.empty(), Optional.empty(), 0, List.of(), List.of(problem));
    }

    /**
     * A text as it was typed or read.
     *
     * @param text all of it, with its lines
     * @param body what its code is of, normal
     * @param code its code; empty where it has letters that no code has
     */
    record Typed(String text, String body, Optional<CheckCode> code) {}

    private record Found(LabBook book, SealedNames names, LocalDateTime moment, Typed typed) {
        CardCheck checked(boolean fits) {
            String name = names.seal().name();
            boolean training = book.isTraining() || names.issues().stream().anyMatch(FactorIssue::isSimulated);
            Verdict verdict = !fits ? Verdict.ALTERED : training ? Verdict.TRAINING : Verdict.UNALTERED;
            List<Problem> problems = new ArrayList<>();
            if (verdict == Verdict.ALTERED) {
                problems.add(Problem.error(FIELD, "cardcheck.altered", name));
                problems.addAll(lines());
            }
            if (verdict == Verdict.TRAINING) {
                problems.add(Problem.error(FIELD, "cardcheck.training", name));
            }
            List<FactorIssue> issues = new ArrayList<>(names.issues());
            Optional<FactorIssue> worst = Optional.empty();
            int copies = Integer.MAX_VALUE;
            for (FactorIssue issue : names.issues()) {
                Optional<Problem> refusal = evidence(issue).flatMap(known -> CardState.refusal(known, issue, moment));
                refusal.map(Problem::asWarning).ifPresent(problems::add);
                worst = worst.or(() -> refusal.map(any -> issue));
                copies = Math.min(copies, copies(issue));
            }
            FactorIssue first = worst.orElse(issues.get(0));
            issues.remove(first);
            if (fits && copies == 0) {
                problems.add(Problem.warning(FIELD, "cardcheck.none-left", name));
            }
            return new CardCheck(
                    verdict,
                    Optional.of(first),
                    evidence(first).map(known -> CardState.of(known, first, moment)),
                    copies,
                    issues,
                    problems);
        }

        /** Returns what can be said of the lines of an altered text; of a plant's card nothing. */
        private List<Problem> lines() {
            if (names.issues().size() > 1) {
                return List.of();
            }
            FactorIssue issue = names.issues().get(0);
            return evidence(issue)
                    .map(known -> new AlteredLines(book, known, issue, names.seal(), moment).of(typed))
                    .orElse(List.of());
        }

        private Optional<Evidence> evidence(FactorIssue issue) {
            return Evidence.of(book, issue.mixId());
        }

        private int copies(FactorIssue issue) {
            return (int) book.latestOf(Belonging.PRINTS_OF_MIX, issue.mixId().text()).stream()
                    .map(version -> version.value())
                    .filter(print -> print.revision() == issue.revision())
                    .filter(print -> print.way() != CardPrint.Way.NOT_RELEASED)
                    .count();
        }
    }
}
