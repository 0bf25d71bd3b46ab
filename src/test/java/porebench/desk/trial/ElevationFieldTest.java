package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.desk.BenchBook;
import porebench.desk.Refused;
import porebench.method.Problem;
import porebench.record.Trial;
import porebench.record.column.TrialColumns;

/** How high above the sea a trial of a Type A meter was made, as it is typed. */
class ElevationFieldTest {
    private final BenchBook bench = new BenchBook();

    private BenchModel typed(String meter, String elevation) {
        BenchModel entry = new TrialsModel(bench.select().desk).entry();
        entry.type(TrialColumns.METER, meter);
        entry.type(TrialColumns.FINE, "4905.0");
        entry.type(TrialColumns.COARSE, "7350");
        entry.type(TrialColumns.SOAK, "15");
        entry.type(TrialColumns.WITHDRAWN, "420.0");
        entry.type(TrialColumns.GAUGE, "6.4");
        entry.type(TrialColumns.H1, "0.7");
        entry.type(TrialColumns.H2, "0.3");
        entry.type(TrialColumns.ELEVATION, elevation);
        return entry;
    }

    private Optional<BigDecimal> kept(String id) {
        return bench.book.latest(Trial.class, id).orElseThrow().value().elevationMetres();
    }

    private static List<String> codes(BenchModel entry) {
        return entry.read().problems().stream()
                .filter(problem -> problem.field().equals("elevation"))
                .map(Problem::code)
                .toList();
    }

    @Test
    void isKeptWithItsDigitsAndStandsReadyForTheNextTrial() {
        BenchModel entry = typed("E-1", "1250.5");
        assertThat(Refused.by(out -> entry.keep(Optional.of("known"), "entered", out)))
                .isEmpty();
        assertThat(kept("K7-T1")).contains(new BigDecimal("1250.5"));
        assertThat(entry.draft().text(TrialColumns.ELEVATION)).isEqualTo("1250.5");
    }

    /** 1250 ft are 381 m. */
    @Test
    void standsReadyAsTheSameHeightAlsoWhereItWasTypedInFeet() {
        BenchModel entry = typed("E-1", "1250");
        entry.chooseUnit(TrialColumns.ELEVATION, "ft");
        assertThat(Refused.by(out -> entry.keep(Optional.of("known"), "entered", out)))
                .isEmpty();
        BigDecimal metres = kept("K7-T1").orElseThrow();
        assertThat(metres).isEqualByComparingTo("381");
        BenchModel next = new TrialsModel(bench.desk).entry();
        next.type(TrialColumns.FINE, "4905.0");
        next.type(TrialColumns.COARSE, "7350");
        next.type(TrialColumns.SOAK, "15");
        next.type(TrialColumns.H1, "0.7");
        next.type(TrialColumns.H2, "0.3");
        assertThat(next.read().trial().orElseThrow().elevationMetres().orElseThrow())
                .isEqualByComparingTo(metres);
    }

    @Test
    void mayBeLeftEmptyAndIsNotAskedOfATypeBMeter() {
        BenchModel entry = typed("E-1", "");
        assertThat(codes(entry)).isEmpty();
        BenchModel other = typed("B-1", "9999");
        assertThat(codes(other)).isEmpty();
        assertThat(other.read().trial().orElseThrow().elevationMetres()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"-500,", "5000,", "-500.1,form.out-of-range", "5000.1,form.out-of-range", "high,form.not-a-number"})
    void isRefusedWhereNoRoadGoes(String text, String code) {
        assertThat(codes(typed("E-1", text))).isEqualTo(code == null ? List.of() : List.of(code));
    }
}
