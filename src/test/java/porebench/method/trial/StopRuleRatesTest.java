package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.statistics.summary.Summary;

/** How often the risks of a plan come true, measured with fixed seeds. */
class StopRuleRatesTest {
    private static final Profile PROFILE = Profiles.standard();
    private static final double WANTED = 0.05;

    /**
     * What is said of a plan is true of many plans: true scatters from everywhere between 0.02 and 0.4 %, none likelier than
     * another by its order of magnitude, a pooled deviation of 12 degrees drawn from each. Chance leaves four standard
     * deviations, 4 sqrt(0.25 / 10000) = 0.02.
     */
    @Test
    void itsRisksComeTrueAsOftenAsTheySay() {
        SplittableRandom random = new SplittableRandom(4);
        int plans = 0;
        double saidTooFew = 0;
        double saidLess = 0;
        int tooFew = 0;
        int less = 0;
        while (plans < 10_000) {
            double sigma = 0.02 * Math.pow(20, random.nextDouble());
            double squares = 0;
            for (int i = 0; i < 12; i++) {
                squares += Math.pow(sigma * normal(random), 2);
            }
            Summary four = Summary.of(0.4, 0.4, 0.4, 0.4);
            Scatter scatter = new Scatter(Scatter.Basis.LABORATORY, Math.sqrt(squares / 12), 9, 4, 0.0475, false);
            StopRule stop = StopRule.of(four, Optional.of(scatter), PROFILE);
            if (stop.verdict() == StopRule.Advice.OUT_OF_REACH || stop.trialsInAll() < 6) {
                continue;
            }
            int n = stop.trialsInAll();
            StopRule.Risks risks = stop.risks().orElseThrow();
            plans++;
            saidTooFew += risks.tooFew();
            saidLess += risks.oneLessWouldDo().orElseThrow();
            tooFew += 1.959964 * sigma / Math.sqrt(n) > WANTED ? 1 : 0;
            less += 1.959964 * sigma / Math.sqrt(n - 1) <= WANTED ? 1 : 0;
        }
        assertThat(tooFew / 10_000.0).isCloseTo(saidTooFew / plans, offset(0.02));
        assertThat(less / 10_000.0).isCloseTo(saidLess / plans, offset(0.02));
    }

    private static double normal(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
