package porebench.evidence.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDateTime;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;
import porebench.method.simulate.Bench;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** How simulated trials stand in a sheet, and which of them a fault is planted in. */
class SimulatedSheetTest {
    private static final LocalDateTime EIGHT = LocalDateTime.of(2026, 3, 2, 8, 0);

    /** Three a day: at 8, 9 and 10, then from 8 on the next day. */
    @Test
    void trialsFollowOneAnotherByTheHourAndGoOnTheNextDay() {
        SimulatedSheet sheet = new SimulatedSheet(
                new MixId("M-1"), new DeterminationId("M-1/1"), new MeterId("B-1"), EIGHT, 3, 42, "SIMULATED", "");
        assertThat(Bench.of(MeterType.B, 0.5).trials(5, 42).stream().map(sheet::trial))
                .extracting(Trial::id, Trial::testedAt, Trial::simulated)
                .containsExactly(
                        tuple(new TrialId("SIM-42-001"), EIGHT, true),
                        tuple(new TrialId("SIM-42-002"), EIGHT.plusHours(1), true),
                        tuple(new TrialId("SIM-42-003"), EIGHT.plusHours(2), true),
                        tuple(new TrialId("SIM-42-004"), EIGHT.plusDays(1), true),
                        tuple(new TrialId("SIM-42-005"), EIGHT.plusDays(1).plusHours(1), true));
    }

    /** Whoever knows where one seed plants its faults knows nothing of another: these five differ in few of their bits. */
    @Test
    void everySeedPlantsItsFaultsInTrialsOfItsOwn() {
        assertThat(Stream.of(2L, 16L, 18L, 128L, 130L)
                        .map(seed -> Planted.draw(20, 5, seed))
                        .distinct())
                .hasSize(5);
    }
}
