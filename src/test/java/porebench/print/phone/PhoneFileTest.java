package porebench.print.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import porebench.command.JsonReading;
import porebench.evidence.CardState;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PhonePage;
import porebench.method.profile.Profiles;
import porebench.port.FieldHandout;
import porebench.print.Cards;
import porebench.record.Laboratory;

/** What stands in the file of a phone page, before a browser reads it. */
class PhoneFileTest {
    private static String file(FactorCard card, Locale locale) {
        return new String(PhoneFile.of(PhonePage.of(card, Profiles.standard()), locale), StandardCharsets.UTF_8);
    }

    private static Map<String, Object> data(String html) {
        return JsonReading.object(
                html.replaceFirst("(?s).*<script type=\"application/json\" id=\"card\">(.*?)</script>.*", "$1"));
    }

    @Test
    void aNameOfTheMixIsNoPartOfThePage() {
        String html = file(
                Cards.card(
                        new Laboratory("Lab </script><b>\u2028", ""),
                        "M<1>@style@",
                        "Title \"<!--\" \\ & @script@",
                        List.of("S"),
                        false,
                        new String[] {"0.3", "6.0", "1.5", "0.1", "10"}),
                Locale.ENGLISH);
        assertThat(html.split("</script>", -1)).hasSize(3);
        assertThat(html).contains("<title>M&lt;1&gt;&#64;style&#64;</title>").doesNotContain("<!--");
        assertThat(data(html))
                .containsEntry("mix", "M<1>@style@")
                .containsEntry("title", "Title \"<!--\" \\ & @script@")
                .containsEntry("laboratory", "Lab </script><b>\u2028");
    }

    @Test
    void inSpainThePageHasTheWordsOfSpain() {
        String spain = file(Cards.usual(), Locale.forLanguageTag("es-ES"));
        assertThat(spain).contains("G vale solo para esta dosificación").doesNotContain("concreto");
        assertThat(file(Cards.usual(), Locale.forLanguageTag("es-MX")))
                .contains("G vale solo para esta mezcla")
                .contains("37.5 mm (1 1/2 pulg")
                .doesNotContain("hormigón");
    }

    @Test
    void aLanguageThatThePageLacksBeginsInEnglish() {
        assertThat(data(file(Cards.usual(), Locale.forLanguageTag("es-MX")))).containsEntry("language", "es");
        assertThat(data(file(Cards.usual(), Locale.JAPAN))).containsEntry("language", "en");
    }

    private static Set<String> places(String text) {
        return Pattern.compile("\\{\\d}")
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toSet());
    }

    @Test
    void everyStateOfACardAndEveryTextStandsInEveryLanguage() {
        Map<String, ResourceBundle> bundles = FieldHandout.LANGUAGES.stream()
                .collect(Collectors.toMap(
                        language -> language,
                        language -> ResourceBundle.getBundle(
                                "porebench.print.phone",
                                language.equals("en") ? Locale.ROOT : Locale.forLanguageTag(language),
                                ResourceBundle.Control.getNoFallbackControl(
                                        ResourceBundle.Control.FORMAT_PROPERTIES))));
        ResourceBundle english = bundles.get("en");
        bundles.forEach((language, bundle) -> english.keySet().forEach(key -> {
            assertThat(places(bundle.getString(key)))
                    .as(language + " " + key)
                    .isEqualTo(places(english.getString(key)));
            // One file for each language, and no text that is English still; two words are the same in French,
            // and the cautions are taken in by name.
            if (!language.equals("en")
                    && english.getString(key).matches(".*[a-z]{4}.*")
                    && !key.equals("density")
                    && !key.equals("rules")) {
                assertThat(bundle.getString(key)).as(language + " " + key).isNotEqualTo(english.getString(key));
            }
        }));
        for (CardState state : CardState.values()) {
            assertThat(english.containsKey("state." + state.symbol())).isEqualTo(!state.mayLeaveUnmarked());
        }
    }
}
