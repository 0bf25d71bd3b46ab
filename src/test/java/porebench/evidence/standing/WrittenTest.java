package porebench.evidence.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import porebench.evidence.CountedTrials;
import porebench.evidence.InTheBowl;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.record.Samples;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/** What is kept beside the entries is a text, and the same thing again when it is read. */
class WrittenTest {
    private static final List<List<String>> LISTS = List.of(
            List.of(),
            List.of(""),
            List.of("", ""),
            List.of("\\0"),
            List.of("a\tb", "c\\td", "\\", "\\\\t"),
            List.of(Samples.AWKWARD_NOTE, Joined.of(List.of("x", "\t"))));

    @Test
    void textsJoinedAreTheSameWhenParted() {
        for (List<String> texts : LISTS) {
            assertThat(Joined.parts(Joined.of(texts))).isEqualTo(texts);
        }
        assertThat(LISTS.stream().map(Joined::of)).doesNotHaveDuplicates();
    }

    @Test
    void aTextThatWasNotJoinedIsRefused() {
        for (String text : List.of("\\", "a\\x", "a\t\\")) {
            assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> Joined.parts(text));
        }
    }

    @Test
    void aProblemWithEverySortOfValueComesBack() {
        Problem within = Problem.warning("meter", "trial.meter-failed", "B-1\tnorth");
        Problem problem = Problem.error(
                "constituents.2.mass",
                "some.code",
                "a\ttext \\ with\nall",
                3,
                4_000_000_000L,
                0.1 + 0.2,
                new BigDecimal("0.40"),
                new Problem.Word("trial"),
                new Problem.Clause("6.2"),
                Instant.parse("2026-03-02T12:00:00.123Z"),
                within);
        assertThat(WrittenProblem.read(WrittenProblem.of(problem))).isEqualTo(problem);
        assertThat(WrittenProblem.read(WrittenProblem.of(within))).isEqualTo(within);
    }

    @Test
    void aValueThatCannotBeWrittenIsRefusedRatherThanLost() {
        Problem strange = Problem.error("field", "code", List.of("a list"));
        assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> WrittenProblem.of(strange));
        assertThatExceptionOfType(RuntimeException.class)
                .isThrownBy(() -> WrittenProblem.read("ERROR\tSTATED\tf\tc\tqx"));
    }

    @Test
    void trialsComeBackToTheLastBit() {
        CountedTrials some = new CountedTrials(
                new DeterminationId("M-1/1"),
                new MixId("M-1"),
                3,
                Map.of(new SourceId("S 1"), 2, new SourceId("S-2"), 11),
                List.of(MeterType.B, MeterType.A, MeterType.B),
                List.of("2026-03-02 B-1\nR. Vale", "2026-03-02 A-1\nR. Vale", "2026-03-02 B-1\nR. Vale"),
                new double[] {0.1 + 0.2, -0.0, Math.nextUp(0.5)},
                new InTheBowl(0.05, Map.of("S 1", Math.nextUp(4.9), "S-2\n[1, 2]", 0.0, "sand\t\\", 7.0)));
        CountedTrials none = new CountedTrials(
                new DeterminationId("M-1/2"),
                new MixId("M-1"),
                1,
                Map.of(),
                List.of(),
                List.of(),
                new double[0],
                InTheBowl.UNKNOWN);
        for (List<CountedTrials> trials : List.of(List.<CountedTrials>of(), List.of(some), List.of(none, some))) {
            assertThat(WrittenTrials.read(WrittenTrials.of(trials))).isEqualTo(trials);
        }
    }

    @Test
    void trialsWithoutAnOccasionEachAreRefused() {
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> new CountedTrials(
                        new DeterminationId("M-1/1"),
                        new MixId("M-1"),
                        1,
                        Map.of(),
                        List.of(MeterType.B),
                        List.of(),
                        new double[] {0.4},
                        InTheBowl.UNKNOWN))
                .withMessageContaining("1 factors");
    }
}
