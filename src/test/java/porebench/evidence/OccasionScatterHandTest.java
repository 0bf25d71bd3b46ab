package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.budget.Between;
import porebench.method.profile.Profiles;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.statistics.comparison.BetweenSets;

class OccasionScatterHandTest {
    private static final Stamp STAMP = new Stamp("R. Vale", Instant.EPOCH, "bench");
    private static final Profile PROFILE = Profiles.standard();

    private static JudgedTrial trial(String determination, int day, int number, double gauge) {
        Trial plain = Samples.trial(
                determination + "/" + day + "/" + number,
                "M-1",
                determination,
                String.format(Locale.ROOT, "%.1f", gauge));
        Trial moved = new Trial(
                plain.id(),
                plain.mixId(),
                plain.determinationId(),
                plain.testedAt().plusDays(day),
                plain.operator(),
                plain.meterId(),
                plain.readings(),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
        return JudgedTrial.of(new Version<>(moved, 1, STAMP), Optional.empty(), Optional.empty(), PROFILE);
    }

    /** Two trials on each of some days, 0.2 apart, the days' means 0.2 apart, each determination 0.1 above the one before. */
    private static List<JudgedDetermination> determinations(int count, int days) {
        List<JudgedDetermination> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String id = "M-1/" + (i + 1);
            List<JudgedTrial> trials = new ArrayList<>();
            for (int day = 0; day < days; day++) {
                double low = 5.3 + 0.1 * i + 0.2 * day;
                trials.add(trial(id, day, 1, low));
                trials.add(trial(id, day, 2, low + 0.2));
            }
            all.add(JudgedDetermination.of(
                    new Version<>(Samples.determination(id, "M-1"), 1, STAMP), trials, 0.1, PROFILE));
        }
        return all;
    }

    /**
     * Six determinations on two days each. Between days in them 2 x (0.1^2 + 0.1^2) = 0.04 each, mean square 0.04 with 6 degrees of
     * freedom; within days 0.2^2 / 2 = 0.02. Variance of a day (0.04 - 0.02) / 2 = 0.01, half of 0.04 / 2, so 6 x 0.5^2 = 1.5 degrees
     * of freedom. For trials of one day 0.1, of two days alike 0.1 x sqrt(0.5).
     */
    @Test
    void findsHowDaysDiffer() {
        List<JudgedDetermination> all = determinations(6, 2);
        OccasionScatter scatter = scatter(all);
        List<JudgedTrial> both = all.get(0).trials();
        Between oneDay = scatter.of(both.subList(0, 2), MeterType.B).orElseThrow();
        assertThat(oneDay.standardUncertaintyPercent()).isEqualTo(0.1, within(1e-5));
        assertThat(oneDay.degreesOfFreedom()).isEqualTo(1.5, within(1e-3));
        assertThat(scatter.of(both, MeterType.B).orElseThrow().standardUncertaintyPercent())
                .isEqualTo(0.1 * Math.sqrt(0.5), within(1e-5));
        assertThat(scatter.of(both, MeterType.A)).isEmpty();
    }

    /** Five determinations on two days each have five degrees of freedom between their days: the fewest that are enough. */
    @Test
    void fiveDegreesOfFreedomAreEnough() {
        List<JudgedDetermination> five = determinations(5, 2);
        assertThat(scatter(five).of(five.get(0).trials(), MeterType.B)).isPresent();
    }

    /** Four degrees of freedom are too few; one day each has none. */
    @Test
    void saysNothingWhereTheBookCannotTell() {
        List<JudgedDetermination> few = determinations(4, 2);
        assertThat(scatter(few).of(few.get(0).trials(), MeterType.B)).isEmpty();
        List<JudgedDetermination> oneDay = determinations(8, 1);
        assertThat(scatter(oneDay).of(oneDay.get(0).trials(), MeterType.B)).isEmpty();
        assertThat(LaboratoryScatter.NONE.occasions().of(few.get(0).trials(), MeterType.B))
                .isEmpty();
    }

    /**
     * Five determinations of a mix have four degrees of freedom, too few to stand alone, so that days count, five times 0.5^2 = 1.25
     * degrees of freedom; but for no less than the five show: their means have a variance of 0.025, a quarter of the 0.08 / 3 within
     * them off, 0.018333, its root 0.135401.
     */
    @Test
    void daysStandForDeterminationsButForNoLessThanTheseShow() {
        BetweenSets found = LaboratoryScatter.ofDeterminations(determinations(5, 2))
                .betweenDeterminations(MeterType.B)
                .orElseThrow();
        assertThat(found.standardDeviation()).isEqualTo(0.135401, within(1e-5));
        assertThat(found.degreesOfFreedom()).isEqualTo(1.25, within(1e-3));
    }

    private static OccasionScatter scatter(List<JudgedDetermination> determinations) {
        return new OccasionScatter(
                determinations.stream().map(CountedTrials::of).toList());
    }
}
