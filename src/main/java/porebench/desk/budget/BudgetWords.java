package porebench.desk.budget;

import java.util.List;
import java.util.stream.Collectors;
import porebench.chart.factor.BudgetBars;
import porebench.desk.form.Numbers;
import porebench.desk.form.UnitSystem;
import porebench.method.Digits;
import porebench.method.Texts;
import porebench.method.budget.Budget;
import porebench.method.budget.BudgetLine;
import porebench.method.budget.BudgetPart;
import porebench.method.budget.BudgetResult;
import porebench.method.budget.Capability;
import porebench.method.budget.Origin;
import porebench.quantity.MassUnit;
import porebench.quantity.VolumeUnit;
import porebench.statistics.uncertainty.IntervalCheck;

/** A budget in words and figures. */
final class BudgetWords {
    private static final int DECIMALS = Digits.SCATTER;
    private static final int FOOT_DECIMALS = 4;
    private static final int FIELD_DECIMALS = Digits.AIR;
    private static final double MANY_DEGREES = 1000;
    private static final double LEAST_SAID = 0.0005;

    private final Texts texts;
    private final Numbers numbers;
    private final UnitSystem units;

    BudgetWords(Texts texts, Numbers numbers, UnitSystem units) {
        this.texts = texts;
        this.numbers = numbers;
        this.units = units;
    }

    /**
     * A line below the table.
     *
     * @param name what it is
     * @param value the figure with its unit
     * @param note what it rests on
     */
    record Line(String name, String value, String note) {}

    /** Says result, uncertainty, by which way it was found, and largest part. */
    String verdict(String key, BudgetResult result) {
        Budget budget = result.budget();
        BudgetLine largest = budget.largestFirst().get(0);
        return texts.get(
                key,
                numbers.show(budget.valuePercent(), FIELD_DECIMALS),
                numbers.show(result.uncertaintyPercent(), FIELD_DECIMALS),
                texts.get("largest." + largest.part().symbol()),
                whole(budget, largest),
                texts.get(result.isDrawn() ? "result.drawn" : "result.propagated"));
    }

    private String whole(Budget budget, BudgetLine line) {
        return Digits.share(budget.shareOf(line));
    }

    /** Says every part with its share, the largest first. */
    String parts(Budget budget) {
        return texts.get(
                "field.parts",
                budget.largestFirst().stream()
                        .map(line -> texts.get(
                                "field.part", texts.get("part." + line.part().symbol()), whole(budget, line)))
                        .collect(Collectors.joining(texts.get("field.between"))));
    }

    /** Returns the cells of one line of the table. */
    List<String> row(Budget budget, BudgetLine line) {
        return List.of(
                texts.get("part." + line.part().symbol()),
                value(line),
                texts.get("cell.with-unit", counting(line.standardUncertainty() * ofShown(line)), unit(line)),
                counting(line.sensitivity() / ofShown(line)),
                numbers.show(line.sizePercent(), DECIMALS),
                Digits.share(budget.shareOf(line)),
                degrees(line.degreesOfFreedom()),
                texts.get("origin." + line.origin().symbol()));
    }

    /** What has no value of its own, as scatter about the mean, stands at nothing. */
    private String value(BudgetLine line) {
        boolean isDeviation = line.part() == BudgetPart.REPEATABILITY
                || line.part() == BudgetPart.FIELD_SCATTER
                || line.part() == BudgetPart.OCCASIONS
                || line.part() == BudgetPart.WATER_MEASURE
                || line.part() == BudgetPart.DIAL_MEASURE
                || line.part() == BudgetPart.SHARE_MEASURE;
        return isDeviation
                ? ""
                : texts.get(
                        "cell.with-unit",
                        numbers.show(line.value() * ofShown(line), decimals(line.part())),
                        unit(line));
    }

    /** Returns how many of the units shown one of a line's own is. */
    private double ofShown(BudgetLine line) {
        return switch (line.part().unit()) {
            case "L" -> units.bowlVolume().in(VolumeUnit.LITRE.of(1));
            case "kg" -> units.batchMass().in(MassUnit.KILOGRAM.of(1));
            default -> 1;
        };
    }

    private int decimals(BudgetPart part) {
        return switch (part.unit()) {
            case "% air" -> Digits.AIR;
            case "L" -> units == UnitSystem.US ? FOOT_DECIMALS : DECIMALS;
            default -> part == BudgetPart.WATER ? 1 : DECIMALS;
        };
    }

    private String unit(BudgetLine line) {
        return switch (line.part().unit()) {
            case "% air" -> texts.get("cell.unit.air");
            case "% bowl" -> texts.get("cell.unit.bowl");
            case "L" -> units.bowlVolume().symbol();
            case "kg" -> units.batchMass().symbol();
            default -> line.part().unit();
        };
    }

    private String counting(double number) {
        return numbers.show(number, Digits.decimals(number, Digits.UNCERTAINTY));
    }

    String degrees(double degrees) {
        return degrees > MANY_DEGREES
                ? texts.get(Double.isInfinite(degrees) ? "degrees.infinite" : "degrees.many")
                : numbers.show(degrees, 1);
    }

    /** Returns the lines below the table. */
    List<Line> totals(BudgetResult one, Capability capability) {
        Budget budget = one.budget();
        return List.of(
                new Line(
                        texts.get("total.result"),
                        texts.get("cell.plus-minus", numbers.show(one.uncertaintyPercent(), FIELD_DECIMALS)),
                        texts.get(one.isDrawn() ? "total.result.drawn" : "total.result.propagated")),
                new Line(
                        texts.get("total.capability"),
                        numbers.show(capability.index(), 1),
                        texts.get(
                                "total.capability." + capability.standing().symbol(),
                                numbers.show(capability.steps(), 1),
                                numbers.show(capability.stepPercent(), 2),
                                numbers.show(capability.tolerancePercent(), 1))),
                new Line(
                        texts.get("total.combined"),
                        texts.get("cell.air", numbers.show(budget.combinedPercent(), DECIMALS)),
                        texts.get("total.combined.note") + together(budget)),
                new Line(
                        texts.get("total.degrees"),
                        degrees(budget.effectiveDegreesOfFreedom()),
                        texts.get("total.degrees.note")),
                new Line(
                        texts.get("total.expanded"),
                        texts.get("cell.plus-minus", numbers.show(budget.expandedPercent(), FIELD_DECIMALS)),
                        texts.get("total.expanded.note")),
                new Line(
                        texts.get("total.drawn"),
                        texts.get(
                                "cell.from-to",
                                numbers.show(one.drawn().symmetric().low(), DECIMALS),
                                numbers.show(one.drawn().symmetric().high(), DECIMALS)),
                        drawnNote(one)));
    }

    /** Says what lines that err together take off or add; nothing where none does. */
    private String together(Budget budget) {
        double by = budget.combinedPercent() - budget.apartPercent();
        return Math.abs(by) < LEAST_SAID
                ? ""
                : " "
                        + texts.get(
                                by < 0 ? "total.together.less" : "total.together.more",
                                numbers.show(Math.abs(by), DECIMALS));
    }

    private String drawnNote(BudgetResult one) {
        IntervalCheck check = one.check();
        String key = check.agrees() ? "drawn.agrees" : check.isDrawnWider() ? "drawn.wider" : "drawn.elsewhere";
        String judged = texts.get(
                key, numbers.show(check.largestDifference(), DECIMALS), numbers.show(check.tolerance(), DECIMALS));
        String made = texts.get(
                "drawn.made",
                Integer.toString(one.drawn().draws()),
                Long.toString(one.drawn().seed()));
        String unsettled = one.drawn()
                .settling()
                .filter(settling -> !settling.isSettled())
                .map(settling -> " " + texts.get("drawn.unsettled", numbers.show(settling.reached(), DECIMALS)))
                .orElse("");
        String missing = one.drawn().standardDeviation().isPresent() ? "" : " " + texts.get("drawn.no-deviation");
        return judged + missing + " " + made + unsettled;
    }

    /** Returns the bars of the plot, the largest first. */
    BudgetBars bars(Budget budget) {
        return new BudgetBars(
                budget.largestFirst().stream()
                        .map(line -> new BudgetBars.Bar(
                                texts.get("part." + line.part().symbol()),
                                line.sizePercent(),
                                budget.shareOf(line),
                                line.origin() == Origin.ASSUMED || line.origin() == Origin.PROFILE))
                        .toList(),
                budget.combinedPercent());
    }
}
