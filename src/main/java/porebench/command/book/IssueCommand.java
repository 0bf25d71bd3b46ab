package porebench.command.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import porebench.command.reply.CommandOutcome;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.StopReport;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.ShownUncertainty;
import porebench.evidence.issue.GroupIssuing;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.IssueUncertainty;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.Proposing;
import porebench.evidence.issue.TakingOn;
import porebench.evidence.issue.Verifying;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.trial.StopRule;
import porebench.record.FactorIssue;
import porebench.record.FactorTerms;
import porebench.record.GroupGround;
import porebench.record.RecordKind;
import porebench.record.TakenDoubt;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** {@code issue}: hands out the next revision of a mix's factor, from a determination of the lab book. */
@Command(name = "issue")
public final class IssueCommand extends BookCommand {
    @ArgGroup(multiplicity = "1")
    private Of of = new Of();

    /** What the factor is of. */
    static final class Of {
        @Option(names = "--mix-id", required = true, paramLabel = "<id>")
        private @Nullable MixId mixId;

        @Option(names = "--group", required = true, paramLabel = "<id>")
        private @Nullable GroupId group;
    }

    @Option(names = "--reason", required = true, paramLabel = "<text>")
    private String reason;

    @Mixin
    private final Keeper who = new Keeper();

    @Option(names = "--approved-by", paramLabel = "<name>")
    private String approvedBy = "";

    @Option(names = "--determination", paramLabel = "<id>")
    private @Nullable String determination;

    @Option(names = "--from", paramLabel = "<date>")
    private @Nullable LocalDate from;

    @Option(names = "--at", paramLabel = "<HH:mm>")
    private @Nullable String at;

    @Option(names = "--conditions", paramLabel = "<text>")
    private String conditions = "";

    @Option(names = "--recheck-by", paramLabel = "<date>")
    private @Nullable LocalDate recheckBy;

    @Option(names = "--override-by", paramLabel = "<name>")
    private @Nullable String overrideBy;

    @Option(names = "--override-reason", paramLabel = "<text>")
    private @Nullable String overrideReason;

    @Option(names = "--confirm")
    private boolean confirm;

    @Option(names = "--step", paramLabel = "<step>")
    private @Nullable String step;

    @Option(names = "--as-decided", paramLabel = "<id>")
    private @Nullable ChangeDecisionId asDecided;

    public IssueCommand(Machine here, Ports ports) {
        super(here, ports);
    }

    @Override
    protected CommandOutcome carryOut() {
        try (LabBook book = open()) {
            if (of.group != null) {
                return marked(book, group(book, of.group));
            }
            MixId mixId = Objects.requireNonNull(of.mixId);
            Optional<Evidence> evidence = Evidence.of(book, mixId);
            if (evidence.isEmpty()) {
                return CommandOutcome.refused(
                        Problem.error("mixId", "book.not-there", RecordKind.MIX.word(), mixId.text()));
            }
            LaboratoryScatter scatter =
                    LaboratoryStanding.of(book, here().progress()).scatter();
            return marked(
                    book, confirm ? confirm(book, evidence.get(), scatter) : issue(book, evidence.get(), scatter));
        }
    }

    private CommandOutcome group(LabBook book, GroupId id) {
        if (confirm) {
            return CommandOutcome.refused(Problem.error("confirm", "issue.confirm-one-mix"));
        }
        if (at != null && FactorTerms.time(at).isEmpty()) {
            return CommandOutcome.refused(Problem.error("inForceAt", "form.not-a-time", at));
        }
        LaboratoryScatter scatter =
                LaboratoryStanding.of(book, here().progress()).scatter();
        if (step != null) {
            Answer<IssueSteps.Step> taken = IssueSteps.parsed(step);
            return taken.value()
                    .map(one -> groupStep(book, id, scatter, one))
                    .orElseGet(() -> CommandOutcome.refused(taken.problems()));
        }
        Answer<GroupIssuing.Issued> answer =
                GroupIssuance.issue(book, scatter, id, asked(), here().today(), this::takingOn, this::decision);
        if (answer.value().isEmpty()) {
            return CommandOutcome.refused(answer.problems());
        }
        List<Problem> problems = new ArrayList<>(answer.problems());
        problems.addAll(
                keep(book, answer.value().get().issues().stream().map(Draft::of).toList()));
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        acted();
        return CommandOutcome.done(
                GroupReports.issued(this.laidOut(), id, said(Optional.empty()), left(), words())
                        .report(answer.value().get()),
                problems);
    }

    /** Takes a step of the open drafts of a group, or drafts its factor. */
    private CommandOutcome groupStep(LabBook book, GroupId id, LaboratoryScatter scatter, IssueSteps.Step taken) {
        Answer<GroupIssuance.Stepped> answer = taken == IssueSteps.Step.DRAFT
                ? GroupIssuance.draft(book, scatter, id, asked(), here().now(), this::takingOn, this::decision)
                : GroupIssuance.step(
                        book,
                        scatter,
                        id,
                        steps -> IssueSteps.take(taken, steps, who.name(here()), reason, here().now()));
        if (answer.value().isEmpty()) {
            return CommandOutcome.refused(answer.problems());
        }
        GroupIssuance.Stepped stepped = answer.value().get();
        List<Problem> problems = new ArrayList<>(answer.problems());
        problems.addAll(keep(book, stepped.drafts()));
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        acted();
        return CommandOutcome.done(
                GroupReports.steps(this.laidOut(), id, IssueSteps.said(this.laidOut(), words()), left(), words())
                        .report(stepped.taken()),
                problems);
    }

    /** Takes a step of a draft that is open, or drafts the next revision. */
    private CommandOutcome step(LabBook book, Evidence evidence, LaboratoryScatter scatter, IssueSteps.Step taken) {
        if (taken != IssueSteps.Step.DRAFT) {
            return stepped(
                    book, evidence, scatter, IssueSteps.take(taken, evidence, who.name(here()), reason, here().now()));
        }
        Answer<Issuing.Decision> decision = decision(evidence, scatter);
        return decision.value()
                .map(one -> stepped(book, evidence, scatter, Proposing.draft(evidence, scatter, one, here().now())))
                .orElseGet(() -> CommandOutcome.refused(decision.problems()));
    }

    private CommandOutcome stepped(
            LabBook book, Evidence evidence, LaboratoryScatter scatter, Answer<Proposing.Taken> answer) {
        if (answer.value().isEmpty()) {
            return CommandOutcome.refused(answer.problems());
        }
        Proposing.Taken taken = answer.value().get();
        List<Problem> problems = new ArrayList<>(answer.problems());
        problems.addAll(keep(book, IssueUncertainty.stated(evidence, scatter, taken.drafts())));
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        acted();
        return CommandOutcome.done(IssueSteps.said(this.laidOut(), words()).report(taken.proposal()), problems);
    }

    private ReportLayout<GroupIssuing.LeftOut> left() {
        return GroupReports.left(this.laidOut(), problemText());
    }

    private Optional<DeterminationId> asked() {
        return Optional.ofNullable(determination).filter(id -> !id.isBlank()).map(DeterminationId::new);
    }

    /** Returns the determination asked for, or else the open one. */
    private Optional<DeterminationId> basis(Evidence evidence) {
        return asked().or(() -> evidence.openDetermination()
                .map(JudgedDetermination::determination)
                .map(open -> open.value().id()));
    }

    private CommandOutcome issue(LabBook book, Evidence evidence, LaboratoryScatter scatter) {
        if (step != null) {
            Answer<IssueSteps.Step> taken = IssueSteps.parsed(step);
            return taken.value()
                    .map(one -> step(book, evidence, scatter, one))
                    .orElseGet(() -> CommandOutcome.refused(taken.problems()));
        }
        Answer<Issuing.Decision> decision = decision(evidence, scatter);
        if (decision.value().isEmpty()) {
            return CommandOutcome.refused(decision.problems());
        }
        Answer<FactorIssue> answer =
                Issuing.issue(evidence, scatter, decision.value().get());
        return kept(
                book,
                stated(evidence, scatter, answer),
                Draft::of,
                stop(evidence, scatter, decision.value().get().determinationId()));
    }

    /** Returns what is decided; or why nothing can be. */
    private Answer<Issuing.Decision> decision(Evidence evidence, LaboratoryScatter scatter) {
        Optional<DeterminationId> basis = basis(evidence);
        if (basis.isEmpty()) {
            return refused(Problem.error(
                    "determination",
                    "issue.no-trial-counts",
                    evidence.mix().value().id().text()));
        }
        if (at != null && FactorTerms.time(at).isEmpty()) {
            return refused(Problem.error("inForceAt", "form.not-a-time", at));
        }
        return Answer.of(decision(basis.get(), takingOn(Issuing.doubts(evidence, scatter, basis.get()))), List.of());
    }

    private static Answer<Issuing.Decision> refused(Problem problem) {
        return Answer.refused(List.of(problem));
    }

    private Issuing.Decision decision(DeterminationId basis, Optional<TakingOn> takingOn) {
        return new Issuing.Decision(
                basis,
                Optional.ofNullable(from).orElse(here().today()),
                Optional.ofNullable(recheckBy),
                who.name(here()),
                approvedBy,
                reason,
                takingOn,
                new FactorTerms(Optional.ofNullable(at).flatMap(FactorTerms::time), conditions.strip(), ""),
                Optional.ofNullable(asDecided));
    }

    private CommandOutcome confirm(LabBook book, Evidence evidence, LaboratoryScatter scatter) {
        Optional<Version<FactorIssue>> newest = evidence.issues().stream().reduce((earlier, later) -> later);
        if (newest.isEmpty()) {
            return CommandOutcome.refused(Problem.error("factor", "issue.nothing-to-confirm", 0));
        }
        DeterminationId basis = newest.get().value().determinationId();
        Answer<FactorIssue> answer = Verifying.confirm(
                evidence,
                scatter,
                newest.get(),
                who.name(here()),
                reason,
                takingOn(Issuing.doubts(evidence, scatter, basis)));
        return kept(
                book,
                stated(evidence, scatter, answer),
                issue -> Draft.correcting(newest.get(), issue),
                stop(evidence, scatter, basis));
    }

    private static Answer<FactorIssue> stated(
            Evidence evidence, LaboratoryScatter scatter, Answer<FactorIssue> answer) {
        return answer.value()
                .map(issue -> Answer.of(IssueUncertainty.stated(evidence, scatter, issue), answer.problems()))
                .orElse(answer);
    }

    private CommandOutcome kept(
            LabBook book, Answer<FactorIssue> answer, Function<FactorIssue, Draft> draft, Optional<StopRule> stop) {
        if (answer.value().isEmpty()) {
            return CommandOutcome.refused(answer.problems());
        }
        FactorIssue issue = answer.value().get();
        List<Problem> problems = new ArrayList<>(answer.problems());
        problems.addAll(keep(book, List.of(draft.apply(issue))));
        if (Problem.anyError(problems)) {
            return CommandOutcome.refused(problems);
        }
        acted();
        return CommandOutcome.done(said(stop).report(issue), problems);
    }

    private List<Problem> keep(LabBook book, List<Draft> drafts) {
        return CalledBack.keep(book, drafts, who.name(here()), reason.strip(), here().now());
    }

    private static Optional<StopRule> stop(Evidence evidence, LaboratoryScatter scatter, DeterminationId basis) {
        return evidence.determination(basis).flatMap(judged -> evidence.stop(judged, scatter));
    }

    /** Returns that somebody takes on all doubts, if name or reason is given; they are all said. */
    private Optional<TakingOn> takingOn(List<IssueDoubt> doubts) {
        return overrideBy == null && overrideReason == null
                ? Optional.empty()
                : Optional.of(TakingOn.all(
                        Optional.ofNullable(overrideBy).orElse(""),
                        Optional.ofNullable(overrideReason).orElse(""),
                        doubts,
                        problemText()::say));
    }

    private ReportLayout<FactorIssue> said(Optional<StopRule> stop) {
        StopReport stopReport = new StopReport(here().locale());
        ReportLayout<TakenDoubt> doubts = this.<TakenDoubt>laidOut()
                .field((json, doubt) -> json.text("trialId", doubt.trial().map(TrialId::text)))
                .text("code", TakenDoubt::code)
                .text("words", TakenDoubt::words)
                .text("takenOnBy", TakenDoubt::by)
                .text("reason", TakenDoubt::reason)
                .line(doubt -> words().get("issue.taken-on", doubt.by(), doubt.words(), doubt.reason()));
        return this.<FactorIssue>laidOut()
                .text("mixId", issue -> issue.mixId().text())
                .whole("revision", FactorIssue::revision)
                .field((json, issue) -> json.number("factorPercent", issue.factorPercent()))
                .text("determinationId", issue -> issue.determinationId().text())
                .text("meterType", issue -> issue.meterType().name())
                .text("inForceFrom", issue -> issue.inForceFrom().toString())
                .text("recheckBy", issue -> issue.recheckBy().toString())
                .field((json, issue) ->
                        json.text("inForceAt", said(issue.terms().atText())))
                .field((json, issue) ->
                        json.text("conditions", said(issue.terms().conditions())))
                .text("issuedBy", FactorIssue::issuedBy)
                .field((json, issue) -> json.text("approvedBy", said(issue.approvedBy())))
                .field((json, issue) ->
                        json.text("checkedBy", said(issue.terms().checkedBy())))
                .field((json, issue) -> json.text("overrideBy", first(issue).map(TakenDoubt::by)))
                .field((json, issue) -> json.text("overrideReason", first(issue).map(TakenDoubt::reason)))
                .text("origin", issue -> issue.origin().symbol())
                .field((json, issue) -> json.text(
                        "groupId",
                        issue.grounds().group().map(ground -> ground.group().text())))
                .field((json, issue) ->
                        json.whole("groupVersion", issue.grounds().group().map(GroupGround::version)))
                .text("testedMix", issue -> issue.testedMix().text())
                .field((json, issue) -> json.number(
                        "expandedUncertaintyPercent", ShownUncertainty.of(issue).expandedPercent()))
                .field((json, issue) ->
                        json.number("coverageFactor", ShownUncertainty.of(issue).coverageFactor()))
                .field((json, issue) ->
                        json.text("keptBy", issue.grounds().keptBy().map(ChangeDecisionId::text)))
                .line(issue -> words().get(
                                "issue.issued",
                                Integer.toString(issue.revision()),
                                shown().exact(issue.factorPercent()),
                                (issue.inForceFrom() + " " + issue.terms().atText()).strip(),
                                issue.recheckBy().toString(),
                                issue.issuedBy()))
                .alone((page, issue) -> said(issue.terms().conditions())
                        .ifPresent(only -> page.line(words().get("issue.conditions", only))))
                .field((json, issue) -> json.list("doubts", issue.takenOn(), doubts::json))
                .alone((page, issue) -> issue.takenOn().forEach(doubt -> doubts.rows(page, doubt)))
                .field((json, issue) -> stopReport.json(json, stop))
                .alone((page, issue) -> stop.ifPresent(rule -> page.line(stopReport.sentence(rule))));
    }

    private static Optional<String> said(String text) {
        return Optional.of(text).filter(any -> !any.isEmpty());
    }

    private static Optional<TakenDoubt> first(FactorIssue issue) {
        return issue.takenOn().stream().findFirst();
    }
}
