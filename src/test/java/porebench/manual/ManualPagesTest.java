package porebench.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.command.Terminal;
import porebench.desk.manual.TextMarks;

/** Every link of the manual leads somewhere, every page is in the contents, and lines are short enough to be read in a terminal. */
class ManualPagesTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#{1,6} +(.*)$");
    private static final Pattern NAME = Pattern.compile("<a name=\"([^\"]+)\">");
    private static final Pattern MADE = Pattern.compile("problems\\.md#[a-z]+\\.[a-z0-9-]+");

    static List<Page> pages() {
        return Page.all();
    }

    private static String withoutBlocks(String text) {
        return text.replaceAll("(?s)```.*?\n```", "");
    }

    private static Set<String> anchors(Page page) {
        Set<String> anchors = new HashSet<>();
        Map<String, Integer> seen = new HashMap<>();
        Matcher headings = HEADING.matcher(withoutBlocks(page.text()));
        while (headings.find()) {
            // As the page of a repository names its headings.
            String anchor = headings.group(1)
                    .toLowerCase(Locale.ROOT)
                    .replaceAll("[^\\p{L}\\p{N}\\s_-]", "")
                    .strip()
                    .replaceAll("\\s", "-");
            int times = seen.merge(anchor, 1, Integer::sum);
            anchors.add(times == 1 ? anchor : anchor + "-" + (times - 1));
        }
        NAME.matcher(page.text()).results().forEach(name -> anchors.add(name.group(1)));
        return anchors;
    }

    /** Links name the headings of the English pages in every language. */
    private static Page english(Path target) {
        Path english = Page.FOLDER.resolve(target.getFileName());
        return Page.read(target.startsWith(Page.FOLDER) && Files.exists(english) ? english : target);
    }

    private static List<Integer> levels(Page page) {
        return withoutBlocks(page.text())
                .lines()
                .filter(line -> line.matches("#{1,6} .*"))
                .map(line -> line.indexOf(' '))
                .toList();
    }

    /** By their order the headings of a translation have the names of those of the English page. */
    @Test
    void aTranslationHasTheHeadingsAndTheContentsOfTheEnglishPage() {
        for (Page page : Page.all()) {
            Page english = Page.read(Page.FOLDER.resolve(page.file().getFileName()));
            assertThat(levels(page)).as(page.toString()).isEqualTo(levels(english));
            if (page.file().endsWith("README.md")) {
                assertThat(LINK.matcher(page.text()).results().map(found -> found.group(1)))
                        .as(page.toString())
                        .containsExactlyElementsOf(LINK.matcher(english.text())
                                .results()
                                .map(found -> found.group(1))
                                .toList());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyLinkLeadsToAPageAHeadingOrAFile(Page page) {
        List<String> broken = new ArrayList<>();
        for (String link : LINK.matcher(withoutBlocks(page.text()))
                .results()
                .map(found -> found.group(1))
                .toList()) {
            if (link.startsWith("https://") || MADE.matcher(link).matches()) {
                continue;
            }
            String file = link.replaceFirst("#.*", "");
            Path target = file.isEmpty()
                    ? page.file()
                    : page.file().resolveSibling(file).normalize();
            if (!Files.exists(target)) {
                // What is not there in a language is shown in English.
                target = Page.FOLDER.resolve(target.getFileName());
            }
            int hash = link.indexOf('#');
            Set<String> names = new HashSet<>();
            if (Files.exists(target) && hash >= 0) {
                names.addAll(anchors(english(target)));
                names.addAll(anchors(Page.read(target)));
            }
            if (!Files.exists(target) || hash >= 0 && !names.contains(link.substring(hash + 1))) {
                broken.add(link);
            }
        }
        assertThat(broken).as("links of %s that lead nowhere", page).isEmpty();
    }

    @Test
    void everyPageIsInTheContents() {
        String contents = Page.named("README").text();
        assertThat(Page.all().stream()
                        .filter(page -> page.file().getParent().equals(Page.FOLDER))
                        .map(Page::toString)
                        .filter(name -> !name.equals("README.md")))
                .isNotEmpty()
                .allSatisfy(name -> assertThat(contents).contains("](" + name + ")"));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void aPageBeginsWithItsTitleAndHasNoOther(Page page) {
        assertThat(page.text()).startsWith("# ");
        assertThat(withoutBlocks(page.text()).lines().filter(line -> line.startsWith("# ")))
                .hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void whatAPageQuotesIsWhatTheProgramSays(Page page) {
        if (Set.of("en", "de").contains(page.locale().getLanguage())) {
            assertThat(page.text())
                    .as("run ManualTexts of the tests, which writes the quoted sentences anew")
                    .isEqualTo(TextMarks.anew(page.text(), page.locale()));
        }
    }

    /** Every sentence of the Variability page has a line in the manual; what is a figure or a heading has none. */
    @Test
    void everySentenceOfVariabilityIsExplained() throws IOException {
        String page = Page.named("variability").text();
        Map<String, String> asked = Map.of(
                "desk.variability.variability", "(verdict|agree|wrong|shape|known)\\..*",
                "method.trial.stop", "(stop|basis|risks|next|clause)\\..*",
                "evidence.change.comparison", "verdict\\..*",
                "evidence.hold.hold", "verdict\\..*");
        Set<String> parts = Set.of("known.show", "next.one-card", "next.two-cards");
        for (Map.Entry<String, String> bundle : asked.entrySet()) {
            List<String> keys = Files.readAllLines(
                            Path.of(
                                    "src/main/resources/porebench",
                                    bundle.getKey().replace('.', '/') + ".properties"),
                            StandardCharsets.UTF_8)
                    .stream()
                    .filter(line -> !line.startsWith("#") && line.contains(" = "))
                    .map(line -> line.substring(0, line.indexOf(" = ")).strip())
                    .filter(key -> key.matches(bundle.getValue()) && !parts.contains(key))
                    .toList();
            assertThat(keys)
                    .isNotEmpty()
                    .allSatisfy(key -> assertThat(page).contains("<!-- text " + bundle.getKey() + " " + key + " -->"));
        }
    }

    @Test
    void everyCommandIsListed() {
        String page = Page.named("commands").text();
        assertThat(new Terminal(Path.of("")).commandLine().getSubcommands().keySet())
                .hasSizeGreaterThan(20)
                .allSatisfy(name -> assertThat(page).contains("`" + name + "`"));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void noBlockIsLeftOpen(Page page) {
        assertThat(page.text().lines().filter(line -> line.startsWith("```")).count() % 2)
                .isZero();
    }
}
