package porebench.desk.variability;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import porebench.desk.form.Numbers;
import porebench.method.Texts;
import porebench.statistics.Judged;

/** Says a test in a line: its statistic, and p or the reason why p would mean nothing. */
final class TestWords {
    private static final int DECIMALS = 3;
    private static final double SMALLEST_SHOWN = 0.001;
    private static final double LARGEST_SHOWN = 0.999;

    private final double divisionPercent;
    private final Numbers numbers;
    private final Texts texts;

    /** How many values a test is judged with. */
    record Counts(int fewest, int most) {}

    TestWords(double divisionPercent, Numbers numbers, Texts texts) {
        this.divisionPercent = divisionPercent;
        this.numbers = numbers;
        this.texts = texts;
    }

    <T> Finding.TestLine line(
            String key, Judged<T> judged, ToDoubleFunction<T> statistic, ToDoubleFunction<T> p, Counts counts) {
        String name = texts.get("test." + key);
        if (judged instanceof Judged.Meaningful<T> meaningful) {
            return new Finding.TestLine(
                    name,
                    numbers.show(statistic.applyAsDouble(meaningful.test()), DECIMALS),
                    texts.get("test.p", p(p.applyAsDouble(meaningful.test()))));
        }
        OptionalDouble known =
                judged instanceof Judged.Withheld<T> withheld ? withheld.statistic() : OptionalDouble.empty();
        return new Finding.TestLine(
                name,
                known.isPresent() ? numbers.show(known.getAsDouble(), DECIMALS) : texts.get("value.none"),
                texts.get(
                        "test.no-p",
                        judged.whyWithheld()
                                .map(reason -> reason("test", reason, counts))
                                .orElse("")));
    }

    /** Says why a test means nothing, as the end of a sentence. */
    String reason(Judged.Reason reason, Counts counts) {
        return reason("why", reason, counts);
    }

    private String reason(String family, Judged.Reason reason, Counts counts) {
        return switch (reason) {
            case TOO_FEW -> texts.get(family + ".too-few", Integer.toString(counts.fewest()));
            case TOO_MANY -> texts.get(family + ".too-many", Integer.toString(counts.most()));
            case NO_SPREAD -> texts.get(family + ".no-spread");
            case WITHIN_ONE_DIVISION -> texts.get(family + ".within-one-division", division());
            case SCALE_TOO_COARSE -> texts.get(family + ".scale-too-coarse", division());
        };
    }

    private String division() {
        return numbers.show(divisionPercent, 2);
    }

    /** Shows a probability; one near nothing or near certainty by the bound it is beyond. */
    String p(double p) {
        if (p > LARGEST_SHOWN) {
            return texts.get("value.p-above", numbers.show(LARGEST_SHOWN, DECIMALS));
        }
        return p < SMALLEST_SHOWN
                ? texts.get("value.p-below", numbers.show(SMALLEST_SHOWN, DECIMALS))
                : texts.get("value.p", numbers.show(p, DECIMALS));
    }
}
