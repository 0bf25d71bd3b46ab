package porebench.evidence.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.method.MeterType;
import porebench.method.budget.FactorInputs;
import porebench.method.budget.Omission;
import porebench.method.meter.BowlFills;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.MeterId;
import porebench.store.Books;

/** What a budget takes of bowls, of water and of a Type A meter. */
class BudgetOfMetersTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private FactorInputs inputs() {
        Evidence evidence = bench.evidence();
        return BudgetInputs.of(evidence, evidence.determination(Bench.FIRST).orElseThrow(), LaboratoryScatter.NONE)
                .orElseThrow();
    }

    private static Trial trial(String id, Withdrawal withdrawal, String fine, String coarse) {
        Trial plain = Samples.trial(id, "M-1", "M-1/1", "5.4");
        Readings read = plain.readings();
        return new Trial(
                plain.id(),
                plain.mixId(),
                plain.determinationId(),
                plain.testedAt(),
                plain.operator(),
                plain.meterId(),
                new Readings(
                        read.meterType(),
                        read.bowl(),
                        Optional.of(Typed.of(fine, MassUnit.KILOGRAM)),
                        Optional.of(Typed.of(coarse, MassUnit.KILOGRAM)),
                        read.soakMinutes(),
                        Samples.some("20.0"),
                        Optional.of(withdrawal),
                        read.gaugePercent(),
                        read.h1Percent(),
                        read.h2Percent(),
                        false),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    /** Of two statements of one volume the one with fewer digits is the worse, and stands for both. */
    @Test
    void takesTheWorstOfTheBowlsWhicheverComesFirst() {
        bench.strike(List.of("T-2", "T-3"));
        Books.keep(bench.book, inBowl("T-0", "7.05"), inBowl("T-9", "7.050"));
        assertThat(inputs().bowl().standardUncertaintyLitres()).isEqualTo(0.01 / Math.sqrt(12), within(1e-9));
        assertThat(inputs().bowl().litres()).isEqualTo(7.05, within(1e-12));
    }

    private static Trial inBowl(String id, String litres) {
        Trial plain = Samples.trial(id, "M-1", "M-1/1", "5.4");
        Readings read = plain.readings();
        return withReadings(
                plain,
                "B-1",
                new Readings(
                        read.meterType(),
                        Typed.of(litres, VolumeUnit.LITRE),
                        read.fine(),
                        read.coarse(),
                        read.soakMinutes(),
                        read.waterCelsius(),
                        read.withdrawal(),
                        read.gaugePercent(),
                        read.h1Percent(),
                        read.h2Percent(),
                        false));
    }

    private static Trial withReadings(Trial trial, String meter, Readings readings) {
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                trial.testedAt(),
                trial.operator(),
                new MeterId(meter),
                readings,
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    /**
     * Two fills of 7.037 and 7.039 kg of water at 998.207 kg/m3 differ by 0.0020036 L: the mean of both scatters by half of that,
     * with one degree of freedom, and by no more than the whole uncertainty.
     */
    @Test
    void theBowlHasTheDegreesOfItsFills() {
        MeterCalibration one = SampleCalibrations.bowlCalibration("C-1", "B-1", DAY, "11.207");
        Books.keep(
                bench.book,
                new MeterCalibration(
                        one.id(),
                        one.meterId(),
                        one.meterType(),
                        one.calibratedOn(),
                        one.by(),
                        one.reason(),
                        Optional.empty(),
                        Optional.of(new BowlFills(
                                List.of(
                                        SampleCalibrations.fill("3.450", "0.720", "11.207", MassUnit.KILOGRAM),
                                        SampleCalibrations.fill("3.450", "0.720", "11.209", MassUnit.KILOGRAM)),
                                false,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty())),
                        Optional.empty(),
                        Optional.empty(),
                        ""));
        FactorInputs inputs = inputs();
        double share = 0.0010018 / inputs.bowl().standardUncertaintyLitres();
        assertThat(inputs.bowl().isWeighed()).isTrue();
        assertThat(inputs.bowl().degreesOfFreedom()).isEqualTo(1 / Math.pow(share, 4), within(0.01));
        assertThat(inputs.noted()).doesNotContain(Omission.BOWL_ONE_FILL);
    }

    @Test
    void waterByWeightHasTheLimitOfABalance() {
        bench.strike(List.of("T-1", "T-2", "T-3"));
        Books.keep(
                bench.book, trial("T-5", new Withdrawal(Samples.number("352"), Withdrawal.Unit.GRAM), "4.90", "7.37"));
        assertThat(inputs().water().orElseThrow().limitMillilitres()).isEqualTo(1);
    }

    /** A Type A meter is read twice: 0.70 and 0.72 under pressure, 0.30 and 0.32 after it, which leaves 0.40. */
    @Test
    void typeAHasWhatItShowsAfterThePressure() {
        bench.strike(List.of("T-1", "T-2", "T-3"));
        Books.keep(bench.book, Samples.meter("A-1", MeterType.A), typeA("T-6", "0.70", "0.30"));
        Books.keep(bench.book, typeA("T-7", "0.72", "0.32"));
        FactorInputs inputs = inputs();
        assertThat(inputs.releasedPercent()).isEqualTo(0.31, within(1e-12));
        assertThat(inputs.readingPercent()).isEqualTo(0.71, within(1e-12));
    }

    private static Trial typeA(String id, String h1, String h2) {
        return withReadings(
                Samples.trial(id, "M-1", "M-1/1", "5.4"),
                "A-1",
                new Readings(
                        MeterType.A,
                        Typed.of("7.98", VolumeUnit.LITRE),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Samples.some(h1),
                        Samples.some(h2),
                        false));
    }
}
