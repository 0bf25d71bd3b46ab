package porebench.desk.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import org.junit.jupiter.api.Test;
import porebench.desk.manual.ManualModel.Spot;

/** What a reader of the manual can do, without its window. */
class ManualModelTest {
    private static final Manual ENGLISH = Manual.read(Locale.ENGLISH);

    private final ManualModel model = new ManualModel(ENGLISH);

    private static Spot top(String page) {
        return new Spot(page, "");
    }

    @Test
    void itOpensOnTheContentsAndTheyListEveryPage() {
        assertThat(model.page().name()).isEqualTo(ManualPage.CONTENTS);
        assertThat(model.pages()).hasSizeGreaterThan(4);
        assertThat(model.pages().get(1).name()).isEqualTo("install");
        assertThat(model.pages()).allSatisfy(page -> {
            assertThat(page.title()).isNotBlank().doesNotContain("#");
            assertThat(page.isTranslated()).isTrue();
        });
    }

    @Test
    void itGoesBackAndForwardAndANewWayForgetsTheOldOne() {
        assertThat(model.canGoBack()).isFalse();
        assertThat(model.canGoForward()).isFalse();
        model.back();
        model.forward();
        assertThat(model.now()).isEqualTo(top(ManualPage.CONTENTS));
        assertThat(model.open(top("install"))).isTrue();
        assertThat(model.follow("first-factor.md#in-full")).isTrue();
        assertThat(model.now()).isEqualTo(new Spot("first-factor", "in-full"));
        model.back();
        assertThat(model.page().name()).isEqualTo("install");
        assertThat(model.canGoForward()).isTrue();
        model.forward();
        assertThat(model.page().name()).isEqualTo("first-factor");
        model.back();
        assertThat(model.open(top("lab-book"))).isTrue();
        assertThat(model.canGoForward()).isFalse();
        model.back();
        assertThat(model.page().name()).isEqualTo("install");
    }

    @Test
    void whatIsNoPageIsPassedOver() {
        assertThat(model.open(top("no-such-page"))).isFalse();
        assertThat(model.open(top(ManualPage.CONTENTS)))
                .as("it is on view already")
                .isFalse();
        assertThat(model.follow("https://example.org/a.md")).isFalse();
        assertThat(model.follow("../formats.md")).isFalse();
        assertThat(model.follow("picture.png")).isFalse();
        assertThat(model.canGoBack()).isFalse();
    }

    @Test
    void aLinkWithinThePageStaysOnIt() {
        model.open(top("lab-book"));
        assertThat(model.follow("#backup")).isTrue();
        assertThat(model.now()).isEqualTo(new Spot("lab-book", "backup"));
    }

    @Test
    void itFindsPagesByAllWordsWhateverTheirLettersAndTitlesFirst() {
        assertThat(model.find("WITHDRAW inundate"))
                .extracting(found -> found.page().name())
                .contains("weigh-out");
        assertThat(model.find("install").get(0).page().name()).isEqualTo("install");
        assertThat(model.find("calibration").get(0).page().name())
                .as("first-factor has the word too, but not in its title")
                .isEqualTo("meters");
        assertThat(model.find("  ")).isEmpty();
        assertThat(model.find("inundate xyzzy")).isEmpty();
        ManualSearch.Found found = model.find("oven-dry").get(0);
        assertThat(found.words()).containsIgnoringCase("oven-dry").hasSizeLessThan(120);
        assertThat(model.find("résténnt inexistant")).isEmpty();
        assertThat(model.find("bâckup")).as("accents make no difference").isNotEmpty();
    }

    @Test
    void aPageOfAnotherLanguageShowsThePicturesOfTheEnglishOne() {
        Manual french = Manual.read(Locale.FRENCH);
        assertThat(french.pages()).hasSameSizeAs(ENGLISH.pages()).allMatch(ManualPage::isTranslated);
        ManualPage cards = french.named("cards").orElseThrow();
        assertThat(cards.title()).isEqualTo("Cartes et rappel");
        assertThat(ManualHtml.of(cards, "", 100))
                .contains("src=\"../pictures/card.png\"")
                .doesNotContain("../../");
    }

    @Test
    void aLanguageWithoutAPageShowsTheEnglishOneAndKnowsIt() {
        Manual other = Manual.read(Locale.forLanguageTag("pt-BR"));
        assertThat(other.pages()).hasSameSizeAs(ENGLISH.pages());
        assertThat(other.named("install").orElseThrow().isTranslated()).isFalse();
        assertThat(Manual.folders(Locale.forLanguageTag("es-ES"))).containsExactly("es-ES/", "es/", "");
        assertThat(Manual.folders(Locale.FRENCH)).containsExactly("fr/", "");
        assertThat(Manual.folders(Locale.US)).containsExactly("");
        assertThat(Manual.folders(Locale.ROOT)).containsExactly("");
    }

    @Test
    void theListOfProblemsHasEveryCodeInTheReadersLanguage() throws Exception {
        Properties words = new Properties();
        try (var in = getClass().getResourceAsStream("/porebench/method/problems.properties")) {
            words.load(new java.io.InputStreamReader(in, java.nio.charset.StandardCharsets.UTF_8));
        }
        String list = ProblemList.in(Locale.ENGLISH);
        Set<String> codes = words.stringPropertyNames();
        assertThat(codes).hasSizeGreaterThan(500);
        codes.stream()
                .filter(code -> !code.startsWith("word.") && !code.startsWith("place."))
                .forEach(code -> assertThat(list).contains("<a name=\"" + code + "\"></a>`" + code + "`: "));
        assertThat(list).doesNotContain("{0}", "''").contains("## trial");
        assertThat(ProblemList.in(Locale.forLanguageTag("es"))).isNotEqualTo(list);
        assertThat(ProblemList.said("{0} off [37.5] mm, {1,choice,1#one {2}|1<{3} of them}: don''t"))
                .isEqualTo("\u2026 off 37.5 mm, \u2026: don't");
    }

    @Test
    void theGlossaryIsMadeFromTheTableAndSortedByTheReadersLanguage() {
        String csv = "# a remark\nconcept,en,es-419,es-ES,fr,known,not-en\n"
                + "stone,aggregate,agregado,árido,granulat,\"recalled (a, b)\",rock\n"
                + "bowl,bowl,recipiente,\"vaso, recipiente\",bol,seen,pot\n";
        assertThat(TermList.of(csv, Locale.ENGLISH))
                .isEqualTo("| English | español \\(Latinoamérica\\) | español \\(España\\) | français |  |\n"
                        + "|---|---|---|---|---|\n"
                        + "| aggregate | agregado | árido | granulat | recalled |\n"
                        + "| bowl | recipiente | vaso, recipiente | bol | seen |\n\n");
        assertThat(TermList.of(csv, Locale.FRENCH)).containsSubsequence("| bowl", "| aggregate");
        assertThat(TermList.of(csv, Locale.forLanguageTag("es-ES"))).containsSubsequence("| aggregate", "| bowl");
        assertThat(TermList.of(csv, Locale.forLanguageTag("es-MX"))).containsSubsequence("| aggregate", "| bowl");
        assertThat(TermList.of("concept,en,fr\nb,b,c\n", Locale.GERMANY)).contains("| b | c |");
        assertThat(TermList.of("", Locale.ENGLISH)).isEmpty();
        assertThat(TermList.cells("a,\"say \"\"b\"\", c\",")).isEqualTo(List.of("a", "say \"b\", c", ""));
    }

    @Test
    void aPageBecomesHtmlWithNamedHeadingsAndPicturesThatFit() {
        ManualPage page = ManualPage.of(
                "x", "# A page\n\n## Twice, then\n\n## Twice, then\n\n| a |\n|---|\n| 1 < 2 |\n\n![p](p.png)\n", true);
        assertThat(page.title()).isEqualTo("A page");
        String html = ManualHtml.of(page, "A note.", 500);
        assertThat(html)
                .contains("<p class=\"note\">A note.</p>")
                .contains("<h2><a name=\"twice-then\"></a>Twice, then</h2>")
                .contains("<a name=\"twice-then-1\"></a>")
                .contains("cellspacing=\"0\"", "1 &lt; 2", "width=\"500\"");
        assertThat(ManualHtml.of(page, "", 500)).doesNotContain("class=\"note\"");
        ManualPage translated = ManualPage.of("x", "# Una\n\n## Dos\n\n## Tres\n\n## Cuatro\n", true)
                .linkedAs(page);
        assertThat(ManualHtml.of(translated, "", 500))
                .contains("<a name=\"dos\"></a><a name=\"twice-then\"></a>Dos")
                .contains("<a name=\"tres\"></a><a name=\"twice-then-1\"></a>Tres")
                .contains("<h2><a name=\"cuatro\"></a>Cuatro");
    }
}
