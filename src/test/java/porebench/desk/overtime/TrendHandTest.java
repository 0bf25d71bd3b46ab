package porebench.desk.overtime;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import porebench.evidence.TimeBook;
import porebench.record.SampleCalibrations;
import porebench.statistics.control.PhasedChart;

class TrendHandTest {
    private final OverTimeDesk made = new OverTimeDesk();

    /** Makes a determination every ten days. */
    private OverTimeModel everyTenDays(double... factors) {
        for (int i = 0; i < factors.length; i++) {
            made.determinations("M-1", TimeBook.START.plusDays(10L * i), factors[i]);
        }
        return made.model();
    }

    /**
     * x 0 to 5 in steps of ten days, Sxx 17.5; mean 0.525, Sxy 1.425, slope 0.0814286 a step. Squares left 0.0077143 over 4, s
     * 0.0439155; u of the slope 0.0104978, t 2.7764: 0.029147. A year has 36.525 steps: 2.974 and 1.065.
     */
    @Test
    void saysThatTheFactorRises() {
        assertThat(everyTenDays(0.30, 0.45, 0.45, 0.60, 0.60, 0.75).trend())
                .hasValue(
                        "The factor drifts upwards by a straight line through the 6 determinations of the newest phase,"
                                + " 2026-01-05 to 2026-02-24: 2.97 % a year (95 % interval 1.91 to 4.04 %). Without any drift"
                                + " chance alone leads to such a sentence in no more than 5 of 100 cases. Look at the"
                                + " stockpile, its absorption and the meter.");
    }

    @Test
    void saysThatTheFactorFalls() {
        assertThat(everyTenDays(0.75, 0.60, 0.60, 0.45, 0.45, 0.30).trend())
                .hasValue(
                        "The factor drifts downwards by a straight line through the 6 determinations of the newest phase,"
                                + " 2026-01-05 to 2026-02-24: -2.97 % a year (95 % interval -4.04 to -1.91 %). Without any drift"
                                + " chance alone leads to such a sentence in no more than 5 of 100 cases. Look at the"
                                + " stockpile, its absorption and the meter.");
    }

    /** Sxy 0.15, slope 0.0085714; squares left 0.0137143 over 4, s 0.0585540; 2.7764 x 0.0139971 = 0.0388620 a step. */
    @Test
    void saysThatNoDriftCanBeTold() {
        assertThat(everyTenDays(0.4, 0.5, 0.4, 0.5, 0.4, 0.5).trend())
                .hasValue("No drift is seen in the scatter: a straight line through the 6 determinations of the "
                        + "newest phase, 2026-01-05 to 2026-02-24, changes by 0.31 % a year (95 % interval "
                        + "-1.11 to 1.73 %).");
    }

    @Test
    void saysWhenADriftCannotBeTold() {
        String tooFew = "Whether the factor drifts is not known yet: that takes 6 determinations of one phase over 28 "
                + "days.";
        assertThat(everyTenDays(0.4, 0.5, 0.4, 0.5, 0.6).trend()).hasValue(tooFew);
        assertThat(new OverTimeDesk().model().trend()).isEmpty();
        OverTimeDesk quick = new OverTimeDesk();
        quick.quiet(20);
        assertThat(quick.model().trend()).as("20 days").hasValue(tooFew);
    }

    /** s is taken for 0.1 / sqrt(12) = 0.028868: 2.7764 x 0.028868 / sqrt(17.5) = 0.019159 a step, 0.6998 a year. */
    @Test
    void equalReadingsScatterAsTheDialDoes() {
        assertThat(everyTenDays(0.4, 0.4, 0.4, 0.4, 0.4, 0.4).trend().orElseThrow())
                .startsWith("No drift is seen in the scatter")
                .endsWith("changes by 0.00 % a year (95 % interval -0.70 to 0.70 %).");
    }

    /** A straight line of 0.02 a step, known to 0.0192 by the dial's own scatter: 0.1 over five steps, one division. */
    @Test
    void aChangeOfNoMoreThanOneDivisionIsNoDrift() {
        assertThat(everyTenDays(0.40, 0.42, 0.44, 0.46, 0.48, 0.50).trend())
                .hasValue("No drift is seen on this scale: a straight line through the 6 determinations of the "
                        + "newest phase, 2026-01-05 to 2026-02-24, changes by 0.10 %, no more than one "
                        + "division of 0.10 %.");
    }

    /** Trials of three determinations are no six points, however they are charted. */
    @Test
    void trialsAreNoDeterminations() {
        OverTimeModel model = everyTenDays(0.3, 0.5, 0.7);
        OverTimeDesk.choose(model, PhasedChart.Kind.TRIALS);
        assertThat(model.trend().orElseThrow()).startsWith("Whether the factor drifts is not known yet");
    }

    @Test
    void aStepIsNoDrift() {
        everyTenDays(0.4, 0.5, 0.4, 0.5, 0.4, 0.5);
        made.lab.keep(
                SampleCalibrations.dialCalibration("C-1", "B-1", TimeBook.START.plusDays(55), "0.0", "5.0", "10.0"));
        made.determinations("M-1", TimeBook.START.plusDays(60), 0.8);
        assertThat(made.model().trend().orElseThrow()).startsWith("Whether the factor drifts is not known yet");
    }
}
