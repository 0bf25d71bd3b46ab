package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import porebench.record.ChangeDecision;
import porebench.record.DecidedChange;
import porebench.record.DecidedFigures;
import porebench.record.FactorOrigin;
import porebench.record.id.CalibrationId;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;
import porebench.statistics.comparison.ComparisonVerdict;

/** The columns of a decision on a changed source. */
public final class DecisionColumns {
    private static final int STEP = 21;
    private static final NumberRange AIR = NumberRange.of("-100", "100");
    private static final NumberRange SHARE = NumberRange.of("0", "1");
    private static final CellType<DeterminationId> DETERMINATION =
            CellType.word(DeterminationId::new, DeterminationId::text);

    public static final Column<ChangeDecision, ChangeDecisionId> ID = Column.needed(
                    "decision_id", CellType.word(ChangeDecisionId::new, ChangeDecisionId::text), ChangeDecision::id)
            .called("id");
    public static final Column<ChangeDecision, MixId> MIX =
            Column.needed("mix_id", CellType.word(MixId::new, MixId::text), ChangeDecision::mixId);
    public static final Column<ChangeDecision, List<IdVersion<SourceId>>> SOURCES = versions(
            "source_versions",
            "source",
            "source",
            CellType.word(SourceId::new, SourceId::text),
            DecidedChange::sourceVersions);
    public static final Column<ChangeDecision, LocalDate> CHANGED_ON = Column.any(
            "changed_on", CellType.day(), decision -> decision.change().changedOn());
    public static final Column<ChangeDecision, Integer> REVISION = Column.any(
            "revision", CellType.whole(1), decision -> decision.change().revision());
    public static final Column<ChangeDecision, List<IdVersion<DeterminationId>>> BEFORE =
            versions("before_versions", "before", "determination", DETERMINATION, DecidedChange::before);
    public static final Column<ChangeDecision, List<IdVersion<DeterminationId>>> AFTER =
            versions("after_versions", "after", "determination", DETERMINATION, DecidedChange::after);
    public static final Column<ChangeDecision, List<IdVersion<TrialId>>> TRIALS = versions(
            "trial_versions",
            "trial",
            "trial",
            CellType.word(TrialId::new, TrialId::text),
            DecidedChange::trialVersions);
    public static final Column<ChangeDecision, List<IdVersion<CalibrationId>>> CALIBRATIONS = versions(
            "calibration_versions",
            "calibration",
            "calibration",
            CellType.word(CalibrationId::new, CalibrationId::text),
            DecidedChange::calibrationVersions);

    public static final Column<ChangeDecision, Integer> TRIALS_BEFORE =
            count("trials_before", DecidedFigures::trialsBefore);
    public static final Column<ChangeDecision, BigDecimal> MEAN_BEFORE =
            figure("mean_before_pct", AIR, DecidedFigures::meanBefore);
    public static final Column<ChangeDecision, Integer> TRIALS_AFTER =
            count("trials_after", DecidedFigures::trialsAfter);
    public static final Column<ChangeDecision, BigDecimal> MEAN_AFTER =
            figure("mean_after_pct", AIR, DecidedFigures::meanAfter);
    public static final Column<ChangeDecision, BigDecimal> DIFFERENCE =
            figure("difference_pct", NumberRange.ANY, DecidedFigures::difference);
    public static final Column<ChangeDecision, BigDecimal> DIFFERENCE_LOW =
            figure("difference_low_pct", NumberRange.ANY, DecidedFigures::differenceLow);
    public static final Column<ChangeDecision, BigDecimal> DIFFERENCE_HIGH =
            figure("difference_high_pct", NumberRange.ANY, DecidedFigures::differenceHigh);
    public static final Column<ChangeDecision, BigDecimal> T = figure("welch_t", NumberRange.ANY, DecidedFigures::t);
    public static final Column<ChangeDecision, BigDecimal> DEGREES =
            figure("welch_df", NumberRange.NOT_NEGATIVE, DecidedFigures::degreesOfFreedom);
    public static final Column<ChangeDecision, BigDecimal> P = figure("welch_p", SHARE, DecidedFigures::p);
    public static final Column<ChangeDecision, BigDecimal> MARGIN =
            figure("margin_pct", NumberRange.of("0.000001", "100"), DecidedFigures::margin);
    public static final Column<ChangeDecision, BigDecimal> EQUIVALENCE_LOW =
            figure("equivalence_low_pct", NumberRange.ANY, DecidedFigures::equivalenceLow);
    public static final Column<ChangeDecision, BigDecimal> EQUIVALENCE_HIGH =
            figure("equivalence_high_pct", NumberRange.ANY, DecidedFigures::equivalenceHigh);
    public static final Column<ChangeDecision, BigDecimal> POWER = figure("power", SHARE, DecidedFigures::power);
    public static final Column<ChangeDecision, Integer> NEEDED = Column.any(
            "trials_needed", CellType.whole(0), decision -> decision.figures().trialsNeeded());
    public static final Column<ChangeDecision, ComparisonVerdict> VERDICT =
            Column.needed("verdict", verdict(), decision -> decision.figures().verdict());

    public static final Column<ChangeDecision, ComparisonVerdict> CHOICE =
            Column.needed("decision", verdict(), ChangeDecision::choice).called("choice");
    public static final Column<ChangeDecision, Integer> MORE =
            Column.any("more_trials", CellType.whole(1), ChangeDecision::more).called("more");
    public static final Column<ChangeDecision, LocalDate> DECIDED_ON =
            Column.needed("decided_on", CellType.day(), ChangeDecision::decidedOn);
    public static final Column<ChangeDecision, String> DECIDED_BY =
            Column.needed("decided_by", CellType.said(), ChangeDecision::decidedBy);
    public static final Column<ChangeDecision, String> REASON =
            Column.needed("reason", CellType.text(), ChangeDecision::reason);
    public static final Column<ChangeDecision, FactorOrigin> ORIGIN = Column.any(
                    "origin",
                    CellType.choice(FactorOrigin.values(), FactorOrigin::symbol),
                    (ChangeDecision decision) ->
                            Optional.of(decision.origin()).filter(origin -> origin != FactorOrigin.HERE))
            .extra();

    public static final Columns<ChangeDecision> ALL = Columns.of(
                    "change_decision",
                    DecisionColumns::made,
                    ID,
                    MIX,
                    SOURCES,
                    CHANGED_ON,
                    REVISION,
                    BEFORE,
                    AFTER,
                    TRIALS,
                    CALIBRATIONS,
                    TRIALS_BEFORE,
                    MEAN_BEFORE,
                    TRIALS_AFTER,
                    MEAN_AFTER,
                    DIFFERENCE,
                    DIFFERENCE_LOW,
                    DIFFERENCE_HIGH,
                    T,
                    DEGREES,
                    P,
                    MARGIN,
                    EQUIVALENCE_LOW,
                    EQUIVALENCE_HIGH,
                    POWER,
                    NEEDED,
                    VERDICT,
                    CHOICE,
                    MORE,
                    DECIDED_ON,
                    DECIDED_BY,
                    REASON,
                    ORIGIN)
            .since(STEP);

    private DecisionColumns() {}

    private static CellType<ComparisonVerdict> verdict() {
        return CellType.choice(ComparisonVerdict.values(), ComparisonVerdict::symbol);
    }

    private static Column<ChangeDecision, Integer> count(String name, Function<DecidedFigures, Integer> of) {
        return Column.needed(name, CellType.whole(1), decision -> of.apply(decision.figures()));
    }

    private static Column<ChangeDecision, BigDecimal> figure(
            String name, NumberRange range, Function<DecidedFigures, BigDecimal> of) {
        return Column.needed(name, CellType.number(range), decision -> of.apply(decision.figures()));
    }

    private static <I extends Comparable<I>> Column<ChangeDecision, List<IdVersion<I>>> versions(
            String heading, String table, String other, CellType<I> id, Function<DecidedChange, Map<I, Integer>> of) {
        return IdVersion.column(
                heading, "change_decision_" + table, other, id, decision -> of.apply(decision.change()), STEP);
    }

    private static ChangeDecision made(Cells cells) {
        return new ChangeDecision(
                cells.get(ID),
                cells.get(MIX),
                new DecidedChange(
                        IdVersion.byId(cells.list(SOURCES)),
                        cells.any(CHANGED_ON),
                        cells.any(REVISION),
                        IdVersion.byId(cells.list(BEFORE)),
                        IdVersion.byId(cells.list(AFTER)),
                        IdVersion.byId(cells.list(TRIALS)),
                        IdVersion.byId(cells.list(CALIBRATIONS))),
                new DecidedFigures(
                        cells.get(TRIALS_BEFORE),
                        cells.get(MEAN_BEFORE),
                        cells.get(TRIALS_AFTER),
                        cells.get(MEAN_AFTER),
                        cells.get(DIFFERENCE),
                        cells.get(DIFFERENCE_LOW),
                        cells.get(DIFFERENCE_HIGH),
                        cells.get(T),
                        cells.get(DEGREES),
                        cells.get(P),
                        cells.get(MARGIN),
                        cells.get(EQUIVALENCE_LOW),
                        cells.get(EQUIVALENCE_HIGH),
                        cells.get(POWER),
                        cells.any(NEEDED),
                        cells.get(VERDICT)),
                cells.get(CHOICE),
                cells.any(MORE),
                cells.get(DECIDED_ON),
                cells.get(DECIDED_BY),
                cells.get(REASON),
                cells.any(ORIGIN).orElse(FactorOrigin.HERE));
    }
}
