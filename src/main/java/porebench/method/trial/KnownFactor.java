package porebench.method.trial;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import porebench.quantity.Require;

/**
 * A factor as it would be with what the laboratory knows beside its own trials. It is never issued: the factor is the mean of its
 * own trials.
 *
 * @param meanPercent where the factor lies by its own trials and the other determinations, in % air
 * @param card the same, rounded as a factor is
 * @param ownShare what share of it is the mean of its own trials, above 0 and at most 1
 * @param aroundPercent what the other determinations alone say, in % air
 * @param others how many other determinations there are
 * @param sameMix how many of them are of this mix, made of the same
 * @param betweenDeterminationsPercent the standard deviation between determinations of a mix, in % air; empty where no mix
 *     made of the same has two
 * @param betweenMixesPercent the standard deviation between mixes of the same sources, in % air; empty where no two are
 *     of the same
 * @param betweenSourcesPercent the standard deviation between mixes of other sources, in % air; empty where all are of the
 *     same
 */
public record KnownFactor(
        double meanPercent,
        BigDecimal card,
        double ownShare,
        double aroundPercent,
        int others,
        int sameMix,
        OptionalDouble betweenDeterminationsPercent,
        OptionalDouble betweenMixesPercent,
        OptionalDouble betweenSourcesPercent) {
    public KnownFactor {
        Require.finite("meanPercent", meanPercent);
        Require.within("ownShare", ownShare, 0, 1);
        Require.finite("aroundPercent", aroundPercent);
        Require.atLeast("others", others, 1);
        Require.atLeast("sameMix", sameMix, 0);
        betweenDeterminationsPercent.ifPresent(value -> Require.atLeastZero("betweenDeterminationsPercent", value));
        betweenMixesPercent.ifPresent(value -> Require.atLeastZero("betweenMixesPercent", value));
        betweenSourcesPercent.ifPresent(value -> Require.atLeastZero("betweenSourcesPercent", value));
    }
}
