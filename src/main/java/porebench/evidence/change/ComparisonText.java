package porebench.evidence.change;

import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import porebench.method.RoundingRule;
import porebench.method.Texts;
import porebench.method.trial.StopRule;
import porebench.statistics.comparison.BeforeAndAfter;
import porebench.statistics.comparison.ComparisonPlan;
import porebench.statistics.comparison.ComparisonPlan.More;
import porebench.statistics.comparison.ComparisonVerdict;
import porebench.statistics.comparison.Equivalence;

/**
 * Says what a comparison found, in the words of one language; the window and the command line say it alike. Differences have three
 * decimals, in % air.
 */
public final class ComparisonText {
    private static final int DECIMALS = 3;

    private final Texts words;
    private final Locale locale;

    private ComparisonText(Locale locale) {
        this.locale = locale;
        this.words = Texts.of("porebench.evidence.change.comparison", locale);
    }

    /** Returns the texts in a language, English where it has no translation. */
    public static ComparisonText in(Locale locale) {
        return new ComparisonText(locale);
    }

    /** Says in one sentence what to do: keep, replace, or test so many more. */
    public String say(Comparison comparison) {
        String margin = number(comparison.marginPercent());
        return switch (comparison.verdict()) {
            case KEEP -> words.get("verdict.keep", margin);
            case REPLACE ->
                words.get("verdict.replace", number(comparison.found().difference()), margin);
            case TEST_MORE -> testMore(comparison, margin);
        };
    }

    private String testMore(Comparison comparison, String margin) {
        ComparisonPlan plan = comparison.plan();
        Optional<More> after = plan.after().filter(ComparisonText::isTested);
        Optional<More> each = plan.onEachSide().filter(ComparisonText::isTested);
        if (after.isPresent()) {
            return words.get("verdict.test-after", margin, more(after.get()));
        }
        if (each.isPresent()) {
            return words.get("verdict.test-each", margin, more(each.get()));
        }
        return plan.after()
                .or(plan::onEachSide)
                .map(more -> words.get("verdict.test-many", margin, more(more)))
                .orElseGet(() -> words.get("verdict.test-none", margin));
    }

    /** Returns whether a laboratory would test so many. */
    private static boolean isTested(More more) {
        return more.readings() <= StopRule.MOST_TRIALS;
    }

    private String more(More more) {
        return more.determinations() == 0
                ? words.get("more.trials", more.readings())
                : words.get("more.determinations", more.determinations(), more.readings());
    }

    /** Says what the sentence rests on: the difference, its interval, the rule and how often it errs. */
    public List<String> reasons(Comparison comparison) {
        BeforeAndAfter found = comparison.found();
        Equivalence equivalence = comparison.equivalence();
        List<String> reasons = new ArrayList<>();
        reasons.add(words.get(
                "reason.difference",
                number(found.difference()),
                number(found.difference() - found.halfWidth()),
                number(found.difference() + found.halfWidth())));
        reasons.add(words.get(
                equivalence.isEquivalent() ? "reason.within" : "reason.not-within",
                number(equivalence.low()),
                number(equivalence.high()),
                number(comparison.marginPercent())));
        reasons.add(words.get("unit." + found.unit().symbol()));
        if (comparison.verdict() == ComparisonVerdict.TEST_MORE) {
            reasons.add(plan(comparison));
        }
        reasons.add(words.get("reason.errors"));
        return reasons;
    }

    private String plan(Comparison comparison) {
        ComparisonPlan plan = comparison.plan();
        String power = words.get("reason.power", percent(plan.power()));
        return plan.after().isPresent() && plan.onEachSide().isPresent()
                ? power + " "
                        + words.get(
                                "reason.plan",
                                more(plan.after().get()),
                                more(plan.onEachSide().get()),
                                percent(ComparisonPlan.TARGET))
                : power;
    }

    private String number(double value) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(DECIMALS);
        format.setMaximumFractionDigits(DECIMALS);
        return format.format(RoundingRule.withoutNoise(value).setScale(DECIMALS, RoundingMode.HALF_EVEN));
    }

    private static String percent(double probability) {
        long whole = Math.round(probability * 100);
        boolean certain = probability == 0 || probability == 1;
        return Long.toString(certain ? whole : Math.min(99, Math.max(1, whole)));
    }
}
