package porebench.evidence.intake;

import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.evidence.EvidenceReader;
import porebench.evidence.JudgedTrial;
import porebench.method.Problem;
import porebench.record.Determination;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.DraftedRecords;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/**
 * Judges the trials that come in as the form judges one that is typed: by the mix, meter, calibrations and profile as they will be
 * once everything is kept, determination by determination. As there, one that is void or struck needs no reason.
 */
final class TrialJudging {
    private static final Stamp SOON = new Stamp("import", Instant.EPOCH, "import");

    private final Touched touched;
    private final DraftedRecords after;
    private final Map<DeterminationId, List<Version<Trial>>> asked;
    private final Set<TrialId> doubted;
    private final Map<MixId, Optional<Version<MixDesign>>> mixes = new HashMap<>();

    /**
     * Makes it.
     *
     * @param touched what the lab book holds of what comes in
     * @param drafts what can be kept, new trials among it
     * @param doubted the trials doubted already for the company they keep
     */
    TrialJudging(LabBook book, Touched touched, List<Draft> drafts, Set<TrialId> doubted) {
        this.touched = touched;
        this.doubted = new HashSet<>(doubted);
        this.after = new DraftedRecords(
                book,
                drafts.stream()
                        .filter(draft -> draft.value().kind() != RecordKind.TRIAL)
                        .toList(),
                SOON);
        this.asked = drafts.stream()
                .map(Draft::value)
                .filter(Trial.class::isInstance)
                .map(Trial.class::cast)
                .filter(trial -> trial.keptBecause().isEmpty())
                .collect(Collectors.groupingBy(
                        Trial::determinationId,
                        LinkedHashMap::new,
                        Collectors.mapping(trial -> new Version<>(trial, 1, SOON), Collectors.toList())));
    }

    /**
     * Returns the trials that are kept only for a reason, and do not say one.
     *
     * @param trials the trials that come in, with their places
     * @param problems takes every doubt about them
     * @param progress hears how far it is
     */
    Set<TrialId> doubted(Map<String, Incoming> trials, List<Problem> problems, Progress progress) {
        if (asked.isEmpty()) {
            return doubted;
        }
        EvidenceReader reader = EvidenceReader.asking(after);
        long[] done = {0};
        asked.forEach((id, some) -> {
            progress.at(Progress.Stage.WORKING_OUT, done[0]++, asked.size());
            Determination determination = drafted(id);
            mix(determination.mixId()).map(mix -> reader.judge(determination, mix, some)).stream()
                    .flatMap(List::stream)
                    .forEach(judged -> take(judged, trials, problems));
        });
        return doubted;
    }

    private Determination drafted(DeterminationId id) {
        return after.draft(Determination.class, id.text())
                .or(() -> touched.value(Determination.class, RecordKind.DETERMINATION, id.text()))
                .orElseThrow();
    }

    /** Returns a mix as it will be; one that is not changed is the one that was asked for already. */
    private Optional<Version<MixDesign>> mix(MixId id) {
        return mixes.computeIfAbsent(id, any -> after.latest(MixDesign.class, id.text()));
    }

    private void take(JudgedTrial judged, Map<String, Incoming> trials, List<Problem> problems) {
        Trial trial = judged.trial().value();
        if (!judged.counts()) {
            doubted.remove(trial.id());
        } else if (!judged.doubts().isEmpty()) {
            Incoming row = Objects.requireNonNull(trials.get(trial.recordId()));
            doubted.add(trial.id());
            judged.doubts().forEach(doubt -> problems.add(doubt.at(row.place())));
        }
    }
}
