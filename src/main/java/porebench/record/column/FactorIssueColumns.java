package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.profile.Profiles;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.FactorTerms;
import porebench.record.Grounds;
import porebench.record.GroupGround;
import porebench.record.StatedUncertainty;
import porebench.record.TakenDoubt;
import porebench.record.id.CalibrationId;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/** The columns of a revision of a mix's factor, and of what it rests on. */
public final class FactorIssueColumns {
    private static final CellType<TrialId> TRIAL_ID = CellType.word(TrialId::new, TrialId::text);

    public static final Column<FactorIssue, MixId> MIX =
            Column.needed("mix_id", CellType.word(MixId::new, MixId::text), FactorIssue::mixId);
    public static final Column<FactorIssue, Integer> REVISION =
            Column.needed("revision", CellType.whole(1), FactorIssue::revision);
    public static final Column<FactorIssue, FactorIssue.Action> ACTION = Column.needed(
            "action", CellType.choice(FactorIssue.Action.values(), FactorIssue.Action::symbol), FactorIssue::action);
    public static final Column<FactorIssue, BigDecimal> FACTOR =
            Column.needed("factor_pct", CellType.number(NumberRange.of("-100", "100")), FactorIssue::factorPercent);
    public static final Column<FactorIssue, DeterminationId> DETERMINATION = Column.needed(
            "determination_id",
            CellType.word(DeterminationId::new, DeterminationId::text),
            FactorIssue::determinationId);
    public static final Column<FactorIssue, MeterType> METER_TYPE =
            Column.needed("meter_type", CellType.choice(MeterType.values(), MeterType::name), FactorIssue::meterType);
    public static final Column<FactorIssue, LocalDate> IN_FORCE_FROM =
            Column.needed("in_force_from", CellType.day(), FactorIssue::inForceFrom);
    public static final Column<FactorIssue, LocalDate> RECHECK_BY =
            Column.needed("recheck_by", CellType.day(), FactorIssue::recheckBy);
    public static final Column<FactorIssue, String> ISSUED_BY =
            Column.needed("issued_by", CellType.said(), FactorIssue::issuedBy);
    public static final Column<FactorIssue, String> APPROVED_BY =
            Column.needed("approved_by", CellType.text(), FactorIssue::approvedBy);
    public static final Column<FactorIssue, String> REASON =
            Column.needed("reason", CellType.text(), FactorIssue::reason);
    public static final Column<FactorIssue, Integer> MIX_VERSION = Column.needed(
                    "mix_version", CellType.whole(1), FactorIssue::mixVersion)
            .blankIs(0);
    public static final Column<FactorIssue, List<IdVersion<SourceId>>> SOURCES =
            versions("source", CellType.word(SourceId::new, SourceId::text), FactorIssue::sourceVersions, 1);
    public static final Column<FactorIssue, String> PROFILE =
            Column.needed("profile_id", CellType.word(), FactorIssue::profileId).blankMeans(Profiles.DEFAULT_ID);
    public static final Column<FactorIssue, String> OVERRIDE_BY = Column.any(
                    "override_by", CellType.text(), (FactorIssue issue) -> filled(issue.overrideBy()))
            .since(3)
            .extra();
    public static final Column<FactorIssue, String> OVERRIDE_REASON = Column.any(
                    "override_reason", CellType.text(), (FactorIssue issue) -> filled(issue.overrideReason()))
            .since(3)
            .extra();
    public static final Column<FactorIssue, List<IdVersion<TrialId>>> TRIALS = versions(
                    "trial", TRIAL_ID, (FactorIssue issue) -> issue.grounds().trialVersions(), 5)
            .since(5)
            .extra();
    public static final Column<FactorIssue, List<IdVersion<CalibrationId>>> CALIBRATIONS = versions(
                    "calibration",
                    CellType.word(CalibrationId::new, CalibrationId::text),
                    (FactorIssue issue) -> issue.grounds().calibrationVersions(),
                    5)
            .since(5)
            .extra();

    private static final Column<TakenDoubt, TrialId> DOUBT_TRIAL = Column.any("trial_id", TRIAL_ID, TakenDoubt::trial);
    private static final Column<TakenDoubt, String> DOUBT_CODE =
            Column.needed("code", CellType.said(), TakenDoubt::code);
    private static final Column<TakenDoubt, String> DOUBT_WORDS =
            Column.needed("words", CellType.text(), TakenDoubt::words);
    private static final Column<TakenDoubt, String> DOUBT_BY =
            Column.needed("taken_by", CellType.said(), TakenDoubt::by);
    private static final Column<TakenDoubt, String> DOUBT_REASON =
            Column.needed("reason", CellType.said(), TakenDoubt::reason);

    public static final Column<FactorIssue, List<TakenDoubt>> DOUBTS = doubts(
                    "factor_issue_doubt",
                    5,
                    (FactorIssue issue) -> issue.grounds().takenOn())
            .since(5)
            .extra();
    public static final Column<FactorIssue, FactorOrigin> ORIGIN = Column.any(
                    "origin",
                    CellType.choice(FactorOrigin.values(), FactorOrigin::symbol),
                    (FactorIssue issue) ->
                            Optional.of(issue.grounds().origin()).filter(origin -> origin != FactorOrigin.HERE))
            .since(5)
            .extra();
    public static final Column<FactorIssue, Boolean> SIMULATED = Column.<FactorIssue>mark(
                    "simulated", issue -> issue.grounds().simulated())
            .since(5);

    public static final Column<FactorIssue, String> IN_FORCE_AT = Column.any(
                    "in_force_at",
                    time(),
                    (FactorIssue issue) -> filled(issue.terms().atText()))
            .since(17)
            .extra();
    public static final Column<FactorIssue, String> CONDITIONS = Column.any(
                    "conditions",
                    CellType.text(),
                    (FactorIssue issue) -> filled(issue.terms().conditions()))
            .since(17)
            .extra();
    public static final Column<FactorIssue, String> CHECKED_BY = Column.any(
                    "checked_by",
                    CellType.text(),
                    (FactorIssue issue) -> filled(issue.terms().checkedBy()))
            .since(17)
            .extra();
    public static final Column<FactorIssue, GroupId> GROUP = Column.any(
                    "group_id",
                    CellType.word(GroupId::new, GroupId::text),
                    (FactorIssue issue) -> issue.grounds().group().map(GroupGround::group))
            .since(19)
            .extra();
    public static final Column<FactorIssue, Integer> GROUP_VERSION = Column.any(
                    "group_version",
                    CellType.whole(1),
                    (FactorIssue issue) -> issue.grounds().group().map(GroupGround::version))
            .neededWhere(from -> from.states(GROUP))
            .since(19)
            .extra();
    /** Stated where it is another mix than the revision's own. */
    public static final Column<FactorIssue, MixId> TESTED_MIX = Column.any(
                    "tested_mix_id",
                    CellType.word(MixId::new, MixId::text),
                    (FactorIssue issue) -> Optional.of(issue.testedMix()).filter(any -> issue.isLent()))
            .since(19)
            .extra();

    public static final Column<FactorIssue, ChangeDecisionId> KEPT_BY = Column.any(
                    "kept_by",
                    CellType.word(ChangeDecisionId::new, ChangeDecisionId::text),
                    (FactorIssue issue) -> issue.grounds().keptBy())
            .since(21)
            .extra();
    public static final Column<FactorIssue, BigDecimal> UNCERTAINTY = Column.any(
                    "expanded_u_pct",
                    CellType.number(NumberRange.of("0.0001", "100")),
                    (FactorIssue issue) -> issue.grounds().uncertainty().map(StatedUncertainty::expandedPercent))
            .since(21)
            .extra();
    public static final Column<FactorIssue, BigDecimal> COVERAGE = Column.any(
                    "coverage_factor",
                    CellType.number(NumberRange.of("1", "1000")),
                    (FactorIssue issue) -> issue.grounds().uncertainty().flatMap(StatedUncertainty::coverageFactor))
            .since(21)
            .extra();
    public static final Column<FactorIssue, FactorOrigin> UNCERTAINTY_ORIGIN = Column.any(
                    "u_origin",
                    CellType.choice(FactorOrigin.values(), FactorOrigin::symbol),
                    (FactorIssue issue) -> issue.grounds()
                            .uncertainty()
                            .map(StatedUncertainty::origin)
                            .filter(origin -> origin != FactorOrigin.HERE))
            .since(21)
            .extra();

    public static final Columns<FactorIssue> ALL = Columns.of(
            "factor_issue",
            FactorIssueColumns::made,
            MIX,
            REVISION,
            ACTION,
            FACTOR,
            DETERMINATION,
            METER_TYPE,
            IN_FORCE_FROM,
            RECHECK_BY,
            ISSUED_BY,
            APPROVED_BY,
            REASON,
            MIX_VERSION,
            SOURCES,
            PROFILE,
            OVERRIDE_BY,
            OVERRIDE_REASON,
            TRIALS,
            CALIBRATIONS,
            DOUBTS,
            ORIGIN,
            SIMULATED,
            IN_FORCE_AT,
            CONDITIONS,
            CHECKED_BY,
            GROUP,
            GROUP_VERSION,
            TESTED_MIX,
            KEPT_BY,
            UNCERTAINTY,
            COVERAGE,
            UNCERTAINTY_ORIGIN);

    private FactorIssueColumns() {}

    /** A time of day such as 14:30. */
    static CellType<String> time() {
        return CellType.word()
                .checked(text -> FactorTerms.time(text).isPresent()
                        ? Optional.empty()
                        : Optional.of(Problem.error("inForceAt", "form.not-a-time", text)));
    }

    private static Optional<GroupGround> group(Cells cells) {
        return cells.any(GROUP)
                .flatMap(group -> cells.any(GROUP_VERSION)
                        .map(version -> new GroupGround(
                                group, version, cells.any(TESTED_MIX).orElse(cells.get(MIX)))));
    }

    /** The doubts that somebody took on, in a table of their own. */
    static <R> Column<R, List<TakenDoubt>> doubts(String table, int step, Function<R, List<TakenDoubt>> of) {
        Columns<TakenDoubt> columns = Columns.of(
                        table, FactorIssueColumns::doubt, DOUBT_TRIAL, DOUBT_CODE, DOUBT_WORDS, DOUBT_BY, DOUBT_REASON)
                .since(step);
        return Column.any(
                "doubts_taken_on",
                CellType.several(new Part<>(columns, true)),
                record -> Optional.of(of.apply(record)));
    }

    static Optional<String> filled(String text) {
        return Optional.of(text).filter(any -> !any.isEmpty());
    }

    private static <I extends Comparable<I>> Column<FactorIssue, List<IdVersion<I>>> versions(
            String other, CellType<I> id, Function<FactorIssue, Map<I, Integer>> of, int sinceStep) {
        return IdVersion.column(other + "_versions", "factor_issue_" + other, other, id, of, sinceStep);
    }

    private static TakenDoubt doubt(Cells cells) {
        return new TakenDoubt(
                cells.any(DOUBT_TRIAL),
                cells.get(DOUBT_CODE),
                cells.get(DOUBT_WORDS),
                cells.get(DOUBT_BY),
                cells.get(DOUBT_REASON));
    }

    private static FactorIssue made(Cells cells) {
        return new FactorIssue(
                cells.get(MIX),
                cells.get(REVISION),
                cells.get(ACTION),
                cells.get(FACTOR),
                cells.get(DETERMINATION),
                cells.get(METER_TYPE),
                cells.get(IN_FORCE_FROM),
                cells.get(RECHECK_BY),
                cells.get(ISSUED_BY),
                cells.get(APPROVED_BY),
                cells.get(REASON),
                cells.get(MIX_VERSION),
                IdVersion.byId(cells.list(SOURCES)),
                cells.get(PROFILE),
                cells.any(OVERRIDE_BY).orElse(""),
                cells.any(OVERRIDE_REASON).orElse(""),
                new Grounds(
                        IdVersion.byId(cells.list(TRIALS)),
                        IdVersion.byId(cells.list(CALIBRATIONS)),
                        cells.list(DOUBTS),
                        cells.any(ORIGIN).orElse(FactorOrigin.HERE),
                        cells.is(SIMULATED),
                        group(cells),
                        cells.any(KEPT_BY),
                        uncertainty(cells)),
                new FactorTerms(
                        cells.any(IN_FORCE_AT).flatMap(FactorTerms::time),
                        cells.any(CONDITIONS).orElse(""),
                        cells.any(CHECKED_BY).orElse("")));
    }

    private static Optional<StatedUncertainty> uncertainty(Cells cells) {
        return cells.any(UNCERTAINTY)
                .map(stated -> new StatedUncertainty(
                        stated,
                        cells.any(COVERAGE),
                        cells.any(UNCERTAINTY_ORIGIN).orElse(FactorOrigin.HERE)));
    }
}
