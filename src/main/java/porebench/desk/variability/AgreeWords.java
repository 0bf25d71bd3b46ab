package porebench.desk.variability;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import porebench.desk.form.Numbers;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.Texts;
import porebench.method.trial.LaboratoryCheck;
import porebench.method.trial.Scatter;
import porebench.method.trial.Variability;
import porebench.statistics.comparison.SpreadTest;
import porebench.statistics.summary.CriticalRange;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;

/** Answers whether trials agree: with the profile's repeatability, and with what the laboratory's trials usually do. */
final class AgreeWords {
    private static final int DECIMALS = 2;
    private static final int FINE_DECIMALS = 3;

    private final TrialsToJudge trials;
    private final Variability variability;
    private final Numbers numbers;
    private final Texts texts;

    AgreeWords(TrialsToJudge trials, Variability variability, Numbers numbers, Texts texts) {
        this.trials = trials;
        this.variability = variability;
        this.numbers = numbers;
        this.texts = texts;
    }

    Question question(TestWords tests) {
        Set<Variability.Alarm> alarms = variability.alarms();
        boolean range = alarms.contains(Variability.Alarm.RANGE);
        boolean laboratory = alarms.contains(Variability.Alarm.LABORATORY);
        List<String> reasons = new ArrayList<>();
        variability.summary().rangeCheck().ifPresent(check -> reasons.add(range(check)));
        reasons.add(variability.laboratory().map(this::laboratory).orElseGet(this::unknown));
        List<Question.TestLine> lines = variability
                .laboratory()
                .map(check -> List.of(tests.line(
                        "spread",
                        check.spread(),
                        SpreadTest::statistic,
                        SpreadTest::p,
                        new TestWords.Counts(2, Integer.MAX_VALUE))))
                .orElse(List.of());
        return new Question(
                "agree", texts.get("question.agree"), answer(range, laboratory), range || laboratory, reasons, lines);
    }

    private String answer(boolean range, boolean laboratory) {
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
}
