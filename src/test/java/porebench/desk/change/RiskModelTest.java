package porebench.desk.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.desk.Settings;
import porebench.desk.change.RiskModel.Field;
import porebench.record.id.MixId;

class RiskModelTest {
    private final Settings settings = Settings.inMemory();
    private ChangeDesk made = new ChangeDesk(Locale.ENGLISH);
    private RiskModel model = model();

    private RiskModel model() {
        RiskModel one = new RiskModel(new ChangeModel(made.desk), settings);
        one.follow();
        return one;
    }

    @Test
    void beginsWithWhatTheMixAndItsProfileSay() {
        assertThat(model.text(Field.TARGET)).isEqualTo("6.0");
        assertThat(model.text(Field.TOLERANCE)).isEqualTo("1.5");
        assertThat(model.text(Field.READING_SPREAD)).isEqualTo("0.28");
        assertThat(model.text(Field.ERROR)).isEqualTo("0.05");
        assertThat(model.text(Field.SPREAD)).isEmpty();
        assertThat(model.problems()).isEmpty();
        assertThat(model.curve()).isEmpty();
        assertThat(model.sentence()).startsWith("Type how far the true air differs");
    }

    /** The shares by R (load-risk.csv): 0.436675592 and 2.305047376 % of all loads. */
    @Test
    void saysTheSharesOnceTheSpreadIsTyped() {
        model.type(Field.SPREAD, "0.6");
        model.type(Field.READING_SPREAD, "0.2");
        model.type(Field.ERROR, "0.3");
        assertThat(model.curve().orElseThrow().risk().wronglyFailed()).isCloseTo(0.02305047376, within(1e-10));
        assertThat(model.sentence())
                .isEqualTo("An error of 0.30 % air passes 0.44 % and fails 2.31 % of all loads wrongly.");
    }

    /** Where the old factor is kept, the air is seen too high by what it moved. */
    @Test
    void theErrorBeginsWithWhatTheFactorMoved() {
        made.changeLedge();
        made.testNew(0.8, 0.9, 0.8);
        assertThat(model.text(Field.ERROR)).isEqualTo("0.40");
    }

    @Test
    void whatIsWrongStandsAtItsField() {
        model.type(Field.TARGET, "six");
        assertThat(model.problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.field()).isEqualTo("target"));
        assertThat(model.sentence()).isEmpty();
        model.type(Field.TARGET, "6");
        model.type(Field.TOLERANCE, "0");
        model.type(Field.SPREAD, "-1");
        assertThat(model.problems())
                .extracting(problem -> problem.field() + " " + problem.code())
                .containsExactly("tolerance risk.tolerance-not-positive", "spread risk.spread-negative");
        model.type(Field.TOLERANCE, "");
        assertThat(model.problems()).extracting(problem -> problem.field()).containsExactly("tolerance");
    }

    @Test
    void theSpreadIsRememberedAndTheRestBelongsToTheMix() {
        model.type(Field.SPREAD, "0.6");
        model.type(Field.ERROR, "0.3");
        made.desk.select(new MixId("M-2"));
        model.follow();
        assertThat(model.text(Field.SPREAD)).isEqualTo("0.6");
        assertThat(model.text(Field.ERROR)).isEqualTo("0.05");
        assertThat(model().text(Field.SPREAD)).isEqualTo("0.6");
    }

    @Test
    void numbersAreThoseOfTheLanguage() {
        made = new ChangeDesk(Locale.forLanguageTag("es-ES"));
        model = model();
        assertThat(model.text(Field.TOLERANCE)).isEqualTo("1,5");
        model.type(Field.SPREAD, "0,6");
        model.type(Field.READING_SPREAD, "0,2");
        model.type(Field.ERROR, "0,3");
        assertThat(model.sentence()).contains("2,31 %");
        assertThat(model.problems()).isEmpty();
        assertThat(settings.get("loadSpread", "")).isEqualTo("0.6");
        made = new ChangeDesk(Locale.ENGLISH);
        assertThat(model().text(Field.SPREAD)).isEqualTo("0.6");
        model().type(Field.SPREAD, "wide");
        assertThat(model().text(Field.SPREAD)).isEmpty();
    }

    @Test
    void withoutAMixThereIsNothing() {
        made.desk.selectNone();
        model.follow();
        model.type(Field.SPREAD, "0.6");
        assertThat(model.curve()).isEmpty();
    }
}
