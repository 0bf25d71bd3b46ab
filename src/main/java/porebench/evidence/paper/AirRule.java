package porebench.evidence.paper;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.method.RoundingRule;
import porebench.method.Ties;

/**
 * By which rule the air content of a reading is reported, apart from the profile it comes from, so that it can be carried to a phone.
 *
 * @param step the step of the reported air content, in % air
 * @param ties what happens half way between two steps
 * @param high what holds above some air, where the profile says so
 */
public record AirRule(BigDecimal step, Ties ties, Optional<High> high) {
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    /**
     * What holds of high air.
     *
     * @param looksAtAir whether the air content is held against the limit; else the reading is
     * @param above the limit in % air, which itself is not yet high
     * @param step the step of the reported air content above it, in % air
     */
    public record High(boolean looksAtAir, BigDecimal above, BigDecimal step) {}

    /** Returns the rule of a profile on a scale of some division, as {@link porebench.method.air.AirContent} has it. */
    static AirRule of(Profile profile, BigDecimal division) {
        RoundingRule usual = profile.airRounding();
        String looksAt = profile.figure(FigureName.HIGH_AIR_LOOKS_AT).value();
        Optional<High> high = looksAt.equals("never")
                ? Optional.empty()
                : Optional.of(new High(
                        looksAt.equals("air"),
                        new BigDecimal(profile.figure(FigureName.HIGH_AIR_ABOVE).value()),
                        division.divide(TWO)));
        return new AirRule(usual.step(), usual.ties(), high);
    }
}
