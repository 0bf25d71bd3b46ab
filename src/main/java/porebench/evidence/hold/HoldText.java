package porebench.evidence.hold;

import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.method.hold.Hold;
import porebench.method.hold.HoldShift;

/**
 * Says what pairs tell of a factor, in the words of one language; the window and the command line say it alike. Airs have two
 * decimals, in % air.
 */
public final class HoldText {
    private final Texts words;
    private final Locale locale;

    private HoldText(Locale locale) {
        this.locale = locale;
        this.words = Texts.of("porebench.evidence.hold.hold", locale);
    }

    /** Returns the texts in a language, English where it has no translation. */
    public static HoldText in(Locale locale) {
        return new HoldText(locale);
    }

    /** Says in one sentence whether the factor holds, as far as the pairs can tell. */
    public String say(Hold hold) {
        return switch (hold.verdict()) {
            case RECHECK -> {
                HoldShift shift = hold.shift().orElseThrow();
                yield words.get(
                        "verdict.recheck",
                        percent(shift.percent()),
                        percent(shift.low()),
                        percent(shift.high()),
                        hold.points().get(shift.from()).pair().name());
            }
            case HOLDS_SO_FAR -> words.get("verdict.holds-so-far", hold.charted());
            case TOO_FEW -> words.get("verdict.too-few", hold.charted(), Hold.LEAST_PAIRS);
            case CANNOT_TELL -> words.get("verdict.cannot-tell", hold.charted());
        };
    }

    /**
     * Says what the sentence rests on: how often the chart errs, which shift it can tell, and of a shift below the scatter that its interval
     * promises less.
     */
    public List<String> reasons(Hold hold) {
        List<String> reasons = new ArrayList<>();
        reasons.add(words.get("reason.false-alarm", number(Hold.runLength(), 0)));
        reasons.add(
                hold.tellable().isEmpty()
                        ? words.get("reason.nothing-told")
                        : words.get(
                                "reason.tellable",
                                percent(hold.tellable().getAsDouble()),
                                Hold.PAIRS_TO_TELL,
                                percent(hold.halfStep()),
                                number(hold.pairsForHalfStep().orElseThrow(), 0)));
        hold.shift()
                .filter(shift -> Math.abs(shift.percent()) < hold.spread().orElse(0))
                .ifPresent(small -> reasons.add(
                        words.get("reason.small-shift", percent(hold.spread().orElseThrow()))));
        return reasons;
    }

    private String percent(double value) {
        return number(value, Digits.AIR);
    }

    private String number(double value, int decimals) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(MixHold.percent(value, decimals));
    }
}
