package porebench.method.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import porebench.method.Answer;
import porebench.quantity.Mass;
import porebench.quantity.Volume;

class PoreAirHandTest {
    private static final Volume BOWL = new Volume(0.007);

    /** 0.1 % over the root of 12. */
    private static final double DIAL = 0.0288675;

    /**
     * Three mixes of one trial each, all with 7 kg of one source in 7 L: x = 100 * 7 / 7000 = 0.1. G is 0.3, 0.4, 0.5 %: their mean
     * 0.4 = 0.1 a, so a = 4 mL/kg. s^2 = (0.01 + 0 + 0.01) / 2 = 0.01; the variance of a is 0.01 / (3 * 0.01) = 1/3, its root
     * 0.57735. Of one further trial the variance is 0.01 + 0.1^2 / 3 = 0.013333, its root 0.11547; t with 2 degrees of freedom is
     * 4.3027 in published tables (recalled), so the interval is 0.4 +- 0.49683. Without the first mix the other two have the mean 0.45.
     */
    @Test
    void oneSourceOfThreeMixesIsTheirMean() {
        Bowlful bowl = new Bowlful(Map.of("S-1", new Mass(7)), BOWL);
        TestedBowls.Builder tested = new TestedBowls.Builder();
        tested.add("M-1", "M-1/1", bowl, 0.3);
        tested.add("M-2", "M-2/1", bowl, 0.4);
        tested.add("M-3", "M-3/1", bowl, 0.5);
        PoreAir air = PoreAir.of(tested.build(), DIAL).value().orElseThrow();
        SourceAir source = air.sources().get(0);
        assertThat(source.millilitresPerKilogram().orElseThrow()).isCloseTo(4, within(1e-9));
        assertThat(source.standardError().orElseThrow()).isCloseTo(0.57735, within(1e-5));
        assertThat(source.isSeparable()).isTrue();
        assertThat(air.compared().get(0).forecastPercent().orElseThrow()).isCloseTo(0.45, within(1e-9));
        assertThat(air.compared().get(0).measuredPercent()).isCloseTo(0.3, within(1e-12));
        // Left out, each mix is 0.15, 0 and 0.15 off: root of 0.045 / 3.
        assertThat(air.leftOutErrorPercent().orElseThrow()).isCloseTo(0.122474, within(1e-6));

        Forecast forecast = air.forecast(bowl, 1).value().orElseThrow();
        assertThat(forecast.percent()).isCloseTo(0.4, within(1e-9));
        assertThat(forecast.degreesOfFreedom()).isCloseTo(2, within(1e-6));
        assertThat(forecast.highPercent() - forecast.percent()).isCloseTo(0.49683, within(1e-5));
        assertThat(forecast.percent() - forecast.lowPercent()).isCloseTo(0.49683, within(1e-5));
        assertThat(forecast.parts().get("S-1")).isCloseTo(0.4, within(1e-9));
        assertThat(forecast.extrapolates()).isFalse();
    }

    /** The bowl does not matter: 3.5 kg in 3.5 L fill it as 7 kg do 7 L. */
    @Test
    void aSmallerBowlWithAsMuchInProportionIsTheSame() {
        TestedBowls.Builder tested = new TestedBowls.Builder();
        for (int mix = 1; mix <= 4; mix++) {
            tested.add("M-" + mix, "d", new Bowlful(Map.of("S-1", new Mass(7)), BOWL), 0.3 + 0.1 * (mix % 2), 0.4);
        }
        PoreAir air = PoreAir.of(tested.build(), DIAL).value().orElseThrow();
        Bowlful small = new Bowlful(Map.of("S-1", new Mass(3.5)), new Volume(0.0035));
        Answer<Forecast> one = air.forecast(small, 3);
        Answer<Forecast> other = air.forecast(new Bowlful(Map.of("S-1", new Mass(7)), BOWL), 3);
        assertThat(one.value().orElseThrow().percent())
                .isCloseTo(other.value().orElseThrow().percent(), within(1e-12));
    }
}
