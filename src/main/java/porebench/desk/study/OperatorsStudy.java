package porebench.desk.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.chart.study.ComponentShares;
import porebench.chart.study.ReadingsBySample;
import porebench.evidence.study.CrossedReadings;
import porebench.evidence.study.FinestStep;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.variance.FTest;
import porebench.statistics.variance.GaugeStudy;
import porebench.statistics.variance.VarianceEstimate;
import porebench.statistics.variance.VarianceInterval;

/** Says what a study of operators and samples amounts to. */
final class OperatorsStudy {
    private static final Judged<FTest> NO_TEST = Judged.withheld(Judged.Reason.TOO_FEW);

    private final CrossedReadings readings;
    private final GaugeStudy study;
    private final Texts texts;
    private final StudyFigures figures;
    private final boolean isTraining;
    private final List<Part> parts = new ArrayList<>();

    private record Part(String name, VarianceEstimate estimate) {}

    OperatorsStudy(CrossedReadings readings, GaugeStudy study, Texts texts, StudyFigures figures, boolean isTraining) {
        this.readings = readings;
        this.study = study;
        this.texts = texts;
        this.figures = figures;
        this.isTraining = isTraining;
        parts.add(new Part(texts.get("source.sample"), study.sample()));
        parts.add(new Part(texts.get("source.operator"), study.operator()));
        study.interaction().ifPresent(part -> parts.add(new Part(texts.get("source.interaction"), part)));
        parts.add(new Part(texts.get("source.repeats"), study.repeatability()));
    }

    StudyShown shown() {
        boolean isStill = study.total() == 0;
        return new StudyShown(
                verdict(),
                remarks(),
                isStill ? Optional.empty() : Optional.of(shares()),
                Optional.of(points()),
                isStill ? List.of() : List.of(components(), anova()));
    }

    private String verdict() {
        OptionalDouble variation = study.gaugeShareOfVariation();
        if (variation.isEmpty()) {
            return texts.get("operators.still");
        }
        if (study.distinctCategories().isEmpty()) {
            return texts.get("operators.no-gauge-spread");
        }
        if (study.sample().variance() == 0) {
            return texts.get("operators.samples-alike");
        }
        double percent = 100 * variation.getAsDouble();
        String size = texts.get(
                percent < GaugeStudy.SMALL_SHARE_PERCENT
                        ? "operators.small"
                        : percent <= GaugeStudy.LARGEST_SHARE_PERCENT ? "operators.middling" : "operators.large");
        Optional<VarianceInterval> roots = study.gaugeShareInterval().map(VarianceInterval::ofRoots);
        return texts.get(
                "operators.verdict",
                figures.percent(variation.getAsDouble()),
                roots.map(known -> figures.percent(known.low())).orElse(""),
                roots.map(known -> figures.percent(known.high())).orElse(""),
                size,
                study.distinctCategories().get().toString());
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        if (study.total() == 0) {
            return remarks;
        }
        if (study.suggestsInteraction(GaugeStudy.POOLING_LEVEL)) {
            remarks.add(texts.get(study.isWithInteraction() ? "hint.keep" : "hint.should-keep"));
        } else {
            remarks.add(texts.get(study.isWithInteraction() ? "hint.may-pool" : "hint.pooled"));
        }
        parts.stream()
                .filter(part -> part.estimate().isAtZero())
                .map(part -> texts.get(
                        "remark.below-zero",
                        part.name(),
                        figures.number(part.estimate().raw())))
                .forEach(remarks::add);
        double division = FinestStep.of(readings.all()).doubleValue();
        if (study.repeatability().raw() < division * division / 12) {
            remarks.add(texts.get("remark.within-division", figures.number(division)));
        }
        if (study.sampleTest().whyWithheld().isPresent()) {
            remarks.add(texts.get("remark.no-test"));
        }
        remarks.add(texts.get("remark.operators-method"));
        return remarks;
    }

    private ComponentShares shares() {
        return new ComponentShares(
                parts.stream()
                        .map(part -> new ComponentShares.Share(
                                part.name(),
                                percent(study.share(part.estimate().variance())),
                                OptionalDouble.of(Math.sqrt(part.estimate().variance())),
                                texts.get(
                                        "share.deviation",
                                        figures.number(Math.sqrt(part.estimate().variance())))))
                        .toList(),
                isTraining);
    }

    private static OptionalDouble percent(OptionalDouble share) {
        return share.isPresent() ? OptionalDouble.of(100 * share.getAsDouble()) : share;
    }

    private ReadingsBySample points() {
        List<ReadingsBySample.Reading> points = new ArrayList<>();
        for (int operator = 0; operator < readings.operators().size(); operator++) {
            for (int sample = 0; sample < readings.samples().size(); sample++) {
                double[] cell = readings.readings()[operator][sample];
                for (int repeat = 0; repeat < cell.length; repeat++) {
                    points.add(new ReadingsBySample.Reading(operator, sample, repeat + 1, cell[repeat]));
                }
            }
        }
        return new ReadingsBySample(readings.operators(), readings.samples(), points, isTraining);
    }

    private StudyShown.Table components() {
        List<List<String>> rows = new ArrayList<>();
        parts.forEach(part -> rows.add(figures.componentRow(
                part.name(),
                OptionalDouble.of(part.estimate().variance()),
                Optional.of(part.estimate().interval()),
                study.share(part.estimate().variance()))));
        rows.add(figures.componentRow(
                texts.get("source.gauge"),
                OptionalDouble.of(study.gauge()),
                Optional.of(study.gaugeInterval()),
                study.share(study.gauge())));
        return figures.components(texts.get("unit.file"), rows);
    }

    private StudyShown.Table anova() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(figures.anovaRow(texts.get("source.sample"), study.sampleSquares(), study.sampleTest()));
        rows.add(figures.anovaRow(texts.get("source.operator"), study.operatorSquares(), study.operatorTest()));
        study.interactionSquares()
                .ifPresent(squares ->
                        rows.add(figures.anovaRow(texts.get("source.interaction"), squares, study.interactionTest())));
        rows.add(figures.anovaRow(texts.get("source.repeats"), study.repeatabilitySquares(), NO_TEST));
        rows.add(figures.anovaRow(texts.get("source.total"), study.totalSquares(), NO_TEST));
        return figures.anova(rows);
    }
}
