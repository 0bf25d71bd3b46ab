package porebench.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import java.util.MissingResourceException;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;

/** The words of a problem. */
class ProblemTextTest {
    private static final ProblemText ENGLISH = ProblemText.in(Locale.ENGLISH);
    private static final ProblemText GERMAN = ProblemText.in(Locale.GERMANY);

    @Test
    void namesTheThingTheValueAndTheRule() {
        Problem problem = Problem.error(
                "constituents.1.mass", "mix.mass-negative", "River sand", Typed.of("-12.50", MassUnit.KILOGRAM));
        assertThat(ENGLISH.say(problem))
                .isEqualTo("River sand: mass -12.50 kg must not be negative. Correct the mass.");
        assertThat(GERMAN.say(problem))
                .isEqualTo("River sand: die Masse -12,50 kg darf nicht negativ sein. Die Masse berichtigen.");
    }

    @Test
    void keepsTheDigitsOfATypedNumberAndShowsFourOfAComputedOneButAllBeforeTheDecimalSign() {
        assertThat(said(new BigDecimal("2.650"))).contains("relative density 2.650 must");
        assertThat(said(2.0 / 3)).contains("relative density 0.6667 must");
        assertThat(said(1234567.8)).contains("relative density 1234568 must");
        assertThat(said(0.5)).contains("relative density 0.5 must");
        assertThat(said(-0.0)).contains("relative density 0 must");
        assertThat(said(12345.0)).contains("relative density 12345 must");
        assertThat(said(new BigDecimal("1E+3"))).contains("relative density 1000 must");
        assertThat(said(7)).contains("relative density 7 must");
    }

    private static String said(Object value) {
        return ENGLISH.say(Problem.error("x", "mix.relative-density-out-of-range", "sand", value, 0.5, 8.0));
    }

    @ParameterizedTest
    @CsvSource({"en, factor 0.12", "de-DE, 'Faktor 0,12'", "fr-FR, 'facteur 0,12'", "de-CH, Faktor 0.12"})
    void writesTheDecimalSignOfTheLocale(String tag, String shown) {
        Problem problem = Problem.warning("factor", "trial.factor-negative", 0.125);
        assertThat(ProblemText.in(Locale.forLanguageTag(tag)).say(problem).replace('\u00A0', ' '))
                .contains(shown + " %");
    }

    /** A dial is read to tenths or twentieths of a per cent: thousandths say more than it can, and above its scale whole ones do. */
    @ParameterizedTest
    @CsvSource({
        "29.1985, 29",
        "9.87654, 9.88",
        "0.336059, 0.34",
        "6.45, 6.45",
        "100.4, 100",
        "0.0031, 0.003",
        "-0.336059, -0.34",
    })
    void aComputedPercentageHasTheDigitsOfADial(double percent, String shown) {
        assertThat(ENGLISH.say(Problem.warning("factor", "trial.factor-negative", percent)))
                .contains("factor " + shown + " %");
    }

    @Test
    void numbersThatAreNotTheSameDoNotReadTheSame() {
        assertThat(ENGLISH.say(Problem.warning("dial", "meter.dial-off", 0.1004, new BigDecimal("0.10"))))
                .contains("off by 0.1004 % at the worst, more than 0.10 %");
        assertThat(ENGLISH.say(Problem.warning("dial", "meter.dial-off", 0.1, new BigDecimal("0.10"))))
                .contains("off by 0.1 % at the worst");
    }

    /** A laboratory 5 hours and 30 minutes ahead reads its own clock, and universal time only where none is known. */
    @Test
    void saysAMomentByTheLaboratorysClock() {
        Instant evening = Instant.parse("2026-11-26T20:15:30.400Z");
        Problem problem = Problem.warning("clock", "book.clock-was-back", 8, evening, 7, evening.plusSeconds(60));
        assertThat(ProblemText.in(Locale.ENGLISH, ZoneId.of("Asia/Kolkata")).say(problem))
                .startsWith("Entry 8 is stamped 2026-11-27 01:45:30 IST, before entry 7 (2026-11-27 01:46:30 IST)");
        assertThat(ENGLISH.say(problem)).contains("2026-11-26 20:15:30 UTC");
    }

    @Test
    void saysAWordOfTheTradeInFull() {
        Problem problem = Problem.error("gauge", "trial.reading-missing", new Problem.Word("gauge"));
        assertThat(ENGLISH.say(problem))
                .isEqualTo("The gauge reading is missing: the factor of this trial cannot be computed. Type it, "
                        + "or mark the trial void.");
        assertThat(problem.values().get(0)).hasToString("gauge");
    }

    /** Names that people gave may hold what a message format gives a meaning to. */
    @ParameterizedTest
    @CsvSource({"O'Hara sand", "sand {0}", "'sand ''A'''", "{", "'a, b'"})
    void leavesNamesAsPeopleGaveThem(String name) {
        assertThat(ENGLISH.say(Problem.warning("mass", "mix.mass-zero", name)))
                .isEqualTo(name + ": its mass is 0. Type the mass, or remove the constituent.");
    }

    @Test
    void leadsWithTheFileTheLineAndTheColumn() {
        Problem problem = Problem.warning("mass", "mix.mass-zero", "sand");
        String words = "sand: its mass is 0. Type the mass, or remove the constituent.";
        assertThat(ENGLISH.sayWithPlace(problem)).isEqualTo(words);
        assertThat(ENGLISH.sayWithPlace(problem.at(Place.of("mix.csv", 1200, 9))))
                .isEqualTo("mix.csv, line 1200, column 9: " + words);
        assertThat(ENGLISH.sayWithPlace(problem.at(Place.of("mix.csv", 12)))).isEqualTo("mix.csv, line 12: " + words);
        assertThat(ENGLISH.sayWithPlace(problem.at(Place.of("mix.csv")))).isEqualTo("mix.csv: " + words);
    }

    @Test
    void fallsBackToEnglishWhateverTheMachineSpeaks() {
        Problem problem = Problem.warning("mass", "mix.mass-zero", "sand");
        assertThat(ProblemText.in(Locale.JAPAN).say(problem)).isEqualTo(ENGLISH.say(problem));
    }

    @Test
    void hasNoWordsForACodeThatDoesNotExist() {
        Assertions.assertThatExceptionOfType(MissingResourceException.class)
                .isThrownBy(() -> ENGLISH.say(Problem.error("x", "mix.no-such-code")));
    }

    @Test
    void showsAMassInTheUnitItWasTypedIn() {
        Typed<Mass> pounds = Typed.of("-3", MassUnit.POUND);
        assertThat(ENGLISH.say(Problem.error("x", "mix.mass-negative", "sand", pounds)))
                .contains("mass -3 lb must");
    }
}
