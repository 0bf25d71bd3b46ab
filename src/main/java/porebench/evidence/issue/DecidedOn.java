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
import porebench.method.Profile;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.book.Draft;
import porebench.record.book.DraftedRecords;
import porebench.record.book.Records;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.CalibrationId;
import porebench.record.id.DeterminationId;
import porebench.record.id.TrialId;

/**
 * The rule that a factor is kept only on the evidence it was decided on: whoever decides reads the trials some time before the
 * factor is kept, and somebody else may correct them in between. A lab book asks this where nobody else can write any more.
 */
public final class DecidedOn {
    private static final Stamp NOW = new Stamp("decided", Instant.EPOCH, "decided");

    /** Stands for whoever will put a draft in force: who that is does not touch what it rests on. */
    private static final String ANYBODY = "-";

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
                .filter(FactorIssue::isIssue)
                .toList();
        List<FactorProposal> proposals = drafts.stream()
                .filter(draft -> !draft.cameIn())
                .map(Draft::value)
                .filter(FactorProposal.class::isInstance)
                .map(FactorProposal.class::cast)
                .toList();
        if (decided.isEmpty() && proposals.isEmpty()) {
            return List.of();
        }
        List<Problem> problems = new ArrayList<>();
        Records then = new DraftedRecords(book, drafts, NOW);
        EvidenceReader reader = EvidenceReader.asking(then);
        for (FactorIssue issue : decided) {
            Optional<Version<MixDesign>> mix =
                    then.latest(MixDesign.class, issue.mixId().text());
            mix.map(known -> EvidenceReader.profileOf(then, known.value().profileId()))
                    .ifPresent(profile -> problems.addAll(steps(profile, issue, proposals)));
            mix.filter(any -> issue.grounds().namesTrials())
                    .map(reader::read)
                    .ifPresent(evidence -> meanwhile(problems, issue.determinationId(), changes(evidence, issue)));
        }
        proposals.stream()
                .filter(proposal -> proposal.step() == FactorProposal.Step.DRAFTED
                        || proposal.step() == FactorProposal.Step.CHECKED)
                .forEach(proposal -> then.latest(
                                MixDesign.class, proposal.mixId().text())
                        .map(reader::read)
                        .ifPresent(evidence -> meanwhile(
                                problems, proposal.determinationId(), Proposing.changes(evidence, proposal, ANYBODY))));
        return problems;
    }

    private static void meanwhile(List<Problem> problems, DeterminationId basis, List<Problem> changes) {
        if (!changes.isEmpty()) {
            problems.add(Problem.error("determination", "issue.evidence-changed-meanwhile", basis.text()));
            problems.addAll(changes);
        }
    }

    /** Returns why a factor that was decided here must not be kept by itself, where its profile asks that it is drafted first. */
    private static List<Problem> steps(Profile profile, FactorIssue issue, List<FactorProposal> proposals) {
        boolean isProposed = proposals.stream()
                .anyMatch(proposal -> proposal.step() == FactorProposal.Step.ISSUED
                        && proposal.mixId().equals(issue.mixId())
                        && proposal.revision()
                                .filter(number -> number == issue.revision())
                                .isPresent()
                        && proposal.draftedBy().equals(issue.issuedBy())
                        && proposal.by().equals(issue.approvedBy()));
        return isProposed ? List.of() : FactorSteps.inOneStep(profile);
    }

    /** Returns what is not as it was when a factor was decided on, or no longer bears it. */
    static List<Problem> changes(Evidence evidence, FactorIssue issue) {
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
