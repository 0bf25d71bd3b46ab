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
import org.junit.jupiter.params.provider.ValueSource;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class BudgetCommandTest {
    private static final String CALIBRATION_COLUMNS = "calibration_id,meter_id,meter_type,calibrated_on,by,reason,row,"
            + "empty_mass,plate_mass,full_mass,mass_unit,water_temp_c,withdrawn,withdrawn_unit,gauge_pct\n";

    @TempDir
    Path folder;

    private static String calibration(String cells) {
        return "C-1,PM-1,B,2026-05-20,Ada Test,routine," + cells + "\n";
    }

    private Said budget(String... more) {
        LabFiles.write(folder, "trials.csv", LabFiles.THREE_TRIALS + LabFiles.trial("T-9", "M-2", 1, "5.4", "yes"));
        List<String> arguments = new ArrayList<>(List.of("budget", "--trials", "trials.csv"));
        arguments.addAll(List.of(more));
        if (!arguments.contains("--draws")) {
            arguments.addAll(List.of("--draws", "20000"));
        }
        if (!arguments.contains("--mix-id")) {
            arguments.addAll(List.of("--mix-id", "M-1"));
        }
        return new Terminal(folder).json(arguments.toArray(String[]::new));
    }

    private static double number(Object json) {
        return ((Number) json).doubleValue();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> group(Map<String, Object> json, String name) {
        return (Map<String, Object>) json.get(name);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> line(Map<String, Object> json, String name) {
        return ((List<Map<String, Object>>) json.get("contributions"))
                .stream()
                        .filter(one -> one.get("name").equals(name))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void refusesADayWhoseYearCannotBeMeant() {
        LabFiles.write(folder, "trials.csv", LabFiles.THREE_TRIALS);
        Said said = new Terminal(folder)
                .run("budget", "--trials", "trials.csv", "--mix-id", "M-1", "--reading", "5", "--at", "0026-03-02");
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.err()).contains("The year of \"0026-03-02\" must be from 1930 to 2199");
    }

    /** 0.8 mL / sqrt(3) = 0.461880 mL; the balance's 0.5 g in two masses: sqrt((0.1^2 + 0.01^2) / 12 + 0.001^2 / 3) kg. */
    @Test
    void takesTheLimitsOfTheEquipmentInUseAndSaysWhichWereAssumed() {
        String heading = "equipment_id,kind,description,division,limit,calibrated_on,due_on,certificate,used_from,"
                + "used_until,remarks\n";
        String cylinder = "CYL-1,cylinder,,1,0.8,2026-01-05,2027-01-05,C 77,2026-01-05,,\n";
        String balance = "BAL-1,balance,,0.1,0.5,2026-01-05,2027-01-05,C 78,2026-01-05,,\n";
        LabFiles.write(folder, "equipment.csv", heading + cylinder + balance);
        Said known = budget("--equipment", "equipment.csv");
        assertThat(known.status()).isZero();
        assertThat(line(known.json(), "water-measure")).containsEntry("origin", "equipment");
        assertThat(number(line(known.json(), "water-measure").get("standardUncertainty")))
                .isEqualTo(0.461880, within(1e-6));
        assertThat(line(known.json(), "sample")).containsEntry("origin", "equipment");
        assertThat(number(line(known.json(), "sample").get("standardUncertainty")))
                .isEqualTo(Math.sqrt((0.1 * 0.1 + 0.01 * 0.01) / 12 + 1e-6 / 3), within(1e-9));
        LabFiles.write(folder, "equipment.csv", heading + cylinder.replace("2027-01-05", "2026-01-06") + balance);
        Said overdue = budget("--equipment", "equipment.csv");
        assertThat(line(overdue.json(), "water-measure")).containsEntry("origin", "assumed");
        assertThat(number(line(overdue.json(), "water-measure").get("standardUncertainty")))
                .isEqualTo(2.5 / Math.sqrt(3), within(1e-12));
        assertThat(line(overdue.json(), "sample")).containsEntry("origin", "equipment");
        assertThat(overdue.codes()).contains("budget.cylinder-not-calibrated");
        LabFiles.write(folder, "equipment.csv", heading + cylinder.replace("2027-01-05", "2026-01-05"));
        Said refused = budget("--equipment", "equipment.csv");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.codes()).contains("equipment.due-before-calibrated");
        LabFiles.write(folder, "equipment.csv", heading + cylinder + balance.replace("0.1,0.5", "2,0.5"));
        assertThat(budget("--equipment", "equipment.csv").list("problems"))
                .anySatisfy(problem -> assertThat(problem)
                        .containsEntry("code", "equipment.limit-below-division")
                        .containsEntry("file", "equipment.csv")
                        .containsEntry("line", 3));
        LabFiles.write(
                folder, "equipment.csv", heading + cylinder.replace("2026-01-05,2027-01-05", "2099-01-05,2100-01-05"));
        Said early = budget("--equipment", "equipment.csv");
        assertThat(early.status()).isEqualTo(1);
        assertThat(early.codes()).contains("meter.date-to-come");
    }

    /**
     * G 0.3, 0.4, 0.5 with 350 mL out of 7.00 L. In % air: scatter 0.1 / sqrt(3) = 0.057735 with 2 degrees of freedom; reading 0.1 /
     * sqrt(12) = 0.028868; bowl 0.01 L / sqrt(12) x 5 / 7 = 0.0020620; water 1 mL / sqrt(12) / 70 = 0.0041239; cylinder 2.5 mL /
     * sqrt(3) / 70 = 0.0206197; sample of 4.9 and 7.35 kg, sqrt((0.1^2 + 0.01^2) / 12 + 0.002^2 / 3) x 0.4 / 12.25 = 0.0009481.
     * Squares: 33.3333, 8.3333, 0.0425, 0.1701, 4.2517, 0.0090 e-4, together 46.1399e-4: combined 0.067926; effective 0.067926^4 /
     * (0.057735^4 / 2) = 3.832, where t is between 2.776 and 3.182, of 4 and 3.
     */
    @Test
    void answersWithTheFieldsOfTheContract() {
        Said said = budget();
        assertThat(said.status()).isZero();
        Map<String, Object> json = said.json();
        assertThat(json).containsEntry("mixId", "M-1").containsEntry("field", null);
        assertThat(number(json.get("factorPercent"))).isEqualTo(0.4, within(1e-12));
        assertThat(said.list("contributions"))
                .extracting(one -> one.get("name"))
                .containsExactly("repeatability", "reading", "bowl", "water", "water-measure", "sample");
        assertThat(line(json, "repeatability")).containsEntry("degreesOfFreedom", new BigDecimal("2.0"));
        assertThat(number(line(json, "repeatability").get("contributionPercent")))
                .isEqualTo(0.057735, within(1e-6));
        assertThat(line(json, "reading"))
                .containsEntry("degreesOfFreedom", null)
                .containsEntry("origin", "division");
        assertThat(number(line(json, "bowl").get("sensitivity"))).isEqualTo(5.0 / 7, within(1e-12));
        assertThat(line(json, "bowl")).containsEntry("unit", "L");
        assertThat(number(line(json, "water-measure").get("standardUncertainty")))
                .isEqualTo(2.5 / Math.sqrt(3), within(1e-12));
        assertThat(line(json, "water-measure")).containsEntry("origin", "assumed");
        assertThat(number(line(json, "sample").get("contributionPercent"))).isEqualTo(0.0009481, within(1e-7));
        assertThat(number(json.get("combined"))).isEqualTo(0.067926, within(1e-6));
        assertThat(number(json.get("effectiveDegreesOfFreedom"))).isEqualTo(3.832, within(1e-3));
        double expanded = number(json.get("expanded"));
        assertThat(expanded).isBetween(0.067926 * 2.776, 0.067926 * 3.182);
        Map<String, Object> drawn = group(json, "monteCarlo");
        assertThat(drawn)
                .containsEntry("seed", 1)
                .containsEntry("draws", 20000)
                .containsEntry("standardDeviation", null);
        // The scatter alone gives 0.4 +- 4.303 x 0.0577 = 0.248; with the rest it is more.
        assertThat(number(drawn.get("low"))).isBetween(0.4 - 0.30, 0.4 - 0.24);
        assertThat(number(drawn.get("high"))).isBetween(0.4 + 0.24, 0.4 + 0.30);
        assertThat(drawn).containsEntry("agrees", false).containsEntry("settling", null);
        // The check fails: the drawn interval is the result, half of it the uncertainty.
        Map<String, Object> result = group(json, "result");
        assertThat(result)
                .containsEntry("method", "monte-carlo")
                .containsEntry("low", drawn.get("low"))
                .containsEntry("high", drawn.get("high"));
        assertThat(number(result.get("uncertainty")))
                .isEqualTo((number(drawn.get("high")) - number(drawn.get("low"))) / 2, within(1e-12));
        Map<String, Object> capability = group(json, "capability");
        assertThat(capability)
                .containsEntry("standing", "ample")
                .containsEntry("tolerancePercent", new BigDecimal("1.5"));
        assertThat(number(capability.get("index"))).isEqualTo(1.5 / number(result.get("uncertainty")), within(1e-9));
        assertThat(number(capability.get("reportingSteps")))
                .isEqualTo(number(result.get("uncertainty")) / 0.1, within(1e-9));
        assertThat(number(json.get("combinedIfIndependent"))).isEqualTo(number(json.get("combined")), within(1e-12));
        assertThat(said.codes())
                .containsExactly("budget.dial-never-checked", "budget.bowl-never-weighed", "budget.occasions");
    }

    /** 6987.4 g of water of 20 C, 998.2 kg/m3, are 7.000 L. The dial reads 0.1 too much at every point. */
    @Test
    void takesBowlAndDialFromTheCalibrations() {
        LabFiles.write(
                folder,
                "calibrations.csv",
                CALIBRATION_COLUMNS
                        + calibration("fill,3500,1200,11687.4,g,20,,,")
                        + calibration("fill,3500,1200,11687.0,g,20,,,")
                        + calibration("dial,,,,,,,,")
                        + calibration("point,,,,,,0,mL,0.1")
                        + calibration("point,,,,,,350,mL,5.1")
                        + calibration("point,,,,,,700,mL,10.1"));
        Said said = budget("--calibration", "calibrations.csv");
        assertThat(said.status()).isZero();
        assertThat(said.codes()).containsExactly("budget.bowl-buoyancy", "budget.occasions");
        assertThat(line(said.json(), "bowl")).containsEntry("origin", "calibration");
        assertThat(number(line(said.json(), "dial").get("value"))).isEqualTo(-0.1, within(0.001));
        assertThat(number(said.json().get("factorPercent"))).isEqualTo(0.3, within(0.002));
        // Checked in the same bowl: -G / S.
        assertThat(number(line(said.json(), "bowl").get("sensitivity")))
                .isEqualTo(-number(said.json().get("factorPercent")) / 7.0, within(0.001));
    }

    @Test
    void addsAFieldReading() {
        Said said = budget("--reading", "6.2");
        Map<String, Object> field = group(said.json(), "field");
        assertThat(number(field.get("airPercent"))).isEqualTo(5.8, within(1e-12));
        assertThat(number(line(field, "factor").get("standardUncertainty"))).isEqualTo(0.067926, within(1e-6));
        assertThat(number(line(field, "rounding").get("standardUncertainty"))).isEqualTo(0.028868, within(1e-6));
        assertThat(number(field.get("combined")))
                .isEqualTo(Math.sqrt(0.00461399 + 2 * 0.01 / 12 + 0.28 * 0.28), within(1e-6));
        assertThat(line(field, "field-scatter")).containsEntry("origin", "profile");
        assertThat(said.codes()).contains("budget.field-dial");
        String out = new Terminal(folder)
                .run("budget", "--trials", "trials.csv", "--mix-id", "M-1", "--draws", "2000", "--reading", "6.2")
                .out();
        assertThat(out)
                .contains("Air = 5.800 %", "rounding of the factor", "the largest part is scatter of field readings");
    }

    @Test
    void saysItInWords() {
        budget();
        String out = new Terminal(folder)
                .run("budget", "--trials", "trials.csv", "--mix-id", "M-1", "--draws", "2000", "--seed", "7")
                .out();
        assertThat(out)
                .containsPattern("G = 0\\.400 % \u00b1 0\\.2\\d\\d % \\(U, 95 %, by drawing\\)")
                .contains("the largest part is scatter of the trials, 72 % of the variance")
                .contains("assumed: common practice, no source")
                .contains("2000 draws, seed 7")
                .contains("gives no standard deviation")
                .contains("The Monte Carlo interval is the result");
    }

    @Test
    void drawsTheSameForTheSameSeed() {
        assertThat(budget("--seed", "5").out()).isEqualTo(budget("--seed", "5").out());
        assertThat(group(budget("--seed", "6").json(), "monteCarlo"))
                .isNotEqualTo(group(budget("--seed", "5").json(), "monteCarlo"));
    }

    /** Of every mix of the demo laboratory the budget's own formula gives the mean of its factors. */
    @ParameterizedTest
    @ValueSource(strings = {"HG-101", "HG-102", "HG-103", "HG-104", "HG-105", "HG-106", "HG-107", "HG-108"})
    void budgetsEveryMixOfTheDemoLaboratory(String mix) {
        Terminal demo = new Terminal(Path.of("demo-data"));
        Said plain = demo.json("budget", "--trials", "trial-sheet.csv", "--mix-id", mix, "--draws", "1000");
        Said factor = demo.json("factor", "--trials", "trial-sheet.csv", "--mix-id", mix);
        assertThat(plain.status()).isZero();
        List<Map<String, Object>> determinations = factor.list("determinations");
        assertThat(plain.list("determinations")).hasSameSizeAs(determinations);
        for (int i = 0; i < determinations.size(); i++) {
            Map<String, Object> budget = plain.list("determinations").get(i);
            assertThat(budget)
                    .containsEntry("determinationId", determinations.get(i).get("determinationId"));
            assertThat(number(budget.get("factorPercent")))
                    .isEqualTo(number(determinations.get(i).get("meanPercent")), within(1e-9));
            Object expanded = determinations.get(i).get("expandedUncertaintyPercent");
            assertThat(number(budget.get("combined"))).isGreaterThan(expanded == null ? 0 : number(expanded) / 13);
        }
        Said calibrated = demo.json(
                "budget",
                "--trials",
                "trial-sheet.csv",
                "--mix-id",
                mix,
                "--draws",
                "1000",
                "--calibration",
                "meter-calibration.csv");
        assertThat(calibrated.status()).isZero();
        assertThat(calibrated.codes()).doesNotContain("budget.dial-never-checked");
    }

    @Test
    void refusesWhatItCannotBudget() {
        assertThat(budget("--mix-id", "M-2").codes()).containsExactly("command.no-trial-counts");
        assertThat(budget("--mix-id", "M-3").codes()).containsExactly("command.no-trial-of-mix");
        assertThat(budget("--draws", "999", "--division", "0", "--at", "2026-07-01")
                        .codes())
                .containsExactly("air.division-out-of-range", "command.draws-out-of-range", "command.reading-missing");
        assertThat(budget("--profile", "none").codes()).containsExactly("profile.unknown");
        LabFiles.write(folder, "calibrations.csv", CALIBRATION_COLUMNS);
        assertThat(budget("--calibration", "calibrations.csv").codes()).contains("command.meter-not-in-file");
        LabFiles.write(folder, "calibrations.csv", CALIBRATION_COLUMNS + calibration("fill,3500,1200,4000,g,20,,,"));
        assertThat(budget("--calibration", "calibrations.csv").status()).isEqualTo(1);
        assertThat(new Terminal(folder).run("budget", "--trials", "trials.csv").status())
                .isEqualTo(2);
    }
}
