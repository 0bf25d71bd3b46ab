package porebench.desk.variability;

import java.util.List;
import java.util.stream.Collectors;
import porebench.desk.form.Numbers;
import porebench.desk.form.Texts;
import porebench.method.trial.Outliers;
import porebench.statistics.DixonTest;
import porebench.statistics.GrubbsPairTest;
import porebench.statistics.GrubbsTest;

/** Answers whether one of the trials is wrong, or why no test can tell; nothing is ever left out here. */
final class OutlierWords {
    private static final TestWords.Counts ONE = new TestWords.Counts(GrubbsTest.FEWEST_TO_JUDGE, Integer.MAX_VALUE);
    private static final TestWords.Counts PAIR =
            new TestWords.Counts(GrubbsPairTest.FEWEST_TO_JUDGE, GrubbsPairTest.MOST);
    private static final TestWords.Counts DIXON =
            new TestWords.Counts(DixonTest.FEWEST_TO_JUDGE, DixonTest.MOST_TO_JUDGE);
    private static final int DECIMALS = 2;

    private final TrialsToJudge trials;
    private final Outliers outliers;
    private final Numbers numbers;
    private final Texts texts;

    OutlierWords(TrialsToJudge trials, Outliers outliers, Numbers numbers, Texts texts) {
        this.trials = trials;
        this.outliers = outliers;
        this.numbers = numbers;
        this.texts = texts;
    }

    Question question(TestWords tests) {
        return new Question(
                "wrong",
                texts.get("question.wrong"),
                answer(tests),
                outliers.suspects().isPresent(),
                outliers.suspects()
                        .map(suspects -> List.of(where(suspects), texts.get("wrong.look")))
                        .orElse(List.of()),
                List.of(
                        tests.line("one", outliers.one(), GrubbsTest::statistic, GrubbsTest::p, ONE),
                        tests.line("pair", outliers.pair(), GrubbsPairTest::statistic, GrubbsPairTest::p, PAIR),
                        tests.line("dixon", outliers.dixon(), DixonTest::statistic, DixonTest::p, DIXON)));
    }

    private String answer(TestWords tests) {
        if (outliers.combinedP().isEmpty()) {
            return texts.get(
                    "wrong.untested",
                    outliers.one()
                            .whyWithheld()
                            .map(reason -> tests.reason(reason, ONE))
                            .orElse(""));
        }
        String p = tests.p(outliers.combinedP().getAsDouble());
        String made = Integer.toString(outliers.made());
        return outliers.suspects()
                .map(suspects -> texts.get(
                        suspects.indices().size() == 1 ? "wrong.one" : "wrong.several", names(suspects), made, p))
                .orElseGet(() -> texts.get("wrong.none", made, p));
    }

    /** Returns the ids of the trials that stand out, parted by commas. */
    String names(Outliers.Suspects suspects) {
        return suspects.indices().stream().map(trials::id).collect(Collectors.joining(", "));
    }

    private String where(Outliers.Suspects suspects) {
        return suspects.indices().stream()
                .map(index -> texts.get(
                        "wrong.where",
                        trials.id(index),
                        numbers.show(trials.factors()[index], DECIMALS),
                        numbers.show(Math.abs(trials.factors()[index] - trials.mean()), DECIMALS)))
                .collect(Collectors.joining(" "));
    }
}
