package porebench.method.air;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.RoundingRule;

/**
 * The air content of concrete from a meter's reading and the aggregate correction factor.
 *
 * <p>A = A1 - G, all in % air; reported to the step of the profile, and to half a scale division where the profile says
 * so for high air.
 *
 * <p>Source: ASTM C231, calculation and report clauses (recalled); rounding by ASTM E29 (recalled). Differences from the
 * source: none; the profile names what the 8 % looks at.
 *
 * @param percent the air content in % air, before it is rounded
 * @param reported the air content as reported, in % air
 * @param rule the rounding rule that was applied
 */
public record AirContent(BigDecimal percent, BigDecimal reported, RoundingRule rule) {
    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /**
     * Computes an air content.
     *
     * @param reading apparent air on the gauge, in % air, from 0 to 100
     * @param factor the aggregate correction factor, in % air
     * @param division a division of the scale at the reading, in % air, greater than 0
     * @param profile the rules of rounding
     * @return the air content, or what is wrong; a negative air content is a warning
     */
    public static Answer<AirContent> of(BigDecimal reading, BigDecimal factor, BigDecimal division, Profile profile) {
        List<Problem> problems = new ArrayList<>();
        if (reading.signum() < 0 || reading.compareTo(HUNDRED) > 0) {
            problems.add(Problem.error("reading", "air.reading-out-of-range", reading));
        }
        if (factor.abs().compareTo(HUNDRED) > 0) {
            problems.add(Problem.error("factor", "air.factor-out-of-range", factor));
        }
        if (division.signum() <= 0 || division.compareTo(BigDecimal.TEN) > 0) {
            problems.add(Problem.error("division", "air.division-out-of-range", division));
        }
        if (!problems.isEmpty()) {
            return Answer.refused(problems);
        }
        if (factor.signum() < 0) {
            problems.add(Problem.warning("factor", "air.factor-negative", factor));
        }
        BigDecimal subtracted =
                profile.carriesRoundedFactor() ? profile.factorRounding().round(factor) : factor;
        BigDecimal air = reading.subtract(subtracted);
        if (air.signum() < 0) {
            problems.add(Problem.warning("reading", "air.negative", reading, subtracted));
        }
        RoundingRule rule = rule(reading, air, division, profile);
        return Answer.of(new AirContent(air, rule.round(air), rule), problems);
    }

    private static RoundingRule rule(BigDecimal reading, BigDecimal air, BigDecimal division, Profile profile) {
        String looksAt = profile.figure(FigureName.HIGH_AIR_LOOKS_AT).value();
        BigDecimal looked = looksAt.equals("air") ? air : reading;
        BigDecimal above =
                new BigDecimal(profile.figure(FigureName.HIGH_AIR_ABOVE).value());
        if (looksAt.equals("never") || looked.compareTo(above) <= 0) {
            return profile.airRounding();
        }
        return new RoundingRule(
                division.divide(TWO),
                profile.airRounding().ties(),
                profile.figure(FigureName.HIGH_AIR_ABOVE).clause());
    }
}
