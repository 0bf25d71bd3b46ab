package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.evidence.intake.Sheet;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.Kept;
import porebench.record.SampleEquipment;
import porebench.record.column.EquipmentColumns;

/** What {@code equipment.csv} may say, and at which cell it is told what it may not. */
class EquipmentFileTest {
    private static final String HEADING =
            "equipment_id,kind,description,division,limit,calibrated_on,due_on,certificate,"
                    + "used_from,used_until,remarks\n";

    private static Sheet<Kept> read(String rows) {
        return CsvSheets.records("equipment.csv", bytes(HEADING + rows));
    }

    @Test
    void aPieceMayHaveNoCalibrationAndNoLastDay() {
        Sheet<Kept> sheet = read("BAL-1,Balance,,0.1,,,,,2026-01-02,,\n");
        assertThat(sheet.problems()).isEmpty();
        Equipment piece = (Equipment) sheet.values().get(0);
        assertThat(piece.type()).isEqualTo(EquipmentKind.BALANCE);
        assertThat(piece.calibration()).isEmpty();
        assertThat(piece.usedUntil()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.1,0.2,,2027-01-02,,2026-01-02, | 2:6 calibrated_on csv.required",
                "0.1,0.2,2026-01-02,,,2026-01-02, | 2:7 due_on csv.required",
                "0.1,,2026-01-02,2027-01-02,,2026-01-02, | 2:5 limit csv.required",
                "0.1,,,,C 7,2026-01-02, | 2:5 limit csv.required",
                "0.1,0.2,2026-01-02,2026-01-02,,2026-01-02, | 2:7 due_on equipment.due-before-calibrated",
                "0.1,,,,,2026-01-02,2026-01-01 | 2:10 used_until equipment.until-before-from",
                "0.1,,,,,,2026-01-01 | 2:9 used_from csv.required",
                "0.1,,,,,2026-01-02,soon | 2:10 used_until csv.not-a-date",
                "0.1,,,,,2026-01-02,1926-01-02 | 2:10 used_until csv.year-impossible",
                "0,,,,,2026-01-02, | 2:4 division csv.out-of-range",
                "0.1,0,2026-01-02,2027-01-02,,2026-01-02, | 2:5 limit csv.out-of-range",
                "1000.1,,,,,2026-01-02, | 2:4 division csv.out-of-range"
            })
    void whatIsMissingOrImpossibleIsNamedAtItsCell(String cells, String place) {
        Sheet<Kept> sheet = read("BAL-1,balance,," + cells + ",\n");
        assertThat(found(sheet)).contains(place);
        assertThat(sheet.rows()).isEmpty();
    }

    /** 500 mL is the largest for a cylinder, 10 for a thermometer and for marks in % of the bowl. */
    @ParameterizedTest
    @CsvSource({"cylinder, 500, 501", "thermometer, 10, 10.1", "vessel, 10, 10.1", "balance, 1000, 1001"})
    void theUnitOfTheKindSetsWhatANumberCanBe(String kind, String most, String more) {
        assertThat(read("E-1," + kind + ",," + most + ",,,,,2026-01-02,,\n").problems())
                .isEmpty();
        assertThat(found(read("E-1," + kind + ",," + more + ",,,,,2026-01-02,,\n")))
                .containsExactly("2:4 division csv.out-of-range");
    }

    @ParameterizedTest
    @EnumSource(EquipmentKind.class)
    void everyKindReadsBackWithAndWithoutACalibration(EquipmentKind kind) throws IOException {
        Equipment plain = SampleEquipment.uncalibrated("E-1", kind, "0.10");
        Equipment calibrated = SampleEquipment.equipment("E-1", kind, "0.10", "0.20");
        assertThat(RoundTripTest.written(SheetFormats.EQUIPMENT, plain)).isEqualTo(plain);
        assertThat(RoundTripTest.written(SheetFormats.EQUIPMENT, calibrated)).isEqualTo(calibrated);
    }

    @ParameterizedTest
    @CsvSource({
        "calibratedOn, calibrated_on",
        "dueOn, due_on",
        "usedFrom, used_from",
        "usedUntil, used_until",
        "limit, limit"
    })
    void aProblemStandsAtTheColumnOfItsField(String field, String column) {
        assertThat(EquipmentColumns.ALL.ofField(field).orElseThrow().heading()).isEqualTo(column);
    }
}
