package porebench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class UsedReasonsTest {
    private final Settings settings = Settings.inMemory();
    private final UsedReasons reasons = new UsedReasons(settings);

    @Test
    void thereAreNoneBeforeOneIsGiven() {
        assertThat(reasons.of("Strike")).isEmpty();
    }

    @Test
    void theNewestStandsFirstAndEachOnce() {
        reasons.use("Strike", "leak at the gasket");
        reasons.use("Strike", "  foam on the water ");
        reasons.use("Strike", "leak at the gasket");
        assertThat(reasons.of("Strike")).containsExactly("leak at the gasket", "foam on the water");
        assertThat(new UsedReasons(settings).of("Strike")).hasSize(2);
    }

    @Test
    void anotherActHasItsOwn() {
        reasons.use("Strike", "leak at the gasket");
        assertThat(reasons.of("Issue")).isEmpty();
    }

    /** Twelve of at most 600 letters fit into what is remembered under one key, 8000 letters. */
    @Test
    void onlyTheLastTwelveAreKeptAndNoLongOne() {
        IntStream.range(0, 20).forEach(each -> reasons.use("Strike", "reason " + each));
        assertThat(reasons.of("Strike")).hasSize(12).startsWith("reason 19").endsWith("reason 8");
        reasons.use("Strike", "x".repeat(601));
        reasons.use("Strike", " ");
        reasons.use("Strike", "a\u001eb");
        assertThat(reasons.of("Strike")).startsWith("reason 19");
        reasons.use("Strike", "x".repeat(600));
        assertThat(reasons.of("Strike").get(0)).hasSize(600);
    }
}
