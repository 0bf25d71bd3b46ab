package porebench.method.meter;

import java.util.List;
import porebench.method.BoyleTypeA;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Surroundings;
import porebench.quantity.Pressure;

/**
 * A Type A meter used at another elevation than that of its calibration.
 *
 * <p>Thinner air gives more under the same pressure, so the meter reads too high uphill and too low downhill.
 *
 * <p>Source: ASTM C231, annex on calibration: anew after a change of more than 183 m (recalled); readings by
 * {@link BoyleTypeA} in the {@link porebench.method.StandardAtmosphere}.
 *
 * @param calibratedMetres where it was calibrated, in m above sea level
 * @param usedMetres where it is used, in m above sea level
 * @param check the difference without its sign against the limit
 * @param readingRatio the predicted reading divided by the reading of the same air where it was calibrated
 */
public record ElevationUse(double calibratedMetres, double usedMetres, MeterCheck check, double readingRatio) {
    /**
     * Compares two elevations, each from -500 to 5000 m.
     *
     * @param working the working pressure, greater than 0
     * @param calibratedMetres where the meter was calibrated, in m above sea level
     * @param usedMetres where it is used, in m above sea level
     * @param profile whose limit holds
     */
    public static ElevationUse of(Pressure working, double calibratedMetres, double usedMetres, Profile profile) {
        return new ElevationUse(
                calibratedMetres,
                usedMetres,
                MeterCheck.atMost(
                        MeterCheck.Subject.ELEVATION,
                        Math.abs(usedMetres - calibratedMetres),
                        profile.number(FigureName.ELEVATION_LIMIT),
                        profile.figure(FigureName.ELEVATION_LIMIT).clause()),
                BoyleTypeA.of(working).readingRatio(Surroundings.at(calibratedMetres), Surroundings.at(usedMetres)));
    }

    /** Returns whether the meter may be used there without a new calibration. */
    public boolean passes() {
        return check.passes();
    }

    /** Returns the predicted reading of a true air, both in % air. */
    public double readingOf(double truePercent) {
        return truePercent * readingRatio;
    }

    /** Returns the doubt about readings there, none when the meter may be used. */
    public List<Problem> doubts() {
        return passes()
                ? List.of()
                : List.of(Problem.warning(
                        "elevation",
                        "meter.moved-too-far",
                        check.value(),
                        check.highInclusive().orElseThrow(),
                        readingRatio));
    }
}
