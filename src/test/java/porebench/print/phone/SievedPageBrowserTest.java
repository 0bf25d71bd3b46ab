package porebench.print.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.NeedsProgram;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PhonePage;
import porebench.evidence.paper.SievedAirs;
import porebench.method.profile.Profiles;
import porebench.print.Cards;
import porebench.print.SievedCards;

/** The phone page of a wet-sieved concrete in a real browser. */
@NeedsProgram("chromium")
class SievedPageBrowserTest {
    @TempDir
    static Path shared;

    private static Browser browser;

    @TempDir
    Path folder;

    @BeforeAll
    static void start() throws Exception {
        browser = new Browser(shared.resolve("profile"));
        browser.clock("2026-11-25T12:00:00");
    }

    @AfterAll
    static void stop() throws Exception {
        browser.close();
    }

    private void open(FactorCard card) throws IOException {
        browser.open(Files.write(
                folder.resolve("page.html"), PhoneFile.of(PhonePage.of(card, Profiles.standard()), Locale.ENGLISH)));
    }

    private static String said(String id) {
        return browser.ask("(document.getElementById('" + id + "') || {}).textContent");
    }

    /** As the card of the same mix says it: 6.3 means 5.4 % of the full mixture and 8.7 % of the mortar. */
    @Test
    void aWetSievedConcreteIsSpreadOverFullMixtureAndMortar() throws Exception {
        FactorCard card = Cards.wetSieved(Cards.card("0.3", "6.0", "1.5", "0.1", "10"));
        SievedAirs airs = SievedCards.airs().orElseThrow();
        open(card.spreading(Optional.of(airs)));
        for (SievedAirs.Row row : airs.rows()) {
            browser.type(row.reading().toPlainString());
            assertThat(browser.ask("document.getElementById('spread').dataset.full"))
                    .as("%s", row)
                    .isEqualTo(row.fullMixture().toPlainString());
            assertThat(browser.ask("document.getElementById('spread').dataset.mortar"))
                    .as("%s", row)
                    .isEqualTo(row.mortar().toPlainString());
            browser.press("clear");
        }
        browser.type("6.3");
        assertThat(said("spread")).isEqualTo("Full mixture 5.4 %, mortar 8.7 %");
        browser.press("clear");
        browser.type("0.2");
        assertThat(said("spread")).as("less than no air").isEqualTo("undefined");
        open(card);
        browser.type("6.3");
        assertThat(said("spread")).as("no volumes").isEqualTo("undefined");
    }
}
