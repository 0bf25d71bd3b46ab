package porebench.desk.variability;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.desk.form.Numbers;
import porebench.method.Digits;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.Texts;
import porebench.method.trial.LaboratoryCheck;
import porebench.method.trial.Outliers;
import porebench.method.trial.Scatter;
import porebench.method.trial.Shape;
import porebench.method.trial.StopRule;
import porebench.method.trial.StopText;
import porebench.method.trial.Variability;
import porebench.record.id.TrialId;
import porebench.statistics.comparison.SpreadTest;
import porebench.statistics.outlier.DixonTest;
import porebench.statistics.outlier.GrubbsPairTest;
import porebench.statistics.outlier.GrubbsTest;
import porebench.statistics.summary.AndersonDarlingTest;
import porebench.statistics.summary.CriticalRange;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.ShapiroWilkTest;
import porebench.statistics.summary.Summary;

/**
 * The questions of the page, answered from one determination: whether its trials agree, whether one of them is wrong, whether
 * more are needed, and whether they scatter as chance does. Nothing is ever left out here.
 */
final class Questions {
    private static final int DECIMALS = Digits.AIR;
    private static final int FINE_DECIMALS = Digits.SCATTER;
    private static final TestWords.Counts ONE = new TestWords.Counts(GrubbsTest.FEWEST_TO_JUDGE, Integer.MAX_VALUE);
    private static final TestWords.Counts PAIR =
            new TestWords.Counts(GrubbsPairTest.FEWEST_TO_JUDGE, GrubbsPairTest.MOST);
    private static final TestWords.Counts DIXON =
            new TestWords.Counts(DixonTest.FEWEST_TO_JUDGE, DixonTest.MOST_TO_JUDGE);
    private static final TestWords.Counts ANDERSON =
            new TestWords.Counts(AndersonDarlingTest.FEWEST_TO_JUDGE, Integer.MAX_VALUE);
    private static final TestWords.Counts SHAPIRO =
            new TestWords.Counts(ShapiroWilkTest.FEWEST_TO_JUDGE, ShapiroWilkTest.MOST);

    private final TrialsToJudge trials;
    private final Variability variability;
    private final Numbers numbers;
    private final Texts texts;
    private final TestWords tests;

    private Questions(TrialsToJudge trials, Variability variability, Numbers numbers, Texts texts) {
        this.trials = trials;
        this.variability = variability;
        this.numbers = numbers;
        this.texts = texts;
        this.tests = new TestWords(trials.divisionPercent(), numbers, texts);
    }

    static List<Finding> of(TrialsToJudge trials, Variability variability, Numbers numbers, Texts texts) {
        Questions all = new Questions(trials, variability, numbers, texts);
        return List.of(all.agree(), all.wrong(), all.more(), all.shape());
    }

    // Whether they agree, with the profile's repeatability and with what the laboratory's trials usually do.

    private Finding agree() {
        Set<Variability.Alarm> alarms = variability.alarms();
        boolean range = alarms.contains(Variability.Alarm.RANGE);
        boolean laboratory = alarms.contains(Variability.Alarm.LABORATORY);
        List<String> reasons = new ArrayList<>();
        variability.summary().rangeCheck().ifPresent(check -> reasons.add(range(check)));
        reasons.add(variability.laboratory().map(this::laboratory).orElseGet(this::unknown));
        List<Finding.TestLine> lines = variability
                .laboratory()
                .map(check -> List.of(tests.line(
                        "spread",
                        check.spread(),
                        SpreadTest::statistic,
                        SpreadTest::p,
                        new TestWords.Counts(2, Integer.MAX_VALUE))))
                .orElse(List.of());
        return new Finding(
                "agree", texts.get("question.agree"), agrees(range, laboratory), range || laboratory, reasons, lines);
    }

    private String agrees(boolean range, boolean laboratory) {
        if (summary().count() == 1) {
            return texts.get("agree.one");
        }
        if (range) {
            return texts.get(laboratory ? "agree.no-both" : "agree.no-range");
        }
        return texts.get(laboratory ? "agree.no-laboratory" : "agree.yes");
    }

    private Summary summary() {
        return variability.summary().summary();
    }

    private String range(CriticalRange.RangeCheck check) {
        Profile profile = trials.profile();
        return texts.get(
                check.passes() ? "agree.range.passes" : "agree.range.fails",
                numbers.show(check.range(), DECIMALS),
                Integer.toString(summary().count()),
                numbers.show(check.limit(), DECIMALS),
                numbers.show(CriticalRange.printedFactor(summary().count()), 1),
                numbers.show(profile.number(FigureName.REPEATABILITY), DECIMALS));
    }

    private String unknown() {
        return texts.get(
                "agree.laboratory.unknown",
                type(),
                Integer.toString(trials.elsewhere()
                        .pooled()
                        .map(PooledDeviation::degreesOfFreedom)
                        .orElse(0)),
                Integer.toString(Scatter.FEWEST_DEGREES));
    }

    private String type() {
        MeterType type = trials.judged().meterType();
        return type.name();
    }

    private String laboratory(LaboratoryCheck check) {
        String usual = usual(check);
        return check.range()
                .map(range -> usual + " "
                        + texts.get(
                                range.passes() ? "agree.laboratory.passes" : "agree.laboratory.fails",
                                Integer.toString(summary().count()),
                                numbers.show(range.limit(), FINE_DECIMALS),
                                numbers.show(range.range(), FINE_DECIMALS)))
                .orElse(usual);
    }

    private String usual(LaboratoryCheck check) {
        PooledDeviation pooled = check.pooled();
        double least = Scatter.ofTheDial(trials.judged().meterType(), trials.divisionPercent());
        if (pooled.standardDeviation() < least) {
            return texts.get(
                    "agree.laboratory.dial",
                    Integer.toString(pooled.sets()),
                    type(),
                    numbers.show(trials.divisionPercent(), DECIMALS),
                    numbers.show(least, FINE_DECIMALS));
        }
        PooledDeviation.Interval interval = check.usual();
        return texts.get(
                "agree.laboratory.usual",
                Integer.toString(pooled.sets()),
                type(),
                numbers.show(pooled.standardDeviation(), FINE_DECIMALS),
                numbers.show(interval.low(), FINE_DECIMALS),
                numbers.show(interval.high(), FINE_DECIMALS),
                Integer.toString(pooled.degreesOfFreedom()));
    }

    // Whether one of them is wrong, or why no test can tell.

    private Finding wrong() {
        return new Finding(
                "wrong",
                texts.get("question.wrong"),
                isOneWrong(),
                variability.outliers().suspects().isPresent(),
                whereFarthest(),
                List.of(
                        tests.line("one", variability.outliers().one(), GrubbsTest::statistic, GrubbsTest::p, ONE),
                        tests.line(
                                "pair",
                                variability.outliers().pair(),
                                GrubbsPairTest::statistic,
                                GrubbsPairTest::p,
                                PAIR),
                        tests.line("dixon", variability.outliers().dixon(), DixonTest::statistic, DixonTest::p, DIXON)),
                variability
                        .outliers()
                        .suspects()
                        .or(variability.outliers()::stragglers)
                        .map(this::ids)
                        .orElse(List.of()));
    }

    private List<TrialId> ids(Outliers.Farthest farthest) {
        return farthest.indices().stream().map(trials::id).map(TrialId::new).toList();
    }

    private String isOneWrong() {
        if (variability.outliers().combinedP().isEmpty()) {
            return texts.get(
                    "wrong.untested",
                    variability
                            .outliers()
                            .one()
                            .whyWithheld()
                            .map(reason -> tests.reason(reason, ONE))
                            .orElse(""));
        }
        String p = tests.p(variability.outliers().combinedP().getAsDouble());
        String made = Integer.toString(variability.outliers().made());
        return variability
                .outliers()
                .suspects()
                .map(suspects ->
                        texts.get(isOne(suspects) ? "wrong.one" : "wrong.several", trials.names(suspects), made, p))
                .or(() -> variability
                        .outliers()
                        .stragglers()
                        .map(stragglers -> texts.get("wrong.straggler", trials.names(stragglers), made, p)))
                .orElseGet(() -> texts.get("wrong.none", made, p));
    }

    private List<String> whereFarthest() {
        return variability
                .outliers()
                .suspects()
                .map(suspects -> List.of(where(suspects), texts.get("wrong.look")))
                .or(() -> variability.outliers().stragglers().map(stragglers -> List.of(where(stragglers))))
                .orElse(List.of());
    }

    private static boolean isOne(Outliers.Farthest farthest) {
        return farthest.indices().size() == 1;
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

    private Finding more() {
        StopRule stop = variability.stop();
        StopText words = StopText.in(texts.locale());
        return new Finding(
                "more",
                texts.get("question.more"),
                words.say(stop),
                stop.verdict() == StopRule.Advice.OUT_OF_REACH,
                words.reasons(stop),
                List.of());
    }

    // Whether they scatter as chance does, or why no test can tell.

    private Finding shape() {
        Shape shape = variability.shape();
        return new Finding(
                "shape",
                texts.get("question.shape"),
                isOdd(shape),
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

    private String isOdd(Shape shape) {
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
