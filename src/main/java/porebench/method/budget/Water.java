package porebench.method.budget;

import porebench.quantity.Require;

/**
 * The water withdrawn on a Type B meter: the mean of the trials, and how well it was measured.
 *
 * <p>The limits are assumptions about cylinder, balance and vessel, of which the lab book keeps nothing. They are named in
 * every budget.
 *
 * @param millilitres the volume, by cylinder or balance, in mL; 0 when none was measured so
 * @param stepMillilitres a step of the last digit written down, in mL
 * @param limitMillilitres how far cylinder or balance may be wrong, in mL
 * @param sharePercent the water read off a vessel marked so, in % of the bowl; 0 when none was measured so
 * @param stepPercent a step of the last digit written down, in % of the bowl
 * @param limitPercent how far the marks may be wrong, in % of the bowl
 */
public record Water(
        double millilitres,
        double stepMillilitres,
        double limitMillilitres,
        double sharePercent,
        double stepPercent,
        double limitPercent) {
    /** How far a 500 mL measuring cylinder may be wrong, in mL. Common practice, no source. */
    public static final double CYLINDER_LIMIT_MILLILITRES = 2.5;

    /** How far a bench balance may be wrong, in g. Common practice, no source. */
    public static final double BALANCE_LIMIT_GRAMS = 1;

    /** How far the marks of a vessel graduated in % of the bowl may be wrong, in % of the bowl. Common practice, no source. */
    public static final double VESSEL_LIMIT_PERCENT = 0.05;

    public Water {
        Require.atLeastZero("millilitres", millilitres);
        Require.atLeastZero("stepMillilitres", stepMillilitres);
        Require.atLeastZero("limitMillilitres", limitMillilitres);
        Require.atLeastZero("sharePercent", sharePercent);
        Require.atLeastZero("stepPercent", stepPercent);
        Require.atLeastZero("limitPercent", limitPercent);
    }

    /** Returns water measured by volume or weight. */
    public static Water ofVolume(double millilitres, double stepMillilitres, double limitMillilitres) {
        return new Water(millilitres, stepMillilitres, limitMillilitres, 0, 0, 0);
    }

    /** Returns water measured as a share of the bowl. */
    public static Water ofShare(double sharePercent, double stepPercent, double limitPercent) {
        return new Water(0, 0, 0, sharePercent, stepPercent, limitPercent);
    }

    boolean hasVolume() {
        return millilitres > 0;
    }

    boolean hasShare() {
        return sharePercent > 0;
    }
}
