package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

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
import porebench.statistics.PooledDeviation;

/** Every branch of what the stop rule says, word for word; the figures are those of {@link StopRuleHandTest}. */
class StopTextTest {
    private static final Profile OURS = Profiles.standard().copyAs("ours", "Ours");
    private static final StopText TEXT = StopText.in(Locale.ENGLISH);

    private static StopRule of(Profile profile, Optional<PooledDeviation> laboratory, double... factors) {
        return StopRule.of(factors, MeterType.B, 0.1, profile, laboratory).orElseThrow();
    }

    private static Optional<PooledDeviation> laboratory(double s) {
        return Optional.of(new PooledDeviation(8, 20, s));
    }

    private static Profile least(String trials) {
        return OURS.with(FigureName.LEAST_TRIALS, new Figure(trials, "our manual", Mark.LABORATORY));
    }

    @Test
    void saysEnough() {
        StopRule stop = of(OURS, laboratory(0.04), 0.3, 0.4, 0.4);
        assertThat(TEXT.say(stop))
                .isEqualTo(
                        "Enough: the 95 % interval of the mean reaches 0.048 % to either side, no more than the 0.050 %"
                                + " wanted.");
        assertThat(TEXT.reasons(stop).get(0))
                .isEqualTo(
                        "Reckoned with the laboratory's own scatter, a standard deviation of 0.040 % pooled over its other"
                                + " determinations on this type of meter (degrees of freedom: 20).");
    }

    @Test
    void saysHowManyMore() {
        StopRule stop = of(OURS, laboratory(0.06), 0.3, 0.4, 0.4, 0.5);
        assertThat(TEXT.say(stop))
                .isEqualTo(
                        "3 more trials are expected, 7 in all: the 95 % interval of the mean reaches 0.063 % to either"
                                + " side, and 0.050 % is wanted.");
        assertThat(TEXT.reasons(stop))
                .containsExactly(
                        "Reckoned with the laboratory's own scatter, a standard deviation of 0.060 % pooled over its other"
                                + " determinations on this type of meter (degrees of freedom: 20).",
                        "With 7 trials the mean lies, with a confidence of 96 %, within 0.050 % of what very many trials"
                                + " would give. The risk that the true scatter is wider than reckoned, and 7 are too few:"
                                + " 27 %. The chance that it is narrower, and 6 would do: 56 %.",
                        "One more trial would not change the card: 95 of 100 would lie between 0.26 and 0.54 %, and G"
                                + " stays 0.4 % over all of that.");
        assertThat(TEXT.say(of(OURS, laboratory(0.06), 0.3, 0.4, 0.4, 0.5, 0.4, 0.4)))
                .startsWith("1 more trial is expected, 7 in all:");
    }

    @Test
    void saysWhenTheNumberAloneAsksForMore() {
        assertThat(TEXT.say(of(least("5"), laboratory(0.04), 0.3, 0.4, 0.4)))
                .isEqualTo("2 more trials, because the laboratory asks for at least 5. The 95 % interval of the mean is"
                        + " narrow enough already: 0.048 % to either side, 0.050 % wanted.");
        assertThat(TEXT.say(of(least("4"), laboratory(0.04), 0.3, 0.4, 0.4))).startsWith("1 more trial, because");
    }

    @Test
    void saysThatASingleTrialShowsNoScatter() {
        StopRule stop = of(OURS, Optional.empty(), 0.4);
        assertThat(TEXT.say(stop))
                .isEqualTo("At least 2 more trials: a single one shows no scatter, and the lab book has too few other"
                        + " determinations on this type of meter to know the laboratory's.");
        assertThat(TEXT.reasons(stop)).isEmpty();
        assertThat(TEXT.say(of(least("2"), Optional.empty(), 0.4))).startsWith("At least 1 more trial: ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TEXT.clause(stop))
                .withMessage("stop must know a scatter, but is NOT_YET_KNOWN");
    }

    @Test
    void saysThatMoreWouldNotDo() {
        StopRule stop = of(OURS, Optional.empty(), 0.1, 0.4, 0.7);
        assertThat(TEXT.say(stop))
                .isEqualTo(
                        "More trials alone will not do: the 95 % interval of the mean reaches 0.745 % to either side, and"
                                + " even 30 trials would not bring it to the 0.050 % wanted. Find out why these scatter so much,"
                                + " or ask for less in the laboratory's profile.");
        assertThat(TEXT.clause(stop))
                .isEqualTo("they scatter too much for more trials alone to make the interval as narrow as wanted");
    }

    @Test
    void saysWhoseScatterIsReckonedWith() {
        assertThat(TEXT.reasons(of(OURS, Optional.empty(), 0.3, 0.4, 0.4, 0.5)).get(0))
                .isEqualTo(
                        "Reckoned with the scatter of these trials alone, a standard deviation of 0.082 % (degrees of"
                                + " freedom: 3): the lab book has too few other determinations on this type of meter to know the"
                                + " laboratory's.");
        assertThat(TEXT.reasons(of(OURS, laboratory(0.05), 0.2, 0.5)).get(0))
                .isEqualTo(
                        "Reckoned with the scatter of these trials alone, a standard deviation of 0.212 % (degrees of"
                                + " freedom: 1): they scatter more than the laboratory's other determinations do.");
    }

    @Test
    void saysThatTheDialDecides() {
        assertThat(TEXT.reasons(of(OURS, Optional.empty(), 0.4, 0.4, 0.4, 0.4)))
                .containsExactly(
                        "The scatter is less than the scale can show, so its division is reckoned with, as a standard"
                                + " deviation of 0.029 %.",
                        "No risks can be given: the division of the scale decides here, not chance.",
                        "One more trial would not change the card: 95 of 100 would lie between 0.30 and 0.50 %, and G"
                                + " stays 0.4 % over all of that.");
    }

    @Test
    void saysWhatOneMoreCouldChange() {
        assertThat(last(of(OURS, Optional.empty(), 0.3, 0.4, 0.4, 0.5)))
                .isEqualTo("One more trial could change the card from 0.4 to 0.3 or 0.5 %: 95 of 100 would lie between"
                        + " 0.11 and 0.69 %. Chance of a change: 7 %.");
        // Mean 0.4333: the next of 95 in 100 lies within 2.086 x 0.06 x sqrt(4/3) = 0.1445, a quarter of that is
        // 0.0361.
        assertThat(last(of(OURS, laboratory(0.06), 0.4, 0.4, 0.5)))
                .startsWith(
                        "One more trial could change the card from 0.4 to 0.5 %: 95 of 100 would lie between 0.29 and"
                                + " 0.58 %.");
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
        assertThat(TEXT.clause(of(OURS, laboratory(0.04), 0.4, 0.4, 0.5)))
                .isEqualTo("these are enough, though one more trial could change the card from 0.4 to 0.5 %");
        assertThat(TEXT.clause(of(OURS, laboratory(0.06), 0.3, 0.4, 0.4, 0.5)))
                .isEqualTo("one more trial would not change the card, but 3 more are expected until the interval is as"
                        + " narrow as wanted");
        assertThat(TEXT.clause(of(OURS, Optional.empty(), 0.3, 0.4, 0.4, 0.5)))
                .isEqualTo("9 more trials are expected, and one could change the card from 0.4 to 0.3 or 0.5 %");
    }

    @Test
    void writesNumbersAsTheLanguageDoes() {
        assertThat(StopText.in(Locale.GERMAN).say(of(OURS, laboratory(0.04), 0.3, 0.4, 0.4)))
                .contains("reaches 0,048 % to either side");
    }

    @Test
    void neverCallsARiskNothingOrCertainThatIsNot() {
        // 2.086 x 0.031 / sqrt(3): the risk that three are too few is below a hundredth of a percent.
        StopRule stop = of(OURS, laboratory(0.0289), 0.4, 0.4, 0.4, 0.4, 0.4, 0.4);
        assertThat(stop.risks().orElseThrow().tooFew()).isLessThan(0.005);
        assertThat(TEXT.reasons(stop).get(1)).contains("a confidence of 99 %").contains("6 are too few: 1 %");
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
