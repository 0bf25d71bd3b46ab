package porebench.exchange;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.port.PracticeBook;
import porebench.record.Equipment;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.id.MeterId;

/**
 * What a new training book begins with: the demo laboratory's sources, equipment, mixes and sound meters, without its trials
 * and factors. Its calibrations and its equipment are moved to other days, so that they hold on the day the practice begins as
 * they do on the demo's day.
 */
public final class PracticeLaboratory implements PracticeBook {
    private static final String WHO = "Porebench demo";
    private static final String WHY = "A laboratory to practise in, which is invented";

    /** The day on which the demo's calibrations stand as they should. */
    private static final LocalDate DEMO_DAY = LocalDate.of(2026, 11, 25);

    /** Its newest dial check failed, which would be a doubt of every trial on it. */
    private static final MeterId FAILED = new MeterId("B-2");

    private static final List<String> FILES = List.of(
            "laboratory.csv", "sources.csv", "equipment.csv", "meters.csv", "meter-calibration.csv", "mix-design.csv");

    @Override
    public void fill(LabBook book, LocalDate day) {
        long later = ChronoUnit.DAYS.between(DEMO_DAY, day);
        List<Draft> drafts = new ArrayList<>();
        for (String file : FILES) {
            DemoLaboratory.read(file).values().stream()
                    .filter(value -> !isOfFailedMeter(value))
                    .map(value -> Draft.of(forPractice(value, later)))
                    .forEach(drafts::add);
        }
        List<Problem> problems = book.keep(drafts, WHO, WHY);
        if (!problems.isEmpty()) {
            ProblemText text = ProblemText.in(Locale.ROOT);
            throw new IllegalStateException("the practice laboratory must load into an empty lab book, but is refused: "
                    + problems.stream().map(text::say).toList());
        }
    }

    private static boolean isOfFailedMeter(Kept value) {
        return value instanceof Meter meter && meter.id().equals(FAILED)
                || value instanceof MeterCalibration calibration
                        && calibration.meterId().equals(FAILED);
    }

    private static Kept forPractice(Kept value, long daysLater) {
        if (value instanceof Laboratory laboratory) {
            return new Laboratory(laboratory.name(), laboratory.address(), true);
        }
        if (value instanceof Equipment piece) {
            return moved(piece, daysLater);
        }
        return value instanceof MeterCalibration calibration ? moved(calibration, daysLater) : value;
    }

    private static Equipment moved(Equipment piece, long daysLater) {
        return new Equipment(
                piece.id(),
                piece.type(),
                piece.description(),
                piece.division(),
                piece.calibration()
                        .map(made -> new Equipment.Calibration(
                                made.on().plusDays(daysLater),
                                made.limit(),
                                made.dueOn().plusDays(daysLater),
                                made.certificate())),
                piece.usedFrom().plusDays(daysLater),
                piece.usedUntil().map(day -> day.plusDays(daysLater)),
                piece.remarks());
    }

    private static MeterCalibration moved(MeterCalibration made, long daysLater) {
        return new MeterCalibration(
                made.id(),
                made.meterId(),
                made.meterType(),
                made.calibratedOn().plusDays(daysLater),
                made.by(),
                made.reason(),
                made.elevationMetres(),
                made.bowl(),
                made.dial(),
                made.column(),
                made.remarks());
    }
}
