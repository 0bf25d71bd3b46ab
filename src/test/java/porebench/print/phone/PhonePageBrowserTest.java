package porebench.print.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.NeedsProgram;
import porebench.command.Terminal;
import porebench.evidence.CardState;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PhonePage;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Profile;
import porebench.method.air.AirContent;
import porebench.method.profile.Profiles;
import porebench.port.FieldHandout;
import porebench.print.Cards;
import porebench.print.code.CodePicture;

/** The phone page as a crew meets it: in a real browser, 360 px wide, with no network. */
@NeedsProgram("chromium")
class PhonePageBrowserTest {
    private static final String ON_ITS_FIRST_DAY = "2026-11-25T12:00:00";

    @TempDir
    static Path shared;

    private static Browser browser;

    @TempDir
    Path folder;

    @BeforeAll
    static void start() throws Exception {
        browser = new Browser(shared.resolve("profile"));
        browser.clock(ON_ITS_FIRST_DAY);
    }

    @AfterAll
    static void stop() throws Exception {
        browser.close();
    }

    private Path page(FactorCard card, Profile profile, Locale locale) throws IOException {
        return Files.write(folder.resolve("page.html"), PhoneFile.of(PhonePage.of(card, profile), locale));
    }

    private void open(FactorCard card) throws IOException {
        browser.open(page(card, Profiles.standard(), Locale.ENGLISH));
    }

    @BeforeEach
    void nothingIsKept() throws IOException {
        open(Cards.usual());
        browser.ask("localStorage.clear()");
        open(Cards.usual());
    }

    private static String air() {
        return browser.ask("document.getElementById('air').dataset.air");
    }

    private static String said(String id) {
        return browser.ask("(document.getElementById('" + id + "') || {}).textContent");
    }

    /** G 0.3, air wanted 6.0 +- 1.5: from 4.5 to 7.5; the readings and what a pencil makes of them. */
    @Test
    void tenReadingsInARowGiveAirAndVerdict() throws Exception {
        String[][] rows = {
            {"4.7", "4.4", "FAILS"}, {"4.8", "4.5", "PASSES"}, {"6.3", "6.0", "PASSES"}, {"7.8", "7.5", "PASSES"},
            {"7.9", "7.6", "FAILS"}, {"0", "-0.3", "FAILS"}, {"5.05", "4.8", "PASSES"}, {"5.15", "4.8", "PASSES"},
            {"10", "9.70", "FAILS"}, {"6.75", "6.4", "PASSES"}
        };
        for (String[] row : rows) {
            browser.type(row[0]);
            assertThat(air()).as(row[0]).isEqualTo(row[1]);
            assertThat(said("verdict")).as(row[0]).contains(row[2]);
            browser.press("keep");
        }
        assertThat(browser.ask("document.querySelectorAll('#kept li').length")).isEqualTo("10");
        assertThat(browser.requests()).hasSize(1).allMatch(address -> address.startsWith("file:"));
        assertThat(browser.complaints()).isEmpty();
        if (System.getenv("PHONE_SHOTS") != null) {
            browser.photograph(Path.of(System.getenv("PHONE_SHOTS"), "ten.png"));
        }
    }

    /**
     * The one printed use of a factor that was found: AASHTO re:source newsletter, April 2015 (seen). A reading of 4.0 less 0.3 is
     * 3.7, outside the limits of 4.0 to 6.0.
     */
    @Test
    void thePrintedExampleOfAFactorInUseFails() throws Exception {
        open(Cards.card("0.3", "5.0", "1.0", "0.1", "10"));
        browser.type("4.0");
        assertThat(air()).isEqualTo("3.7");
        assertThat(said("verdict")).contains("FAILS");
    }

    /** Types each reading and returns what the page makes of all, by one question. */
    private static List<String> judged(List<String> readings) {
        String all = readings.stream().map(Browser::quoted).collect(Collectors.joining(","));
        return List.of(browser.ask("[" + all + "].map(text => { document.getElementById('field-gauge').click();"
                        + " document.getElementById('clear').click();"
                        + " for (const c of text) document.getElementById('key-' + (c === '.' ? 'point' : c)).click();"
                        + " const air = document.getElementById('air').dataset;"
                        + " return air.air + ' ' + air.passes; }).join(';')")
                .split(";"));
    }

    private static Profile profile(String... figures) {
        Profile own = Profiles.standard().copyAs("own", "Own");
        for (int i = 0; i < figures.length; i += 2) {
            String name = figures[i];
            FigureName figure = Stream.of(FigureName.values())
                    .filter(one -> one.symbol().equals(name))
                    .findFirst()
                    .orElseThrow();
            own = own.with(figure, new Figure(figures[i + 1], "own", Mark.LABORATORY));
        }
        return own;
    }

    /** Every hundredth of the scale, by several rules: each boundary, each tie, each change to the step of high air. */
    @Test
    void roundsAsTheProgramDoesAtEveryHundredthOfTheScale() throws Exception {
        List<Profile> profiles = List.of(
                Profiles.standard(),
                profile("air-ties", "away"),
                profile("air-step", "0.25", "high-air-looks-at", "air"),
                profile("air-step", "0.5", "high-air-looks-at", "never", "carry-rounded-factor", "yes"));
        String[][] cards = {{"0.3", "0.1"}, {"0.35", "0.1"}, {"-0.15", "0.25"}, {"0.05", "0.05"}};
        for (int i = 0; i < profiles.size(); i++) {
            Profile profile = profiles.get(i);
            FactorCard card = Cards.card(cards[i][0], "6.0", "1.5", cards[i][1], "10");
            browser.open(page(card, profile, Locale.ENGLISH));
            List<String> readings = new ArrayList<>();
            List<String> expected = new ArrayList<>();
            for (BigDecimal reading = new BigDecimal("0.00");
                    reading.compareTo(BigDecimal.TEN) <= 0;
                    reading = reading.add(new BigDecimal("0.01"))) {
                BigDecimal reported = AirContent.of(
                                reading, card.issue().factorPercent(), card.divisionPercent(), profile)
                        .value()
                        .orElseThrow()
                        .reported();
                boolean passes = reported.compareTo(new BigDecimal("4.5")) >= 0
                        && reported.compareTo(new BigDecimal("7.5")) <= 0;
                readings.add(reading.toPlainString());
                expected.add(reported.toPlainString() + " " + passes);
            }
            assertThat(judged(readings)).isEqualTo(expected);
        }
    }

    @Test
    void aReadingAboveTheScaleOrNoneIsRefused() {
        browser.type("10.01");
        assertThat(air()).isEqualTo("undefined");
        assertThat(said("air")).contains("ends at 10.0 %");
        browser.press("keep");
        assertThat(said("told")).contains("ends at 10.0 %");
        browser.press("clear");
        browser.press("keep");
        assertThat(said("told")).contains("not a number");
        browser.type("6.");
        assertThat(air()).isEqualTo("5.7");
        browser.press("field-density");
        browser.type("99999");
        browser.press("keep");
        assertThat(said("told")).contains("density is not possible");
        browser.press("clear");
        browser.press("field-temperature");
        browser.type("61");
        browser.press("keep");
        assertThat(said("told")).contains("temperature is not possible");
        assertThat(browser.ask("document.querySelectorAll('#kept li').length")).isEqualTo("0");
    }

    private static void keepOne(String gauge, String truck) {
        browser.type(gauge);
        browser.write("field-truck", truck);
        browser.press("field-density");
        browser.type("2315.5");
        browser.press("keep");
    }

    @Test
    void readingsStayOnThePhoneAndLeaveAsCsv() throws Exception {
        keepOne("5.4", "Truck \"12\", red");
        keepOne("6.1", "14");
        open(Cards.usual());
        assertThat(said("kept")).contains("14", "6.1 % \u2192 5.8 % \u2714");
        assertThat(browser.ask("Object.keys(localStorage).join()")).isEqualTo("readings TW-214/r3");
        browser.downloadTo(folder);
        browser.press("export");
        browser.awaitDownload();
        String csv = Files.readString(folder.resolve("field-readings-TW-214.csv"), StandardCharsets.UTF_8);
        assertThat(csv.lines().toList()).hasSize(3);
        assertThat(csv)
                .startsWith(
                        "reading_id,mix_id,read_at,truck,meter_id,gauge_pct,density,density_unit,temperature_c,remarks\r\n")
                .contains(
                        ",TW-214,2026-11-25T12:00:00",
                        ",\"Truck \"\"12\"\", red\",,5.4,2315.5,kg/m3,,phone page r3\r\n");
        assertThat(browser.requests()).noneMatch(address -> address.startsWith("http"));
        browser.press("empty");
        browser.press("really");
        assertThat(browser.ask("localStorage.getItem('readings TW-214/r3')")).isEqualTo("[]");
    }

    @Test
    void theCodesOfManyReadingsAreReadFromTheirPictureAsTheSameCsv() throws Exception {
        for (int i = 0; i < 9; i++) {
            keepOne("5." + i, "Se\u00f1al " + i);
        }
        browser.press("code");
        int count = Integer.parseInt(browser.ask("document.querySelectorAll('canvas').length"));
        assertThat(count).isGreaterThan(1);
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String data = browser.ask("document.querySelectorAll('canvas')[" + i + "].toDataURL('image/png')");
            byte[] png = Base64.getDecoder().decode(data.substring(data.indexOf(',') + 1));
            Files.write(folder.resolve("code" + i + ".png"), png);
            List<String> texts = CodePicture.texts(ImageIO.read(new ByteArrayInputStream(png)));
            assertThat(texts).hasSize(1);
            assertThat(texts.get(0)).startsWith("reading_id,mix_id,read_at");
            rows.addAll(texts.get(0).lines().skip(1).toList());
        }
        assertThat(homeByCommand(count).lines().skip(1).toList()).isEqualTo(rows);
        assertThat(rows).hasSize(9).allMatch(row -> row.contains("TW-214"));
        assertThat(rows.get(8)).contains(",Se\u00f1al 8,,5.8,2315.5,kg/m3,");
    }

    /** Reads the pictures as the laboratory does; the first of them twice. */
    private String homeByCommand(int count) throws IOException {
        List<String> arguments =
                new ArrayList<>(List.of("page-readings", "--out", "home.csv", "--picture", "code0.png"));
        for (int i = 0; i < count; i++) {
            arguments.addAll(List.of("--picture", "code" + i + ".png"));
        }
        assertThat(new Terminal(folder).json(arguments.toArray(String[]::new)).status())
                .isZero();
        return Files.readString(folder.resolve("home.csv"));
    }

    @Test
    void aClockOutsideTheCardsDaysIsSaidAndNoAirIsShown() throws Exception {
        for (String[] moment : new String[][] {
            {"2026-11-24T23:59:00", "holds only from 2026-11-25"}, {"2027-11-25T00:00:00", "lapsed after 2027-11-24"}
        }) {
            try (Browser other = new Browser(folder.resolve(moment[0].substring(0, 10)))) {
                other.clock(moment[0]);
                other.open(page(Cards.usual(), Profiles.standard(), Locale.ENGLISH));
                other.type("5.4");
                assertThat(other.ask("document.getElementById('clock').textContent"))
                        .contains(moment[1], moment[0].substring(0, 10), "cannot know the true time");
                assertThat(other.ask("document.getElementById('air').dataset.air"))
                        .isEqualTo("undefined");
                other.press("keep");
                assertThat(other.ask("document.getElementById('kept').textContent"))
                        .contains("5.4 %")
                        .doesNotContain("5.1");
            }
        }
        assertThat(said("clock")).isEqualTo("undefined");
        assertThat(said("holds")).contains("lapses after 2027-11-24");
    }

    @Test
    void trainingAndMarkedPagesSayWhatTheyAre() throws Exception {
        open(Cards.training("0.3", false));
        assertThat(said("training")).contains("SIMULATED");
        browser.type("5.4");
        browser.press("keep");
        assertThat(browser.ask("Object.keys(localStorage).join()")).isEqualTo("readings TW-214/r3 training");
        open(Cards.in(CardState.LAPSED, Cards.usual()));
        assertThat(said("marked")).isEqualTo("LAPSED");
        assertThat(said("factor")).isEqualTo("Do not subtract this G");
        browser.type("5.4");
        assertThat(said("air")).contains("copy for the file");
    }

    /** WCAG 2.1, success criterion 1.4.6 (recalled): relative luminance and the ratio of two, at least 7 to 1. */
    private static final String WORST_CONTRAST = "(() => { const lin = c => { c /= 255;"
            + " return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4; };"
            + " const lum = s => { const m = s.match(/[\\d.]+/g).map(Number);"
            + " return 0.2126 * lin(m[0]) + 0.7152 * lin(m[1]) + 0.0722 * lin(m[2]); };"
            + " const back = e => { for (; e; e = e.parentElement) { const b = getComputedStyle(e).backgroundColor;"
            + " if (!/^rgba.*, 0\\)$/.test(b)) return b; } return 'rgb(255, 255, 255)'; };"
            + " return Math.min(...[...document.querySelectorAll('body *')].filter(e => e.textContent.trim()"
            + " && e.tagName !== 'SCRIPT').map(e => { const a = lum(getComputedStyle(e).color), b = lum(back(e));"
            + " return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05); })); })()";

    private static final String SMALLEST_KEY = "Math.min(...[...document.querySelectorAll('button, input, summary')]"
            + ".flatMap(e => { const r = e.getBoundingClientRect(); return [r.width, r.height]; }))";

    @Test
    void inFourLanguagesNothingIsMissingTooWideTooPaleOrTooSmall() throws Exception {
        for (FactorCard card : List.of(
                Cards.usual(),
                Cards.everythingLong("-0.35", true),
                Cards.in(CardState.SOURCE_CHANGED, Cards.training("0.3", true)))) {
            open(card);
            browser.type("5.4");
            browser.press("keep");
            browser.type("7.9");
            browser.press("empty");
            browser.ask("document.getElementById('whole').open = true");
            for (String language : FieldHandout.LANGUAGES) {
                browser.press("language-" + language);
                if (System.getenv("PHONE_SHOTS") != null) {
                    browser.photograph(Path.of(
                            System.getenv("PHONE_SHOTS"),
                            language + card.mixTitle().length() + card.state() + ".png"));
                }
                assertThat(browser.ask("document.documentElement.lang")).isEqualTo(language);
                assertThat(browser.ask("document.body.innerText")).doesNotContain("undefined", "null", "{0}", "{1}");
                assertThat(Integer.parseInt(browser.ask("document.documentElement.scrollWidth")))
                        .as(language)
                        .isLessThanOrEqualTo(360);
                assertThat(Double.parseDouble(browser.ask(WORST_CONTRAST)))
                        .as(language)
                        .isGreaterThanOrEqualTo(7);
                assertThat(Double.parseDouble(browser.ask(SMALLEST_KEY)))
                        .as(language)
                        .isGreaterThanOrEqualTo(48);
            }
        }
        assertThat(browser.complaints()).isEmpty();
    }

    /** The watch itself can fail: without its policy the same page reaches a server on this machine. */
    @Test
    void evenAScriptInThePageCannotReachTheNetwork() throws Exception {
        try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            String attempt = "fetch('http://127.0.0.1:" + server.getLocalPort()
                    + "/', {mode: 'no-cors', signal: AbortSignal.timeout(2000)}).then(() => 'sent', e => e.name)";
            assertThat(browser.ask(attempt)).isEqualTo("TypeError");
            assertThat(browser.requests().stream()
                            .filter(address -> address.startsWith("http"))
                            .toList())
                    .isEmpty();
            Path page = folder.resolve("page.html");
            String open = Files.readString(page).replaceFirst("<meta http-equiv[^>]*>", "");
            browser.open(Files.writeString(folder.resolve("open.html"), open));
            Thread answering = new Thread(() -> {
                try (var caller = server.accept()) {
                    caller.getInputStream().read();
                    caller.getOutputStream()
                            .write("HTTP/1.1 204 No Content\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
                } catch (IOException closed) {
                    // Nobody called.
                }
            });
            answering.start();
            assertThat(browser.ask(attempt)).isEqualTo("sent");
            assertThat(browser.requests()).anyMatch(address -> address.startsWith("http"));
            answering.join();
        }
    }
}
