package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.method.trial.KnownFactor;
import porebench.method.trial.NextDetermination;
import porebench.record.Determination;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.SourceId;
import porebench.statistics.Judged;
import porebench.statistics.comparison.BetweenSets;
import porebench.statistics.comparison.EqualScatterTest;

/** By pencil, on a balanced set, where restricted likelihood and the analysis of variance are the same. */
class LaboratoryMeansHandTest {
    private static final Stamp STAMP = new Stamp("R. Vale", Instant.EPOCH, "bench");
    private static final Profile PROFILE = Profiles.standard();
    private static final Map<SourceId, Integer> SAME = Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 1);
    private static final double DIVISION = 0.1;

    /** A determination of trials read 0.1 below and 0.1 above some mean. */
    private static JudgedDetermination determination(
            String mix, int number, double gauge, Map<SourceId, Integer> sources) {
        String id = mix + "/" + number;
        List<JudgedTrial> trials = new ArrayList<>();
        for (double read : new double[] {gauge - 0.1, gauge + 0.1}) {
            Trial trial = Samples.trial(id + "/" + trials.size(), mix, id, String.format(Locale.ROOT, "%.1f", read));
            trials.add(JudgedTrial.of(new Version<>(trial, 1, STAMP), Optional.empty(), Optional.empty(), PROFILE));
        }
        Determination one = Samples.determination(id, mix).madeWith(sources);
        return JudgedDetermination.of(new Version<>(one, 1, STAMP), trials, DIVISION, PROFILE);
    }

    /** Three mixes of the same sources, two determinations each, 0.4 apart; the mixes 0.4 apart. */
    private static List<JudgedDetermination> laboratory() {
        List<JudgedDetermination> all = new ArrayList<>();
        for (int mix = 0; mix < 3; mix++) {
            all.add(determination("M-" + (mix + 1), 1, 5.3 + 0.4 * mix, SAME));
            all.add(determination("M-" + (mix + 1), 2, 5.7 + 0.4 * mix, SAME));
        }
        return all;
    }

    private static double mean(JudgedDetermination judged) {
        return judged.summary().orElseThrow().summary().mean();
    }

    /**
     * Mean squares: trials 0.02; determinations 2 x 2 x 0.2^2 = 0.16; mixes 4 x 2 x 0.4^2 / 2 = 0.64. Variances 0.02, (0.16 - 0.02) / 2 =
     * 0.07 and (0.64 - 0.16) / 4 = 0.12. Take the first mean for 0. Its fellow says 0.4 with 0.07 + 0.01 = 0.08. The other mixes, 0.6 and
     * 1.0, are known with 0.08 / 2 + 0.12 = 0.16 each, so together 0.8 with 0.08, of this mix with 0.08 + 0.12 = 0.2. Both: (0.4 / 0.08 +
     * 0.8 / 0.2) / (12.5 + 5) = 0.514286 with 1 / 17.5 = 0.057143. Own: 0 with 0.01 against that with 0.127143: share 0.927083, mean
     * 0.0375.
     */
    @Test
    void drawsAFactorTowardsTheOthers() {
        List<JudgedDetermination> all = laboratory();
        double first = mean(all.get(0));
        KnownFactor known = LaboratoryScatter.ofDeterminations(all)
                .known(all.get(0), DIVISION, PROFILE)
                .orElseThrow();
        assertThat(known.betweenDeterminationsPercent().orElseThrow()).isCloseTo(Math.sqrt(0.07), within(1e-5));
        assertThat(known.betweenMixesPercent().orElseThrow()).isCloseTo(Math.sqrt(0.12), within(1e-5));
        assertThat(known.betweenSourcesPercent()).isEmpty();
        assertThat(known.aroundPercent()).isCloseTo(first + 0.514286, within(1e-5));
        assertThat(known.ownShare()).isCloseTo(0.927083, within(1e-5));
        assertThat(known.meanPercent()).isCloseTo(first + 0.0375, within(1e-5));
        assertThat(known.card()).isEqualTo(PROFILE.factorRounding().round(first + 0.0375));
        assertThat(known.others()).isEqualTo(5);
        assertThat(known.sameMix()).isEqualTo(1);
    }

    /** What was made of another version of a source is another mix. */
    @Test
    void keepsWhatWasMadeOfAChangedSourceApart() {
        List<JudgedDetermination> all = laboratory();
        all.set(1, determination("M-1", 2, 5.7, Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 2)));
        assertThat(LaboratoryScatter.ofDeterminations(all)
                        .known(all.get(0), DIVISION, PROFILE)
                        .orElseThrow()
                        .sameMix())
                .isZero();
    }

    @Test
    void threeOthersAreTheFewest() {
        List<JudgedDetermination> all = laboratory();
        assertThat(LaboratoryScatter.ofDeterminations(all.subList(0, 4)).known(all.get(0), DIVISION, PROFILE))
                .isPresent();
        assertThat(LaboratoryScatter.ofDeterminations(all.subList(0, 3)).known(all.get(0), DIVISION, PROFILE))
                .isEmpty();
        assertThat(LaboratoryScatter.ofDeterminations(all.subList(1, 6)).known(all.get(0), DIVISION, PROFILE))
                .isEmpty();
    }

    /** Means 0, 0.4 and 0.8 above the first: mean 0.4, s 0.4; t(2) 4.303, sqrt(4/3): 1.9875. */
    @Test
    void expectsTheNextDeterminationWhereTheMixLies() {
        List<JudgedDetermination> all = laboratory();
        assertThat(LaboratoryScatter.ofDeterminations(all).next(all.get(0), DIVISION))
                .isEmpty();
        all.add(determination("M-1", 3, 6.1, SAME));
        NextDetermination next = LaboratoryScatter.ofDeterminations(all)
                .next(all.get(0), DIVISION)
                .orElseThrow();
        assertThat(next.determinations()).isEqualTo(3);
        assertThat(next.highPercent()).isCloseTo(mean(all.get(0)) + 0.4 + 1.9875, within(1e-3));
    }

    /**
     * One mix alone, means 0.4, 0.5, 0.3 and 0.7 of trials with variance 0.02: nothing to draw that towards. Between determinations (2 x
     * 0.0875 / 3 - 0.02) / 2 = 0.0191667; the others say 0.4 with 0.0291667 / 3 + 0.0191667 = 0.0288889; own 0.01: share 0.742857.
     */
    @Test
    void aMixAloneKeepsItsOwnScatter() {
        List<JudgedDetermination> all = new ArrayList<>();
        double[] gauges = {5.4, 5.5, 5.3, 5.7};
        for (int i = 0; i < gauges.length; i++) {
            all.add(determination("M-1", i + 1, gauges[i], SAME));
        }
        KnownFactor known = LaboratoryScatter.ofDeterminations(all)
                .known(all.get(3), DIVISION, PROFILE)
                .orElseThrow();
        assertThat(known.ownShare()).isCloseTo(0.742857, within(1e-5));
        assertThat(known.meanPercent()).isCloseTo(mean(all.get(3)) - 0.3 * (1 - 0.742857), within(1e-5));
        assertThat(known.betweenMixesPercent()).isEmpty();
    }

    /** A struck trial far off changes nothing. */
    @Test
    void onlyTrialsThatCountCount() {
        List<JudgedDetermination> all = laboratory();
        JudgedDetermination second = all.get(1);
        Trial struck = Samples.trial("struck", "M-1", "M-1/2", "7.5").struck("spilled");
        List<JudgedTrial> trials = new ArrayList<>(second.trials());
        trials.add(JudgedTrial.of(new Version<>(struck, 1, STAMP), Optional.empty(), Optional.empty(), PROFILE));
        all.set(1, JudgedDetermination.of(second.determination(), trials, DIVISION, PROFILE));
        KnownFactor known = LaboratoryScatter.ofDeterminations(all)
                .known(all.get(0), DIVISION, PROFILE)
                .orElseThrow();
        assertThat(known.others()).isEqualTo(5);
        assertThat(known.meanPercent()).isCloseTo(mean(all.get(0)) + 0.0375, within(1e-5));
    }

    /**
     * The mixes scatter alike. On a scale divided to 0.25 the scatter, the root of 0.02 - 0.25^2 / 12, is just enough for one reading, and
     * would be too little for the difference of two.
     */
    @Test
    void mixesAreComparedOnTheScaleOfTheirMeter() {
        LaboratoryScatter laboratory = LaboratoryScatter.ofDeterminations(laboratory());
        EqualScatterTest alike =
                laboratory.equalScatter(MeterType.B, 0.25).meaningful().orElseThrow();
        assertThat(alike.statistic()).isCloseTo(0, within(1e-9));
        assertThat(alike.p()).isEqualTo(1);
        assertThat(laboratory.equalScatter(MeterType.A, 0.25).whyWithheld()).contains(Judged.Reason.TOO_FEW);
    }

    /**
     * By pencil: six determinations of two trials 0.1 to either side, s^2 = 0.02 within; within a mix two means 0.4 apart, a mean square of
     * 2 x 0.08 = 0.16. Between determinations (0.16 - 0.02) / 2 = 0.07, its root 0.2645751. Of three degrees of freedom nothing is
     * said; of six mixes there are six, times (0.07 / (0.07 + 0.01))^2 = 4.59375.
     */
    @Test
    void saysWhatDeterminationsDifferByOnceFiveDegreesOfFreedomShowIt() {
        List<JudgedDetermination> all = new ArrayList<>(laboratory());
        assertThat(LaboratoryScatter.ofDeterminations(all).betweenDeterminations(MeterType.B))
                .isEmpty();
        for (int mix = 3; mix < 6; mix++) {
            all.add(determination("M-" + (mix + 1), 1, 5.3 + 0.4 * mix, SAME));
            all.add(determination("M-" + (mix + 1), 2, 5.7 + 0.4 * mix, SAME));
        }
        BetweenSets found = LaboratoryScatter.ofDeterminations(all)
                .betweenDeterminations(MeterType.B)
                .orElseThrow();
        assertThat(found.standardDeviation()).isCloseTo(0.2645751, within(1e-4));
        assertThat(found.degreesOfFreedom()).isCloseTo(4.59375, within(1e-3));
        assertThat(LaboratoryScatter.ofDeterminations(all).betweenDeterminations(MeterType.A))
                .isEmpty();
    }
}
