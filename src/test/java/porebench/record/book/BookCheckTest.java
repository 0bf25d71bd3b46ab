package porebench.record.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import porebench.method.Problem;
import porebench.record.RecordKind;
import porebench.record.chain.Head;

/** What the full check of a lab book reports. */
class BookCheckTest {
    private static final Problem BROKEN = Problem.error("entry", "chain.broken", 7);
    private static final Problem EARLIER = Problem.warning("entry", "chain.earlier", 9);

    private static BookCheck check(List<BookCheck.Fault> faults) {
        return new BookCheck(true, true, Head.EMPTY, Map.of(RecordKind.TRIAL, 12), faults, List.of(EARLIER));
    }

    @Test
    void aFaultBreaksTheBookAndADoubtDoesNot() {
        BookCheck.Fault fault = new BookCheck.Fault(7, "entry 7", BROKEN);
        assertThat(check(List.of()).isIntact()).isTrue();
        assertThat(check(List.of()).problems()).containsExactly(EARLIER);
        assertThat(check(List.of(fault)).isIntact()).isFalse();
        assertThat(check(List.of(fault)).problems()).containsExactly(BROKEN, EARLIER);
        assertThat(fault.code()).isEqualTo("chain.broken");
    }

    @Test
    void theRecordsAreCountedByTheirKind() {
        assertThat(check(List.of()).counts()).isEqualTo(Map.of(RecordKind.TRIAL, 12));
    }
}
