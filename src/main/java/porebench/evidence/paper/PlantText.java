package porebench.evidence.paper;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.method.MeterType;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;
import porebench.record.Laboratory;
import porebench.record.TakenDoubt;

/**
 * What a page of a plant's card says, and its plain text: what the code of squares on it gives a phone, ending in the code by which the
 * laboratory tells that it was not altered.
 */
public final class PlantText {
    private PlantText() {}

    /** Returns the text of a page; without a code where no lab book holds a revision on it. */
    public static String of(PlantCard card, CardWords words) {
        List<String> lines = new ArrayList<>();
        if (card.isTraining()) {
            lines.add(words.say("simulated.word") + ". " + words.say("simulated.why"));
        }
        lines.add(title(card, words));
        lines.addAll(page(card, words));
        card.laboratory().map(Laboratory::name).ifPresent(lines::add);
        lines.add(words.say("card.printed", words.date(card.day())));
        lines.addAll(toDo(card, words));
        for (PlantCard.Row row : card.rows()) {
            lines.add(row.mixId().text() + (row.title().isBlank() ? "" : ", " + row.title()));
            lines.add(row.card()
                    .map(one -> words.say("card.subtract") + " " + number(one, words) + " " + words.say("card.unit")
                            + ". " + terms(one, words))
                    .orElseGet(() -> words.say("plant.none") + ". " + words.say("plant.none.why")));
            row.card().ifPresent(one -> lines.addAll(notes(one, words)));
        }
        String text = String.join("\n", lines);
        return card.seal().map(seal -> seal.sealed(text)).orElse(text);
    }

    /** Returns whose mixes they are. */
    public static String title(PlantCard card, CardWords words) {
        return words.say("plant.title", card.plant());
    }

    /** Returns which page of the card it is; nothing where there is one. */
    public static List<String> page(PlantCard card, CardWords words) {
        return card.pages() == 1
                ? List.of()
                : List.of(words.say("plant.page", Integer.toString(card.page()), Integer.toString(card.pages())));
    }

    /** Returns what a crew does with the card, for the meters of its rows. */
    public static List<String> toDo(PlantCard card, CardWords words) {
        List<String> lines = new ArrayList<>();
        lines.add(words.say("plant.to-do"));
        meters(card).forEach(meter -> lines.add(words.say("plant.formula." + meter)));
        lines.add(words.say(card.pages() == 1 ? "plant.other-mix" : "plant.other-mix.pages"));
        return lines;
    }

    /** Returns the types of meter of its rows, each once. */
    public static Collection<MeterType> meters(PlantCard card) {
        return card.cards().stream()
                .map(one -> one.issue().meterType())
                .distinct()
                .sorted()
                .toList();
    }

    /** Returns the number that is subtracted for a mix. */
    public static String number(FactorCard card, CardWords words) {
        return words.number(card.issue().factorPercent());
    }

    /** Returns the revision in a row, the meter and standard it holds for, and until when. */
    public static String terms(FactorCard card, CardWords words) {
        FactorIssue issue = card.issue();
        return words.say("card.revision") + " " + issue.revision() + ", " + words.say("meter." + issue.meterType())
                + ", "
                + card.rule() + ". " + words.say("card.recheck-by") + " " + words.date(card.lastDay())
                + card.until().map(at -> " " + FactorTerms.written(at)).orElse("") + ".";
    }

    /** Returns what else has to be known of the number in a row, what it holds under first. */
    public static List<String> notes(FactorCard card, CardWords words) {
        FactorIssue issue = card.issue();
        List<String> notes = new ArrayList<>();
        if (!issue.terms().conditions().isBlank()) {
            notes.add(words.say("card.conditions", issue.terms().conditions()));
        }
        if (card.wetSieved()) {
            notes.add(words.say("card.wet-sieved"));
        }
        if (issue.factorPercent().signum() < 0) {
            notes.add(words.say(
                    "card.negative", words.number(issue.factorPercent().abs())));
        }
        issue.grounds().group().ifPresent(ground -> notes.add(CardText.group(issue, ground, words)));
        String people = Stream.concat(
                        issue.takenOn().stream().map(TakenDoubt::by),
                        issue.isOverridden() ? Stream.of(issue.overrideBy()) : Stream.empty())
                .distinct()
                .collect(Collectors.joining(", "));
        if (!people.isEmpty()) {
            notes.add(words.say("plant.doubts", people));
        }
        return notes;
    }
}
