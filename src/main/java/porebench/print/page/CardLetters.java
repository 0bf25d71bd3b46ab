package porebench.print.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.evidence.paper.FactorCard;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.Laboratory;

/**
 * Whether the typeface of a card has every character of its words. By the name of the mix and the conditions a crew works: a card on which
 * one of their characters would be missing is not made. Of other names a missing character is seen to be missing, and the card says so.
 */
public final class CardLetters {
    private final FactorCard card;
    private final Faces faces;

    public CardLetters(FactorCard card, Faces faces) {
        this.card = card;
        this.faces = faces;
    }

    /** Returns why there is no such card; empty where its typeface shows what a crew works by. */
    public List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        problem("mix", "card.mix-not-shown", card.mixId().text()).ifPresent(problems::add);
        problem("conditions", "card.conditions-not-shown", card.issue().terms().conditions())
                .ifPresent(problems::add);
        return problems;
    }

    private Optional<Problem> problem(String field, String code, String text) {
        List<String> lacking = faces.lacking(text);
        return lacking.isEmpty()
                ? Optional.empty()
                : Optional.of(Problem.error(
                        field,
                        code,
                        card.mixId().text(),
                        lacking.stream()
                                .map(one -> one + " (U+"
                                        + Integer.toHexString(one.codePointAt(0))
                                                .toUpperCase(Locale.ROOT) + ")")
                                .collect(Collectors.joining(", "))));
    }

    /** Returns what the card says where names have characters that its typeface lacks; empty where none have. */
    public Optional<String> note(Words words) {
        FactorIssue issue = card.issue();
        boolean isLacking = Stream.of(
                        card.laboratory().map(Laboratory::name).stream(),
                        Stream.of(
                                card.mixTitle(),
                                issue.issuedBy(),
                                issue.approvedBy(),
                                issue.overrideBy(),
                                issue.overrideReason(),
                                issue.terms().checkedBy()),
                        card.sources().stream(),
                        issue.takenOn().stream().flatMap(doubt -> Stream.of(doubt.by(), doubt.reason())))
                .flatMap(texts -> texts)
                .anyMatch(text -> !faces.lacking(text).isEmpty());
        return isLacking
                ? Optional.of(words.say("card.not-shown", Character.toString(Faces.MISSING)))
                : Optional.empty();
    }
}
