package porebench.evidence.paper;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;
import porebench.record.GroupGround;

/**
 * The plain text of a card: what its code of squares gives a phone, with every name whole, ending in the code by which the laboratory
 * tells that it was not altered.
 */
public final class CardText {
    private final FactorCard card;
    private final FactorIssue issue;
    private final CardWords words;

    private CardText(FactorCard card, CardWords words) {
        this.card = card;
        this.issue = card.issue();
        this.words = words;
    }

    /** Returns the text of a card; without a code where no lab book holds the revision. */
    public static String of(FactorCard card, CardWords words) {
        String text = String.join("\n", new CardText(card, words).lines());
        return card.seal().map(seal -> seal.sealed(text)).orElse(text);
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (card.isTraining()) {
            lines.add(words.say("simulated.word") + ". " + words.say("simulated.why"));
        }
        if (card.isMarked()) {
            lines.add(words.say("card.marked." + card.state()) + ". " + words.say("card.marked-text"));
        }
        lines.add(words.say("card.kind") + " " + issue.mixId().text());
        if (!card.mixTitle().isBlank()) {
            lines.add(card.mixTitle());
        }
        lines.add(words.say("card.subtract") + " " + words.number(issue.factorPercent()) + " " + words.say("card.unit")
                + " " + words.say("card.from-the-reading." + issue.meterType()));
        if (issue.factorPercent().signum() < 0) {
            lines.add(words.say(
                    "card.negative", words.number(issue.factorPercent().abs())));
        }
        if (card.wetSieved()) {
            lines.add(words.say("card.wet-sieved"));
            lines.addAll(sievedAirs(card, words));
        }
        lines.add(passes(card, words));
        lines.add(target(card, words));
        if (!issue.terms().conditions().isBlank()) {
            lines.add(words.say("card.conditions", issue.terms().conditions()));
        }
        lines.add(words.say("card.revision") + " " + issue.revision() + ", " + words.say("meter." + issue.meterType()));
        lines.add(words.say("card.in-force-from") + " "
                + moment(issue.inForceFrom(), issue.terms().at()));
        lines.add(words.say("card.recheck-by") + " " + moment(card.lastDay(), card.until()));
        lines.add(words.say("card.sources", String.join("; ", card.sources())));
        issue.grounds().group().ifPresent(ground -> lines.add(group(issue, ground, words)));
        card.laboratory().ifPresent(laboratory -> lines.add(laboratory.name()));
        return lines;
    }

    private String moment(LocalDate day, Optional<LocalTime> time) {
        return words.date(day) + time.map(at -> " " + FactorTerms.written(at)).orElse("");
    }

    /** Returns at which readings a load passes. */
    public static String passes(FactorCard card, CardWords words) {
        return card.window()
                .lowestPassing()
                .flatMap(low -> card.window()
                        .highestPassing()
                        .map(high -> low.compareTo(high) == 0
                                ? words.say("card.passes.one", words.number(low))
                                : words.say("card.passes", words.number(low), words.number(high))))
                .orElseGet(() -> words.say("card.passes.none"));
    }

    /** Returns for what air that is, and how wide a division is. */
    public static String target(FactorCard card, CardWords words) {
        return words.say(
                "card.target." + card.issue().meterType(),
                words.number(card.targetAirPercent()),
                words.number(card.airTolerancePercent()),
                words.number(card.divisionPercent()));
    }

    /**
     * Returns what the readings between which a load of wet-sieved concrete passes mean for its full mixture and mortar; where the
     * mix design does not tell, that.
     */
    public static List<String> sievedAirs(FactorCard card, CardWords words) {
        if (!card.wetSieved()) {
            return List.of();
        }
        if (card.sievedAirs().isEmpty()) {
            return List.of(words.say("card.sieved-airs.unknown"));
        }
        SievedAirs airs = card.sievedAirs().get();
        return Stream.concat(airs.lowest().stream(), airs.highest().stream())
                .distinct()
                .map(row -> words.say(
                        "card.sieved-airs",
                        words.number(row.reading()),
                        words.number(row.fullMixture()),
                        words.number(row.mortar())))
                .toList();
    }

    /** Returns on which mix of its group a factor was found. */
    public static String group(FactorIssue issue, GroupGround ground, CardWords words) {
        return words.say(
                issue.isLent() ? "card.group" : "card.group.tested",
                ground.group().text(),
                ground.testedMix().text());
    }
}
