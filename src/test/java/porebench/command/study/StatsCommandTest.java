package porebench.command.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class StatsCommandTest {
    @TempDir
    Path folder;

    private Said stats(String values) {
        LabFiles.write(folder, "values.csv", values);
        return new Terminal(folder).json("stats", "--values", "values.csv");
    }

    private static double number(Map<String, Object> json, String name) {
        return new BigDecimal(json.get(name).toString()).doubleValue();
    }

    /**
     * Source: NIST Statistical Reference Datasets, univariate, NumAcc1 (seen): 10000001, 10000003, 10000002; mean 10000002,
     * standard deviation 1, lag-1 autocorrelation -0.5, exactly.
     */
    @Test
    void answersWithTheFieldsOfTheContract() {
        Said said = stats("10000001\n10000003\n10000002\n");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsOnlyKeys(
                        "count",
                        "mean",
                        "standardDeviation",
                        "lag1Autocorrelation",
                        "confidence95",
                        "rangeCheck",
                        "grubbs",
                        "grubbsTwo",
                        "dixon",
                        "andersonDarling",
                        "shapiroWilk",
                        "problems")
                .containsEntry("count", 3);
        assertThat(number(said.json(), "mean")).isEqualTo(10000002);
        assertThat(number(said.json(), "standardDeviation")).isEqualTo(1, within(1e-12));
        assertThat(number(said.json(), "lag1Autocorrelation")).isEqualTo(-0.5, within(1e-12));
    }

    /**
     * Source: NIST/SEMATECH e-Handbook, 1.3.5.17.1, Grubbs's test of eight uranium readings (recalled): the outlier is 245.57 and
     * G = 2.4687, cut and not rounded.
     */
    @Test
    @SuppressWarnings("unchecked")
    void countsTheOutliersPlaceFromZero() {
        Said said = stats("u\n199.31\n199.53\n200.19\n200.82\n201.92\n201.95\n202.18\n245.57\n");
        Map<String, Object> grubbs = (Map<String, Object>) said.json().get("grubbs");
        assertThat(grubbs).containsOnlyKeys("statistic", "p", "index").containsEntry("index", 7);
        assertThat(number(grubbs, "statistic")).isEqualTo(2.4687, within(0.0001));
        assertThat(number(grubbs, "p")).isBetween(0.0, 0.001);
    }

    @Test
    void whatTwoOrEqualNumbersDoNotDefineIsNull() {
        assertThat(stats("1\n2\n").json()).containsEntry("grubbs", null);
        assertThat(stats("5\n").json()).containsEntry("standardDeviation", null).containsEntry("grubbs", null);
        assertThat(stats("5\n5\n5\n").json())
                .containsEntry("lag1Autocorrelation", null)
                .containsEntry("grubbs", null);
        assertThat(stats("5\n").json()).containsEntry("confidence95", null).containsEntry("rangeCheck", null);
        stats("5\n5\n5\n");
        assertThat(new Terminal(folder)
                        .run("stats", "--values", "values.csv")
                        .out()
                        .lines()
                        .map(line -> line.replaceAll(" +", " ")))
                .contains("Count 3", "Standard deviation 0", "Lag-1 autocorrelation -", "Range 0")
                .contains("Dixon - - All numbers are equal, which leaves nothing to test.");
    }

    /** Source: S. S. Shapiro and M. B. Wilk, Biometrika 52 (1965), weights of 11 men (recalled): W 0.79; further digits R 4.2.2. */
    @Test
    void testsForNormality() {
        Said said = stats("148\n154\n158\n160\n161\n162\n166\n170\n182\n195\n236\n");
        assertThat(group(said, "shapiroWilk")).containsOnlyKeys("statistic", "p");
        assertThat(number(group(said, "shapiroWilk"), "statistic")).isEqualTo(0.788814694835387, within(1e-9));
        assertThat(number(group(said, "shapiroWilk"), "p")).isEqualTo(0.00670381405650293, within(1e-9));
        assertThat(number(group(said, "andersonDarling"), "statistic")).isEqualTo(1.0289297699773, within(1e-9));
        assertThat(number(group(said, "andersonDarling"), "p")).isEqualTo(0.0104540240051478, within(1e-9));
        assertThat(group(said, "dixon")).containsEntry("p", null).containsKey("reason");
    }

    /** Source: ASTM E178 example 1 (recalled): the two high ones of ten stand out together. */
    @Test
    void testsForTwoOutliersOnOneSide() {
        Said said = stats("568\n570\n570\n570\n572\n572\n572\n578\n584\n596\n");
        assertThat(number(group(said, "grubbsTwo"), "statistic")).isEqualTo(0.090962441314554, within(1e-10));
        assertThat(number(group(said, "grubbsTwo"), "p")).isBetween(0.0, 0.01);
        assertThat(new Terminal(folder).run("stats", "--values", "values.csv").out())
                .contains(
                        "Grubbs, two on one side", "0.0909624", "Grubbs index, from 0", "more numbers than this test");
    }

    /** One step of a 0.1 scale: G is past its critical value and r10 is 1, but neither p is said. */
    @Test
    void doesNotSayWhatADivisionMakesUp() {
        Said said = stats("0.4\n0.4\n0.5\n0.4\n0.4\n");
        assertThat(group(said, "grubbs")).containsEntry("p", null).containsEntry("index", 2);
        assertThat((String) group(said, "grubbs").get("reason")).contains("one division");
        assertThat(group(said, "grubbsTwo")).containsEntry("p", null);
        assertThat(group(said, "dixon")).containsEntry("p", null);
        assertThat(number(group(said, "dixon"), "statistic")).isEqualTo(1);
        assertThat(group(said, "shapiroWilk")).containsEntry("p", null);
        Said finer = new Terminal(folder).json("stats", "--values", "values.csv", "--division", "0.01");
        assertThat(number(group(finer, "grubbs"), "p")).isZero();
    }

    /** 0.3 to 0.5 spans 0.2; three results may span 3.3 times the repeatability, 0.165 for 0.05 and 0.33 for 0.1. */
    @Test
    void checksTheRange() {
        Said said = stats("0.3\n0.5\n0.4\n");
        Said narrow = new Terminal(folder).json("stats", "--values", "values.csv", "--repeatability", "0.05");
        Said wide = new Terminal(folder).json("stats", "--values", "values.csv", "--repeatability", "0.1");
        assertThat(number(group(narrow, "rangeCheck"), "limit")).isEqualTo(0.165, within(1e-12));
        assertThat(group(narrow, "rangeCheck")).containsEntry("passes", false);
        assertThat(group(wide, "rangeCheck")).containsEntry("passes", true);
        double usual = porebench.method.profile.Profiles.standard().number(porebench.method.FigureName.REPEATABILITY);
        assertThat(number(group(said, "rangeCheck"), "limit")).isEqualTo(3.3 * usual, within(1e-12));
    }

    /** Mean 0.45, t = 12.7062 with one degree of freedom, standard error 0.05: -0.1853 to 1.0853. */
    @Test
    void givesTheIntervalOfTheMean() {
        Map<String, Object> interval = group(stats("0.4\n0.5\n"), "confidence95");
        assertThat(number(interval, "low")).isEqualTo(-0.1853, within(0.00005));
        assertThat(number(interval, "high")).isEqualTo(1.0853, within(0.00005));
    }

    @Test
    void refusesADivisionAndARepeatabilityOfNothing() {
        stats("1\n2\n");
        assertThat(new Terminal(folder)
                        .json("stats", "--values", "values.csv", "--division", "0", "--repeatability", "-1")
                        .codes())
                .containsExactly("command.not-positive", "command.not-positive");
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> group(Said said, String name) {
        return (Map<String, Object>) said.json().get(name);
    }

    @Test
    void refusesWhatIsNoNumber() {
        Said said = stats("1\n2,5\nx\n");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.list("problems"))
                .extracting(problem -> problem.get("line"))
                .contains(2, 3);
    }

    @Test
    void refusesAFileWithNoNumber() {
        assertThat(stats("").status()).isEqualTo(1);
        assertThat(stats("heading\n").status()).isEqualTo(1);
        assertThat(stats("heading\n").codes()).containsExactly("command.no-number");
        assertThat(new Terminal(folder).json("stats", "--values", "no.csv").codes())
                .containsExactly("csv.file-missing");
    }

    private Said sets(String rows) {
        LabFiles.write(folder, "sets.csv", "set,value\n" + rows);
        return new Terminal(folder).json("stats", "--values", "sets.csv", "--sets");
    }

    /**
     * A: mean 0.5, squares 0.02 over 2 degrees of freedom, s 0.1; half-width 4.3027 x 0.1 / sqrt(3) = 0.2484. B: mean 0.52,
     * squares 4 x 0.0144 + 0.2304 = 0.288 over 4, s 0.26833; G = 0.48 / 0.26833 = 1.7889, what five values reach at most. C has
     * no spread to estimate. Pooled: sqrt((0.02 + 0.288) / 6) = 0.22657. Limits 3.3 and 3.9 x 0.1.
     */
    @Test
    void sumsUpManySets() {
        Said said = sets("A,0.4\nB,0.4\nA,0.5\nB,0.4\nA,0.6\nB,0.4\nB,0.4\nB,1.0\nC,0.5\n");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsEntry("count", 3)
                .containsEntry("tooWide", 1)
                .containsEntry("withOutlier", 1);
        assertThat(number(said.json(), "pooledStandardDeviation")).isEqualTo(0.22657, within(0.00001));
        Map<String, Object> a = said.list("sets").get(0);
        assertThat(a)
                .containsOnlyKeys(
                        "set",
                        "count",
                        "mean",
                        "standardDeviation",
                        "range",
                        "confidence95",
                        "rangePasses",
                        "outlier",
                        "grubbs",
                        "index");
        assertThat(a).containsEntry("set", "A").containsEntry("count", 3).containsEntry("rangePasses", true);
        assertThat(number(a, "standardDeviation")).isEqualTo(0.1, within(1e-12));
        @SuppressWarnings("unchecked")
        Map<String, Object> interval = (Map<String, Object>) a.get("confidence95");
        assertThat(number(interval, "low")).isEqualTo(0.5 - 0.2484, within(0.0001));
        Map<String, Object> b = said.list("sets").get(1);
        assertThat(b)
                .containsEntry("outlier", true)
                .containsEntry("rangePasses", false)
                .containsEntry("index", 4);
        assertThat(number(b, "grubbs")).isEqualTo(1.7889, within(0.0001));
        Map<String, Object> c = said.list("sets").get(2);
        assertThat(c)
                .containsEntry("standardDeviation", null)
                .containsEntry("confidence95", null)
                .containsEntry("grubbs", null)
                .containsEntry("index", null);
    }

    @Test
    void showsManySetsInATable() {
        LabFiles.write(folder, "sets.csv", "set,value\nA,0.4\nA,0.4\nA,0.4\nA,0.4\nA,1.0\n");
        String text = new Terminal(folder)
                .run("stats", "--values", "sets.csv", "--sets")
                .out();
        assertThat(text)
                .contains("Wider than repeat values may be. Value 5 is an outlier: look for its cause.")
                .contains(
                        "Sets in which an outlier can be told: 1. On average up to 0.05 of them show one by chance alone.");
    }

    @Test
    void aTableWithoutSetsIsRefusedByItsColumn() {
        LabFiles.write(folder, "sets.csv", "group,value\nA,0.4\n");
        Said said = new Terminal(folder).json("stats", "--values", "sets.csv", "--sets");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).contains("csv.column-missing");
    }
}
