package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.form.UnitSystem;
import porebench.record.column.TrialColumns;

/** A new trial begins in the units that the screen shows, whatever those of the trial before. */
class UsTrialTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();

    private String unitOfNext() {
        TrialsModel model = new TrialsModel(bench.select().desk);
        return model.entry().draft().unit(TrialColumns.FINE);
    }

    @Test
    void afterATrialInGramsOneOnAnAmericanScreenBeginsInPounds() {
        bench.keep(BenchBook.determination(1, DAY), BenchBook.trial("K7-T1", 1, DAY, "6.4"));
        assertThat(unitOfNext()).isEqualTo("g");
        bench.desk.show(UnitSystem.US);
        assertThat(unitOfNext()).isEqualTo("lb");
    }
}
