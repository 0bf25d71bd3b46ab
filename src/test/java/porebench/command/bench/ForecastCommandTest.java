package porebench.command.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class ForecastCommandTest {
    private static final double[] SAND = {620, 780, 700, 640, 800, 720, 660, 760};
    private static final double[] OF_MIX = {0.02, -0.03, 0.01, 0.03, -0.02, -0.01, 0.02, -0.02};
    private static final double SAND_AIR = 2;
    private static final double STONE_AIR = 3;

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void writeTheLaboratory() {
        terminal = new Terminal(folder);
        StringBuilder mixes = new StringBuilder(LabFiles.MIX_COLUMNS);
        StringBuilder trials = new StringBuilder(LabFiles.TRIAL_COLUMNS);
        for (int i = 0; i < SAND.length; i++) {
            String id = "F-" + (i + 1);
            double sand = SAND[i];
            double stone = 1750 - sand;
            mixes.append(mix(id, sand, "S-2", stone));
            // In 7 L stand 0.007 times as much as in 1 m3: 100 kg / 7000 mL is a ten thousandth of kg / m3.
            double factor = (SAND_AIR * sand + STONE_AIR * stone) / 1e4 + OF_MIX[i];
            for (int trial = 0; trial < 3; trial++) {
                double gauge = 5 + factor + 0.04 * (trial - 1);
                trials.append(String.format(
                        Locale.ROOT,
                        "%nT-%d%d,%s,2026-06-%02dT1%d:00,Ada Test,PM-1,B,7.00,L,%.3f,%.3f,kg,,22,350,mL,%.3f,,,no,",
                        i,
                        trial,
                        id,
                        1 + i,
                        trial,
                        sand * 0.007,
                        stone * 0.007,
                        gauge));
            }
        }
        mixes.append(mix("NEW", 690, "S-2", 1060))
                .append(mix("SWAP", 690, "S-9", 1060))
                .append(mix("FAR", 900, "S-2", 850));
        LabFiles.write(folder, "mixes.csv", mixes.toString());
        LabFiles.write(folder, "trials.csv", trials.append('\n').toString());
    }

    private static String mix(String id, double sand, String stone, double stoneKilograms) {
        return id + ",Mix " + id + ",1,m3,5,cement,cement,,340,kg,ssd,,,3.15,\n"
                + id + ",,,,,water,water,,150,kg,,,,,\n"
                + id + ",,,,,sand,fine,S-1," + sand + ",kg,ssd,1.0,,2.65,\n"
                + id + ",,,,,stone,coarse," + stone + "," + stoneKilograms + ",kg,ssd,0.5,,2.70,\n";
    }

    private Said forecast(String mix, String... more) {
        List<String> arguments = new java.util.ArrayList<>(
                List.of("forecast", "--mixes", "mixes.csv", "--trials", "trials.csv", "--mix-id", mix));
        arguments.addAll(List.of(more));
        return terminal.json(arguments.toArray(String[]::new));
    }

    private static double number(Object json) {
        return ((BigDecimal) json).doubleValue();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> group(Map<String, Object> json, String name) {
        return (Map<String, Object>) json.get(name);
    }

    private static List<String> codes(Said said) {
        return said.list("problems").stream()
                .map(problem -> problem.get("code").toString())
                .toList();
    }

    @Test
    void answersWithTheFieldsOfTheContract() {
        Said said = forecast("NEW");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsKeys("forecastPercent", "interval95", "sources", "extrapolates", "problems")
                .containsEntry("extrapolates", false)
                .doesNotContainKeys("factorPercent", "reportedPercent", "revision");
        // By the pore air that was put in: (2 * 690 + 3 * 1060) / 10000.
        assertThat(number(said.json().get("forecastPercent"))).isCloseTo(0.456, within(0.02));
        Map<String, Object> interval = group(said.json(), "interval95");
        assertThat(number(interval.get("low"))).isLessThan(0.45);
        assertThat(number(interval.get("high"))).isGreaterThan(0.46);
        Map<String, Object> sand = said.list("sources").get(0);
        assertThat(sand)
                .containsEntry("sourceId", "S-1")
                .containsEntry("separable", true)
                .containsEntry("mixes", 8);
        double error = number(sand.get("standardError"));
        assertThat(number(sand.get("poreAirMillilitresPerKilogram"))).isCloseTo(SAND_AIR, within(3 * error));
        assertThat(said.list("compared")).hasSize(8);
        assertThat(said.json())
                .containsKeys("degreesOfFreedom", "leaveOneOutErrorPercent", "variances", "correlations");
    }

    @Test
    void theBowlDoesNotMatterAndTheNumberOfTrialsNarrowsTheInterval() {
        Said usual = forecast("NEW");
        Said small = forecast("NEW", "--bowl", "0.249 ft3");
        assertThat(number(small.json().get("forecastPercent")))
                .isCloseTo(number(usual.json().get("forecastPercent")), within(1e-12));
        Said many = forecast("NEW", "--count", "30");
        assertThat(number(group(many.json(), "interval95").get("high")))
                .isLessThan(number(group(usual.json(), "interval95").get("high")));
        assertThat(codes(forecast("NEW", "--count", "0"))).containsExactly("command.trials-out-of-range");
    }

    @Test
    void aStoneNeverTestedIsRefused() {
        Said said = forecast("SWAP");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.json()).containsOnlyKeys("problems");
        assertThat(codes(said)).contains("forecast.source-never-tested");
    }

    @Test
    void beyondTheTrialsItSaysSo() {
        Said said = forecast("FAR");
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsEntry("extrapolates", true);
        assertThat(codes(said)).contains("forecast.more-than-tested", "forecast.less-than-tested");
    }

    @Test
    void aMixThatIsNotThereIsRefusedAndTrialsOfOneThatIsNotThereAreLeftOut() {
        assertThat(codes(forecast("NO"))).contains("command.mix-not-in-file");
        LabFiles.write(
                folder,
                "mixes.csv",
                LabFiles.MIX_COLUMNS + mix("F-1", 620, "S-2", 1130) + mix("NEW", 690, "S-2", 1060));
        Said said = forecast("NEW");
        assertThat(said.status()).isEqualTo(1);
        assertThat(codes(said)).contains("command.mix-not-in-file", "forecast.too-few-mixes");
    }

    @Test
    void needsFilesOrABook() {
        Said neither = terminal.run("forecast", "--mix-id", "NEW");
        assertThat(neither.status()).isEqualTo(2);
        Said half = terminal.run("forecast", "--mix-id", "NEW", "--mixes", "mixes.csv");
        assertThat(half.status()).isEqualTo(2);
    }

    @Test
    void aPersonReadsThatItIsNoFactor() {
        Said said = terminal.run("forecast", "--mixes", "mixes.csv", "--trials", "trials.csv", "--mix-id", "NEW");
        assertThat(said.out())
                .contains("Forecast for NEW")
                .contains("It is no factor and cannot be issued")
                .contains("S-1");
    }

    private void beginBook() {
        LabFiles.write(folder, "sources.csv", LabFiles.SOURCES + "S-9,New stone,coarse,Quarry 9,bench 1,2.70,0.5,\n");
        LabFiles.write(folder, "meters.csv", LabFiles.METERS);
        Said begun = terminal.json(
                "import", "--book", "lab.book", "--new", "sources.csv", "meters.csv", "mixes.csv", "trials.csv");
        assertThat(begun.status()).as(begun.out()).isZero();
    }

    @Test
    void aLabBookSaysTheSameAsItsFiles() {
        beginBook();
        Said book = terminal.json("forecast", "--book", "lab.book", "--mix-id", "NEW");
        assertThat(book.status()).isZero();
        assertThat(number(book.json().get("forecastPercent")))
                .isCloseTo(number(forecast("NEW").json().get("forecastPercent")), within(1e-9));
        assertThat(codes(terminal.json("forecast", "--book", "lab.book", "--mix-id", "NO")))
                .containsExactly("book.not-there");
    }

    @Test
    void aSourceWhoseStoneChangedIsAnotherUntilItIsTested() {
        beginBook();
        LabFiles.write(folder, "later.csv", LabFiles.OTHER_BENCH.replace("2026-06-08", "2026-06-30"));
        assertThat(terminal.json("import", "--book", "lab.book", "later.csv").status())
                .isZero();
        Said said = terminal.json("forecast", "--book", "lab.book", "--mix-id", "NEW");
        assertThat(said.status()).isEqualTo(1);
        assertThat(codes(said)).contains("forecast.source-never-tested");
        assertThat(said.out()).contains("S-2");
    }

    /** A forecast leaves nothing that a factor could be issued from, or a card made of. */
    @Test
    void noDoorTakesAForecast() {
        beginBook();
        assertThat(terminal.json("forecast", "--book", "lab.book", "--mix-id", "NEW")
                        .status())
                .isZero();
        Said issue = terminal.json(
                "issue",
                "--book",
                "lab.book",
                "--mix-id",
                "NEW",
                "--who",
                "Ada Test",
                "--approved-by",
                "Bo Check",
                "--reason",
                "Forecast");
        assertThat(issue.status()).as(issue.out() + issue.err()).isEqualTo(1);
        Said card = terminal.json("card", "--book", "lab.book", "--mix-id", "NEW", "--out", "card.pdf");
        assertThat(card.status()).isEqualTo(1);
        assertThat(folder.resolve("card.pdf")).doesNotExist();
    }
}
