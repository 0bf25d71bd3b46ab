package porebench.method.meter;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.WaterDensity;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.quantity.Temperature;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.statistics.uncertainty.UncertaintySum;

/** Turns the points of a dial check into the knots of its curve, or says everything that is wrong with them. */
final class DialPoints {

    private final DialCheck check;
    private final double bowlCubicMetres;
    private final double divisionPercent;
    private final Profile profile;
    private final List<Problem> problems = new ArrayList<>();
    private final OptionalDouble waterDensity;

    /** Readings of one amount of air; the first of them stood in row {@code row}. */
    private record Group(int row, double truePercent, double stepPercent, List<Double> readings) {
        double mean() {
            return readings.stream().mapToDouble(Double::doubleValue).sum() / readings.size();
        }

        double squares() {
            double mean = mean();
            return readings.stream()
                    .mapToDouble(reading -> (reading - mean) * (reading - mean))
                    .sum();
        }
    }

    DialPoints(DialCheck check, Volume bowl, double divisionPercent, Profile profile) {
        this.check = check;
        this.bowlCubicMetres = Require.positive("bowl", bowl.cubicMetres());
        this.divisionPercent = Require.positive("divisionPercent", divisionPercent);
        this.profile = profile;
        this.waterDensity = waterDensity();
    }

    Answer<DialCurve> answer() {
        vessel();
        settings();
        List<Group> groups = groups();
        if (!Problem.anyError(problems)) {
            rising(groups);
        }
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        DialCurve curve = new DialCurve(
                knots(groups),
                profile.number(FigureName.DIAL_TOLERANCE),
                profile.figure(FigureName.DIAL_TOLERANCE).clause());
        MeterCheck largest = curve.largestError();
        if (!largest.passes()) {
            problems.add(Problem.warning("points", "meter.dial-off", largest.value(), curve.tolerancePercent()));
        }
        return Answer.of(curve, problems);
    }

    static MeterCheck leak(BigDecimal marks, Profile profile) {
        return MeterCheck.atMost(
                MeterCheck.Subject.LEAK,
                marks.doubleValue(),
                profile.number(FigureName.LEAK_MARKS),
                profile.figure(FigureName.LEAK_MARKS).clause());
    }

    private OptionalDouble waterDensity() {
        Optional<BigDecimal> celsius = check.waterCelsius();
        if (celsius.isEmpty()) {
            boolean isNeeded = check.points().stream()
                    .map(point -> point.amount().unit())
                    .anyMatch(unit -> unit == CheckAmount.Unit.VESSELS || unit == CheckAmount.Unit.GRAM);
            if (isNeeded) {
                problems.add(Problem.error("waterTemperature", "meter.water-temperature-missing")
                        .of(Problem.Kind.NOT_MEASURED));
            }
            return OptionalDouble.empty();
        }
        return Weighed.isWater(problems, "waterTemperature", celsius.get())
                ? OptionalDouble.of(
                        WaterDensity.at(new Temperature(celsius.get().doubleValue()))
                                .kilogramsPerCubicMetre())
                : OptionalDouble.empty();
    }

    private void vessel() {
        boolean isNeeded =
                check.points().stream().anyMatch(point -> point.amount().unit() == CheckAmount.Unit.VESSELS);
        if (check.vesselWater().isEmpty()) {
            if (isNeeded) {
                problems.add(
                        Problem.error("vesselWater", "meter.vessel-missing").of(Problem.Kind.NOT_MEASURED));
            }
            return;
        }
        Typed<Mass> water = check.vesselWater().get();
        Weighed.positive(problems, "vesselWater", "vessel-water", water);
        if (waterDensity.isPresent() && percentOf(water.value()) >= 100) {
            problems.add(Problem.error(
                    "vesselWater",
                    "meter.vessel-exceeds-bowl",
                    1000 * water.value().kilograms() / waterDensity.getAsDouble(),
                    1000 * bowlCubicMetres));
        }
    }

    private void settings() {
        check.leakMarks().ifPresent(marks -> {
            MeterCheck leak = leak(marks, profile);
            if (marks.signum() < 0) {
                problems.add(Problem.error("leakMarks", "meter.leak-negative", marks));
            } else if (!leak.passes()) {
                problems.add(Problem.warning(
                        "leakMarks", "meter.leaks", marks, leak.highInclusive().orElseThrow()));
            }
        });
        check.chamber().ifPresent(chamber -> {
            if (chamber.value().cubicMetres() <= 0 || chamber.value().cubicMetres() >= bowlCubicMetres) {
                problems.add(Problem.error("chamber", "meter.chamber-out-of-range", chamber, 1000 * bowlCubicMetres));
            }
        });
        check.initialPressure()
                .filter(pressure -> pressure.number().signum() <= 0)
                .ifPresent(pressure -> problems.add(Problem.error(
                        "initialPressure", "meter.not-positive", new Problem.Word("initial-pressure"), pressure)));
        check.initialLine()
                .filter(line -> Math.abs(line.doubleValue()) > 10)
                .ifPresent(line -> problems.add(Problem.error("initialLine", "meter.line-out-of-range", line, 10.0)));
    }

    private List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < check.points().size(); i++) {
            CheckPoint point = check.points().get(i);
            String field = "points." + i;
            double reading = point.gaugePercent().doubleValue();
            if (reading < 0 || reading > 100) {
                problems.add(Problem.error(field + ".gauge", "meter.gauge-out-of-range", i + 1, point.gaugePercent()));
            }
            OptionalDouble truth = truePercent(point.amount());
            if (point.amount().number().signum() < 0) {
                problems.add(Problem.error(
                        field + ".amount",
                        "meter.amount-negative",
                        i + 1,
                        point.amount().number()));
            } else if (truth.isPresent()) {
                add(groups, i, truth.getAsDouble(), point);
            }
        }
        if (groups.size() < 2 && (check.points().size() < 2 || !Problem.anyError(problems))) {
            problems.add(Problem.error(
                            "points",
                            "meter.too-few-points",
                            check.points().size() < 2 ? check.points().size() : groups.size())
                    .of(Problem.Kind.NOT_MEASURED));
        }
        return groups;
    }

    private void add(List<Group> groups, int row, double truth, CheckPoint point) {
        String field = "points." + row + ".amount";
        Group last = groups.isEmpty() ? null : groups.get(groups.size() - 1);
        if (truth > 100) {
            problems.add(Problem.error(field, "meter.amount-exceeds-bowl", row + 1, truth));
        } else if (last != null && Slack.isBelow(truth, last.truePercent())) {
            problems.add(Problem.error(field, "meter.points-out-of-order", row + 1, truth, last.truePercent()));
        } else if (last != null && !Slack.isAbove(truth, last.truePercent())) {
            last.readings().add(point.gaugePercent().doubleValue());
        } else {
            List<Double> readings = new ArrayList<>(List.of(point.gaugePercent().doubleValue()));
            groups.add(new Group(row, truth, stepPercent(point.amount()), readings));
        }
    }

    private void rising(List<Group> groups) {
        for (int i = 1; i < groups.size(); i++) {
            double low = groups.get(i - 1).mean();
            double high = groups.get(i).mean();
            if (!Slack.isAbove(high, low)) {
                int row = groups.get(i).row();
                problems.add(Problem.error("points." + row + ".gauge", "meter.reading-not-rising", row + 1, high, low));
            }
        }
    }

    private List<DialCurve.Knot> knots(List<Group> groups) {
        int free =
                groups.stream().mapToInt(group -> group.readings().size() - 1).sum();
        double squares = groups.stream().mapToDouble(Group::squares).sum();
        double variance = free == 0 ? 0 : squares / free;
        double scale = UncertaintySum.resolutionUncertainty(divisionPercent);
        return groups.stream()
                .map(group -> {
                    int count = group.readings().size();
                    double amount = UncertaintySum.resolutionUncertainty(group.stepPercent());
                    double own = Math.sqrt(variance / count + scale * scale + amount * amount);
                    return new DialCurve.Knot(group.truePercent(), group.mean(), count, own);
                })
                .toList();
    }

    private OptionalDouble truePercent(CheckAmount amount) {
        return percentOf(amount, amount.number().doubleValue(), 1);
    }

    /** A step of the last digit typed; that of a vessel's fills is the step of its mass. */
    private double stepPercent(CheckAmount amount) {
        if (amount.unit() != CheckAmount.Unit.VESSELS) {
            return percentOf(amount, Weighed.step(amount.number()), 1).orElse(0);
        }
        Typed<Mass> vessel = check.vesselWater().orElseThrow();
        double share = Weighed.step(vessel.number()) / vessel.number().doubleValue();
        return percentOf(amount, amount.number().doubleValue(), share).orElse(0);
    }

    private OptionalDouble percentOf(CheckAmount amount, double number, double share) {
        return switch (amount.unit()) {
            case PERCENT -> OptionalDouble.of(share * number);
            case MILLILITRE -> OptionalDouble.of(share * 100 * number * 1e-6 / bowlCubicMetres);
            case GRAM -> ofMass(Mass.of(number, MassUnit.GRAM), share);
            case VESSELS ->
                check.vesselWater()
                        .map(vessel -> ofMass(vessel.value().times(number), share))
                        .orElse(OptionalDouble.empty());
        };
    }

    private OptionalDouble ofMass(Mass water, double share) {
        return waterDensity.isPresent() ? OptionalDouble.of(share * percentOf(water)) : OptionalDouble.empty();
    }

    private double percentOf(Mass water) {
        return 100 * water.kilograms() / waterDensity.orElseThrow() / bowlCubicMetres;
    }
}
