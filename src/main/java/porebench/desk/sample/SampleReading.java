package porebench.desk.sample;

import java.util.List;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.sample.CorrectionSample;
import porebench.method.sample.WeighOut;
import porebench.record.Meter;

/**
 * What follows from the selected mix and what is typed on the page.
 *
 * @param sample the correction sample by today's moisture; empty while a problem forbids one
 * @param weighOut what to weigh and to fetch; empty while a problem forbids one
 * @param meter the meter chosen from the register
 * @param meterType the type of meter
 * @param problems everything wrong or doubtful
 */
record SampleReading(
        Optional<CorrectionSample> sample,
        Optional<WeighOut> weighOut,
        Optional<Meter> meter,
        MeterType meterType,
        List<Problem> problems) {
    SampleReading {
        problems = List.copyOf(problems);
    }
}
