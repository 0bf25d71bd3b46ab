package porebench.desk.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SortedWordsTest {
    /** In the order in which a person looks for them. */
    private static final List<String> ORDERED = List.of(
            "",
            "-12 %",
            "\u22122.5 %",
            "\u22120,35 %",
            "0.4 %",
            "5.45",
            "5.5",
            "12.5 kg",
            "100",
            "2026-02-28",
            "2026-11-03",
            "2026-11-19",
            "HG-101",
            "hg-102",
            "T-9",
            "T-10",
            "T-10b",
            "T-999",
            "T-1234",
            "T-12345678901234567890",
            "T-12345678901234567891");

    @Test
    void numbersCountAsNumbersAndLettersAsLetters() {
        List<SortedWords> sorted = new ArrayList<>(ORDERED.stream()
                .map(words -> SortedWords.of(words, Locale.ROOT))
                .toList());
        List<SortedWords> expected = List.copyOf(sorted);
        for (int round = 0; round < 20; round++) {
            Collections.shuffle(sorted, new Random(round));
            Collections.sort(sorted);
            assertThat(sorted).isEqualTo(expected);
        }
    }

    @Test
    void onlyTheSameWordsAreEqual() {
        for (String one : ORDERED) {
            for (String other : ORDERED) {
                int order = SortedWords.of(one, Locale.ROOT).compareTo(SortedWords.of(other, Locale.ROOT));
                assertThat(order == 0).as("%s beside %s", one, other).isEqualTo(one.equals(other));
            }
        }
        assertThat(SortedWords.of("5.0", Locale.ROOT)).isNotEqualByComparingTo(SortedWords.of("5.00", Locale.ROOT));
    }
}
