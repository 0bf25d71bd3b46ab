package porebench.method.forecast;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.quantity.Slack;
import porebench.statistics.variance.LeftOut;
import porebench.statistics.variance.PooledRegression;

/** The forecast of one bowl, and what is wrong or doubtful about it. The limits are ours, no source. */
final class Forecasting {
    /** Amounts this much, in %, outside what was tested are not worth a word: weighing is no finer. */
    private static final double UNSEEN_PERCENT = 1;

    private static final double FEW_DEGREES = 3;

    /** A mix that moves the forecast by more than this share of the half interval is named. */
    private static final double STRONG_PULL = 0.5;

    private final TestedBowls tested;
    private final PooledRegression fit;
    private final LeftOut leftOut;
    private final Map<String, Double> amounts;
    private final double[] all;
    private final List<Problem> problems = new ArrayList<>();
    private boolean isOutside;

    Forecasting(TestedBowls tested, PooledRegression fit, LeftOut leftOut, Bowlful bowl) {
        this.tested = tested;
        this.fit = fit;
        this.leftOut = leftOut;
        this.amounts = bowl.amounts();
        this.all = tested.amounts(bowl);
    }

    Answer<Forecast> forecast(int trials, IntFunction<SourceAir> sources) {
        refuse();
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        int[] places = IntStream.range(0, all.length).filter(k -> all[k] > 0).toArray();
        for (int place : places) {
            cover(place);
        }
        if (!isOutside && Slack.isAbove(fit.reach(all), 1)) {
            isOutside = true;
            problems.add(Problem.warning("mix", "forecast.outside-together"));
        }
        Map<String, Double> parts = new LinkedHashMap<>();
        for (int place : places) {
            SourceAir source = sources.apply(place);
            doubt(source);
            source.millilitresPerKilogram()
                    .ifPresent(air -> parts.put(source.source(), air * amounts.getOrDefault(source.source(), 0.0)));
        }
        PooledRegression.Prediction ahead = fit.predict(all, trials, PoreAir.CONFIDENCE);
        if (Math.min(ahead.degreesOfFreedom(), fit.separation().degreesOfFreedom()) < FEW_DEGREES) {
            problems.add(Problem.warning(
                    "trials",
                    "forecast.few-degrees",
                    tested.mixes().size(),
                    fit.separation().rank()));
        }
        Optional<Forecast.Pull> pull = pull(ahead);
        return Answer.of(
                new Forecast(
                        ahead.mean(),
                        ahead.low(),
                        ahead.high(),
                        trials,
                        ahead.degreesOfFreedom(),
                        parts,
                        isOutside,
                        pull),
                problems);
    }

    private void refuse() {
        if (amounts.isEmpty()) {
            problems.add(Problem.error("mix", "forecast.no-aggregate"));
        }
        for (String source : amounts.keySet()) {
            if (tested.place(source).isEmpty()) {
                problems.add(Problem.error("sources", "forecast.source-never-tested", source));
            }
        }
        if (!Problem.anyError(problems) && !fit.separation().tells(all)) {
            problems.add(Problem.error("sources", "forecast.not-told", String.join(", ", inseparable())));
        }
    }

    private List<String> inseparable() {
        return amounts.keySet().stream()
                .filter(source -> fit.separation().with(tested.place(source).orElseThrow()).length > 0)
                .toList();
    }

    private void cover(int place) {
        TestedBowls.Covered covered = tested.covered(place);
        double above = 100 * (all[place] / covered.high() - 1);
        double below = 100 * (1 - all[place] / covered.low());
        if (above > UNSEEN_PERCENT) {
            isOutside = true;
            problems.add(Problem.warning(
                    "sources", "forecast.more-than-tested", tested.sources().get(place), above));
        } else if (below > UNSEEN_PERCENT) {
            isOutside = true;
            problems.add(Problem.warning(
                    "sources", "forecast.less-than-tested", tested.sources().get(place), below));
        }
        if (covered.mixes() == 1) {
            problems.add(Problem.warning(
                    "sources", "forecast.source-in-one-mix", tested.sources().get(place), covered.onlyMix()));
        }
    }

    private void doubt(SourceAir source) {
        if (!source.together().isEmpty()) {
            problems.add(Problem.warning(
                    "sources", "forecast.always-together", source.source(), String.join(", ", source.together())));
        } else if (!source.isSeparable()) {
            problems.add(Problem.warning("sources", "forecast.nearly-together", source.source()));
        }
        if (source.isAtZero()) {
            problems.add(Problem.warning("sources", "forecast.at-zero", source.source()));
        }
    }

    private Optional<Forecast.Pull> pull(PooledRegression.Prediction ahead) {
        Optional<Forecast.Pull> pull = leftOut.strongest(all)
                .map(one -> new Forecast.Pull(tested.mixes().get(one.outer()), ahead.mean() - one.change()));
        pull.filter(one -> Math.abs(ahead.mean() - one.withoutPercent()) > STRONG_PULL * (ahead.high() - ahead.mean()))
                .ifPresent(one -> problems.add(
                        Problem.warning("trials", "forecast.rests-on-one", one.mix(), one.withoutPercent())));
        return pull;
    }
}
