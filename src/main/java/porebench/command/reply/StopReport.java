package porebench.command.reply;

import java.util.Locale;
import java.util.Optional;
import porebench.method.trial.NextTrial;
import porebench.method.trial.Scatter;
import porebench.method.trial.StopRule;
import porebench.method.trial.StopText;

/** What the stop rule says of one determination, as a group of fields and as lines. */
public final class StopReport {
    private final StopText words;

    public StopReport(Locale locale) {
        this.words = StopText.in(locale);
    }

    /** Writes the group {@code stop}; null when no trial counts. */
    public void json(JsonFields json, Optional<StopRule> rule) {
        json.group("stop", rule, this::fields);
    }

    private void fields(JsonFields json, StopRule stop) {
        json.text("verdict", stop.verdict().symbol());
        json.whole("moreTrials", stop.moreTrials());
        json.whole("trialsInAll", stop.trialsInAll());
        json.number("halfWidthPercent", stop.halfWidthPercent());
        json.number("wantedPercent", stop.wantedPercent());
        json.text("basis", stop.scatter().map(scatter -> scatter.basis().symbol()));
        json.number(
                "standardDeviationPercent",
                stop.scatter().map(Scatter::standardDeviationPercent).orElse(Double.NaN));
        json.number(
                "degreesOfFreedom",
                stop.scatter().map(Scatter::degreesOfFreedom).orElse(Double.NaN));
        json.flag(
                "scatterBelowDial", stop.scatter().filter(Scatter::isOfTheDial).isPresent());
        json.group("risks", stop.risks(), (fields, risks) -> {
            fields.number("within", risks.within());
            fields.number("tooFew", risks.tooFew());
            fields.number("oneLessWouldDo", risks.oneLessWouldDo());
        });
        json.group("oneMore", stop.next(), StopReport::next);
        json.text("words", words.say(stop));
    }

    private static void next(JsonFields json, NextTrial next) {
        json.flag("leavesTheCard", next.leavesTheCard());
        json.number("lowPercent", next.lowPercent());
        json.number("highPercent", next.highPercent());
        json.number("reportedPercent", next.card());
        json.number("reportedAtLowPercent", next.cardAtLow());
        json.number("reportedAtHighPercent", next.cardAtHigh());
        json.number("probabilityOfChange", next.probabilityOfChange());
    }

    /** Writes the sentence and what it rests on. */
    public void text(TextPage page, StopRule stop) {
        page.line(words.say(stop));
        words.reasons(stop).forEach(page::line);
    }

    /** Returns the sentence alone. */
    public String sentence(StopRule stop) {
        return words.say(stop);
    }
}
