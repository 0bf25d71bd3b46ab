package porebench.method.trial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import porebench.method.RoundingRule;
import porebench.method.Texts;

/**
 * Says what the stop rule found, in the words of one language; screens and commands say it alike.
 *
 * <p>Half-widths and standard deviations have three decimals, factors two; probabilities are whole percents, those that are
 * not quite nothing or everything at least 1 and at most 99.
 */
public final class StopText {
    private static final int DECIMALS = 2;
    private static final int FINE_DECIMALS = 3;

    private static final int DEGREES_DECIMALS = 1;

    private final Texts words;
    private final Locale locale;

    private StopText(Locale locale) {
        this.locale = locale;
        this.words = Texts.of("porebench.method.trial.stop", locale);
    }

    /** Returns the texts in a language, English where it has no translation. */
    public static StopText in(Locale locale) {
        return new StopText(locale);
    }

    /** Says in one sentence whether the trials are enough, or how many more are expected. */
    public String say(StopRule stop) {
        String key = switch (stop.verdict()) {
            case ENOUGH -> "stop.enough";
            case MORE -> stop.forTheCountOnly() ? "stop.count" : "stop.more";
            case NOT_YET_KNOWN -> "stop.not-yet-known";
            case OUT_OF_REACH -> isOfTheDial(stop) ? "stop.dial-out-of-reach" : "stop.out-of-reach";
        };
        return words.get(
                key,
                stop.halfWidthPercent().isPresent()
                        ? number(stop.halfWidthPercent().getAsDouble(), FINE_DECIMALS)
                        : "",
                number(stop.wantedPercent(), FINE_DECIMALS),
                stop.moreTrials(),
                stop.trialsInAll(),
                Math.max(StopRule.MOST_TRIALS, stop.trialsInAll() - stop.moreTrials()));
    }

    /** Says what it was reckoned with, how sure the plan is, and what one more trial could do to the card. */
    public List<String> reasons(StopRule stop) {
        List<String> reasons = new ArrayList<>();
        stop.scatter().ifPresent(scatter -> reasons.add(basis(scatter)));
        stop.risks().ifPresent(risks -> reasons.add(risks(stop, risks)));
        if (isOfTheDial(stop)) {
            reasons.add(words.get("risks.dial"));
        }
        stop.next().ifPresent(next -> reasons.add(next(next)));
        return reasons;
    }

    private static boolean isOfTheDial(StopRule stop) {
        return stop.scatter().filter(Scatter::isOfTheDial).isPresent();
    }

    private String basis(Scatter scatter) {
        String deviation = number(scatter.standardDeviationPercent(), FINE_DECIMALS);
        return scatter.isOfTheDial()
                ? words.get("basis.dial", deviation)
                : words.get(
                        "basis." + scatter.basis().symbol(),
                        deviation,
                        number(scatter.degreesOfFreedom(), DEGREES_DECIMALS),
                        Integer.toString(Scatter.FEWEST_MIXES));
    }

    private String risks(StopRule stop, StopRule.Risks risks) {
        String plan = words.get(
                "risks.plan",
                Integer.toString(stop.trialsInAll()),
                percent(risks.within()),
                number(stop.wantedPercent(), FINE_DECIMALS),
                percent(risks.tooFew()));
        return risks.oneLessWouldDo().isEmpty()
                ? plan
                : plan + " "
                        + words.get(
                                "risks.one-less",
                                Integer.toString(stop.trialsInAll() - 1),
                                percent(risks.oneLessWouldDo().getAsDouble()));
    }

    private String next(NextTrial next) {
        return words.get(
                next.leavesTheCard() ? "next.leaves" : "next.could",
                number(next.lowPercent(), DECIMALS),
                number(next.highPercent(), DECIMALS),
                card(next.card()),
                otherCards(next),
                percent(next.probabilityOfChange()));
    }

    private String otherCards(NextTrial next) {
        boolean down = next.cardAtLow().compareTo(next.card()) != 0;
        boolean up = next.cardAtHigh().compareTo(next.card()) != 0;
        return down && up
                ? words.get("next.two-cards", card(next.cardAtLow()), card(next.cardAtHigh()))
                : words.get("next.one-card", card(down ? next.cardAtLow() : next.cardAtHigh()));
    }

    /**
     * Says it as the end of a sentence, without a full stop; to be had once a scatter is known.
     *
     * @throws IllegalArgumentException if no scatter is known
     */
    public String clause(StopRule stop) {
        NextTrial next = stop.next()
                .orElseThrow(() -> new IllegalArgumentException("stop must know a scatter, but is " + stop.verdict()));
        String key = switch (stop.verdict()) {
            case OUT_OF_REACH -> isOfTheDial(stop) ? "clause.dial-out-of-reach" : "clause.out-of-reach";
            case ENOUGH -> next.leavesTheCard() ? "clause.enough-leaves" : "clause.enough-could";
            case MORE, NOT_YET_KNOWN -> next.leavesTheCard() ? "clause.more-leaves" : "clause.more-could";
        };
        return words.get(key, card(next.card()), otherCards(next), stop.moreTrials());
    }

    private String card(BigDecimal factor) {
        NumberFormat format = plain(factor.scale());
        return format.format(factor);
    }

    private String number(double value, int decimals) {
        return plain(decimals).format(RoundingRule.withoutNoise(value).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    private NumberFormat plain(int decimals) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(Math.max(0, decimals));
        format.setMaximumFractionDigits(Math.max(0, decimals));
        return format;
    }

    private String percent(double probability) {
        long whole = Math.round(probability * 100);
        boolean certain = probability == 0 || probability == 1;
        return Long.toString(certain ? whole : Math.min(99, Math.max(1, whole)));
    }
}
