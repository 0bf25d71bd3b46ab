package porebench.command.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;
import porebench.method.sample.Batch;
import porebench.print.SievedCards;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.FieldReading;
import porebench.record.MixDesign;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.store.SqliteShelf;

/** Readings written into a file by the command line, at 09:30 on 1 July 2026: G 0.4 from 10 to 29 June, 3.5 to 6.5 % of air pass. */
class ReadingsOutTest {
    private static final String THREE =
            "reading_id,mix_id,read_at,truck,meter_id,gauge_pct,density,density_unit,temperature_c,remarks\n"
                    + "R-1,M-1,2026-06-12T08:15,12,,5.4,2310,kg/m3,19,at the pump\n"
                    + "R-2,M-1,2026-06-12T09:40,7,PM-1,7.0,,,,\n"
                    + "R-3,M-1,2026-06-30T00:00,12,,5.4,,,,\n";

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void aFactorWasInForceAndReadingsAreKept() {
        terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "issues.csv", LabFiles.issue("2026-06-10", "2026-06-29"));
        LabFiles.write(folder, "three.csv", THREE);
        assertThat(terminal.json("import", "--book", "lab.book", "issues.csv", "three.csv")
                        .status())
                .isZero();
        try (LabBook book = open()) {
            Version<FactorIssue> version =
                    book.latest(FactorIssue.class, "M-1/r1").orElseThrow();
            FactorIssue issue = version.value();
            book.keep(
                    List.of(Draft.correcting(version, issue.on(issue.grounds().from(FactorOrigin.CONFIRMED)))),
                    "Ada Test",
                    "looked at");
        }
    }

    private LabBook open() {
        return new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"));
    }

    private Said readings(String... more) {
        List<String> arguments = new ArrayList<>(List.of("readings", "--book", "lab.book"));
        arguments.addAll(List.of(more));
        return terminal.json(arguments.toArray(String[]::new));
    }

    private List<String> written(String name) throws IOException {
        return Files.readAllLines(folder.resolve(name));
    }

    private static String cell(List<String> lines, int row, String column) {
        int place = List.of(lines.get(0).split(",")).indexOf(column);
        return lines.get(row).split(",", -1)[place];
    }

    @Test
    void theFileHasTheColumnsOfTheWindowAndAReadingARow() throws IOException {
        assertThat(readings("--mix-id", "M-1", "--out", "out.csv").status()).isZero();
        List<String> lines = written("out.csv");
        assertThat(lines).hasSize(4);
        assertThat(lines.get(0))
                .isEqualTo("reading_id,mix_id,read_at,truck,meter_id,gauge_pct,density,density_unit,temperature_c,"
                        + "remarks,revision,factor_pct_air,air_pct,expanded_u_pct,full_mixture_air_pct,mortar_air_pct,"
                        + "verdict,guard_standard_uncertainties,notes,kept_because,struck_because");
        assertThat(lines.get(1)).startsWith("R-1,M-1,2026-06-12T08:15,12,,5.4,2310,kg/m3,19,at the pump,1,0.4,5.0,");
        assertThat(cell(lines, 1, "verdict")).isEqualTo("passes");
        assertThat(cell(lines, 2, "air_pct")).isEqualTo("6.6");
        assertThat(cell(lines, 2, "verdict")).isEqualTo("fails");
        assertThat(cell(lines, 3, "verdict")).isEqualTo("not-corrected");
        assertThat(cell(lines, 3, "air_pct") + cell(lines, 3, "factor_pct_air")).isEmpty();
        assertThat(cell(lines, 3, "notes")).contains("the factor of mix M-1 had lapsed then");
        assertThat(cell(lines, 1, "full_mixture_air_pct")).isEmpty();
    }

    /** The same readings in a second lab book: what was read comes over, what was made of it is left out with a word. */
    @Test
    void whatIsWrittenCanBeImportedAgain() throws IOException {
        assertThat(readings("--mix-id", "M-1", "--out", "out.csv").status()).isZero();
        Files.createDirectory(folder.resolve("other"));
        Terminal second = new Terminal(folder.resolve("other"));
        LabFiles.beginBook(folder.resolve("other"), second);
        Files.copy(folder.resolve("out.csv"), folder.resolve("other").resolve("field-readings.csv"));
        assertThat(second.json("import", "--book", "lab.book", "field-readings.csv")
                        .status())
                .isZero();
        List<FieldReading> before;
        try (LabBook book = open()) {
            before =
                    book.latest(FieldReading.class).stream().map(Version::value).toList();
        }
        try (LabBook book =
                new SqliteShelf(Terminal.CLOCK).open(folder.resolve("other").resolve("lab.book"))) {
            assertThat(book.latest(FieldReading.class))
                    .extracting(Version::value)
                    .hasSize(3)
                    .containsExactlyElementsOf(before);
        }
    }

    @Test
    void ofAFileThatIsJudgedOnlyEveryRowSaysSo() throws IOException {
        LabFiles.write(
                folder,
                "one.csv",
                THREE.lines()
                        .limit(2)
                        .reduce("", (all, line) -> all + line + "\n")
                        .replace("R-1", "X-1"));
        Said said = readings("--readings", "one.csv", "--guard", "2", "--out", "one-out.csv");
        assertThat(said.status()).isOne();
        LabFiles.write(
                folder,
                "one.csv",
                THREE.lines()
                        .limit(2)
                        .reduce("", (all, line) -> all + line + "\n")
                        .replace("R-1", "X-1")
                        .replace("08:15", "11:15"));
        assertThat(readings("--readings", "one.csv", "--guard", "2", "--out", "one-out.csv")
                        .status())
                .isZero();
        assertThat(cell(written("one-out.csv"), 1, "notes")).startsWith("not saved in the lab book");
        assertThat(cell(written("one-out.csv"), 1, "guard_standard_uncertainties"))
                .isEqualTo("2");
    }

    @Test
    void aStruckReadingIsInTheFileWithItsReason() throws IOException {
        try (LabBook book = open()) {
            Version<FieldReading> version =
                    book.latest(FieldReading.class, "R-2").orElseThrow();
            book.keep(
                    List.of(Draft.correcting(version, version.value().struck("the clamp leaked"))), "Ada Test", "leak");
        }
        assertThat(readings("--from", "2026-06-12", "--to", "2026-06-30", "--out", "out.csv")
                        .status())
                .isZero();
        List<String> lines = written("out.csv");
        assertThat(cell(lines, 2, "verdict")).isEqualTo("struck");
        assertThat(cell(lines, 2, "air_pct")).isEmpty();
        assertThat(cell(lines, 2, "struck_because")).isEqualTo("the clamp leaked");
    }

    @Test
    void thePdfSaysTheDaysTheReadingsAndTheVerdicts() throws IOException {
        assertThat(readings("--mix-id", "M-1", "--out", "out.pdf", "--paper", "letter")
                        .status())
                .isZero();
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("out.pdf").toFile())) {
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text).contains("M-1", "passes", "fails", "not corrected", "2026-06-12", "2026-06-30");
            assertThat(pdf.getPage(0).getMediaBox().getHeight()
                            / pdf.getPage(0).getMediaBox().getWidth())
                    .as("letter, either way up")
                    .satisfiesAnyOf(
                            ratio -> assertThat(ratio).isBetween(1.29f, 1.30f),
                            ratio -> assertThat(ratio).isBetween(0.77f, 0.78f));
        }
    }

    @Test
    void anotherEndingAndAFileThatIsThereAreRefusedAndNothingIsWritten() throws IOException {
        Said other = readings("--out", "out.txt");
        assertThat(other.status()).isOne();
        assertThat(other.out()).contains("out.txt does not say how to write the readings");
        assertThat(folder.resolve("out.txt")).doesNotExist();
        Files.writeString(folder.resolve("there.csv"), "mine");
        assertThat(readings("--out", "there.csv").status()).isOne();
        assertThat(Files.readString(folder.resolve("there.csv"))).isEqualTo("mine");
        assertThat(readings("--out", "there.csv", "--replace").status()).isZero();
        assertThat(written("there.csv").get(0)).startsWith("reading_id");
    }

    /**
     * Volumes of {@link SievedCards}: 0.95 in all, 0.095 held, 0.57 of mortar. 5.4 - 0.4 = 5.0 in the sieved concrete; 4.275 / (0.95 -
     * 0.00475) = 4.5226 and 4.275 / (0.57 + 0.01425) = 7.3171.
     */
    @Test
    void ofWetSievedConcreteFullMixtureAndMortarAreTold() throws IOException {
        try (LabBook book = open()) {
            Version<MixDesign> version = book.latest(MixDesign.class, "M-1").orElseThrow();
            MixDesign mix = version.value();
            book.keep(
                    List.of(Draft.correcting(
                            version,
                            new MixDesign(
                                    mix.id(),
                                    mix.title(),
                                    new Batch(
                                            SievedCards.BATCH.constituents(),
                                            mix.batch().volume(),
                                            new BigDecimal("5.0"),
                                            true),
                                    mix.soakMinutes(),
                                    mix.airTolerancePercent(),
                                    mix.profileId(),
                                    mix.remarks(),
                                    mix.plant()))),
                    "Ada Test",
                    "sieved");
        }
        LabFiles.write(
                folder,
                "sieved.csv",
                THREE.lines()
                        .limit(2)
                        .reduce("", (all, line) -> all + line + "\n")
                        .replace("R-1", "X-1")
                        .replace("08:15", "11:15"));
        Said said = readings("--readings", "sieved.csv", "--out", "sieved-out.csv");
        Map<String, Object> reading = said.list("readings").get(0);
        assertThat(String.valueOf(reading.get("fullMixturePercent"))).isEqualTo("4.5");
        assertThat(String.valueOf(reading.get("mortarPercent"))).isEqualTo("7.3");
        assertThat(reading.get("verdict")).isEqualTo("passes");
        assertThat(cell(written("sieved-out.csv"), 1, "full_mixture_air_pct")).isEqualTo("4.5");
        assertThat(cell(written("sieved-out.csv"), 1, "mortar_air_pct")).isEqualTo("7.3");
        assertThat(terminal.run("readings", "--book", "lab.book", "--readings", "sieved.csv")
                        .out())
                .contains("Full mixture, %", "Mortar, %", "judged by the air of the sieved concrete");
    }
}
