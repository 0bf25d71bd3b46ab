package porebench.exchange;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import porebench.method.MeterType;
import porebench.method.profile.Profiles;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.id.CalibrationId;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/**
 * {@code factor-issues.csv}: one row a revision of a mix's factor.
 *
 * <p>The versions a revision rests on stand as {@code S-01:1;S-02:2}; a percent sign or semicolon within an id is written
 * {@code %25} or {@code %3B}. A revision without the versions of its trials is not verified where it comes in.
 */
final class FactorIssueFormat implements Format.RowByRow<FactorIssue> {
    private static final Columns COLUMNS = Columns.of(
            "mix_id,revision,action,factor_pct,determination_id,meter_type,in_force_from,recheck_by,issued_by,"
                    + "approved_by,reason,mix_version,source_versions,profile_id",
            "override_by,override_reason,trial_versions,calibration_versions,doubts_taken_on,origin,simulated,changed_since");

    private final Predicate<FactorIssue> hasChangedGround;

    /** The format of a file that is read, or of issues whose ground is not looked at. */
    FactorIssueFormat() {
        this(any -> false);
    }

    /** The format of an export, which also says of which issues the ground has changed since. */
    FactorIssueFormat(Predicate<FactorIssue> hasChangedGround) {
        this.hasChangedGround = hasChangedGround;
    }

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
        Map<SourceId, Integer> sources = IdVersions.read(entry, "source_versions", SourceId::new);
        Grounds grounds = grounds(entry);
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
                entry.text("override_reason"),
                grounds));
    }

    /** Reads what a revision rests on; one whose ground changed where it comes from is not verified here. */
    private static Grounds grounds(Entry entry) {
        Map<TrialId, Integer> trials = IdVersions.read(entry, "trial_versions", TrialId::new);
        Map<CalibrationId, Integer> calibrations = IdVersions.read(entry, "calibration_versions", CalibrationId::new);
        Optional<FactorOrigin> origin = entry.optionalWord("origin").isEmpty()
                ? Optional.of(FactorOrigin.HERE)
                : entry.choice("origin", List.of(FactorOrigin.values()), FactorOrigin::symbol);
        boolean changed = entry.optionalYesNo("changed_since").orElse(false);
        return new Grounds(
                trials,
                calibrations,
                TakenDoubts.read(entry),
                changed ? FactorOrigin.IMPORTED : origin.orElse(FactorOrigin.HERE),
                entry.optionalYesNo("simulated").orElse(false));
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
                IdVersions.written(value.sourceVersions(), SourceId::text),
                value.profileId(),
                value.overrideBy(),
                value.overrideReason(),
                IdVersions.written(value.grounds().trialVersions(), TrialId::text),
                IdVersions.written(value.grounds().calibrationVersions(), CalibrationId::text),
                TakenDoubts.written(value.takenOn()),
                value.origin() == FactorOrigin.HERE ? "" : value.origin().symbol(),
                value.isSimulated() ? Entry.yesNoWord(true) : "",
                hasChangedGround.test(value) ? Entry.yesNoWord(true) : "");
    }
}
