package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.Problem;

/** Hands out, replaces and withdraws the factor of a mix. */
public final class Issuing {
    private Issuing() {}

    /**
     * What a person decides when a factor is issued.
     *
     * @param determinationId the determination it rests on
     * @param inForceFrom the first day it holds
     * @param recheckBy the last day before it lapses; empty means the profile's months from the first day
     * @param issuedBy who issues it
     * @param approvedBy who approves it, may be empty
     * @param reason why; also why its doubts are accepted
     * @param override who takes it on that a trial was made on a meter not to be trusted that day, and why; empty when
     *     nobody does
     */
    public record Decision(
            DeterminationId determinationId,
            LocalDate inForceFrom,
            Optional<LocalDate> recheckBy,
            String issuedBy,
            String approvedBy,
            String reason,
            Optional<MeterOverride> override) {
        /** Makes a decision in which nobody overrides anything. */
        public Decision(
                DeterminationId determinationId,
                LocalDate inForceFrom,
                Optional<LocalDate> recheckBy,
                String issuedBy,
                String approvedBy,
                String reason) {
            this(determinationId, inForceFrom, recheckBy, issuedBy, approvedBy, reason, Optional.empty());
        }
    }

    /**
     * That a person takes on a determination although one of its trials was made on a meter that was out of date or had
     * failed.
     *
     * @param who the person; an issue is refused while it is blank
     * @param reason why; an issue is refused while it is blank
     */
    public record MeterOverride(String who, String reason) {}

    /**
     * Makes the next revision of a mix's factor out of a determination. It rests on the stone the trials were made with: if
     * that has changed since, the factor is born untrue and shows as such.
     *
     * @return the issue, with the doubts the person takes on; or why there can be none
     */
    public static Answer<FactorIssue> issue(Evidence evidence, Decision decision) {
        List<Problem> problems = new ArrayList<>();
        MixDesign mix = evidence.mix().value();
        Optional<JudgedDetermination> basis = evidence.determination(decision.determinationId());
        requireText(problems, "issuedBy", decision.issuedBy());
        requireText(problems, "reason", decision.reason());
        if (basis.isEmpty()) {
            problems.add(Problem.error(
                    "determination",
                    "issue.determination-unknown",
                    decision.determinationId().text()));
        } else if (basis.get().summary().isEmpty()) {
            problems.add(Problem.error(
                    "determination",
                    "issue.no-trial-counts",
                    decision.determinationId().text()));
        } else {
            problems.addAll(basis.get().summary().get().doubts());
        }
        checkDates(problems, evidence, decision);
        basis.ifPresent(judged -> checkBasis(problems, evidence, judged));
        Optional<MeterOverride> override = basis.flatMap(judged -> checkMeters(problems, judged, decision));
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        FactorIssue issue = new FactorIssue(
                mix.id(),
                nextRevision(evidence),
                FactorIssue.Action.ISSUED,
                basis.orElseThrow().summary().orElseThrow().reportedPercent(),
                decision.determinationId(),
                basis.orElseThrow().meterType(),
                decision.inForceFrom(),
                recheckBy(evidence, decision),
                decision.issuedBy().strip(),
                decision.approvedBy().strip(),
                decision.reason().strip(),
                basis.orElseThrow().determination().value().mixVersion(),
                basis.orElseThrow().determination().value().sourceVersions(),
                evidence.profile().id());
        return Answer.of(
                override.map(taken -> issue.overriddenBy(
                                taken.who().strip(), taken.reason().strip()))
                        .orElse(issue),
                problems);
    }

    /**
     * Returns the trials of a determination that count although their meter was out of date or had failed that day: with any
     * of them, an issue needs an {@link MeterOverride}.
     */
    public static List<JudgedTrial> needingOverride(JudgedDetermination judged) {
        return judged.trials().stream()
                .filter(JudgedTrial::counts)
                .filter(JudgedTrial::needsOverride)
                .toList();
    }

    private static Optional<MeterOverride> checkMeters(
            List<Problem> problems, JudgedDetermination basis, Decision decision) {
        List<JudgedTrial> doubtful = needingOverride(basis);
        if (doubtful.isEmpty()) {
            decision.override()
                    .ifPresent(any -> problems.add(Problem.warning("override", "issue.override-not-needed")));
            return Optional.empty();
        }
        String trials = doubtful.stream()
                .map(judged -> judged.trial().value().id().text())
                .collect(Collectors.joining(", "));
        String meters = doubtful.stream()
                .map(judged -> judged.trial().value().meterId().text())
                .distinct()
                .collect(Collectors.joining(", "));
        if (decision.override().isEmpty()) {
            problems.add(Problem.error("override", "issue.meter-not-trusted", trials, meters));
            return Optional.empty();
        }
        MeterOverride override = decision.override().get();
        if (override.who().isBlank() || override.reason().isBlank()) {
            problems.add(Problem.error("override", "issue.override-incomplete"));
        }
        problems.add(Problem.warning("override", "issue.meter-overridden", trials, meters));
        return decision.override();
    }

    /**
     * Makes the revision that withdraws the factor of a mix.
     *
     * @param from the first day it no longer holds
     */
    public static Answer<FactorIssue> withdraw(Evidence evidence, LocalDate from, String who, String reason) {
        List<Problem> problems = new ArrayList<>();
        requireText(problems, "issuedBy", who);
        requireText(problems, "reason", reason);
        Optional<FactorIssue> newest = evidence.newestIssue().filter(FactorIssue::isIssue);
        if (newest.isEmpty()) {
            problems.add(Problem.error(
                    "factor",
                    "issue.nothing-to-withdraw",
                    evidence.mix().value().id().text()));
        }
        if (Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        FactorIssue old = newest.orElseThrow();
        BigDecimal factor = old.factorPercent();
        return Answer.of(
                new FactorIssue(
                        old.mixId(),
                        nextRevision(evidence),
                        FactorIssue.Action.WITHDRAWN,
                        factor,
                        old.determinationId(),
                        old.meterType(),
                        from,
                        old.recheckBy(),
                        who.strip(),
                        "",
                        reason.strip(),
                        evidence.mix().number(),
                        old.sourceVersions(),
                        old.profileId()),
                problems);
    }

    /** Returns the day before which a factor must be checked again: as decided, or the profile's months on. */
    public static LocalDate recheckBy(Evidence evidence, Decision decision) {
        return decision.recheckBy()
                .orElseGet(() ->
                        decision.inForceFrom().plusMonths(evidence.profile().count(FigureName.RECHECK_MONTHS)));
    }

    private static void checkDates(List<Problem> problems, Evidence evidence, Decision decision) {
        LocalDate recheck = recheckBy(evidence, decision);
        if (recheck.isBefore(decision.inForceFrom())) {
            problems.add(Problem.error(
                    "recheckBy",
                    "issue.recheck-before-start",
                    recheck.toString(),
                    decision.inForceFrom().toString()));
        }
        evidence.newestIssue()
                .filter(newest -> decision.inForceFrom().isBefore(newest.inForceFrom()))
                .ifPresent(newest -> problems.add(Problem.error(
                        "inForceFrom",
                        "issue.starts-before-last",
                        decision.inForceFrom().toString(),
                        newest.revision(),
                        newest.inForceFrom().toString())));
    }

    private static void checkBasis(List<Problem> problems, Evidence evidence, JudgedDetermination basis) {
        MixId mixId = evidence.mix().value().id();
        for (Evidence.Change change : evidence.changesSince(basis)) {
            problems.add(
                    change.source().isPresent()
                            ? Problem.warning(
                                    "determination",
                                    "issue.source-changed-since-trials",
                                    change.source().get().text())
                            : Problem.warning("determination", "issue.mix-changed-since-trials", mixId.text()));
        }
        long types = basis.trials().stream()
                .filter(JudgedTrial::counts)
                .map(trial -> trial.trial().value().readings().meterType())
                .distinct()
                .count();
        if (types > 1) {
            problems.add(Problem.warning("determination", "issue.two-meter-types"));
        }
    }

    private static void requireText(List<Problem> problems, String field, String text) {
        if (text.isBlank()) {
            problems.add(Problem.error(field, "form.required", field));
        }
    }

    private static int nextRevision(Evidence evidence) {
        return evidence.newestIssue().map(FactorIssue::revision).orElse(0) + 1;
    }
}
