package porebench.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.DeterminationId;
import porebench.record.Draft;
import porebench.record.Evidence;
import porebench.record.FactorIssue;
import porebench.record.Issuing;
import porebench.record.JudgedDetermination;
import porebench.record.LabBook;
import porebench.record.MixId;
import porebench.record.RecordKind;

/** {@code issue}: hands out the next revision of a mix's factor, from a determination of the lab book. */
@Command(name = "issue")
final class IssueCommand extends BookCommand {
    @Option(names = "--mix-id", required = true, paramLabel = "<id>")
    private MixId mixId;

    @Option(names = "--reason", required = true, paramLabel = "<text>")
    private String reason;

    @Option(names = "--who", paramLabel = "<name>")
    private @Nullable String who;

    @Option(names = "--approved-by", paramLabel = "<name>")
    private String approvedBy = "";

    @Option(names = "--determination", paramLabel = "<id>")
    private @Nullable String determination;

    @Option(names = "--from", paramLabel = "<date>")
    private @Nullable LocalDate from;

    @Option(names = "--recheck-by", paramLabel = "<date>")
    private @Nullable LocalDate recheckBy;

    @Option(names = "--override-by", paramLabel = "<name>")
    private @Nullable String overrideBy;

    @Option(names = "--override-reason", paramLabel = "<text>")
    private @Nullable String overrideReason;

    IssueCommand(Surroundings here, Ports ports) {
        super(here, ports);
    }

    @Override
    Outcome carryOut() {
        try (LabBook book = open()) {
            Optional<Evidence> evidence = Evidence.of(book, mixId);
            if (evidence.isEmpty()) {
                return Outcome.refused(Problem.error("mixId", "book.not-there", RecordKind.MIX.word(), mixId.text()));
            }
            Optional<DeterminationId> basis = basis(evidence.get());
            if (basis.isEmpty()) {
                return Outcome.refused(Problem.error("determination", "issue.no-trial-counts", mixId.text()));
            }
            return marked(book, issue(book, evidence.get(), basis.get()));
        }
    }

    /** Returns the determination asked for, or else the open one. */
    private Optional<DeterminationId> basis(Evidence evidence) {
        return Optional.ofNullable(determination)
                .filter(id -> !id.isBlank())
                .map(DeterminationId::new)
                .or(() -> evidence.openDetermination()
                        .map(JudgedDetermination::determination)
                        .map(open -> open.value().id()));
    }

    private Outcome issue(LabBook book, Evidence evidence, DeterminationId basis) {
        String name = who == null || who.isBlank() ? here().user() : who.strip();
        Issuing.Decision decision = new Issuing.Decision(
                basis,
                Optional.ofNullable(from).orElse(here().today()),
                Optional.ofNullable(recheckBy),
                name,
                approvedBy,
                reason,
                override());
        Answer<FactorIssue> answer = Issuing.issue(evidence, decision);
        if (answer.value().isEmpty()) {
            return Outcome.refused(answer.problems());
        }
        FactorIssue issue = answer.value().get();
        List<Problem> problems = new ArrayList<>(answer.problems());
        problems.addAll(book.keep(List.of(Draft.of(issue)), name, issue.reason()));
        return Problem.anyError(problems) ? Outcome.refused(problems) : Outcome.done(new IssueReport(issue), problems);
    }

    private Optional<Issuing.MeterOverride> override() {
        return overrideBy == null && overrideReason == null
                ? Optional.empty()
                : Optional.of(new Issuing.MeterOverride(
                        Optional.ofNullable(overrideBy).orElse(""),
                        Optional.ofNullable(overrideReason).orElse("")));
    }

    private final class IssueReport implements Report {
        private final FactorIssue issue;

        IssueReport(FactorIssue issue) {
            this.issue = issue;
        }

        @Override
        public void json(JsonFields json) {
            json.text("mixId", issue.mixId().text());
            json.whole("revision", issue.revision());
            json.number("factorPercent", issue.factorPercent());
            json.text("determinationId", issue.determinationId().text());
            json.text("meterType", issue.meterType().name());
            json.text("inForceFrom", issue.inForceFrom().toString());
            json.text("recheckBy", issue.recheckBy().toString());
            json.text("issuedBy", issue.issuedBy());
            json.text("overrideBy", Optional.of(issue.overrideBy()).filter(name -> !name.isBlank()));
            json.text("overrideReason", Optional.of(issue.overrideReason()).filter(text -> !text.isBlank()));
        }

        @Override
        public void text(TextPage page) {
            page.line(words().say(
                            "issue.issued",
                            Integer.toString(issue.revision()),
                            shown().exact(issue.factorPercent()),
                            issue.inForceFrom().toString(),
                            issue.recheckBy().toString(),
                            issue.issuedBy()));
        }
    }
}
