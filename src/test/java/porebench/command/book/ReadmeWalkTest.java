package porebench.command.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

/** The trials of the README's walk lead to a factor that nobody has to take a doubt on for, as it says, and no fewer do. */
class ReadmeWalkTest {
    private static final String COLUMNS = "trial_id,mix_id,tested_at,operator,meter_id,meter_type,bowl_volume,"
            + "bowl_volume_unit,fine_mass,coarse_mass,mass_unit,soak_minutes,water_temp_c,withdrawn,withdrawn_unit,"
            + "gauge_pct,h1_pct,h2_pct,leak,remarks,determination_id\n";

    @TempDir
    Path folder;

    /** Returns the cells of each row of the table under the step about trials. */
    private static List<List<String>> trialsOfTheWalk() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("README.md"), StandardCharsets.UTF_8)) {
            if (line.matches(" +\\| \\d{4} \\|.*")) {
                rows.add(List.of(line.strip().replaceAll("^\\| | \\|$", "").split(" \\| ")));
            }
        }
        return rows;
    }

    private Said issued(List<List<String>> trials) {
        Terminal terminal = new Terminal(folder, Clock.fixed(Instant.parse("2026-11-25T18:00:00Z"), ZoneOffset.UTC));
        String book = trials.size() + ".porebench";
        assertThat(terminal.json("demo", "--book", book).status()).isZero();
        StringBuilder sheet = new StringBuilder(COLUMNS);
        int hour = 10;
        for (List<String> trial : trials) {
            sheet.append("W-%d,HG-108,2026-11-25T%d:00,M. Quist,B-1,B,7.05,L,%s,%s,g,%s,%s,%s,mL,%s,,,no,,HG-108/2\n"
                    .formatted(
                            hour,
                            hour++,
                            trial.get(0),
                            trial.get(1),
                            trial.get(2),
                            trial.get(3),
                            trial.get(4),
                            trial.get(5)));
        }
        LabFiles.write(folder, "walk.csv", sheet.toString());
        Said kept = terminal.json("import", "--book", book, "walk.csv");
        assertThat(kept.codes()).as("%s", kept).isEmpty();
        return terminal.json(
                "issue",
                "--book",
                book,
                "--mix-id",
                "HG-108",
                "--determination",
                "HG-108/2",
                "--reason",
                "first factor");
    }

    @Test
    void itsTrialsAreEnoughAndOneFewerIsNot() throws IOException {
        List<List<String>> trials = trialsOfTheWalk();
        assertThat(trials).hasSize(4).allSatisfy(row -> assertThat(row).hasSize(6));
        Said enough = issued(trials);
        assertThat(enough.status()).as("%s", enough).isZero();
        assertThat(enough.codes()).isEmpty();
        Said fewer = issued(trials.subList(0, 3));
        assertThat(fewer.status()).isEqualTo(1);
        assertThat(fewer.codes()).contains("issue.doubts-open");
    }
}
