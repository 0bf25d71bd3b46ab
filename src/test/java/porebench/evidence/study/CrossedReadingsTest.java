package porebench.evidence.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import porebench.evidence.intake.Sheet;
import porebench.method.Answer;
import porebench.method.Place;
import porebench.method.Problem;

/** How the rows of a sheet become a study in which everybody reads everything as often. */
class CrossedReadingsTest {
    private static final Place FILE = Place.of("gauge.csv");

    /** Reads rows that stand on lines 2, 3, 4..., each as operator, sample, repeat and value with blanks between. */
    private static Answer<CrossedReadings> read(String... rows) {
        List<Sheet.Row<ValueRow>> all = new ArrayList<>();
        for (String row : rows) {
            String[] cells = row.split(" ");
            all.add(new Sheet.Row<>(
                    all.size() + 2,
                    new ValueRow(
                            Map.of("operator", cells[0], "sample", cells[1], "repeat", cells[2]),
                            BigDecimal.valueOf(Double.parseDouble(cells[3])))));
        }
        return CrossedReadings.of(new Sheet<>("gauge.csv", all, List.of()));
    }

    /** Every reading of two operators, two samples and two repeats, but for some that are left out. */
    private static String[] twoByTwoByTwoBut(String... without) {
        return Stream.of("Ada", "Bo")
                .flatMap(operator -> Stream.of("x", "y").map(sample -> operator + " " + sample))
                .flatMap(cell -> Stream.of("1", "2").map(repeat -> cell + " " + repeat))
                .filter(reading -> !List.of(without).contains(reading))
                .map(reading -> reading + " 5.0")
                .toArray(String[]::new);
    }

    private static Problem said(String field, String code, Object... values) {
        return Problem.error(field, code, values).at(FILE);
    }

    private static void isRefused(Answer<CrossedReadings> answer, Problem... problems) {
        assertThat(answer.value()).isEmpty();
        assertThat(answer.problems()).containsExactly(problems);
    }

    @Test
    void readingsAreLaidOutByOperatorSampleAndRepeatAsTheyFirstStand() {
        Answer<CrossedReadings> answer = read(
                "Bo y 1 5.1",
                "Bo x 1 5.2",
                "Ada y 1 5.3",
                "Ada x 1 5.4",
                "Bo y 2 5.5",
                "Bo x 2 5.6",
                "Ada y 2 5.7",
                "Ada x 2 5.8");
        assertThat(answer.problems()).isEmpty();
        CrossedReadings study = answer.value().orElseThrow();
        assertThat(study.operators()).containsExactly("Bo", "Ada");
        assertThat(study.samples()).containsExactly("y", "x");
        assertThat(study.readings()).isDeepEqualTo(new double[][][] {{{5.1, 5.5}, {5.2, 5.6}}, {{5.3, 5.7}, {5.4, 5.8}}
        });
        assertThat(study.all()).containsExactly(5.1, 5.5, 5.2, 5.6, 5.3, 5.7, 5.4, 5.8);
    }

    @Test
    void aSheetWithoutRowsSaysOnlyThat() {
        isRefused(read(), said("value", "study.no-row"));
    }

    @Test
    void oneOperatorOneSampleOrOneRepeatIsNoStudy() {
        isRefused(
                read("Ada x 1 5", "Ada x 2 5", "Ada y 1 5", "Ada y 2 5"),
                said("operator", "study.one-operator", "Ada"));
        isRefused(read("Ada x 1 5", "Ada x 2 5", "Bo x 1 5", "Bo x 2 5"), said("sample", "study.one-sample", "x"));
        isRefused(read("Ada x 1 5", "Ada y 1 5", "Bo x 1 5", "Bo y 1 5"), said("repeat", "study.one-repeat"));
    }

    @Test
    void allThatIsTooFewIsSaidAtOnce() {
        isRefused(
                read("Ada x 1 5"),
                said("operator", "study.one-operator", "Ada"),
                said("sample", "study.one-sample", "x"),
                said("repeat", "study.one-repeat"));
    }

    @Test
    void twoOfEverythingAreEnough() {
        assertThat(read(twoByTwoByTwoBut()).value()).isPresent();
    }

    @Test
    void aRepeatThatStandsTwiceIsSaidAtItsLineWithTheLineOfTheFirst() {
        Answer<CrossedReadings> answer = read("Ada x 1 5", "Ada x 2 5", "Ada x 1 6");
        isRefused(
                answer,
                Problem.error("repeat", "study.repeat-twice", "1", "x", "Ada", 2)
                        .at(Place.of("gauge.csv", 4)));
    }

    @Test
    void aCellThatIsMissingIsNamed() {
        isRefused(read(twoByTwoByTwoBut("Bo x 1", "Bo x 2")), said("sample", "study.cell-missing", "Bo", "x"));
    }

    @Test
    void aRepeatThatIsMissingIsNamed() {
        isRefused(read(twoByTwoByTwoBut("Bo x 2")), said("repeat", "study.repeat-missing", "Bo", "x", "2"));
    }

    @Test
    void aCellWithMoreReadingsThanTheOthersIsSaidWithBothNumbers() {
        List<String> rows = new ArrayList<>(List.of(twoByTwoByTwoBut()));
        rows.add("Bo y 3 5.0");
        isRefused(read(rows.toArray(String[]::new)), said("repeat", "study.cell-uneven", "Bo", "y", 3, 2));
    }

    /** Where repeats have names of their own in each cell, nobody can say which one is missing. */
    @Test
    void aCellWithFewerReadingsIsSaidWithBothNumbersWhereRepeatsHaveTheirOwnNames() {
        isRefused(
                read("Ada x 1 5", "Ada x 2 5", "Ada y 3 5", "Ada y 4 5", "Bo x 5 5", "Bo x 6 5", "Bo y 7 5"),
                said("repeat", "study.cell-uneven", "Bo", "y", 1, 2));
    }

    /** Two cells of two readings and two of three: the larger number is what was meant. */
    @Test
    void ofTwoCountsThatAreAsCommonTheLargerIsMeant() {
        List<String> rows = new ArrayList<>(List.of(twoByTwoByTwoBut()));
        rows.add("Ada x 3 5.0");
        rows.add("Ada y 3 5.0");
        isRefused(
                read(rows.toArray(String[]::new)),
                said("repeat", "study.repeat-missing", "Bo", "x", "3"),
                said("repeat", "study.repeat-missing", "Bo", "y", "3"));
    }

    @Test
    void whatTheSheetItselfSaysStandsAloneAndADoubtKeepsNothingOut() {
        Problem unread = Problem.error("value", "cell.not-a-number", "x");
        Problem doubt = Problem.warning("value", "cell.odd", "x");
        List<Sheet.Row<ValueRow>> rows = new ArrayList<>();
        for (String reading : twoByTwoByTwoBut()) {
            String[] cells = reading.split(" ");
            rows.add(new Sheet.Row<>(
                    rows.size() + 2,
                    new ValueRow(
                            Map.of("operator", cells[0], "sample", cells[1], "repeat", cells[2]),
                            BigDecimal.valueOf(5))));
        }
        isRefused(CrossedReadings.of(new Sheet<>("gauge.csv", rows.subList(0, 3), List.of(unread))), unread);
        Answer<CrossedReadings> doubted = CrossedReadings.of(new Sheet<>("gauge.csv", rows, List.of(doubt)));
        assertThat(doubted.value()).isPresent();
        assertThat(doubted.problems()).containsExactly(doubt);
    }
}
