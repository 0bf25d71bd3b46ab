package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;
import static porebench.exchange.CsvText.said;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.intake.Sheet;
import porebench.method.meter.CheckAmount;
import porebench.record.MeterCalibration;

/** Calibrations in files: what is wrong is named by line and column. */
class CalibrationFileTest {
    private static final String ABOUT = "calibration_id,meter_id,meter_type,calibrated_on,by,reason,row,";
    private static final String FILLS = ABOUT + "empty_mass,plate_mass,full_mass,mass_unit,water_temp_c";
    private static final String FIRST_FILL = "C-1,B-1,B,2026-03-02,R. Vane,routine,fill,3.450,0.720,11.207,kg,20.0";
    private static final String DIAL =
            ABOUT + "vessel_mass,mass_unit,water_temp_c,withdrawn,withdrawn_unit,gauge_pct," + "empty_mass,full_mass";
    private static final String FIRST_DIAL = "C-1,B-1,B,2026-03-02,R. Vane,routine,dial,352.0,g,20.0,,,,,";
    private static final String COLUMN =
            ABOUT + "vessel_mass,bowl_mass,mass_unit,expansion_pct,pressure,pressure_unit," + "elevation_m";

    @TempDir
    private Path folder;

    private static Sheet<MeterCalibration> read(String... lines) {
        return CsvSheets.one("c.csv", bytes(lines), SheetFormats.CALIBRATIONS);
    }

    private static String point(String withdrawn, String unit, String gauge) {
        return "C-1,,,,,,point,,,," + withdrawn + "," + unit + "," + gauge + ",,";
    }

    @Test
    void readsTheRowsOfACalibrationTogether() throws Exception {
        Path file = folder.resolve("c.csv");
        Files.write(
                file,
                bytes(
                        FILLS,
                        FIRST_FILL,
                        "C-1,,,,,,fill,7.60,,23.20,lb,21",
                        "",
                        "C-2,B-1,B,2026-04-01,,repair,note,,,,,"));
        Sheet<MeterCalibration> sheet = new CsvSheets().calibrations(file);
        assertThat(sheet.problems()).isEmpty();
        assertThat(sheet.rows()).extracting(Sheet.Row::line).containsExactly(2, 5);
        MeterCalibration first = sheet.values().get(0);
        assertThat(first.bowl().orElseThrow().fills()).hasSize(2);
        assertThat(first.bowl().orElseThrow().fills().get(1).plate()).hasToString("0 lb");
        assertThat(first.bowl().orElseThrow().buoyancyCorrected()).isFalse();
        assertThat(first.dial()).isEmpty();
        assertThat(sheet.values().get(1).isNote()).isTrue();
    }

    @Test
    void readsTheSeriesOfADial() {
        Sheet<MeterCalibration> sheet =
                read(DIAL, FIRST_DIAL, point("1", "vessels", "5.0"), point("2", "Vessels", "10.05"));
        assertThat(sheet.problems()).isEmpty();
        assertThat(sheet.values().get(0).dial().orElseThrow().points())
                .extracting(
                        point -> point.amount().unit(),
                        point -> point.gaugePercent().toString())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(CheckAmount.Unit.VESSELS, "5.0"),
                        org.assertj.core.groups.Tuple.tuple(CheckAmount.Unit.VESSELS, "10.05"));
    }

    @Test
    void fewerThanTwoPointsAreTooFew() {
        assertThat(found(read(DIAL, FIRST_DIAL, point("1", "vessels", "5.0"))))
                .contains("2:7 row meter.too-few-points");
        assertThat(found(read(DIAL, FIRST_DIAL))).contains("2:7 row meter.too-few-points");
        assertThat(found(read(DIAL, FIRST_DIAL, point("1", "vessels", "5.0"), point("1", "vessels", "5.05"))))
                .contains("2:7 row meter.too-few-points");
    }

    @Test
    void pointsOutOfOrderAreNamedWhereTheyStand() {
        Sheet<MeterCalibration> sheet =
                read(DIAL, FIRST_DIAL, point("2", "vessels", "10.0"), point("1", "vessels", "5.0"));
        assertThat(found(sheet)).contains("4:11 withdrawn meter.points-out-of-order");
        assertThat(sheet.rows()).isEmpty();
        assertThat(found(read(DIAL, FIRST_DIAL, point("1", "vessels", "5.0"), point("2", "vessels", "5.0"))))
                .contains("4:13 gauge_pct meter.reading-not-rising");
    }

    @Test
    void aVesselLargerThanTheBowlIsNamed() {
        Sheet<MeterCalibration> sheet = read(
                DIAL,
                FIRST_DIAL.replace("352.0,g", "8000,g"),
                "C-1,,,,,,fill,,kg,20,,,,3.45,10.487",
                point("1", "vessels", "5.0"),
                point("2", "vessels", "10.0"));
        assertThat(found(sheet)).contains("2:8 vessel_mass meter.vessel-exceeds-bowl");
        assertThat(said(sheet))
                .anyMatch(text -> text.startsWith("c.csv, line 2, column 8: The calibration vessel of "));
    }

    @Test
    void pointsInVesselsNeedTheVesselAndItsTemperature() {
        assertThat(found(read(
                        DIAL,
                        FIRST_DIAL.replace("352.0,g,20.0", ",,"),
                        point("1", "vessels", "5.0"),
                        point("2", "vessels", "10.0"))))
                .contains("2:8 vessel_mass meter.vessel-missing", "2:10 water_temp_c meter.water-temperature-missing");
    }

    @ParameterizedTest
    @CsvSource({"-0.1, csv.negative", "40.1, csv.out-of-range", "cold, csv.not-a-number", "'', csv.required"})
    void waterFromZeroToFortyDegreesIsMeant(String celsius, String code) {
        Sheet<MeterCalibration> sheet = read(FILLS, FIRST_FILL.replace(",20.0", "," + celsius));
        assertThat(found(sheet)).contains("2:12 water_temp_c " + code);
        assertThat(sheet.rows()).isEmpty();
    }

    @Test
    void theLimitsOfTheTemperatureAreWithin() {
        assertThat(read(FILLS, FIRST_FILL.replace(",20.0", ",0"), "C-1,,,,,,fill,3.45,0.72,11.207,kg,40")
                        .problems())
                .isEmpty();
    }

    @Test
    void massesInTheWrongOrderAreNamedInTheirRow() {
        assertThat(found(read(FILLS, FIRST_FILL, "C-1,,,,,,fill,11.207,0.720,3.450,kg,20.0")))
                .contains("3:10 full_mass bowl.full-too-light");
        assertThat(found(read(FILLS, FIRST_FILL.replace("3.450", "0"))))
                .contains("2:8 empty_mass bowl.mass-not-positive");
        assertThat(found(read(FILLS, FIRST_FILL.replace("0.720", "-1")))).contains("2:9 plate_mass csv.negative");
    }

    @Test
    void aColumnIsReadAndHeldAgainstItsLimits() {
        String good = "K-1,A-1,A,2026-03-02,R. Vane,season,column,0.3510,7.974,kg,0.05,103.4,kPa,62";
        assertThat(read(COLUMN, good).problems()).isEmpty();
        assertThat(read(COLUMN, good).values().get(0).column().orElseThrow().workingPressure())
                .hasToString("103.4 kPa");
        assertThat(found(read(COLUMN, good.replace(",62", ",")))).contains("2:14 elevation_m csv.required");
        assertThat(found(read(COLUMN, good.replace("0.3510", "8.0"))))
                .contains("2:8 vessel_mass meter.vessel-water-exceeds-bowl");
        assertThat(found(read(COLUMN, good.replace("103.4", "0"))))
                .contains("2:12 pressure meter.pressure-out-of-range");
        assertThat(found(read(COLUMN, good.replace("A-1,A", "A-1,B")))).contains("2:7 row csv.row-of-other-type");
    }

    @Test
    void aDialOfATypeAMeterIsRefused() {
        assertThat(found(read(
                        DIAL,
                        FIRST_DIAL.replace("B-1,B", "A-1,A"),
                        point("1", "vessels", "5.0"),
                        point("2", "vessels", "10.0"))))
                .contains("2:7 row csv.row-of-other-type", "3:7 row csv.row-of-other-type");
    }

    @Test
    void whatBelongsToAnotherRowIsNamed() {
        assertThat(found(read(DIAL, FIRST_DIAL.replace("20.0,,,", "20.0,1,,"))))
                .contains("2:11 withdrawn csv.not-in-this-row");
        assertThat(found(read(DIAL, FIRST_DIAL, FIRST_DIAL, FIRST_DIAL)))
                .contains("3:7 row csv.row-twice", "4:7 row csv.row-twice");
        assertThat(found(read(DIAL, FIRST_DIAL.replace(",dial,", ",dail,")))).contains("2:7 row csv.not-a-choice");
    }

    @Test
    void aNoteStandsAloneAndHasAReason() {
        String note = "N-1,B-1,B,2026-04-01,,repair,note,,,,,";
        assertThat(found(read(FILLS, note.replace("repair", "routine"))))
                .contains("2:6 reason csv.note-without-reason");
        assertThat(found(read(FILLS, note, "N-1,,,,,,fill,3.45,0.72,11.207,kg,20")))
                .contains("2:7 row csv.note-beside-rows");
    }

    @Test
    void everyProblemOfACalibrationIsSaidAtOnceAndTheOthersAreGood() {
        Sheet<MeterCalibration> sheet = read(
                FILLS,
                "C-1,,C,2026-02-30,R. Vane,habit,fill,3.450,0.720,eleven,stone,50",
                FIRST_FILL.replace("C-1", "C-2"));
        assertThat(found(sheet))
                .containsExactly(
                        "2:2 meter_id csv.required",
                        "2:3 meter_type csv.not-a-choice",
                        "2:4 calibrated_on csv.not-a-date",
                        "2:6 reason csv.not-a-choice",
                        "2:10 full_mass csv.not-a-number",
                        "2:11 mass_unit csv.not-a-choice",
                        "2:12 water_temp_c csv.out-of-range");
        assertThat(sheet.values()).extracting(MeterCalibration::recordId).isEqualTo(List.of("C-2"));
    }

    /** 5 % and 705 mL are in order in a bowl of 7 L, and in none of a thousand: the lab book, which knows the bowl, judges. */
    @Test
    void amountsInTwoUnitsArePutInOrderOnlyWhereTheFileWeighsTheBowl() {
        Sheet<MeterCalibration> unknown = read(DIAL, FIRST_DIAL, point("5", "pct", "5.0"), point("705", "mL", "10.0"));
        assertThat(unknown.problems()).isEmpty();
        assertThat(unknown.rows()).hasSize(1);
        String weighed = "C-1,,,,,,fill,,kg,20,,,,3.45,10.487";
        assertThat(found(read(DIAL, FIRST_DIAL, weighed, point("5", "pct", "5.0"), point("705", "mL", "10.0"))))
                .isEmpty();
        assertThat(found(read(DIAL, FIRST_DIAL, weighed, point("705", "mL", "10.0"), point("5", "pct", "5.0"))))
                .containsExactly("2:0 calibration_id csv.left-out", "5:11 withdrawn meter.points-out-of-order");
    }
}
