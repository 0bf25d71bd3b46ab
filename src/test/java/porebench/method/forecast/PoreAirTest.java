package porebench.method.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.quantity.Mass;
import porebench.quantity.Volume;

/** What is told of a forecast, and what is refused. */
class PoreAirTest {
    /** 0.1 % over the root of 12. */
    private static final double DIAL = 0.0288675;

    private static final double[] MIX = {0.02, -0.03, 0.01, 0.03, -0.02, -0.01, 0.02, -0.02, 0.01};

    private final TestedBowls.Builder tested = new TestedBowls.Builder();
    private int mixes;

    private static Bowlful bowl(Object... held) {
        Map<String, Mass> masses = new HashMap<>();
        for (int i = 0; i < held.length; i += 2) {
            masses.put((String) held[i], new Mass(((Number) held[i + 1]).doubleValue()));
        }
        return new Bowlful(masses, new Volume(0.007));
    }

    /** Adds a mix whose sand has 2 mL/kg and whose stones have 3, and something of its own. */
    private void mix(Object... held) {
        double factor = MIX[mixes % MIX.length];
        for (int i = 0; i < held.length; i += 2) {
            double air = ((String) held[i]).startsWith("sand") ? 2 : 3;
            factor += air * ((Number) held[i + 1]).doubleValue() / 70;
        }
        mixes++;
        tested.add("M-" + mixes, "M-" + mixes + "/1", bowl(held), factor, factor + 0.05, factor - 0.04);
    }

    private void usualMixes() {
        mix("sand", 4.2, "stone", 7.9);
        mix("sand", 5.4, "stone", 6.9);
        mix("sand", 4.8, "stone", 7.2);
        mix("sand", 4.4, "other stone", 7.6);
        mix("sand", 5.6, "other stone", 6.8);
        mix("sand", 5.0, "other stone", 7.3);
    }

    private PoreAir air() {
        return PoreAir.of(tested.build(), DIAL).value().orElseThrow();
    }

    private static List<String> codes(Answer<?> answer) {
        return answer.problems().stream().map(Problem::code).toList();
    }

    @Test
    void withoutAnyTrialThereIsNoForecast() {
        assertThat(codes(PoreAir.of(tested.build(), DIAL))).containsExactly("forecast.no-trials");
    }

    @Test
    void asManyMixesAsSourcesAreTooFew() {
        mix("sand", 4.2, "stone", 7.9);
        mix("sand", 5.4, "stone", 6.9);
        Answer<PoreAir> two = PoreAir.of(tested.build(), DIAL);
        assertThat(codes(two)).containsExactly("forecast.too-few-mixes");
        assertThat(two.problems().get(0).values()).containsExactly(2, 2, 2);
        mix("sand", 4.8, "stone", 7.2);
        assertThat(PoreAir.of(tested.build(), DIAL).value()).isPresent();
    }

    /**
     * By pencil: three mixes of two trials of 0.4 % each, all of 7 kg in 7 L. Nothing scatters, so that each trial may be off by the
     * dial's 0.0288675 alone: the variance of a further determination of two trials is 0.0288675^2 (1 / 2 + 1 / 6), its root 0.0235702,
     * and with 6 - 1 degrees of freedom t is 2.5706 in published tables (recalled).
     */
    @Test
    void trialsThatStoodStillMayBeOffByTheDial() {
        tested.add("M-1", "1", bowl("sand", 7), 0.4, 0.4);
        tested.add("M-2", "1", bowl("sand", 7), 0.4, 0.4);
        tested.add("M-3", "1", bowl("sand", 7), 0.4, 0.4);
        Forecast forecast = air().forecast(bowl("sand", 7), 2).value().orElseThrow();
        assertThat(forecast.percent()).isCloseTo(0.4, within(1e-9));
        assertThat(forecast.highPercent() - 0.4).isCloseTo(2.5706 * 0.0235702, within(1e-5));
    }

    /** Trials that scatter by less than the dial, about mixes that differ: the dial's share stands in the place of theirs. */
    @Test
    void trialsThatNearlyStoodStillScatterAsTheDialDoes() {
        for (int mix = 0; mix < 5; mix++) {
            double factor = 0.4 + MIX[mix];
            tested.add("M-" + mix, "1", bowl("sand", 7), factor, factor + 0.001);
        }
        PoreAir air = air();
        assertThat(air.variances().value()).isCloseTo(DIAL * DIAL, within(1e-12));
        assertThat(air.variances().group()).isPositive();
        Forecast forecast = air.forecast(bowl("sand", 7), 2).value().orElseThrow();
        assertThat(forecast.degreesOfFreedom()).isBetween(4.0, 9.0);
        TestedBowls.Builder single = new TestedBowls.Builder();
        for (int mix = 0; mix < 5; mix++) {
            single.add("M-" + mix, "1", bowl("sand", 7), 0.4 + 0.001 * mix);
        }
        assertThat(PoreAir.of(single.build(), DIAL)
                        .value()
                        .orElseThrow()
                        .variances()
                        .group())
                .isCloseTo(DIAL * DIAL, within(1e-12));
    }

    @Test
    void withinWhatWasTestedNothingIsDoubted() {
        usualMixes();
        Answer<Forecast> inside = air().forecast(bowl("sand", 4.9, "stone", 7.3), 3);
        assertThat(inside.problems()).isEmpty();
        Forecast forecast = inside.value().orElseThrow();
        assertThat(forecast.extrapolates()).isFalse();
        assertThat(forecast.trials()).isEqualTo(3);
        // By the shares that were put in: 2 * 4.9 / 70 + 3 * 7.3 / 70.
        assertThat(forecast.percent()).isCloseTo(0.453, within(0.03));
        assertThat(forecast.lowPercent()).isLessThan(forecast.percent());
        assertThat(forecast.parts().values().stream().mapToDouble(part -> part).sum())
                .isCloseTo(forecast.percent(), within(1e-9));
        assertThat(forecast.pull()).isPresent();
        assertThat(forecast.pull().get().mix()).startsWith("M-");
    }

    @Test
    void aStoneThatWasNeverInTheBowlIsRefused() {
        usualMixes();
        Answer<Forecast> never = air().forecast(bowl("sand", 5, "new stone", 7), 3);
        assertThat(never.value()).isEmpty();
        assertThat(never.problems().get(0).code()).isEqualTo("forecast.source-never-tested");
        assertThat(never.problems().get(0).values()).containsExactly("new stone");
    }

    @Test
    void aBowlWithoutAggregateIsRefused() {
        usualMixes();
        assertThat(codes(air().forecast(bowl(), 3))).containsExactly("forecast.no-aggregate");
    }

    @Test
    void moreOrLessOfASourceThanWasTestedIsSaid() {
        usualMixes();
        Answer<Forecast> more = air().forecast(bowl("sand", 6.72, "stone", 6.5), 3);
        assertThat(codes(more)).contains("forecast.more-than-tested", "forecast.less-than-tested");
        assertThat(more.value().orElseThrow().extrapolates()).isTrue();
        // 6.72 of at most 5.6 kg of sand are a fifth more.
        Problem sand = more.problems().stream()
                .filter(problem -> problem.code().equals("forecast.more-than-tested"))
                .findFirst()
                .orElseThrow();
        assertThat((double) sand.values().get(1)).isCloseTo(20, within(1e-9));
    }

    @Test
    void aHundredthBeyondIsNotWorthAWord() {
        usualMixes();
        assertThat(codes(air().forecast(bowl("sand", 5.63, "other stone", 6.82), 3)))
                .doesNotContain("forecast.more-than-tested");
    }

    @Test
    void aProportionThatNoMixComesNearIsSaidThoughEachSourceLiesWithin() {
        mix("sand", 4, "sand two", 1, "stone", 7);
        mix("sand", 1, "sand two", 4, "stone", 7.2);
        mix("sand", 3, "sand two", 2, "stone", 7.1);
        mix("sand", 2, "sand two", 3, "stone", 6.7);
        mix("sand", 2.5, "sand two", 2.5, "stone", 7);
        mix("sand", 3.5, "sand two", 1.5, "stone", 6.8);
        mix("sand", 1.5, "sand two", 3.5, "stone", 7.1);
        Answer<Forecast> apart = air().forecast(bowl("sand", 4, "sand two", 4, "stone", 7), 3);
        assertThat(codes(apart)).doesNotContain("forecast.more-than-tested");
        assertThat(codes(apart)).contains("forecast.outside-together");
        assertThat(apart.value().orElseThrow().extrapolates()).isTrue();
    }

    @Test
    void sourcesAlwaysInOneProportionAreForecastInThatOneOnly() {
        for (double sand : new double[] {4, 4.4, 4.8, 5.2, 5.6}) {
            mix("sand", sand, "stone", sand * 1.5);
        }
        PoreAir air = air();
        SourceAir stone = air.sources().stream()
                .filter(source -> source.source().equals("stone"))
                .findFirst()
                .orElseThrow();
        assertThat(stone.isSeparable()).isFalse();
        assertThat(stone.millilitresPerKilogram()).isEmpty();
        assertThat(stone.standardError()).isEmpty();
        assertThat(stone.together()).containsExactly("sand");
        assertThat(air.covariance("sand", "stone")).isEmpty();
        Answer<Forecast> same = air.forecast(bowl("sand", 5, "stone", 7.5), 3);
        assertThat(codes(same)).contains("forecast.always-together");
        assertThat(same.value().orElseThrow().percent()).isCloseTo((2 * 5 + 3 * 7.5) / 70, within(0.03));
        Answer<Forecast> other = air.forecast(bowl("sand", 5.5, "stone", 7), 3);
        assertThat(codes(other)).containsExactly("forecast.not-told");
        assertThat(other.problems().get(0).values()).containsExactly("sand, stone");
    }

    @Test
    void sourcesInNearlyOneProportionAreKnownPoorlyAndSayIt() {
        double[] ratio = {1.45, 1.55, 1.5, 1.47, 1.53, 1.5};
        for (int i = 0; i < ratio.length; i++) {
            mix("sand", 4.5 + 0.1 * i, "stone", (4.5 + 0.1 * i) * ratio[i]);
        }
        PoreAir air = air();
        assertThat(air.sources())
                .noneMatch(SourceAir::isSeparable)
                .allMatch(source -> source.millilitresPerKilogram().isPresent());
        assertThat(codes(air.forecast(bowl("sand", 4.7, "stone", 7.05), 3))).contains("forecast.nearly-together");
    }

    @Test
    void aSourceOfOneMixIsNamedWithIt() {
        usualMixes();
        mix("sand", 5, "rare stone", 7.2);
        Answer<Forecast> rare = air().forecast(bowl("sand", 5, "rare stone", 7.2), 3);
        Problem problem = rare.problems().stream()
                .filter(one -> one.code().equals("forecast.source-in-one-mix"))
                .findFirst()
                .orElseThrow();
        assertThat(problem.values()).containsExactly("rare stone", "M-7");
        // No other mix tells anything of that one.
        assertThat(air().compared().get(6).forecastPercent()).isEmpty();
        assertThat(air().compared().get(0).forecastPercent()).isPresent();
    }

    @Test
    void aMixThatTheForecastRestsOnIsNamed() {
        usualMixes();
        mix("sand", 5, "rare stone", 7.2);
        tested.add("M-8", "M-8/1", bowl("sand", 5, "rare stone", 6.0), 0.9, 0.95);
        Answer<Forecast> rare = air().forecast(bowl("sand", 5, "rare stone", 7.2), 3);
        assertThat(codes(rare)).contains("forecast.rests-on-one");
    }

    @Test
    void fewMixesBeyondTheSourcesAreSaid() {
        mix("sand", 4.2, "stone", 7.9);
        mix("sand", 5.4, "stone", 6.9);
        mix("sand", 4.8, "stone", 7.2);
        Answer<Forecast> few = air().forecast(bowl("sand", 4.8, "stone", 7.3), 3);
        assertThat(codes(few)).contains("forecast.few-degrees");
        assertThat(few.problems().stream()
                        .filter(one -> one.code().equals("forecast.few-degrees"))
                        .findFirst()
                        .map(Problem::values))
                .isEqualTo(Optional.of(List.of(3, 2)));
    }

    @Test
    void poresWithLessThanNoAirCountAsNone() {
        double[] sand = {4.2, 5.4, 4.8, 5.6, 4.4, 5};
        for (int i = 0; i < sand.length; i++) {
            double stone = 12 - sand[i];
            double factor = 3 * stone / 70 - 1.5 * sand[i] / 70 + MIX[i] / 4;
            tested.add("M-" + i, "1", bowl("sand", sand[i], "stone", stone), factor, factor + 0.02);
        }
        PoreAir air = air();
        SourceAir none = air.sources().get(0);
        assertThat(none.source()).isEqualTo("sand");
        assertThat(none.isAtZero()).isTrue();
        assertThat(none.millilitresPerKilogram().orElseThrow()).isZero();
        assertThat(none.standardError().orElseThrow()).isPositive();
        assertThat(codes(air.forecast(bowl("sand", 5, "stone", 7), 3))).contains("forecast.at-zero");
    }

    @Test
    void severalDeterminationsOfAMixAreOneMix() {
        for (int mix = 1; mix <= 4; mix++) {
            for (int day = 1; day <= 3; day++) {
                double factor = 0.3 + MIX[mix] + 0.01 * day;
                tested.add("M-" + mix, "M-" + mix + "/" + day, bowl("sand", 7), factor, factor + 0.03);
            }
        }
        PoreAir air = air();
        assertThat(air.mixes()).isEqualTo(4);
        assertThat(air.sources().get(0).mixes()).isEqualTo(4);
        assertThat(air.variances().outer()).isPositive();
        assertThat(air.compared()).hasSize(12);
    }
}
