package porebench.evidence.issue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.EvidenceChanges;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.Lent;
import porebench.evidence.Recheck;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.trial.StopRule;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.FactorTerms;
import porebench.record.Grounds;
import porebench.record.TakenDoubt;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;

/**
 * The one gate by which a factor is handed out, replaced, confirmed and withdrawn, whichever door a person comes through.
 *
 * <p>A factor is issued only when no trial that counts has a doubt that nobody kept, or somebody named takes each on with a
 * reason. What can never be right is refused whoever asks.
 */
public final class Issuing {
    /** Stands on the card to come for who will issue it. */
    private static final String NOBODY_YET = "-";

    private Issuing() {}

    /**
     * What a person decides when a factor is issued.
     *
     * @param determinationId the determination it rests on
     * @param inForceFrom the first day it holds
     * @param recheckBy the last day before it lapses; empty means the usual day, see {@link Recheck#usualDay}
     * @param issuedBy who issues it
     * @param approvedBy who approves it, may be empty unless the profile asks for a second person
     * @param reason why
     * @param takingOn who takes on which doubts, and why; empty when nobody takes on any
     * @param terms from which hour of the first day it holds, under which conditions, and who checked it
     * @param asDecided the decision by which the factor from before a source changed is kept; empty where the determination gives it
     */
    public record Decision(
            DeterminationId determinationId,
            LocalDate inForceFrom,
            Optional<LocalDate> recheckBy,
            String issuedBy,
            String approvedBy,
            String reason,
            Optional<TakingOn> takingOn,
            FactorTerms terms,
            Optional<ChangeDecisionId> asDecided) {
        /** Makes a decision in which nobody takes anything on. */
        public Decision(
                DeterminationId determinationId,
                LocalDate inForceFrom,
                Optional<LocalDate> recheckBy,
                String issuedBy,
                String approvedBy,
                String reason) {
            this(determinationId, inForceFrom, recheckBy, issuedBy, approvedBy, reason, Optional.empty());
        }

        /** Makes a decision that holds from the start of its first day, without conditions. */
        public Decision(
                DeterminationId determinationId,
                LocalDate inForceFrom,
                Optional<LocalDate> recheckBy,
                String issuedBy,
                String approvedBy,
                String reason,
                Optional<TakingOn> takingOn) {
            this(
                    determinationId,
                    inForceFrom,
                    recheckBy,
                    issuedBy,
                    approvedBy,
                    reason,
                    takingOn,
                    FactorTerms.NONE,
                    Optional.empty());
        }

        /** Returns the same decision on other terms. */
        public Decision under(FactorTerms other) {
            return new Decision(
                    determinationId, inForceFrom, recheckBy, issuedBy, approvedBy, reason, takingOn, other, asDecided);
        }

        /** Returns the moment from which it holds. */
        LocalDateTime begins() {
            return inForceFrom.atTime(terms.at().orElse(LocalTime.MIN));
        }

        /** Returns the same, keeping the factor from before a source changed as somebody decided. */
        public Decision asDecided(Optional<ChangeDecisionId> decision) {
            return new Decision(
                    determinationId, inForceFrom, recheckBy, issuedBy, approvedBy, reason, takingOn, terms, decision);
        }
    }

    /**
     * Returns every doubt about issuing a factor from a determination that is not settled.
     *
     * @param scatter how trials scatter in the laboratory, for whether the trials are enough
     */
    public static List<IssueDoubt> doubts(
            Evidence evidence, LaboratoryScatter scatter, DeterminationId determinationId) {
        return evidence.determination(determinationId)
                .map(basis -> new IssueDoubts(evidence, basis).all(stop(evidence, scatter, basis)))
                .orElse(List.of());
    }

    static Optional<StopRule> stop(Evidence evidence, LaboratoryScatter scatter, JudgedDetermination basis) {
        return evidence.stop(basis, scatter);
    }

    /**
     * Makes the next revision of a mix's factor out of a determination. It rests on the stone the trials were made with and
     * on the trials and calibrations as they stand: if one of these changes, the factor no longer holds and shows as such.
     *
     * @param scatter how trials scatter in the laboratory, for whether the trials are enough
     * @return the issue, with every doubt, taken on; or why there can be none
     */
    public static Answer<FactorIssue> issue(Evidence evidence, LaboratoryScatter scatter, Decision decision) {
        List<Problem> problems = new ArrayList<>(FactorSteps.inOneStep(evidence.profile()));
        secondPerson(evidence, decision.issuedBy(), decision.approvedBy()).ifPresent(problems::add);
        Answer<FactorIssue> decided = decided(evidence, scatter, decision);
        problems.addAll(decided.problems());
        return Problem.anyError(problems)
                ? Answer.refused(problems)
                : Answer.of(decided.value().orElseThrow(), problems);
    }

    /** Makes the next revision out of a determination as a person decided it, whoever has to check or approve it. */
    static Answer<FactorIssue> decided(Evidence evidence, LaboratoryScatter scatter, Decision decision) {
        List<Problem> problems = new ArrayList<>();
        requireText(problems, "issuedBy", decision.issuedBy());
        requireText(problems, "reason", decision.reason());
        checkDates(problems, evidence, decision);
        Optional<JudgedDetermination> basis = basis(problems, evidence, decision.determinationId());
        List<TakenDoubt> taken = new ArrayList<>();
        basis.ifPresent(judged -> {
            IssueDoubts doubts = new IssueDoubts(evidence, judged);
            problems.addAll(doubts.impossible());
            doubts.beforeEvidence(decision.begins()).ifPresent(problems::add);
            problems.addAll(doubts.beforeStone(decision.inForceFrom()));
            doubts.drifted().forEach(drift -> problems.add(Problem.error("determination", "issue.drifted", drift)));
            decision.asDecided()
                    .ifPresent(id -> problems.addAll(KeptFactor.problems(evidence, decision.determinationId(), id)));
            problems.addAll(evidence.recheck(basis, decision.inForceFrom(), recheckBy(evidence, decision))
                    .besideItsDay(decision.inForceFrom()));
            taken.addAll(TakingOn.takeOn(problems, doubts.all(stop(evidence, scatter, judged)), decision.takingOn()));
        });
        if (basis.isEmpty() || Problem.anyError(problems)) {
            return Answer.refused(problems);
        }
        FactorIssue issue = revision(evidence, decision, basis.get(), taken);
        Optional<FactorIssue> same = evidence.newestIssue().filter(newest -> isTheSame(newest, issue));
        if (same.isPresent()) {
            problems.add(Problem.error(
                    "factor",
                    "issue.already-issued",
                    same.get().revision(),
                    issue.determinationId().text()));
            return Answer.refused(problems);
        }
        return Answer.of(issue, problems);
    }

    /**
     * Returns the next revision as it would be if it were issued now, whatever is still missing or doubtful, so that its card can
     * be seen before. It is in no lab book, and its card is {@link porebench.evidence.CardState#NOT_ISSUED}.
     *
     * @return empty while the determination gives no factor, or where the day to recheck by lies before the first
     */
    public static Optional<FactorIssue> asItWouldBe(Evidence evidence, Decision decision) {
        String who = decision.issuedBy().isBlank() ? NOBODY_YET : decision.issuedBy();
        Decision seen = new Decision(
                decision.determinationId(),
                decision.inForceFrom(),
                decision.recheckBy(),
                who,
                decision.approvedBy(),
                "",
                Optional.empty(),
                decision.terms(),
                decision.asDecided());
        return basis(new ArrayList<>(), evidence, decision.determinationId())
                .filter(any -> !recheckBy(evidence, decision).isBefore(decision.inForceFrom()))
                .map(judged -> revision(evidence, seen, judged, List.of()));
    }

    private static FactorIssue revision(
            Evidence evidence, Decision decision, JudgedDetermination basis, List<TakenDoubt> taken) {
        Determination determination = basis.determination().value();
        Grounds grounds = grounds(evidence, basis, taken, FactorOrigin.HERE);
        return new FactorIssue(
                evidence.mix().value().id(),
                nextRevision(evidence),
                FactorIssue.Action.ISSUED,
                decision.asDecided()
                        .flatMap(id -> KeptFactor.factor(evidence, id))
                        .orElseGet(() -> basis.summary().orElseThrow().reportedPercent()),
                decision.determinationId(),
                basis.meterType(),
                decision.inForceFrom(),
                recheckBy(evidence, decision),
                decision.issuedBy().strip(),
                decision.approvedBy().strip(),
                decision.reason().strip(),
                determination.mixVersion(),
                determination.sourceVersions(),
                evidence.profile().id(),
                "",
                "",
                decision.asDecided().map(grounds::keptBy).orElse(grounds),
                decision.terms());
    }

    static Grounds grounds(Evidence evidence, JudgedDetermination basis, List<TakenDoubt> taken, FactorOrigin origin) {
        return new Grounds(
                EvidenceChanges.trialsNow(basis),
                new EvidenceChanges(evidence).calibrationsNow(basis),
                taken,
                origin,
                basis.trials().stream().anyMatch(trial -> trial.trial().value().simulated()),
                Lent.ground(evidence, basis),
                Optional.empty(),
                Optional.empty());
    }

    /** Returns whether a revision says again what the newest one says: a repeated command makes no second revision. */
    private static boolean isTheSame(FactorIssue newest, FactorIssue next) {
        return newest.isIssue()
                && newest.determinationId().equals(next.determinationId())
                && newest.begins().equals(next.begins())
                && newest.terms().equals(next.terms())
                && newest.recheckBy().equals(next.recheckBy())
                && newest.factorPercent().compareTo(next.factorPercent()) == 0
                && newest.reason().equals(next.reason())
                && newest.issuedBy().equals(next.issuedBy())
                && newest.approvedBy().equals(next.approvedBy())
                && newest.grounds().trialVersions().equals(next.grounds().trialVersions())
                && newest.grounds().calibrationVersions().equals(next.grounds().calibrationVersions());
    }

    static Optional<JudgedDetermination> basis(
            List<Problem> problems, Evidence evidence, DeterminationId determinationId) {
        Optional<JudgedDetermination> basis = evidence.determination(determinationId);
        if (basis.isEmpty()) {
            problems.add(Problem.error("determination", "issue.determination-unknown", determinationId.text()));
        } else if (basis.get().summary().isEmpty()) {
            problems.add(Problem.error("determination", "issue.no-trial-counts", determinationId.text()));
        }
        return basis.filter(judged -> judged.summary().isPresent());
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
                        old.profileId(),
                        "",
                        "",
                        Grounds.NONE.simulated(old.isSimulated() || evidence.isSimulated())),
                problems);
    }

    /** Returns the day before which a factor must be checked again: as decided, or by {@link Recheck#usualDay}. */
    public static LocalDate recheckBy(Evidence evidence, Decision decision) {
        return decision.recheckBy().orElseGet(() -> usualRecheck(evidence, decision));
    }

    private static LocalDate usualRecheck(Evidence evidence, Decision decision) {
        return Recheck.usualDay(evidence.profile(), decision.inForceFrom());
    }

    static void checkDates(List<Problem> problems, Evidence evidence, Decision decision) {
        LocalDate recheck = recheckBy(evidence, decision);
        if (recheck.isBefore(decision.inForceFrom())) {
            problems.add(Problem.error(
                    "recheckBy",
                    "issue.recheck-before-start",
                    recheck.toString(),
                    decision.inForceFrom().toString()));
        }
        if (recheck.isAfter(usualRecheck(evidence, decision))) {
            problems.add(Problem.warning(
                    "recheckBy",
                    "issue.recheck-late",
                    recheck.toString(),
                    usualRecheck(evidence, decision).toString()));
        }
        evidence.newestIssue()
                .filter(newest -> decision.begins().isBefore(newest.begins()))
                .ifPresent(newest -> problems.add(Problem.error(
                        "inForceFrom",
                        "issue.starts-before-last",
                        said(decision.begins()),
                        newest.revision(),
                        said(newest.begins()))));
    }

    /** Returns a day, with its hour where that is no start of a day. */
    static String said(LocalDateTime moment) {
        LocalTime time = moment.toLocalTime();
        String day = moment.toLocalDate().toString();
        return time.equals(LocalTime.MIN) ? day : day + " " + FactorTerms.written(time);
    }

    /** Returns what is wrong where the profile asks that a second person approves. */
    static Optional<Problem> secondPerson(Evidence evidence, String issuedBy, String approvedBy) {
        if (!evidence.profile().figure(FigureName.SECOND_PERSON).value().equals("yes")) {
            return Optional.empty();
        }
        String approver = approvedBy.strip();
        if (approver.isEmpty()) {
            return Optional.of(Problem.error(
                            "approvedBy",
                            "issue.second-person-missing",
                            evidence.profile().title())
                    .of(Problem.Kind.NOT_YET));
        }
        return sameName(approver, issuedBy)
                ? Optional.of(Problem.error("approvedBy", "issue.second-person-is-first", approver))
                : Optional.empty();
    }

    static boolean sameName(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    static void requireText(List<Problem> problems, String field, String text) {
        if (text.isBlank()) {
            problems.add(Problem.missing(field, field));
        }
    }

    static int nextRevision(Evidence evidence) {
        return evidence.newestIssue().map(FactorIssue::revision).orElse(0) + 1;
    }
}
