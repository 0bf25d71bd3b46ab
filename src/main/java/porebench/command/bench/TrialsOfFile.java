package porebench.command.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import porebench.evidence.intake.Sheet;
import porebench.evidence.intake.TrialSet;
import porebench.method.Problem;
import porebench.port.LabSheets;
import porebench.record.Determination;
import porebench.record.RecordKind;
import porebench.record.Trial;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** The trials of a file, parted into determinations as the file says. */
final class TrialsOfFile {
    private TrialsOfFile() {}

    /** Reads trials by mix, in the order of the file, of one mix or of all; adds what is wrong with them. */
    static Map<MixId, List<Trial>> read(LabSheets sheets, Path file, Optional<MixId> mixId, List<Problem> problems) {
        Map<MixId, List<Trial>> byMix = new LinkedHashMap<>();
        Sheet<Trial> sheet = sheets.trials(file);
        problems.addAll(sheet.problems());
        Map<TrialId, Integer> lines = new HashMap<>();
        Map<DeterminationId, MixId> mixes = new HashMap<>();
        for (Sheet.Row<Trial> row : sheet.rows()) {
            Trial trial = row.value();
            Integer twin = lines.putIfAbsent(trial.id(), row.line());
            if (twin != null) {
                problems.add(Problem.error(
                                "trial_id",
                                "import.duplicate",
                                RecordKind.TRIAL.word(),
                                trial.id().text(),
                                sheet.file(),
                                twin)
                        .at(sheet.place(row)));
            }
            MixId owner = trial.namesDetermination()
                    ? Objects.requireNonNullElse(
                            mixes.putIfAbsent(trial.determinationId(), trial.mixId()), trial.mixId())
                    : trial.mixId();
            if (!owner.equals(trial.mixId())) {
                problems.add(Problem.error(
                                "determination_id",
                                "import.determination-of-another-mix",
                                trial.id().text(),
                                trial.determinationId().text(),
                                owner.text())
                        .at(sheet.place(row)));
            }
            if (mixId.isEmpty() || mixId.get().equals(trial.mixId())) {
                byMix.computeIfAbsent(trial.mixId(), id -> new ArrayList<>()).add(trial);
            }
        }
        if (byMix.isEmpty() && mixId.isPresent()) {
            problems.add(Problem.error(
                    "mixId",
                    "command.no-trial-of-mix",
                    file.toString(),
                    mixId.get().text()));
        } else if (byMix.isEmpty() && !Problem.anyError(problems)) {
            problems.add(Problem.error("trials", "command.no-trial", file.toString()));
        }
        return byMix;
    }

    /** Adds the problem that simulated trials stand beside real ones. */
    static void checkApart(MixId id, List<Trial> trials, List<Problem> problems) {
        if (trials.stream().map(Trial::simulated).distinct().count() > 1) {
            problems.add(Problem.error("simulated", "command.simulated-beside-real", id.text()));
        }
    }

    /** Returns the determination that some trials make up. */
    static Version<Determination> determination(TrialSet set, Stamp stamp) {
        return new Version<>(new Determination(set.id(), set.mixId(), 1, Map.of(), set.openedOn(), ""), 1, stamp);
    }
}
