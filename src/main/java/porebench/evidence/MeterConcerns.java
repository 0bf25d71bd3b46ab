package porebench.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.method.Problem;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.MeterState;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.id.CalibrationId;

/** What a person should look at about a meter on a day. */
final class MeterConcerns {
    private MeterConcerns() {}

    static List<Problem> of(MeterStory story, LocalDate day) {
        List<Problem> concerns = new ArrayList<>();
        Meter meter = story.meter().value();
        state(story, day).ifPresent(concerns::add);
        newestBy(story, day, one -> one.bowl().isPresent())
                .flatMap(JudgedCalibration::bowl)
                .ifPresent(answer -> concerns.addAll(answer.problems()));
        newestBy(story, day, one -> one.calibration().value().checksMeter()).ifPresent(one -> {
            one.dial().ifPresent(answer -> concerns.addAll(answer.problems()));
            one.column().ifPresent(answer -> concerns.addAll(answer.problems()));
        });
        Set<CalibrationId> made = calibrationsBy(story, day)
                .map(one -> one.calibration().value().id())
                .collect(Collectors.toSet());
        story.chamberChanges().stream()
                .filter(change -> made.contains(change.later()))
                .reduce((earlier, later) -> later)
                .filter(change -> change.drift().isFlagged())
                .ifPresent(change -> concerns.add(Problem.warning(
                        "dial",
                        "meter.chamber-drifted",
                        change.drift().percent(),
                        change.earlier().text(),
                        change.later().text(),
                        change.drift().limitPercent())));
        story.bowlCalibrationOn(day)
                .map(BowlCalibration::volume)
                .filter(volume -> !meter.bowl().agreesWith(volume))
                .ifPresent(volume -> concerns.add(Problem.warning(
                        "bowl", "meter.stated-volume-not-in-force", meter.bowl(), volume.in(VolumeUnit.LITRE))));
        return List.copyOf(concerns);
    }

    private static Optional<Problem> state(MeterStory story, LocalDate day) {
        MeterState state = story.stateOn(day);
        String id = story.meter().value().id().text();
        return switch (state) {
            case OK -> Optional.empty();
            case NEVER -> Optional.of(Problem.warning("meter", "meter.never-calibrated", id));
            case FAILED -> Optional.of(Problem.warning("meter", "meter.calibration-failed", id));
            case DUE -> Optional.of(Problem.warning("meter", "meter.calibration-due", id, due(story, day)));
            case OVERDUE -> Optional.of(Problem.warning("meter", "meter.calibration-overdue", id, due(story, day)));
        };
    }

    private static String due(MeterStory story, LocalDate day) {
        return story.nextDueOn(day).map(LocalDate::toString).orElse("");
    }

    private static Optional<JudgedCalibration> newestBy(
            MeterStory story, LocalDate day, Predicate<JudgedCalibration> isMeant) {
        return calibrationsBy(story, day).filter(isMeant).reduce((earlier, later) -> later);
    }

    private static Stream<JudgedCalibration> calibrationsBy(MeterStory story, LocalDate day) {
        return story.calibrations().stream()
                .filter(one -> !one.calibration().value().calibratedOn().isAfter(day));
    }
}
