package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.TurnedClock;
import porebench.desk.form.UnitSystem;
import porebench.desk.trial.TrialsPage;

/** The bowl and the water of the bench in the units that the person reads. */
class BenchUnitsTest {
    private final BenchBook bench = new BenchBook(Locale.ENGLISH, new TurnedClock());

    @Test
    void aUsScreenHasTheBowlInCubicFeetAndTheWaterAsACylinderMeasuresIt() {
        bench.select();
        BowlsModel model = new BowlsModel(bench.desk, new TrialsPage(bench.desk).gate());
        BenchWords words = new BenchWords(model);
        model.open();
        assertThat(words.screen().limits()).endsWith(" L");
        model.enter();
        double litres = Double.parseDouble(words.screen().digits());
        assertThat(words.screen().unit()).isEqualTo("L");
        model.back();
        bench.desk.show(UnitSystem.US);
        assertThat(words.screen().limits()).endsWith(" ft3");
        model.enter();
        assertThat(words.screen().unit()).isEqualTo("mL");
        // To the half of the last digit of the litres.
        assertThat(Double.parseDouble(words.screen().digits())).isBetween(1000 * litres - 5, 1000 * litres + 5);
    }
}
