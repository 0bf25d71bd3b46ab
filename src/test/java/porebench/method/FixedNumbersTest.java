package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.profile.Profiles;

class FixedNumbersTest {
    // The sign of each country by the Unicode locale data (CLDR), which a person of that country would confirm.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en|37.5",
                "en-US|37.5",
                "es|37,5",
                "es-ES|37,5",
                "es-MX|37.5",
                "es-AR|37,5",
                "de-DE|37,5",
                "ar-EG|37.5"
            })
    void aFixedNumberHasTheSignOfTheReadersCountry(String tag, String written) {
        assertThat(FixedNumbers.in(Locale.forLanguageTag(tag), "over [37.5] mm, [37.5]"))
                .isEqualTo("over " + written + " mm, " + written);
    }

    @Test
    void everythingElseStaysAsItIs() {
        assertThat(FixedNumbers.in(Locale.GERMANY, "such as 5.4, {0}, [a], [7] and [7.05"))
                .isEqualTo("such as 5.4, {0}, [a], [7] and [7.05");
    }

    @Test
    void problemsSayTheirFixedNumbersSo() {
        Problem problem = Problem.warning("mix", "mix.no-aggregate-passes");
        assertThat(ProblemText.in(Locale.forLanguageTag("es-MX")).say(problem)).contains("en 37.5 mm:");
        assertThat(ProblemText.in(Locale.forLanguageTag("es-ES")).say(problem)).contains("en 37,5 mm:");
        assertThat(ProblemText.in(Locale.ENGLISH).say(problem)).contains("on 37.5 mm:");
    }

    @Test
    void clausesOfNamedStandardsHaveTheReadersSignToo() {
        String clause = Profiles.standard().figure(FigureName.BOWL_SHAPE_LOW).clause();
        assertThat(clause).contains("0.75 to 1.25");
        assertThat(SourceText.in(Locale.forLanguageTag("es-MX")).say(clause)).contains("0.75 a 1.25");
        assertThat(SourceText.in(Locale.forLanguageTag("es-ES")).say(clause)).contains("0,75 a 1,25");
        assertThat(SourceText.in(Locale.GERMANY).say(clause)).contains("0,75 bis 1,25");
        assertThat(SourceText.in(Locale.GERMANY).say("our own 0.75")).isEqualTo("our own 0.75");
    }
}
