package porebench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a bowl that is kept outside the lab book is read from. */
class BowlTest {
    @Test
    void aTextOfAnotherProgramIsNoBowl() {
        assertThat(Bowl.parse("bench/K7/1", "")).isEmpty();
        String whole = "bowl\tSOAK\t\t2026-03-04T09:30:20Z\t15\n.\n";
        assertThat(Bowl.parse("bench/K7/1", whole)).isPresent();
        assertThat(Bowl.parse("bench/K7/one", whole)).isEmpty();
        assertThat(Bowl.parse("bench/1", whole)).isEmpty();
        assertThat(Bowl.parse("bench/K7/1", "bowl\tSOAK\t\tyesterday\t\n.\n")).isEmpty();
        assertThat(Bowl.parse("bench/K7/1", "bowl\tSOAK\t\t\tfifteen\n.\n")).isEmpty();
        assertThat(Bowl.parse("bench/K7/1", "cup\tSOAK\t\t\t\n.\n")).isEmpty();
    }
}
