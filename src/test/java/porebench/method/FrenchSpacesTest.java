package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** French sets a space before marks of two parts; a line never begins with such a mark. Written here with ~ for that space. */
class FrenchSpacesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Exemple : 5 % d''air ; ou non ?|Exemple~: 5~% d''air~; ou non~?",
                "« Enregistrer » !|«~Enregistrer~»~!",
                "10 %% de plus%nou : {0}|10~%% de plus%nou~: {0}",
                "une ligne %nune autre|une ligne %nune autre",
                "G = {0} %.|G = {0}~%.",
                "G, % d''air ; [0,5] %|G, % d''air~; [0,5] %",
                "13:30, a:b|13:30, a:b"
            })
    void spacesBeforeMarksDoNotBreak(String text, String set) {
        assertThat(FrenchSpaces.in(text)).isEqualTo(set.replace('~', '\u00a0'));
    }

    /** The percent sign behind a computed number decides its decimals: the space before it must not hide the sign. */
    @Test
    void aComputedPercentageHasTheSameDigitsInFrench() {
        Problem wide = Problem.warning("trials", "determination.range-too-wide", 0.123456, 6, 0.1);
        String english = ProblemText.in(Locale.ENGLISH).say(wide);
        String french = ProblemText.in(Locale.FRENCH).say(wide);
        assertThat(english).contains("0.12 %");
        assertThat(french).contains("0,12\u00a0%").doesNotContain("0,123", " %");
    }

    @Test
    void onlyFrenchTextsAreSetSo() {
        assertThat(Texts.of("porebench.evidence.paper.card", Locale.CANADA_FRENCH)
                        .get("card.example", "5,4", "5,1"))
                .isEqualTo("Exemple\u00a0: à la lecture 5,4, l'air est de 5,1\u00a0%.");
        assertThat(Texts.of("porebench.evidence.paper.card", Locale.GERMAN).get("card.example", "5,4", "5,1"))
                .doesNotContain("\u00a0");
    }
}
