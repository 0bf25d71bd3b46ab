package porebench.command.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.store.SqliteShelf;

class HoldsCommandTest {
    private static final String HEAD = "reading_id,air_pct,value\n";

    @TempDir
    Path folder;

    private static double number(Object value) {
        return new BigDecimal(value.toString()).doubleValue();
    }

    /** With 2500 kg/m3 free of air, 2375 is 5 %: the differences are what the meter reads above 5. */
    private static String rows(double... air) {
        StringBuilder rows = new StringBuilder(HEAD);
        for (int i = 0; i < air.length; i++) {
            rows.append("R-").append(i + 1).append(',').append(air[i]).append(",2375\n");
        }
        return rows.toString();
    }

    private Terminal with(String rows) {
        LabFiles.write(folder, "pairs.csv", rows);
        return new Terminal(folder);
    }

    private static String[] line(String... more) {
        String[] line = {"holds", "--pairs", "pairs.csv", "--air-free-density", "2500"};
        String[] all = Arrays.copyOf(line, line.length + more.length);
        System.arraycopy(more, 0, all, line.length, more.length);
        return all;
    }

    private static final double[] SHIFTED = {6, 5, 6, 5, 6, 5, 6, 5, 10.5, 11.5, 10.5, 11.5, 10.5, 11.5};

    /** Worked in HoldHandTest: a shift of 5.5 and an interval of 1.2709742 to either side. */
    @Test
    @SuppressWarnings("unchecked")
    void answersWithTheFieldsOfTheContract() {
        Said said = with(rows(SHIFTED)).json(line());
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsOnlyKeys(
                        "verdict",
                        "shift",
                        "spreadPercent",
                        "sumLimit",
                        "averageLimit",
                        "runLength",
                        "pairsForHalfStep",
                        "tellablePercent",
                        "signals",
                        "points",
                        "problems");
        assertThat(said.json().get("verdict")).isEqualTo("recheck");
        Map<String, Object> shift = (Map<String, Object>) said.json().get("shift");
        assertThat(number(shift.get("percent"))).isCloseTo(5.5, within(1e-9));
        assertThat(number(shift.get("low"))).isCloseTo(4.2290258, within(1e-6));
        assertThat(said.list("points")).hasSize(14);
        assertThat(number(said.list("points").get(8).get("gravimetricPercent"))).isCloseTo(5, within(1e-9));
        assertThat(said.list("points").get(8).get("farOut")).isEqualTo(true);
    }

    @Test
    void saysItInWordsInBothLanguages() {
        Terminal terminal = with(rows(SHIFTED));
        assertThat(terminal.run(line()).out())
                .contains("Recheck G: air by the meter less air by density has changed by 5.50 % air")
                .contains("since R-9.");
        assertThat(terminal.in(Locale.forLanguageTag("es")).run(line()).out()).contains("Vuelva a determinar G");
        assertThat(with(rows(5)).run(line()).out()).contains("nothing is said from fewer than 8", "Two pairs at least");
        assertThat(with(rows(5, 6, 5, 6, 5, 6, 5, 6)).run(line()).out()).contains("scatter too much");
        assertThat(with(rows(5, 5, 5, 5, 5, 5, 5, 5)).run(line()).out()).contains("G holds so far");
        assertThat(with(rows(5, 6, 5, 6, 5, 6, 5, 6, 50)).run(line()).out()).contains("far out", "scatter too much");
    }

    @Test
    void aDoubtedDensityIsToldAndLeftOut() {
        Said said = with(HEAD + "R-1,5,2375\nR-2,5,2600\n").json(line());
        assertThat(said.codes()).containsExactly("hold.density-doubted");
        assertThat(said.list("points").get(1).get("doubted")).isEqualTo(true);
        assertThat(with(HEAD + "R-1,5,2375\nR-2,5,2600\n").run(line()).out()).contains("density doubtful, left out");
    }

    @Test
    void refusesAllThatIsWrongAtOnce() {
        Said said = with(HEAD + "R-1,five,2375\nR-2,5,-1\n").json(line());
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("form.not-a-number", "hold.density-not-positive");
        assertThat(with(rows(5)).json(line("--step", "0")).codes()).containsExactly("command.not-positive");
        assertThat(with(HEAD).json(line()).status()).isEqualTo(1);
    }

    /**
     * The plain mix: 350 + 185 + 700 + 1050 = 2285 kg in 0.111111 + 0.185 + 0.264151 + 0.388889 = 0.949151 m3, 2407.415 kg/m3. A
     * density of 95 % of it is 5 % air; with G 0.4 a gauge of 5.4 is 5 % air.
     */
    private Terminal withReadings(double... gauges) {
        Terminal terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "issues.csv", LabFiles.issue("2026-06-10", "2027-06-10"));
        StringBuilder rows =
                new StringBuilder("reading_id,mix_id,read_at,truck,meter_id,gauge_pct,density,density_unit,"
                        + "temperature_c,remarks,kept_because,struck_because\n");
        for (int i = 0; i < gauges.length; i++) {
            rows.append(String.format(
                    Locale.ROOT,
                    "F-%02d,M-1,2026-06-%02dT08:00,12,,%s,2287.0443,kg/m3,,,,%n",
                    i + 1,
                    11 + i,
                    BigDecimal.valueOf(gauges[i])));
        }
        LabFiles.write(folder, "field-readings.csv", rows.toString().replace("\r", ""));
        assertThat(terminal.json("import", "--book", "lab.book", "issues.csv", "field-readings.csv")
                        .codes())
                .noneMatch(code -> code.toString().startsWith("field."));
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            Version<FactorIssue> version =
                    book.latest(FactorIssue.class, "M-1/r1").orElseThrow();
            FactorIssue issue = version.value();
            book.keep(
                    List.of(Draft.correcting(version, issue.on(issue.grounds().from(FactorOrigin.CONFIRMED)))),
                    "Ada Test",
                    "looked at");
        }
        return terminal;
    }

    private static final double[] GAUGES = {6.4, 5.4, 6.4, 5.4, 6.4, 5.4, 6.4, 5.4, 10.9, 11.9, 10.9, 11.9, 10.9, 11.9};

    @Test
    @SuppressWarnings("unchecked")
    void answersOfALabBookWithTheFieldsOfTheContract() {
        Said said = withReadings(GAUGES).json("holds", "--book", "lab.book", "--mix-id", "M-1");
        assertThat(said.codes()).isEmpty();
        assertThat(said.json())
                .containsOnlyKeys(
                        "mixId",
                        "revision",
                        "factorPercent",
                        "since",
                        "begunBy",
                        "begunByName",
                        "airFreeDensity",
                        "notCorrected",
                        "earlierPairs",
                        "verdict",
                        "shift",
                        "spreadPercent",
                        "sumLimit",
                        "averageLimit",
                        "runLength",
                        "pairsForHalfStep",
                        "tellablePercent",
                        "signals",
                        "points",
                        "problems");
        assertThat(said.json())
                .containsEntry("mixId", "M-1")
                .containsEntry("revision", 1)
                .containsEntry("since", "2026-06-10T00:00")
                .containsEntry("begunBy", "revision")
                .containsEntry("verdict", "recheck");
        assertThat(number(said.json().get("airFreeDensity"))).isCloseTo(2407.4151, within(1e-3));
        Map<String, Object> shift = (Map<String, Object>) said.json().get("shift");
        assertThat(number(shift.get("percent"))).isCloseTo(5.5, within(1e-9));
        assertThat(number(shift.get("high"))).isCloseTo(6.7709742, within(1e-6));
        assertThat(said.list("points")).hasSize(14);
        assertThat(said.list("points").get(0))
                .containsEntry("readingId", "F-01")
                .containsEntry("readAt", "2026-06-11T08:00");
        assertThat(number(said.list("points").get(0).get("gravimetricPercent"))).isCloseTo(5, within(1e-4));
        assertThat(number(said.list("points").get(0).get("pressurePercent"))).isCloseTo(6, within(1e-9));
    }

    @Test
    void saysWhichPairsTheseAreInBothLanguages() {
        Terminal terminal = withReadings(GAUGES);
        String[] line = {"holds", "--book", "lab.book", "--mix-id", "M-1"};
        assertThat(terminal.run(line).out())
                .contains("Mix M-1, revision 1, G 0.4 % air: pairs since 2026-06-10 00:00.")
                .contains("Density without air, of the mix design: 2407.4 kg/m3.")
                .contains("has changed by 5.50 % air")
                .contains("since F-09.");
        assertThat(terminal.in(Locale.forLanguageTag("es")).run(line).out())
                .contains("Mezcla M-1, revisión 1, G 0,4 % de aire: pares desde 2026-06-10 00:00.");
    }

    /** The register says it beside the state, which stays. */
    @Test
    @SuppressWarnings("unchecked")
    void theRegisterSaysByHowMuchAndHowSure() {
        Terminal terminal = withReadings(GAUGES);
        Map<String, Object> row =
                terminal.json("register", "--book", "lab.book").list("rows").get(0);
        assertThat(row).containsEntry("state", "in force");
        Map<String, Object> remark = (Map<String, Object>) row.get("recheckG");
        assertThat(remark).containsOnlyKeys("percent", "low", "high", "since", "pairs");
        assertThat(number(remark.get("percent"))).isCloseTo(5.5, within(1e-9));
        assertThat(remark).containsEntry("since", "2026-06-19T08:00").containsEntry("pairs", 14);
        assertThat(terminal.run("register", "--book", "lab.book").out())
                .contains("Recheck G: air by the meter less air by density has changed by 5.50 % air");
    }

    @Test
    void theRegisterSaysNothingOfQuietPairs() {
        assertThat(withReadings(5.4, 5.5)
                        .json("register", "--book", "lab.book")
                        .list("rows")
                        .get(0))
                .containsEntry("recheckG", null);
    }

    @Test
    void refusesAMixThatIsNotThereAndOneWithoutAFactor() {
        Terminal terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        assertThat(terminal.json("holds", "--book", "lab.book", "--mix-id", "M-9")
                        .codes())
                .containsExactly("book.not-there");
        Said said = terminal.json("holds", "--book", "lab.book", "--mix-id", "M-1");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("hold.no-factor");
    }

    @Test
    void aFileAndALabBookAtOnceAreWrongUsage() {
        assertThat(with(rows(5))
                        .run(line("--book", "lab.book", "--mix-id", "M-1"))
                        .status())
                .isEqualTo(2);
        assertThat(with(rows(5)).run("holds", "--pairs", "pairs.csv").status()).isEqualTo(2);
        assertThat(with(rows(5)).run("holds").status()).isEqualTo(2);
    }
}
