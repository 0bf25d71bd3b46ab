package porebench.print.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.NeedsProgram;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.store.SqliteShelf;

/** What a crew types on its phone comes home: the laboratory finds the air and the verdict that the phone showed. */
@NeedsProgram("chromium")
class PhoneReadingsBrowserTest {
    /** G 0.4 and 5 +- 1.5 %: a tie that goes down, one that goes up, both limits and beyond them. */
    private static final List<String> READINGS = List.of("5.45", "5.55", "3.9", "3.8", "6.9", "7", "10", "0");

    @TempDir
    Path folder;

    @Test
    void theFileOfThePageIsImportedAsItComesAndGivesTheAirOfThePage() throws Exception {
        Terminal terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "issues.csv", LabFiles.issue("2026-06-10", "2027-06-10"));
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
        assertThat(terminal.json("page", "--book", "lab.book", "--mix-id", "M-1", "--out", "page.html")
                        .status())
                .isZero();
        List<String> onThePhone = new ArrayList<>();
        try (Browser browser = new Browser(folder.resolve("profile"))) {
            browser.clock("2026-07-01T09:20:00");
            browser.open(folder.resolve("page.html"));
            browser.downloadTo(folder);
            for (int i = 0; i < READINGS.size(); i++) {
                browser.type(READINGS.get(i));
                String air = browser.ask("document.getElementById('air').dataset.air");
                String passes = browser.ask("document.getElementById('air').dataset.passes");
                browser.write("field-truck", "T" + i);
                browser.press("keep");
                onThePhone.add("T" + i + " " + plain(air) + " " + (passes.equals("true") ? "passes" : "fails"));
            }
            browser.press("export");
            browser.awaitDownload();
        }
        String file = "field-readings-M-1.csv";
        assertThat(folder.resolve(file)).content().contains("2026-07-01T09:20:0", "+00:00");
        assertThat(inTheLaboratory(terminal, "--readings", file)).containsExactlyInAnyOrderElementsOf(onThePhone);
        Terminal.Said imported = terminal.json("import", "--book", "lab.book", file);
        assertThat(imported.codes()).isEmpty();
        assertThat(imported.status()).isZero();
        assertThat(inTheLaboratory(terminal, "--mix-id", "M-1")).containsExactlyInAnyOrderElementsOf(onThePhone);
        assertThat(onThePhone)
                .startsWith("T0 5 passes", "T1 5.2 passes", "T2 3.5 passes", "T3 3.4 fails", "T4 6.5 passes");
    }

    private static List<String> inTheLaboratory(Terminal terminal, String option, String value) {
        return terminal.json("readings", "--book", "lab.book", option, value).list("readings").stream()
                .map(PhoneReadingsBrowserTest::said)
                .toList();
    }

    private static String said(Map<String, Object> reading) {
        return reading.get("truck") + " " + plain(String.valueOf(reading.get("reportedAirPercent"))) + " "
                + reading.get("verdict");
    }

    private static String plain(String number) {
        return new BigDecimal(number).stripTrailingZeros().toPlainString();
    }
}
