package porebench.method.meter;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.WaterDensity;
import porebench.quantity.Density;
import porebench.quantity.Mass;
import porebench.quantity.Pressure;
import porebench.quantity.PressureUnit;
import porebench.quantity.Temperature;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.statistics.summary.Summary;
import porebench.statistics.uncertainty.UncertaintySum;
import porebench.statistics.uncertainty.UncertaintySum.Contribution;

/** Works out the weighings of one bowl, or says everything that is wrong with them. */
final class BowlWeighings {
    private static final double LOWEST_KILOPASCALS = 50;
    private static final double HIGHEST_KILOPASCALS = 110;

    private final BowlFills fills;
    private final Profile profile;
    private final List<Problem> problems = new ArrayList<>();

    BowlWeighings(BowlFills fills, Profile profile) {
        this.fills = fills;
        this.profile = profile;
    }

    Answer<BowlCalibration> answer() {
        Optional<Density> air = air();
        List<BowlVolume> found = volumes();
        size("diameter", fills.diameterMillimetres());
        size("height", fills.heightMillimetres());
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        List<Volume> volumes = found.stream().map(each -> corrected(each, air)).toList();
        Summary litres = Summary.of(volumes.stream()
                .mapToDouble(volume -> volume.in(VolumeUnit.LITRE))
                .toArray());
        if (volumes.size() == 1) {
            problems.add(Problem.warning("fills", "meter.one-fill"));
        }
        return Answer.of(
                new BowlCalibration(
                        litres, volumes, fills.buoyancyCorrected(), uncertainty(litres, found), checks(litres.mean())),
                problems);
    }

    private static Volume corrected(BowlVolume fill, Optional<Density> air) {
        if (air.isEmpty()) {
            return fill.volume();
        }
        Mass apparent = fill.volume().at(fill.waterDensity());
        return AirDensity.trueMassOfWater(apparent, air.get(), fill.waterDensity())
                .at(fill.waterDensity());
    }

    private List<BowlVolume> volumes() {
        if (fills.fills().isEmpty()) {
            problems.add(Problem.error("fills", "meter.no-fill").of(Problem.Kind.NOT_MEASURED));
        }
        List<BowlVolume> found = new ArrayList<>();
        for (int i = 0; i < fills.fills().size(); i++) {
            BowlFill fill = fills.fills().get(i);
            String prefix = "fills." + i + ".";
            Answer<BowlVolume> answer = BowlVolume.of(
                    fill.empty().value(),
                    fill.plate().value(),
                    fill.full().value(),
                    new Temperature(fill.waterCelsius().doubleValue()));
            answer.problems().forEach(problem -> problems.add(problem.under(prefix + problem.field())));
            answer.value().ifPresent(volume -> {
                found.add(volume);
                impossible(prefix, volume);
            });
        }
        return found;
    }

    private void impossible(String prefix, BowlVolume fill) {
        double litres = fill.volume().in(VolumeUnit.LITRE);
        if (!Limit.BOWL.holds(litres)) {
            problems.add(Problem.error(
                    prefix + "full",
                    "bowl.volume-impossible",
                    litres,
                    Limit.BOWL.lowInclusive(),
                    Limit.BOWL.highInclusive()));
        }
    }

    private Optional<Density> air() {
        List<Problem> wrong = new ArrayList<>();
        missing(wrong, "airTemperature", "air-temperature", fills.airCelsius());
        missing(wrong, "airPressure", "air-pressure", fills.airKilopascals());
        fills.airCelsius()
                .filter(celsius -> !WaterDensity.covers(new Temperature(celsius.doubleValue())))
                .ifPresent(celsius -> wrong.add(Problem.error(
                        "airTemperature",
                        "meter.air-temperature-out-of-range",
                        celsius,
                        WaterDensity.LOWEST_CELSIUS,
                        WaterDensity.HIGHEST_CELSIUS)));
        fills.airKilopascals()
                .filter(kilopascals -> kilopascals.doubleValue() < LOWEST_KILOPASCALS
                        || kilopascals.doubleValue() > HIGHEST_KILOPASCALS)
                .ifPresent(kilopascals -> wrong.add(Problem.error(
                        "airPressure",
                        "meter.air-pressure-out-of-range",
                        kilopascals,
                        LOWEST_KILOPASCALS,
                        HIGHEST_KILOPASCALS)));
        problems.addAll(wrong);
        return wrong.isEmpty() && fills.buoyancyCorrected()
                ? Optional.of(AirDensity.at(
                        new Temperature(fills.airCelsius().orElseThrow().doubleValue()),
                        Pressure.of(fills.airKilopascals().orElseThrow().doubleValue(), PressureUnit.KILOPASCAL)))
                : Optional.empty();
    }

    private void missing(List<Problem> wrong, String field, String word, Optional<BigDecimal> read) {
        if (fills.buoyancyCorrected() && read.isEmpty()) {
            wrong.add(Problem.error(field, "meter.needed-for-buoyancy", new Problem.Word(word))
                    .of(Problem.Kind.NOT_MEASURED));
        }
    }

    private void size(String field, Optional<BigDecimal> millimetres) {
        millimetres.filter(size -> size.signum() <= 0).ifPresent(size -> {
            problems.add(Problem.error(field, "meter.not-positive", new Problem.Word(field), size));
        });
    }

    private List<MeterCheck> checks(double litres) {
        List<MeterCheck> checks = new ArrayList<>();
        double least = profile.number(FigureName.LEAST_BOWL);
        MeterCheck size = MeterCheck.atLeast(
                MeterCheck.Subject.BOWL_VOLUME,
                litres,
                least,
                profile.figure(FigureName.LEAST_BOWL).clause());
        checks.add(size);
        if (!size.passes()) {
            problems.add(Problem.warning("fills", "meter.bowl-small", litres, least));
        }
        if (fills.diameterMillimetres().isPresent() && fills.heightMillimetres().isPresent()) {
            double low = profile.number(FigureName.BOWL_SHAPE_LOW);
            double high = profile.number(FigureName.BOWL_SHAPE_HIGH);
            double ratio = fills.diameterMillimetres().get().doubleValue()
                    / fills.heightMillimetres().get().doubleValue();
            MeterCheck shape = MeterCheck.within(
                    MeterCheck.Subject.BOWL_SHAPE,
                    ratio,
                    low,
                    high,
                    profile.figure(FigureName.BOWL_SHAPE_LOW).clause());
            checks.add(shape);
            if (!shape.passes()) {
                problems.add(Problem.warning("diameter", "meter.bowl-shape", ratio, low, high));
            }
        }
        return checks;
    }

    /** The digits are the same balance's in every fill: their share is not divided by the number of fills. */
    private double uncertainty(Summary litres, List<BowlVolume> found) {
        List<Contribution> parts = new ArrayList<>();
        litres.standardError().ifPresent(error -> parts.add(Contribution.of("scatter", error, litres.count() - 1.0)));
        BowlFill fill = fills.fills().get(0);
        double litresPerKilogram = 1000 / found.get(0).waterDensity().kilogramsPerCubicMetre();
        for (Typed<Mass> mass : List.of(fill.empty(), fill.plate(), fill.full())) {
            double kilograms = mass.unit().of(Weighed.step(mass.number())).kilograms();
            parts.add(digits("weighing", kilograms * litresPerKilogram));
        }
        double celsius = fill.waterCelsius().doubleValue();
        double step = Weighed.step(fill.waterCelsius());
        double low = WaterDensity.at(new Temperature(Math.max(celsius - step / 2, WaterDensity.LOWEST_CELSIUS)))
                .kilogramsPerCubicMetre();
        double high = WaterDensity.at(new Temperature(Math.min(celsius + step / 2, WaterDensity.HIGHEST_CELSIUS)))
                .kilogramsPerCubicMetre();
        parts.add(digits("water temperature", litres.mean() * Math.abs(high - low) / low));
        return UncertaintySum.of(parts).combined();
    }

    private static Contribution digits(String name, double step) {
        return Contribution.of(name, UncertaintySum.resolutionUncertainty(step), Double.POSITIVE_INFINITY);
    }
}
