package porebench.evidence.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.Meter;
import porebench.record.RecordKind;

/** What a field reading that comes in is held against: itself, its mix and the scale of its meter. */
final class FieldIntake {
    private FieldIntake() {}

    /**
     * Returns what is wrong with a reading; empty when nothing is.
     *
     * @param known finds what a record may name
     * @param today no reading can be of a later day
     */
    static List<Problem> check(
            FieldReading reading, BiFunction<RecordKind, String, Optional<Kept>> known, LocalDate today) {
        List<Problem> problems = new ArrayList<>(reading.check(today));
        if (known.apply(RecordKind.MIX, reading.mixId().text()).isEmpty()) {
            problems.add(Problem.error(
                    "mixId",
                    "import.unknown-mix",
                    reading.kind().word(),
                    reading.recordId(),
                    reading.mixId().text()));
        }
        reading.meterId()
                .ifPresent(meter -> known.apply(RecordKind.METER, meter.text())
                        .map(Meter.class::cast)
                        .ifPresentOrElse(
                                there -> reading.checkScale(there).ifPresent(problems::add),
                                () -> problems.add(Problem.error(
                                        "meter", "field.unknown-meter", reading.recordId(), meter.text()))));
        return problems;
    }
}
