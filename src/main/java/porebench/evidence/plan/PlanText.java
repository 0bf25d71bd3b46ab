package porebench.evidence.plan;

import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Locale;
import porebench.method.Digits;
import porebench.method.RoundingRule;
import porebench.method.Texts;

/** Says why a mix stands on a plan, in the words of one language; the window, the sheet and the command line say it alike. */
public final class PlanText {
    /** Fewer loads a week are one in two years, and no reason to test sooner: our own choice. */
    private static final double LEAST_SAID = 0.01;

    private final Texts words;
    private final Locale locale;

    private PlanText(Locale locale) {
        this.locale = locale;
        this.words = Texts.of("porebench.evidence.plan.plan", locale);
    }

    /** Returns the texts in a language, English where it has no translation. */
    public static PlanText in(Locale locale) {
        return new PlanText(locale);
    }

    /** Says why a mix is to be tested. */
    public String say(Need need) {
        return words.get("need." + need.symbol());
    }

    /** Says how a mix came on the plan. */
    public String say(PlannedTest.Placing placing) {
        return words.get("placing." + placing.symbol());
    }

    /** Says in a sentence how many loads are likely judged wrongly and why, or what is not known. */
    public String say(LoadsAtRisk risk) {
        String key = "risk." + risk.cause().symbol();
        String loads = loads(risk);
        return risk.share().isPresent()
                ? words.get(key, wrong(risk), loads, error(risk), risk.mixes())
                : words.get(key, loads);
    }

    /** Says the same in a few words, for a cell of a table. */
    public String brief(LoadsAtRisk risk) {
        if (risk.share().isPresent()) {
            return words.get("short.wrong", wrong(risk), loads(risk));
        }
        return risk.cause() == LoadsAtRisk.Cause.NO_FACTOR
                ? words.get("short.loads", loads(risk))
                : words.get("short.unknown");
    }

    private String wrong(LoadsAtRisk risk) {
        double wrong = risk.wrongAWeek().orElse(0);
        if (wrong > 0 && wrong < LEAST_SAID) {
            return words.get("short.less", number(LEAST_SAID, Digits.decimals(LEAST_SAID, 1)));
        }
        return number(wrong, Digits.decimals(wrong, 2));
    }

    private String loads(LoadsAtRisk risk) {
        double loads = risk.loadsAWeek().orElse(0);
        return number(loads, Digits.decimals(loads, 2));
    }

    private String error(LoadsAtRisk risk) {
        return number(risk.errorPercent().orElse(0), Digits.AIR);
    }

    private String number(double value, int decimals) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(RoundingRule.withoutNoise(value).setScale(decimals, RoundingMode.HALF_EVEN));
    }
}
