package porebench.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SlackTest {
    @Test
    void whatIsEqualOnPaperIsEqualHere() {
        assertThat(5.4 - 5.3).isGreaterThan(0.1).isLessThan(Slack.over(0.1));
        assertThat(0.5 - 0.4).isLessThan(0.1).isGreaterThan(Slack.under(0.1));
        assertThat(Slack.isSame(0.1 + 0.2, 0.3)).isTrue();
        assertThat(Slack.isAbove(0.3 - 0.1, 0.2)).isFalse();
        assertThat(Slack.isBelow(0.3 - 0.1, 0.2)).isFalse();
        assertThat(Slack.isBelow(0.3 - 0.1 - 0.2, 0)).isFalse();
    }

    @Test
    void whatAReadingCanTellApartStaysApart() {
        assertThat(Slack.isAbove(0.1000001, 0.1)).isTrue();
        assertThat(Slack.isBelow(-0.0000001, 0)).isTrue();
        assertThat(Slack.isAbove(0.1, 0.1000001)).isFalse();
        assertThat(Slack.isSame(1.000001, 1)).isFalse();
        assertThat(Slack.isSame(1, 1.000001)).isFalse();
    }

    @Test
    void aShareOfTheLimitDoesNotDependOnTheUnit() {
        // 7 L in L and in m3: one part in 2e9 is within, one in 5e8 is not.
        for (double volume : new double[] {7, 0.007, -7}) {
            assertThat(Slack.isSame(volume * (1 + 0.5e-9), volume)).isTrue();
            assertThat(Slack.isSame(volume * (1 + 2e-9), volume)).isFalse();
            assertThat(Slack.under(volume)).isLessThan(volume);
            assertThat(Slack.over(volume)).isGreaterThan(volume);
        }
    }

    @Test
    void aNumberThatIsNoneIsTheSameAsNothing() {
        assertThat(Slack.isSame(Double.NaN, Double.NaN)).isFalse();
        assertThat(Slack.isSame(0, 0)).isTrue();
        assertThat(Slack.over(Double.POSITIVE_INFINITY)).isInfinite();
    }
}
