package porebench.print.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.method.RoundingRule;
import porebench.quantity.Typed;

/** PrintedFigures of a calibration as a sheet prints them, in one language. */
public record PrintedFigures(Words words) {
    /** What stands where there is no figure. */
    public static final String NONE = "\u2013";

    /** Returns a computed number with fixed decimals, ties to even. */
    public String fixed(double number, int decimals) {
        return words.number(RoundingRule.withoutNoise(number).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    public String fixed(OptionalDouble number, int decimals) {
        return number.isPresent() ? fixed(number.getAsDouble(), decimals) : NONE;
    }

    /** Returns a computed number with fixed decimals and its sign. */
    public String signed(double number, int decimals) {
        return words.signed(RoundingRule.withoutNoise(number).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** Returns a reading with the digits and the unit as typed. */
    public String typed(Typed<?> typed) {
        return words.number(typed.number()) + " " + typed.unit().symbol().replace('3', '\u00b3');
    }

    public String typed(Optional<? extends Typed<?>> typed) {
        return typed.isPresent() ? typed(typed.get()) : NONE;
    }

    /** Returns a figure of a profile as it stands there. */
    public String of(Profile profile, FigureName name) {
        return words.number(new BigDecimal(profile.figure(name).value()));
    }
}
