package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.exchange.CsvText.TRIAL;
import static porebench.exchange.CsvText.TRIAL_HEADING;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;
import static porebench.exchange.CsvText.said;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.evidence.intake.Sheet;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.Meter;
import porebench.record.Trial;

/** What a cell of a sheet may hold, to the last value that is allowed. */
class CellRulesTest {
    private static final String SOURCES = "source_id,name,role,place,ledge,relative_density,absorption_pct,remarks";

    private static Sheet<Trial> trials(String row) {
        return CsvSheets.one("t.csv", bytes(TRIAL_HEADING, row), SheetFormats.TRIALS);
    }

    @ParameterizedTest
    @CsvSource({"1929, false", "1930, true", "2199, true", "2200, false"})
    void aTrialIsOfAYearFrom1930To2199(int year, boolean isGood) {
        Sheet<Trial> sheet = trials(TRIAL.replace("2026-03-04", year + "-03-04"));
        assertThat(sheet.rows()).hasSize(isGood ? 1 : 0);
        assertThat(found(sheet)).isEqualTo(isGood ? List.of() : List.of("2:3 tested_at csv.year-impossible"));
    }

    @ParameterizedTest
    @CsvSource({"1929-12-31, false", "1930-01-01, true"})
    void aDayAloneIsHeldToTheSameYears(String day, boolean isGood) {
        String heading = "determination_id,mix_id,mix_version,source_versions,opened_on,purpose";
        Sheet<?> sheet = CsvText.records("d.csv", bytes(heading, "M-1/1,M-1,1,," + day + ","));
        assertThat(sheet.rows()).hasSize(isGood ? 1 : 0);
        assertThat(sheet.problems())
                .extracting(Problem::code)
                .isEqualTo(isGood ? List.of() : List.of("csv.year-impossible"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "1.5", "one", "9999999999"})
    void aVersionIsAWholeNumberFromOne(String version) {
        String heading = "determination_id,mix_id,mix_version,source_versions,opened_on,purpose";
        Sheet<?> sheet = CsvText.records("d.csv", bytes(heading, "M-1/1,M-1," + version + ",,2026-03-02,"));
        assertThat(sheet.rows()).isEmpty();
        assertThat(found(sheet)).containsExactly("2:3 mix_version csv.not-whole");
    }

    /** The unit may stand behind the number, in whatever spelling, as in the window and on the command line. */
    @ParameterizedTest
    @CsvSource({
        "'7.05,L', 7.05 L",
        "'7.05 L,', 7.05 L",
        "'7.05 L,L', 7.05 L",
        "'7.05,dm3', 7.05 L",
        "'7.05,dm³', 7.05 L",
        "'7050 cm3,', 7050 mL",
        "'7050 cm³,mL', 7050 mL",
        "'0.249\u00a0ft³,', 0.249 ft3",
        "'0.249\u202f,ft³', 0.249 ft3"
    })
    void aVolumeIsReadInEverySpelling(String cells, String read) {
        assertThat(((Meter) read(cells).rows().get(0).value()).bowl()).hasToString(read);
        assertThat(found(read(cells))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'7.05 kg,L', 2:4 bowl_volume csv.not-its-unit",
        "'7.05 L,ft3', 2:4 bowl_volume csv.two-units",
        "'seven L,L', 2:4 bowl_volume csv.not-a-number",
        "'7.05,kg', 2:5 bowl_volume_unit csv.not-a-choice",
        "'7.05,', 2:5 bowl_volume_unit csv.required"
    })
    void aRefusedVolumeSaysWhichHalfIsWrong(String cells, String wrong) {
        assertThat(found(read(cells))).containsExactly(wrong);
    }

    private static Sheet<Kept> read(String bowl) {
        return CsvText.records(
                "m.csv",
                bytes(
                        "meter_id,meter_type,serial,bowl_volume,bowl_volume_unit,division_pct,scale_top_pct,in_service,remarks",
                        "B-1,B,20417," + bowl + ",0.1,10,yes,"));
    }

    @ParameterizedTest
    @CsvSource({"22 °C, 22", "21.5\u00a0C, 21.5", "21.5℃, 21.5", "72 °F, 22.22", "70.7F, 21.50"})
    void aTemperatureMayCarryTheUnitOfItsColumn(String cell, BigDecimal celsius) {
        Sheet<Trial> sheet = trials(TRIAL.replace(",21.0,", "," + cell + ","));
        assertThat(found(sheet)).isEmpty();
        assertThat(sheet.rows().get(0).value().readings().waterCelsius()).contains(celsius);
    }

    @Test
    void aTemperatureInAnotherUnitIsRefusedByItsUnit() {
        Sheet<Trial> sheet = trials(TRIAL.replace(",21.0,", ",295 K,"));
        assertThat(said(sheet))
                .containsExactly("t.csv, line 2, column 13: water_temp_c: \"K\" is not one of its units. Use one of "
                        + "these: C, F.");
    }

    @Test
    void aNumberBelowABoundThatIsNotZeroIsOutOfRangeAndNotNegative() {
        assertThat(found(trials(TRIAL.replace(",5.4,", ",-5.4,")))).containsExactly("2:16 gauge_pct csv.negative");
        assertThat(found(trials(TRIAL.replace(",21.0,", ",-300,"))))
                .containsExactly("2:13 water_temp_c csv.out-of-range");
    }

    /** A mark of three bytes before the heading, and a file that is nothing but the mark. */
    @Test
    void theMarkOfUtf8IsNoLetter() {
        byte[] only = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
        assertThat(found(CsvSheets.one("t.csv", only, SheetFormats.TRIALS))).containsExactly("0:0  csv.empty");
    }

    /** Old files end their lines with a carriage return alone, and the last one may have none. */
    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r", "\r\n"})
    void linesEndInAnyOfThreeWaysAndTheLastOneMayNot(String end) {
        for (String last : new String[] {"", end}) {
            byte[] file = (TRIAL_HEADING + end + TRIAL + end + TRIAL.replace("T-1", "T-2") + last)
                    .getBytes(StandardCharsets.UTF_8);
            Sheet<Trial> sheet = CsvSheets.one("t.csv", file, SheetFormats.TRIALS);
            assertThat(sheet.problems()).isEmpty();
            assertThat(sheet.rows()).extracting(Sheet.Row::line).containsExactly(2, 3);
        }
    }

    @Test
    void whatIsNoTableOfAnyKindIsToldTheNamesOfAllKinds() {
        assertThat(said(CsvText.records("x.csv", bytes("when,what", "1,2"))).get(0))
                .contains("sources.csv")
                .contains("trial-sheet.csv")
                .contains("mix-design.csv");
    }

    @Test
    void aTabIsCalledATab() {
        Sheet<?> sheet = CsvText.records("x.csv", bytes(TRIAL_HEADING.replace(',', '\t')));
        assertThat(sheet.problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.values()).containsExactly("tab"));
        assertThat(CsvText.records("x.csv", bytes(TRIAL_HEADING.replace(',', ';')))
                        .problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.values()).containsExactly(";"));
    }

    /** A third of the columns a kind needs say which kind is meant: the sheet then names those that are missing. */
    @Test
    void aHeadingOfWhichEnoughIsThereIsReadAsItsKind() {
        Sheet<?> sheet = CsvText.records("s.csv", bytes(SOURCES.replace("role,", ""), "S-1,Sand,Pit,1,2.65,1.2,"));
        assertThat(found(sheet)).containsExactly("1:0 role csv.column-missing");
    }

    @Test
    void aCoarseMassAloneIsReadWithItsUnit() {
        Sheet<Trial> sheet = trials(TRIAL.replace("4500,6800", ",6800"));
        assertThat(sheet.problems()).isEmpty();
        assertThat(sheet.values().get(0).readings().fine()).isEmpty();
        assertThat(sheet.values().get(0).readings().coarse()).isPresent();
    }

    /** A bowl of 700 L cannot be, so nothing is said of what would fit into it. */
    @Test
    void aBowlThatCannotBeIsSaidOnce() {
        assertThat(found(trials(TRIAL.replace(",7.05,", ",700,"))))
                .containsExactly("2:7 bowl_volume csv.bowl-impossible");
    }
}
