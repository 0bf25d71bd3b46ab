package porebench.desk.variability;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.evidence.JudgedDetermination;
import porebench.method.Digits;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.RoundingRule;
import porebench.method.SourceText;
import porebench.method.Texts;
import porebench.method.trial.DeterminationSummary;
import porebench.statistics.summary.CriticalRange;
import porebench.statistics.summary.MeanInterval;
import porebench.statistics.summary.Summary;
import porebench.statistics.uncertainty.UncertaintySum;

/** The numbers of a determination, each with its unit, and with what it rests on. */
final class Figures {
    private static final int DECIMALS = Digits.AIR;
    private static final int FINE_DECIMALS = Digits.SCATTER;

    private final JudgedDetermination judged;
    private final DeterminationSummary determination;
    private final Summary summary;
    private final Profile profile;
    private final double division;
    private final Numbers numbers;
    private final Texts texts;
    private final SourceText sources;

    /**
     * One number.
     *
     * @param name what it is
     * @param value the number with its unit
     * @param note what it rests on; may be empty
     */
    record Line(String name, String value, String note) {}

    Figures(
            JudgedDetermination judged,
            DeterminationSummary determination,
            Profile profile,
            double division,
            Numbers numbers,
            Texts texts) {
        this.judged = judged;
        this.determination = determination;
        this.summary = determination.summary();
        this.profile = profile;
        this.division = division;
        this.numbers = numbers;
        this.texts = texts;
        this.sources = SourceText.in(texts.locale());
    }

    /** Returns all numbers, the reported factor first. */
    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        lines.add(reported());
        lines.add(count());
        lines.add(new Line(texts.get("figure.mean"), percent(summary.mean(), FINE_DECIMALS), ""));
        lines.add(deviation());
        lines.add(range());
        lines.add(rangeCheck());
        lines.add(interval());
        lines.add(uncertainty());
        return lines;
    }

    private String percent(double value, int decimals) {
        return texts.get("value.percent", numbers.show(value, decimals));
    }

    private Line count() {
        int left = judged.trials().size() - summary.count();
        return new Line(
                texts.get("figure.count"),
                Integer.toString(summary.count()),
                left == 0 ? texts.get("figure.count.all") : texts.get("figure.count.left", Integer.toString(left)));
    }

    private Line deviation() {
        return new Line(
                texts.get("figure.deviation"),
                summary.standardDeviation().isPresent()
                        ? percent(summary.standardDeviation().getAsDouble(), FINE_DECIMALS)
                        : texts.get("value.none"),
                summary.count() == 1 ? texts.get("figure.one-trial") : "");
    }

    private Line range() {
        return new Line(
                texts.get("figure.range"),
                percent(summary.range(), DECIMALS),
                texts.get(
                        "figure.range.note",
                        numbers.show(summary.low(), DECIMALS),
                        numbers.show(summary.high(), DECIMALS)));
    }

    private Line rangeCheck() {
        Figure repeatability = profile.figure(FigureName.REPEATABILITY);
        Optional<CriticalRange.RangeCheck> check = determination.rangeCheck();
        if (check.isEmpty()) {
            return new Line(texts.get("figure.check"), texts.get("value.none"), texts.get("figure.one-trial"));
        }
        String key = check.get().passes() ? "figure.check.passes" : "figure.check.fails";
        return new Line(
                texts.get("figure.check"),
                texts.get(key, numbers.show(check.get().limit(), DECIMALS)),
                texts.get(
                        "figure.check.note",
                        numbers.show(CriticalRange.printedFactor(summary.count()), 1),
                        Integer.toString(summary.count()),
                        numbers.show(profile.number(FigureName.REPEATABILITY), DECIMALS),
                        sources.say(repeatability.clause()),
                        texts.get("mark." + repeatability.mark().symbol())));
    }

    private Line interval() {
        Optional<MeanInterval> interval = determination.interval();
        if (interval.isEmpty()) {
            return new Line(texts.get("figure.interval"), texts.get("value.none"), texts.get("figure.one-trial"));
        }
        String degrees = Integer.toString(summary.count() - 1);
        return new Line(
                texts.get("figure.interval"),
                texts.get(
                        "value.interval",
                        numbers.show(interval.get().low(), DECIMALS),
                        numbers.show(interval.get().high(), DECIMALS)),
                summary.range() == 0
                        ? texts.get("figure.interval.equal", numbers.show(division, DECIMALS))
                        : texts.get("figure.interval.note", degrees));
    }

    private Line uncertainty() {
        if (determination.expandedUncertaintyPercent().isEmpty()) {
            return new Line(texts.get("figure.uncertainty"), texts.get("value.none"), texts.get("figure.one-trial"));
        }
        boolean typeA = judged.meterType() == MeterType.A;
        double reading = UncertaintySum.resolutionUncertainty(division) * (typeA ? Math.sqrt(2) : 1);
        return new Line(
                texts.get("figure.uncertainty"),
                percent(determination.expandedUncertaintyPercent().getAsDouble(), DECIMALS),
                texts.get(
                        typeA ? "figure.uncertainty.note-a" : "figure.uncertainty.note-b",
                        numbers.show(summary.standardError().orElse(0), FINE_DECIMALS),
                        numbers.show(reading, FINE_DECIMALS),
                        numbers.show(division, DECIMALS)));
    }

    private Line reported() {
        RoundingRule rule = profile.factorRounding();
        return new Line(
                texts.get("figure.reported"),
                texts.get("value.percent", numbers.show(determination.reportedPercent())),
                texts.get(
                        "figure.reported.note",
                        numbers.show(rule.step()),
                        texts.get("ties." + rule.ties().symbol()),
                        sources.say(rule.clause())));
    }

    /** Returns what to say about trials that are all equal; empty when they differ. */
    Optional<String> resolutionRemark() {
        return summary.count() > 1 && summary.range() == 0
                ? Optional.of(texts.get(
                        "remark.resolution", Integer.toString(summary.count()), numbers.show(division, DECIMALS)))
                : Optional.empty();
    }
}
