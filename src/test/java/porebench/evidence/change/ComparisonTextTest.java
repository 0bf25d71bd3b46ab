package porebench.evidence.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import porebench.method.profile.Profiles;
import porebench.statistics.comparison.BeforeAndAfter;
import porebench.statistics.comparison.BetweenSets;
import porebench.statistics.comparison.ReadingSets;

/** What is said of a comparison, word for word; the figures are R's or those of BeforeAndAfterTest and ComparisonPlanTest. */
class ComparisonTextTest {
    private static final ComparisonText TEXT = ComparisonText.in(Locale.ENGLISH);

    private static ReadingSets sets(double[]... sets) {
        return ReadingSets.of(Arrays.asList(sets));
    }

    private static Comparison comparison(
            ReadingSets before, ReadingSets after, double margin, Optional<BetweenSets> between) {
        return new Comparison(
                BeforeAndAfter.of(before, after, 0.001, false, between), margin, 0.001, OptionalDouble.empty());
    }

    private static Comparison comparison(double margin, double[] before, double... after) {
        return comparison(sets(before), sets(after), margin, Optional.empty());
    }

    /** The groups two-groups of src/test/resources/reference/before-and-after.csv. */
    private static Comparison twoGroups(double margin) {
        return comparison(
                margin, new double[] {0.3, 0.4, 0.4, 0.5, 0.3, 0.4, 0.6, 0.4}, 0.4, 0.5, 0.4, 0.4, 0.6, 0.5, 0.5);
    }

    @Test
    void saysToKeep() {
        assertThat(TEXT.say(twoGroups(0.2)))
                .isEqualTo("Keep the factor: it is shown to have moved by less than 0.200 %.");
        assertThat(TEXT.reasons(twoGroups(0.2)))
                .startsWith(
                        "After less before: 0.059 %; 95 % interval from -0.039 to 0.157 %.",
                        "The 90 % interval, from -0.021 to 0.139 %, lies within 0.200 % to either side of 0.",
                        "Trials count one by one. What two determinations of the same differ by is not in these numbers.")
                .hasSize(4);
    }

    @Test
    void saysToReplace() {
        assertThat(TEXT.say(comparison(0.05, new double[] {0.42, 0.38, 0.45, 0.40}, 0.71, 0.66, 0.74, 0.69, 0.70)))
                .isEqualTo(
                        "Replace the factor: it moved by 0.288 %, more than the 0.050 % that matter, and chance does not"
                                + " explain that.");
    }

    private static double[] around(double mean) {
        double away = 0.1 * Math.sqrt(0.75);
        return new double[] {mean - away, mean + away, mean - away, mean + away};
    }

    /** Two more each, or six more of the new: ComparisonPlanTest. */
    @Test
    void saysHowManyMore() {
        Comparison open = comparison(0.2, around(0.4), around(0.55));
        assertThat(TEXT.say(open))
                .isEqualTo("Test 6 trials more of the new: neither a change nor its absence is shown within 0.200 %.");
        assertThat(TEXT.reasons(open))
                .anySatisfy(
                        reason -> assertThat(reason)
                                .startsWith(
                                        "If nothing had changed, so many trials would have shown it with a chance of ")
                                .endsWith(
                                        "For a chance of 80 % it takes 6 trials of the new, or 2 trials both of the old and of the new."));
    }

    @Test
    void saysWhenTheNewAloneWillNotDo() {
        double[] three = {0.35, 0.40, 0.45};
        assertThat(TEXT.say(comparison(0.05, three, three)))
                .startsWith("Test ")
                .endsWith(
                        " trials more both of the old and of the new: neither a change nor its absence is shown within"
                                + " 0.050 %, and the new alone would not do.");
    }

    /** R's power of two groups of a standard deviation of 0.1 reaches 80 % of a margin of 0.05 at 70 each: nobody tests so many. */
    @Test
    void saysWhenNobodyWouldTestSoMany() {
        assertThat(TEXT.say(comparison(0.05, around(0.4), around(0.4))))
                .isEqualTo(
                        "Neither a change nor its absence is shown within 0.050 %, and it would take 66 trials more to"
                                + " show it: issue the new factor from a determination of the new rather than test so many.");
    }

    @Test
    void saysWhenNoNumberWillDo() {
        double[] still = {0.4, 0.4, 0.4};
        Comparison coarse = new Comparison(
                BeforeAndAfter.of(sets(still), sets(still), 0.1, false, Optional.empty()),
                0.05,
                0.1,
                OptionalDouble.empty());
        assertThat(TEXT.say(coarse)).startsWith("More trials alone will not show whether the factor moved by 0.050 %");
        assertThat(coarse.doubts())
                .extracting(problem -> problem.code())
                .containsExactly(
                        "change.margin-below-division", "change.determinations-unseen", "change.readings-still");
    }

    @Test
    void saysDeterminationsWithTheirTrials() {
        ReadingSets before = sets(new double[] {0.38, 0.42, 0.40}, new double[] {0.44, 0.48, 0.46});
        ReadingSets after = sets(new double[] {0.40, 0.44, 0.42}, new double[] {0.46, 0.50, 0.48});
        Comparison open = comparison(before, after, 0.05, Optional.empty());
        assertThat(TEXT.say(open)).containsPattern("\\d+ determinations \\(\\d+ trials in all\\) more");
        assertThat(TEXT.reasons(open)).contains("Determinations count one by one, by their means.");
        assertThat(open.doubts()).isEmpty();
    }

    @Test
    void saysWhereWhatDeterminationsDifferByComesFrom() {
        Comparison known = comparison(
                sets(new double[] {0.40, 0.44}),
                sets(new double[] {0.41, 0.45}),
                0.05,
                Optional.of(new BetweenSets(0.04, 8)));
        assertThat(TEXT.reasons(known))
                .contains(
                        "Trials count one by one, and what two determinations of the same differ by in this laboratory"
                                + " is added.");
        Comparison borrowed = comparison(
                sets(new double[] {0.40, 0.44}, new double[] {0.42, 0.47}),
                sets(new double[] {0.41, 0.45}),
                0.05,
                Optional.empty());
        assertThat(TEXT.reasons(borrowed))
                .contains(
                        "Determinations count one by one, by their means; one side has a single one, which is taken to"
                                + " differ as those of the other side do.");
    }

    @Test
    void saysItInSpanish() {
        assertThat(ComparisonText.in(Locale.forLanguageTag("es-ES")).say(twoGroups(0.2)))
                .isEqualTo("Conservar el factor: está demostrado que se movió menos de 0,200 %.");
    }

    @Test
    void theMarginIsHalfTheReportingStep() {
        assertThat(Comparison.usualMargin(Profiles.standard())).isEqualByComparingTo("0.05");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> twoGroups(0))
                .withMessageContaining("marginPercent must be greater than 0");
    }

    /** Every key is asked for in the source, and every key asked for is there. */
    @Test
    void hasATextForEverythingItSaysAndNoMore() throws IOException {
        String source = Files.readString(Path.of("src/main/java/porebench/evidence/change/ComparisonText.java"));
        Set<String> used = new HashSet<>();
        Matcher literals =
                Pattern.compile("\"((?:verdict|more|reason)\\.[a-z-]+)\"").matcher(source);
        while (literals.find()) {
            used.add(literals.group(1));
        }
        Stream.of(BeforeAndAfter.Unit.values()).forEach(unit -> used.add("unit." + unit.symbol()));
        assertThat(used)
                .isEqualTo(ResourceBundle.getBundle("porebench.evidence.change.comparison", Locale.ROOT)
                        .keySet());
    }
}
