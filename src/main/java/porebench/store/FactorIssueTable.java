package porebench.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.RecordKind;
import porebench.record.TakenDoubt;
import porebench.record.id.CalibrationId;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/** The table {@code factor_issue} and those beside it for what a revision rests on. */
final class FactorIssueTable implements RecordTable<FactorIssue> {
    private static final String DOUBT = "factor_issue_doubt";

    private static final IdVersions<SourceId> SOURCES =
            new IdVersions<>("factor_issue_source", "source_id", "source_version", SourceId::new, SourceId::text);
    private static final IdVersions<TrialId> TRIALS =
            new IdVersions<>("factor_issue_trial", "trial_id", "trial_version", TrialId::new, TrialId::text);
    private static final IdVersions<CalibrationId> CALIBRATIONS = new IdVersions<>(
            "factor_issue_calibration",
            "calibration_id",
            "calibration_version",
            CalibrationId::new,
            CalibrationId::text);

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
        return List.of(SOURCES.table(), TRIALS.table(), CALIBRATIONS.table(), DOUBT);
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
        Grounds grounds = issue.grounds();
        if (grounds.origin() != FactorOrigin.HERE) {
            row.cell("origin", grounds.origin().symbol());
        }
        if (grounds.simulated()) {
            row.flag("simulated", true);
        }
        List<StoredRow> parts = new ArrayList<>(SOURCES.rows(issue.sourceVersions()));
        parts.addAll(TRIALS.rows(grounds.trialVersions()));
        parts.addAll(CALIBRATIONS.rows(grounds.calibrationVersions()));
        int position = 0;
        for (TakenDoubt doubt : grounds.takenOn()) {
            position++;
            parts.add(new StoredRow(DOUBT)
                    .cell("position", position)
                    .text("trial_id", doubt.trial().map(TrialId::text))
                    .cell("code", doubt.code())
                    .cell("words", doubt.words())
                    .cell("taken_by", doubt.by())
                    .cell("reason", doubt.reason()));
        }
        return new StoredRecord(row, parts);
    }

    private static Grounds grounds(StoredRecord rows) {
        List<TakenDoubt> doubts = rows.parts().stream()
                .filter(part -> part.table().equals(DOUBT))
                .sorted(Comparator.comparingInt(part -> part.count("position")))
                .map(part -> new TakenDoubt(
                        part.textIfAny("trial_id").map(TrialId::new),
                        part.text("code"),
                        part.text("words"),
                        part.text("taken_by"),
                        part.text("reason")))
                .toList();
        StoredRow row = rows.row();
        return new Grounds(
                TRIALS.of(rows.parts()),
                CALIBRATIONS.of(rows.parts()),
                doubts,
                row.has("origin") ? row.word("origin", FactorOrigin.values(), FactorOrigin::symbol) : FactorOrigin.HERE,
                row.has("simulated") && row.flag("simulated"));
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
                SOURCES.of(rows.parts()),
                row.text("profile_id"),
                row.textIfAny("override_by").orElse(""),
                row.textIfAny("override_reason").orElse(""),
                grounds(rows));
    }

    private static Optional<String> said(String text) {
        return Optional.of(text).filter(any -> !any.isEmpty());
    }
}
