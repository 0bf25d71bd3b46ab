package porebench.method.air;

import porebench.quantity.Require;

/**
 * An alignment chart of reading, aggregate correction factor and air: three upright scales, and a straight line from a reading to a
 * factor crosses the scale of air at reading less factor, exactly.
 *
 * <p>Readings rise on the left; factors fall on the right, so that more of them means less air; air rises between the two. With u the
 * length of one percent of reading and v that of one percent of factor, the scale of air stands at u/(u+v) of the way from left to
 * right, and one percent of air is u v/(u+v) long. The factor of the chart lies at half the height of the readings.
 *
 * <p>Lengths are in millimetres, heights count from the lowest reading upwards.
 *
 * <p>Source: M. d'Ocagne, Traité de nomographie, 1899, parallel scales (recalled). Differences: none.
 *
 * @param width how far the scale of factors stands from that of readings
 * @param height the length of the scale of readings
 * @param lowestReading the reading at its lower end, in % air
 * @param highestReading the reading at its upper end, in % air
 * @param factorPercent the factor at half the height, in % air
 * @param stretch how many times as long one percent of factor is as one percent of reading
 */
public record AlignmentChart(
        double width,
        double height,
        double lowestReading,
        double highestReading,
        double factorPercent,
        double stretch) {
    public AlignmentChart {
        Require.positive("width", width);
        Require.positive("height", height);
        Require.finite("lowestReading", lowestReading);
        Require.positive("span", highestReading - lowestReading);
        Require.finite("factorPercent", factorPercent);
        Require.positive("stretch", stretch);
    }

    /** Returns the length of one percent of reading. */
    public double readingModulus() {
        return height / (highestReading - lowestReading);
    }

    /** Returns the length of one percent of factor. */
    public double factorModulus() {
        return stretch * readingModulus();
    }

    /** Returns the length of one percent of air. */
    public double airModulus() {
        return readingModulus() * factorModulus() / (readingModulus() + factorModulus());
    }

    /** Returns how far the scale of air stands from that of readings. */
    public double airFromLeft() {
        return width * readingModulus() / (readingModulus() + factorModulus());
    }

    /** Returns where a reading in % air lies. */
    public double heightOfReading(double percent) {
        return readingModulus() * (percent - lowestReading);
    }

    /** Returns where a factor in % air lies. */
    public double heightOfFactor(double percent) {
        return height / 2 - factorModulus() * (percent - factorPercent);
    }

    /** Returns where an air content in % air lies. */
    public double heightOfAir(double percent) {
        double lowest = lowestReading - factorPercent;
        return airModulus() * (percent - lowest) + height / 2 * airFromLeft() / width;
    }

    /**
     * Returns by how much air is misread, in % air, when the straight line is off.
     *
     * @param millimetres how far it lies off, upwards or downwards, where it crosses the scale of air
     */
    public double misreading(double millimetres) {
        return millimetres / airModulus();
    }
}
