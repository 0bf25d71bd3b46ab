package porebench.print.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.CardState;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.CardWords;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.air.PassWindow;
import porebench.port.OutputRefused;
import porebench.print.Cards;
import porebench.print.PageText;

/** Every row of the table, read back from the PDF by where its figures stand, is one that was computed; none is left out between. */
class CardRowsTest {
    private static final Pattern FIGURE = Pattern.compile("\u2212?\\d+(?:[.,]\\d+)?");
    private static final Pattern FIRST_WHOLE = Pattern.compile("\\d+");

    /** A row as it stands on the card. */
    private record Shown(BigDecimal reading, String air, boolean bold) {}

    static Stream<Arguments> looks() {
        return Stream.of(CardSize.values())
                .flatMap(size -> Stream.of(PaperLanguage.values()).map(language -> Arguments.of(size, language)));
    }

    private static Map<String, FactorCard> cards() {
        return new TreeMap<>(Map.ofEntries(
                Map.entry("usual", Cards.usual()),
                // Half of the divisions end in 5: reported air rounds at ties on every other row.
                Map.entry("ties", Cards.card("0.25", "6.0", "1.5", "0.1", "10")),
                Map.entry("negative", Cards.card("-0.2", "6.0", "1.5", "0.1", "10")),
                Map.entry("fine", Cards.card("0.45", "5.5", "2.0", "0.02", "12")),
                Map.entry("two digits", Cards.card("1.25", "8.0", "7.5", "0.1", "15")),
                Map.entry("eighths", Cards.card("-12.25", "6.00", "1.50", "0.125", "30")),
                Map.entry("none passes", Cards.card("0.3", "20", "1.0", "0.1", "10")),
                Map.entry("one passes", Cards.card("0.3", "6.0", "0.01", "0.25", "10")),
                Map.entry("one row", Cards.card("0.3", "6.5", "1.5", "5", "3")),
                Map.entry("type A", Cards.typeA(Cards.usual())),
                Map.entry("lapsed", Cards.in(CardState.LAPSED, Cards.usual())),
                Map.entry("long", Cards.everythingLong("0.3", false)),
                Map.entry("long, negative, sieved", Cards.everythingLong("-0.35", true)),
                Map.entry("conditions", Cards.under(Cards.usual(), "only with sand Alder"))));
    }

    @ParameterizedTest
    @MethodSource("looks")
    void everyRowOfEveryCardIsTheComputedOne(CardSize size, PaperLanguage language) {
        List<String> refused = new ArrayList<>();
        cards().forEach((name, card) -> {
            try {
                check(name, card, size, language);
            } catch (OutputRefused tooMuch) {
                assertThat(tooMuch).hasMessageContaining("card.does-not-fit");
                refused.add(name);
            }
        });
        if (size == CardSize.WALLET) {
            assertThat(refused).isSubsetOf("long", "long, negative, sieved");
        } else {
            assertThat(refused).isEmpty();
        }
    }

    private static void check(String name, FactorCard card, CardSize size, PaperLanguage language) {
        CardWords words = CardWords.in(language);
        List<PageText.Run> runs = PageText.runs(CardPdf.of(card, CardLook.of(size, language)));
        if (size == CardSize.WALLET && under(runs, card, words).isEmpty()) {
            checkExample(name, runs, card, words);
            return;
        }
        int every = every(runs, card, words);
        List<Shown> shown = table(runs, card, words);
        String said = name + " at " + size + " in " + language + ": " + shown;
        List<PassWindow.Row> rows = card.window().rows();
        int first = index(rows, shown.get(0).reading());
        // Without a gap: of the readings that are shown one in so many, all from the first to the last.
        for (int at = 0; at < shown.size(); at++) {
            assertThat(first + at * every).as(said).isLessThan(rows.size());
            PassWindow.Row row = rows.get(first + at * every);
            assertThat(shown.get(at).reading()).as(said).isEqualByComparingTo(row.reading());
            BigDecimal bare = row.air().stripTrailingZeros();
            assertThat(shown.get(at).air()).as(said).isEqualTo(words.number(bare.setScale(Math.max(1, bare.scale()))));
            assertThat(shown.get(at).bold()).as(said).isEqualTo(row.passes());
        }
        if (name.equals("usual") || name.equals("ties")) {
            assertThat(every).as(said).isEqualTo(size == CardSize.WALLET ? 5 : 1);
        }
        assertThat(first % every).as(said).isZero();
        int last = first + (shown.size() - 1) * every;
        for (int at = 0; at < rows.size(); at += every) {
            if (rows.get(at).passes()) {
                assertThat(at).as("a reading that passes, in " + said).isBetween(first, last);
            }
        }
    }

    /** Where a wallet card has no room for the table, the row whose air is nearest to the target stands as an example. */
    private static void checkExample(String name, List<PageText.Run> runs, FactorCard card, CardWords words) {
        PassWindow.Row nearest = card.window().rows().get(0);
        for (PassWindow.Row row : card.window().rows()) {
            BigDecimal far = row.air().subtract(card.targetAirPercent()).abs();
            nearest = far.compareTo(nearest.air()
                                    .subtract(card.targetAirPercent())
                                    .abs())
                            < 0
                    ? row
                    : nearest;
        }
        BigDecimal bare = nearest.air().stripTrailingZeros();
        String example = words.say(
                "card.example",
                words.number(nearest.reading()),
                words.number(bare.setScale(Math.max(1, bare.scale()))));
        String all = runs.stream().map(PageText.Run::text).collect(Collectors.joining());
        assertThat(all.replaceAll("[\\s\\u00A0]+", "")).as(name).contains(example.replaceAll("[\\s\\u00A0]+", ""));
        assertThat(runs).as(name).noneMatch(run -> run.text().equals(words.say("card.table.air")));
    }

    private static int index(List<PassWindow.Row> rows, BigDecimal reading) {
        for (int at = 0; at < rows.size(); at++) {
            if (rows.get(at).reading().compareTo(reading) == 0) {
                return at;
            }
        }
        throw new AssertionError("no reading " + reading);
    }

    /** Returns one of how many divisions the card says that it shows. */
    private static int every(List<PageText.Run> runs, FactorCard card, CardWords words) {
        String said = under(runs, card, words).orElseThrow().text();
        if (said.startsWith(head(words.say("card.under-table", card.rule())))) {
            return 1;
        }
        Matcher number = FIRST_WHOLE.matcher(said);
        assertThat(number.find()).as(said).isTrue();
        return Integer.parseInt(number.group());
    }

    private static String head(String text) {
        return text.substring(0, 6);
    }

    private static Optional<PageText.Run> under(List<PageText.Run> runs, FactorCard card, CardWords words) {
        return runs.stream()
                .filter(run -> run.text().startsWith(head(words.say("card.under-table", card.rule())))
                        || run.text().startsWith(head(words.say("card.under-table.stepped", card.rule(), "2"))))
                .findFirst();
    }

    /** Reads the table: figures below a heading and above the words under the table, two and two, in rising order. */
    private static List<Shown> table(List<PageText.Run> runs, FactorCard card, CardWords words) {
        String heading = words.say("card.table.air");
        double top = runs.stream()
                .filter(run -> run.text().equals(heading))
                .mapToDouble(PageText.Run::baseline)
                .min()
                .orElseThrow();
        double left = runs.stream()
                .filter(run -> run.text().equals(heading))
                .mapToDouble(PageText.Run::left)
                .min()
                .orElseThrow();
        double bottom = under(runs, card, words).orElseThrow().baseline();
        TreeMap<Double, List<PageText.Run>> lines = new TreeMap<>();
        runs.stream()
                .filter(run -> FIGURE.matcher(run.text()).matches())
                .filter(run -> run.baseline() > top && run.baseline() < bottom)
                // What stands on the front of a wallet card is left of the first heading.
                .filter(run -> run.left() > left - 80)
                .forEach(run -> lines.computeIfAbsent(Math.rint(run.baseline() * 10) / 10, line -> new ArrayList<>())
                        .add(run));
        List<Shown> all = new ArrayList<>();
        for (List<PageText.Run> line : lines.values()) {
            line.sort(Comparator.comparingDouble(PageText.Run::left));
            assertThat(line.size() % 2).as(line.toString()).isZero();
            List<BigDecimal> across = new ArrayList<>();
            for (int at = 0; at < line.size(); at += 2) {
                PageText.Run reading = line.get(at);
                PageText.Run air = line.get(at + 1);
                assertThat(air.bold()).isEqualTo(reading.bold());
                across.add(number(reading.text()));
                all.add(new Shown(number(reading.text()), air.text(), air.bold()));
            }
            assertThat(across).isSorted().doesNotHaveDuplicates();
        }
        all.sort(Comparator.comparing(Shown::reading));
        return all;
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text.replace('\u2212', '-').replace(',', '.'));
    }

    // By pencil: G 0.25 of readings 4.8 to 7.8; a tie goes to the even tenth (ASTM E29, recalled): 4.8 - 0.25 = 4.55 ->
    // 4.6,
    // 4.9 - 0.25 = 4.65 -> 4.6, 5.0 - 0.25 = 4.75 -> 4.8. Read off each size by hand of this list, not of the computed
    // table.
    @ParameterizedTest
    @MethodSource("looks")
    void tiesOfThePencilStandOnTheCard(CardSize size, PaperLanguage language) {
        FactorCard card = Cards.card("0.25", "6.0", "1.5", "0.1", "10");
        CardWords words = CardWords.in(language);
        List<Shown> shown = table(PageText.runs(CardPdf.of(card, CardLook.of(size, language))), card, words);
        Map<String, String> pencil = Map.of(
                "4.5", "4.2", "4.8", "4.6", "5.0", "4.8", "5.5", "5.2", "6.0", "5.8", "6.5", "6.2", "7.0", "6.8", "7.5",
                "7.2");
        List<String> found = new ArrayList<>();
        for (Shown row : shown) {
            Optional.ofNullable(pencil.get(row.reading().toPlainString())).ifPresent(air -> {
                assertThat(number(row.air())).isEqualByComparingTo(air);
                found.add(air);
            });
        }
        assertThat(found).hasSizeGreaterThanOrEqualTo(4);
    }

    @Test
    void theReaderOfThisTestSeesAWrongRow() {
        CardWords words = CardWords.in(PaperLanguage.ENGLISH);
        FactorCard card = Cards.usual();
        List<PageText.Run> runs =
                new ArrayList<>(PageText.runs(CardPdf.of(card, CardLook.of(CardSize.A6, PaperLanguage.ENGLISH))));
        List<Shown> before = table(runs, card, words);
        assertThat(before.toString().toLowerCase(Locale.ROOT)).contains("reading=5.0, air=4.7");
        for (int at = 0; at < runs.size(); at++) {
            PageText.Run run = runs.get(at);
            if (run.text().equals("4.7") && run.bold()) {
                runs.set(
                        at,
                        new PageText.Run(
                                run.page(), "4.6", run.left(), run.right(), run.baseline(), run.size(), run.bold()));
            }
        }
        assertThat(table(runs, card, words)).isNotEqualTo(before);
    }
}
