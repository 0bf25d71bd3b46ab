package porebench.print.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.CardState;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.CardText;
import porebench.evidence.paper.CardWords;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.port.OutputRefused;
import porebench.print.Cards;
import porebench.print.PageText;
import porebench.record.Laboratory;

/** With the longest names and conditions a lab book takes, whatever a crew works by stands whole on a card, or there is no card. */
class CardWholeTest {
    /** The longest name of a mix, 60 characters, as a laboratory might write it. */
    private static final String LONGEST_MIX = "TW-214/2026-REV-C/BRIDGE-DECK/SUMMER/PUMPED/TWO-SANDS/NO-ASH";

    /** The longest line: 200 characters, for a laboratory or a title. */
    private static final String LONGEST_LINE = "Tarnwick and Lower Ebber Valley Joint Materials Testing Laboratory "
            .repeat(3)
            .substring(0, 200);

    /** How many cards are made of a size in all languages: fewer would mean that a layout lost room. */
    private static final Map<CardSize, Integer> MADE =
            Map.of(CardSize.A6, 70, CardSize.CARD_4X6, 70, CardSize.HALF_LETTER, 70, CardSize.WALLET, 20);

    private static Map<String, FactorCard> cards() {
        FactorCard longest = longest("0.3");
        return new TreeMap<>(Map.ofEntries(
                Map.entry("usual", Cards.usual()),
                Map.entry("type A", Cards.typeA(Cards.usual())),
                Map.entry("sieved", Cards.wetSieved(Cards.usual())),
                Map.entry("negative", Cards.card("-0.2", "6.0", "1.5", "0.1", "10")),
                Map.entry("longest", longest),
                Map.entry("longest, type A", Cards.typeA(longest)),
                Map.entry("longest, negative, sieved", Cards.wetSieved(longest("-12.25"))),
                Map.entry("conditions", Cards.under(Cards.usual(), "only with sand Alder; not for pumped mixes")),
                Map.entry("widest conditions", Cards.under(Cards.usual(), Cards.WIDEST_CONDITIONS)),
                Map.entry("longest, conditions", Cards.under(longest, "only with sand Alder; not for pumped mixes")),
                Map.entry(
                        "longest, widest conditions, negative, sieved",
                        Cards.under(Cards.wetSieved(longest("-0.35")), Cards.WIDEST_CONDITIONS)),
                Map.entry("lapsed", Cards.in(CardState.LAPSED, Cards.usual())),
                Map.entry("training", Cards.training("0.3", false)),
                Map.entry("widest mix", named("W".repeat(60)))));
    }

    private static FactorCard longest(String factor) {
        return Cards.card(
                new Laboratory(LONGEST_LINE, ""),
                LONGEST_MIX,
                LONGEST_LINE,
                List.of(LONGEST_LINE, LONGEST_LINE + "2", "Fell Quarry"),
                false,
                new String[] {factor, "6.0", "1.5", "0.1", "10"});
    }

    private static FactorCard named(String mix) {
        return Cards.card(new Laboratory("Lab", ""), mix, "", List.of("pit"), false, new String[] {
            "0.3", "6.0", "1.5", "0.1", "10"
        });
    }

    static Stream<Arguments> sizes() {
        return Stream.of(CardSize.values()).map(Arguments::of);
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void whatACrewWorksByIsWholeOrThereIsNoCard(CardSize size) {
        int made = 0;
        List<String> refused = new ArrayList<>();
        for (PaperLanguage language : PaperLanguage.values()) {
            for (Map.Entry<String, FactorCard> card : cards().entrySet()) {
                try {
                    byte[] pdf = CardPdf.of(card.getValue(), CardLook.of(size, language));
                    whole(card.getKey() + " in " + language, card.getValue(), size, CardWords.in(language), pdf);
                    made++;
                } catch (OutputRefused tooMuch) {
                    assertThat(tooMuch.problems()).singleElement().satisfies(problem -> {
                        assertThat(problem.code()).isEqualTo("card.does-not-fit");
                        assertThat(problem.values())
                                .containsExactly(card.getValue().mixId().text(), size.symbol());
                    });
                    refused.add(card.getKey() + " in " + language.symbol());
                }
            }
        }
        assertThat(made).as("refused: " + refused).isGreaterThanOrEqualTo(MADE.getOrDefault(size, 0));
        assertThat(refused.stream().filter(name -> name.startsWith("usual") || name.startsWith("type A")))
                .isEmpty();
    }

    private static void whole(String name, FactorCard card, CardSize size, CardWords words, byte[] pdf) {
        String all = squeezed(pdf, size);
        // 3 mm: the margin of a wallet card, that of the others is 6 mm.
        double lowest = (size.heightMillimetres() - 3) * 72 / 25.4;
        assertThat(PageText.runs(pdf)).as(name).allMatch(run -> run.baseline() < lowest);
        List<String> needed = new ArrayList<>(List.of(
                words.say("card.subtract"),
                words.number(card.issue().factorPercent()),
                words.say(
                        "card.formula." + card.issue().meterType(),
                        words.signed(card.issue().factorPercent())),
                CardText.passes(card, words),
                words.date(card.lastDay()),
                words.say("card.revision"),
                words.say("meter." + card.issue().meterType())));
        if (!card.mixId().text().startsWith("WWW")) {
            needed.add(card.mixId().text());
        }
        if (!card.issue().terms().conditions().isBlank()) {
            needed.add(words.say("card.conditions", card.issue().terms().conditions()));
        }
        if (card.issue().factorPercent().signum() < 0) {
            needed.add(words.say(
                    "card.negative", words.number(card.issue().factorPercent().abs())));
        }
        if (card.wetSieved()) {
            needed.add(words.say("card.wet-sieved"));
        }
        for (String caution : List.of("caution.pressure." + card.issue().meterType(), "caution.caustic-heavy")) {
            needed.add(words.say(caution));
        }
        if (card.isTraining()) {
            needed.add(words.say("simulated.word"));
        }
        if (card.isMarked()) {
            needed.add(words.say("card.marked." + card.state()));
        }
        for (String text : needed) {
            assertThat(all).as("%s: %s", name, text).contains(text.replaceAll("[\\s\\u00A0]+", ""));
        }
        assertThat(all).as(name).doesNotContain("\uFFFD");
        assertThat(CardText.of(card, words)).contains(card.mixId().text(), card.mixTitle());
        if (!all.contains(card.mixId().text().replaceAll("[\\s\\u00A0]+", ""))) {
            assertThat(all).as(name).contains("\u2026");
        }
    }

    /** Returns the text of a card face by face, line by line, without gaps. */
    private static String squeezed(byte[] pdf, CardSize size) {
        double face = size.widthMillimetres() * 72 / 25.4;
        ToDoubleFunction<PageText.Run> side = run -> size == CardSize.WALLET && run.left() > face ? 1 : 0;
        return PageText.runs(pdf).stream()
                .sorted(Comparator.comparingDouble(side)
                        .thenComparingDouble(PageText.Run::baseline)
                        .thenComparingDouble(PageText.Run::left))
                .map(PageText.Run::text)
                .collect(Collectors.joining())
                .replaceAll("[\\s\\u00A0]+", "");
    }

    /** Conditions a word longer each time: at some length the back of a wallet card is full, and from there on there is no card. */
    @Test
    void conditionsThatGrowAreWholeUntilAWalletCardIsFull() {
        int made = 0;
        int refused = 0;
        for (int words = 1; words <= 40; words++) {
            FactorCard card = Cards.under(Cards.usual(), "sand ".repeat(words).strip());
            try {
                byte[] pdf = CardPdf.of(card, CardLook.of(CardSize.WALLET, PaperLanguage.ENGLISH));
                whole(words + " words", card, CardSize.WALLET, CardWords.in(PaperLanguage.ENGLISH), pdf);
                assertThat(refused).as("%d words fit, fewer did not", words).isZero();
                made++;
            } catch (OutputRefused tooMuch) {
                assertThat(tooMuch.problems())
                        .singleElement()
                        .satisfies(problem -> assertThat(problem.code()).isEqualTo("card.does-not-fit"));
                refused++;
            }
        }
        assertThat(made).isGreaterThanOrEqualTo(8);
        assertThat(refused).isPositive();
    }

    @Test
    void conditionsThatAWalletCardWouldCutAreRefusedByNameAndSize() {
        FactorCard card = Cards.under(Cards.usual(), Cards.WIDEST_CONDITIONS);
        for (PaperLanguage language : PaperLanguage.values()) {
            assertThatThrownBy(() -> CardPdf.of(card, CardLook.of(CardSize.WALLET, language)))
                    .as(language.symbol())
                    .isInstanceOf(OutputRefused.class)
                    .hasMessageContaining("card.does-not-fit");
        }
    }
}
