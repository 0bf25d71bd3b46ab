package porebench.print.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
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

/** The type on cards, measured where it stands in the PDF, is as large as docs/cards.md says, and not much larger. */
class CardTypeTest {
    /** Height of a capital or a digit over the size of the type: 1456 of 2048 units in Roboto. */
    private static final double CAPITALS = 1456 / 2048.0;

    private static final double MILLIMETRES = 25.4 / 72;
    private static final Pattern FIGURE = Pattern.compile("\u2212?\\d+[.,]\\d+");

    private static Map<String, FactorCard> cards() {
        return new TreeMap<>(Map.of(
                "usual", Cards.usual(),
                "long figures", Cards.card("-12.25", "6.00", "1.50", "0.125", "30"),
                "fine", Cards.card("0.45", "5.5", "2.0", "0.02", "12"),
                "conditions", Cards.under(Cards.usual(), "only with sand Alder; not for pumped mixes"),
                "lapsed", Cards.in(CardState.LAPSED, Cards.usual()),
                "training", Cards.training("0.3", false),
                "long", Cards.everythingLong("0.3", false),
                "all", Cards.under(Cards.everythingLong("-0.35", true), Cards.WIDEST_CONDITIONS)));
    }

    /** What is measured on the cards of a size, in all languages. */
    private static final class Measured {
        double usualDigits = Double.MAX_VALUE;
        double digits = Double.MAX_VALUE;
        double usualRows = Double.MAX_VALUE;
        double smallest = Double.MAX_VALUE;
    }

    private static Measured measure(CardSize size) {
        Measured measured = new Measured();
        for (PaperLanguage language : PaperLanguage.values()) {
            CardWords words = CardWords.in(language);
            cards().forEach((name, card) -> {
                try {
                    String factor = words.number(card.issue().factorPercent());
                    List<PageText.Run> runs = PageText.runs(CardPdf.of(card, CardLook.of(size, language)));
                    double digits = runs.stream()
                            .filter(run -> run.text().equals(factor))
                            .mapToDouble(PageText.Run::size)
                            .max()
                            .orElseThrow();
                    measured.digits = Math.min(measured.digits, digits);
                    measured.smallest = Math.min(
                            measured.smallest,
                            runs.stream().mapToDouble(PageText.Run::size).min().orElseThrow());
                    if (name.equals("usual")) {
                        measured.usualDigits = Math.min(measured.usualDigits, digits);
                        measured.usualRows = Math.min(
                                measured.usualRows,
                                runs.stream()
                                        .filter(run ->
                                                FIGURE.matcher(run.text()).matches())
                                        .mapToDouble(PageText.Run::size)
                                        .min()
                                        .orElseThrow());
                    }
                } catch (OutputRefused tooMuch) {
                    assertThat(size).isEqualTo(CardSize.WALLET);
                }
            });
        }
        return measured;
    }

    @ParameterizedTest
    @EnumSource(CardSize.class)
    void typeIsAsLargeAsTheDocumentSays(CardSize size) throws IOException {
        String[] stated = Files.readAllLines(Path.of("docs/cards.md")).stream()
                .filter(line -> line.startsWith("| `" + size.symbol() + "` | ") && line.contains(" pt |"))
                .findFirst()
                .orElseThrow()
                .split(" \\| ?");
        Measured measured = measure(size);
        String found = String.join(
                ", ",
                List.of(
                        "" + measured.usualDigits * CAPITALS * MILLIMETRES,
                        "" + measured.digits * CAPITALS * MILLIMETRES,
                        "" + measured.usualRows,
                        "" + measured.smallest));
        assertThat(figure(stated[1])).as(found).isEqualTo(mm(measured.usualDigits), Offset.offset(0.051));
        assertThat(figure(stated[2])).as(found).isEqualTo(mm(measured.digits), Offset.offset(0.051));
        assertThat(figure(stated[3])).as(found).isEqualTo(measured.usualRows, Offset.offset(0.051));
        assertThat(figure(stated[4])).as(found).isEqualTo(measured.smallest, Offset.offset(0.01));
    }

    /** On a usual card of every size the rows of the table, too, are legible at 60 cm. */
    @ParameterizedTest
    @EnumSource(CardSize.class)
    void aUsualTableIsLegibleAtArmsLength(CardSize size) {
        double least = 600 * Math.tan(Math.toRadians(LegibleType.LEAST_MINUTES / 60.0)) / CAPITALS / MILLIMETRES;
        assertThat(measure(size).usualRows).isGreaterThan(least - 0.005);
    }

    private static double mm(double points) {
        return points * CAPITALS * MILLIMETRES;
    }

    private static double figure(String cell) {
        return Double.parseDouble(cell.replaceAll("[^0-9.]", ""));
    }

    // By pencil: 16 minutes of arc are 16 / 60 x pi / 180 = 0.0046542; at 600 mm 2.793 mm; over 0.7109 that is 3.928 mm
    // of type,
    // 11.14 points. At 320 mm 1.489 mm, 2.095 mm, 5.94 points.
    @Test
    void theLeastTypeFollowsFromTheAngle() {
        double angle = Math.tan(Math.toRadians(LegibleType.LEAST_MINUTES / 60.0));
        assertThat(LegibleType.AT_ARMS_LENGTH).isBetween(600 * angle / CAPITALS / MILLIMETRES, 11.3);
        assertThat(LegibleType.IN_THE_HAND).isBetween(320 * angle / CAPITALS / MILLIMETRES, 6.1);
    }

    /** On every wallet card that there is: what a crew works by is legible at 60 cm, the rest at 32 cm. */
    @Test
    void aWalletCardIsLegibleAtArmsLength() {
        int made = 0;
        for (PaperLanguage language : PaperLanguage.values()) {
            CardWords words = CardWords.in(language);
            for (FactorCard card : cards().values()) {
                List<PageText.Run> runs;
                try {
                    runs = PageText.runs(CardPdf.of(card, CardLook.of(CardSize.WALLET, language)));
                } catch (OutputRefused tooMuch) {
                    continue;
                }
                made++;
                List<String> works = new ArrayList<>(List.of(
                        card.mixId().text(),
                        words.say("card.subtract"),
                        words.number(card.issue().factorPercent()),
                        words.say("card.revision"),
                        words.say("card.recheck-by")));
                works.add(CardText.passes(card, words).split(" ")[0]);
                works.add(words.say("card.formula." + card.issue().meterType(), "")
                        .split(";")[0]
                        .replace('\u00A0', ' ')
                        .strip());
                if (!card.issue().terms().conditions().isBlank()) {
                    works.add(words.say("card.conditions", "only").substring(0, 6));
                }
                for (String text : works) {
                    assertThat(runs).as(text).anySatisfy(run -> {
                        assertThat(run.text()).contains(text);
                        assertThat(run.size()).isGreaterThanOrEqualTo(LegibleType.AT_ARMS_LENGTH);
                    });
                }
                assertThat(runs)
                        .filteredOn(run -> FIGURE.matcher(run.text()).matches())
                        .allSatisfy(run -> assertThat(run.size()).isGreaterThanOrEqualTo(LegibleType.AT_ARMS_LENGTH));
                assertThat(runs)
                        .allSatisfy(run -> assertThat(run.size()).isGreaterThanOrEqualTo(LegibleType.IN_THE_HAND));
                // Whatever stands on the front is legible at arm's length but the sign of percent beside G, which is
                // larger.
                double face = CardSize.WALLET.widthMillimetres() / MILLIMETRES;
                assertThat(runs)
                        .filteredOn(run -> run.left() < face)
                        .allSatisfy(run -> assertThat(run.size()).isGreaterThanOrEqualTo(LegibleType.AT_ARMS_LENGTH));
            }
        }
        assertThat(made).isGreaterThanOrEqualTo(25);
    }
}
