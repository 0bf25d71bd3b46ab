package porebench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.ChoiceFormat;
import java.text.Format;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.method.Profile;
import porebench.method.SourceText;
import porebench.method.profile.Profiles;

/** Every text that a person reads is there in every language, says the same things and can be put together. */
class TranslationsTest {
    private static final Path TEXTS = Path.of("src/main/resources/porebench");
    private static final Locale SPANISH = Locale.forLanguageTag("es");

    private static final Pattern GAP = Pattern.compile("\\{(\\d+)");
    private static final Pattern LETTERS = Pattern.compile("\\p{L}{2,}");
    private static final int SAMPLES = 9;

    /** What is written alike in both languages: names, units, and words of both. */
    private static final Set<String> ALIKE = Set.of(
            "SI",
            "A4",
            "A6",
            "min",
            "mL",
            "{0} min",
            "{0} kPa",
            "{0} mm",
            "{0} L ({1} %)",
            "Ctrl+{0}",
            "{0}, {1}, factor {2}",
            "Porebench",
            "{0} – Porebench",
            "&English",
            "E&spañol",
            "Material",
            "Error",
            "Error, %",
            "error: {0}",
            "no",
            "factor G",
            "Rev.",
            "Abs. %",
            "Dixon",
            "Anderson-Darling A2*",
            "Shapiro-Wilk W");

    private static final Set<String> ALIKE_IN_FRENCH = Set.of("meter.A", "meter.B", "card.table.air");

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

    static List<Path> bundles() throws IOException {
        try (Stream<Path> files = Files.walk(TEXTS)) {
            return files.filter(file -> file.toString().endsWith(".properties"))
                    .filter(file -> !file.getParent().endsWith("theme"))
                    .filter(file -> !nameOf(file).contains("_"))
                    .sorted()
                    .toList();
        }
    }

    static List<Path> patterns() throws IOException {
        return bundles().stream()
                .filter(file -> !isProfile(file) && !isHelp(file))
                .toList();
    }

    private static boolean isProfile(Path bundle) {
        return bundle.getParent().endsWith("profile");
    }

    private static boolean isHelp(Path bundle) {
        return nameOf(bundle).equals("help.properties");
    }

    private static String nameOf(Path file) {
        return file.getFileName().toString();
    }

    private static Path spanish(Path bundle) {
        return bundle.resolveSibling(nameOf(bundle).replace(".properties", "_es.properties"));
    }

    private static Map<String, String> read(Path file) {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            texts.load(reader);
        } catch (IOException failure) {
            throw new UncheckedIOException("reading " + file, failure);
        }
        Map<String, String> read = new HashMap<>();
        texts.stringPropertyNames().forEach(key -> read.put(key, texts.getProperty(key)));
        return read;
    }

    @Test
    void theBundlesAreFound() throws IOException {
        assertThat(bundles().stream().map(TranslationsTest::nameOf))
                .contains("problems.properties", "help.properties", "print.properties", "astm-c231.properties")
                .hasSizeGreaterThan(15);
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everyTextIsThereInSpanishAndNoOther(Path bundle) {
        assertThat(spanish(bundle)).exists();
        assertThat(read(spanish(bundle)).keySet())
                .containsExactlyInAnyOrderElementsOf(read(bundle).keySet());
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void noKeyStandsTwice(Path bundle) throws IOException {
        for (Path file : List.of(bundle, spanish(bundle))) {
            List<String> keys = Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                    .filter(line -> !line.startsWith("#") && line.contains(" = "))
                    .map(line -> line.substring(0, line.indexOf(" = ")))
                    .toList();
            assertThat(keys).as("keys of %s", file).doesNotHaveDuplicates();
        }
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void everyTextHasTheSamePlacesForValues(Path bundle) {
        Map<String, String> spanish = read(spanish(bundle));
        read(bundle)
                .forEach((key, english) -> assertThat(places(spanish.get(key)))
                        .as("places of %s in %s", key, bundle)
                        .isEqualTo(places(english)));
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
    void everyTextCanBePutTogether(Path bundle) {
        read(spanish(bundle)).forEach((key, text) -> {
            Set<Integer> choices = choices(text);
            for (int count : List.of(1, 2)) {
                List<Object> values = new ArrayList<>();
                for (int place = 0; place < SAMPLES; place++) {
                    values.add(choices.contains(place) ? (Object) count : "<" + place + ">");
                }
                String said = new MessageFormat(text, SPANISH).format(values.toArray());
                assertThat(said).as("%s of %s", key, bundle).doesNotContain("{", "}", "''");
                for (String place : places(text)) {
                    if (!choices.contains(Integer.valueOf(place))) {
                        assertThat(said).as("%s of %s", key, bundle).contains("<" + place + ">");
                    }
                }
            }
        });
    }

    private static Set<Integer> choices(String text) {
        Format[] formats = new MessageFormat(text, SPANISH).getFormatsByArgumentIndex();
        Set<Integer> choices = new TreeSet<>();
        for (int place = 0; place < formats.length; place++) {
            if (formats[place] instanceof ChoiceFormat) {
                choices.add(place);
            }
        }
        return choices;
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void aTextIsOtherThanTheEnglishOneUnlessItHasNoWordsOrIsKnownToBeAlike(Path bundle) {
        Map<String, String> english = read(bundle);
        Map<String, String> spanish = read(spanish(bundle));
        List<String> same = english.keySet().stream()
                .filter(key -> english.get(key).equals(spanish.get(key)))
                .filter(key -> LETTERS.matcher(GAP.matcher(english.get(key)).replaceAll(""))
                        .find())
                .filter(key -> !ALIKE.contains(english.get(key)))
                .filter(key -> !(isProfile(bundle) && key.equals("title")))
                .sorted()
                .toList();
        assertThat(same).as("texts of %s that are still English", bundle).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void aTextHasALetterToReachItByWhereTheEnglishOneHas(Path bundle) {
        if (!bundle.toString().contains("desk")) {
            return;
        }
        Map<String, String> spanish = read(spanish(bundle));
        read(bundle)
                .forEach((key, english) -> assertThat(mnemonic(spanish.get(key)).isEmpty())
                        .as("letter of %s in %s", key, bundle)
                        .isEqualTo(mnemonic(english).isEmpty()));
    }

    /** Labels of one form, and entries of one menu, must not share a letter. */
    @ParameterizedTest
    @MethodSource("bundles")
    void noTwoLabelsOfAFormShareALetter(Path bundle) {
        if (!bundle.toString().contains("desk")) {
            return;
        }
        Map<String, String> spanish = read(spanish(bundle));
        for (String group : TOGETHER) {
            List<String> letters = spanish.entrySet().stream()
                    .filter(text -> text.getKey().matches(group))
                    .flatMap(text -> mnemonic(text.getValue()).stream())
                    .toList();
            assertThat(letters).as("letters of %s in %s", group, bundle).doesNotHaveDuplicates();
        }
    }

    private static List<String> mnemonic(String text) {
        int ampersand = text.indexOf('&');
        return ampersand < 0 || ampersand + 1 >= text.length()
                ? List.of()
                : List.of(text.substring(ampersand + 1, ampersand + 2).toUpperCase(Locale.ROOT));
    }

    @Test
    void everyTextKnownToBeAlikeIsOne() throws IOException {
        Set<String> alike = new TreeSet<>();
        for (Path bundle : bundles()) {
            Map<String, String> spanish = read(spanish(bundle));
            read(bundle).forEach((key, english) -> {
                if (english.equals(spanish.get(key))) {
                    alike.add(english);
                }
            });
        }
        assertThat(alike).containsAll(ALIKE);
    }

    /** The texts of the help are written for picocli: a percent sign twice, a new line %n. */
    @Test
    void theHelpCanBePutTogether() {
        Path help = TEXTS.resolve("command/help.properties");
        read(spanish(help))
                .forEach((key, text) ->
                        assertThat(String.format(SPANISH, text)).as(key).isNotNull());
    }

    @Test
    void everySourceOfANamedProfileIsSaidInSpanish() {
        SourceText spanish = SourceText.in(SPANISH);
        SourceText english = SourceText.in(Locale.ENGLISH);
        for (Profile profile : Profiles.named()) {
            assertThat(spanish.say(profile.edition())).isNotEqualTo(profile.edition());
            profile.figures().values().forEach(figure -> {
                assertThat(spanish.say(figure.clause())).isNotEqualTo(figure.clause());
                assertThat(english.say(figure.clause())).isEqualTo(figure.clause());
            });
        }
        assertThat(spanish.say("our own practice")).isEqualTo("our own practice");
    }

    /** A clause, number or year of a standard is the same in every language. */
    @ParameterizedTest
    @MethodSource("bundles")
    void theNumbersOfASourceStay(Path bundle) {
        if (!isProfile(bundle)) {
            return;
        }
        Map<String, String> spanish = read(spanish(bundle));
        read(bundle)
                .forEach((key, line) -> assertThat(digits(spanish.get(key)))
                        .as("numbers of %s in %s", key, bundle)
                        .isEqualTo(digits(line.substring(line.lastIndexOf('|') + 1))));
    }

    private static String digits(String text) {
        return text.replaceAll("[^0-9]+", " ").strip();
    }

    /** What stands on cards is there in French and German too, and where Spain says it otherwise in the Spanish of Spain. */
    @ParameterizedTest
    @ValueSource(strings = {"fr", "de", "es_ES"})
    void whatStandsOnCardsIsThereInEveryLanguageOfCards(String language) {
        Path bundle = TEXTS.resolve("evidence/paper/card.properties");
        Path other = bundle.resolveSibling("card_" + language + ".properties");
        boolean onlyWhatDiffers = language.equals("es_ES");
        Map<String, String> plain = read(onlyWhatDiffers ? spanish(bundle) : bundle);
        Map<String, String> texts = read(other);
        if (onlyWhatDiffers) {
            assertThat(plain.keySet()).containsAll(texts.keySet());
            texts.forEach((key, text) -> assertThat(text).as(key).isNotEqualTo(plain.get(key)));
        } else {
            assertThat(texts.keySet()).containsExactlyInAnyOrderElementsOf(plain.keySet());
        }
        texts.forEach((key, text) -> {
            assertThat(places(text)).as(key).isEqualTo(places(plain.get(key)));
            String said = new MessageFormat(text, Locale.ROOT).format(new Object[] {"<0>", "<1>", "<2>"});
            assertThat(said).as(key).doesNotContain("{", "}", "''");
            places(text).forEach(place -> assertThat(said).as(key).contains("<" + place + ">"));
            if (said.contains("'")) {
                assertThat(language).as(key).isEqualTo("fr");
            }
            assertThat(text.matches(".*[^']'[^'].*"))
                    .as("single quote in %s", key)
                    .isFalse();
        });
        if (!onlyWhatDiffers) {
            assertThat(texts.entrySet().stream()
                            .filter(text -> text.getValue().equals(plain.get(text.getKey())))
                            .map(Map.Entry::getKey)
                            .filter(key -> LETTERS.matcher(
                                            GAP.matcher(plain.get(key)).replaceAll(""))
                                    .find()))
                    .containsExactlyInAnyOrderElementsOf(
                            language.equals("fr") ? ALIKE_IN_FRENCH : Set.of("card.revision"));
        }
    }

    @Test
    void aTextWithoutItsValueOrItsLetterWouldBeFound() {
        assertThat(places("{0} de {1,choice,1#uno|1<{1}}")).containsExactly("0", "1");
        assertThat(mnemonic("Guardar &como")).containsExactly("C");
        assertThat(mnemonic("Guardar")).isEmpty();
    }
}
