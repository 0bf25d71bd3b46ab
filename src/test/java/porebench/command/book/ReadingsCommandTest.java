package porebench.command.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
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

/**
 * Readings of a small lab book by the command line, at 09:30 on 1 July 2026: G 0.4 from 10 June to 29 June, air wanted 5 +- 1.5 %, so
 * that gauge readings from 3.9 to 6.9 pass.
 */
class ReadingsCommandTest {
    private static final String HEADING =
            "reading_id,mix_id,read_at,truck,meter_id,gauge_pct,density,density_unit,temperature_c,remarks\n";

    private static final String FOUR = HEADING
            + "R-1,M-1,2026-06-12T08:15,12,,5.4,2310,kg/m3,19,\n"
            + "R-2,M-1,2026-06-12T09:40,7,PM-1,7.0,,,,\n"
            + "R-3,M-1,2026-06-30T00:00,12,,5.4,,,,\n"
            + "R-4,M-1,2026-06-11T10:00,,,6.9,,,,\n";

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void aFactorWasInForce() {
        terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "issues.csv", LabFiles.issue("2026-06-10", "2026-06-29"));
        assertThat(terminal.json("import", "--book", "lab.book", "issues.csv").status())
                .isZero();
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            Version<FactorIssue> version =
                    book.latest(FactorIssue.class, "M-1/r1").orElseThrow();
            FactorIssue issue = version.value();
            book.keep(
                    List.of(Draft.correcting(version, issue.on(issue.grounds().from(FactorOrigin.CONFIRMED)))),
                    "Ada Test",
                    "looked at");
        }
        LabFiles.write(folder, "four.csv", FOUR);
    }

    private static String[] arguments(String... more) {
        List<String> arguments = new ArrayList<>(List.of("readings", "--book", "lab.book"));
        arguments.addAll(List.of(more));
        return arguments.toArray(String[]::new);
    }

    private Said readings(String... more) {
        return terminal.json(arguments(more));
    }

    private static String shown(Map<String, Object> reading) {
        return reading.get("readingId") + " " + number(reading, "airPercent") + " "
                + number(reading, "reportedAirPercent") + " " + reading.get("verdict");
    }

    private static String number(Map<String, Object> fields, String name) {
        return fields.get(name) == null ? "-" : new BigDecimal(String.valueOf(fields.get(name))).toPlainString();
    }

    /** 5.4 - 0.4 = 5.0; 7.0 - 0.4 = 6.6 is above 6.5; 6.9 - 0.4 = 6.5 is the limit; on 30 June the factor had lapsed. */
    @Test
    void aFileIsJudgedAndNotKept() {
        Said said = readings("--readings", "four.csv");
        assertThat(said.status()).isZero();
        assertThat(said.list("readings"))
                .extracting(ReadingsCommandTest::shown)
                .containsExactly("R-4 6.5 6.5 passes", "R-1 5.0 5.0 passes", "R-2 6.6 6.6 fails", "R-3 - - null");
        assertThat(said.json())
                .containsEntry("count", 4)
                .containsEntry("passed", 2)
                .containsEntry("guarded", 0)
                .containsEntry("failed", 1)
                .containsEntry("notCorrected", 1);
        Map<String, Object> lapsed = said.list("readings").get(3);
        assertThat(lapsed)
                .containsEntry("state", "lapsed")
                .containsEntry("revision", null)
                .containsEntry("factorPercent", null)
                .containsEntry("expandedUncertaintyPercent", null)
                .containsEntry("conformingProbability", null)
                .containsEntry("said", null);
        assertThat(lapsed.get("problems").toString()).contains("field.lapsed", "had lapsed then");
        Map<String, Object> good = said.list("readings").get(1);
        assertThat(good)
                .containsEntry("mixId", "M-1")
                .containsEntry("readAt", "2026-06-12T08:15")
                .containsEntry("truck", "12")
                .containsEntry("state", "recheck due")
                .containsEntry("revision", 1);
        assertThat(number(good, "factorPercent")).isEqualTo("0.4");
        assertThat(number(good, "acceptedFromPercent")).startsWith("3.5");
        assertThat(number(good, "acceptedToPercent")).startsWith("6.5");
        assertThat(Double.parseDouble(number(good, "expandedUncertaintyPercent")))
                .isGreaterThan(Double.parseDouble(number(good, "standardUncertaintyPercent")));
        assertThat(readings("--mix-id", "M-1").list("readings")).isEmpty();
    }

    /** Another way to the same figures: the budget of these trials and this reading, from the files alone. */
    @Test
    @SuppressWarnings("unchecked")
    void theUncertaintyIsThatOfTheFieldBudget() {
        Map<String, Object> ours =
                readings("--readings", "four.csv").list("readings").get(1);
        Map<String, Object> budget = (Map<String, Object>)
                terminal.json("budget", "--trials", "trials.csv", "--mix-id", "M-1", "--reading", "5.4")
                        .json()
                        .get("field");
        assertThat(Double.parseDouble(number(ours, "standardUncertaintyPercent")))
                .isCloseTo(Double.parseDouble(number(budget, "combined")), within(1e-9));
        assertThat(Double.parseDouble(number(ours, "expandedUncertaintyPercent")))
                .isCloseTo(Double.parseDouble(number(budget, "expanded")), within(1e-9));
    }

    @Test
    void keptReadingsAreFoundByMixAndBySpan() {
        assertThat(terminal.json("import", "--book", "lab.book", "four.csv").status())
                .isZero();
        assertThat(readings("--mix-id", "M-1").list("readings")).hasSize(4);
        assertThat(readings().list("readings")).hasSize(4);
        assertThat(readings("--from", "2026-06-12", "--to", "2026-06-12").list("readings"))
                .extracting(ReadingsCommandTest::shown)
                .containsExactly("R-1 5.0 5.0 passes", "R-2 6.6 6.6 fails");
        assertThat(readings("--mix-id", "M-1", "--from", "2026-06-13").list("readings"))
                .hasSize(1);
        assertThat(readings("--to", "2026-06-11").list("readings")).hasSize(1);
        assertThat(readings("--readings", "four.csv", "--from", "2026-06-12", "--to", "2026-06-12", "--mix-id", "M-1")
                        .list("readings"))
                .hasSize(2);
        Terminal later = terminal.on("2026-08-15");
        assertThat(later.json(arguments()).list("readings")).isEmpty();
    }

    @Test
    void aGuardBandLeavesALoadAtTheLimitUnjudgedEitherWay() {
        Said said = readings("--readings", "four.csv", "--guard", "1.645");
        assertThat(said.list("readings"))
                .extracting(ReadingsCommandTest::shown)
                .containsExactly("R-4 6.5 6.5 guarded", "R-1 5.0 5.0 passes", "R-2 6.6 6.6 fails", "R-3 - - null");
        assertThat(number(said.json(), "guard")).isEqualTo("1.645");
        Map<String, Object> limit = said.list("readings").get(0);
        double u = Double.parseDouble(number(limit, "standardUncertaintyPercent"));
        assertThat(Double.parseDouble(number(limit, "acceptedToPercent"))).isCloseTo(6.5 - 1.645 * u, within(1e-9));
    }

    @Test
    void refusesWithWordsAndAllAtOnce() {
        LabFiles.write(
                folder,
                "bad.csv",
                HEADING
                        + "R-1,M-9,2026-06-12T08:15,12,,5.4,,,,\n"
                        + "R-2,M-1,2026-06-12T09:40,7,PM-1,10.1,,,,\n"
                        + "R-3,M-1,2026-07-01T10:31,7,,5.4,,,,\n"
                        + "R-4,M-1,2026-06-12T09:40,7,PM-1,5.4,,,,\n"
                        + "R-5,M-1,2026-06-12T09:40:30,7,,5.5,,,,\n");
        Said said = readings("--readings", "bad.csv", "--guard", "0", "--from", "2026-06-02", "--to", "2026-06-01");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes())
                .containsExactlyInAnyOrder(
                        "field.guard-out-of-range",
                        "field.span-backwards",
                        "import.unknown-mix",
                        "field.above-scale",
                        "field.to-come",
                        "field.twice");
        assertThat(readings("--mix-id", "M-9").codes()).containsExactly("book.not-there");
        assertThat(readings("--readings", "meters.csv").codes()).containsExactly("field.other-rows");
    }

    @Test
    void aClockThatIsAheadIsSaidAndTheFileOfAPhoneInAnotherZoneIsToldByTheLaboratorysClock() {
        LabFiles.write(
                folder,
                "phone.csv",
                HEADING + "R-1,M-1,2026-07-01T10:00:00+00:00,12,,5.4,,,,\n"
                        + "R-2,M-1,2026-06-12T09:40:20+02:00,7,,5.4,,,,\n"
                        + "R-3,M-1,2026-06-12T09:40:20Z,7,,5.5,,,,\n");
        Said said = readings("--readings", "phone.csv");
        assertThat(said.codes()).contains("csv.other-offset", "field.clock");
        assertThat(said.list("readings"))
                .extracting(reading -> reading.get("readAt"))
                .containsExactly("2026-06-12T07:40:20", "2026-06-12T09:40:20", "2026-07-01T10:00");
        assertThat(terminal.json("import", "--book", "lab.book", "phone.csv").codes())
                .contains("import.reason-missing");
        assertThat(terminal.json("import", "--book", "lab.book", "phone.csv", "--kept-because", "the phone was ahead")
                        .status())
                .isZero();
        assertThat(readings("--mix-id", "M-1").list("readings")).hasSize(3);
    }

    @Test
    void aPersonReadsATable() {
        assertThat(terminal.run(arguments("--readings", "four.csv"))
                        .out()
                        .lines()
                        .toList())
                .containsExactly(
                        "Readings: 4. Passed: 2, too close to a limit: 0, failed: 1, not corrected: 1.",
                        "",
                        "Reading  Mix  Read at           Truck  Gauge, %  G, %      Air, %  U, %  Load    Said before",
                        "R-4      M-1  2026-06-11 10:00              6.9  0.4 (r1)     6.5  0.57  passes",
                        "R-1      M-1  2026-06-12 08:15  12          5.4  0.4 (r1)     5.0  0.57  passes",
                        "R-2      M-1  2026-06-12 09:40  7           7.0  0.4 (r1)     6.6  0.57  fails",
                        "R-3      M-1  2026-06-30 00:00  12          5.4  -            -    -     -",
                        "",
                        "Field reading R-3: the factor of mix M-1 had lapsed then, so it is not corrected. Issue "
                                + "a new factor.");
        assertThat(terminal.in(Locale.forLanguageTag("es"))
                        .run(arguments("--readings", "four.csv"))
                        .out())
                .contains("Lecturas: 4. Cumplen: 2");
    }
}
