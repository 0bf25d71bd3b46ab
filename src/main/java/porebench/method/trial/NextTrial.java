package porebench.method.trial;

import java.math.BigDecimal;
import porebench.method.RoundingRule;
import porebench.quantity.Require;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.Summary;

/**
 * What one more trial could do to the factor on the card.
 *
 * <p>The next trial's factor lies within mean +- t s sqrt(1 + 1/n) in 95 of 100 cases. Within that range the mean of all
 * trials is rounded as the card's factor is; the probability of another factor is that of a t value beyond the ends of those
 * next factors that would leave the card as it is.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2, and any textbook, for the prediction of one more value;
 * recalled. Differences from the source: none.
 *
 * @param lowPercent the low end of the range of the next factor, in % air
 * @param highPercent its high end, in % air
 * @param card the factor as it would be reported now, in % air
 * @param cardAtLow the factor as it would be reported with a next trial at the low end, in % air
 * @param cardAtHigh the factor as it would be reported with a next trial at the high end, in % air
 * @param probabilityOfChange the probability that the reported factor would be another one
 */
public record NextTrial(
        double lowPercent,
        double highPercent,
        BigDecimal card,
        BigDecimal cardAtLow,
        BigDecimal cardAtHigh,
        double probabilityOfChange) {
    public NextTrial {
        Require.within("lowPercent", lowPercent, -Double.MAX_VALUE, highPercent);
        Require.finite("highPercent", highPercent);
        Require.within("probabilityOfChange", probabilityOfChange, 0, 1);
    }

    static NextTrial of(Summary trials, Scatter scatter, RoundingRule rounding) {
        int n = trials.count();
        double mean = trials.mean();
        StudentT t = new StudentT(scatter.degreesOfFreedom());
        double deviation = scatter.standardDeviationPercent() * Math.sqrt(1 + 1.0 / n);
        double reach = t.coverageFactor(Scatter.CONFIDENCE) * deviation;
        BigDecimal card = rounding.round(mean);
        double half = rounding.step().doubleValue() / 2;
        // The next factor that would bring the mean to the end of what is rounded to the card's factor.
        double up = (n + 1) * (card.doubleValue() + half - mean);
        double down = (n + 1) * (mean - card.doubleValue() + half);
        double change = t.upperTail(Math.max(0, up) / deviation) + t.upperTail(Math.max(0, down) / deviation);
        return new NextTrial(
                mean - reach,
                mean + reach,
                card,
                rounding.round(mean - reach / (n + 1)),
                rounding.round(mean + reach / (n + 1)),
                Math.min(1, change));
    }

    /** Returns whether the reported factor stays as it is over the whole range of the next trial. */
    public boolean leavesTheCard() {
        return cardAtLow.compareTo(card) == 0 && cardAtHigh.compareTo(card) == 0;
    }
}
