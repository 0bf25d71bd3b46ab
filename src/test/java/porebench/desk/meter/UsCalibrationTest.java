package porebench.desk.meter;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.desk.MixDesk;
import porebench.desk.form.UnitSystem;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.id.MeterId;

/** A calibration typed where US units are shown. */
class UsCalibrationTest {
    private MixDesk mixDesk;
    private MeterModel model;
    private CalibrationModel entry;

    private void open(Locale locale) {
        mixDesk = new MixDesk(locale);
        model = new MeterModel(mixDesk.desk);
        model.open(new MeterId("B-1"));
        entry = model.entry();
    }

    private void fill(int row, String... cells) {
        for (int column = 0; column < cells.length; column++) {
            entry.fills().type(row, CalibrationColumns.OF_FILL.columns().all().get(column), cells[column]);
        }
    }

    /** 68 °F is 20 °C, 14.5 psi is 99.974 kPa, 8.125 in is 206.375 mm, 1000 ft is 304.8 m; a cell may say otherwise. */
    @Test
    void inUsUnitsNumbersKeptInOneUnitAreTypedInTheOther() {
        open(Locale.US);
        mixDesk.desk.show(UnitSystem.US);
        model.begin();
        fill(0, "8.000", "1.000", "24.500", "68");
        fill(1, "8.000", "1.000", "24.500", "21.5 °C");
        entry.type(CalibrationColumns.AIR_TEMPERATURE, "68");
        entry.type(CalibrationColumns.AIR_PRESSURE, "14.5");
        entry.type(CalibrationColumns.DIAMETER, "8.125");
        entry.type(CalibrationColumns.HEIGHT, "206 mm");
        entry.type(CalibrationColumns.ELEVATION, "1000");
        MeterCalibration made = entry.reading().orElseThrow().calibration().orElseThrow();
        BowlFills bowl = made.bowl().orElseThrow();
        assertThat(bowl.fills()).extracting(BowlFill::waterCelsius).containsExactly(number("20.00"), number("21.5"));
        assertThat(bowl.airCelsius()).contains(number("20.00"));
        assertThat(bowl.airKilopascals()).contains(number("99.974"));
        assertThat(bowl.diameterMillimetres()).contains(number("206.375"));
        assertThat(bowl.heightMillimetres()).contains(number("206"));
        assertThat(made.elevationMetres()).contains(number("304.80"));
        assertThat(model.measured(made))
                .anyMatch(said -> said.endsWith("water 68.0 °F."))
                .contains("Elevation 1000 ft.");
        entry.type(CalibrationColumns.AIR_TEMPERATURE, "110");
        assertThat(entry.shownProblems())
                .extracting(mixDesk.desk.tools().problemText()::say)
                .contains("Air temperature: 110 must be from 32 to 104. Correct it.");
    }

    private static BigDecimal number(String digits) {
        return new BigDecimal(digits);
    }
}
