package porebench.method.forecast;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The air in the pores of a source, as far as the laboratory's trials tell it.
 *
 * @param source its name
 * @param millilitresPerKilogram pore air in mL for each kg in the bowl, at least 0; empty where it is not told apart from others
 * @param standardError of that, in mL/kg; empty where it is not told apart from others
 * @param isSeparable whether its own share is known about as well as others allow: neither always together with others, nor so nearly
 *     that its standard error is twenty times what it would be if the others were known
 * @param isAtZero whether the trials alone would give it less than nothing
 * @param mixes how many mixes with trials hold it
 * @param together the sources that it is not told apart from; empty unless it is always together with them
 */
public record SourceAir(
        String source,
        OptionalDouble millilitresPerKilogram,
        OptionalDouble standardError,
        boolean isSeparable,
        boolean isAtZero,
        int mixes,
        List<String> together) {
    public SourceAir {
        together = List.copyOf(together);
    }
}
