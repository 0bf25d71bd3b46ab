package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.variance.OtherSets;

/** Every branch of what the stop rule says, word for word; the figures are those of {@link StopRuleHandTest}. */
class StopTextTest {
    private static final Profile OURS = Profiles.standard().copyAs("ours", "Ours");
    private static final StopText TEXT = StopText.in(Locale.ENGLISH);

    private static StopRule of(Profile profile, ScatterElsewhere elsewhere, double... factors) {
        return StopRule.of(factors, MeterType.B, 0.1, profile, elsewhere).orElseThrow();
    }

    /** Ten other mixes, two degrees of freedom each, that scatter alike. */
    private static ScatterElsewhere laboratory(double s) {
        return new ScatterElsewhere(
                Optional.empty(), OtherSets.of(Collections.nCopies(10, new PooledDeviation(1, 2, s))));
    }

    private static Profile least(String trials) {
        return OURS.with(FigureName.LEAST_TRIALS, new Figure(trials, "our manual", Mark.LABORATORY));
    }

    private static Profile wide() {
        return OURS.with(FigureName.HALF_WIDTH, new Figure("0.1", "our manual", Mark.LABORATORY));
    }

    @Test
    void saysEnough() {
        StopRule stop = of(OURS, laboratory(0.03), 0.4, 0.4, 0.4);
        assertThat(TEXT.say(stop))
                .isEqualTo(
                        "Enough: the 95 % interval of the mean reaches 0.038 % to either side, no more than the 0.050 %"
                                + " wanted.");
        assertThat(TEXT.reasons(stop).get(0))
                .isEqualTo("Based on a standard deviation of 0.030 %: this mix's own scatter, weighted with that of "
                        + "the laboratory's other mixes on this type of meter (degrees of freedom: 10.0).");
    }

    @Test
    void saysHowManyMore() {
        StopRule stop = of(OURS, laboratory(0.09), 0.3, 0.4, 0.4, 0.5);
        assertThat(TEXT.say(stop))
                .isEqualTo(
                        "10 more trials are expected, 14 in all: the 95 % interval of the mean reaches 0.097 % to either"
                                + " side, and 0.050 % is wanted.");
        assertThat(TEXT.reasons(stop))
                .containsExactly(
                        "Based on a standard deviation of 0.088 %: this mix's own scatter, weighted with that of "
                                + "the laboratory's other mixes on this type of meter (degrees of freedom: 11.0).",
                        "With 14 trials, in at least 90 of 100 determinations the mean lies within 0.050 % of "
                                + "what very many trials would give, even if this mix scatters twice as much as "
                                + "the others. The risk that the true scatter is wider than assumed, and 14 are "
                                + "too few: 41 %. The chance that it is narrower, and 13 would do: 53 %.",
                        "One more trial would not change the card: 95 of 100 would lie between 0.18 and 0.62 %, and G"
                                + " stays 0.4 % over all of that.");
        assertThat(TEXT.say(of(OURS, laboratory(0.065), 0.4, 0.4, 0.4, 0.5, 0.4, 0.4)))
                .startsWith("1 more trial is expected, 7 in all:");
    }

    @Test
    void saysWhenTheNumberAloneAsksForMore() {
        assertThat(TEXT.say(of(least("5"), laboratory(0.03), 0.4, 0.4, 0.4)))
                .isEqualTo("2 more trials, because the laboratory asks for at least 5. The 95 % interval of the mean is"
                        + " narrow enough already: 0.038 % to either side, 0.050 % wanted.");
        assertThat(TEXT.say(of(least("4"), laboratory(0.03), 0.4, 0.4, 0.4))).startsWith("1 more trial, because");
    }

    @Test
    void saysThatASingleTrialShowsNoScatter() {
        StopRule stop = of(OURS, ScatterElsewhere.NONE, 0.4);
        assertThat(TEXT.say(stop))
                .isEqualTo("At least 2 more trials: a single one shows no scatter, and the lab book has too few other"
                        + " mixes on this type of meter to know the laboratory's.");
        assertThat(TEXT.reasons(stop)).isEmpty();
        assertThat(TEXT.say(of(least("2"), ScatterElsewhere.NONE, 0.4))).startsWith("At least 1 more trial: ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TEXT.clause(stop))
                .withMessage("stop must know a scatter, but is NOT_YET_KNOWN");
    }

    @Test
    void saysThatMoreWouldNotDo() {
        StopRule stop = of(OURS, ScatterElsewhere.NONE, 0.1, 0.4, 0.7);
        assertThat(TEXT.say(stop))
                .isEqualTo("More trials alone are not enough: the 95 % interval of the mean reaches 0.745 % to "
                        + "either side, and even 30 trials would not bring it to the 0.050 % wanted. Find "
                        + "out why these scatter so much, or ask for less in the laboratory's profile.");
        assertThat(TEXT.clause(stop))
                .isEqualTo("they scatter too much for more trials alone to make the interval as narrow as wanted");
    }

    @Test
    void saysWhoseScatterIsReckonedWith() {
        assertThat(TEXT.reasons(of(OURS, ScatterElsewhere.NONE, 0.3, 0.4, 0.4, 0.5))
                        .get(0))
                .isEqualTo("Based on the scatter of this mix's trials alone, a standard deviation of 0.082 % "
                        + "(degrees of freedom: 3.0): fewer than 3 other mixes show theirs on this type of "
                        + "meter.");
        assertThat(TEXT.reasons(of(OURS, laboratory(0.05), 0.2, 0.5)).get(0))
                .isEqualTo("Based on the scatter of this mix's trials, a standard deviation of 0.212 % (degrees "
                        + "of freedom: 9.0): it is wider than that of the laboratory's other mixes.");
    }

    @Test
    void saysThatTheScaleIsTooCoarse() {
        StopRule stop = StopRule.of(new double[] {0.4, 0.4, 0.4}, MeterType.A, 0.1, OURS, ScatterElsewhere.NONE)
                .orElseThrow();
        assertThat(TEXT.say(stop))
                .isEqualTo("More trials alone are not enough: trials that do not scatter share one rounding "
                        + "error, which reaches 0.101 % to either side on this scale, and 0.050 % is wanted. Read "
                        + "on a finer scale, or ask for less in the laboratory's profile.");
        assertThat(TEXT.clause(stop))
                .isEqualTo("they share one rounding error, which is wider than wanted however many trials there are");
    }

    @Test
    void saysThatTheDialDecides() {
        assertThat(TEXT.reasons(of(OURS, ScatterElsewhere.NONE, 0.4, 0.4, 0.4, 0.4)))
                .containsExactly(
                        "The scatter is smaller than the scale can show, so it is taken from the division of the "
                                + "scale, as a standard deviation of 0.029 %.",
                        "No risks can be given: the division of the scale decides here, not chance.",
                        "One more trial would not change the card: 95 of 100 would lie between 0.30 and 0.50 %, and G"
                                + " stays 0.4 % over all of that.");
    }

    @Test
    void saysWhatOneMoreCouldChange() {
        assertThat(last(of(OURS, ScatterElsewhere.NONE, 0.3, 0.4, 0.4, 0.5)))
                .isEqualTo("One more trial could change the card from 0.4 to 0.3 or 0.5 %: 95 of 100 would lie between"
                        + " 0.11 and 0.69 %. Chance of a change: 7 %.");
        // Mean 0.4333: the next of 95 in 100 lies within 2.2281 x 0.059554 x sqrt(4/3) = 0.1532, a quarter of that is
        // 0.0383.
        assertThat(last(of(OURS, laboratory(0.06), 0.4, 0.4, 0.5)))
                .startsWith(
                        "One more trial could change the card from 0.4 to 0.5 %: 95 of 100 would lie between 0.28 and"
                                + " 0.59 %.");
        assertThat(last(of(OURS, laboratory(0.06), 0.3, 0.4, 0.4)))
                .startsWith("One more trial could change the card from 0.4 to 0.3 %: ");
    }

    private static String last(StopRule stop) {
        List<String> reasons = TEXT.reasons(stop);
        return reasons.get(reasons.size() - 1);
    }

    /** One clause for each way the two answers meet; the verdict of a page ends with it. */
    @Test
    void endsASentence() {
        assertThat(TEXT.clause(of(OURS, laboratory(0.03), 0.4, 0.4, 0.4)))
                .isEqualTo("one more trial would not change the card");
        assertThat(TEXT.clause(of(wide(), laboratory(0.06), 0.4, 0.4, 0.5)))
                .isEqualTo("these are enough, though one more trial could change the card from 0.4 to 0.5 %");
        assertThat(TEXT.clause(of(OURS, laboratory(0.09), 0.3, 0.4, 0.4, 0.5)))
                .isEqualTo("one more trial would not change the card, but 10 more are expected until the interval is as"
                        + " narrow as wanted");
        assertThat(TEXT.clause(of(OURS, ScatterElsewhere.NONE, 0.3, 0.4, 0.4, 0.5)))
                .isEqualTo("9 more trials are expected, and one could change the card from 0.4 to 0.3 or 0.5 %");
    }

    @Test
    void writesNumbersAsTheLanguageDoes() {
        assertThat(StopText.in(Locale.GERMAN).say(of(OURS, laboratory(0.03), 0.4, 0.4, 0.4)))
                .contains("reicht 0,038 % nach beiden Seiten");
    }

    @Test
    void neverCallsARiskNothingOrCertainThatIsNot() {
        // s = 0.02957 of 13 degrees: the risk that six are too few is 0.2 %, the chance that five would do 99.5 %.
        StopRule stop = of(OURS, laboratory(0.03), 0.4, 0.4, 0.4, 0.4, 0.4, 0.4);
        assertThat(stop.risks().orElseThrow().tooFew()).isLessThan(0.005);
        assertThat(TEXT.reasons(stop).get(1)).contains("6 are too few: 1 %").contains("5 would do: 99 %");
    }

    /** Every key is asked for in the source, and every key asked for is there. */
    @Test
    void hasATextForEverythingItSaysAndNoMore() throws java.io.IOException {
        Set<String> keys = ResourceBundle.getBundle("porebench.method.trial.stop", Locale.ROOT)
                .keySet();
        String source = java.nio.file.Files.readString(
                java.nio.file.Path.of("src/main/java/porebench/method/trial/StopText.java"));
        Matcher literals = Pattern.compile("\"((?:stop|basis|risks|next|clause)\\.[a-z-]+)\"")
                .matcher(source);
        Set<String> used = new HashSet<>();
        while (literals.find()) {
            used.add(literals.group(1));
        }
        Stream.of(Scatter.Basis.values()).forEach(basis -> used.add("basis." + basis.symbol()));
        assertThat(used).isEqualTo(keys);
    }
}
