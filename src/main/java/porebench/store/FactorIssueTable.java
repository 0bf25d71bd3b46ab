package porebench.store;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.record.DeterminationId;
import porebench.record.FactorIssue;
import porebench.record.MixId;
import porebench.record.RecordKind;

/** The tables {@code factor_issue} and {@code factor_issue_source}. */
final class FactorIssueTable implements RecordTable<FactorIssue> {
    private static final String SOURCE = "factor_issue_source";

    @Override
    public RecordKind kind() {
        return RecordKind.FACTOR_ISSUE;
    }

    @Override
    public String name() {
        return "factor_issue";
    }

    @Override
    public List<String> partTables() {
        return List.of(SOURCE);
    }

    @Override
    public StoredRecord rows(FactorIssue issue) {
        StoredRow row = new StoredRow(name())
                .cell("mix_id", issue.mixId().text())
                .cell("revision", issue.revision())
                .cell("action", issue.action().symbol())
                .number("factor_pct", issue.factorPercent())
                .cell("determination_id", issue.determinationId().text())
                .cell("meter_type", issue.meterType().name())
                .cell("in_force_from", issue.inForceFrom().toString())
                .cell("recheck_by", issue.recheckBy().toString())
                .cell("issued_by", issue.issuedBy())
                .cell("approved_by", issue.approvedBy())
                .cell("reason", issue.reason())
                .cell("mix_version", issue.mixVersion())
                .cell("profile_id", issue.profileId())
                .text("override_by", said(issue.overrideBy()))
                .text("override_reason", said(issue.overrideReason()));
        return new StoredRecord(row, SourceVersions.rows(SOURCE, issue.sourceVersions()));
    }

    @Override
    public FactorIssue value(StoredRecord rows) {
        StoredRow row = rows.row();
        return new FactorIssue(
                new MixId(row.text("mix_id")),
                row.count("revision"),
                row.word("action", FactorIssue.Action.values(), FactorIssue.Action::symbol),
                row.number("factor_pct"),
                new DeterminationId(row.text("determination_id")),
                row.word("meter_type", MeterType.values(), MeterType::name),
                LocalDate.parse(row.text("in_force_from")),
                LocalDate.parse(row.text("recheck_by")),
                row.text("issued_by"),
                row.text("approved_by"),
                row.text("reason"),
                row.count("mix_version"),
                SourceVersions.of(rows.parts()),
                row.text("profile_id"),
                row.textIfAny("override_by").orElse(""),
                row.textIfAny("override_reason").orElse(""));
    }

    private static Optional<String> said(String text) {
        return Optional.of(text).filter(any -> !any.isEmpty());
    }
}
