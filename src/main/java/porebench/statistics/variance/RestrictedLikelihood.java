package porebench.statistics.variance;

/**
 * The restricted likelihood of the variances of some layers and of the values within them.
 *
 * <p>What counts is -2 ln L = ln |V| + ln(1' V^-1 1) + (y - m)' V^-1 (y - m), apart from a constant, with m the mean that
 * makes the last term least.
 *
 * <p>Source: H. D. Patterson and R. Thompson, Biometrika 58 (1971); recalled. Differences from the source: none.
 */
interface RestrictedLikelihood {
    /**
     * What a likelihood amounts to: -2 ln L with its derivatives, the mean less its origin, and the mean's variance; both NaN where
     * regressors stand in the place of one mean.
     */
    record At(Jet minusTwiceLog, double mean, double varianceOfMean) {}

    /**
     * Returns the likelihood of some variances, one a layer and last that of values.
     *
     * @param variances at least 0, the last one greater than 0
     */
    At at(double... variances);
}
