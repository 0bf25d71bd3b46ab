package porebench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.TextFiles.Translation;
import porebench.method.Texts;

/** Each caution is worded once, and stands in sight wherever the hazard is. */
class CautionsTest {
    private static final String CAUTIONS = "method/cautions";
    private static final Pattern TAKEN_IN = Pattern.compile("\\[caution\\.([a-z]+(?:\\.[AB])?)]");

    /** What speaks of a hazard: a text that has one of these takes its caution in from the one place. */
    private static final Pattern HAZARD = Pattern.compile(
            "(?iu)\\b(20|25) kg|\\b(45|55) lb|silica|sílice|silice|quarzstaub|caustic|cáustic|caustiqu|\\bätzt\\b|ätzend"
                    + "|licensed|glass plate is|respirator");

    private static Map<String, String> english(String bundle) {
        return TextFiles.read(TextFiles.FOLDER.resolve(bundle + ".properties"));
    }

    private static Set<String> takenIn(String bundle, String keys) {
        Set<String> taken = new TreeSet<>();
        english(bundle).forEach((key, text) -> {
            if (key.matches(keys)) {
                TAKEN_IN.matcher(text).results().forEach(found -> taken.add(found.group(1)));
            }
        });
        return taken;
    }

    /** The places where a hazard is, and the cautions that stand there: pages of the window, sheets, forms, cards, phone. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "desk/frame/frame   | cautions\\..* | pressure.A pressure.B valve lift dust caustic plate floor rules",
                "desk/sample/sample | caution\\..*  | dust lift floor",
                "desk/trial/trial   | caution\\..*  | pressure.A pressure.B vent valve lift floor dust caustic rules",
                "desk/bench/bench   | caution\\..*  | pressure.A pressure.B vent valve lift floor dust",
                "desk/meter/meter   | caution\\..*  | pressure.A pressure.B vent valve lift floor plate rules",
                "print/print        | caution\\..*  | dust lift floor valve plate",
                "print/print        | sheet\\.auth.*| rules",
                "print/phone        | rules         | rules",
                "evidence/paper/card| caution\\..*  | pressure.A pressure.B caustic lift rules",
            })
    void theCautionsStandWhereTheHazardIs(String bundle, String keys, String cautions) {
        assertThat(takenIn(bundle, keys)).containsExactlyInAnyOrder(cautions.split(" "));
    }

    @Test
    void everyCautionIsTakenInSomewhereAndNoOtherIsAskedFor() {
        Set<String> taken = new TreeSet<>();
        for (Path bundle : TextFiles.bundles()) {
            String name = TextFiles.FOLDER
                    .relativize(bundle)
                    .toString()
                    .replace('\\', '/')
                    .replace(".properties", "");
            taken.addAll(takenIn(name, ".*"));
        }
        assertThat(taken).containsExactlyInAnyOrderElementsOf(english(CAUTIONS).keySet());
    }

    /** Every language takes in the same cautions as English, so that none is missing and none is worded a second time. */
    @Test
    void noLanguageWordsACautionASecondTime() {
        List<String> again = new ArrayList<>();
        for (Path bundle : TextFiles.bundles()) {
            if (bundle.endsWith(Path.of("method", "cautions.properties"))) {
                continue;
            }
            look(again, bundle, TextFiles.read(bundle));
            for (String language : TextFiles.LANGUAGES) {
                Map<String, String> texts = new Translation(bundle, language).texts();
                look(again, bundle, texts);
                TextFiles.read(bundle).forEach((key, text) -> {
                    if (TAKEN_IN.matcher(text).find()) {
                        assertThat(TAKEN_IN.matcher(texts.get(key)).results().map(found -> found.group(1)))
                                .as("%s %s in %s", bundle, key, language)
                                .containsExactlyElementsOf(TAKEN_IN.matcher(text)
                                        .results()
                                        .map(found -> found.group(1))
                                        .toList());
                    }
                });
            }
        }
        assertThat(again).as("texts that word a caution themselves").isEmpty();
    }

    private static void look(List<String> again, Path bundle, Map<String, String> texts) {
        texts.forEach((key, text) -> {
            if (HAZARD.matcher(TAKEN_IN.matcher(text).replaceAll("")).find()) {
                again.add(bundle + " " + key + ": " + text);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es-419", "es-ES", "fr", "de"})
    void aTextIsReadWithItsCautionsInTheReadersLanguage(String tag) {
        Locale locale = Locale.forLanguageTag(tag);
        Texts cautions = Texts.of("porebench.method.cautions", locale);
        Texts bench = Texts.of("porebench.desk.bench.bench", locale);
        assertThat(bench.get("caution.clean"))
                .isEqualTo(cautions.plain("lift") + " " + cautions.plain("floor"))
                .doesNotContain("[", "'");
        assertThat(cautions.plain("lift")).contains("20", "25 kg", "45", "55 lb");
    }

    @Test
    void theWordsAreThoseOfTheTrade() {
        Texts cautions = Texts.of("porebench.method.cautions", Locale.ENGLISH);
        assertThat(cautions.plain("lift")).contains("20 to 25 kg (45 to 55 lb)", "with a second person");
        assertThat(cautions.plain("dust")).contains("a respirator rated for silica dust");
        assertThat(cautions.plain("rules")).isEqualTo("Local rules and the responsible (licensed) engineer decide.");
    }
}
