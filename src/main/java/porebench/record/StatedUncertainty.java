package porebench.record;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How uncertain a factor was when it was issued: the one uncertainty that the laboratory quoted of it that day.
 *
 * @param expandedPercent U, half the width of the interval that holds the factor with 95 %, in % air
 * @param coverageFactor k, by which the standard uncertainty was multiplied; empty where the interval was drawn
 * @param origin here, or imported: then it is another laboratory's figure, which was not worked out from the trials here
 */
public record StatedUncertainty(BigDecimal expandedPercent, Optional<BigDecimal> coverageFactor, FactorOrigin origin) {
    /** Returns the same figures, worked out here or elsewhere. */
    public StatedUncertainty from(FactorOrigin other) {
        return new StatedUncertainty(expandedPercent, coverageFactor, other);
    }
}
