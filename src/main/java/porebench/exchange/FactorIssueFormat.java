package porebench.exchange;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.profile.Profiles;
import porebench.record.DeterminationId;
import porebench.record.FactorIssue;
import porebench.record.MixId;
import porebench.record.SourceId;

/**
 * {@code factor-issues.csv}: one row a revision of a mix's factor.
 *
 * <p>The versions a revision rests on stand as {@code S-01:1;S-02:2}; a percent sign or semicolon within an id is written
 * {@code %25} or {@code %3B}. Empty versions leave it to the lab book to say which they are.
 */
final class FactorIssueFormat implements Format.RowByRow<FactorIssue> {
    private static final Columns COLUMNS = Columns.of(
            "mix_id,revision,action,factor_pct,determination_id,meter_type,in_force_from,recheck_by,issued_by,"
                    + "approved_by,reason,mix_version,source_versions,profile_id",
            "override_by,override_reason");

    @Override
    public Class<FactorIssue> type() {
        return FactorIssue.class;
    }

    @Override
    public String fileName() {
        return "factor-issues.csv";
    }

    @Override
    public Columns columns() {
        return COLUMNS;
    }

    @Override
    public List<String> key() {
        return List.of("mix_id", "revision");
    }

    @Override
    public Optional<FactorIssue> read(Entry entry) {
        Optional<MixId> mixId = entry.id("mix_id", MixId::new);
        Optional<Integer> revision = entry.whole("revision", 1);
        Optional<FactorIssue.Action> action =
                entry.choice("action", List.of(FactorIssue.Action.values()), FactorIssue.Action::symbol);
        Optional<BigDecimal> factor = entry.number("factor_pct", Bounds.of("-100", "100"));
        Optional<DeterminationId> determination = entry.id("determination_id", DeterminationId::new);
        Optional<MeterType> type = entry.choice("meter_type", List.of(MeterType.values()), MeterType::name);
        Optional<LocalDate> from = entry.date("in_force_from");
        Optional<LocalDate> recheck = entry.date("recheck_by");
        entry.word("issued_by");
        Optional<Integer> mixVersion = entry.optionalWhole("mix_version", 1);
        Map<SourceId, Integer> sources = SourceVersions.read(entry);
        if (!entry.isGood()
                || mixId.isEmpty()
                || revision.isEmpty()
                || action.isEmpty()
                || factor.isEmpty()
                || determination.isEmpty()
                || type.isEmpty()
                || from.isEmpty()
                || recheck.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new FactorIssue(
                mixId.get(),
                revision.get(),
                action.get(),
                factor.get(),
                determination.get(),
                type.get(),
                from.get(),
                recheck.get(),
                entry.text("issued_by"),
                entry.text("approved_by"),
                entry.text("reason"),
                mixVersion.orElse(0),
                sources,
                entry.optionalWord("profile_id").orElse(Profiles.DEFAULT_ID),
                entry.text("override_by"),
                entry.text("override_reason")));
    }

    @Override
    public List<String> row(FactorIssue value) {
        return List.of(
                value.mixId().text(),
                Integer.toString(value.revision()),
                value.action().symbol(),
                value.factorPercent().toString(),
                value.determinationId().text(),
                value.meterType().name(),
                value.inForceFrom().toString(),
                value.recheckBy().toString(),
                value.issuedBy(),
                value.approvedBy(),
                value.reason(),
                value.mixVersion() == 0 ? "" : Integer.toString(value.mixVersion()),
                SourceVersions.written(value.sourceVersions()),
                value.profileId(),
                value.overrideBy(),
                value.overrideReason());
    }
}
