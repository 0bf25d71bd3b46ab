package porebench.desk.variability;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.chart.factor.FactorByTrial;
import porebench.chart.factor.FactorOverTime;
import porebench.chart.look.TrialPoint;
import porebench.desk.TrialPoints;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.method.trial.DeterminationSummary;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.book.Version;

/** Turns evidence into what the plots show. */
final class PlotRecords {
    private final TrialPoints points;

    PlotRecords(TrialPoints points) {
        this.points = points;
    }

    FactorByTrial byTrial(JudgedDetermination judged) {
        Optional<DeterminationSummary> summary = judged.summary();
        return new FactorByTrial(
                judged.trials().stream().map(points::point).toList(),
                summary.map(known -> OptionalDouble.of(known.summary().mean())).orElse(OptionalDouble.empty()),
                summary.flatMap(DeterminationSummary::interval)
                        .map(interval -> new FactorByTrial.Interval(interval.low(), interval.high())),
                summary.map(known -> OptionalDouble.of(known.reportedPercent().doubleValue()))
                        .orElse(OptionalDouble.empty()));
    }

    FactorOverTime overTime(Evidence evidence, LocalDate today) {
        List<TrialPoint> trials = evidence.determinations().stream()
                .flatMap(judged -> judged.trials().stream())
                .map(points::point)
                .toList();
        List<FactorOverTime.Step> steps = evidence.issues().stream()
                .map(Version::value)
                .map(PlotRecords::step)
                .toList();
        List<FactorOverTime.Begun> begun = evidence.determinations().stream()
                .map(judged -> judged.determination().value())
                .map(PlotRecords::begun)
                .toList();
        return new FactorOverTime(trials, steps, begun, today);
    }

    private static FactorOverTime.Step step(FactorIssue issue) {
        return new FactorOverTime.Step(
                issue.revision(),
                issue.inForceFrom(),
                issue.isIssue() ? OptionalDouble.of(issue.factorPercent().doubleValue()) : OptionalDouble.empty());
    }

    private static FactorOverTime.Begun begun(Determination determination) {
        return new FactorOverTime.Begun(determination.id().text(), determination.openedOn());
    }
}
