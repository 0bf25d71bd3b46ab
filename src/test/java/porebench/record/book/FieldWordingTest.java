package porebench.record.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.SampleReadings;
import porebench.record.id.MixId;
import porebench.record.id.ReadingId;

/** Every text of a field reading is looked at: a mark that nobody sees is refused under the field in which it stands. */
class FieldWordingTest {
    /** A right-to-left override. */
    private static final String UNSEEN = "a\u202Eb";

    private static FieldReading reading(String id, String truck, String remarks, String kept, String struck) {
        return new FieldReading(
                new ReadingId(id),
                new MixId("M-1"),
                SampleReadings.AT,
                truck,
                Optional.empty(),
                new BigDecimal("5.5"),
                Optional.empty(),
                Optional.empty(),
                remarks,
                Optional.of(kept),
                Optional.of(struck));
    }

    private static List<String> fields(FieldReading reading) {
        return Wording.check(reading).stream().map(Problem::field).toList();
    }

    @Test
    void everyTextIsLookedAt() {
        assertThat(Wording.check(reading("r1", "12", "wet", "seen", "spilled"))).isEmpty();
        assertThat(fields(reading(UNSEEN, "12", "wet", "seen", "spilled"))).containsExactly("id");
        assertThat(fields(reading("r1", UNSEEN, "wet", "seen", "spilled"))).containsExactly("truck");
        assertThat(fields(reading("r1", "12", UNSEEN, "seen", "spilled"))).containsExactly("remarks");
        assertThat(fields(reading("r1", "12", "wet", UNSEEN, "spilled"))).containsExactly("keptBecause");
        assertThat(fields(reading("r1", "12", "wet", "seen", UNSEEN))).containsExactly("struckBecause");
    }

    /** A truck is one line; remarks and reasons may have several. */
    @Test
    void aTruckIsOneLineAndANoteMayHaveSeveral() {
        assertThat(fields(reading("r1", "12\n7", "wet", "seen", "spilled"))).containsExactly("truck");
        assertThat(Wording.check(reading("r1", "12", "wet\nand cold", "seen\ntwice", "spilled\nall")))
                .isEmpty();
    }

    @Test
    void aTextCanBeTooLong() {
        String far = "x".repeat(20_000);
        assertThat(fields(reading("r1", far, "wet", "seen", "spilled"))).containsExactly("truck");
        assertThat(fields(reading("r1", "12", far, "seen", "spilled"))).containsExactly("remarks");
    }
}
