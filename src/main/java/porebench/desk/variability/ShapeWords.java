package porebench.desk.variability;

import java.util.List;
import porebench.method.Texts;
import porebench.method.trial.Shape;
import porebench.statistics.summary.AndersonDarlingTest;
import porebench.statistics.summary.ShapiroWilkTest;

/** Answers whether trials scatter as chance does, or why no test can tell. */
final class ShapeWords {
    private static final TestWords.Counts ANDERSON =
            new TestWords.Counts(AndersonDarlingTest.FEWEST_TO_JUDGE, Integer.MAX_VALUE);
    private static final TestWords.Counts SHAPIRO =
            new TestWords.Counts(ShapiroWilkTest.FEWEST_TO_JUDGE, ShapiroWilkTest.MOST);

    private ShapeWords() {}

    static Question question(Shape shape, TestWords tests, Texts texts) {
        return new Question(
                "shape",
                texts.get("question.shape"),
                answer(shape, tests, texts),
                shape.isOdd(),
                List.of(),
                List.of(
                        tests.line(
                                "anderson",
                                shape.anderson(),
                                AndersonDarlingTest::statistic,
                                AndersonDarlingTest::p,
                                ANDERSON),
                        tests.line(
                                "shapiro", shape.shapiro(), ShapiroWilkTest::statistic, ShapiroWilkTest::p, SHAPIRO)));
    }

    private static String answer(Shape shape, TestWords tests, Texts texts) {
        if (!shape.isTested()) {
            return texts.get(
                    "shape.untested",
                    shape.anderson()
                            .whyWithheld()
                            .map(reason -> tests.reason(reason, ANDERSON))
                            .orElse(""));
        }
        return texts.get(shape.isOdd() ? "shape.odd" : "shape.plain");
    }
}
