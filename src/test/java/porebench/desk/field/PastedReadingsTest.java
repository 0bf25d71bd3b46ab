package porebench.desk.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.form.UnitSystem;
import porebench.evidence.intake.Sheet;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.Kept;

/** Rows as a spreadsheet copies them, taken as readings. */
class PastedReadingsTest {
    private FieldDesk made;

    @BeforeEach
    void begin() {
        made = new FieldDesk();
    }

    private Sheet<Kept> paste(String... lines) {
        return PastedReadings.of(made.model().entry(), "pasted rows", String.join("\n", lines));
    }

    private static FieldReading reading(Sheet<Kept> sheet, int row) {
        return (FieldReading) sheet.rows().get(row).value();
    }

    private static List<String> codes(Sheet<Kept> sheet) {
        return sheet.problems().stream().map(Problem::code).toList();
    }

    @Test
    void rowsWithoutHeadingsAreTakenInTheOrderOfTheForm() {
        Sheet<Kept> sheet = paste(
                "HG-104\t2026-11-24 9:05\t12\tB-1\t5.4\t2310\t19.5\tat the pump",
                "",
                "HG-104\t2026-11-24T10:05:37\t13\t\t5.6");
        assertThat(sheet.problems()).isEmpty();
        assertThat(sheet.rows()).extracting(Sheet.Row::line).containsExactly(1, 3);
        FieldReading first = reading(sheet, 0);
        assertThat(first.recordId()).isEqualTo("HG-104/20261124T0905-12");
        assertThat(first.readAt()).isEqualTo(LocalDateTime.of(2026, 11, 24, 9, 5));
        assertThat(first.truck()).isEqualTo("12");
        assertThat(first.meterId().orElseThrow().text()).isEqualTo("B-1");
        assertThat(first.gaugePercent()).hasToString("5.4");
        assertThat(first.density().orElseThrow()).hasToString("2310 kg/m3");
        assertThat(first.temperatureCelsius().orElseThrow()).hasToString("19.5");
        assertThat(first.remarks()).isEqualTo("at the pump");
        FieldReading second = reading(sheet, 1);
        // The seconds of a phone's clock stay.
        assertThat(second.readAt()).isEqualTo(LocalDateTime.of(2026, 11, 24, 10, 5, 37));
        assertThat(second.meterId()).isEmpty();
        assertThat(second.density()).isEmpty();
        // Pasted again they have the same names.
        assertThat(reading(paste("HG-104\t2026-11-24 09:05\t12\tB-1\t5.4"), 0).recordId())
                .isEqualTo(first.recordId());
    }

    @Test
    void headingsOfTheFileOrOfTheFormSayTheOrder() {
        Sheet<Kept> file = paste(
                "reading_id\tmix_id\tread_at\tgauge_pct\tdensity\tdensity_unit\ttruck",
                "r-7\tHG-104\t2026-11-24 09:05\t5.4\t144\tlb/ft3\t12");
        assertThat(file.problems()).isEmpty();
        assertThat(reading(file, 0).recordId()).isEqualTo("r-7");
        assertThat(reading(file, 0).density().orElseThrow()).hasToString("144 lb/ft3");
        Sheet<Kept> form = paste("Truck\tGauge reading\tMix\tTime\tWeather", "12\t5.4\tHG-104\t2026-11-24 09:05\train");
        assertThat(reading(form, 0).gaugePercent()).hasToString("5.4");
        assertThat(reading(form, 0).truck()).isEqualTo("12");
        assertThat(codes(form)).containsExactly("readings.cell-unknown");
        assertThat(form.problems().get(0).place().orElseThrow().column()).contains(5);
        assertThat(form.problems().get(0).isError()).isFalse();
    }

    @Test
    void everyProblemIsSaidAtItsRowAndTheGoodRowsStay() {
        Sheet<Kept> sheet = paste(
                "HG-104\tyesterday\t12\t\tfive",
                "HG-104\t2026-11-24 09:05\t12\t\t5.4",
                "HG-104\t2026-11-24 09:15\t13\t\t\t2310");
        assertThat(sheet.rows()).extracting(Sheet.Row::line).containsExactly(2);
        assertThat(sheet.problems())
                .extracting(problem -> problem.place().orElseThrow().line().orElseThrow())
                .containsExactly(1, 1, 3);
        assertThat(sheet.problems())
                .extracting(problem -> problem.place().orElseThrow().column().orElseThrow())
                .containsExactly(2, 5, 5);
    }

    @Test
    void moreCellsThanColumnsAreSaid() {
        Sheet<Kept> sheet = paste("HG-104\t2026-11-24 09:05\t12\t\t5.4\t\t\tremark\tone more");
        assertThat(sheet.rows()).hasSize(1);
        assertThat(codes(sheet)).containsExactly("readings.cell-unknown");
        assertThat(paste("").rows()).isEmpty();
    }

    @Test
    void unitsStandBehindNumbersOrAreThoseOfTheScreen() {
        made.desk.show(UnitSystem.US);
        Sheet<Kept> sheet = paste(
                "HG-104\t2026-11-24 09:05\t12\t\t5.4\t144\t68",
                "HG-104\t2026-11-24 09:06\t12\t\t5.4\t2310 kg/m3\t20 C");
        assertThat(sheet.problems()).isEmpty();
        assertThat(reading(sheet, 0).density().orElseThrow()).hasToString("144 lb/ft3");
        // (68 - 32) / 1.8 = 20.
        assertThat(reading(sheet, 0).temperatureCelsius().orElseThrow()).isEqualByComparingTo("20");
        assertThat(reading(sheet, 1).density().orElseThrow()).hasToString("2310 kg/m3");
        assertThat(reading(sheet, 1).temperatureCelsius().orElseThrow()).isEqualByComparingTo("20");
    }

    @Test
    void numbersHaveTheDecimalSignOfThePerson() {
        FieldDesk spanish = new FieldDesk(Locale.forLanguageTag("es-ES"), FieldDesk.CLOCK);
        Sheet<Kept> sheet =
                PastedReadings.of(spanish.model().entry(), "filas", "HG-104\t2026-11-24 09:05\tcamión 12/a\t\t5,4");
        assertThat(reading(sheet, 0).gaugePercent()).hasToString("5.4");
        assertThat(reading(sheet, 0).recordId()).isEqualTo("HG-104/20261124T0905-camión-12-a");
        Sheet<Kept> headed = PastedReadings.of(
                spanish.model().entry(), "filas", "Dosificación\tHora\tLectura\nHG-104\t2026-11-24 09:05\t5,4");
        assertThat(reading(headed, 0).gaugePercent()).hasToString("5.4");
    }
}
