package porebench.statistics.comparison;

/**
 * What one side of a comparison makes uncertain about the difference, in the unit of the readings.
 *
 * @param count how many values count one by one
 * @param deviation their standard deviation, never less than what the division makes
 * @param least what the division makes of it by itself
 * @param degreesOfFreedom of that standard deviation
 * @param rounding the variance that rounding adds to the mean however many values there are; 0 where they scatter enough
 * @param sets over how many determinations what they differ by is shared out; 0 where the values show it themselves
 */
record SideOfDifference(int count, double deviation, double least, double degreesOfFreedom, double rounding, int sets) {
    double variance() {
        return deviation * deviation / count;
    }

    double squaredOverDegrees() {
        return variance() * variance() / degreesOfFreedom;
    }

    SideOfDifference withMoreValues(int more) {
        return new SideOfDifference(count + more, deviation, least, degreesOfFreedom + more, rounding, sets);
    }

    /** Returns what is left of the variance between determinations. */
    double shareOfSets() {
        return sets == 0 ? 0 : 1.0 / sets;
    }

    /** Returns the side as it would be if its values scattered otherwise, but no less than the division makes. */
    SideOfDifference scattering(double other) {
        return new SideOfDifference(count, Math.max(least, other), least, degreesOfFreedom, rounding, sets);
    }

    /** Returns the side with more determinations as large as its own, of one that has a single one whose values count. */
    SideOfDifference withMoreSets(int more) {
        if (sets == 0) {
            return withMoreValues(more);
        }
        int values = count * (1 + more);
        return new SideOfDifference(values, deviation, least, degreesOfFreedom + values - count, rounding, sets + more);
    }
}
