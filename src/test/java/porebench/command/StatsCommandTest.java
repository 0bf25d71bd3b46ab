package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;

class StatsCommandTest {
    @TempDir
    Path folder;

    private Said stats(String values) {
        LabFiles.write(folder, "values.csv", values);
        return new Terminal(folder).json("stats", "--values", "values.csv");
    }

    private static double number(Map<String, Object> json, String name) {
        return ((BigDecimal) json.get(name)).doubleValue();
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
                .containsOnlyKeys("count", "mean", "standardDeviation", "lag1Autocorrelation", "grubbs", "problems")
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
        assertThat(new Terminal(folder)
                        .run("stats", "--values", "values.csv")
                        .out()
                        .lines())
                .containsExactly(
                        "Count                  3",
                        "Mean                   5",
                        "Standard deviation     0",
                        "Lag-1 autocorrelation  -",
                        "No Grubbs test: all numbers are equal.");
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
}
