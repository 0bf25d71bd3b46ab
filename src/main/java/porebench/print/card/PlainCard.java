package porebench.print.card;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.paper.FactorCard;
import porebench.print.page.Words;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;

/** The plain text of a factor card in one language, which any phone shows: nothing is cut, and it ends in its check code. */
public final class PlainCard {
    private PlainCard() {}

    /** Returns the text; without a code where no lab book holds the revision. */
    public static String of(FactorCard card, Words words) {
        String text = String.join("\n", lines(card, words));
        return card.seal().map(seal -> seal.sealed(text)).orElse(text);
    }

    private static List<String> lines(FactorCard card, Words words) {
        FactorIssue issue = card.issue();
        List<String> lines = new ArrayList<>();
        if (card.isTraining()) {
            lines.add(words.say("simulated.word") + ". " + words.say("simulated.why"));
        }
        if (card.isMarked()) {
            lines.add(words.say("card.marked." + card.state()));
        }
        card.laboratory().ifPresent(laboratory -> lines.add(laboratory.name()));
        lines.add(words.say("card.kind") + ": " + card.mixId().text() + " \u2013 " + card.mixTitle());
        lines.add(words.say("card.sources", String.join("; ", card.sources())));
        lines.add(words.say("card.subtract") + " " + words.number(issue.factorPercent()) + " " + words.say("card.unit"));
        lines.add(words.say("card.formula." + issue.meterType(), words.number(issue.factorPercent())));
        if (issue.factorPercent().signum() < 0) {
            lines.add(words.say("card.negative", words.number(issue.factorPercent().abs())));
        }
        if (card.wetSieved()) {
            lines.add(words.say("card.wet-sieved"));
        }
        lines.add(words.say("card.revision") + " " + issue.revision() + "; " + words.say("card.in-force-from") + " "
                + moment(issue.inForceFrom(), issue.terms().at(), words) + "; " + words.say("card.recheck-by") + " "
                + moment(card.lastDay(), card.until(), words));
        if (!issue.terms().conditions().isBlank()) {
            lines.add(words.say("card.conditions", issue.terms().conditions()));
        }
        lines.add(words.say("card.meter-type") + ": " + words.say("meter." + issue.meterType()));
        lines.add(passes(card, words));
        lines.add(words.say(
                "card.target." + issue.meterType(),
                words.number(card.targetAirPercent()),
                words.number(card.airTolerancePercent()),
                words.number(card.divisionPercent())));
        return lines;
    }

    private static String moment(LocalDate day, Optional<LocalTime> time, Words words) {
        return words.date(day) + time.map(at -> " " + FactorTerms.written(at)).orElse("");
    }

    /** Returns which readings pass, in words. */
    public static String passes(FactorCard card, Words words) {
        return card.window()
                .lowestPassing()
                .flatMap(low -> card.window()
                        .highestPassing()
                        .map(high -> low.compareTo(high) == 0
                                ? words.say("card.passes.one", words.number(low))
                                : words.say("card.passes", words.number(low), words.number(high))))
                .orElseGet(() -> words.say("card.passes.none"));
    }
}
