package porebench.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.FactorState;
import porebench.record.id.CalibrationId;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/** Names and words of records as lists, files and messages show them. */
class RecordNamesTest {
    static Stream<Function<String, ? extends Comparable<?>>> kinds() {
        return Stream.of(
                SourceId::new, MeterId::new, CalibrationId::new, MixId::new, DeterminationId::new, TrialId::new);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void aNameIsShownAsItIsWrittenAndStandsByItsLettersInAList(Function<String, ? extends Comparable<?>> kind) {
        assertThat(kind.apply(" A-2 ")).hasToString("A-2");
        assertThat(Stream.of("B-1", "A-2", "A-1").map(kind).sorted().map(Object::toString))
                .containsExactly("A-1", "A-2", "B-1");
    }

    /** Other programs read these words in what the command line answers. */
    @Test
    void aStateOfAFactorHasItsWords() {
        assertThat(Stream.of(FactorState.values()).map(FactorState::symbol))
                .containsExactly(
                        "in force",
                        "recheck due",
                        "lapsed",
                        "source changed",
                        "evidence changed",
                        "not verified here",
                        "no factor",
                        "withdrawn");
    }
}
