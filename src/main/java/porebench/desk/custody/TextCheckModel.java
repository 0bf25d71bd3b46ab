package porebench.desk.custody;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.desk.DeskModel;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.evidence.paper.CardCheck;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.FactorIssue;

/** The text of a card that somebody holds against the lab book, and what was found, without its window. */
final class TextCheckModel {
    private final DeskModel desk;
    private final Texts texts;
    private String text = "";
    private Optional<CardCheck> found = Optional.empty();
    private List<Problem> unusable = List.of();

    TextCheckModel(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of("porebench.desk.custody.custody", desk.tools().locale());
    }

    Texts texts() {
        return texts;
    }

    /** Takes a text; what was found of the one before is forgotten. */
    void text(String typed) {
        text = typed;
        found = Optional.empty();
        unusable = List.of();
    }

    /**
     * Holds the text against the lab book as it is now, beside the event thread.
     *
     * @param done told when that is over
     */
    void check(Runnable done) {
        String looked = text;
        unusable = CardCheck.unusable(looked).stream().toList();
        if (!unusable.isEmpty()) {
            done.run();
            return;
        }
        desk.ask(new Held(looked), check -> {
            // Other words may have been typed while these were looked at.
            if (looked.equals(text)) {
                found = Optional.of(check);
            }
            done.run();
        });
    }

    /** Says what is to be thought of the text; nothing before it was looked at. */
    String verdict() {
        return found.map(check -> texts.get("check." + check.verdict().symbol()))
                .orElse("");
    }

    /** Returns whether a card with this text is one to work by today. */
    boolean isGood() {
        return found.filter(check -> check.verdict() == CardCheck.Verdict.UNALTERED)
                .flatMap(CardCheck::state)
                .filter(state -> state.mayLeaveUnmarked())
                .isPresent();
    }

    /** Says which revision the text names and how it stands with it today; nothing where the lab book has none. */
    String names() {
        return found.flatMap(check -> check.issue().map(issue -> names(check, issue)))
                .orElse("");
    }

    private String names(CardCheck check, FactorIssue issue) {
        String factor = desk.tools().numbers().show(issue.factorPercent());
        String copies = Integer.toString(check.copies());
        String others = check.others().isEmpty()
                ? ""
                : " "
                        + texts.get(
                                "check.others",
                                check.others().stream()
                                        .map(FactorIssue::recordId)
                                        .collect(Collectors.joining(", ")));
        return check.state()
                        .map(state -> texts.get(
                                "check.names",
                                issue.recordId(),
                                factor,
                                texts.get("check.is." + state.symbol()),
                                copies))
                        .orElseGet(() -> texts.get("check.names.unknown", issue.recordId(), factor, copies))
                + others;
    }

    /** Returns why the text is no card to work by, and which of its lines differ where that can be known. */
    List<Problem> problems() {
        return found.map(CardCheck::problems).orElse(unusable);
    }

    /** Asks what the lab book finds about a text. */
    private record Held(String text) implements Question<CardCheck> {
        @Override
        public CardCheck answer(Reading seen) {
            return CardCheck.of(seen.book(), text, seen.moment());
        }
    }
}
