package porebench.desk.overtime;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.statistics.control.DriftLine;

/**
 * Says whether the determinations of the newest phase drift: the slope of a straight line through their means, with its
 * interval. It rests on determinations whatever is charted, as the trials of one are no proof one by one.
 */
final class Trend {
    /** A drift over less time than this would be weather. Common sense, no source. */
    static final int FEWEST_DAYS = 28;

    static final int FEWEST_POINTS = 6;

    private static final double DAYS_A_YEAR = 365.25;
    private static final double CONFIDENCE = 0.95;
    private static final int DECIMALS = Digits.AIR;

    private final Charted outcome;
    private final Texts texts;
    private final Numbers numbers;

    Trend(Charted outcome, Texts texts, Numbers numbers) {
        this.outcome = outcome;
        this.texts = texts;
        this.numbers = numbers;
    }

    /** Returns what there is to say; nothing while there is no point. */
    Optional<String> sentence() {
        Series series = outcome.determinations();
        if (outcome.series().points().isEmpty()) {
            return Optional.empty();
        }
        List<Integer> starts = Charted.starts(series, outcome.wishes().splits());
        int newest = starts.isEmpty() ? 0 : starts.get(starts.size() - 1);
        return Optional.of(
                sentence(series.points().subList(newest, series.points().size())));
    }

    private String sentence(List<Series.Point> points) {
        if (points.size() < FEWEST_POINTS
                || ChronoUnit.DAYS.between(points.get(0).day(), last(points)) < FEWEST_DAYS) {
            return texts.get("trend.too-few", FEWEST_POINTS, FEWEST_DAYS);
        }
        LocalDate first = points.get(0).day();
        double division = outcome.determinations().divisionPercent();
        List<DriftLine.Point> line = new ArrayList<>();
        for (Series.Point point : points) {
            line.add(new DriftLine.Point(
                    point.first().trial().mixId().text(), ChronoUnit.DAYS.between(first, point.day()), point.mean()));
        }
        Optional<DriftLine> drift = DriftLine.through(line, division, CONFIDENCE);
        if (drift.isEmpty()) {
            return texts.get("trend.too-few", FEWEST_POINTS, FEWEST_DAYS);
        }
        double days = ChronoUnit.DAYS.between(first, last(points));
        return said(drift.get(), points, days, division);
    }

    private String said(DriftLine drift, List<Series.Point> points, double days, double division) {
        String key = switch (drift.judged(days, division)) {
            case NONE -> "trend.none";
            case WITHIN_ONE_DIVISION -> "trend.within-division";
            case RISES -> "trend.rises";
            case FALLS -> "trend.falls";
        };
        return texts.get(
                key,
                points.size(),
                points.get(0).day().toString(),
                last(points).toString(),
                numbers.show(DAYS_A_YEAR * drift.slope(), DECIMALS),
                numbers.show(DAYS_A_YEAR * (drift.slope() - drift.halfWidth()), DECIMALS),
                numbers.show(DAYS_A_YEAR * (drift.slope() + drift.halfWidth()), DECIMALS),
                numbers.show(days * drift.slope(), DECIMALS),
                numbers.show(division, DECIMALS));
    }

    private static LocalDate last(List<Series.Point> points) {
        return points.get(points.size() - 1).day();
    }
}
