package porebench.evidence.issue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import porebench.evidence.Evidence;
import porebench.evidence.EvidenceChanges;
import porebench.evidence.EvidenceReader;
import porebench.evidence.JudgedDetermination;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.book.Draft;
import porebench.record.book.DraftedRecords;
import porebench.record.book.Records;
import porebench.record.book.Stamp;
import porebench.record.id.CalibrationId;
import porebench.record.id.TrialId;

/**
 * The rule that a factor is kept only on the evidence it was decided on: whoever decides reads the trials some time before the
 * factor is kept, and somebody else may correct them in between. A lab book asks this where nobody else can write any more.
 */
public final class DecidedOn {
    private static final Stamp NOW = new Stamp("decided", Instant.EPOCH, "decided");

    private DecidedOn() {}

    /**
     * Returns why some drafts must not be kept: a factor decided here names versions of trials or calibrations that are not
     * those of its determination now, or its evidence no longer bears it. Empty when all may be kept.
     *
     * @param drafts what is to be kept
     * @param book what the lab book holds at this moment
     */
    public static List<Problem> conflicts(List<Draft> drafts, Records book) {
        List<FactorIssue> decided = drafts.stream()
                .filter(draft -> !draft.cameIn())
                .map(Draft::value)
                .filter(FactorIssue.class::isInstance)
                .map(FactorIssue.class::cast)
                .filter(issue -> issue.isIssue() && issue.grounds().namesTrials())
                .toList();
        if (decided.isEmpty()) {
            return List.of();
        }
        List<Problem> problems = new ArrayList<>();
        Records then = new DraftedRecords(book, drafts, NOW);
        EvidenceReader reader = EvidenceReader.asking(then);
        for (FactorIssue issue : decided) {
            then.latest(MixDesign.class, issue.mixId().text())
                    .map(reader::read)
                    .map(evidence -> changes(evidence, issue))
                    .filter(changes -> !changes.isEmpty())
                    .ifPresent(changes -> {
                        problems.add(Problem.error(
                                "determination",
                                "issue.evidence-changed-meanwhile",
                                issue.determinationId().text()));
                        problems.addAll(changes);
                    });
        }
        return problems;
    }

    private static List<Problem> changes(Evidence evidence, FactorIssue issue) {
        List<Problem> changes = new ArrayList<>();
        Optional<JudgedDetermination> judged = evidence.determination(issue.determinationId());
        compare(
                changes,
                RecordKind.TRIAL,
                byText(issue.grounds().trialVersions(), TrialId::text),
                byText(judged.map(EvidenceChanges::trialsNow).orElse(Map.of()), TrialId::text));
        compare(
                changes,
                RecordKind.METER_CALIBRATION,
                byText(issue.grounds().calibrationVersions(), CalibrationId::text),
                byText(
                        judged.map(new EvidenceChanges(evidence)::calibrationsNow)
                                .orElse(Map.of()),
                        CalibrationId::text));
        changes.addAll(Verifying.unverified(evidence, issue));
        return changes;
    }

    private static <I> Map<String, Integer> byText(Map<I, Integer> versions, Function<I, String> text) {
        Map<String, Integer> byText = new TreeMap<>();
        versions.forEach((id, version) -> byText.put(text.apply(id), version));
        return byText;
    }

    private static void compare(
            List<Problem> changes, RecordKind kind, Map<String, Integer> seen, Map<String, Integer> now) {
        now.forEach((id, version) -> {
            Integer before = seen.get(id);
            if (before == null) {
                changes.add(Problem.warning("determination", "issue.rests-on-more", kind.word(), id));
            } else if (!before.equals(version)) {
                changes.add(Problem.warning("determination", "issue.rests-on-other", kind.word(), id, before, version));
            }
        });
        seen.keySet().stream()
                .filter(id -> !now.containsKey(id))
                .forEach(id -> changes.add(Problem.warning("determination", "issue.rests-on-less", kind.word(), id)));
    }
}
