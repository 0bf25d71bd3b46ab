package porebench.evidence.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.evidence.MeterStory;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.method.sample.Batch;
import porebench.method.simulate.Bench;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.book.Stamp;
import porebench.record.book.Version;

/** What the simulated bench takes over from the mix and from what is known of the meter. */
class PracticeBenchHandTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final MixDesign MIX = Samples.mix("M-1", "S-1", "S-2");

    /** A meter whose dial shows 5.50 for 5 % and 11.00 for 10 %. */
    private static final MeterStory STORY = MeterStory.of(
            version(Samples.meter("B-1", MeterType.B)),
            List.of(version(SampleCalibrations.dialCalibration("C-1", "B-1", DAY, "0.00", "5.50", "11.00"))),
            Profiles.standard());

    private static <T extends Kept> Version<T> version(T value) {
        return new Version<>(value, 1, new Stamp("R. Vale", Instant.EPOCH, "for a test"));
    }

    private static MixDesign withAir(String targetAirPercent) {
        Batch batch = MIX.batch();
        return mix(
                new Batch(batch.constituents(), batch.volume(), Samples.number(targetAirPercent), batch.wetSieved()));
    }

    private static MixDesign mix(Batch batch) {
        return new MixDesign(
                MIX.id(),
                MIX.title(),
                batch,
                Optional.empty(),
                Optional.empty(),
                MIX.profileId(),
                MIX.remarks(),
                Optional.empty());
    }

    private static Answer<Bench> bench(MixDesign mix, LocalDate day) {
        return PracticeBench.of(mix, STORY, day, 0.5);
    }

    @Test
    void theDialShowsWhatItsCheckInForceFound() {
        Bench bench = bench(MIX, DAY).value().orElseThrow();
        assertThat(bench.gauge().dial().readingOf(5)).isEqualTo(5.5, within(1e-9));
        Bench before = bench(MIX, DAY.minusDays(1)).value().orElseThrow();
        assertThat(before.gauge().dial().readingOf(5)).isEqualTo(5);
    }

    /** No bench withdraws more than a fifth of its bowl. */
    @Test
    void twentyPercentOfAirAreTheMost() {
        assertThat(bench(withAir("20"), DAY).value().orElseThrow().filling().airPercent())
                .isEqualTo(20);
        Answer<Bench> beyond = bench(withAir("20.1"), DAY);
        assertThat(beyond.value()).isEmpty();
        assertThat(beyond.problems()).contains(Problem.error("targetAir", "practice.air-beyond", 20.1, 20.0));
    }

    /** A filler of which nothing is weighed is doubtful: the bench is made all the same, and says so. */
    @Test
    void whatIsDoubtfulAboutTheMixIsSaid() {
        MixDesign doubtful = Samples.mix(
                "M-1",
                Samples.constituent("Sand", Role.FINE, "S-1", "700"),
                Samples.constituent("Stone", Role.COARSE, "S-2", "1050"),
                Samples.constituent("Filler", Role.FINE, "S-1", "0"));
        assertThat(bench(MIX, DAY).problems()).isEmpty();
        Answer<Bench> answer = bench(doubtful, DAY);
        assertThat(answer.value()).isPresent();
        assertThat(answer.problems()).extracting(Problem::code).containsExactly("mix.mass-zero");
    }

    /** A soak is kept by the minute; where the mix asks for none, half an hour is usual. */
    @Test
    void theSampleSoaksAsLongAsTheMixSays() {
        assertThat(bench(MIX, DAY).value().orElseThrow().filling().soakMinutes())
                .isEqualTo(30);
        MixDesign soaked = new MixDesign(
                MIX.id(),
                MIX.title(),
                MIX.batch(),
                Samples.some("12.5"),
                Optional.empty(),
                MIX.profileId(),
                MIX.remarks(),
                Optional.empty());
        assertThat(bench(soaked, DAY).value().orElseThrow().filling().soakMinutes())
                .isEqualTo(13);
    }
}
