package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import porebench.record.id.CalibrationId;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;
import porebench.statistics.comparison.ComparisonVerdict;

/** Decisions on changed sources, each figure another one. */
public final class SampleDecisions {
    private SampleDecisions() {}

    /** Returns a decision to keep the factor, which the comparison says too. */
    public static ChangeDecision keep(String id, String mix) {
        return new ChangeDecision(
                new ChangeDecisionId(id),
                new MixId(mix),
                change(mix),
                figures(ComparisonVerdict.KEEP, Optional.of(0)),
                ComparisonVerdict.KEEP,
                Optional.empty(),
                LocalDate.of(2026, 3, 20),
                "R. Vale",
                "",
                FactorOrigin.HERE);
    }

    /** Returns a decision to test more against a comparison that says to replace the factor. */
    public static ChangeDecision testMore(String id, String mix, int more, String reason) {
        return new ChangeDecision(
                new ChangeDecisionId(id),
                new MixId(mix),
                new DecidedChange(
                        Map.of(),
                        Optional.empty(),
                        Optional.empty(),
                        change(mix).before(),
                        change(mix).after(),
                        Map.of(),
                        Map.of()),
                figures(ComparisonVerdict.REPLACE, Optional.empty()),
                ComparisonVerdict.TEST_MORE,
                Optional.of(more),
                LocalDate.of(2026, 3, 21),
                "M. Ash",
                reason,
                FactorOrigin.HERE);
    }

    private static DecidedChange change(String mix) {
        return new DecidedChange(
                Map.of(new SourceId("S-1"), 2),
                Optional.of(LocalDate.of(2026, 3, 1)),
                Optional.of(1),
                Map.of(new DeterminationId(mix + "/1"), 1),
                Map.of(new DeterminationId(mix + "/2"), 3),
                Map.of(new TrialId("T-1"), 1, new TrialId("T-2"), 2),
                Map.of(new CalibrationId("B-1/c1"), 1));
    }

    private static DecidedFigures figures(ComparisonVerdict verdict, Optional<Integer> needed) {
        return new DecidedFigures(
                4,
                new BigDecimal("0.41"),
                5,
                new BigDecimal("0.42"),
                new BigDecimal("0.01"),
                new BigDecimal("-0.02"),
                new BigDecimal("0.04"),
                new BigDecimal("0.7"),
                new BigDecimal("6.5"),
                new BigDecimal("0.503"),
                new BigDecimal("0.05"),
                new BigDecimal("-0.015"),
                new BigDecimal("0.035"),
                new BigDecimal("0.83"),
                needed,
                verdict);
    }
}
