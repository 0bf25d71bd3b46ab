package porebench.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.port.DataTable;
import porebench.port.Paper;
import porebench.port.ReadingsTable;
import porebench.print.FieldLists;
import porebench.print.Presses;

/** The printed list of field readings, and the same as figures. */
class FieldListTest {
    private static String cell(DataTable table, int row, String column) {
        return table.rows().get(row).get(table.heading().indexOf(column));
    }

    @Test
    void eachReadingStandsOnPaperWithWhatWasMadeOfIt() {
        String text = Presses.text(FieldLists.usual(6), Paper.A4, Locale.ENGLISH);
        assertThat(text)
                .contains("Read at the loads, 2026-10-30 to 2026-11-28")
                .contains("Readings of all mixes.", "without a guard band")
                .contains("2026-11-20 07:15", "HG-101", "B-2", "2310 kg/m3", "within the limits", "0.25")
                .contains("not corrected", "The factor of HG-103 had lapsed.")
                .contains(
                        "struck",
                        "the clamp leaked",
                        "Remarks: at the pump",
                        "Saved because: the phone was an " + "hour")
                .contains("As of 2026-11-28 14:30", "3f2a-91c0-77de-0b1c");
    }

    @Test
    void aGuardBandAndAMixAreSaidOnTheFace() {
        assertThat(Presses.text(FieldLists.guarded(3), Paper.A4, Locale.ENGLISH))
                .contains("Readings of mix HG-101.", "a guard band of 2 standard uncertainties")
                .doesNotContain("without a guard band");
        assertThat(Presses.text(FieldLists.guarded(3), Paper.A4, Locale.forLanguageTag("es")))
                .contains("Lecturas de la mezcla HG-101.", "banda de guarda de 2", "0,25");
        assertThat(Presses.text(FieldLists.empty(), Paper.LETTER, Locale.ENGLISH))
                .contains("No reading.");
    }

    @Test
    void theFiguresAreThoseOfThePaper() {
        DataTable table = ReadingsTable.of(FieldLists.guarded(6));
        assertThat(table.rows()).hasSize(6);
        assertThat(cell(table, 0, "reading_id")).isEqualTo("HG-101/0");
        assertThat(cell(table, 0, "read_at")).isEqualTo("2026-11-20T07:15:20");
        assertThat(cell(table, 0, "gauge_pct")).isEqualTo("6.0");
        assertThat(cell(table, 0, "factor_pct_air")).isEqualTo("0.3");
        assertThat(cell(table, 0, "air_pct")).isEqualTo("5.7");
        assertThat(cell(table, 0, "revision")).isEqualTo("2");
        assertThat(cell(table, 0, "expanded_u_pct")).isEqualTo("0.25");
        assertThat(cell(table, 2, "full_mixture_air_pct")).isEqualTo("4.1");
        assertThat(cell(table, 2, "mortar_air_pct")).isEqualTo("6.6");
        assertThat(cell(table, 0, "full_mixture_air_pct") + cell(table, 0, "mortar_air_pct"))
                .isEmpty();
        assertThat(cell(table, 0, "density")).isEqualTo("2310");
        assertThat(cell(table, 0, "density_unit")).isEqualTo("kg/m3");
        assertThat(cell(table, 0, "temperature_c")).isEqualTo("19.5");
        assertThat(cell(table, 0, "meter_id")).isEqualTo("B-2");
        assertThat(cell(table, 0, "verdict")).isEqualTo("passes");
        assertThat(cell(table, 0, "guard_standard_uncertainties")).isEqualTo("2");
        assertThat(cell(table, 1, "density")).isEmpty();
        assertThat(cell(table, 1, "remarks")).isEqualTo("at the pump");
        assertThat(cell(table, 2, "kept_because")).isEqualTo("the phone was an hour behind");
        assertThat(cell(table, 3, "struck_because")).isEqualTo("the clamp leaked");
        assertThat(cell(table, 3, "notes")).isEqualTo("the clamp leaked");
        // One that is not corrected has no air at all.
        assertThat(List.of(cell(table, 4, "air_pct"), cell(table, 4, "factor_pct_air"), cell(table, 4, "meter_id")))
                .containsOnly("");
        assertThat(cell(table, 4, "verdict")).isEqualTo("not-corrected");
        assertThat(cell(ReadingsTable.of(FieldLists.usual(1)), 0, "guard_standard_uncertainties"))
                .isEmpty();
    }

    @Test
    void everyRowOfATrainingBookSaysSo() {
        DataTable table = ReadingsTable.of(FieldLists.training());
        assertThat(table.heading()).endsWith("simulated");
        assertThat(table.rows()).allSatisfy(row -> assertThat(row).endsWith("yes"));
        assertThat(ReadingsTable.of(FieldLists.usual(1)).heading()).doesNotContain("simulated");
    }
}
