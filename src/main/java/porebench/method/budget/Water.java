package porebench.method.budget;

import porebench.quantity.Require;

/**
 * The water withdrawn on a Type B meter: the mean of the trials, and how well it was measured.
 *
 * <p>The limits of cylinder, balance and vessel are those of the equipment in use; where none is known, figures of the profile:
 * common practice, and then named as assumed in every budget, until a laboratory states its own.
 *
 * @param millilitres the volume, by cylinder or balance, in mL; 0 when none was measured so
 * @param stepMillilitres a step of the last digit written down, in mL
 * @param limitMillilitres how far cylinder or balance may be wrong, in mL
 * @param sharePercent the water read off a vessel marked so, in % of the bowl; 0 when none was measured so
 * @param stepPercent a step of the last digit written down, in % of the bowl
 * @param limitPercent how far the marks may be wrong, in % of the bowl
 * @param limitOrigin where the limits were taken from
 */
public record Water(
        double millilitres,
        double stepMillilitres,
        double limitMillilitres,
        double sharePercent,
        double stepPercent,
        double limitPercent,
        Origin limitOrigin) {
    public Water {
        Require.atLeastZero("millilitres", millilitres);
        Require.atLeastZero("stepMillilitres", stepMillilitres);
        Require.atLeastZero("limitMillilitres", limitMillilitres);
        Require.atLeastZero("sharePercent", sharePercent);
        Require.atLeastZero("stepPercent", stepPercent);
        Require.atLeastZero("limitPercent", limitPercent);
    }

    boolean hasVolume() {
        return millilitres > 0;
    }

    boolean hasShare() {
        return sharePercent > 0;
    }
}
