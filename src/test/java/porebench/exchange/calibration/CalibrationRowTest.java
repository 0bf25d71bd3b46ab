package porebench.exchange.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The columns of a calibration's rows. */
class CalibrationRowTest {
    /** A row in which nothing was measured adds no column without a name. */
    @Test
    void everyColumnHasAName() {
        assertThat(CalibrationRow.allColumns())
                .contains("withdrawn", "expansion_pct")
                .doesNotHaveDuplicates()
                .noneMatch(String::isBlank);
    }
}
