package porebench.desk.variability;

import java.util.List;
import porebench.desk.form.Numbers;
import porebench.method.Texts;
import porebench.method.trial.StopRule;
import porebench.method.trial.StopText;
import porebench.method.trial.Variability;

/** The questions of the page, answered from one determination: agree, wrong, more, shape. */
final class Questions {
    private Questions() {}

    static List<Question> of(TrialsToJudge trials, Variability variability, Numbers numbers, Texts texts) {
        TestWords tests = new TestWords(trials.divisionPercent(), numbers, texts);
        return List.of(
                new AgreeWords(trials, variability, numbers, texts).question(tests),
                new OutlierWords(trials, variability.outliers(), numbers, texts).question(tests),
                more(variability.stop(), StopText.in(texts.locale()), texts),
                ShapeWords.question(variability.shape(), tests, texts));
    }

    private static Question more(StopRule stop, StopText words, Texts texts) {
        return new Question(
                "more",
                texts.get("question.more"),
                words.say(stop),
                stop.verdict() == StopRule.Advice.OUT_OF_REACH,
                words.reasons(stop),
                List.of());
    }
}
