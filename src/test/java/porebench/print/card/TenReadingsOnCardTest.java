package porebench.print.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.CardWords;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PaperLanguage;
import porebench.print.Cards;
import porebench.print.PageText;

/**
 * Ten readings in a row by the card alone, as a crew goes about it: find the reading in the table, say the air beside it; where it is
 * bold the load passes. The figures are read back out of the PDF by where they stand; what a pencil makes of them stands here. The
 * phone page does the same in {@code PhonePageBrowserTest}.
 */
class TenReadingsOnCardTest {
    private static final Pattern FIGURE = Pattern.compile("\u2212?\\d+(?:\\.\\d+)?");

    /** A reading as a crew finds it: the air beside it, and whether both are bold. */
    private record Found(String air, boolean isBold) {
        @Override
        public String toString() {
            return air + (isBold ? " passes" : " fails");
        }
    }

    /** Returns what stands beside each reading of the table: figures two and two, from left to right. */
    private static Map<String, Found> table(FactorCard card, CardSize size, PaperLanguage language) {
        List<PageText.Run> runs = PageText.runs(CardPdf.of(card, CardLook.of(size, language)));
        String heading = CardWords.in(language).say("card.table.air");
        double top = runs.stream()
                .filter(run -> run.text().equals(heading))
                .mapToDouble(PageText.Run::baseline)
                .min()
                .orElseThrow();
        Map<Double, List<PageText.Run>> lines = new TreeMap<>();
        runs.stream()
                .filter(run -> FIGURE.matcher(run.text().replace(',', '.')).matches())
                .filter(run -> run.baseline() > top)
                .forEach(run -> lines.computeIfAbsent(Math.rint(run.baseline() * 10) / 10, any -> new ArrayList<>())
                        .add(run));
        Map<String, Found> found = new TreeMap<>();
        for (List<PageText.Run> line : lines.values()) {
            line.sort(Comparator.comparingDouble(PageText.Run::left));
            for (int at = 0; at + 1 < line.size(); at += 2) {
                found.put(
                        line.get(at).text().replace(',', '.'),
                        new Found(
                                line.get(at + 1).text().replace(',', '.'),
                                line.get(at).bold() && line.get(at + 1).bold()));
            }
        }
        return found;
    }

    private static List<String> looked(Map<String, Found> table, String... readings) {
        return List.of(readings).stream()
                .map(reading -> reading + " " + table.get(reading))
                .toList();
    }

    /**
     * W1, the one printed use of a factor that was found (AASHTO re:source newsletter, April 2015, seen): a reading of 4.0 less 0.3 is
     * 3.7, outside the limits of 4.0 to 6.0. The other nine by pencil, both limits and the tenths beside them among them.
     */
    @ParameterizedTest
    @EnumSource(
            value = CardSize.class,
            names = {"WALLET"},
            mode = EnumSource.Mode.EXCLUDE)
    void ofThePrintedExampleAndNineMore(CardSize size) {
        Map<String, Found> table = table(Cards.card("0.3", "5.0", "1.0", "0.1", "10"), size, PaperLanguage.ENGLISH);
        assertThat(looked(table, "4.0", "4.2", "4.3", "4.4", "5.0", "5.3", "5.9", "6.3", "6.4", "4.1"))
                .containsExactly(
                        "4.0 3.7 fails",
                        "4.2 3.9 fails",
                        "4.3 4.0 passes",
                        "4.4 4.1 passes",
                        "5.0 4.7 passes",
                        "5.3 5.0 passes",
                        "5.9 5.6 passes",
                        "6.3 6.0 passes",
                        "6.4 6.1 fails",
                        "4.1 3.8 fails");
    }

    /**
     * G 0.25, 4.5 to 7.5 wanted: each air is a tie and goes to the even tenth (ASTM E29, rounding by the even digit, recalled); the
     * rounded air is judged. 4.7: 4.45 -> 4.4 fails; 4.8: 4.55 -> 4.6; 4.9: 4.65 -> 4.6; 5.0: 4.75 -> 4.8; 6.1: 5.85 -> 5.8; 6.2: 5.95
     * -> 6.0; 7.6: 7.35 -> 7.4; 7.7: 7.45 -> 7.4 passes; 7.8: 7.55 -> 7.6 fails; 4.6: 4.35 -> 4.4 fails.
     */
    @ParameterizedTest
    @EnumSource(
            value = PaperLanguage.class,
            names = {"ENGLISH", "GERMAN"})
    void atTiesAndLimits(PaperLanguage language) {
        Map<String, Found> table = table(Cards.card("0.25", "6.0", "1.5", "0.1", "10"), CardSize.A6, language);
        assertThat(looked(table, "4.7", "4.8", "4.9", "5.0", "6.1", "6.2", "7.6", "7.7", "7.8", "4.6"))
                .containsExactly(
                        "4.7 4.4 fails",
                        "4.8 4.6 passes",
                        "4.9 4.6 passes",
                        "5.0 4.8 passes",
                        "6.1 5.8 passes",
                        "6.2 6.0 passes",
                        "7.6 7.4 passes",
                        "7.7 7.4 passes",
                        "7.8 7.6 fails",
                        "4.6 4.4 fails");
    }

    @Test
    void aReadingThatIsNotOnTheCardIsNotFound() {
        assertThat(table(Cards.card("0.3", "5.0", "1.0", "0.1", "10"), CardSize.A6, PaperLanguage.ENGLISH))
                .doesNotContainKey("10.1");
    }
}
