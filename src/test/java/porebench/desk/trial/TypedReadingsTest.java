package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.Refused;
import porebench.method.Problem;
import porebench.quantity.TemperatureUnit;
import porebench.record.Trial;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;

/** What becomes of readings while they are typed: refused ones give no factor, and units do not cost a digit. */
class TypedReadingsTest {
    private final BenchBook bench = new BenchBook();

    private BenchModel wholeTrial() {
        BenchModel entry = new TrialsModel(bench.select().desk).entry();
        entry.type(TrialColumns.FINE, "4905.0");
        entry.type(TrialColumns.COARSE, "7350");
        entry.type(TrialColumns.SOAK, "15");
        entry.type(TrialColumns.WATER, "21.50");
        entry.type(TrialColumns.WITHDRAWN, "420.0");
        entry.type(TrialColumns.GAUGE, "6.40");
        return entry;
    }

    @Test
    void noFactorIsShownFromAReadingThatIsRefused() {
        BenchModel entry = wholeTrial();
        assertThat(entry.read().live()).isPresent();
        assertThat(entry.read().refused()).isEmpty();
        for (Column<Trial, ?> field : List.of(
                TrialColumns.FINE,
                TrialColumns.COARSE,
                TrialColumns.SOAK,
                TrialColumns.WATER,
                TrialColumns.WITHDRAWN,
                TrialColumns.GAUGE,
                TrialColumns.TESTED_AT)) {
            String before = entry.draft().text(field);
            entry.type(field, "x");
            assertThat(entry.read().refused()).contains(field);
            assertThat(entry.read().live()).isEmpty();
            entry.type(field, before);
        }
        entry.type(TrialColumns.GAUGE, "640");
        assertThat(entry.read().refused()).contains(TrialColumns.GAUGE);
        assertThat(entry.read().live()).isEmpty();
        assertThat(entry.read().figures().orElseThrow().factorPercent()).isEmpty();
        entry.type(TrialColumns.GAUGE, "6.40");
        entry.type(TrialColumns.OPERATOR, "");
        assertThat(entry.read().live()).isPresent();
    }

    /** The first trial is of 4 March 2026: 14 days later is 18 March. */
    @Test
    void aTrialLongAfterTheOthersOfItsDeterminationIsDoubtful() {
        BenchModel entry = wholeTrial();
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "entered", out)))
                .isEmpty();
        entry.type(TrialColumns.GAUGE, "6.40");
        entry.type(TrialColumns.TESTED_AT, "2026-03-18 09:00");
        assertThat(entry.read().problems()).extracting(Problem::code).doesNotContain("trial.far-apart");
        entry.type(TrialColumns.TESTED_AT, "2026-03-19 09:00");
        assertThat(entry.read().problems()).extracting(Problem::code).contains("trial.far-apart");
        entry.type(TrialColumns.TESTED_AT, "2026-02-18 09:00");
        assertThat(entry.read().problems()).extracting(Problem::code).doesNotContain("trial.far-apart");
        entry.type(TrialColumns.TESTED_AT, "2026-02-17 09:00");
        assertThat(entry.read().problems()).extracting(Problem::code).contains("trial.far-apart");
    }

    /** (F - 32) / 1.8: 71.3 F are 21.8333 C, kept as 21.83; every tenth of a degree comes back as it was typed. */
    @Test
    void aTemperatureInFahrenheitComesBackWithItsDigit() {
        BenchModel entry = wholeTrial();
        entry.chooseUnit(TrialColumns.WATER, TemperatureUnit.FAHRENHEIT.symbol());
        for (int tenths = 321; tenths <= 1039; tenths++) {
            String typed = tenths / 10 + "." + tenths % 10;
            entry.type(TrialColumns.WATER, typed);
            BigDecimal celsius =
                    entry.read().trial().orElseThrow().readings().waterCelsius().orElseThrow();
            assertThat(celsius.scale()).isEqualTo(2);
            assertThat(Math.round(10 * (celsius.doubleValue() * 1.8 + 32))).isEqualTo(tenths);
        }
        entry.type(TrialColumns.WATER, "71.3");
        assertThat(entry.read().trial().orElseThrow().readings().waterCelsius()).contains(new BigDecimal("21.83"));
    }
}
