package porebench.method.meter;

import java.util.ArrayList;
import java.util.List;
import porebench.method.Answer;
import porebench.method.BoyleTypeA;
import porebench.method.FigureName;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.StandardAtmosphere;
import porebench.method.Surroundings;
import porebench.quantity.Pressure;
import porebench.quantity.PressureUnit;

/**
 * The calibration of a Type A meter: the reading K it must show under its working pressure P.
 *
 * <p>R = 100 x 0.98 w / W is the air of the calibration vessel in % of the bowl, less what the water above it compresses;
 * K = R + D with D the expansion of the meter; all in % air. The half-range pressure P1, under which the meter reads half,
 * is predicted by {@link BoyleTypeA}.
 *
 * <p>Source: ASTM C231, annex on calibration (recalled). Differences from the source: P1 is predicted, not tried out.
 *
 * @param vesselPercent R, in % air
 * @param expansionPercent D, in % air
 * @param readingPercent K, in % air
 * @param working P, above the pressure of the air
 * @param halfRange P1 as predicted, above the pressure of the air
 * @param elevationMetres where it was calibrated, in m above sea level
 * @param expansion D against its limit
 */
public record ColumnCalibration(
        double vesselPercent,
        double expansionPercent,
        double readingPercent,
        Pressure working,
        Pressure halfRange,
        double elevationMetres,
        MeterCheck expansion) {
    /** The share of its volume that the air of the vessel keeps under the water of the bowl. */
    public static final double VESSEL_CONSTANT = 0.98;

    private static final Pressure HIGHEST_WORKING = Pressure.of(700, PressureUnit.KILOPASCAL);

    /**
     * Works out the calibration.
     *
     * @param check what was read
     * @param profile whose limit of the expansion holds
     * @return the calibration with its doubts, or everything that is wrong with the readings
     */
    public static Answer<ColumnCalibration> of(ColumnCheck check, Profile profile) {
        List<Problem> problems = problems(check);
        if (!problems.isEmpty()) {
            return Answer.refused(problems);
        }
        double vessel = 100
                * VESSEL_CONSTANT
                * check.vesselWater().value().kilograms()
                / check.bowlWater().value().kilograms();
        double expansion = check.expansionPercent().doubleValue();
        double elevation = check.elevationMetres().doubleValue();
        Pressure working = check.workingPressure().value();
        MeterCheck limit = MeterCheck.atMost(
                MeterCheck.Subject.EXPANSION,
                expansion,
                profile.number(FigureName.EXPANSION_LIMIT),
                profile.figure(FigureName.EXPANSION_LIMIT).clause());
        if (!limit.passes()) {
            problems.add(Problem.warning(
                    "expansion",
                    "meter.expansion-too-large",
                    check.expansionPercent(),
                    profile.number(FigureName.EXPANSION_LIMIT)));
        }
        ColumnCalibration calibration = new ColumnCalibration(
                vessel,
                expansion,
                vessel + expansion,
                working,
                BoyleTypeA.of(working).halfRange(Surroundings.at(elevation)),
                elevation,
                limit);
        return Answer.of(calibration, problems);
    }

    private static List<Problem> problems(ColumnCheck check) {
        List<Problem> problems = new ArrayList<>();
        double vessel = check.vesselWater().value().kilograms();
        double bowl = check.bowlWater().value().kilograms();
        Weighed.positive(problems, "vesselWater", "vessel-water", check.vesselWater());
        Weighed.positive(problems, "bowlWater", "bowl-water", check.bowlWater());
        if (problems.isEmpty() && vessel >= bowl) {
            problems.add(Problem.error(
                    "vesselWater", "meter.vessel-water-exceeds-bowl", check.vesselWater(), check.bowlWater()));
        } else if (bowl > 0 && !Limit.BOWL.holds(bowl)) {
            problems.add(Problem.error(
                    "bowlWater",
                    "meter.bowl-water-impossible",
                    check.bowlWater(),
                    Limit.BOWL.lowInclusive(),
                    Limit.BOWL.highInclusive()));
        }
        if (check.expansionPercent().signum() < 0) {
            problems.add(Problem.error("expansion", "meter.expansion-negative", check.expansionPercent()));
        } else if (check.expansionPercent().compareTo(Limit.SCALE_TOP.highInclusive()) > 0) {
            problems.add(Problem.error(
                    "expansion",
                    "meter.expansion-impossible",
                    check.expansionPercent(),
                    Limit.SCALE_TOP.highInclusive()));
        }
        Pressure working = check.workingPressure().value();
        if (working.pascals() <= 0 || working.compareTo(HIGHEST_WORKING) > 0) {
            problems.add(Problem.error(
                    "workingPressure",
                    "meter.pressure-out-of-range",
                    check.workingPressure(),
                    HIGHEST_WORKING.in(PressureUnit.KILOPASCAL)));
        }
        checkElevation(problems, "elevation", check.elevationMetres().doubleValue());
        return problems;
    }

    /** Adds a problem when an elevation in m lies outside the standard atmosphere's range. */
    static void checkElevation(List<Problem> problems, String field, double metres) {
        if (!StandardAtmosphere.covers(metres)) {
            problems.add(Problem.error(
                    field,
                    "meter.elevation-out-of-range",
                    metres,
                    StandardAtmosphere.LOWEST_METRES,
                    StandardAtmosphere.HIGHEST_METRES));
        }
    }

    /** Returns whether the expansion lies within its limit. */
    public boolean passes() {
        return expansion.passes();
    }

    /** Returns what becomes of the readings at another elevation, in m from -500 to 5000, under a profile's limit. */
    public ElevationUse elevationUse(double usedMetres, Profile profile) {
        return ElevationUse.of(working, elevationMetres, usedMetres, profile);
    }
}
