package porebench.desk.variability;

import java.util.List;
import java.util.stream.Collectors;
import porebench.desk.form.Numbers;
import porebench.method.Texts;
import porebench.method.trial.Outliers;
import porebench.record.id.TrialId;
import porebench.statistics.outlier.DixonTest;
import porebench.statistics.outlier.GrubbsPairTest;
import porebench.statistics.outlier.GrubbsTest;

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
                reasons(),
                List.of(
                        tests.line("one", outliers.one(), GrubbsTest::statistic, GrubbsTest::p, ONE),
                        tests.line("pair", outliers.pair(), GrubbsPairTest::statistic, GrubbsPairTest::p, PAIR),
                        tests.line("dixon", outliers.dixon(), DixonTest::statistic, DixonTest::p, DIXON)),
                outliers.suspects().or(outliers::stragglers).map(this::ids).orElse(List.of()));
    }

    private List<TrialId> ids(Outliers.Farthest farthest) {
        return farthest.indices().stream().map(trials::id).map(TrialId::new).toList();
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
                .map(suspects -> texts.get(isOne(suspects) ? "wrong.one" : "wrong.several", names(suspects), made, p))
                .or(() -> outliers.stragglers()
                        .map(stragglers -> texts.get("wrong.straggler", names(stragglers), made, p)))
                .orElseGet(() -> texts.get("wrong.none", made, p));
    }

    private List<String> reasons() {
        return outliers.suspects()
                .map(suspects -> List.of(where(suspects), texts.get("wrong.look")))
                .or(() -> outliers.stragglers().map(stragglers -> List.of(where(stragglers))))
                .orElse(List.of());
    }

    private static boolean isOne(Outliers.Farthest farthest) {
        return farthest.indices().size() == 1;
    }

    /** Returns the ids of the trials that lie farthest out, parted by commas. */
    String names(Outliers.Farthest farthest) {
        return farthest.indices().stream().map(trials::id).collect(Collectors.joining(", "));
    }

    private String where(Outliers.Farthest farthest) {
        return farthest.indices().stream()
                .map(index -> texts.get(
                        "wrong.where",
                        trials.id(index),
                        numbers.show(trials.factors()[index], DECIMALS),
                        numbers.show(Math.abs(trials.factors()[index] - trials.mean()), DECIMALS)))
                .collect(Collectors.joining(" "));
    }
}
