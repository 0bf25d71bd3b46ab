package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.Settings;
import porebench.desk.form.UnitSystem;

/** What the window remembers from one start to the next. */
class WindowMemoryTest {
    @TempDir
    Path folder;

    @Test
    void aLanguageIsRememberedAndKeepsTheCountryOfAMachineThatSpeaksIt() {
        WindowMemory memory = new WindowMemory(Settings.inMemory());
        Locale mexico = Locale.forLanguageTag("es-MX");
        assertThat(memory.language().on(mexico)).isEqualTo(mexico);
        memory.remember(Language.SPANISH);
        assertThat(memory.language().on(mexico)).isEqualTo(mexico);
        assertThat(memory.language().on(Locale.UK)).isEqualTo(Locale.forLanguageTag("es-GB"));
        assertThat(memory.language().on(Locale.US)).isEqualTo(Locale.forLanguageTag("es-US"));
        assertThat(memory.language().on(Locale.ROOT)).isEqualTo(Locale.forLanguageTag("es"));
        memory.remember(Language.ENGLISH);
        assertThat(memory.language().on(mexico)).isEqualTo(Locale.forLanguageTag("en-MX"));
        assertThat(memory.language().on(Locale.UK)).isEqualTo(Locale.UK);
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
