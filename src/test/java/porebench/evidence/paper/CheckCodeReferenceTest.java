package porebench.evidence.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The codes of texts, against Python 3.11's {@code hmac} and {@code hashlib} (computed): HMAC-SHA-256 over the purpose and the text, taken
 * as one whole number, its eight lowest digits to the base 31, the lowest first.
 */
class CheckCodeReferenceTest {
    private static final String KEY = "0123456789abcdef".repeat(4);
    private static final String TEXT = "Subtract G 0.3 % air. [TW-214/r3]";

    @Test
    void agreesWithAnotherProgramsHmac() {
        assertThat(CheckCode.of(KEY, TEXT).letters()).isEqualTo("7989JUPR");
        assertThat(CheckCode.of(KEY, "Se\u00f1al - [M 1/r1]").letters()).isEqualTo("KA7SB2SQ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Subtract G 0.3 % air.\n[TW-214/r3] ",
                "  Subtract  G 0.3 %\tair.\r\n[TW-214/r3]\n",
                "Subtract G 0.3\u00a0% air. [TW\u2013214/r3]",
                "\uFEFFSubtract G 0.3 % air. [TW\u2212214/r3]"
            })
    void howLinesBreakAndWhichDashesStandDoesNotMatter(String text) {
        assertThat(CheckCode.of(KEY, text)).isEqualTo(CheckCode.of(KEY, TEXT));
    }

    /** By the rule as it is stated, of texts of ASCII, of Latin-1 and of others, a thousand of each, from a seed. */
    @ParameterizedTest
    @ValueSource(ints = {0x7f, 0x100, 0x3100})
    void aTextIsMadeNormalInOneWay(int beyond) {
        Random chance = new Random(20261129);
        for (int round = 0; round < 1000; round++) {
            StringBuilder text = new StringBuilder();
            while (text.length() < 12) {
                text.append((char) (chance.nextBoolean() ? chance.nextInt(0x22) : chance.nextInt(beyond)));
            }
            String stated = Normalizer.normalize(text, Normalizer.Form.NFC)
                    .replaceAll("[\\u2010-\\u2015\\u2212\\uFE58\\uFE63\\uFF0D]", "-")
                    .replaceAll("[\\s\\p{Z}\\u0085\\uFEFF]+", " ")
                    .strip();
            assertThat(CheckCode.normal(text.toString())).isEqualTo(stated);
        }
    }

    @Test
    void composedAndDecomposedLettersAreOne() {
        assertThat(CheckCode.of(KEY, "Sen\u0303al")).isEqualTo(CheckCode.of(KEY, "Se\u00f1al"));
    }

    @Test
    void everyOtherCharacterMatters() {
        CheckCode code = CheckCode.of(KEY, TEXT);
        for (int at = 0; at < TEXT.length(); at++) {
            if (TEXT.charAt(at) != ' ') {
                String other = TEXT.substring(0, at) + "8" + TEXT.substring(at + 1);
                assertThat(CheckCode.of(KEY, other)).as(other).isNotEqualTo(code);
            }
        }
        // What turns digits round on a screen, or cannot be seen, is no gap.
        assertThat(CheckCode.of(KEY, "\u202e" + TEXT)).isNotEqualTo(code);
        assertThat(CheckCode.of(KEY, TEXT + "\u200b")).isNotEqualTo(code);
        assertThat(CheckCode.of(KEY, TEXT.toLowerCase(Locale.ROOT))).isNotEqualTo(code);
        assertThat(CheckCode.of("0123456789abcdee".repeat(4), TEXT)).isNotEqualTo(code);
    }

    @Test
    void allCharactersComeUpAboutAsOften() {
        Map<Integer, Long> counts = IntStream.range(0, 31_000)
                .mapToObj(i -> CheckCode.of(KEY, "card " + i).letters())
                .flatMap(letters -> letters.chars().boxed())
                .collect(Collectors.groupingBy(letter -> letter, Collectors.counting()));
        // 248,000 characters, 8,000 of each expected, standard deviation 88; five of those.
        assertThat(counts).hasSize(31);
        assertThat(counts.values()).allMatch(count -> Math.abs(count - 8_000) < 440);
    }

    @Test
    void isReadAsAPersonCopiesIt() {
        CheckCode code = new CheckCode("K7QM4XPA");
        assertThat(code.printed()).isEqualTo("K7QM-4XPA");
        assertThat(CheckCode.parse(" k7qm 4xpa\n")).contains(code);
        assertThat(CheckCode.parse("K7QM\u20134XPA")).contains(code);
        assertThat(CheckCode.parse("K7QM4XP")).isEmpty();
        assertThat(CheckCode.parse("K7QM-4XPO")).isEmpty();
    }

    @Test
    void refusesWhatIsNoCode() {
        assertThatThrownBy(() -> new CheckCode("K7QM4XP0")).hasMessageContaining("letters must be 8 of");
        assertThatThrownBy(() -> CheckCode.of(" ", TEXT)).hasMessageContaining("key");
    }
}
