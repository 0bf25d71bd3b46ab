package porebench.evidence.paper;

import java.math.BigDecimal;
import porebench.method.Profile;

/**
 * The card of a mix for a crew's phone: what a reading means there.
 *
 * @param card the card
 * @param subtracted what is subtracted from a reading, in % air: the factor, rounded once more where the profile carries it so
 * @param rule how the air content is reported
 */
public record PhonePage(FactorCard card, BigDecimal subtracted, AirRule rule) {
    /** Returns the page of a card by the rules of its mix's profile. */
    public static PhonePage of(FactorCard card, Profile profile) {
        BigDecimal factor = card.issue().factorPercent();
        return new PhonePage(
                card,
                profile.carriesRoundedFactor() ? profile.factorRounding().round(factor) : factor,
                AirRule.of(profile, card.divisionPercent()));
    }

    /** Returns the highest reading of the meter's scale, in % air. */
    public BigDecimal scaleTop() {
        int last = card.window().rows().size() - 1;
        return card.window().rows().get(last).reading();
    }
}
