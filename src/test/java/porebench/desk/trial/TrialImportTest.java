package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.BenchBook;
import porebench.desk.Refused;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.Determination;
import porebench.record.Trial;
import porebench.record.book.Version;

class TrialImportTest {
    private static final String HEADING = "trial_id,mix_id,tested_at,operator,meter_id,meter_type,bowl_volume,"
            + "bowl_volume_unit,fine_mass,coarse_mass,mass_unit,soak_minutes,water_temp_c,withdrawn,withdrawn_unit,"
            + "gauge_pct,h1_pct,h2_pct,leak,remarks\n";
    private static final String REST = ",2026-03-03T10:00,M. Sorrel,B-1,B,7.000,L,4900,7350,g,15,21,420,mL,";

    @TempDir
    Path folder;

    private final BenchBook bench = new BenchBook();

    private TrialImport check(TrialsModel model, String... rows) throws IOException {
        Path file = folder.resolve("sheet.csv");
        Files.writeString(file, HEADING + String.join("\n", rows) + "\n", StandardCharsets.UTF_8);
        return TrialImport.check(
                bench.book,
                BenchBook.MIX,
                model.determinations().begun(),
                bench.desk.tools().sheets().trials(file),
                bench.desk.tools().today());
    }

    private TrialsModel model() {
        return new TrialsModel(bench.select().desk);
    }

    @Test
    void goodRowsWaitUntilThePersonSaysSo() throws IOException {
        TrialsModel model = model();
        TrialImport checked =
                check(model, "K7-T1,K7" + REST + "6.4,,,no,", "K7-T2,K7" + REST.replace("T10", "T11") + "6.5,,,no,");
        assertThat(checked.problems()).isEmpty();
        assertThat(checked.trials()).isEqualTo(2);
        model.show(Optional.of(checked));
        assertThat(bench.book.latest(Trial.class)).isEmpty();
        assertThat(Refused.by(out -> model.keepImport(out))).isEmpty();
        assertThat(model.rows()).hasSize(2);
        assertThat(model.underWay()).isEmpty();
        assertThat(bench.book.latest(Trial.class, "K7-T1").orElseThrow().stamp().why())
                .isEqualTo("imported from sheet.csv");
    }

    @Test
    void everyProblemHasItsLineAndTheGoodRowsRemain() throws IOException {
        TrialImport checked = check(
                model(),
                "K7-T1,K7" + REST + "6.4,,,no,",
                "K7-T2,K7" + REST + "six,,,no,",
                "Z1-T1,Z1" + REST + "6.4,,,no,",
                "K7-T1,K7" + REST + "6.6,,,no,");
        assertThat(checked.trials()).isEqualTo(1);
        assertThat(checked.problems())
                .extracting(problem -> problem.place().flatMap(Place::line).orElseThrow())
                .containsExactlyInAnyOrder(3, 4, 5);
        assertThat(checked.problems())
                .filteredOn(problem -> problem.place().flatMap(Place::line).orElseThrow() == 3)
                .allSatisfy(problem ->
                        assertThat(problem.place().flatMap(Place::column)).contains(16));
        assertThat(checked.problems()).extracting(Problem::code).contains("import.row-of-another-mix");
    }

    @Test
    void trialsJoinTheDeterminationThatWasBegunAndCarryItsPurpose() throws IOException {
        bench.keep(BenchBook.determination(1, LocalDate.of(2026, 3, 2)));
        TrialsModel model = model();
        model.begin("new source");
        model.show(Optional.of(check(model, "K7-T1,K7" + REST + "6.4,,,no,")));
        assertThat(Refused.by(out -> model.keepImport(out))).isEmpty();
        assertThat(bench.book
                        .latest(Determination.class, "K7/2")
                        .map(Version::value)
                        .map(Determination::purpose))
                .contains("new source");
        assertThat(model.rows()).hasSize(1);
    }

    @Test
    void whatIsThereUnchangedIsPassedOver() throws IOException {
        TrialsModel model = model();
        model.show(Optional.of(check(model, "K7-T1,K7" + REST + "6.4,,,no,")));
        Refused.by(out -> model.keepImport(out));
        TrialImport again = check(model, "K7-T1,K7" + REST + "6.4,,,no,");
        assertThat(again.trials()).isZero();
        assertThat(again.alreadyThere()).isEqualTo(1);
    }
}
