package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NextTrialIdTest {
    @ParameterizedTest
    @CsvSource({"T-9, T-10", "T-0099, T-0100", "K7/2-03, K7/2-04", "12, 13", "T-1999, T-2000", "first, K7-T1"})
    void raisesTheNumberAtTheEnd(String last, String next) {
        assertThat(NextTrialId.after(Optional.of(last), "K7", name -> false)).isEqualTo(next);
    }

    @Test
    void theFirstOneIsNamedAfterTheMix() {
        assertThat(NextTrialId.after(Optional.empty(), "K7", name -> false)).isEqualTo("K7-T1");
    }

    @Test
    void passesOverNamesThatAreTaken() {
        assertThat(NextTrialId.after(Optional.of("T-1"), "K7", Set.of("T-2", "T-3")::contains))
                .isEqualTo("T-4");
    }
}
