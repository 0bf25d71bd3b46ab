package porebench.evidence.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.FactorState;

/** Why a mix asks for a test, in every state, without and with one card out. */
class NeedTest {
    @ParameterizedTest
    @CsvSource({
        "IN_FORCE, , ",
        "WITHDRAWN, , ",
        "RECHECK_DUE, DUE, DUE",
        "NO_FACTOR, NEVER_TESTED, NEVER_TESTED",
        "LAPSED, NO_LONGER_HOLDS, CARDS_OUT",
        "SOURCE_CHANGED, NO_LONGER_HOLDS, CARDS_OUT",
        "EVIDENCE_CHANGED, NO_LONGER_HOLDS, CARDS_OUT",
        "NOT_VERIFIED, NO_LONGER_HOLDS, CARDS_OUT",
    })
    void ofEveryState(FactorState state, Need without, Need with) {
        assertThat(Need.of(state, 0)).isEqualTo(Optional.ofNullable(without));
        assertThat(Need.of(state, 1)).isEqualTo(Optional.ofNullable(with));
    }
}
