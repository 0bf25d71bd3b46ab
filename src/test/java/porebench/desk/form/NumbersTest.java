package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.ProblemText;

class NumbersTest {
    private static Numbers numbers(String locale) {
        return new Numbers(Locale.forLanguageTag(locale));
    }

    @ParameterizedTest
    @CsvSource({
        "es-ES, '7,05', 7.05",
        "es-ES, 7.05, 7.05",
        "es-ES, 0.254, 0.254",
        "es-ES, .5, 0.5",
        "es-ES, 5., 5",
        "es-ES, 1735.2, 1735.2",
        "es-ES, 12.3456, 12.3456",
        "es-ES, 1735.250, 1735.250",
        "es-ES, '1735,250', 1735.250",
        "es-ES, -0.125, -0.125",
        "es, 7.05, 7.05",
        "es-AR, 7.05, 7.05",
        "es-MX, 7.05, 7.05",
        "es-MX, 1.735, 1.735",
        "es-US, 1.735, 1.735",
        "es-419, 1.735, 1.735",
        "en-US, 1.735, 1.735",
        "en, ' 7.05\u00a0', 7.05",
        "de, 7.05, 7.05",
        "de-CH, 1735.2, 1735.2",
        "de-CH, '1''735.2', 1735.2",
        "de-CH, 1\u2019735\u2019000, 1735000",
        "fr, '1 735,25', 1735.25",
        "fr, '1\u202f735,25', 1735.25",
        "fr, '1\u00a0735,25', 1735.25",
        "fr, -12 000, -12000",
        "fr, '0,5', 0.5",
        "fr-CA, '1 735,2', 1735.2",
        "fr-CH, '1 735,2', 1735.2",
        "de-AT, '1 735,2', 1735.2"
    })
    void readsWhatCanMeanOneNumberOnly(String locale, String text, BigDecimal number) {
        assertThat(numbers(locale).parse(text).orElseThrow()).isEqualByComparingTo(number);
    }

    @ParameterizedTest
    @CsvSource({
        "es-ES, 1.735, form.point-or-thousands",
        "es-ES, -12.000, form.point-or-thousands",
        "es-ES, '1.735,5', form.sign-is-comma",
        "es-ES, 1.735.000, form.sign-is-comma",
        "es, 999.999, form.point-or-thousands",
        "es-MX, '7,05', form.sign-is-point",
        "en-US, '1,735.5', form.sign-is-point",
        "en-US, '7,05', form.sign-is-point",
        "es-ES, abc, form.not-a-number",
        "fr, 7 05, form.not-a-number",
        "fr, 1735 25, form.not-a-number",
        "fr, 1 7355, form.not-a-number",
        "fr, 1.735, form.point-or-thousands",
        "de, 1.735, form.point-or-thousands",
        "de, '1.735,5', form.sign-is-comma",
        "de, 1 735, form.not-a-number",
        "de-CH, '7,05', form.sign-is-point",
        "en, 1 735, form.not-a-number",
        "en, 7 05, form.not-a-number"
    })
    void saysWhichSignIsMeantOfWhatCanMeanMore(String locale, String text, String code) {
        assertThat(numbers(locale).parse(text)).isEmpty();
        assertThat(numbers(locale).fault("mass", "Mass", text).code()).isEqualTo(code);
    }

    @Test
    void offersBothThingsThatAPointMayMean() {
        assertThat(ProblemText.in(Locale.forLanguageTag("es-ES"))
                        .say(numbers("es-ES").fault("mass", "Masa", "1.735")))
                .isEqualTo("Masa: \"1.735\" puede significar dos números. El signo decimal es aquí la coma. "
                        + "Escribir 1,735 o 1735.");
    }
}
