package porebench.command.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class MeterCommandTest {
    private static final String COLUMNS = "calibration_id,meter_id,meter_type,calibrated_on,by,reason,row,empty_mass,"
            + "plate_mass,full_mass,mass_unit,water_temp_c,vessel_mass,bowl_mass,expansion_pct,pressure,pressure_unit,"
            + "withdrawn,withdrawn_unit,gauge_pct,initial_line_pct,leak_marks,elevation_m,remarks\n";

    /** Water of 20 C: 998.2 kg/m3 in published tables (recalled), so 6987.4 g fill 7.000 L and a vessel of 349.37 g 5 % of it. */
    private static final String MARCH =
            bowl("C-1", "2026-03-02", "11687.4") + dial("C-1", "2026-03-02", "5.05", "10.05");

    @TempDir
    Path folder;

    private static String row(String id, String day, String cells) {
        return id + ",PM-1,B," + day + ",Ada Test,routine," + cells + "\n";
    }

    private static String bowl(String id, String day, String full) {
        return row(id, day, "fill,3500,1200," + full + ",g,20,,,,,,,,,,,,");
    }

    private static String dial(String id, String day, String one, String two) {
        return row(id, day, "dial,,,,g,20,349.37,,,,,,,,0,0.25,,")
                + point(id, day, "0", "0.0")
                + point(id, day, "1", one)
                + point(id, day, "2", two);
    }

    private static String point(String id, String day, String vessels, String gauge) {
        return row(id, day, "point,,,,,,,,,,," + vessels + ",vessels," + gauge + ",,,,");
    }

    private Said meter(String rows, String... more) {
        LabFiles.write(folder, "calibration.csv", COLUMNS + rows);
        List<String> arguments =
                new ArrayList<>(List.of("meter", "--calibration", "calibration.csv", "--meter-id", "PM-1"));
        arguments.addAll(List.of(more));
        return new Terminal(folder).json(arguments.toArray(String[]::new));
    }

    private static double number(Object json) {
        return ((Number) json).doubleValue();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> group(Said said, String name) {
        return (Map<String, Object>) said.json().get(name);
    }

    /** By pencil: 6987.4 g / 998.2 = 7.000 L; 349.37 / 6987.4 = 5.000 %; the dial reads 0.05 high, and 0.1 is allowed. */
    @Test
    void answersWithTheFieldsOfTheContract() {
        Said said = meter(MARCH, "--at", "2026-05-01");
        assertThat(said.err()).isEmpty();
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsKeys(
                        "bowlLitres", "dial", "dialPasses", "impliedChamberLitres", "nextDue", "state", "problems")
                .containsEntry("state", "calibrated")
                .containsEntry("dialPasses", true)
                .containsEntry("column", null)
                .containsEntry("meterType", "B")
                .containsEntry("at", "2026-05-01");
        assertThat(number(said.json().get("bowlLitres"))).isEqualTo(7.000, within(0.0002));
        assertThat(said.list("dial")).hasSize(3);
        assertThat(number(said.list("dial").get(1).get("readingPercent"))).isEqualTo(5.05, within(1e-12));
        assertThat(number(said.list("dial").get(1).get("truePercent"))).isEqualTo(5.000, within(0.0005));
        assertThat(number(said.list("dial").get(2).get("truePercent"))).isEqualTo(10.000, within(0.001));
        assertThat(number(said.json().get("impliedChamberLitres"))).isBetween(0.33, 0.36);
        // The dial holds three months by C231 as a secondary page quotes it (seen).
        assertThat(said.json()).containsEntry("nextDue", "2026-06-02");
        assertThat(group(said, "leak")).containsEntry("passes", true);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-01, never calibrated",
        "2026-03-02, calibrated",
        "2026-05-18, calibrated",
        "2026-05-19, calibration due",
        "2026-06-02, calibration due",
        "2026-06-03, calibration overdue"
    })
    void stateGoesByTheDay(String at, String state) {
        Said said = meter(MARCH, "--at", at);
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsEntry("state", state);
    }

    @Test
    void theDayIsTodayWhenNoneIsGiven() {
        assertThat(meter(MARCH).json()).containsEntry("at", "2026-07-01").containsEntry("state", "calibration overdue");
        assertThat(meter(MARCH).codes()).contains("meter.calibration-overdue");
    }

    @Test
    void beforeTheFirstCalibrationNothingIsKnown() {
        Said said = meter(MARCH, "--at", "2026-01-01");
        assertThat(said.json())
                .containsEntry("bowlLitres", null)
                .containsEntry("dialPasses", null)
                .containsEntry("impliedChamberLitres", null)
                .containsEntry("nextDue", null);
        assertThat(said.list("dial")).isEmpty();
        assertThat(said.list("calibrations")).isEmpty();
    }

    /** One gram more of water is 0.0010 L: each day has the volume that was in force on it. */
    @Test
    void theVolumeIsThatInForceOnTheDay() {
        String later = MARCH + bowl("C-2", "2026-04-01", "11697.4");
        assertThat(number(meter(later, "--at", "2026-03-31").json().get("bowlLitres")))
                .isEqualTo(7.000, within(0.0002));
        Said april = meter(later, "--at", "2026-04-01");
        assertThat(number(april.json().get("bowlLitres"))).isEqualTo(7.010, within(0.0002));
        assertThat(april.list("calibrations"))
                .extracting(one -> one.get("calibrationId"))
                .containsExactly("C-1", "C-2");
    }

    /**
     * Source: Iowa DOT I.M. 318 (seen): a vessel of 0.0125 ft3 is 5.10, 5.10, 5.05 and 5.05 % of bowls of 0.245 to 0.248 ft3,
     * printed to 0.05 %; exact 5.102, 5.081, 5.061, 5.040. Water of 70 F has 62.30 lb/ft3 by a handbook (seen), and so have
     * vessel and bowl: 0.0125 x 62.30 = 0.77875 lb.
     */
    @ParameterizedTest
    @CsvSource({
        "0.245, 15.2635, 5.102, 5.10",
        "0.246, 15.3258, 5.081, 5.10",
        "0.247, 15.3881, 5.061, 5.05",
        "0.248, 15.4504, 5.040, 5.05"
    })
    void findsTheVesselTableOfTheInstructionMemorandum(String cubicFeet, String water, double exact, double printed) {
        String full = new BigDecimal(water).add(new BigDecimal("10")).toPlainString();
        Said said = meter(row("C-1", "2026-03-02", "fill,10,0," + full + ",lb,21.1,,,,,,,,,,,,")
                + row("C-1", "2026-03-02", "dial,,,,lb,21.1,0.77875,,,,,,,,,,,")
                + point("C-1", "2026-03-02", "0", "0.0")
                + point("C-1", "2026-03-02", "1", "5.1"));
        assertThat(said.status()).isZero();
        double found = number(said.list("dial").get(1).get("truePercent"));
        assertThat(found).isEqualTo(exact, within(0.0006));
        assertThat(0.05 * Math.round(found / 0.05)).isEqualTo(printed, within(1e-9));
        assertThat(number(said.json().get("bowlLitres")) / 28.316847)
                .isEqualTo(Double.parseDouble(cubicFeet), within(0.0001));
    }

    /** By pencil: R = 98 x 280 / 7000 = 3.92 %, K = 3.92 + 0.06 = 3.98 %. */
    @Test
    void aTypeAMeterHasAColumn() {
        String column =
                bowl("C-1", "2026-03-02", "11687.4").replace(",B,", ",A,").replace(",,,,,,\n", ",,,,,120,\n")
                        + row("C-1", "2026-03-02", "column,,,,g,,280,7000,0.06,100,kPa,,,,,,120,")
                                .replace(",B,", ",A,");
        Said said = meter(column, "--at", "2026-03-02");
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsEntry("dialPasses", null).containsEntry("impliedChamberLitres", null);
        assertThat(said.list("dial")).isEmpty();
        assertThat(number(group(said, "column").get("vesselPercent"))).isEqualTo(3.92, within(1e-9));
        assertThat(number(group(said, "column").get("readingPercent"))).isEqualTo(3.98, within(1e-9));
        assertThat(number(group(said, "column").get("halfRangeKilopascals"))).isBetween(25.0, 45.0);
    }

    @Test
    void aDialOutOfToleranceFails() {
        Said said = meter(
                bowl("C-1", "2026-03-02", "11687.4") + dial("C-1", "2026-03-02", "5.05", "10.20"),
                "--at",
                "2026-03-02");
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsEntry("dialPasses", false).containsEntry("state", "calibration failed");
        assertThat(said.codes()).contains("meter.dial-off", "meter.calibration-failed");
    }

    /** A dial without a bowl, or a bowl without a dial, is what the window calls calibrated in part; a day before both is never. */
    @Test
    void aMeterOfWhichOnlyABowlOrOnlyADialWasCalibratedIsCalibratedInPart() {
        String bowl = bowl("C-1", "2026-03-02", "11687.4");
        assertThat(words(bowl, "2026-03-03")).contains("calibrated in part").doesNotContain("never calibrated");
        assertThat(words(dial("C-1", "2026-03-02", "5.05", "10.05"), "2026-03-03"))
                .contains("calibrated in part")
                .doesNotContain("never calibrated");
        assertThat(words(MARCH, "2026-03-03")).doesNotContain("in part");
        assertThat(words(bowl, "2026-03-01")).contains("never calibrated").doesNotContain("in part");
        assertThat(meter(bowl, "--at", "2026-03-03").json())
                .containsEntry("state", "never calibrated")
                .containsEntry("calibratedInPart", true);
        assertThat(meter(MARCH, "--at", "2026-03-03").json()).containsEntry("calibratedInPart", false);
    }

    private String words(String rows, String day) {
        LabFiles.write(folder, "calibration.csv", COLUMNS + rows);
        Said said = new Terminal(folder)
                .run("meter", "--calibration", "calibration.csv", "--meter-id", "PM-1", "--bowl", "7 L", "--at", day);
        assertThat(said.status()).as(said.err()).isZero();
        return said.out();
    }

    @Test
    void aDialNeedsABowl() {
        String dial = dial("C-1", "2026-03-02", "5.05", "10.05");
        assertThat(meter(dial).status()).isEqualTo(1);
        assertThat(meter(dial).codes()).containsExactly("command.bowl-missing");
        Said said = meter(dial, "--bowl", "7 L", "--at", "2026-03-03");
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsEntry("state", "never calibrated");
        assertThat(number(said.json().get("bowlLitres"))).isEqualTo(7, within(1e-9));
    }

    @Test
    void refusesWithLineAndColumnOfEveryProblem() {
        Said said = meter(MARCH.replace("349.37", "7200").replace("11687.4", "4000"));
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.list("problems"))
                .allSatisfy(problem -> assertThat(problem)
                        .containsEntry("file", "calibration.csv")
                        .extractingByKey("line")
                        .isNotNull());
        assertThat(said.codes()).contains("bowl.full-too-light");
    }

    @ParameterizedTest
    @CsvSource({
        "1|5.05|0|0.0, meter.points-out-of-order",
        "0|0.0, meter.too-few-points",
        "0|0.0|1|0.0, meter.reading-not-rising"
    })
    void refusesPointsThatMakeNoCurve(String points, String code) {
        String[] parts = points.split("\\|");
        StringBuilder rows = new StringBuilder(
                bowl("C-1", "2026-03-02", "11687.4") + row("C-1", "2026-03-02", "dial,,,,g,20,349.37,,,,,,,,,,,"));
        for (int index = 0; index < parts.length; index += 2) {
            rows.append(point("C-1", "2026-03-02", parts[index], parts[index + 1]));
        }
        Said said = meter(rows.toString());
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).contains(code);
    }

    @Test
    void refusesAVesselLargerThanTheBowlAndWaterThatIsTooWarm() {
        Said vessel = meter(MARCH.replace("349.37", "7200"));
        assertThat(vessel.status()).isEqualTo(1);
        assertThat(vessel.codes()).contains("meter.vessel-exceeds-bowl");
        Said warm = meter(MARCH.replace(",g,20,", ",g,41,"));
        assertThat(warm.status()).isEqualTo(1);
        assertThat(warm.list("problems"))
                .extracting(problem -> problem.get("field"))
                .contains("water_temp_c");
    }

    @Test
    void refusesWhatCannotBeAnswered() {
        assertThat(meter(MARCH.replace("PM-1", "PM-9")).codes()).containsExactly("command.meter-not-in-file");
        assertThat(meter(MARCH, "--profile", "x", "--division", "0", "--bowl", "0 L")
                        .codes())
                .containsExactly("profile.unknown", "air.division-out-of-range", "command.bowl-out-of-range");
        Said absent = new Terminal(folder).json("meter", "--calibration", "none.csv", "--meter-id", "PM-1");
        assertThat(absent.status()).isEqualTo(1);
        assertThat(absent.codes()).contains("csv.file-missing");
    }

    @Test
    void saysEverythingInText() {
        LabFiles.write(folder, "calibration.csv", COLUMNS + MARCH);
        Said said = new Terminal(folder)
                .run("meter", "--calibration", "calibration.csv", "--meter-id", "PM-1", "--at", "2026-05-01");
        assertThat(said.status()).isZero();
        assertThat(said.out().lines())
                .contains("Meter PM-1 on 2026-05-01")
                .anyMatch(line -> line.matches("State +calibrated"))
                .anyMatch(line -> line.matches("Next calibration due by +2026-06-02"))
                .anyMatch(line -> line.matches("Bowl volume +[67]\\.\\d{4} +L"))
                .anyMatch(line -> line.matches("Tolerance of the dial +0\\.100 +% air"))
                .anyMatch(line -> line.matches(" *5\\.050 +5\\.000 +0\\.050 .* passes"))
                .anyMatch(line -> line.matches("Air chamber the check points imply +0\\.3\\d{3} +L"))
                .anyMatch(line -> line.matches("C-1 +2026-03-02 +routine +[67]\\.\\d{4} +passes"));
    }
}
