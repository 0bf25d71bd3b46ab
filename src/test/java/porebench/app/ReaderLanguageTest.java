package porebench.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReaderLanguageTest {
    @ParameterizedTest
    @CsvSource({
        "fr, en-GB, fr",
        "de_CH, en-GB, de-CH",
        "es_ES.UTF-8, en-US, es-ES",
        "es-419, es-MX, es-419",
        "es, es-MX, es-MX",
        "EN, de-DE, en",
        "'', pt-BR, pt-BR",
        "?!, pt-BR, pt-BR"
    })
    void aLanguageIsNamedByItsTag(String named, String machine, String locale) {
        assertThat(ReaderLanguage.of(Map.of("POREBENCH_LANGUAGE", named), Locale.forLanguageTag(machine)))
                .isEqualTo(Locale.forLanguageTag(locale));
    }

    @Test
    void withoutANameItIsThatOfTheMachine() {
        assertThat(ReaderLanguage.of(Map.of("LANG", "fr_FR"), Locale.UK)).isEqualTo(Locale.UK);
    }
}
