package porebench.command.bench;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import porebench.evidence.JudgedCalibration;
import porebench.evidence.MeterStory;
import porebench.evidence.intake.Sheet;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.port.LabSheets;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.Trial;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.MeterId;

/**
 * The calibrations of a file, for the meters that trials were made on.
 *
 * @param file the file, empty for none
 * @param calibrations all its usable calibrations
 * @param stamp who reads it, and when
 */
record StoriesOfFile(String file, List<Version<MeterCalibration>> calibrations, Stamp stamp) {
    private static final BigDecimal WHOLE_SCALE = BigDecimal.valueOf(100);

    /** Nothing was ever calibrated. */
    static StoriesOfFile none(Stamp stamp) {
        return new StoriesOfFile("", List.of(), stamp);
    }

    static StoriesOfFile read(LabSheets sheets, Path file, Stamp stamp, List<Problem> problems) {
        Sheet<MeterCalibration> sheet = sheets.calibrations(file);
        problems.addAll(sheet.problems());
        return new StoriesOfFile(
                file.toString(),
                sheet.values().stream().map(one -> new Version<>(one, 1, stamp)).toList(),
                stamp);
    }

    /**
     * Returns what the file tells of the meters of some trials, by id; adds what is wrong with calibrations made by the day of
     * the last trial, and which meters it does not tell of.
     */
    Map<MeterId, MeterStory> of(
            List<Trial> trials, BigDecimal divisionPercent, Profile profile, List<Problem> problems) {
        Map<MeterId, MeterStory> stories = new HashMap<>();
        if (file.isEmpty()) {
            return stories;
        }
        LocalDate last = trials.stream()
                .map(trial -> trial.testedAt().toLocalDate())
                .max(LocalDate::compareTo)
                .orElseThrow();
        for (Trial trial : trials) {
            MeterId id = trial.meterId();
            if (stories.containsKey(id)) {
                continue;
            }
            MeterStory story = story(trial, divisionPercent, profile);
            stories.put(id, story);
            if (story.calibrations().isEmpty()) {
                problems.add(Problem.warning("meterId", "command.meter-not-in-file", id.text(), file));
            }
            for (JudgedCalibration one : story.calibrations()) {
                if (!one.calibration().value().calibratedOn().isAfter(last)) {
                    one.problems().stream().filter(Problem::isError).forEach(problems::add);
                }
            }
        }
        return stories;
    }

    /** The bowl is as the trial states it until a calibration of the file finds it. */
    private MeterStory story(Trial trial, BigDecimal divisionPercent, Profile profile) {
        Meter meter = new Meter(
                trial.meterId(),
                trial.readings().meterType(),
                "",
                trial.readings().bowl(),
                divisionPercent,
                WHOLE_SCALE,
                true,
                "");
        return MeterStory.of(new Version<>(meter, 1, stamp), calibrations, profile);
    }
}
