package porebench.desk.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import porebench.desk.Bowl;
import porebench.desk.Bowls;
import porebench.desk.MixDesk;
import porebench.desk.form.TypedDraft;
import porebench.method.Problem;
import porebench.port.DraftStore;
import porebench.record.column.MixColumns;
import porebench.record.column.TrialColumns;
import porebench.record.id.MixId;

/** What was typed with the decimal sign of one language is read as it was meant in another. */
class OtherLanguageTest {
    private static final Locale COMMAS = Locale.forLanguageTag("es-ES");
    private static final Path BOOK = Path.of("one.porebench");

    private final SortedMap<String, String> kept = new TreeMap<>();

    private MixDesk desk(Locale locale) {
        MixDesk begun = new MixDesk(locale);
        begun.desk.unsaved().turnTo(BOOK, kept);
        begun.desk.unsaved().keepIn(new DraftStore() {
            @Override
            public SortedMap<String, String> all(String book) {
                return kept;
            }

            @Override
            public void keep(String book, String name, Optional<String> text) {
                text.ifPresentOrElse(some -> kept.put(name, some), () -> kept.remove(name));
            }

            @Override
            public void close() {}
        });
        begun.select("M-1");
        return begun;
    }

    private MixModel model(Locale locale) {
        return new MixModel(desk(locale).desk);
    }

    private static void type(MixModel model, String air, String moisture, String mass) {
        model.type(MixColumns.TARGET_AIR, air);
        model.constituents().type(0, MixColumns.MOISTURE, moisture);
        model.constituents().type(1, MixColumns.MASS, mass);
        model.type(MixColumns.REMARKS, "0,5 or 0.5");
    }

    private static List<String> typed(MixModel model) {
        TypedDraft draft = model.draft();
        return List.of(
                draft.text(MixColumns.TARGET_AIR),
                model.rows().get(0).text(MixColumns.MOISTURE),
                model.rows().get(1).text(MixColumns.MASS),
                draft.text(MixColumns.REMARKS));
    }

    private static List<String> wrong(MixModel model) {
        return model.reading().problems().stream()
                .filter(Problem::isError)
                .map(Problem::code)
                .toList();
    }

    @Test
    void pointsBecomeCommas() {
        type(model(Locale.ENGLISH), "6.5", "1.234", "1050.50");
        MixModel there = model(COMMAS);
        assertThat(typed(there)).containsExactly("6,5", "1,234", "1050,50", "0,5 or 0.5");
        assertThat(wrong(there)).isEmpty();
        assertThat(there.reading().mix().orElseThrow().batch().targetAirPercent())
                .isEqualTo("6.5");
    }

    @Test
    void commasBecomePointsAndSoDoesThePointOfAKeypad() {
        type(model(COMMAS), "6,5", "4.2", "1050,50");
        MixModel there = model(Locale.ENGLISH);
        assertThat(typed(there)).containsExactly("6.5", "4.2", "1050.50", "0,5 or 0.5");
        assertThat(wrong(there)).isEmpty();
        there.type(MixColumns.TITLE, "Kerb");
        assertThat(typed(model(COMMAS)).get(0)).isEqualTo("6,5");
    }

    @Test
    void whatCouldNotBeReadStaysAsItWasTypedAndSoDoesTheSameLanguage() {
        type(model(Locale.ENGLISH), "6,5", "4..2", "1050.50");
        assertThat(typed(model(Locale.UK))).startsWith("6,5", "4..2", "1050.50");
        assertThat(typed(model(COMMAS))).startsWith("6,5", "4..2", "1050,50");
    }

    @Test
    void aBowlOnTheBenchIsSpeltAnewWithWhatIsBeingTyped() {
        MixId mix = new MixId("M-1");
        TypedDraft read = TypedDraft.BLANK
                .with(TrialColumns.FINE, "4868.5")
                .withUnit(TrialColumns.FINE, "g")
                .with(TrialColumns.WATER, "21.5 °C");
        new Bowls(desk(Locale.ENGLISH).desk)
                .keep(new Bowl(mix, 1, "READ", read, "5.", Optional.empty(), Optional.empty()));
        Bowl there = new Bowls(desk(COMMAS).desk).find(1).orElseThrow();
        assertThat(there.typed()).isEqualTo("5,");
        assertThat(there.draft().text(TrialColumns.FINE)).isEqualTo("4868,5");
        assertThat(there.draft().text(TrialColumns.WATER)).isEqualTo("21,5 °C");
    }

    /** From the time when the language was not kept. */
    @Test
    void aDraftWithoutALanguageIsOfThisOne() {
        type(model(Locale.ENGLISH), "6.5", "4.2", "1050.50");
        kept.replaceAll((name, text) -> text.substring(text.indexOf('\n') + 1));
        assertThat(typed(model(Locale.ENGLISH))).startsWith("6.5", "4.2");
    }
}
