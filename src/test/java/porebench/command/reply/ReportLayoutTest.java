package porebench.command.reply;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.method.Texts;

/** What is stated once is said twice: as fields for programs and as cells for people. */
class ReportLayoutTest {
    private record Set(String name, int count, double mean) {}

    private static final Set FULL = new Set("a", 3, 0.43333333333);
    private static final Set EMPTY = new Set("b", 0, Double.NaN);
    private static final Set ENDLESS = new Set("c", 1, Double.POSITIVE_INFINITY);

    private static ReportLayout<Set> layout() {
        return new ReportLayout<Set>(
                        Texts.of("porebench.command.command", Locale.ENGLISH), new NumberText(Locale.ENGLISH))
                .text("set", "sets.set", Set::name)
                .whole("count", "stats.count", Set::count)
                .number("mean", "stats.mean", Set::mean)
                .field((json, set) -> json.flag("isEmpty", set.count() == 0))
                .cell("", set -> set.count() == 0 ? "empty" : "");
    }

    private static String json(ReportLayout<Set> layout, Set set) {
        return new String(JsonFields.object(fields -> layout.json(fields, set)), StandardCharsets.UTF_8).strip();
    }

    @Test
    void programsGetAllDigitsAndNothingForWhatIsNoNumber() {
        assertThat(json(layout(), FULL))
                .isEqualTo("{\"set\":\"a\",\"count\":3,\"mean\":0.43333333333,\"isEmpty\":false}");
        assertThat(json(layout(), EMPTY)).isEqualTo("{\"set\":\"b\",\"count\":0,\"mean\":null,\"isEmpty\":true}");
        assertThat(json(layout(), ENDLESS)).contains("\"mean\":null");
    }

    @Test
    void peopleGetSixDigitsUnderTheSameHeadingsAndADash() {
        TextPage page = new TextPage();
        layout().table(page, List.of(FULL, EMPTY, ENDLESS));
        assertThat(page.lines()).hasSize(4);
        assertThat(page.lines().get(1)).contains("a", "3", "0.433333").doesNotContain("0.4333333");
        assertThat(page.lines().get(2)).contains("b", "0", NumberText.NONE, "empty");
        assertThat(page.lines().get(3)).contains("c", "1", NumberText.NONE).doesNotContain("empty");
    }

    @Test
    void oneThingAloneStandsInRows() {
        TextPage page = new TextPage();
        layout().rows(page, FULL);
        assertThat(page.lines()).hasSize(4);
        assertThat(page.lines().get(1)).endsWith("3");
    }

    @Test
    void aPartIsSaidWithinTheWhole() {
        record Pair(Set first, Set second) {}
        ReportLayout<Pair> second = layout().<Pair>of(Pair::second)
                .whole("firstCount", "stats.count", pair -> pair.first().count());
        assertThat(new String(
                        JsonFields.object(fields -> second.json(fields, new Pair(FULL, EMPTY))),
                        StandardCharsets.UTF_8))
                .startsWith("{\"set\":\"b\"")
                .contains("\"isEmpty\":true,\"firstCount\":3}");
    }
}
