package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.Refused;
import porebench.desk.form.UnitSystem;
import porebench.quantity.MassUnit;
import porebench.record.Trial;
import porebench.record.column.TrialColumns;

/** In what units the next trial begins. */
class NextTrialUnitsTest {
    private final BenchBook bench = new BenchBook();

    private TrialsModel model() {
        return new TrialsModel(bench.select().desk);
    }

    /** The trial before was weighed in pounds on an American screen; on an SI screen the next one is weighed in grams. */
    @Test
    void aNewTrialOnAnSiScreenAfterOneInPoundsBeginsInSi() {
        bench.desk.show(UnitSystem.US);
        BenchModel entry = model().entry();
        entry.type(TrialColumns.FINE, "10.80");
        entry.type(TrialColumns.COARSE, "16.20");
        entry.type(TrialColumns.SOAK, "15");
        entry.type(TrialColumns.WATER, "68");
        entry.type(TrialColumns.WITHDRAWN, "420.0");
        entry.type(TrialColumns.GAUGE, "6.4");
        assertThat(Refused.by(out -> entry.keep(Optional.of("weighed in pounds"), "entered", out)))
                .isEmpty();
        Trial kept = bench.book.latest(Trial.class, "K7-T1").orElseThrow().value();
        assertThat(kept.readings().fine().orElseThrow().unit()).isEqualTo(MassUnit.POUND);
        assertThat(entry.massUnit()).isEqualTo(MassUnit.POUND);
        bench.desk.show(UnitSystem.SI);
        model().entry().clear();
        assertThat(model().entry().massUnit()).isEqualTo(MassUnit.GRAM);
        assertThat(model().entry().draft().unit(TrialColumns.WATER)).isEqualTo("C");
    }
}
