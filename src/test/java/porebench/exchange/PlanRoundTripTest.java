package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.intake.Sheet;
import porebench.exchange.sheet.PlanFormat;
import porebench.record.Kept;
import porebench.record.SamplePlans;
import porebench.record.TestPlan;

/** A plan of a week, written and read back, and what a file may not say. */
class PlanRoundTripTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 28);
    private static final String HEAD = "plan_from,mix_id,test_day,who,trials,meter_id,mark,remark\n";

    @Test
    void aPlanReadsBackInTheOrderOfItsRows() throws IOException {
        TestPlan full = SamplePlans.plan(
                DAY,
                SamplePlans.row(
                        "M-2", DAY.plusDays(2), "R. Vale, M. Ash", 4, "B-1", TestPlan.Mark.BY_HAND, "\"first\""),
                SamplePlans.row("M-1", DAY),
                SamplePlans.row("M-3", DAY, "", 3, "B-2", TestPlan.Mark.LEFT_OUT, "no stone"));
        assertThat(RoundTripTest.written(new PlanFormat(), full)).isEqualTo(full);
    }

    private List<String> codes(String rows) {
        Sheet<Kept> sheet = CsvSheets.records("p.csv", (HEAD + rows).getBytes(StandardCharsets.UTF_8));
        return sheet.problems().stream()
                .map(problem -> problem.code() + " "
                        + problem.place().orElseThrow().line().orElseThrow())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-11-28,M-1,2026-11-28,,3,B-1,,| ",
                "2026-11-28,M-1,2026-12-05,,3,B-1,,| plan.day-outside 2",
                "2026-11-28,M-1,2026-11-28,,101,B-1,,| plan.trials-many 2",
                "2026-11-28,M-1,2026-11-28,,3,B-1,left-out,| plan.no-reason 2",
            })
    void whatTheWindowRefusesAFileMayNotSay(String row, String code) {
        assertThat(codes(row + "\n")).isEqualTo(code == null ? List.of() : List.of(code));
    }

    @Test
    void aMixTwiceIsNotedWhereItStandsAgain() {
        assertThat(
                        codes(
                                "2026-11-28,M-1,2026-11-28,,,,,\n2026-11-28,M-2,2026-11-28,,,,,\n2026-11-28,M-1,2026-11-29,,,,,\n"))
                .containsExactly("csv.left-out 2", "plan.mix-twice 4");
    }

    @Test
    void badCellsKeepTheRowsInTheirPlaces() {
        assertThat(codes("2026-11-28,M-1,soon,,,,,\n2026-11-28,M-2,2026-12-30,,,,,\n2026-11-28,M-3,2026-11-29,,,,,\n"))
                .contains("plan.day-outside 3");
    }

    /** The form in the folder of blank forms has just these columns. */
    @Test
    void theBlankFormHasTheColumns() throws IOException {
        assertThat(Files.readString(Path.of("lab-sheets/test-plans.csv"))).isEqualTo(HEAD);
        assertThat(new PlanFormat().columns().all())
                .containsExactly(HEAD.strip().split(","));
    }
}
