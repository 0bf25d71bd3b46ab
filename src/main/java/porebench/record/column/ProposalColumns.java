package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import porebench.record.FactorOrigin;
import porebench.record.FactorProposal;
import porebench.record.FactorTerms;
import porebench.record.Grounds;
import porebench.record.GroupGround;
import porebench.record.TakenDoubt;
import porebench.record.id.CalibrationId;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/** The columns of what is proposed as the next revision of a mix's factor. */
public final class ProposalColumns {
    private static final int STEP = 17;
    private static final int GROUND_STEP = 22;

    public static final Column<FactorProposal, MixId> MIX =
            Column.needed("mix_id", CellType.word(MixId::new, MixId::text), FactorProposal::mixId);
    public static final Column<FactorProposal, Integer> NUMBER =
            Column.needed("proposal_no", CellType.whole(1), FactorProposal::number);
    public static final Column<FactorProposal, FactorProposal.Step> AT_STEP = Column.needed(
            "step", CellType.choice(FactorProposal.Step.values(), FactorProposal.Step::symbol), FactorProposal::step);
    public static final Column<FactorProposal, BigDecimal> FACTOR =
            Column.needed("factor_pct", CellType.number(NumberRange.of("-100", "100")), FactorProposal::factorPercent);
    public static final Column<FactorProposal, DeterminationId> DETERMINATION = Column.needed(
            "determination_id",
            CellType.word(DeterminationId::new, DeterminationId::text),
            FactorProposal::determinationId);
    public static final Column<FactorProposal, LocalDate> IN_FORCE_FROM =
            Column.needed("in_force_from", CellType.day(), FactorProposal::inForceFrom);
    public static final Column<FactorProposal, LocalDate> RECHECK_BY =
            Column.needed("recheck_by", CellType.day(), FactorProposal::recheckBy);
    public static final Column<FactorProposal, String> REASON =
            Column.needed("reason", CellType.said(), FactorProposal::reason);
    public static final Column<FactorProposal, Integer> MIX_VERSION =
            Column.needed("mix_version", CellType.whole(1), FactorProposal::mixVersion);
    public static final Column<FactorProposal, List<IdVersion<SourceId>>> SOURCES = IdVersion.column(
            "source_versions",
            "factor_proposal_source",
            "source",
            CellType.word(SourceId::new, SourceId::text),
            FactorProposal::sourceVersions,
            STEP);
    public static final Column<FactorProposal, List<IdVersion<TrialId>>> TRIALS = IdVersion.column(
            "trial_versions",
            "factor_proposal_trial",
            "trial",
            CellType.word(TrialId::new, TrialId::text),
            (FactorProposal proposal) -> proposal.grounds().trialVersions(),
            STEP);
    public static final Column<FactorProposal, List<IdVersion<CalibrationId>>> CALIBRATIONS = IdVersion.column(
            "calibration_versions",
            "factor_proposal_calibration",
            "calibration",
            CellType.word(CalibrationId::new, CalibrationId::text),
            (FactorProposal proposal) -> proposal.grounds().calibrationVersions(),
            STEP);
    public static final Column<FactorProposal, List<TakenDoubt>> DOUBTS = FactorIssueColumns.doubts(
            "factor_proposal_doubt",
            STEP,
            (FactorProposal proposal) -> proposal.grounds().takenOn());
    public static final Column<FactorProposal, String> DRAFTED_BY =
            Column.needed("drafted_by", CellType.said(), FactorProposal::draftedBy);
    public static final Column<FactorProposal, String> BY =
            Column.needed("step_by", CellType.said(), FactorProposal::by);
    public static final Column<FactorProposal, LocalDateTime> AT =
            Column.needed("step_at", CellType.moment(), FactorProposal::at);
    public static final Column<FactorProposal, String> REMARK =
            Column.needed("remark", CellType.text(), FactorProposal::remark);
    public static final Column<FactorProposal, String> IN_FORCE_AT = Column.any(
            "in_force_at",
            FactorIssueColumns.time(),
            (FactorProposal proposal) ->
                    FactorIssueColumns.filled(proposal.terms().atText()));
    public static final Column<FactorProposal, String> CONDITIONS = Column.any(
            "conditions",
            CellType.text(),
            (FactorProposal proposal) ->
                    FactorIssueColumns.filled(proposal.terms().conditions()));
    public static final Column<FactorProposal, String> CHECKED_BY = Column.any(
            "checked_by",
            CellType.text(),
            (FactorProposal proposal) ->
                    FactorIssueColumns.filled(proposal.terms().checkedBy()));
    public static final Column<FactorProposal, Integer> REVISION =
            Column.any("revision", CellType.whole(1), FactorProposal::revision);
    public static final Column<FactorProposal, Boolean> SIMULATED =
            Column.mark("simulated", proposal -> proposal.grounds().simulated());

    public static final Column<FactorProposal, GroupId> GROUP = Column.any(
                    "group_id",
                    CellType.word(GroupId::new, GroupId::text),
                    (FactorProposal proposal) -> proposal.grounds().group().map(GroupGround::group))
            .since(GROUND_STEP)
            .extra();
    public static final Column<FactorProposal, Integer> GROUP_VERSION = Column.any(
                    "group_version",
                    CellType.whole(1),
                    (FactorProposal proposal) -> proposal.grounds().group().map(GroupGround::version))
            .neededWhere(from -> from.states(GROUP))
            .since(GROUND_STEP)
            .extra();
    /** Stated where it is another mix than the draft's own. */
    public static final Column<FactorProposal, MixId> TESTED_MIX = Column.any(
                    "tested_mix_id",
                    CellType.word(MixId::new, MixId::text),
                    (FactorProposal proposal) ->
                            Optional.of(proposal.testedMix()).filter(any -> proposal.isLent()))
            .since(GROUND_STEP)
            .extra();

    public static final Column<FactorProposal, ChangeDecisionId> KEPT_BY = Column.any(
                    "kept_by",
                    CellType.word(ChangeDecisionId::new, ChangeDecisionId::text),
                    (FactorProposal proposal) -> proposal.grounds().keptBy())
            .since(GROUND_STEP)
            .extra();

    public static final Columns<FactorProposal> ALL = Columns.of(
                    "factor_proposal",
                    ProposalColumns::made,
                    MIX,
                    NUMBER,
                    AT_STEP,
                    FACTOR,
                    DETERMINATION,
                    IN_FORCE_FROM,
                    RECHECK_BY,
                    REASON,
                    MIX_VERSION,
                    SOURCES,
                    TRIALS,
                    CALIBRATIONS,
                    DOUBTS,
                    DRAFTED_BY,
                    BY,
                    AT,
                    REMARK,
                    IN_FORCE_AT,
                    CONDITIONS,
                    CHECKED_BY,
                    REVISION,
                    SIMULATED,
                    GROUP,
                    GROUP_VERSION,
                    TESTED_MIX,
                    KEPT_BY)
            .since(STEP);

    private ProposalColumns() {}

    private static Optional<GroupGround> group(Cells cells) {
        return cells.any(GROUP)
                .flatMap(group -> cells.any(GROUP_VERSION)
                        .map(version -> new GroupGround(
                                group, version, cells.any(TESTED_MIX).orElse(cells.get(MIX)))));
    }

    private static FactorProposal made(Cells cells) {
        return new FactorProposal(
                cells.get(MIX),
                cells.get(NUMBER),
                cells.get(AT_STEP),
                cells.get(FACTOR),
                cells.get(DETERMINATION),
                cells.get(IN_FORCE_FROM),
                cells.get(RECHECK_BY),
                cells.get(REASON),
                new FactorTerms(
                        cells.any(IN_FORCE_AT).flatMap(FactorTerms::time),
                        cells.any(CONDITIONS).orElse(""),
                        cells.any(CHECKED_BY).orElse("")),
                cells.get(MIX_VERSION),
                IdVersion.byId(cells.list(SOURCES)),
                new Grounds(
                        IdVersion.byId(cells.list(TRIALS)),
                        IdVersion.byId(cells.list(CALIBRATIONS)),
                        cells.list(DOUBTS),
                        FactorOrigin.HERE,
                        cells.is(SIMULATED),
                        group(cells),
                        cells.any(KEPT_BY),
                        Optional.empty()),
                cells.get(DRAFTED_BY),
                cells.get(BY),
                cells.get(AT),
                cells.get(REMARK),
                cells.any(REVISION));
    }
}
