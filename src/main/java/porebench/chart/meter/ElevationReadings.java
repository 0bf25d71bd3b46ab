package porebench.chart.meter;

import java.util.List;

/**
 * What the plot of a Type A meter away from home shows: what it reads of one amount of air, by elevation.
 *
 * @param readings the predicted readings, in rising order of the elevation
 * @param truePercent the true air, in % air
 * @param calibratedMetres where the meter was calibrated, in m above sea level
 * @param limitMetres how far up or down it may be moved, in m, greater than 0
 */
public record ElevationReadings(
        List<Reading> readings, double truePercent, double calibratedMetres, double limitMetres) {
    public ElevationReadings {
        readings = List.copyOf(readings);
    }

    /**
     * One predicted reading.
     *
     * @param elevationMetres where the meter is used, in m above sea level
     * @param readingPercent what it reads there, in % air
     */
    public record Reading(double elevationMetres, double readingPercent) {}
}
