package porebench.method.meter;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.DialScale;

/**
 * Where the initial pressure line of a Type B meter belongs, as its check points tell.
 *
 * <p>Moving the line by d on the dial starts the chamber at another pressure, and every reading moves by d (1 + R / c), R
 * being the true air and c the chamber in % of the bowl. The line belongs where the squared errors of the check points
 * are smallest: d = - sum(e w) / sum(w w) with w = 1 + R / c.
 *
 * <p>Source: the law of Boyle and Mariotte and least squares (derived). Differences from the source: none.
 *
 * @param stated where the line stood, in % air on the dial; empty when not noted
 * @param shiftPercent d, by how much to move it, in % air on the dial; positive towards higher air, which is less pressure
 * @param largestErrorBefore the largest error without its sign, in % air, with the line as it stood
 * @param largestErrorAfter the same with the line moved, as predicted
 */
public record InitialLine(
        Optional<BigDecimal> stated, double shiftPercent, double largestErrorBefore, double largestErrorAfter) {
    static InitialLine of(DialCurve curve, DialScale scale, Optional<BigDecimal> stated) {
        double products = 0;
        double squares = 0;
        for (DialCurve.Knot knot : curve.knots()) {
            double weight = weight(knot, scale);
            products += knot.errorPercent() * weight;
            squares += weight * weight;
        }
        double shift = -products / squares;
        return new InitialLine(stated, shift, largest(curve, scale, 0), largest(curve, scale, shift));
    }

    /** Returns where the line belongs, in % air on the dial; empty when it was not noted where it stood. */
    public OptionalDouble impliedPercent() {
        return stated.isPresent()
                ? OptionalDouble.of(stated.get().doubleValue() + shiftPercent)
                : OptionalDouble.empty();
    }

    private static double weight(DialCurve.Knot knot, DialScale scale) {
        return 1 + knot.truePercent() / scale.chamberPercent();
    }

    private static double largest(DialCurve curve, DialScale scale, double shift) {
        return curve.knots().stream()
                .mapToDouble(knot -> Math.abs(knot.errorPercent() + shift * weight(knot, scale)))
                .max()
                .orElseThrow();
    }
}
