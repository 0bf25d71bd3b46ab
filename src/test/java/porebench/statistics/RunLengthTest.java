package porebench.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;

class RunLengthTest {
    @Test
    void agreesWithTheExactLengthsOfChampAndWoodall() {
        List<ReferenceFile.Row> unshifted = ReferenceFile.read("run-rule-lengths.csv").rows().stream()
                .filter(row -> row.number("shift") == 0)
                .toList();
        assertThat(unshifted).hasSizeGreaterThan(8);
        for (ReferenceFile.Row row : unshifted) {
            Set<RunRule> rules = Arrays.stream(row.text("rules").split(";", -1))
                    .map(symbol -> RunRule.find(symbol).orElseThrow())
                    .collect(Collectors.toSet());
            RunLength length = RunLength.simulated(rules, 1_000_000, 1987);
            assertThat(length.mean())
                    .as("%s", row.cells())
                    .isCloseTo(row.number("length"), offset(4 * length.standardError()));
            assertThat(RunLength.exact(rules).orElseThrow())
                    .as("%s", row.cells())
                    .isCloseTo(row.number("length"), offset(0.006));
        }
    }

    @Test
    void everyRuleSignalsByChanceSoonerOrLaterAndMoreRulesSooner() {
        for (RunRule rule : RunRule.values()) {
            assertThat(RunLength.simulated(EnumSet.of(rule), 100_000, 7).mean())
                    .as(rule.symbol())
                    .isBetween(20.0, 30_000.0);
        }
        assertThat(RunLength.simulated(EnumSet.allOf(RunRule.class), 200_000, 7).mean())
                .isLessThan(RunLength.simulated(RunRule.westernElectric(), 200_000, 7)
                        .mean());
    }

    @Test
    void theSameSeedGivesTheSameLength() {
        Set<RunRule> rules = RunRule.westernElectric();
        assertThat(RunLength.simulated(rules, 5000, 3)).isEqualTo(RunLength.simulated(rules, 5000, 3));
        assertThat(RunLength.simulated(rules, 5000, 3)).isNotEqualTo(RunLength.simulated(rules, 5000, 4));
    }

    @Test
    void aChoiceNobodyWorkedOutHasNoExactLength() {
        assertThat(RunLength.exact(EnumSet.of(RunRule.SIX_IN_A_TREND))).isEmpty();
    }

    @Test
    void refusesNoRule() {
        assertThatThrownBy(() -> RunLength.simulated(Set.of(), 50, 3))
                .hasMessage("count of rules must be at least 1, but is 0");
    }
}
