package porebench.evidence.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import porebench.evidence.intake.Sheet;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.statistics.comparison.LaboratoryComparison;

/** How the rows of a sheet become levels, each with the laboratories that gave results there. */
class LaboratoryLevelsTest {
    /** Reads rows that stand on lines 2, 3, 4..., each as laboratory, level and value with blanks between. */
    private static LaboratoryLevels read(String... rows) {
        List<Sheet.Row<ValueRow>> all = new ArrayList<>();
        for (String row : rows) {
            String[] cells = row.split(" ");
            all.add(new Sheet.Row<>(
                    all.size() + 2,
                    new ValueRow(
                            Map.of("laboratory", cells[0], "level", cells[1]),
                            BigDecimal.valueOf(Double.parseDouble(cells[2])))));
        }
        return LaboratoryLevels.of(new Sheet<>("labs.csv", all, List.of()), 0.1);
    }

    private static Problem said(String field, String code, int line, Object... values) {
        return Problem.warning(field, code, values).at(Place.of("labs.csv", line));
    }

    /** Fell alone stands at the level high; Gill gave 5.1 and 5.3 at the level low, mean 5.2. */
    @Test
    void levelsAndLaboratoriesStandInTheOrderInWhichTheyFirstStandInTheSheet() {
        LaboratoryLevels levels =
                read("Gill low 5.1", "Fell high 7.0", "Gill low 5.3", "Beck low 5.4", "Fell low 5.5", "Fell high 7.2");
        assertThat(levels.laboratories()).containsExactly("Gill", "Fell", "Beck");
        assertThat(levels.levels())
                .extracting(LaboratoryLevels.Level::name, LaboratoryLevels.Level::begins)
                .containsExactly(tuple("low", Place.of("labs.csv", 2)), tuple("high", Place.of("labs.csv", 3)));
        LaboratoryComparison low = levels.levels().get(0).comparison();
        assertThat(low.cells())
                .extracting(LaboratoryComparison.Cell::laboratory)
                .containsExactly("Gill", "Fell", "Beck");
        assertThat(low.cells().get(0).results().mean()).isEqualTo(5.2, within(1e-12));
        assertThat(low.cells().get(0).results().count()).isEqualTo(2);
        assertThat(levels.levels().get(1).comparison().cells())
                .extracting(LaboratoryComparison.Cell::laboratory)
                .containsExactly("Fell");
    }

    /** Means 5.2, 5.5 and 5.8 and results 0.2 apart: laboratories differ by more than their own results do. */
    @Test
    void aLevelAtWhichThreeLaboratoriesDifferHasNoDoubt() {
        assertThat(read("Gill low 5.1", "Gill low 5.3", "Fell low 5.4", "Fell low 5.6", "Beck low 5.7", "Beck low 5.9")
                        .doubts())
                .isEmpty();
    }

    @Test
    void aSingleLaboratoryIsSaidAtTheLineWhereItsLevelBegins() {
        assertThat(read("Gill low 5.1", "Gill low 5.3", "Gill high 7.0", "Gill high 7.1")
                        .doubts())
                .containsExactly(
                        said("laboratory", "study.one-laboratory", 2, "low"),
                        said("laboratory", "study.one-laboratory", 4, "high"));
    }

    @Test
    void twoLaboratoriesAreSaidToBeTwo() {
        assertThat(read("Gill low 5.1", "Gill low 5.3", "Fell low 5.8", "Fell low 6.0")
                        .doubts())
                .containsExactly(said("laboratory", "study.two-laboratories", 2, "low"));
    }

    @Test
    void laboratoriesThatGaveNothingAtALevelAreNamedThere() {
        assertThat(read(
                                "Gill low 5.1",
                                "Fell low 5.5",
                                "Beck low 5.9",
                                "Carr low 6.3",
                                "Howe low 6.7",
                                "Howe high 7.0",
                                "Fell high 7.5",
                                "Carr high 8.0")
                        .doubts())
                .containsExactly(said("laboratory", "study.laboratories-absent", 7, "high", "Gill, Beck"));
    }

    /** All three have the mean 5.5, and their own results lie 1.0 apart: s_d^2 is 0, s_r^2 is 0.5. */
    @Test
    void laboratoriesCloserTogetherThanTheirOwnResultsAreDoubtful() {
        assertThat(read("Gill low 5.0", "Gill low 6.0", "Fell low 5.0", "Fell low 6.0", "Beck low 5.0", "Beck low 6.0")
                        .doubts())
                .containsExactly(said("level", "study.between-negative", 2, "low"));
    }
}
