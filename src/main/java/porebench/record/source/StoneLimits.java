package porebench.record.source;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.method.Role;

/**
 * How far two figures of one stone may lie apart before it is asked whether it is one stone: as far as two laboratories that test
 * the same stone differ in one of twenty cases.
 *
 * <p>Source: ASTM C127 (coarse) and C128 (fine), precision, multilaboratory, acceptable range of two results (recalled); of
 * absorption of coarse aggregate the figure of editions before 2004 (recalled). The share retained has no source: ours.
 *
 * @param relativeDensity of relative density at SSD
 * @param absorption of absorption, in % of the oven-dry mass
 * @param retained of the share retained on 37.5 mm, in % of the mass
 */
public record StoneLimits(BigDecimal relativeDensity, BigDecimal absorption, BigDecimal retained) {
    private static final BigDecimal RETAINED = new BigDecimal("5");
    private static final StoneLimits COARSE =
            new StoneLimits(new BigDecimal("0.032"), new BigDecimal("0.41"), RETAINED);
    private static final StoneLimits FINE = new StoneLimits(new BigDecimal("0.056"), new BigDecimal("0.66"), RETAINED);

    /** Returns the limits of fine or of coarse aggregate. */
    public static StoneLimits of(Role role) {
        return role == Role.FINE ? FINE : COARSE;
    }

    /** Returns whether two figures lie farther apart than a limit; where one is not known they do not. */
    public static boolean areFar(Optional<BigDecimal> one, Optional<BigDecimal> other, BigDecimal limit) {
        return one.isPresent()
                && other.isPresent()
                && one.get().subtract(other.get()).abs().compareTo(limit) > 0;
    }
}
