package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.trial.Readings;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.Stamp;
import porebench.record.book.Version;

/** Which trials count, and which mixes are the same in the bowl. */
class JudgedTrialTest {
    private static JudgedTrial judged(Trial trial) {
        return JudgedTrial.of(
                new Version<>(trial, 1, new Stamp("R. Vale", Instant.EPOCH, "for a test")),
                Optional.empty(),
                Optional.empty(),
                Profiles.standard());
    }

    private static Trial leaking(Trial trial) {
        Readings read = trial.readings();
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                trial.testedAt(),
                trial.operator(),
                trial.meterId(),
                new Readings(
                        read.meterType(),
                        read.bowl(),
                        read.fine(),
                        read.coarse(),
                        read.soakMinutes(),
                        read.waterCelsius(),
                        read.withdrawal(),
                        read.gaugePercent(),
                        read.h1Percent(),
                        read.h2Percent(),
                        true),
                trial.remarks(),
                trial.keptBecause(),
                trial.struckBecause(),
                Optional.empty(),
                false);
    }

    @Test
    void aTrialIsVoidByItsReadingsAndStruckByAPerson() {
        Trial trial = Samples.trial("T-1", "M-1", "M-1/1", "5.4");
        assertThat(judged(trial).isVoid()).isFalse();
        assertThat(judged(trial).counts()).isTrue();
        assertThat(judged(trial.struck("spilled")).isVoid()).isFalse();
        assertThat(judged(trial.struck("spilled")).counts()).isFalse();
        assertThat(judged(leaking(trial)).isVoid()).isTrue();
        assertThat(judged(leaking(trial)).counts()).isFalse();
    }

    @Test
    void whatVoidsATrialIsNoDoubt() {
        JudgedTrial leaking = judged(leaking(Samples.trial("T-1", "M-1", "M-1/1", "5.4")));
        assertThat(leaking.figures().problems()).extracting(Problem::code).contains("trial.leak");
        assertThat(leaking.doubts()).noneMatch(Problem::isError);
        assertThat(leaking.doubts()).extracting(Problem::code).doesNotContain("trial.leak");
    }

    /** A batch of a small mixer, 10 L: the same volume may differ in the ninth digit, by the arithmetic of its units. */
    @ParameterizedTest
    @CsvSource({"10, true", "10.000000005, true", "10.00000005, false", "10.1, false"})
    void aBatchIsTheSameWhenItsVolumeIsTheSame(String litres, boolean expected) {
        assertThat(ofLitres("10").hasSameAggregatesAs(ofLitres(litres))).isEqualTo(expected);
    }

    private static MixDesign ofLitres(String litres) {
        MixDesign plain = Samples.mix(
                "M-1",
                Samples.constituent("Sand", Role.FINE, "S-1", "7"),
                Samples.constituent("Stone", Role.COARSE, "S-2", "10.5"));
        Batch batch = plain.batch();
        return new MixDesign(
                plain.id(),
                plain.title(),
                new Batch(
                        batch.constituents(),
                        new BatchVolume.Stated(Typed.of(litres, VolumeUnit.LITRE)),
                        batch.targetAirPercent(),
                        batch.wetSieved()),
                plain.soakMinutes(),
                plain.airTolerancePercent(),
                plain.profileId(),
                plain.remarks(),
                Optional.empty());
    }
}
