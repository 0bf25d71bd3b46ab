package porebench.store.rows;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.NoSuchElementException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.record.MixDesign;
import porebench.record.Samples;

/** What an empty cell of a file means is no matter in the lab book, where a row that lacks what every record states is damaged. */
class ReadCellsTest {
    private final RecordTable<MixDesign> table = RecordTable.of(MixDesign.class);
    private final StoredRecord stored = table.rows(Samples.mix("M-1", "S-1", "S-2"));

    private static StoredRow without(StoredRow row, String column) {
        StoredRow fewer = new StoredRow(row.table());
        assertThat(row.columns()).contains(column);
        row.each((one, content) -> {
            if (!one.equals(column)) {
                fewer.cell(one, content);
            }
        });
        return fewer;
    }

    @ParameterizedTest
    @ValueSource(strings = {"profile_id", "wet_sieved", "mix_id", "target_air_pct"})
    void aMixThatLacksWhatEveryMixStatesIsDamaged(String column) {
        StoredRecord damaged = new StoredRecord(without(stored.row(), column), stored.parts());
        assertThatExceptionOfType(NoSuchElementException.class)
                .isThrownBy(() -> table.value(damaged))
                .withMessage("mix." + column + " is empty");
    }

    @ParameterizedTest
    @ValueSource(strings = {"moisture_state", "retained_37_5mm_pct", "mass_unit"})
    void soIsAConstituent(String column) {
        StoredRecord damaged = new StoredRecord(
                stored.row(),
                stored.parts().stream().map(part -> without(part, column)).toList());
        assertThatExceptionOfType(NoSuchElementException.class)
                .isThrownBy(() -> table.value(damaged))
                .withMessage("mix_constituent." + column + " is empty");
    }

    @Test
    void whatMayBeEmptyIsEmpty() {
        assertThat(table.value(stored).soakMinutes()).isEmpty();
    }
}
