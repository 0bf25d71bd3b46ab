package porebench.evidence;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;
import porebench.record.GroupGround;
import porebench.record.MixDesign;
import porebench.record.id.MixId;

/**
 * One line of the factor register: a mix in service, what is in force, what is due and what is missing.
 *
 * @param mixId the mix
 * @param title its title
 * @param plant the plant that makes it, may be empty
 * @param state how it stands with its factor
 * @param factorPercent the factor in force, in % air; empty when none is
 * @param revision the revision in force; empty when none is
 * @param inForceFrom since when; empty when none is
 * @param recheckBy until when it must be checked again; empty when none is
 * @param trials the trials that the factor rests on; of a mix without factor, those that count so far
 * @param uncoveredSince the first day without a factor that might be used, after one that was; empty while one may be used, and
 *     where there never was one
 * @param missing what an assessor would ask for
 * @param terms from which hour of its first day the factor in force holds, and under which conditions; none when none is
 * @param group the group whose factor it is, and the mix that was tested; empty where the factor is of the mix alone
 * @param uncertainty how uncertain the factor in force was when it was issued
 * @param due why it is to be checked again, or soon will be, by the laboratory's rules, the most pressing reason first
 */
public record RegisterRow(
        MixId mixId,
        String title,
        String plant,
        FactorState state,
        Optional<BigDecimal> factorPercent,
        Optional<Integer> revision,
        Optional<LocalDate> inForceFrom,
        Optional<LocalDate> recheckBy,
        TrialsBehind trials,
        Optional<LocalDate> uncoveredSince,
        List<Problem> missing,
        FactorTerms terms,
        Optional<GroupGround> group,
        ShownUncertainty uncertainty,
        List<Problem> due) {
    public RegisterRow {
        missing = List.copyOf(missing);
        due = List.copyOf(due);
    }

    /** A line of a factor of the mix alone that holds from the start of its first day, without conditions. */
    public RegisterRow(
            MixId mixId,
            String title,
            String plant,
            FactorState state,
            Optional<BigDecimal> factorPercent,
            Optional<Integer> revision,
            Optional<LocalDate> inForceFrom,
            Optional<LocalDate> recheckBy,
            TrialsBehind trials,
            Optional<LocalDate> uncoveredSince,
            List<Problem> missing) {
        this(
                mixId,
                title,
                plant,
                state,
                factorPercent,
                revision,
                inForceFrom,
                recheckBy,
                trials,
                uncoveredSince,
                missing,
                FactorTerms.NONE,
                Optional.empty(),
                ShownUncertainty.NONE,
                List.of());
    }

    /** Returns the line of one mix as it stands on a day, at its end. */
    public static RegisterRow of(Evidence evidence, LocalDate day) {
        return of(evidence, Moments.endOf(day));
    }

    /** Returns the line of one mix as it stands at a moment. */
    public static RegisterRow of(Evidence evidence, LocalDateTime moment) {
        LocalDate day = moment.toLocalDate();
        Optional<FactorIssue> inForce = evidence.inForceAt(moment);
        Optional<JudgedDetermination> basis = inForce.isPresent()
                ? evidence.determination(inForce.get().determinationId())
                : evidence.openDetermination();
        FactorState state = evidence.stateAt(moment);
        return new RegisterRow(
                evidence.mix().value().id(),
                evidence.mix().value().title(),
                evidence.mix().value().plant().orElse(""),
                state,
                inForce.map(FactorIssue::factorPercent),
                inForce.map(FactorIssue::revision),
                inForce.map(FactorIssue::inForceFrom),
                inForce.map(FactorIssue::recheckBy),
                basis.map(TrialsBehind::of).orElse(TrialsBehind.NONE),
                state.isUsable() ? Optional.empty() : CoveredSpell.endOfNewest(CoveredSpell.of(evidence, moment), day),
                missing(evidence, inForce, basis, day),
                inForce.map(FactorIssue::terms).orElse(FactorTerms.NONE),
                inForce.flatMap(issue -> issue.grounds().group()),
                inForce.map(ShownUncertainty::of).orElse(ShownUncertainty.NONE),
                inForce.map(issue -> evidence.recheck(issue)
                                .why(day, Recheck.Level.LAPSED, Recheck.Level.DUE, Recheck.Level.COMING))
                        .orElse(List.of()));
    }

    /** Returns the same line with other matters missing. */
    public RegisterRow lacking(List<Problem> others) {
        return new RegisterRow(
                mixId,
                title,
                plant,
                state,
                factorPercent,
                revision,
                inForceFrom,
                recheckBy,
                trials,
                uncoveredSince,
                others,
                terms,
                group,
                uncertainty,
                due);
    }

    /** Returns how many of some mixes have a factor that may be used. */
    public static int covered(List<RegisterRow> rows) {
        return (int) rows.stream().filter(row -> row.state().isUsable()).count();
    }

    /** Returns how many trials the factor rests on; of a mix without factor, how many count so far. */
    public int countedTrials() {
        return trials.counted();
    }

    /** Returns who took on how many doubts and why, a line for each person and reason. */
    private static List<Problem> takenOn(FactorIssue issue) {
        Map<List<String>, Integer> counts = new LinkedHashMap<>();
        issue.takenOn().forEach(doubt -> counts.merge(List.of(doubt.by(), doubt.reason()), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(entry -> Problem.warning(
                        "override",
                        "register.doubts-taken-on",
                        entry.getKey().get(0),
                        entry.getValue(),
                        entry.getKey().get(1)))
                .toList();
    }

    private static List<Problem> missing(
            Evidence evidence, Optional<FactorIssue> inForce, Optional<JudgedDetermination> basis, LocalDate day) {
        List<Problem> missing = new ArrayList<>();
        MixDesign mix = evidence.mix().value();
        OpenProposal.due(evidence).ifPresent(missing::add);
        if (inForce.isEmpty()) {
            missing.add(Problem.warning(
                    "factor", "register.no-factor-in-force", mix.id().text()));
        }
        inForce.ifPresent(issue -> {
            if (issue.approvedBy().isBlank()) {
                missing.add(Problem.warning("approvedBy", "register.not-approved", issue.revision()));
            }
            if (issue.isOverridden()) {
                missing.add(Problem.warning(
                        "override", "register.meter-overridden", issue.overrideBy(), issue.overrideReason()));
            }
            missing.addAll(evidence.recheck(issue).why(day, Recheck.Level.LAPSED, Recheck.Level.NOTE));
            missing.addAll(takenOn(issue));
            missing.addAll(evidence.whyUntrue(issue, day));
            missing.addAll(evidence.seenComing(issue, day));
            missing.addAll(DecisionChanges.of(evidence, issue, day));
        });
        basis.flatMap(JudgedDetermination::summary).ifPresent(summary -> missing.addAll(summary.doubts()));
        mix.sources().stream()
                .sorted()
                .filter(id -> evidence.sources().stream()
                        .noneMatch(source -> source.value().id().equals(id)))
                .forEach(id -> missing.add(Problem.warning("sources", "register.source-unknown", id.text())));
        return missing;
    }
}
