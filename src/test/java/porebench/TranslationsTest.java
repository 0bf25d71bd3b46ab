package porebench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.ChoiceFormat;
import java.text.Format;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.TextFiles.Translation;
import porebench.method.Profile;
import porebench.method.SourceText;
import porebench.method.profile.Profiles;

/** Every text that a person reads is there in every language, says the same things and can be put together. */
class TranslationsTest {
    private static final Pattern GAP = Pattern.compile("\\{(\\d+)");
    private static final Pattern LETTERS = Pattern.compile("\\p{L}{2,}");
    private static final Pattern SINGLE_QUOTE = Pattern.compile("(?<!')'(?!')");
    private static final int SAMPLES = 9;
    private static final Path ALIKE = Path.of("src/test/resources/alike");

    /** The keys of texts that are on view together: menus and forms. */
    private static final List<String> TOGETHER = List.of(
            "menu\\.(book|edit|view|help)",
            "menu\\.(new|open|recent|demo|copy|import|export|verify|laboratory|profiles|quit)",
            "menu\\.(undo|redo|save|find)",
            "menu\\.(units\\..*|theme\\..*|language|person)",
            "menu\\.language\\..*",
            "menu\\.(cautions|about)",
            "laboratory\\..*",
            "profile\\..*",
            "form\\..*",
            "label\\.(?!column\\.|used-).*",
            "label\\.(?!dial\\.|used-).*",
            "source\\.(?!new).*|record\\..*",
            "meter\\.(?!new).*|record\\..*");

    static List<Translation> translations() {
        return TextFiles.there();
    }

    static List<Translation> patterns() {
        return with(TextFiles.ofSpain()).stream()
                .filter(each -> TextFiles.isOfPatterns(each.english()))
                .toList();
    }

    static List<Translation> ofDesk() {
        return with(TextFiles.ofSpain()).stream()
                .filter(each -> each.english().toString().contains("desk"))
                .toList();
    }

    static List<Translation> profiles() {
        return TextFiles.there().stream()
                .filter(each -> TextFiles.isProfile(each.english()))
                .toList();
    }

    static List<Translation> ofSpain() {
        return TextFiles.ofSpain();
    }

    private static List<Translation> with(List<Translation> more) {
        return Stream.concat(TextFiles.there().stream(), more.stream()).toList();
    }

    @Test
    void theBundlesAreFound() {
        assertThat(TextFiles.bundles().stream().map(TextFiles::nameOf))
                .contains("problems.properties", "help.properties", "print.properties", "astm-c231.properties")
                .hasSizeGreaterThan(15);
        assertThat(TextFiles.there()).hasSizeGreaterThan(TextFiles.bundles().size());
        assertThat(TextFiles.ofSpain()).isNotEmpty();
    }

    @Test
    void everyBundleIsThereInEveryLanguage() {
        List<String> missing = TextFiles.wanted().stream()
                .filter(each -> !Files.exists(each.file()))
                .map(Translation::toString)
                .toList();
        assertThat(missing).as("files that are not there").isEmpty();
    }

    @Test
    void everyFileOfTextsIsOfALanguageThatIsOffered() throws IOException {
        Set<String> known = new TreeSet<>();
        TextFiles.bundles().forEach(bundle -> known.add(bundle.toString()));
        with(TextFiles.ofSpain()).forEach(each -> known.add(each.file().toString()));
        try (Stream<Path> files = Files.walk(TextFiles.FOLDER)) {
            assertThat(files.filter(file -> file.toString().endsWith(".properties"))
                            .filter(file -> !file.getParent().endsWith("theme"))
                            .map(Path::toString))
                    .containsExactlyInAnyOrderElementsOf(known);
        }
    }

    @ParameterizedTest
    @MethodSource("translations")
    void everyTextIsThereAndNoOther(Translation translation) {
        assertThat(translation.texts().keySet())
                .as("keys of %s", translation)
                .containsExactlyInAnyOrderElementsOf(
                        TextFiles.read(translation.english()).keySet());
    }

    /** What Spain says like the Americas is not written twice. */
    @ParameterizedTest
    @MethodSource("ofSpain")
    void ofSpainThereIsOnlyWhatItSaysOtherwise(Translation translation) {
        Map<String, String> americas = new Translation(translation.english(), "es").texts();
        assertThat(americas.keySet())
                .as("%s: porebench.SpainTexts writes it anew", translation)
                .containsAll(translation.texts().keySet());
        translation
                .texts()
                .forEach((key, text) -> assertThat(text)
                        .as("%s in %s, which porebench.SpainTexts writes anew", key, translation)
                        .isNotEqualTo(americas.get(key)));
    }

    @Test
    void noKeyStandsTwice() throws IOException {
        List<Path> files = new ArrayList<>(TextFiles.bundles());
        with(TextFiles.ofSpain()).forEach(each -> files.add(each.file()));
        for (Path file : files) {
            List<String> keys = Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                    .filter(line -> !line.startsWith("#") && line.contains(" = "))
                    .map(line -> line.substring(0, line.indexOf(" = ")))
                    .toList();
            assertThat(keys).as("keys of %s", file).doesNotHaveDuplicates();
        }
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void everyTextHasTheSamePlacesForValues(Translation translation) {
        Map<String, String> english = TextFiles.read(translation.english());
        translation
                .texts()
                .forEach((key, text) -> assertThat(places(text))
                        .as("places of %s in %s", key, translation)
                        .isEqualTo(places(english.getOrDefault(key, ""))));
    }

    private static Set<String> places(String text) {
        Matcher matcher = GAP.matcher(text);
        Set<String> places = new TreeSet<>();
        while (matcher.find()) {
            places.add(matcher.group(1));
        }
        return places;
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void everyTextCanBePutTogether(Translation translation) {
        Locale locale = Locale.forLanguageTag(translation.language().replace('_', '-'));
        translation.texts().forEach((key, text) -> {
            Set<Integer> choices = choices(text);
            for (int count : List.of(1, 2)) {
                List<Object> values = new ArrayList<>();
                for (int place = 0; place < SAMPLES; place++) {
                    values.add(choices.contains(place) ? (Object) count : "<" + place + ">");
                }
                String said = new MessageFormat(text, locale).format(values.toArray());
                assertThat(said).as("%s of %s", key, translation).doesNotContain("{", "}", "''");
                for (String place : places(text)) {
                    if (!choices.contains(Integer.valueOf(place))) {
                        assertThat(said).as("%s of %s", key, translation).contains("<" + place + ">");
                    }
                }
            }
        });
    }

    private static Set<Integer> choices(String text) {
        Format[] formats = new MessageFormat(text, Locale.ROOT).getFormatsByArgumentIndex();
        Set<Integer> choices = new TreeSet<>();
        for (int place = 0; place < formats.length; place++) {
            if (formats[place] instanceof ChoiceFormat) {
                choices.add(place);
            }
        }
        return choices;
    }

    /** One apostrophe would be swallowed, and what is behind it would not be filled. */
    @ParameterizedTest
    @MethodSource("patterns")
    void anApostropheStandsTwice(Translation translation) {
        assertThat(withOneQuote(translation.texts())).as("%s", translation).isEmpty();
        assertThat(withOneQuote(TextFiles.read(translation.english())))
                .as("English of %s", translation)
                .isEmpty();
    }

    private static List<String> withOneQuote(Map<String, String> texts) {
        return texts.entrySet().stream()
                .filter(text -> SINGLE_QUOTE.matcher(text.getValue()).find())
                .map(text -> text.getKey() + " = " + text.getValue())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("translations")
    void aTextIsOtherThanTheEnglishOneUnlessItHasNoWordsOrIsKnownToBeAlike(Translation translation) {
        Map<String, String> english = TextFiles.read(translation.english());
        Map<String, String> texts = translation.texts();
        Set<String> alike = alike(translation.language());
        List<String> same = english.keySet().stream()
                .filter(key -> english.get(key).equals(texts.get(key)))
                .filter(key -> LETTERS.matcher(GAP.matcher(english.get(key)).replaceAll(""))
                        .find())
                .filter(key -> !alike.contains(english.get(key)))
                .filter(key -> !(TextFiles.isProfile(translation.english()) && key.equals("title")))
                .sorted()
                .toList();
        assertThat(same)
                .as("texts of %s that are still English, or belong in %s", translation, ALIKE)
                .isEmpty();
    }

    /** Returns what is written alike in English and in a language: names, units, and words of both; a text a line. */
    private static Set<String> alike(String language) {
        try {
            return new TreeSet<>(Files.readAllLines(ALIKE.resolve(language + ".txt"), StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException("reading what is alike in " + language, failure);
        }
    }

    @ParameterizedTest
    @MethodSource("ofDesk")
    void aTextHasALetterToReachItByWhereTheEnglishOneHas(Translation translation) {
        Map<String, String> english = TextFiles.read(translation.english());
        translation
                .texts()
                .forEach((key, text) -> assertThat(mnemonic(text).isEmpty())
                        .as("letter of %s in %s", key, translation)
                        .isEqualTo(mnemonic(english.getOrDefault(key, "")).isEmpty()));
    }

    /** Labels of one form, and entries of one menu, must not share a letter. */
    @ParameterizedTest
    @MethodSource("ofDesk")
    void noTwoLabelsOfAFormShareALetter(Translation translation) {
        Map<String, String> texts = translation.texts();
        if (translation.language().equals(TextFiles.SPAIN)) {
            new Translation(translation.english(), "es").texts().forEach(texts::putIfAbsent);
        }
        for (String group : TOGETHER) {
            List<String> letters = texts.entrySet().stream()
                    .filter(text -> text.getKey().matches(group))
                    .flatMap(text -> mnemonic(text.getValue()).stream())
                    .toList();
            assertThat(letters).as("letters of %s in %s", group, translation).doesNotHaveDuplicates();
        }
    }

    private static List<String> mnemonic(String text) {
        int ampersand = text.indexOf('&');
        return ampersand < 0 || ampersand + 1 >= text.length()
                ? List.of()
                : List.of(text.substring(ampersand + 1, ampersand + 2).toUpperCase(Locale.ROOT));
    }

    @ParameterizedTest
    @ValueSource(strings = {"es", "fr", "de"})
    void everyTextKnownToBeAlikeIsOne(String language) {
        Set<String> alike = new TreeSet<>();
        for (Path bundle : TextFiles.bundles()) {
            Map<String, String> texts = new Translation(bundle, language).texts();
            TextFiles.read(bundle).forEach((key, english) -> {
                if (english.equals(texts.get(key))) {
                    alike.add(english);
                }
            });
        }
        assertThat(alike).containsAll(alike(language));
    }

    /** The texts of the help are written for picocli: a percent sign twice, a new line %n, an apostrophe once. */
    @ParameterizedTest
    @MethodSource("translations")
    void theHelpCanBePutTogether(Translation translation) {
        if (!TextFiles.isHelp(translation.english())) {
            return;
        }
        translation.texts().forEach((key, text) -> {
            assertThat(String.format(Locale.ROOT, text)).as(key).isNotNull().doesNotContain("''");
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"es", "fr", "de"})
    void everySourceOfANamedProfileIsSaid(String language) {
        SourceText translated = SourceText.in(Locale.forLanguageTag(language));
        SourceText english = SourceText.in(Locale.ENGLISH);
        for (Profile profile : Profiles.named()) {
            assertThat(translated.say(profile.edition())).isNotEqualTo(profile.edition());
            profile.figures().values().forEach(figure -> {
                assertThat(translated.say(figure.clause())).isNotEqualTo(figure.clause());
                assertThat(english.say(figure.clause())).isEqualTo(figure.clause());
            });
        }
        assertThat(translated.say("our own practice")).isEqualTo("our own practice");
    }

    /** A clause, number or year of a standard is the same in every language. */
    @ParameterizedTest
    @MethodSource("profiles")
    void theNumbersOfASourceStay(Translation translation) {
        Map<String, String> texts = translation.texts();
        TextFiles.read(translation.english())
                .forEach((key, line) -> assertThat(digits(texts.getOrDefault(key, "")))
                        .as("numbers of %s in %s", key, translation)
                        .isEqualTo(digits(line.substring(line.lastIndexOf('|') + 1))));
    }

    private static String digits(String text) {
        return text.replaceAll("[^0-9]+", " ").strip();
    }

    @Test
    void aTextWithoutItsValueOrItsLetterWouldBeFound() {
        assertThat(places("{0} de {1,choice,1#uno|1<{1}}")).containsExactly("0", "1");
        assertThat(mnemonic("Guardar &como")).containsExactly("C");
        assertThat(mnemonic("Guardar")).isEmpty();
        assertThat(withOneQuote(Map.of("a", "l'air {0}", "b", "l''air {0}"))).containsExactly("a = l'air {0}");
        assertThat(alike("fr")).contains("Type B").doesNotContain("Sample", "Trial");
    }
}
