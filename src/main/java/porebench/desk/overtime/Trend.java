package porebench.desk.overtime;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.desk.form.Texts;
import porebench.statistics.LeastSquares;
import porebench.statistics.PhasedChart;
import porebench.statistics.StudentT;
import porebench.statistics.UncertaintySum;

/** Says whether the points of the newest phase drift: the slope of a straight line through them, with its interval. */
final class Trend {
    /** A drift over less time than this would be weather. Common sense, no source. */
    static final int FEWEST_DAYS = 28;

    static final int FEWEST_POINTS = 6;

    private static final double DAYS_A_YEAR = 365.25;
    private static final double CONFIDENCE = 0.95;
    private static final int DECIMALS = 2;

    private final Outcome outcome;
    private final Texts texts;
    private final Numbers numbers;

    Trend(Outcome outcome, Texts texts, Numbers numbers) {
        this.outcome = outcome;
        this.texts = texts;
        this.numbers = numbers;
    }

    /** Returns what there is to say; nothing while there is no point. */
    Optional<String> sentence() {
        List<PhasedChart.Phase> phases = outcome.phases();
        if (phases.isEmpty()) {
            return Optional.empty();
        }
        PhasedChart.Phase newest = phases.get(phases.size() - 1);
        return Optional.of(
                sentence(outcome.series().points().subList(newest.first(), newest.first() + newest.count())));
    }

    private String sentence(List<Series.Point> points) {
        LocalDate first = points.get(0).day();
        LocalDate last = points.get(points.size() - 1).day();
        if (points.size() < FEWEST_POINTS || ChronoUnit.DAYS.between(first, last) < FEWEST_DAYS) {
            return texts.get("trend.too-few", FEWEST_POINTS, FEWEST_DAYS);
        }
        LeastSquares line = LeastSquares.polynomial(
                        1,
                        points.stream()
                                .map(point -> BigDecimal.valueOf(ChronoUnit.DAYS.between(first, point.day())))
                                .toList(),
                        points.stream()
                                .map(point -> BigDecimal.valueOf(mean(point)))
                                .toList())
                .orElseThrow();
        double dial = UncertaintySum.resolutionUncertainty(outcome.series().divisionPercent());
        if (line.residualStandardDeviation().orElseThrow() < dial) {
            return texts.get("trend.coarse", numbers.show(outcome.series().divisionPercent(), DECIMALS));
        }
        double slope = DAYS_A_YEAR * line.coefficient(1);
        double halfWidth = DAYS_A_YEAR
                * new StudentT(line.degreesOfFreedom()).coverageFactor(CONFIDENCE)
                * line.standardError(1).orElseThrow();
        String key = Math.abs(slope) <= halfWidth ? "trend.none" : slope > 0 ? "trend.rises" : "trend.falls";
        return texts.get(
                key,
                points.size(),
                first.toString(),
                last.toString(),
                numbers.show(slope, DECIMALS),
                numbers.show(slope - halfWidth, DECIMALS),
                numbers.show(slope + halfWidth, DECIMALS));
    }

    private static double mean(Series.Point point) {
        return point.values().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
    }
}
