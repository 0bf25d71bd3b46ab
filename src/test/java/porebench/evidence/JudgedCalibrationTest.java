package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.MeterCheck;
import porebench.method.profile.Profiles;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.book.Stamp;
import porebench.record.book.Version;

/**
 * What a calibration of bowl and dial proves of each.
 *
 * <p>The full bowl less 3.450 kg and 0.720 kg is its water: 11.207 kg leave 7.037 kg, about 7.05 L; 8.170 kg leave 4.000
 * kg, about 4 L, less than the 6.0 L of ASTM C231 (recalled). The dial may be off by 0.1 %.
 */
class JudgedCalibrationTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final String GOOD_BOWL = "11.207";
    private static final String SMALL_BOWL = "8.170";
    private static final String LIGHTER_THAN_EMPTY = "4.000";

    private static JudgedCalibration judged(Optional<String> full, Optional<String> at5) {
        MeterCalibration bowl = SampleCalibrations.bowlCalibration("C-1", "B-1", DAY, full.orElse(GOOD_BOWL));
        MeterCalibration dial =
                SampleCalibrations.dialCalibration("C-1", "B-1", DAY, "0.00", at5.orElse("5.00"), "10.00");
        MeterCalibration both = new MeterCalibration(
                bowl.id(),
                bowl.meterId(),
                bowl.meterType(),
                DAY,
                bowl.by(),
                MeterCalibration.Reason.PROJECT,
                Optional.empty(),
                full.flatMap(any -> bowl.bowl()),
                at5.flatMap(any -> dial.dial()),
                Optional.empty(),
                "");
        return JudgedCalibration.of(
                new Version<>(both, 1, new Stamp("R. Vale", Instant.EPOCH, "entered")),
                Volume.of(7.05, VolumeUnit.LITRE),
                0.1,
                Profiles.standard());
    }

    private static JudgedCalibration judged(String full, String at5) {
        return judged(Optional.of(full), Optional.of(at5));
    }

    @Test
    void passesWhenBothPass() {
        JudgedCalibration judged = judged(GOOD_BOWL, "5.00");
        assertThat(judged.passesBowl()).isTrue();
        assertThat(judged.passesMeter()).isTrue();
        assertThat(judged.passes()).isTrue();
        assertThat(judged.checks()).isNotEmpty().allMatch(MeterCheck::passes);
        // What was held against a limit is that of the bowl, then that of the dial.
        List<MeterCheck> bowl = judged(Optional.of(GOOD_BOWL), Optional.empty()).checks();
        List<MeterCheck> dial = judged(Optional.empty(), Optional.of("5.00")).checks();
        assertThat(bowl).isNotEmpty();
        assertThat(dial).isNotEmpty();
        assertThat(judged.checks()).hasSize(bowl.size() + dial.size()).startsWith(bowl.get(0));
        JudgedCalibration column = JudgedCalibration.of(
                new Version<>(
                        SampleCalibrations.columnCalibration("K", "A-1", DAY),
                        1,
                        new Stamp("R. Vale", Instant.EPOCH, "entered")),
                Volume.of(7.05, VolumeUnit.LITRE),
                0.1,
                Profiles.standard());
        assertThat(column.checks()).hasSize(1);
        assertThat(column.passesMeter()).isTrue();
        assertThat(expanding("0.10").passesMeter()).isTrue();
        assertThat(expanding("0.11").passesMeter()).isFalse();
    }

    @Test
    void aBowlThatCannotBeUsedFailsTheBowlAlone() {
        for (String full : new String[] {SMALL_BOWL, LIGHTER_THAN_EMPTY}) {
            JudgedCalibration judged = judged(full, "5.00");
            assertThat(judged.passesBowl()).as(full).isFalse();
            assertThat(judged.passesMeter()).as(full).isTrue();
            assertThat(judged.passes()).as(full).isFalse();
        }
    }

    @Test
    void aDialThatIsOffFailsTheMeterAlone() {
        JudgedCalibration judged = judged(GOOD_BOWL, "5.20");
        assertThat(judged.passesBowl()).isTrue();
        assertThat(judged.passesMeter()).isFalse();
        assertThat(judged.passes()).isFalse();
    }

    @Test
    void whatWasNotMeasuredHasNothingToFail() {
        assertThat(judged(Optional.of(GOOD_BOWL), Optional.empty()).passes()).isTrue();
        assertThat(judged(Optional.empty(), Optional.of("5.00")).passes()).isTrue();
        JudgedCalibration nothing = judged(Optional.empty(), Optional.empty());
        assertThat(nothing.passes()).isTrue();
        assertThat(nothing.checks()).isEmpty();
    }

    /** A Type A meter whose bowl gives way by some % air under pressure; the standard profile allows 0.1. */
    private static JudgedCalibration expanding(String percent) {
        MeterCalibration plain = SampleCalibrations.columnCalibration("K", "A-1", DAY);
        ColumnCheck check = plain.column().orElseThrow();
        return JudgedCalibration.of(
                new Version<>(
                        new MeterCalibration(
                                plain.id(),
                                plain.meterId(),
                                plain.meterType(),
                                DAY,
                                plain.by(),
                                plain.reason(),
                                plain.elevationMetres(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of(new ColumnCheck(
                                        check.vesselWater(),
                                        check.bowlWater(),
                                        Samples.number(percent),
                                        check.workingPressure(),
                                        check.elevationMetres())),
                                ""),
                        1,
                        new Stamp("R. Vale", Instant.EPOCH, "entered")),
                Volume.of(7.05, VolumeUnit.LITRE),
                0.1,
                Profiles.standard());
    }
}
