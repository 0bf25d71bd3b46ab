package porebench.evidence.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.method.Problem;
import porebench.record.Samples;

/** What says nothing about the pore air of any source is left out, and nothing is forecast from it. */
class ForecastTrialsTest {
    @TempDir
    Path folder;

    @Test
    void aDeterminationInWhichNoTrialCountsSaysNothing() {
        ForecastTrials gathered = new ForecastTrials();
        gathered.add(Samples.mix("M-1", "S-1", "S-2"), "M-1/1", List.of());
        assertThat(gathered.forecast().value()).isEmpty();
        assertThat(gathered.forecast().problems()).extracting(Problem::code).containsExactly("forecast.no-trials");
    }

    @Test
    void trialsOfAMixWithoutAggregateSayNothing() {
        try (Bench bench = new Bench(folder)) {
            ForecastTrials gathered = new ForecastTrials();
            gathered.add(
                    Samples.mix("M-1"),
                    "M-1/1",
                    bench.evidence().determinations().get(0).trials());
            assertThat(gathered.forecast().value()).isEmpty();
            assertThat(gathered.forecast().problems()).extracting(Problem::code).containsExactly("forecast.no-trials");
        }
    }
}
