package porebench.exchange.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** How a message quotes a cell, and how many problems of a file are listed. */
class FindingsTest {
    @Test
    void aMessageQuotesFortyCharactersAndSaysWhereItBreaksOff() {
        assertThat(Findings.quoted("x".repeat(40))).isEqualTo("x".repeat(40));
        assertThat(Findings.quoted("x".repeat(41))).isEqualTo("x".repeat(40) + "…");
        assertThat(Findings.quoted("\uD83E\uDEA8".repeat(41))).isEqualTo("\uD83E\uDEA8".repeat(40) + "…");
        assertThat(Findings.quoted(" two\n\tlines ")).isEqualTo("two lines");
    }

    @Test
    void doubtsAreNotListedBeyondTheLimitEither() {
        Findings findings = new Findings("f.csv");
        assertThat(findings.file()).isEqualTo("f.csv");
        for (int i = 0; i < Findings.MOST_LISTED + 5; i++) {
            findings.warning(1, 0, "a", "csv.column-unknown", "b");
        }
        assertThat(findings.all()).hasSize(Findings.MOST_LISTED);
    }
}
