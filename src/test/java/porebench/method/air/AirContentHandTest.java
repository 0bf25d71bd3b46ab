package porebench.method.air;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Answer;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Profile;
import porebench.method.RoundingRule;
import porebench.method.Said;
import porebench.method.Ties;
import porebench.method.profile.Profiles;

/** Air contents by pencil. */
class AirContentHandTest {
    private static final Profile OURS = Profiles.standard().copyAs("ours", "Ours");
    private static final Profile LOOKS_AT_AIR = with(OURS, FigureName.HIGH_AIR_LOOKS_AT, "air");
    private static final Profile NEVER = with(OURS, FigureName.HIGH_AIR_LOOKS_AT, "never");

    private static Profile with(Profile profile, FigureName name, String value) {
        return profile.with(name, new Figure(value, "our manual, part 3", Mark.LABORATORY));
    }

    private static Answer<AirContent> answer(String reading, String factor, String division, Profile profile) {
        return AirContent.of(new BigDecimal(reading), new BigDecimal(factor), new BigDecimal(division), profile);
    }

    private static AirContent air(String reading, String factor, String division, Profile profile) {
        return answer(reading, factor, division, profile).value().orElseThrow();
    }

    /**
     * A = A1 - G, to 0.1 % with ties to even (ASTM E29, recalled).
     *
     * <pre>
     * 5.4 - 0.4 = 5.0      5.35 - 0.3 = 5.05 -> 5.0     5.45 - 0.3 = 5.15 -> 5.2     5.4 - 0.35 = 5.05 -> 5.0
     * 5.5 - 0.35 = 5.15 -> 5.2     5.44 - 0.4 = 5.04 -> 5.0     5.46 - 0.4 = 5.06 -> 5.1
     * </pre>
     */
    @ParameterizedTest
    @CsvSource({
        "5.4, 0.4, 5.0, 5.0",
        "5.35, 0.3, 5.05, 5.0",
        "5.45, 0.3, 5.15, 5.2",
        "5.4, 0.35, 5.05, 5.0",
        "5.5, 0.35, 5.15, 5.2",
        "5.44, 0.4, 5.04, 5.0",
        "5.46, 0.4, 5.06, 5.1",
        "0.4, 0.4, 0, 0.0",
        "5.4, 0, 5.4, 5.4"
    })
    void subtractsTheFactorAndRoundsOnce(String reading, String factor, String percent, String reported) {
        AirContent air = air(reading, factor, "0.1", Profiles.standard());
        assertThat(air.percent()).isEqualByComparingTo(percent);
        assertThat(air.reported()).isEqualTo(new BigDecimal(reported));
        assertThat(air.rule()).isEqualTo(Profiles.standard().airRounding());
    }

    /** The same tie in the four profiles: 5.05 to even in C231 and T 152, away from zero in EN and JIS. */
    @ParameterizedTest
    @CsvSource({"astm-c231, 5.0", "aashto-t152, 5.0", "en-12350-7, 5.1", "jis-a1128, 5.1"})
    void roundsATieAsTheProfileSays(String profile, String reported) {
        assertThat(air("5.35", "0.3", "0.1", Profiles.find(profile).orElseThrow())
                        .reported())
                .isEqualTo(new BigDecimal(reported));
    }

    /**
     * Above 8 % on the gauge, to half a scale division (C231, T 152: recalled).
     *
     * <pre>
     * 8.0 - 0.34 = 7.66: the reading is not above 8 -> 7.7
     * 8.1 - 0.34 = 7.76, division 0.1 -> steps of 0.05 -> 7.75
     * 8.4 - 0.34 = 8.06, division 0.2 -> steps of 0.1 -> 8.1
     * 8.5 - 0.30 = 8.20, division 0.5 -> steps of 0.25 -> 8.25
     * 8.425 - 0.30 = 8.125, division 0.1: a tie between 8.10 (162 steps, even) and 8.15 -> 8.10
     * 8.475 - 0.30 = 8.175: a tie between 8.15 and 8.20 (164 steps, even) -> 8.20
     * </pre>
     */
    @ParameterizedTest
    @CsvSource({
        "8.0, 0.34, 0.1, 7.7",
        "8.001, 0.341, 0.1, 7.65",
        "8.1, 0.34, 0.1, 7.75",
        "8.4, 0.34, 0.2, 8.1",
        "8.5, 0.30, 0.5, 8.25",
        "8.425, 0.30, 0.1, 8.10",
        "8.475, 0.30, 0.1, 8.20"
    })
    void reportsHighAirToHalfADivision(String reading, String factor, String division, String reported) {
        assertThat(air(reading, factor, division, Profiles.standard()).reported())
                .isEqualTo(new BigDecimal(reported));
        assertThat(air(reading, factor, division, Profiles.find("aashto-t152").orElseThrow())
                        .reported())
                .isEqualTo(new BigDecimal(reported));
    }

    /**
     * What the 8 % looks at: reading 8.2 with G 0.34 is air 7.86. Looking at the reading gives steps of 0.05, 7.85; looking at
     * the air, or never, gives 7.9. Reading 8.4 with G 0.34 is air 8.06: above 8 either way, 8.05; never gives 8.1.
     */
    @Test
    void looksAtTheReadingOrTheAirOrNeitherAsTheProfileSays() {
        assertThat(air("8.2", "0.34", "0.1", OURS).reported()).isEqualTo(new BigDecimal("7.85"));
        assertThat(air("8.2", "0.34", "0.1", LOOKS_AT_AIR).reported()).isEqualTo(new BigDecimal("7.9"));
        assertThat(air("8.2", "0.34", "0.1", NEVER).reported()).isEqualTo(new BigDecimal("7.9"));
        assertThat(air("8.4", "0.34", "0.1", OURS).reported()).isEqualTo(new BigDecimal("8.05"));
        assertThat(air("8.4", "0.34", "0.1", LOOKS_AT_AIR).reported()).isEqualTo(new BigDecimal("8.05"));
        assertThat(air("8.4", "0.34", "0.1", NEVER).reported()).isEqualTo(new BigDecimal("8.1"));
    }

    /** Air of exactly 8.0 is not above 8: 8.34 - 0.34 = 8.00, and a hundredth more is. */
    @Test
    void looksAtTheAirBeforeItIsRounded() {
        assertThat(air("8.34", "0.34", "0.5", LOOKS_AT_AIR).rule()).isEqualTo(LOOKS_AT_AIR.airRounding());
        assertThat(air("8.35", "0.34", "0.5", LOOKS_AT_AIR).rule().step()).isEqualByComparingTo("0.25");
    }

    @Test
    void namesTheClauseOfTheRuleItApplied() {
        Profile profile = with(OURS, FigureName.HIGH_AIR_ABOVE, "7");
        RoundingRule rule = air("7.5", "0.3", "0.2", profile).rule();
        assertThat(rule.clause()).isEqualTo("our manual, part 3");
        assertThat(rule.step()).isEqualByComparingTo("0.1");
        assertThat(rule.ties()).isEqualTo(Ties.TO_EVEN);
        assertThat(air("7.0", "0.3", "0.2", profile).rule().clause())
                .isEqualTo(Profiles.standard().figure(FigureName.AIR_STEP).clause());
    }

    /**
     * Carried forward: G 0.35 becomes 0.4 first (tie to the even tenth), 5.4 - 0.4 = 5.0; not carried, 5.4 - 0.35 = 5.05 -> 5.0.
     * With 5.3 the two differ: 5.3 - 0.4 = 4.9, but 5.3 - 0.35 = 4.95 -> 5.0 (50 tenths are even).
     */
    @Test
    void carriesTheRoundedFactorForwardWhereTheProfileSaysSo() {
        Profile carries = with(OURS, FigureName.CARRY_ROUNDED_FACTOR, "yes");
        assertThat(air("5.4", "0.35", "0.1", carries).percent()).isEqualByComparingTo("5.0");
        assertThat(air("5.3", "0.35", "0.1", carries).reported()).isEqualTo(new BigDecimal("4.9"));
        assertThat(air("5.3", "0.35", "0.1", OURS).percent()).isEqualByComparingTo("4.95");
        assertThat(air("5.3", "0.35", "0.1", OURS).reported()).isEqualTo(new BigDecimal("5.0"));
    }

    @ParameterizedTest
    @CsvSource({
        "-0.1, 0.3, 0.1, reading, air.reading-out-of-range, Reading -0.1 % must be from 0 to 100 %. Correct the "
                + "reading.",
        "100.1, 0.3, 0.1, reading, air.reading-out-of-range, Reading 100.1 % must be from 0 to 100 %. Correct "
                + "the reading.",
        "5, 101, 0.1, factor, air.factor-out-of-range, Factor 101 % must be from -100 to 100 %. Correct the "
                + "factor.",
        "5, -101, 0.1, factor, air.factor-out-of-range, Factor -101 % must be from -100 to 100 %. Correct the "
                + "factor.",
        "5, 0.3, 0, division, air.division-out-of-range, Division 0 % must be greater than 0 and at most 10 %. "
                + "Correct the division.",
        "5, 0.3, -1, division, air.division-out-of-range, Division -1 % must be greater than 0 and at most 10 %. "
                + "Correct the division.",
        "5, 0.3, 10.1, division, air.division-out-of-range, Division 10.1 % must be greater than 0 and at most "
                + "10 %. Correct the division."
    })
    void refusesWhatCannotBe(String reading, String factor, String division, String field, String code, String words) {
        Answer<AirContent> answer = answer(reading, factor, division, Profiles.standard());
        assertThat(answer.value()).isEmpty();
        assertThat(answer.problems()).hasSize(1);
        assertThat(answer.problems().get(0).field()).isEqualTo(field);
        assertThat(answer.problems().get(0).code()).isEqualTo(code);
        assertThat(Said.text(answer.problems().get(0))).isEqualTo(words);
    }

    @Test
    void takesItsLimits() {
        assertThat(answer("0", "0", "10", Profiles.standard()).problems()).isEmpty();
        assertThat(answer("100", "100", "0.01", Profiles.standard()).problems()).isEmpty();
        assertThat(answer("100", "-100", "0.1", Profiles.standard()).value()).isPresent();
    }

    @Test
    void saysEverythingAtOnce() {
        assertThat(Said.codes(answer("-1", "200", "0", Profiles.standard()).problems()))
                .containsExactly("air.reading-out-of-range", "air.factor-out-of-range", "air.division-out-of-range");
    }

    /** A negative factor is used but doubted, 5.0 + 0.2 = 5.2; so is a negative air content, 0.2 - 0.3 = -0.1. */
    @Test
    void doubtsWhatIsNegative() {
        Answer<AirContent> answer = answer("5.0", "-0.2", "0.1", Profiles.standard());
        assertThat(answer.value().orElseThrow().reported()).isEqualTo(new BigDecimal("5.2"));
        assertThat(Said.codes(answer.problems())).containsExactly("air.factor-negative");
        Answer<AirContent> below = answer("0.2", "0.3", "0.1", Profiles.standard());
        assertThat(below.value().orElseThrow().reported()).isEqualTo(new BigDecimal("-0.1"));
        assertThat(Said.text(Said.one(below.problems(), "air.negative")))
                .isEqualTo("Reading 0.2 % less the factor 0.3 % is a negative air content. Read the gauge again, "
                        + "and check the factor.");
        assertThat(answer("0.3", "0.3", "0.1", Profiles.standard()).problems()).isEmpty();
    }
}
