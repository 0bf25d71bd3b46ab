package porebench.command.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.zip.GZIPInputStream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;
import porebench.store.Books;
import porebench.store.file.Header;

/**
 * A lab book of release 1.0.0 opens in today's program, whole, and gives the numbers that 1.0.0 gave.
 *
 * <p>The book was made by the commands of 1.0.0: {@code demo}, a study by {@code import}, a photo by {@code photo}, the first factor
 * of HG-108 by {@code issue}. The files beside it hold what {@code factor} (on its export) and {@code register} answered then.
 * It has no groups of mixes, drafts of factors or profiles of its own.
 */
class FirstReleaseTest {
    private static final String NAME = "books/book-of-1.0.0";
    private static final int ENTRIES = 374;
    private static final String HEAD = "bc005ed4eb6b652b";

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void unpackTheBook() throws IOException {
        try (InputStream stream = new GZIPInputStream(resource(".porebench.gz"))) {
            Files.copy(stream, folder.resolve("old.porebench"));
        }
        terminal = new Terminal(folder).on("2026-11-29");
    }

    private static InputStream resource(String end) {
        return Objects.requireNonNull(Books.class.getResourceAsStream(NAME + end), end);
    }

    private static List<String[]> rows(String end) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(resource(end), StandardCharsets.UTF_8))) {
            return reader.lines().skip(1).map(line -> line.split(",", -1)).toList();
        }
    }

    @Test
    void itOpensWholeWithTheHeadItHad() throws IOException {
        assertThat(Header.read(folder.resolve("old.porebench"))).contains(new Header(Header.LAB_BOOK, 24));
        Said said = terminal.json(
                "verify", "--book", "old.porebench", "--head", HEAD, "--entries", String.valueOf(ENTRIES));
        assertThat(said.status()).as(said.err()).isZero();
        assertThat(said.json())
                .containsEntry("intact", true)
                .containsEntry("head", HEAD)
                .containsEntry("entries", ENTRIES)
                .extractingByKey("counts")
                .asInstanceOf(InstanceOfAssertFactories.map(String.class, Integer.class))
                .containsEntry("trial", 143)
                .containsEntry("factor_issue", 19)
                .containsEntry("study", 1)
                .containsEntry("sheet_photo", 1)
                .containsEntry("field_reading", 66);
    }

    @Test
    void eachDeterminationGivesTheNumbersItGave() throws IOException {
        assertThat(terminal.json("export", "--book", "old.porebench", "out").status())
                .isZero();
        List<Map<String, Object>> now =
                terminal.json("factor", "--trials", "out/trial-sheet.csv").list("determinations");
        List<String[]> then = rows("-determinations.csv");
        assertThat(now).hasSameSizeAs(then);
        for (int i = 0; i < now.size(); i++) {
            Map<String, Object> determination = now.get(i);
            String[] row = then.get(i);
            assertThat(determination)
                    .containsEntry("determinationId", row[0])
                    .containsEntry("count", Integer.valueOf(row[1]))
                    .containsEntry("accepted", Integer.valueOf(row[2]));
            same(row[0], determination.get("meanPercent"), row[3]);
            same(row[0], determination.get("standardDeviationPercent"), row[4]);
        }
    }

    private static void same(String of, Object now, String then) {
        if (then.isEmpty()) {
            assertThat(now).as(of).isNull();
        } else {
            assertThat(new BigDecimal(String.valueOf(now)).doubleValue())
                    .as(of)
                    .isCloseTo(Double.parseDouble(then), within(1e-12));
        }
    }

    @Test
    void theRegisterSaysWhatItSaid() throws IOException {
        List<Map<String, Object>> now =
                terminal.json("register", "--book", "old.porebench").list("rows");
        assertThat(now)
                .extracting(row -> List.of(
                        text(row, "mixId"),
                        text(row, "state"),
                        text(row, "factorPercent"),
                        text(row, "revision"),
                        text(row, "inForceFrom"),
                        text(row, "recheckBy"),
                        text(row, "countedTrials")))
                .containsExactlyElementsOf(
                        rows("-register.csv").stream().map(List::of).toList());
    }

    private static String text(Map<String, Object> row, String key) {
        return row.get(key) == null ? "" : String.valueOf(row.get(key));
    }
}
