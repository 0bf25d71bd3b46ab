package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.desk.Settings;
import porebench.desk.form.UnitSystem;
import porebench.evidence.paper.CardWords;

/** What the window remembers from one start to the next. */
class WindowMemoryTest {
    @TempDir
    Path folder;

    @Test
    void aLanguageIsRememberedAndKeepsTheCountryOfAMachineThatSpeaksIt() {
        WindowMemory memory = new WindowMemory(Settings.inMemory());
        Locale mexico = Locale.forLanguageTag("es-MX");
        assertThat(memory.language().on(mexico)).isEqualTo(mexico);
        memory.remember(Language.SPANISH_AMERICAS);
        assertThat(memory.language().on(mexico)).isEqualTo(mexico);
        assertThat(memory.language().on(Locale.UK)).isEqualTo(Locale.forLanguageTag("es-GB"));
        assertThat(memory.language().on(Locale.US)).isEqualTo(Locale.forLanguageTag("es-US"));
        assertThat(memory.language().on(Locale.ROOT)).isEqualTo(Locale.forLanguageTag("es"));
        memory.remember(Language.FRENCH);
        assertThat(memory.language().on(Locale.CANADA)).isEqualTo(Locale.CANADA_FRENCH);
        memory.remember(Language.GERMAN);
        assertThat(memory.language().on(Locale.forLanguageTag("fr-CH"))).isEqualTo(Locale.forLanguageTag("de-CH"));
        memory.remember(Language.ENGLISH);
        assertThat(memory.language().on(mexico)).isEqualTo(Locale.forLanguageTag("en-MX"));
        assertThat(memory.language().on(Locale.UK)).isEqualTo(Locale.UK);
    }

    /** Which Spanish is chosen, whatever the country; the country still has its decimal sign (CLDR: point in Mexico, comma in Spain). */
    @ParameterizedTest
    @CsvSource({
        "SPANISH_SPAIN, es-ES, es-ES, ','",
        "SPANISH_SPAIN, en-ES, es-ES, ','",
        "SPANISH_SPAIN, es-MX, es-ES-u-rg-mxzzzz, .",
        "SPANISH_SPAIN, '', es-ES, ','",
        "SPANISH_SPAIN, es-419, es-ES, ','",
        "SPANISH_AMERICAS, es-MX, es-MX, .",
        "SPANISH_AMERICAS, es-419, es-419, .",
        "SPANISH_AMERICAS, es-ES, es-419-u-rg-eszzzz, ','",
        "SPANISH_AMERICAS, ca-ES, es-419-u-rg-eszzzz, ','",
        "GERMAN, de-CH, de-CH, .",
        "GERMAN, de-AT, de-AT, ','",
        "FRENCH, fr-CH, fr-CH, ','",
        "FRENCH, en-CA, fr-CA, ','",
        "MACHINE, it-IT, it-IT, ','"
    })
    void aLanguageHasItsWordsAndTheCountryItsSign(Language language, String machine, String locale, char sign) {
        Locale on = language.on(Locale.forLanguageTag(machine));
        assertThat(on).isEqualTo(Locale.forLanguageTag(locale));
        assertThat(DecimalFormatSymbols.getInstance(on).getDecimalSeparator()).isEqualTo(sign);
        assertThat(CardWords.onSheets(on).number(new BigDecimal("0.5"))).isEqualTo("0" + sign + "5");
    }

    @Test
    void spanishOfOlderSettingsIsThatOfTheAmericasWhichTheyMeant() {
        Settings settings = Settings.inMemory();
        settings.put("language", "es");
        assertThat(new WindowMemory(settings).language()).isEqualTo(Language.SPANISH_AMERICAS);
        for (Language language : Language.values()) {
            new WindowMemory(settings).remember(language);
            assertThat(new WindowMemory(settings).language()).isEqualTo(language);
        }
    }

    @Test
    void theLabBookUsedLastIsTheOneToOpenAgainUntilItIsGone() {
        WindowMemory memory = new WindowMemory(Settings.inMemory());
        assertThat(memory.lastFile()).isEmpty();
        memory.rememberFile(folder.resolve("one.porebench"));
        memory.rememberFile(folder.resolve("other.porebench"));
        memory.rememberFile(folder.resolve("one.porebench"));
        assertThat(memory.lastFile()).contains(folder.resolve("one.porebench"));
        memory.forgetFile(folder.resolve("one.porebench"));
        assertThat(memory.lastFile()).contains(folder.resolve("other.porebench"));
    }

    @Test
    void nonsenseInTheSettingsIsReadAsNothingRemembered() {
        Settings settings = Settings.inMemory();
        settings.put("width", "wide");
        settings.put("height", "-3");
        settings.put("units", "cubits");
        settings.put("theme", "plaid");
        settings.put("language", "whistling");
        WindowMemory memory = new WindowMemory(settings);
        Dimension usual = new Dimension(1280, 800);
        assertThat(memory.size(usual)).isEqualTo(usual);
        assertThat(memory.units()).isEqualTo(UnitSystem.SI);
        assertThat(memory.theme()).isEqualTo(Theme.LIGHT);
        assertThat(memory.language()).isEqualTo(Language.MACHINE);
        assertThat(memory.recentFiles()).isEmpty();
    }

    @Test
    void theNewestOfEightFilesStandsFirstAndEachOnce() {
        WindowMemory memory = new WindowMemory(Settings.inMemory());
        for (int number = 1; number <= 10; number++) {
            memory.rememberFile(folder.resolve(number + ".porebench"));
        }
        memory.rememberFile(folder.resolve("9.porebench"));
        assertThat(memory.recentFiles())
                .hasSize(8)
                .doesNotHaveDuplicates()
                .startsWith(folder.resolve("9.porebench"), folder.resolve("10.porebench"));
        memory.forgetFile(folder.resolve("10.porebench"));
        assertThat(memory.recentFiles()).doesNotContain(folder.resolve("10.porebench"));
    }
}
