package porebench.evidence.issue;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.trial.NextTrial;
import porebench.method.trial.StopRule;
import porebench.record.Meter;
import porebench.record.Trial;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * What is doubtful, and what can never be right, about a determination from which a factor is to be issued.
 *
 * <p>A trial's doubts that a person kept with a reason are settled, but for those about its meter: whether that was to be
 * trusted is known only later.
 */
final class IssueDoubts {
    private final Evidence evidence;
    private final JudgedDetermination basis;

    IssueDoubts(Evidence evidence, JudgedDetermination basis) {
        this.evidence = evidence;
        this.basis = basis;
    }

    private List<JudgedTrial> counting() {
        return basis.trials().stream().filter(JudgedTrial::counts).toList();
    }

    /** Returns every doubt that nobody has settled, those of the trials first. */
    List<IssueDoubt> all(Optional<StopRule> stop) {
        List<IssueDoubt> doubts = new ArrayList<>();
        for (JudgedTrial judged : counting()) {
            boolean isKept = judged.trial().value().keptBecause().isPresent();
            judged.doubts().stream()
                    .filter(doubt -> !isKept || doubt.kind() == Problem.Kind.METER)
                    .map(doubt -> IssueDoubt.of(judged, doubt))
                    .forEach(doubts::add);
            meter(judged).stream().map(doubt -> IssueDoubt.of(judged, doubt)).forEach(doubts::add);
        }
        List<Problem> summary = basis.summary().map(known -> known.doubts()).orElse(List.of());
        summary.stream().map(IssueDoubt::ofAll).forEach(doubts::add);
        changes().stream().map(IssueDoubt::ofAll).forEach(doubts::add);
        boolean areFew = summary.stream().anyMatch(doubt -> doubt.kind() == Problem.Kind.TOO_FEW);
        stop.filter(rule -> !(areFew && rule.forTheCountOnly()))
                .flatMap(IssueDoubts::stop)
                .map(IssueDoubt::ofAll)
                .ifPresent(doubts::add);
        return List.copyOf(doubts);
    }

    /** Returns what the register says against a trial's meter, beyond what the trial itself is doubted for. */
    private List<Problem> meter(JudgedTrial judged) {
        Trial trial = judged.trial().value();
        String id = trial.meterId().text();
        Version<Meter> known = evidence.meters().get(trial.meterId());
        if (known == null) {
            return List.of(Problem.warning("meter", "trial.meter-unknown", id));
        }
        Meter meter = known.value();
        List<Problem> doubts = new ArrayList<>();
        if (!meter.inService()) {
            doubts.add(Problem.warning("meter", "trial.meter-out-of-service", id));
        }
        if (meter.type() != trial.readings().meterType()) {
            doubts.add(Problem.warning(
                    "meter",
                    "trial.meter-of-other-type",
                    id,
                    meter.type().name(),
                    trial.readings().meterType().name()));
        }
        if (judged.figures().corrections().bowl().isEmpty()
                && !trial.readings().bowl().agreesWith(meter.bowl().value())) {
            doubts.add(Problem.warning(
                    "meter", "trial.bowl-not-registered", trial.readings().bowl(), id, meter.bowl()));
        }
        if (judged.meterState().isEmpty()) {
            doubts.add(Problem.warning("meter", "trial.meter-never-calibrated", id));
        }
        return doubts;
    }

    private List<Problem> changes() {
        MixId mixId = evidence.mix().value().id();
        return evidence.changesSince(basis).stream()
                .filter(change -> change.drift().isEmpty())
                .map(change -> change.source()
                        .map(this::changed)
                        .orElseGet(
                                () -> Problem.warning("determination", "issue.mix-changed-since-trials", mixId.text())))
                .toList();
    }

    /** Returns why the trials of the mix tested for a group no longer speak for this one; nobody can take that on. */
    List<Problem> drifted() {
        return evidence.changesSince(basis).stream()
                .flatMap(change -> change.drift().stream())
                .toList();
    }

    private Problem changed(SourceId source) {
        return evidence.story(source)
                .flatMap(story -> story.last().from())
                .map(from -> Problem.warning(
                        "determination", "issue.source-changes-after-trials", source.text(), from.toString()))
                .orElseGet(() -> Problem.warning("determination", "issue.source-changed-since-trials", source.text()));
    }

    /** Returns why a factor cannot hold from a day: a stone it rests on is worked only later. */
    List<Problem> beforeStone(LocalDate from) {
        return evidence.changesSince(basis).isEmpty()
                ? evidence.changesSince(basis, from).stream()
                        .flatMap(change -> change.source().stream())
                        .map(source -> Problem.error(
                                "inForceFrom",
                                "issue.before-stone",
                                from.toString(),
                                source.text(),
                                evidence.story(source)
                                        .flatMap(story -> story.last().from())
                                        .orElseThrow()
                                        .toString()))
                        .toList()
                : List.of();
    }

    private static Optional<Problem> stop(StopRule rule) {
        return switch (rule.verdict()) {
            case ENOUGH -> Optional.empty();
            case NOT_YET_KNOWN -> Optional.of(Problem.warning("trials", "issue.stop-not-yet-known", rule.moreTrials()));
            case OUT_OF_REACH ->
                Optional.of(Problem.warning("trials", "issue.stop-out-of-reach", rule.wantedPercent()));
            case MORE ->
                Optional.of(rule.next()
                        .filter(next -> !next.leavesTheCard())
                        .map(next -> couldChange(rule, next))
                        .orElseGet(() ->
                                Problem.warning("trials", "issue.stop-more", rule.moreTrials(), rule.wantedPercent())));
        };
    }

    private static Problem couldChange(StopRule rule, NextTrial next) {
        return Problem.warning(
                "trials",
                "issue.stop-more-could-change",
                rule.moreTrials(),
                rule.wantedPercent(),
                next.card(),
                next.cardAtLow(),
                next.cardAtHigh());
    }

    /** Returns what can never be right, and nobody can take on: two types of meter, a factor beyond the profile's limits. */
    List<Problem> impossible() {
        List<Problem> problems = new ArrayList<>();
        long types = counting().stream()
                .map(trial -> trial.trial().value().readings().meterType())
                .distinct()
                .count();
        if (types > 1) {
            problems.add(Problem.error(
                    "determination",
                    "issue.two-meter-types",
                    basis.determination().value().id().text()));
        }
        basis.summary().ifPresent(summary -> {
            double low = evidence.profile().number(FigureName.FACTOR_LOW);
            double high = evidence.profile().number(FigureName.FACTOR_HIGH);
            double reported = summary.reportedPercent().doubleValue();
            if (reported < low || reported > high) {
                problems.add(Problem.error(
                        "factor",
                        "issue.beyond-limits",
                        summary.reportedPercent(),
                        low,
                        high,
                        evidence.profile().title()));
            }
        });
        return problems;
    }

    /**
     * Returns why a factor cannot hold from a moment: it would hold before the last trial it rests on was made. One that says no hour
     * may begin on the day of that trial.
     */
    Optional<Problem> beforeEvidence(LocalDateTime from) {
        boolean saysHour = !from.toLocalTime().equals(LocalTime.MIN);
        return counting().stream()
                .map(trial -> trial.trial().value().testedAt())
                .max(LocalDateTime::compareTo)
                .filter(last ->
                        from.isBefore(saysHour ? last : last.toLocalDate().atStartOfDay()))
                .map(last -> from.toLocalDate().equals(last.toLocalDate())
                        ? Problem.error("inForceAt", "issue.before-last-trial", Issuing.said(from), Issuing.said(last))
                        : Problem.error(
                                "inForceFrom",
                                "issue.before-evidence",
                                Issuing.said(from),
                                last.toLocalDate().toString()));
    }
}
